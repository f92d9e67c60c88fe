/** A field is one line: where its number comes from is told by a mark, by words and under its own key; what one types for stays in view. */
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import {
  answer,
  atRest,
  cell,
  field,
  holds,
  isFocused,
  moreAbout,
  openGroups,
  openNotebook,
  pressOf,
  reads,
  row,
  step,
  textOf,
  type,
  undoAll,
} from './steps';

/** What stands beside a field, and what is read after its name. */
async function told(page: Page, quantity: string): Promise<string[]> {
  const mark = await row(page, quantity).locator('.mark').allTextContents();
  const words = await row(page, quantity)
    .locator('.line :is(input, select)')
    .evaluate((at) =>
      (at.getAttribute('aria-describedby') ?? '')
        .split(' ')
        .map((id) => document.getElementById(id)?.textContent ?? '')
        .join(' '),
    );
  return [mark.join(), words.replaceAll('\u00a0', ' ')];
}
const tells = (page: Page, quantity: string, mark: string, words: string): Promise<void> =>
  expect.poll(() => told(page, quantity)).toStrictEqual([mark, words]);

test('where a number comes from, in a mark and in words', { timeout: 120_000 }, async () => {
  const page = await openNotebook('short-build', { reducedMotion: 'reduce' });

  await step('the boat’s, the shop’s, another’s, this cell’s, the usual', async () => {
    await tells(page, 'scarf.thickness', 'boat', 'the boat’s keelson: thickness');
    await tells(page, 'resin.waste', 'shop', 'the shop’s');
    await tells(page, 'resin.sideArea', 'boat', 'from side: area');
    await tells(page, 'scarf.boards', 'this cell', 'from boards by the plan of pieces');
    await tells(page, 'resin.flatArea', 'usual', 'usual value · besides the hull: a deck, a rudder');
    expect((await told(page, 'bevels.side'))[0]).toBe('Pattern of a frame');
    // Of an answer to a choice it may go without saying: then there is no key, and no way to one is promised.
    await tells(page, 'scarf.part', '', '');
    expect(await row(page, 'scarf.part').locator('.more-key, [aria-keyshortcuts]').count()).toBe(0);
  });

  await step('typed, only here, back to it, measured', async () => {
    await type(page, 'scarf.thickness', '20');
    await tells(page, 'scarf.thickness', 'boat · typed', 'the boat’s keelson: thickness, written');
    await pressOf(page, 'scarf.thickness', 'Only here');
    await tells(page, 'scarf.thickness', 'only here', 'only here · keelson: thickness is 20 mm');
    expect(await isFocused(field(page, 'scarf.thickness'))).toBe(true);
    await pressOf(page, 'scarf.thickness', 'Back to it');
    await pressOf(page, 'scarf.thickness', 'Measured');
    await row(page, 'scarf.thickness').getByLabel('Measured').fill('17 mm');
    const words = 'the boat’s keelson: thickness, written, measured: 17 mm';
    await tells(page, 'scarf.thickness', 'boat · measured', words);
    await tells(page, 'bend.thickness', 'boat · measured', words);
    await undoAll(page);
    await tells(page, 'scarf.thickness', 'boat', 'the boat’s keelson: thickness');
  });

  await step('a number that nobody else has is typed and put back to the usual', async () => {
    await openGroups(cell(page, 'resin'));
    await type(page, 'resin.flatArea', '12');
    await tells(page, 'resin.flatArea', 'typed', 'written here');
    await type(page, 'resin.flatArea', 'keelson.thickness * 200 mm');
    await tells(page, 'resin.flatArea', 'typed', 'written here, from keelson: thickness');
    await pressOf(page, 'resin.flatArea', 'Back to the usual');
    await tells(page, 'resin.flatArea', 'usual', 'usual value · besides the hull: a deck, a rudder');
    await holds(page, 'resin.flatArea', '0 m²');
    await reads(await moreAbout(page, 'resin.flatArea'), /Besides the hull: a deck, a rudder\./);
  });

  await step('the words are seen while the field is in hand', async () => {
    const shape = (quantity: string) =>
      row(page, quantity)
        .locator('.from')
        .evaluate((at) => getComputedStyle(at).clipPath);
    await field(page, 'scarf.thickness').focus();
    expect(await shape('scarf.thickness')).toBe('none');
    await field(page, 'scarf.boards').focus();
    expect(await shape('scarf.thickness')).toBe('inset(50%)');
  });

  await step('its key opens the note, what to measure, steps and slider, and closes', async () => {
    const part = await moreAbout(page, 'bend.thickness');
    await reads(part.locator('.hint'), 'Across the bend.');
    await part.getByRole('button', { name: /^more: / }).click();
    await holds(page, 'bend.thickness', '19 mm');
    await part.getByRole('slider').press('Home');
    await holds(page, 'bend.thickness', '1 mm');
    await row(page, 'bend.thickness').locator('.more-key').click();
    expect(await part.count()).toBe(0);
    await undoAll(page);
  });
});

