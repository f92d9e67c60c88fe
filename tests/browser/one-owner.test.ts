/** One number, one owner: what calipers read of a timber in one cell holds in every cell, and in the boat's weight. */
import type { Locator, Page } from 'playwright';
import { expect, test } from 'vitest';
import {
  answer,
  answerNumber,
  cell,
  fieldNumber,
  holds,
  numberIn,
  openGroups,
  openNotebook,
  paths,
  pressOf,
  reads,
  row,
  step,
  textOf,
  texts,
  type,
  undoAll,
} from './steps';

const measured = (page: Page, quantity: string): Locator => row(page, quantity).getByLabel('Measured');
/** The fields that show the keelson's thickness. */
const fields = ['bend.thickness', 'laminate.thickness', 'scarf.thickness', 'boards.keelsonThickness'];

test('a keelson that calipers thinner', { timeout: 120_000 }, async () => {
  const page = await openNotebook('keelson', { reducedMotion: 'reduce' });
  for (const name of ['bend', 'laminate', 'scarf', 'boards']) await openGroups(cell(page, name));
  const told = page.locator('article.prose > p', { hasText: 'The keelson is' });
  const weight = async () => numberIn((await textOf(told)).replace(/^.*weighs/s, ''));
  const before = {
    share: await answerNumber(page, 'bend.share'),
    weight: await weight(),
    drawn: [await paths(cell(page, 'bend')), await paths(cell(page, 'scarf'))],
  };

  await step('measured in one cell, it is measured in all', async () => {
    await pressOf(page, 'bend.thickness', 'Measured');
    await measured(page, 'bend.thickness').fill('15 mm');
    await measured(page, 'bend.thickness').blur();
    for (const name of fields) {
      await expect.poll(() => measured(page, name).inputValue()).toBe('15 mm');
      await holds(page, name, '18 mm');
    }
  });

  await step('numbers, weight and drawings follow', async () => {
    await reads(answer(page, 'scarf.taper'), `${8 * 15} mm`);
    await expect
      .poll(async () => (await answerNumber(page, 'bend.share')) / before.share)
      .toBeCloseTo(15 / 18, 1);
    await expect.poll(async () => (await weight()) / before.weight).toBeCloseTo(15 / 18, 1);
    await reads(told, /^The keelson is 15 mm thick/);
    await expect.poll(() => texts(cell(page, 'scarf'))).toContain('120 mm');
    await expect.poll(() => paths(cell(page, 'bend'))).not.toStrictEqual(before.drawn[0]);
    await expect.poll(() => paths(cell(page, 'scarf'))).not.toStrictEqual(before.drawn[1]);
  });

  await step('undone, all is as it was', async () => {
    await undoAll(page);
    await reads(answer(page, 'scarf.taper'), `${8 * 18} mm`);
    await expect.poll(weight).toBe(before.weight);
    await expect.poll(() => paths(cell(page, 'bend'))).toStrictEqual(before.drawn[0]);
    await expect.poll(() => paths(cell(page, 'scarf'))).toStrictEqual(before.drawn[1]);
  });

  await step('only here, it leaves the others alone', async () => {
    await pressOf(page, 'scarf.thickness', 'Only here');
    await type(page, 'scarf.thickness', '25');
    await reads(answer(page, 'scarf.taper'), `${8 * 25} mm`);
    await reads(row(page, 'scarf.thickness').locator('.from'), /^only here · keelson: thickness is 18 mm/);
    for (const name of fields.filter((one) => one !== 'scarf.thickness'))
      expect(await fieldNumber(page, name)).toBe(18);
    expect(await weight()).toBe(before.weight);
  });
});
