/** A search beside the page: started, stopped, believed for its own numbers only, and there again after undo. */
import { expect, test } from 'vitest';
import { openPage, type PageOptions } from './harness';
import { arrived, cell, type } from './steps';

async function openBoards(options: PageOptions = {}) {
  const page = await openPage({ ...options, at: '#/bend-join-fasten' });
  await arrived(page);
  const boards = cell(page, 'boards');
  const said = boards.locator('.search-row [role="status"]');
  const cost = boards.locator('.answer[data-quantity="boards.cost"] .figure b');
  const start = boards.getByRole('button', { name: 'Search for the cheapest way to cut' });
  return { page, boards, said, cost: async () => Number(await cost.innerText()), start };
}

test.each([390, 1280])(
  'at %i px the search finds a cheaper plan, says that it is proved, and the drawing follows',
  async (width) => {
    const { boards, said, cost, start } = await openBoards({ width });
    const before = await cost();
    await boards.locator('figure.drawing').first().scrollIntoViewIfNeeded();
    const drawn = await boards.locator('figure.drawing').first().textContent();
    await start.click();
    await expect.poll(() => said.innerText(), { timeout: 30_000 }).toMatch(/^Proved/);
    expect(await cost()).toBeLessThan(before);
    await expect.poll(() => boards.locator('.in-words').innerText()).toMatch(/No plan costs less/);
    const figure = boards.locator('figure.drawing').first();
    await figure.scrollIntoViewIfNeeded();
    await expect.poll(() => figure.textContent(), { timeout: 5000 }).not.toBe(drawn);
  },
);

test('an answer belongs to its numbers: another kerf knows nothing of it, undo brings it back', async () => {
  const { page, said, cost, start, boards } = await openBoards();
  await start.click();
  await expect.poll(() => said.innerText(), { timeout: 30_000 }).toMatch(/^Proved/);
  const found = await cost();
  await boards.locator('summary', { hasText: 'more inputs' }).click();
  await type(page, 'boards.kerf', '9 mm');
  await expect.poll(cost).not.toBe(found);
  await expect.poll(() => said.innerText()).toBe('The numbers have changed since the last search.');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(cost).toBe(found);
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

test('a part longer than any board, with scarfs off: what would make it possible is said', async () => {
  const { boards } = await openBoards();
  await boards.locator('.input[data-quantity="boards.scarfs"] select').selectOption('no');
  await expect
    .poll(() => boards.locator('.in-words').innerText())
    .toMatch(/longer than the longest board: allow scarfs, or find a longer board/);
  expect(await boards.getByRole('button', { name: /^Search/ }).isDisabled()).toBe(true);
});
