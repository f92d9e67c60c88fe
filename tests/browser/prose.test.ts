/** The words of a notebook follow the boat on the bench. */
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { openNotebook, openSheet, reads, reload, textOf, type, unfold } from './steps';

const prose = (page: Page) => page.locator('.prose');
const choose = (page: Page, boat: string) =>
  page.getByRole('combobox', { name: 'Boat' }).selectOption({ label: boat });

test('a sentence is said of the boats it is true of, and follows what is typed', async () => {
  const page = await openNotebook('short-build');
  await reads(prose(page), /The boat on the bench now is called Ferry dory\./);
  await reads(prose(page), /they are bent harder than the keelson/);
  await choose(page, 'Vee launch');
  await reads(prose(page), /is called Vee launch\./);
  await reads(prose(page), /they are bent less than the keelson/);
  expect(await textOf(prose(page))).not.toMatch(/bent harder than the keelson|Ferry dory/);
  // A third as thick, the keelson is asked for less than the logs.
  await unfold(await openSheet(page), 'Keelson');
  await type(page, 'keelson.thickness', '6 mm');
  await reads(prose(page), /they are bent harder than the keelson/);
});

test('a story of one boat is told with her on the bench, with what it tries', async () => {
  const page = await openNotebook('misread');
  const tried = page.locator('.try-this', { hasText: 'the 5 of 851 mm is read as a 0' });
  await reads(prose(page), /This is the ferry dory’s story/);
  expect(await tried.count()).toBe(1);
  await choose(page, 'Class skiff');
  await expect.poll(() => tried.count()).toBe(0);
  expect(await textOf(prose(page))).not.toMatch(/the 5 of 851/);
  expect(await page.locator('.prose .notice').count()).toBe(0);
});

test('boxes are ticked on the page, kept with the boat, and drawn on paper', async () => {
  const page = await openNotebook('short-build');
  const box = page.getByRole('checkbox', { name: /^All frames bevelled/ });
  expect(await box.isChecked()).toBe(false);
  await box.check();
  await reload(page);
  expect(await box.isChecked()).toBe(true);
  expect(await page.getByRole('checkbox', { name: /^Scarfs lie/ }).isChecked()).toBe(false);
  // Drawn, not a letter that the type may lack.
  expect(await textOf(prose(page))).not.toMatch(/[☐☑]/);
  await page.emulateMedia({ media: 'print' });
  const { width, height } = (await box.boundingBox())!;
  expect(Math.min(width, height)).toBeGreaterThan(12);
  await choose(page, 'Class skiff');
  await expect.poll(() => box.isChecked()).toBe(false);
});
