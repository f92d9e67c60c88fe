/** One edit, and all that hangs on it: numbers, sentences and drawings move together. */
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import {
  answer,
  answerNumber,
  answers,
  cell,
  field,
  fieldNumber,
  holds,
  isFocused,
  moreAbout,
  numberIn,
  openNotebook,
  openSheet,
  paths,
  press,
  pressOf,
  reads,
  row,
  step,
  texts,
  type,
  undoAll,
  openGroups,
  unfold,
} from './steps';

const degree = Math.PI / 180;

/** The demo boat's table of offsets, mm: chine and sheer of each station, as printed in its plan. */
const ferryDory: readonly (readonly [chine: Point, sheer: Point])[] = [
  [
    [0, 300, 175],
    [-160, 500, 735],
  ],
  [
    [800, 442, 115],
    [800, 727, 668],
  ],
  [
    [1600, 543, 83],
    [1600, 851, 631],
  ],
  [
    [2400, 565, 85],
    [2400, 865, 635],
  ],
  [
    [3200, 484, 130],
    [3200, 750, 690],
  ],
  [
    [4000, 287, 223],
    [4000, 512, 790],
  ],
  [
    [4750, 0, 360],
    [5200, 0, 980],
  ],
];
type Point = readonly [x: number, y: number, z: number];

/** The side as flat triangles between the stations, m²: a little under the smooth surface. */
function sideOfFlats(stations: typeof ferryDory): number {
  const triangle = (a: Point, b: Point, c: Point) => {
    const [u, v] = [b, c].map((p) => [p[0] - a[0], p[1] - a[1], p[2] - a[2]] as const) as [Point, Point];
    return Math.hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]) / 2;
  };
  let sum = 0;
  for (const [index, [chine, sheer]] of stations.entries()) {
    const next = stations[index + 1];
    if (next) sum += triangle(chine, sheer, next[0]) + triangle(sheer, next[1], next[0]);
  }
  return sum / 1e6;
}

/** Angle inside between side and a level bottom, square to a chine of these slopes: from the two directions away from it. */
function insideAngle(plan: number, profile: number, flare: number): number {
  const chine: Point = [1, plan, profile];
  const dot = (a: Point, b: Point) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  const square = (a: Point): Point => {
    const along = dot(a, chine) / dot(chine, chine);
    return [a[0] - along * chine[0], a[1] - along * chine[1], a[2] - along * chine[2]];
  };
  const up = square([0, Math.sin(flare * degree), Math.cos(flare * degree)]);
  const inboard = square([0, -1, 0]);
  return Math.acos(dot(up, inboard) / Math.sqrt(dot(up, up) * dot(inboard, inboard))) / degree;
}

/** Mixed resin, L, by hand from what the cell's fields hold. */
async function resinByHand(page: Page): Promise<number> {
  const of = (key: string) => fieldNumber(page, `resin.${key}`);
  const outside =
    2 * ((await of('bottomArea')) + (await of('sideArea'))) +
    (await of('transomArea')) +
    (await of('bowArea'));
  const first = (await of('uptake')) / 1000; // L/m²
  const sealing =
    (await of('insideArea')) * (first + ((await of('sealCoats')) - 1) * ((await of('laterCoat')) / 1000)) +
    outside * first;
  const cloth = outside * (1 + (await of('laps')) / 100) * ((await of('clothWeight')) / 1000); // kg
  const share = (await of('glassShare')) / 100;
  const density = (2 * (await of('resinDensity')) + (await of('hardenerDensity'))) / 3 / 1000; // kg/L at 2 to 1
  const wetting = (cloth * (1 - share)) / share / density;
  const filling = outside * (await of('fillCoats')) * ((await of('fillFilm')) / 1000); // 1 µm over 1 m² is 1 mL
  // Glue, fillets and filler come with what they waste, kg.
  const weighed = async (key: string) =>
    (await of(key)) / ((await field(page, `resin.${key}`).inputValue()).endsWith(' kg') ? 1 : 1000);
  const pastes =
    (await weighed('glueEpoxy')) + (await weighed('filletEpoxy')) + (await weighed('fillerEpoxy'));
  return (sealing + wetting + filling) * (1 + (await of('waste')) / 100) + pastes / density;
}

