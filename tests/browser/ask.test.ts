/** A learner's quarter of an hour on a phone: numbers of one's own, a guess, the answer, a sentence, and what is handed in. */
import { expect, test } from 'vitest';
import { violations } from './axe';
import { answer, openNotebook, reload, tooSmall, tooWide } from './steps';

test('the answer is nowhere in the page before the guess, all of it lasts, and what is handed in is read by the teacher', async () => {
  const page = await openNotebook('ask', { width: 360, height: 800, touch: true, reducedMotion: 'reduce' });
  const written = () => page.evaluate(() => document.body.innerHTML);
  // Eight thicknesses of 18 mm.
  expect(await written()).not.toMatch(/144.mm|144mm/);
  expect(await page.locator('.cell .answer, .cell svg, .cell .in-words').count()).toBe(0);
  await page.getByLabel(/^Numbers of your own/).fill('Anna');
  await page.getByRole('button', { name: 'Take these numbers' }).click();
  const ask = page.locator('#ask-taper');
  const [, thickness = ''] =
    /A board (\d+).mm thick gets a taper of 1 in 1 in (\d+)/.exec(await ask.innerText()) ?? [];
  expect(Number(thickness)).toBeGreaterThanOrEqual(12);
  const guess = ask.getByLabel(/guess/);
  await guess.fill('5 kg');
  await guess.press('Enter');
  expect(await ask.getByRole('alert').first().innerText()).toMatch(/is a length; "5 kg" is a mass/);
  await guess.fill('5 m');
  await guess.press('Enter');
  expect(await ask.innerText()).toContain('Too high.');
  expect(await violations(page)).toStrictEqual([]);
  expect(await tooWide(page)).toBe(0);
  expect(await tooSmall(page)).toStrictEqual([]);
  await ask.getByRole('button', { name: 'Show the answer' }).click();
  await answer(page, 'askScarf.taper').waitFor();
  expect(await ask.innerText()).toContain(`It is ${await answer(page, 'askScarf.taper').innerText()}`);
  await ask.locator('textarea').fill('It has further to go down.');
  await reload(page);
  expect(await ask.locator('textarea').inputValue()).toBe('It has further to go down.');
  expect(await ask.innerText()).toContain('You wrote: 5 m.');
  const fold = (name: string) => page.locator('.class-foot summary', { hasText: name }).click();
  await fold('Hand in what you wrote');
  await page.getByLabel(/^Your name/).fill('Anna');
  const code = page.getByLabel(/^What you hand in/);
  await expect.poll(() => code.inputValue()).toMatch(/^BB:.*:BB$/);
  await fold('collect');
  await page.getByLabel('What was handed in').fill(`${await code.inputValue()} BB:cut`);
  await page.getByRole('group', { name: 'The class', exact: true }).waitFor();
  expect(await page.locator('.class-foot tbody').innerText()).toMatch(/Anna\s+Anna\s+5 m too high/);
  expect(await page.locator('.class-faults').innerText()).toMatch(
    /Number 2 can’t be read: its end is missing/,
  );
  expect(await violations(page, { within: '.class-foot' })).toStrictEqual([]);
  expect(await tooWide(page)).toBe(0);
});
