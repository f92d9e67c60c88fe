/** Two versions side by side: both numbers and how far they lie apart, wherever a number stands. */
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import {
  allAnswers,
  answer,
  answerNumber,
  cell,
  holds,
  numberIn,
  openNotebook,
  paths,
  press,
  reads,
  row,
  step,
  textOf,
  type,
  undoAll,
} from './steps';

const versions = (page: Page) => page.locator('.versions');
const difference = (page: Page, quantity: string) =>
  page.locator(`.answer[data-quantity="${quantity}"] .difference`);
const dashes = (page: Page, name: string) =>
  cell(page, name)
    .locator('figure.drawing svg')
    .first()
    .locator('path, line, polyline')
    .evaluateAll((marks) => marks.filter((mark) => getComputedStyle(mark).strokeDasharray !== 'none').length);

/** A second version whose scarf is of 24 mm boards. */
async function tryThicker(page: Page): Promise<void> {
  await press(page, 'Keep this and try another');
  await type(page, 'scarf.thickness', '24');
  await reads(answer(page, 'scarf.taper', 'second'), '192 mm');
}

test('two versions of a short build', async () => {
  const page = await openNotebook('short-build');

  await step('the one tried is drawn dashed over the one kept, and goes with it', async () => {
    const alone = await paths(cell(page, 'scarf'));
    const dashed = await dashes(page, 'scarf');
    const bevels = await paths(cell(page, 'bevels'));
    await press(page, 'Keep this and try another');
    await type(page, 'scarf.thickness', '24');
    await expect.poll(() => dashes(page, 'scarf')).toBeGreaterThan(dashed);
    const both = await paths(cell(page, 'scarf'));
    expect(both.length).toBeGreaterThan(alone.length);
    expect(
      await cell(page, 'scarf').locator('figure.drawing svg').first().getAttribute('aria-label'),
    ).toMatch(/18 mm thick.*24 mm thick/s);
    // Where nothing differs nothing is drawn twice.
    expect(await paths(cell(page, 'bevels'))).toStrictEqual(bevels);
    await press(page, 'Drop it');
    await expect.poll(() => paths(cell(page, 'scarf'))).toStrictEqual(alone);
    expect(await dashes(page, 'scarf')).toBe(dashed);
    await undoAll(page);
  });

  await step('letters typed one by one are one step', async () => {
    const entry = row(page, 'scarf.thickness').locator('.entry-line input');
    await entry.fill('');
    await entry.pressSequentially('2 * 11 mm');
    await reads(answer(page, 'scarf.taper'), `${8 * 22} mm`);
    await entry.blur();
    await press(page, 'Undo');
    await reads(answer(page, 'scarf.taper'), '144 mm');
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
  });

  await step('undo goes back edit by edit to the beginning, redo to the end', async () => {
    const start = await allAnswers(page);
    await type(page, 'scarf.thickness', '20');
    await type(page, 'scarf.slope', '12');
    await reads(answer(page, 'scarf.taper'), '240 mm');
    const end = await allAnswers(page);
    await press(page, 'Undo');
    // Typing "12" over was one edit, not one a letter.
    await reads(answer(page, 'scarf.taper'), '160 mm');
    await press(page, 'Undo');
    await expect.poll(() => allAnswers(page)).toStrictEqual(start);
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
    await press(page, 'Redo');
    await press(page, 'Redo');
    await expect.poll(() => allAnswers(page)).toStrictEqual(end);
    expect(await page.getByRole('button', { name: 'Redo', exact: true }).isDisabled()).toBe(true);
    await undoAll(page);
  });

  await step('both numbers and their difference in answers, inputs, sentences and warnings', async () => {
    await tryThicker(page);
    expect(await textOf(answer(page, 'scarf.taper'))).toBe('144 mm');
    expect(await textOf(difference(page, 'scarf.taper'))).toBe(`+${192 - 144} mm`);
    // Two boards of 3 m, as a metric yard sells them, less one taper; 4772 mm and 50 mm to trim are to be reached.
    const joined = (taper: number) => 2 * 3000 - taper;
    expect(await answerNumber(page, 'scarf.joinedLength')).toBe(Math.round(joined(144)));
    expect(await answerNumber(page, 'scarf.joinedLength', 'second')).toBe(Math.round(joined(192)));
    expect(await textOf(difference(page, 'scarf.joinedLength'))).toBe(`−${192 - 144} mm`);
    // Slope is the same, and so is the strength.
    expect(await textOf(difference(page, 'scarf.strengthKept'))).toBe('the same');
    // The bend is of the same keelson; the resin knows nothing of it.
    const least = (version: 'first' | 'second') => answerNumber(page, 'bend.leastRadius', version);
    expect((await least('second')) / (await least('first'))).toBeCloseTo(24 / 18, 2);
    expect(await textOf(difference(page, 'resin.total'))).toBe('the same');

    expect(await textOf(row(page, 'scarf.thickness').locator('.other'))).toBe('Kept: 18 mm');
    expect(await row(page, 'scarf.slope').locator('.other').count()).toBe(0);
    await reads(
      page.locator('article.prose > p', { hasText: 'Mark the taper' }),
      /Mark the taper, 144 mm\s+trying: 192 mm \(\+48 mm\) back from the end/,
    );
    await reads(versions(page), /The version tried is drawn dashed\. It differs in one place/);

    // Edits of the version kept leave the one tried alone.
    await versions(page).getByRole('radio', { name: 'the version kept' }).check();
    await holds(page, 'scarf.thickness', '18 mm');
    expect(await textOf(row(page, 'scarf.thickness').locator('.other'))).toBe('Trying: 24 mm');
    await type(page, 'scarf.thickness', '20');
    await reads(answer(page, 'scarf.taper'), '160 mm');
    expect(await textOf(answer(page, 'scarf.taper', 'second'))).toBe('192 mm');
    expect(await textOf(difference(page, 'scarf.taper'))).toBe('+32 mm');
    await undoAll(page);
  });

  await step('swap, take, drop; each a step that can be undone', async () => {
    await tryThicker(page);
    await press(page, 'Swap the two');
    await reads(answer(page, 'scarf.taper'), '192 mm');
    await reads(answer(page, 'scarf.taper', 'second'), '144 mm');
    expect(await textOf(difference(page, 'scarf.taper'))).toBe('−48 mm');
    await press(page, 'Undo');
    await reads(answer(page, 'scarf.taper'), '144 mm');

    await press(page, 'Keep the one tried');
    await reads(answer(page, 'scarf.taper'), '192 mm');
    expect(await page.locator('.figure.second').count()).toBe(0);
    await holds(page, 'scarf.thickness', '24 mm');
    await press(page, 'Undo');
    await reads(answer(page, 'scarf.taper', 'second'), '192 mm');

    await press(page, 'Drop it');
    await reads(answer(page, 'scarf.taper'), '144 mm');
    expect(await page.locator('.figure.second').count()).toBe(0);
    await press(page, 'Undo');
    await reads(answer(page, 'scarf.taper', 'second'), '192 mm');
    await press(page, 'Redo');
    await expect.poll(() => page.locator('.figure.second').count()).toBe(0);
  });
});