test('on a phone the leading answers stay in sight over the field in hand', async () => {
  const page = await openNotebook('short-build', {
    width: 360,
    height: 420,
    touch: true,
    reducedMotion: 'reduce',
  });
  const resin = cell(page, 'resin');
  await openGroups(resin);
  const seen = resin.locator('.in-sight dl');
  const edges = () =>
    page.evaluate(() => {
      const answers = document.querySelector('.in-sight dl')?.getBoundingClientRect();
      const at = document.activeElement!.getBoundingClientRect();
      return { answers: answers?.bottom, height: answers?.height, field: at.top };
    });
  const isClear = ({ answers, height, field: at }: Awaited<ReturnType<typeof edges>>) =>
    answers !== undefined && answers > 0 && answers <= at && height! <= 110; // it is there

  await step('the same figures, over the field and not on it', async () => {
    await field(page, 'resin.waste').focus();
    await seen.waitFor();
    expect(isClear(await edges())).toBe(true);
    const figures = await resin.locator('.answer .figure.first b').allInnerTexts();
    for (const text of ['30', '40']) {
      await field(page, 'resin.waste').fill(text);
      await expect.poll(() => answer(page, 'resin.total').innerText()).not.toBe(figures[0]);
      const now = await resin.locator('.answer .figure.first b').allInnerTexts();
      expect(await seen.locator('b').filter({ visible: true }).allInnerTexts()).toStrictEqual(
        now.slice(0, 2),
      );
    }
  });

  await step('they give way to a field at the edge, which makes room for them when one types', async () => {
    // What is typed makes room a frame later: not after the window is moved.
    await atRest(page);
    await page.evaluate(() => {
      scrollBy(0, document.activeElement!.getBoundingClientRect().top - 10);
    });
    await seen.waitFor({ state: 'detached' });
    await page.keyboard.type('5');
    await seen.waitFor();
    expect(isClear(await edges())).toBe(true);
  });

  await step(
    'where the answers themselves are in view, or no field is in hand, they are not doubled',
    async () => {
      await field(page, 'resin.waste').blur();
      expect(await seen.count()).toBe(0);
      await page.setViewportSize({ width: 360, height: 2000 });
      await resin.evaluate((at) => at.scrollIntoView());
      await resin.locator('.input input').first().focus();
      expect(await seen.count()).toBe(0);
    },
  );
});

test('a group opens by itself for a field that a choice brings, and for a way that leads there', async () => {
  const page = await openNotebook('short-build', { reducedMotion: 'reduce' });
  const group = (name: string, of: string) =>
    cell(page, name).locator('details.field-group', { has: page.locator(`[data-quantity="${name}.${of}"]`) });
  const isOpen = (name: string, of: string) => group(name, of).evaluate((at: HTMLDetailsElement) => at.open);

  const curve = row(page, 'bend.curve').locator('select');
  expect(await isOpen('bend', 'along')).toBe(false);
  await curve.focus();
  await curve.selectOption('chord');
  await expect.poll(() => isOpen('bend', 'chord')).toBe(true);
  expect(await isFocused(curve)).toBe(true);
  expect(await isOpen('bend', 'modulus')).toBe(false);

  await page.evaluate(() => {
    location.hash = '#/short-build/bend.modulus';
  });
  await expect.poll(() => isFocused(field(page, 'bend.modulus'))).toBe(true);
  expect(await isOpen('bend', 'modulus')).toBe(true);
  expect(await textOf(cell(page, 'bend').locator('.question'))).toMatch(/bend/);
});

test('the shop’s sheet asks for prices in the way that the yard quotes, and keeps the others', async () => {
  const page = await openNotebook('short-build', { reducedMotion: 'reduce' });
  await page.getByRole('button', { name: 'The boat’s own sheet' }).click();
  const group = page.locator('.boat-sheet details').filter({ hasText: 'Prices of wood' });
  await group.locator('summary').first().click();
  const quoted = row(page, 'shop.quoted').locator('select');
  const asked = () =>
    group
      .locator('[data-quantity]')
      .evaluateAll((rows) => rows.map((at) => at.getAttribute('data-quantity')!.replace('shop.', '')));
  const bySort = (sort: string) => ['A', 'B', 'C', 'D'].map((key) => `${sort}${key}`);
  const section = ['boardThickness', 'boardWidth'];

  await expect.poll(asked).toStrictEqual(['quoted', 'price', ...bySort('price')]);
  await type(page, 'shop.priceB', '1700');
  await quoted.selectOption('length');
  await expect.poll(asked).toStrictEqual(['quoted', 'perLength', ...section, ...bySort('perLength')]);
  await quoted.selectOption('each');
  await expect.poll(asked).toStrictEqual(['quoted', ...section, ...bySort('each')]);

  await step('one that is found leads to the choice that it hangs on', async () => {
    await page.keyboard.press('Control+k');
    await page.getByRole('combobox', { name: 'A word of the trade' }).fill('board 1: price by length');
    await page
      .getByRole('option', { name: /Board 1: price by length/ })
      .first()
      .click();
    await expect.poll(() => isFocused(quoted)).toBe(true);
  });

  await quoted.selectOption('volume');
  await expect.poll(asked).toStrictEqual(['quoted', 'price', ...bySort('price')]);
  await holds(page, 'shop.priceB', '1700/m³');
});
