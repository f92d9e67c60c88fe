/** The notebook as one file: opened from a disk without a network, it reckons, searches, turns the hull and keeps what is typed. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, inject, onTestFinished, test } from 'vitest';
import { singleFile } from '../../src/build';
import { openPage } from './harness';
import { arrived, cell, field, holds, openGroups, press, reload, step, type } from './steps';

test('opened from a disk, with no network at all', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'shop laptop '));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const file = join(folder, 'battenbook.html');
  writeFileSync(file, await singleFile(inject('smallSite')));
  const asked: string[] = [];
  const page = await openPage({
    url: pathToFileURL(file).href,
    at: '#/boards',
    before: async (opened) => {
      await opened.context().setOffline(true);
      opened.on('request', (request) => asked.push(request.url()));
    },
  });
  await arrived(page);
  const boards = cell(page, 'boards');

  await step('the search runs in its worker, with its solver', async () => {
    const cost = async () =>
      Number(await boards.locator('.answer[data-quantity="boards.cost"] .figure b').innerText());
    const before = await cost();
    await boards.getByRole('button', { name: 'Search for the cheapest way to cut' }).click();
    await expect
      .poll(() => boards.locator('.search-row [role="status"]').innerText(), { timeout: 30_000 })
      .toMatch(/^Proved/);
    expect(await cost()).toBeLessThanOrEqual(before);
  });
  await step('the hull can be turned', async () => {
    await press(page, 'In the round');
    await page.locator('canvas').first().waitFor();
    await press(page, 'In the round');
  });
  await step('on the wall and back', async () => {
    await page.locator('.desk > summary').click();
    await press(page, 'On the wall: large, answers covered');
    await page.locator('.plate.covered').first().waitFor();
    await press(page, 'Leave the wall');
  });
  await step('its own fonts are there', async () => {
    expect(
      await page.evaluate(() => [...document.fonts].filter(({ status }) => status === 'loaded').length),
    ).toBeGreaterThan(1);
  });
  await step('what is typed is there again when it is opened anew', async () => {
    await openGroups(boards);
    await type(page, 'boards.kerf', '9 mm');
    await reload(page);
    await openGroups(boards);
    await holds(page, 'boards.kerf', '9 mm');
    expect(await field(page, 'boards.kerf').inputValue()).toBe('9 mm');
  });
  await step('what is handed out from a disk says how far it reaches', async () => {
    await page.evaluate(() => (location.hash = '#/ask'));
    await page.getByText('For the teacher: hand this out').click();
    expect(await page.locator('.class-foot .notice').first().innerText()).toMatch(
      /opened from a disk[\s\S]*same file in the same place[\s\S]*Instead, give each learner the file/,
    );
  });
  // The file itself, what it holds, and what the page makes of that: no address of any disk or network.
  const elsewhere = asked.filter(
    (url) => !/^(?:data|blob):/.test(url) && !url.startsWith(pathToFileURL(file).href),
  );
  expect(elsewhere).toStrictEqual([]);
});
