/** As built: what calipers read in place of the design, and parts that are cut, with what no longer fits them. */
import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright';
import { expect, test } from 'vitest';
import {
  answer,
  answerNumber,
  field,
  fieldNumber,
  holds,
  isFocused,
  moreAbout,
  numberIn,
  openNotebook,
  openSheet,
  press,
  pressOf,
  reads,
  reload,
  row,
  step,
  textOf,
  type,
  undoAll,
  unfold,
} from './steps';

const measured = (page: Page, quantity: string): Locator => row(page, quantity).getByLabel('Measured');
const against = (page: Page, quantity: string): Locator =>
  row(page, quantity).locator('.measured p[role="status"]');
const line = (page: Page, quantity: string): Locator =>
  page.locator(`.numbers [data-quantity="${quantity}"] dd`);
const misfits = (page: Page): Locator => page.locator('.alongside .misfits');
const sheetOf = async (page: Page, part: string): Promise<Locator> => {
  const sheet = await openSheet(page);
  const place = sheet.locator(`#part-${part}`);
  await place.locator('> summary').click();
  await unfold(place, 'What follows');
  return place;
};
const stationMark = (page: Page): Locator => page.locator('.boat-sheet .cut-mark').first();

async function measure(page: Page, quantity: string, text: string): Promise<void> {
  await pressOf(page, quantity, 'Measured');
  await measured(page, quantity).fill(text);
  await measured(page, quantity).blur();
}

