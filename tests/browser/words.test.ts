/** Words of the trade: the first use in a text leads to what they mean, and says it where it stands. */
import { expect, test } from 'vitest';
import { onePage, openPage } from './harness';
import { arrived, isFocused, placeOf, step } from './steps';

const open = onePage(placeOf('short-build', {}));

test('a word says what it means to the pointer and to the focus, and leads to its place', async () => {
  const page = open();
  await arrived(page);
  const word = page.locator('.prose a.word', { hasText: 'taper' });
  const said = page.getByRole('tooltip');
  await word.waitFor();
  expect(await page.locator('.prose a.word').allInnerTexts()).toStrictEqual(['chine logs', 'taper']);
  await step('to the pointer, which may go over to what is said', async () => {
    await word.hover();
    await expect.poll(() => said.innerText()).toBe('A part that grows steadily thinner toward one end.');
    await said.hover();
    expect(await said.isVisible()).toBe(true);
    await page.locator('.masthead').hover();
    await expect.poll(() => said.count()).toBe(0);
  });
  await step('to who comes by the keyboard, and Esc takes it away', async () => {
    await word.focus();
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Tab');
    await expect.poll(() => isFocused(word)).toBe(true);
    await expect.poll(() => said.innerText()).toMatch(/^A part that grows/);
    expect(await word.getAttribute('aria-describedby')).toBe(await said.getAttribute('id'));
    await page.keyboard.press('Escape');
    await expect.poll(() => said.count()).toBe(0);
  });
  await step('on paper it is a word as others are', async () => {
    await page.emulateMedia({ media: 'print' });
    expect(await word.evaluate((one) => getComputedStyle(one).textDecorationLine)).toBe('none');
    await page.emulateMedia({ media: null });
  });
  await page.locator('.prose a.word', { hasText: 'chine logs' }).click();
  await expect.poll(() => isFocused(page.locator('#chine-log-log'))).toBe(true);
  const drawn = page.getByRole('img', { name: /^Chine log\. A section through the corner/ });
  await expect.poll(() => drawn.isVisible()).toBe(true);
});

test('where no cell stands, the hull and the small drawings are lines all the same', async () => {
  const page = await openPage({ small: true, at: '#/words' });
  await page.locator('.hull-in-sight path').first().waitFor({ state: 'attached' });
  await page.locator('.prose svg.drawing path').first().waitFor({ state: 'attached' });
  const fills = await page
    .locator(':is(.hull-in-sight, .prose) svg path[class*="pen-outline"]')
    .evaluateAll((all) => all.map((one) => getComputedStyle(one).fill));
  expect(fills.length).toBeGreaterThan(2);
  expect(new Set(fills)).toStrictEqual(new Set(['none']));
});
