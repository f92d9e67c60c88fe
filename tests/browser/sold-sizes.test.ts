/** Drills and screws as the shop calls them, wherever they stand on the page, and with the units chosen. */
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { askForCard, openToPrint, printed, textOn } from './card';
import { fetchedFrom } from './harness';
import { answer, atRest, cell, field, openNotebook, type, unfold } from './steps';

const choose = (page: Page, units: string) =>
  page.locator('select', { hasText: units }).first().selectOption({ label: units });

test('a drill and a screw, in millimetres and in inches: headline, sentence, prose, picture, working and card', async () => {
  const page = await openToPrint('fastening');
  const fasten = cell(page, 'fasten');
  const said = async () => (await fasten.locator('.in-words').innerText()).replaceAll('\u00a0', ' ');
  // 6 mm plywood takes No. 6: 0.7 x 0.113 in is 2.01 mm, and 0.138 + 0.002 in are 3.56 mm.
  await expect.poll(() => answer(page, 'fasten.pilot').innerText()).toBe('2.0 mm');
  expect(await said()).toContain('Holes: 2.0 mm (exactly 2.01 mm) for the thread, 3.6 mm (exactly 3.56 mm)');
  expect(await field(page, 'fasten.screwLength').inputValue()).toBe('20 mm');

  await choose(page, 'ft-in 1/8, lb');
  await expect.poll(() => answer(page, 'fasten.pilot').innerText()).toBe('5/64 in');
  expect(await fasten.locator('.answer[data-quantity="fasten.pilot"] .remainder').innerText()).toBe(
    'exactly 0.079 in',
  );
  expect(await said()).toContain('No. 6 screws, 7/8 in long');
  expect(await said()).toContain(
    'Holes: 5/64 in (exactly 0.079 in) for the thread, 9/64 in (exactly 0.140 in)',
  );
  await expect.poll(() => fasten.locator('figure').first().textContent()).toContain('pilot 5/64 in');
  await expect.poll(() => page.locator('.prose, main').first().innerText()).toContain('Two holes: 5/64 in');
  await unfold(fasten, 'Working');
  await expect
    .poll(() => fasten.locator('.steps li[data-quantity="fasten.pilot"] .result').innerText())
    .toBe('= 5/64 in (exactly 0.079 in)');

  // The keys go from screw to screw.
  await field(page, 'fasten.screwLength').press('ArrowUp');
  await expect.poll(() => field(page, 'fasten.screwLength').inputValue()).toBe('1 in');
  await field(page, 'fasten.screwLength').press('ArrowUp');
  await expect.poll(() => field(page, 'fasten.screwLength').inputValue()).toBe('1 1/4 in');

  await askForCard(page, 'fasten');
  const card = textOn(await printed(page, 'Letter'));
  expect(card).toContain('5/64in');
  expect(card).toContain('exactly0.079in');
});

test('other units are no edit: what the shop’s sizes move is not told as moved by the next one', async () => {
  let bring = () => {};
  const held = new Promise<void>((resolve) => {
    bring = resolve;
  });
  const page = await openNotebook('fastening', {
    before: async (of) => {
      await of.route(fetchedFrom('src/page/watch.ts'), async (route) => {
        await held;
        await route.continue();
      });
    },
  });
  const ripple = page.locator('.ripple').first();
  // What tells what moved is fetched when the page is idle: an edit before it has come is told too.
  await type(page, 'fasten.pitch', '70 mm');
  expect(await ripple.innerText()).not.toMatch(/screws to buy/i);
  bring();
  await expect.poll(() => ripple.innerText()).toMatch(/screws to buy \d+, was/i);
  const [, bought] = /screws to buy (\d+)/i.exec(await ripple.innerText()) ?? [];
  await choose(page, 'ft-in 1/16, lb');
  await expect.poll(() => field(page, 'fasten.screwLength').inputValue()).toBe('7/8 in');
  await atRest(page);
  await type(page, 'fasten.pitch', '60 mm');
  await expect.poll(() => ripple.innerText()).toMatch(new RegExp(`screws to buy \\d+, was ${bought}`, 'i'));
  expect(await ripple.innerText()).not.toContain('Strength of a screw');
});