test('one thick board or two thin', async () => {
  const page = await openNotebook('one-thick-or-two-thin');

  await step('half the stretch, half the radius, an eighth of the pull', async () => {
    const before = await allAnswers(page);
    const block = page.locator('.try-this', { hasText: 'Two boards of half the thickness' });
    const share = await answerNumber(page, 'chineBend.share');
    const least = await answerNumber(page, 'chineBend.leastRadius');
    const force = await answerNumber(page, 'chineBend.force');
    const drawn = await dashes(page, 'chineBend');
    await block.getByRole('button').click();
    await expect.poll(() => answer(page, 'chineBend.share', 'second').count()).toBe(1);
    const half = await answerNumber(page, 'chineBend.share', 'second');
    // Figures are read to three places.
    expect(half / share).toBeCloseTo(1 / 2, 2);
    expect((await answerNumber(page, 'chineBend.leastRadius', 'second')) / least).toBeCloseTo(1 / 2, 2);
    expect((await answerNumber(page, 'chineBend.force', 'second')) / force).toBeCloseTo(1 / 8, 2);
    // One board of the two: two together are a quarter, as the cell of the whole stack says.
    expect((await answerNumber(page, 'chineLayers.force')) / force).toBeCloseTo(1 / 4, 2);
    expect(numberIn(await textOf(difference(page, 'chineBend.share')))).toBeCloseTo(half - share, 0);
    await expect.poll(() => dashes(page, 'chineBend')).toBeGreaterThan(drawn);
    await reads(
      page.locator('article.prose > p', { hasText: 'Within that it goes down' }),
      /As it stands, the bend takes [\d.]+ %\s+trying: [\d.]+ %/,
    );

    await block.getByRole('button', { name: /^Put it away again/ }).click();
    await expect.poll(() => allAnswers(page)).toStrictEqual(before);
  });

  await step('four thin layers beside two: a quarter of the stretch each', async () => {
    await page.locator('.try-this', { hasText: 'Four thin layers' }).getByRole('button').click();
    await expect.poll(() => answer(page, 'chineLayers.share', 'second').count()).toBe(1);
    const two = await answerNumber(page, 'chineLayers.share');
    expect((await answerNumber(page, 'chineLayers.share', 'second')) / two).toBeCloseTo(1 / 2, 2);
    // Spring-back is one over the square of the number of layers.
    expect(await textOf(answer(page, 'chineLayers.springBack'))).toBe('25 %');
    expect(await answerNumber(page, 'chineLayers.springBack', 'second')).toBeCloseTo(100 / 16, 0);
    expect(await textOf(row(page, 'chineLayers.plies').locator('.other'))).toBe('Kept: 2');
  });
});