test('one edit, and what hangs on it', { timeout: 120_000 }, async () => {
  const page = await openNotebook('short-build', { reducedMotion: 'reduce' });

  await step(
    'a thicker keelson reaches bend and scarf, their drawings and the prose; cleared, all comes back',
    async () => {
      const before = {
        bend: await answers(page, 'bend'),
        scarf: await answers(page, 'scarf'),
        bevels: await answers(page, 'bevels'),
        paths: [await paths(cell(page, 'bend')), await paths(cell(page, 'scarf'))],
        texts: [await texts(cell(page, 'bend')), await texts(cell(page, 'scarf'))],
      };
      const sheet = await openSheet(page);
      await unfold(sheet, 'Keelson');
      await type(page, 'keelson.thickness', '24');

      await reads(answer(page, 'scarf.taper'), `${8 * 24} mm`);
      await holds(page, 'scarf.thickness', '24 mm');
      await holds(page, 'bend.thickness', '24 mm');
      const boards = await fieldNumber(page, 'scarf.boards');
      // As the plan of pieces has it: 4772 mm and 50 mm to trim, in boards of 3 m.
      const board = 3000;
      expect(boards).toBe(Math.ceil((4822 - 192) / (board - 192)));
      expect(await answerNumber(page, 'scarf.joinedLength')).toBeCloseTo(
        boards * board - (boards - 1) * 192,
        0,
      );
      // Stretch goes with the thickness, stiffness with its cube.
      const [share, least, force] = before.bend.map(numberIn) as [number, number, number];
      expect((await answerNumber(page, 'bend.share')) / share).toBeCloseTo(24 / 18, 1);
      expect((await answerNumber(page, 'bend.leastRadius')) / least).toBeCloseTo(24 / 18, 3);
      expect((await answerNumber(page, 'bend.force')) / force).toBeCloseTo((24 / 18) ** 3, 2);

      const prose = page.locator('article.prose > p');
      await reads(
        prose.filter({ hasText: 'Mark the taper' }),
        /Mark the taper, 192 mm back from the end.* 193\.5 mm from end to end/s,
      );
      expect(24 * Math.sqrt(65)).toBeCloseTo(193.5, 1);
      await reads(
        prose.filter({ hasText: 'This board goes down to a radius' }),
        new RegExp(`radius of ${await answer(page, 'bend.leastRadius').innerText()} within`),
      );

      await expect.poll(() => texts(cell(page, 'scarf'))).toContain('192 mm');
      expect(await texts(cell(page, 'scarf'))).toContain('24 mm');
      await expect.poll(() => paths(cell(page, 'bend'))).not.toStrictEqual(before.paths[0]);
      await expect.poll(() => paths(cell(page, 'scarf'))).not.toStrictEqual(before.paths[1]);
      expect(await answers(page, 'bevels')).toStrictEqual(before.bevels);

      await type(page, 'keelson.thickness', '');
      await holds(page, 'keelson.thickness', '18 mm');
      await expect.poll(() => answers(page, 'scarf')).toStrictEqual(before.scarf);
      expect(await answers(page, 'bend')).toStrictEqual(before.bend);
      await expect.poll(() => paths(cell(page, 'scarf'))).toStrictEqual(before.paths[1]);
      await expect
        .poll(async () => [await texts(cell(page, 'bend')), await texts(cell(page, 'scarf'))])
        .toStrictEqual(before.texts);
      await press(page, 'Close the boat’s sheet');
    },
  );

  await step('flare at one frame moves bevels, panel area, resin and the drawing', async () => {
    await openGroups(cell(page, 'bevels'));
    await openGroups(cell(page, 'resin'));
    const drawn = await paths(cell(page, 'bevels'));
    const said = await texts(cell(page, 'bevels'));
    const total = await answerNumber(page, 'resin.total');
    const area = await fieldNumber(page, 'resin.sideArea');
    const plan = await fieldNumber(page, 'bevels.chinePlan');
    const profile = await fieldNumber(page, 'bevels.chineProfile');
    // Flats under a curved side lose one to two hundredths.
    expect(area / sideOfFlats(ferryDory)).toBeGreaterThan(1);
    expect(area / sideOfFlats(ferryDory)).toBeLessThan(1.03);
    const sheerBevel = await answerNumber(page, 'bevels.sheerBevel');
    const flare = await fieldNumber(page, 'bevels.flare');
    const inside = await answerNumber(page, 'bevels.chineAngle');
    expect(Math.abs(inside - insideAngle(plan, profile, flare))).toBeLessThan(0.11);
    // Areas are read to three figures.
    expect(total / (await resinByHand(page))).toBeCloseTo(1, 2);

    await openSheet(page);
    await type(page, 'frame3.side.flare', '35');

    // 300 mm of flare over 550 mm of height was 28.6°; the sheer goes out to 565 + 550 tan 35°.
    const out = 565 + 550 * Math.tan(35 * degree);
    await reads(row(page, 'frame3.sheer.halfBreadth').locator('.means'), `= ${out.toFixed(1)} mm`);
    await holds(page, 'bevels.flare', '35°');

    const bevel = (slope: number, rise: number, flare: number) =>
      Math.atan(slope * Math.cos(flare * degree) - rise * Math.sin(flare * degree)) / degree;
    // The chine itself has not moved, so its bevel can be foretold; slopes are read to three figures.
    const foretold = bevel(plan, profile, 35);
    expect(Math.abs((await answerNumber(page, 'bevels.chineBevel')) - foretold)).toBeLessThan(0.06);
    const atSheer = bevel(
      await fieldNumber(page, 'bevels.sheerPlan'),
      await fieldNumber(page, 'bevels.sheerProfile'),
      await fieldNumber(page, 'bevels.sheerFlare'),
    );
    expect(Math.abs((await answerNumber(page, 'bevels.sheerBevel')) - atSheer)).toBeLessThan(0.06);
    expect(await answerNumber(page, 'bevels.sheerBevel')).not.toBe(sheerBevel);
    expect(
      Math.abs((await answerNumber(page, 'bevels.chineAngle')) - insideAngle(plan, profile, 35)),
    ).toBeLessThan(0.11);

    const wider = ferryDory.map(
      ([chine, sheer], at) => [chine, at === 3 ? [2400, out, 635] : sheer] as const,
    );
    const grown = (await fieldNumber(page, 'resin.sideArea')) - area;
    const grownByFlats = sideOfFlats(wider as typeof ferryDory) - sideOfFlats(ferryDory);
    expect(grown).toBeGreaterThan(0.5 * grownByFlats);
    expect(grown).toBeLessThan(1.5 * grownByFlats);
    const now = await answerNumber(page, 'resin.total');
    expect(now).toBeGreaterThan(total);
    expect(now / (await resinByHand(page))).toBeCloseTo(1, 2);
    await reads(cell(page, 'resin').locator('.in-words'), new RegExp(`mix ${now} L in all`));
    // The sentence further down says the same as the cell.
    await reads(
      page.locator('article.prose > p', { hasText: 'For this hull you mix' }),
      new RegExp(`you mix ${now} L in all`),
    );

    await expect.poll(() => paths(cell(page, 'bevels'))).not.toStrictEqual(drawn);
    const angle = await answer(page, 'bevels.chineAngle').innerText();
    // Where there is no room at its place, a drawing says a number under it.
    expect(said.join(' ')).not.toContain(angle);
    await expect.poll(async () => (await texts(cell(page, 'bevels'))).join(' ')).toContain(angle);
    await press(page, 'Close the boat’s sheet');
    await undoAll(page);
  });

  await step(
    'what is typed is the boat’s; only here it is this cell’s alone; emptied, it is as before',
    async () => {
      const from = row(page, 'scarf.thickness').locator('.from');
      await type(page, 'scarf.thickness', '20');
      await reads(answer(page, 'scarf.taper'), '160 mm');
      await holds(page, 'bend.thickness', '20 mm');
      await reads(from, /^the boat’s keelson: thickness, written/);
      await pressOf(page, 'scarf.thickness', 'Only here');
      await isFocused(field(page, 'scarf.thickness'));
      await type(page, 'scarf.thickness', '25');
      await reads(answer(page, 'scarf.taper'), '200 mm');
      expect(await fieldNumber(page, 'bend.thickness')).toBe(20);
      const sheet = await openSheet(page);
      await unfold(sheet, 'Keelson');
      await type(page, 'keelson.thickness', '22');
      await holds(page, 'bend.thickness', '22 mm');
      expect(await answer(page, 'scarf.taper').innerText()).toBe('200 mm');
      await reads(from, /^only here · keelson: thickness is 22 mm/);
      await type(page, 'scarf.thickness', '');
      await reads(answer(page, 'scarf.taper'), '176 mm');
      // And by the keys of the field: back to the boat’s number, and to its preset.
      await pressOf(page, 'scarf.thickness', 'Only here');
      await type(page, 'scarf.thickness', '25');
      await pressOf(page, 'scarf.thickness', 'Back to it');
      await reads(answer(page, 'scarf.taper'), '176 mm');
      await pressOf(page, 'scarf.thickness', 'Clear');
      await reads(answer(page, 'scarf.taper'), '144 mm');
      await press(page, 'Close the boat’s sheet');
      await undoAll(page);
    },
  );

  await step('a live number in a sentence leads to its answer', async () => {
    await page
      .locator('p', { hasText: 'Mark the taper' })
      .getByRole('button', { name: '144 mm', exact: true })
      .click();
    const place = page.locator('.answer[data-quantity="scarf.taper"]');
    await expect
      .poll(async () => {
        const box = await place.boundingBox();
        return box !== null && box.y >= 0 && box.y < 900;
      })
      .toBe(true);
  });
});