test('plywood that calipers thinner: its weight and the bend move in both versions, with the design beside it', async () => {
  const page = await openNotebook('short-build');
  await press(page, 'Keep this and try another');
  await sheetOf(page, 'bottom');
  const mass = numberIn(await textOf(line(page, 'bottom.mass')));
  await measure(page, 'bottom.thickness', '8.6');
  // Half a millimetre or so under the nominal 9: the weight goes with the thickness.
  await expect
    .poll(async () => numberIn(await textOf(line(page, 'bottom.mass'))) / mass)
    .toBeCloseTo(8.6 / 9, 2);
  expect(await textOf(line(page, 'bottom.mass'))).toMatch(/designed: .*\(\+/);
  expect(await line(page, 'bottom.mass').locator('.other').count()).toBe(0);
  expect(await fieldNumber(page, 'bottom.thickness')).toBe(9);
  expect(await measured(page, 'bottom.thickness').inputValue()).toBe('8.6 mm');
  await reads(against(page, 'bottom.thickness'), '−0.4 mm against the designed 9 mm');

  // The keelson too, and with it the scarf and the bend of every version.
  await unfold(page.locator('.boat-sheet'), 'Keelson');
  const bend = await answerNumber(page, 'bend.leastRadius');
  await measure(page, 'keelson.thickness', '17 mm');
  for (const version of ['first', 'second'] as const) {
    await reads(answer(page, 'scarf.taper', version), `${8 * 17} mm`);
    expect((await answerNumber(page, 'bend.leastRadius', version)) / bend).toBeCloseTo(17 / 18, 2);
  }
  // The scarf's field is the keelson's: what is designed, and beneath it what is measured.
  await holds(page, 'scarf.thickness', '18 mm');
  expect(await measured(page, 'scarf.thickness').inputValue()).toBe('17 mm');

  // The version tried may be designed otherwise; the boat is one.
  await type(page, 'keelson.thickness', '24 mm');
  await reads(against(page, 'keelson.thickness'), '−7 mm against the designed 24 mm');
  await reads(
    row(page, 'keelson.thickness').locator('.other'),
    /Kept is designed 18 mm; what is measured or cut holds in both/,
  );
  await reads(answer(page, 'scarf.taper', 'second'), `${8 * 17} mm`);

  await row(page, 'keelson.thickness').getByRole('button', { name: 'Back to the design' }).click();
  await reads(answer(page, 'scarf.taper'), `${8 * 18} mm`);
  await reads(answer(page, 'scarf.taper', 'second'), `${8 * 24} mm`);
  expect(await isFocused(field(page, 'keelson.thickness'))).toBe(true);
  await press(page, 'Undo');
  await reads(answer(page, 'scarf.taper', 'second'), `${8 * 17} mm`);
  expect(await measured(page, 'keelson.thickness').inputValue()).toBe('17 mm');
});

test('what is measured and can’t be: said at the place', async () => {
  const page = await openNotebook('short-build');

  await step('what can’t be read is kept, and the rest goes on; by keyboard alone', async () => {
    await field(page, 'scarf.slope').focus();
    await page.keyboard.press('Shift+Tab');
    expect(await isFocused(field(page, 'scarf.thickness'))).toBe(true);
    await page.keyboard.press('Alt+Enter');
    // They are fetched when they are first asked for.
    await reads(page.locator(':focus'), /keelson/i);
    await page.keyboard.press('ArrowRight');
    expect(await textOf(page.locator(':focus'))).toBe('Measured');
    await page.keyboard.press('Enter');
    await measured(page, 'scarf.thickness').waitFor();
    expect(await isFocused(measured(page, 'scarf.thickness'))).toBe(true);
    await page.keyboard.type('17 furlong');
    await reads(against(page, 'scarf.thickness'), /furlong/);
    expect(await measured(page, 'scarf.thickness').getAttribute('aria-invalid')).toBe('true');
    await page.keyboard.press('Tab');
    await reload(page);
    expect(await measured(page, 'scarf.thickness').inputValue()).toBe('17 furlong');
    await measured(page, 'scarf.thickness').fill('17.5');
    await reads(answer(page, 'scarf.taper'), `${8 * 17.5} mm`);
    // Emptied and left, it goes away, and the design holds.
    await measured(page, 'scarf.thickness').fill('');
    await reads(answer(page, 'scarf.taper'), `${8 * 18} mm`);
    await page.keyboard.press('Enter');
    expect(await row(page, 'scarf.thickness').locator('.measured').count()).toBe(0);
    expect(await isFocused(field(page, 'scarf.thickness'))).toBe(true);
    await undoAll(page);
  });

  await step('a link named in a measurement is refused with a sentence', async () => {
    await measure(page, 'scarf.thickness', 'keelson.thickness - 1 mm');
    await reads(
      against(page, 'scarf.thickness'),
      /follows nothing else; write the number without keelson.thickness/,
    );
    expect(await measured(page, 'scarf.thickness').inputValue()).toBe('keelson.thickness - 1 mm');
    await undoAll(page);
  });

  await step('other plywood than was planned', async () => {
    await sheetOf(page, 'side');
    const mass = numberIn(await textOf(line(page, 'side.mass')));
    await pressOf(page, 'side.plywood', 'Used another');
    const used = row(page, 'side.plywood').getByLabel('Used in fact');
    await used.selectOption('okoume');
    await expect.poll(async () => numberIn(await textOf(line(page, 'side.mass')))).toBeLessThan(mass);
    await reads(row(page, 'side.plywood').locator('.measured p'), /^in place of Douglas-fir/);
  });
});

test('a frame that is cut', { timeout: 120_000 }, async () => {
  const page = await openNotebook('short-build');

  await step('what no longer fits it is told, also after a reload, and undone', async () => {
    const sheet = await openSheet(page);
    await sheet.locator('.pick select').selectOption('frame3');
    const mark = stationMark(page);
    await mark.getByRole('button', { name: 'Mark frame 3 as cut' }).click();
    await reads(mark.locator('p'), 'Frame 3: cut. It stays as it is, whatever is edited. All still fits it.');
    await reads(misfits(page), /All that is cut still fits\s+Frame 3\./);
    await unfold(sheet, 'What follows at frame 3');
    const bevel = numberIn(await textOf(line(page, 'frame3.chine.side.bevel')));

    // Its neighbour 60 mm wider.
    await sheet.locator('.pick select').selectOption('frame4');
    const wider = (await fieldNumber(page, 'frame4.chine.halfBreadth')) + 60;
    await type(page, 'frame4.chine.halfBreadth', `${wider}`);
    const told = misfits(page).locator('li', { hasText: 'Chine, side: bevel' });
    await reads(misfits(page).locator('h2'), 'No longer fits what is cut');
    await reads(misfits(page).locator('h3'), 'Frame 3 is cut');
    const more = misfits(page).getByRole('button', { name: /^and \d+ more$/ });
    await more.click();
    await reads(told, /Chine, side: bevel was .*°, now .*° \(.*°\)/);
    const [was, now, by] = [...(await textOf(told)).replaceAll('−', '-').matchAll(/[+-]?[\d.]+(?=°)/g)].map(
      ([text]) => Number(text),
    ) as [number, number, number];
    expect(was).toBe(bevel);
    expect(now - was).toBeCloseTo(by, 1);
    await sheet.locator('.pick select').selectOption('frame3');
    await unfold(sheet, 'What follows at frame 3');
    expect(numberIn(await textOf(line(page, 'frame3.chine.side.bevel')))).toBe(now);
    await reads(mark.locator('> p'), /\d+ numbers no longer fit it\./);

    // The plan moved under the frame: the design moves alone.
    const half = await fieldNumber(page, 'frame3.sheer.halfBreadth');
    await type(page, 'frame3.sheer.halfBreadth', `${half - 10}`);
    await reads(
      row(page, 'frame3.sheer.halfBreadth').locator('.as-built'),
      `Cut to ${half} mm. The design says ${half - 10} mm (−10 mm); the part stays.`,
    );
    await reads(
      misfits(page).locator('li', { hasText: 'Half-breadth of the sheer' }),
      `Half-breadth of the sheer at frame 3 is cut to ${half} mm; the design now says ${half - 10} mm (−10 mm)`,
    );

    await reload(page);
    await reads(misfits(page).locator('h3'), 'Frame 3 is cut');
    await reads(
      misfits(page).locator('li').first(),
      `Half-breadth of the sheer at frame 3 is cut to ${half} mm; the design now says ${half - 10} mm (−10 mm)`,
    );

    await (await openSheet(page)).locator('.pick select').selectOption('frame3');
    await stationMark(page).getByRole('button', { name: 'Frame 3: not cut after all' }).click();
    await expect.poll(() => misfits(page).count()).toBe(0);
    await holds(page, 'frame3.sheer.halfBreadth', `${half - 10} mm`);
    expect(await row(page, 'frame3.sheer.halfBreadth').locator('.as-built').count()).toBe(0);
    await press(page, 'Undo');
    await reads(misfits(page).locator('h3'), 'Frame 3 is cut');
    await press(page, 'Close the boat’s sheet');
    await undoAll(page);
  });

  await step('of two versions each says what no longer fits it, and once what both say', async () => {
    const sheet = await openSheet(page);
    await sheet.locator('.pick select').selectOption('frame3');
    await stationMark(page).getByRole('button', { name: 'Mark frame 3 as cut' }).click();
    const half = await fieldNumber(page, 'frame3.sheer.halfBreadth');
    const line = misfits(page).locator('li', { hasText: 'Half-breadth of the sheer' });
    await type(page, 'frame3.sheer.halfBreadth', `${half + 9}`);
    await reads(line, /the design now says .* \(\+9 mm\)/);
    await press(page, 'Keep this and try another');
    await expect.poll(() => line.count()).toBe(1);
    await type(page, 'frame3.sheer.halfBreadth', `${half - 11}`);
    await expect.poll(() => misfits(page).locator('h4').allInnerTexts()).toStrictEqual(['Kept', 'Trying']);
    await reads(line.first(), /\(\+9 mm\)/);
    await reads(line.last(), /\(−11 mm\)/);
    await type(page, 'frame3.sheer.halfBreadth', `${half}`);
    await reads(misfits(page).locator('h4 + p'), 'All still fits.');
    await press(page, 'Close the boat’s sheet');
    await undoAll(page);
  });

  await step('beside the cells that ask for a frame it is one press; the boat file carries it', async () => {
    await row(page, 'bevels.frame').locator('.more-key').click();
    await row(page, 'bevels.frame').getByRole('button', { name: 'Mark frame 3 as cut' }).click();
    await reads(row(page, 'bevels.frame').locator('.cut-mark p'), 'Frame 3: cut. All still fits it.');
    // Turned to another frame, the cell speaks of that one, and nothing is out of fit.
    await row(page, 'bevels.frame').locator('select').selectOption('frame2');
    await row(page, 'bevels.frame').getByRole('button', { name: 'Mark frame 2 as cut' }).waitFor();
    await reads(misfits(page).locator('h2'), 'All that is cut still fits');

    await page.locator('.desk > summary').click();
    const download = page.waitForEvent('download');
    await press(page, 'Save boat to a file');
    const text = await readFile(await (await download).path(), 'utf8');
    expect(Object.keys((JSON.parse(text) as { asBuilt: { cut: object } }).asBuilt.cut)).toStrictEqual([
      'frame3',
    ]);
    await press(page, 'Undo');
    await press(page, 'Undo');
    await expect.poll(() => misfits(page).count()).toBe(0);
    await page
      .getByLabel('Boat file')
      .setInputFiles({ name: 'cut.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await reads(misfits(page).locator('p').first(), 'Frame 3.');
  });
});

test('on a phone the keys are a thumb high, and the strip says how much no longer fits', async () => {
  const page = await openNotebook('short-build', {
    width: 390,
    height: 800,
    touch: true,
    reducedMotion: 'reduce',
  });
  await moreAbout(page, 'scarf.thickness');
  for (const touched of ['.more-key', '.measure-key', '.depart-key', '.step']) {
    const { width, height } = (await row(page, 'scarf.thickness').locator(touched).first().boundingBox())!;
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(44);
  }
  await row(page, 'bevels.frame').locator('.more-key').click();
  await row(page, 'bevels.frame').getByRole('button', { name: 'Mark frame 3 as cut' }).click();
  await type(page, 'bevels.siding', '30');
  await reads(page.locator('.hull-in-sight .brief'), /no longer fit/);
});
