/** A search beside the page: started, stopped, believed for its own numbers only, and there again after undo. */
import { expect, test } from 'vitest';
import type { PageOptions } from './harness';
import { cell, openGroups, openNotebook, type } from './steps';

async function openBoards(options: PageOptions = {}) {
  const page = await openNotebook('boards', options);
  const boards = cell(page, 'boards');
  const said = boards.locator('.search-row [role="status"]');
  const cost = boards.locator('.answer[data-quantity="boards.cost"] .figure b');
  const start = boards.getByRole('button', { name: 'Search for the cheapest way to cut' });
  return { page, boards, said, cost: async () => Number(await cost.innerText()), start };
}

test.each([390, 1280])('at %i px the search proves a plan that is no dearer, and says so', async (width) => {
  const { boards, said, cost, start } = await openBoards({ width });
  const before = await cost();
  await expect.poll(() => boards.locator('.in-words').innerText()).toMatch(/There may be a cheaper way/);
  await start.click();
  await expect.poll(() => said.innerText(), { timeout: 30_000 }).toMatch(/^Proved/);
  expect(await cost()).toBeLessThanOrEqual(before);
  await expect
    .poll(() => boards.locator('.in-words').innerText())
    .toMatch(/No way to cut these pieces costs less/);
});

test('an answer belongs to its numbers: another kerf knows nothing of it, undo brings it back', async () => {
  const { page, said, start, boards } = await openBoards();
  const inWords = () => boards.locator('.in-words').innerText();
  await start.click();
  await expect.poll(() => said.innerText(), { timeout: 30_000 }).toMatch(/^Proved/);
  await openGroups(boards);
  await type(page, 'boards.kerf', '9 mm');
  await expect.poll(inWords).toMatch(/There may be a cheaper way/);
  await expect.poll(() => said.innerText()).toBe('The numbers have changed since the last search.');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(inWords).toMatch(/No way to cut these pieces costs less/);
});

test('stopped, the best plan so far stands, and the search can be started again', async () => {
  const { page, boards, said, cost, start } = await openBoards();
  // The solver comes late, so that there is something to stop.
  await page.route('**/*.wasm', async (route) => {
    await new Promise((resolve) => setTimeout(resolve, 1500));
    await route.continue().catch(() => undefined); // the worker may be gone by then
  });
  const before = await cost();
  await start.click();
  await boards.getByRole('button', { name: 'Stop the search' }).click();
  await expect.poll(() => said.innerText()).toMatch(/^Stopped/);
  expect(await cost()).toBe(before);
  await start.click();
  await expect.poll(() => said.innerText(), { timeout: 30_000 }).toMatch(/^Proved/);
});

test('a part laid in longer boards than are sold: that is said, and nothing is searched for', async () => {
  const { boards } = await openBoards();
  await openGroups(boards);
  const length = boards.locator('.input[data-quantity="boards.keelsonBoard"] .entry-line input');
  await length.fill('6 m');
  await length.blur();
  await expect
    .poll(() => boards.locator('.in-words').innerText())
    .toMatch(/keelson is longer than the longest board sold/i);
  expect(await boards.getByRole('button', { name: /^Search/ }).isDisabled()).toBe(true);
});