test('the width of the limbers, typed in their cell, is the boat’s: the pattern is drawn by it', async () => {
  const page = await openNotebook('frame-pattern');
  await unfold(cell(page, 'framePattern'), 'Keelson and limbers');
  await type(page, 'limber.limberWidth', '20 mm');
  await reads(answer(page, 'limber.slotWidth'), '130 mm');
  await holds(page, 'framePattern.limberWidth', '20 mm');
  await type(page, 'limber.limberWidth', 'a thumb');
  await expect
    .poll(() => row(page, 'limber.limberWidth').locator('.says').innerText())
    .toMatch(/no quantity "a"/);
  expect(await fieldNumber(page, 'framePattern.moulded')).toBe(70);
  await type(page, 'limber.limberWidth', '');
  await holds(page, 'framePattern.limberWidth', '12 mm');
  // So is the depth of the members, typed at the pattern.
  await unfold(cell(page, 'limber'), 'The frame');
  await type(page, 'framePattern.moulded', '45');
  await holds(page, 'limber.frameDepth', '45 mm');
});

test('the way to a source lands on it with focus: same page, boat’s sheet, other notebook', async () => {
  const page = await openNotebook('the-build', { reducedMotion: 'reduce' });
  await (await moreAbout(page, 'scarf.boards')).locator('.jump').click();
  await expect.poll(() => isFocused(cell(page, 'scarf'))).toBe(true);

  await (await moreAbout(page, 'scarf.thickness')).locator('.jump').click();
  await expect.poll(() => isFocused(row(page, 'keelson.thickness'))).toBe(true);
  const placed = await field(page, 'keelson.thickness').boundingBox();
  expect(placed!.y).toBeGreaterThan(0);
  expect(placed!.y).toBeLessThan(900);

  await type(page, 'bend.radius', 'chineBend.leastRadius');
  await (await moreAbout(page, 'bend.radius')).locator('.jump').first().click();
  await expect.poll(() => new URL(page.url()).hash).toMatch(/^#\/one-thick-or-two-thin/);
  await expect.poll(() => isFocused(cell(page, 'chineBend'))).toBe(true);
  const there = await cell(page, 'chineBend').boundingBox();
  expect(there!.y).toBeLessThan(900);
});
