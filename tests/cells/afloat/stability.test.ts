import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { float } from '../../../src/cells/afloat/float';
import { stability } from '../../../src/cells/afloat/stability';
import { leverChart } from '../../../src/cells/afloat/stability-drawing';
import { held, levers } from '../../../src/cells/afloat/stability-facts';
import type { StabilityValues } from '../../../src/cells/afloat/stability-steps';
import type { Ask, Fact } from '../../../src/cells/form/fact';
import { box } from '../../boat/shapes';
import '../../kernel/near';
import { provesItsDrawing } from '../proofs';
import { tableThrough } from '../shape/table-through';
import { tryCell } from '../try-cell';

const DEGREE = Math.PI / 180;
const boxTable = tableThrough(box(8, 2, 1.2));
/** Half a metre deep in fresh water, its centre half a metre up: KB 0.25, BM 2^2 / (12 x 0.5). */
const inBox = (entries: Readonly<Record<string, string>> = {}) =>
  tryCell(
    stability,
    {
      mass: '8000 kg',
      centreForward: '4 m',
      centreHeight: '0.5 m',
      density: '1000 kg/m3',
      heel: '20°',
      people: '4',
      person: '100 kg',
      aside: '0.8 m',
      breadth: '1.8 m',
      usPerson: '84 kg',
      ...entries,
    },
    boxTable,
  );
const gm = 0.25 + 2 / 3 - 0.5;
const wall = (heel: number) => Math.sin(heel) * (gm + (Math.tan(heel) ** 2 * 2) / 3 / 2);
/** At rest with the centre moved: tan (GM + BM tan^2 / 2) = offset. */
const listOf = (offset: number) => {
  let t = 0;
  for (let i = 0; i < 200; i += 1) t = offset / (gm + t ** 2 / 3);
  return Math.atan(t);
};
/** The side at the sheer, plumb over the water, upright 0.7 m. */
const sideAt = (heel: number) => 0.7 * Math.cos(heel) - Math.sin(heel);
const us = listOf((4 * 84 * 1.8) / 6 / 8000);
const uk = listOf((4 * 75 * 0.8) / 8000);
const own = listOf((4 * 100 * 0.8) / 8000);

describe('a box 8 by 2 by 1.2 m, half a metre deep (closed form)', () => {
  test.each([
    ['beam', 2],
    ['usualBreadth', 1.8],
    ['usualAside', 0.7],
    ['volume', 8],
    ['floats', 1],
    ['metacentricHeight', gm],
    ['radius', 2 / 3],
    ['freeboard', 0.7],
    ['rightingLever', wall(20 * DEGREE)],
    ['rightingMoment', 8000 * wall(20 * DEGREE)],
    ['trim', 0],
    ['leftAtHeel', sideAt(20 * DEGREE)],
    ['wallLever', wall(20 * DEGREE)],
    ['wallOff', 0],
    ['peopleMass', 400],
    ['ownMoment', 320],
    ['peopleHeel', own],
    ['peopleFreeboard', sideAt(own)],
    ['smallHeel', Math.atan(320 / 8000 / gm)],
    ['usAside', 0.3],
    ['usMoment', (4 * 84 * 1.8) / 6],
    ['usHeel', us],
    ['usSinks', 0.7 - sideAt(us)],
    ['usMay', 0.175],
    ['usMeets', 1],
    ['ukMoment', 240],
    ['ukHeel', uk],
    ['ukFreeboard', sideAt(uk)],
    ['ukMeets', 1],
    // 1 m by 0.5 m of it in 8 t.
    ['looseLost', 0.125 / 12 / 8],
    ['looseLeft', gm - 0.125 / 12 / 8],
    ['swampedFloats', 1],
    ['swampedShort', 0],
    ['swampedTilt', 0],
    ['swampedOver', 0],
  ])('%s %f', (key, value) => {
    expect(inBox().number(key)).toBeNear(value, 1e-7, 1e-8);
  });

  // Her bilge comes out at 26.6 degrees: tan = T / (B/2). Beyond, the water in the section is a triangle and a strip.
  test('the formula holds until the bilge comes out, and fails beyond it', () => {
    const at = inBox({ heel: '30°' });
    expect(at.number('rightingLever')).toBeNear(0.257_835, 0, 1e-5);
    expect(at.number('wallOff')).toBeNear(0.263_889 - 0.257_835, 0, 2e-6);
    expect(inBox().chart!.says).toContain('from about 35°');
  });

  // Bilge out: 1 m2 under water of a section 1.2 m high, the sheer at the water: a triangle of legs 1.2 and 2 / 1.2.
  test('the sheer goes under where the wet triangle has the whole side for a leg', () => {
    const under = inBox().number('sheerUnder');
    expect(Math.tan(under)).toBeNear(1.2 / (2 / 1.2), 1e-4);
    expect(inBox().number('swamps')).toBe(under);
    const { says, lines } = inBox().chart!;
    const levers = lines[0]!.points.filter(([heel]) => heel <= under).map(([, lever]) => lever);
    expect(says).toContain(`till then is ${(1000 * Math.max(...levers)).toFixed(1)} mm`);
    // A coaming and a side deck keep it out for longer.
    const decked = inBox({ sideDeck: '200 mm' });
    expect(decked.number('sheerUnder')).toBe(under);
    expect(decked.number('swamps')).toBeGreaterThan(under + 3 * DEGREE);
    expect(inBox({ coaming: '150 mm' }).number('swamps')).toBeGreaterThan(under + 3 * DEGREE);
  });

  test('decks and cockpits are held to their own share of the freeboard', () => {
    const cockpit = { deckLength: '8 m', cockpit: '4 m' };
    expect(inBox({ deck: 'decked' }).number('usMay')).toBeNear(0.35, 1e-9);
    expect(inBox({ deck: 'protected', ...cockpit }).number('usMay')).toBeNear((0.7 * 12) / 32, 1e-9);
    expect(inBox({ deck: 'exposed', ...cockpit }).number('usMay')).toBeNear((0.7 * 10) / 32, 1e-9);
  });

  test('too many to one side: beyond both rules, under water, then over', () => {
    const many = inBox({ people: '16', usPerson: '150 kg' });
    expect(many.number('usMeets') + many.number('ukMeets')).toBe(0);
    expect(many.words).not.toContain('within');
    expect(many.warnings.map(({ says }) => says).join(' ')).toMatch(/By the US rule.*By the UK code/);
    expect(inBox().words).toMatch(/within the US rule.*within the UK code/);
    expect(inBox({ people: '20', person: '250 kg', aside: '3 m' }).words).toMatch(/turn her over|she fills/);
  });

  test('loose water in halves costs a quarter, and in a light boat all she has', () => {
    const one = inBox({ looseLength: '3 m', looseBreadth: '1 m' }).number('looseLost');
    expect(inBox({ looseLength: '3 m', looseBreadth: '1 m', looseParts: '2' }).number('looseLost')).toBeNear(
      one / 4,
      1e-12,
    );
    const lost = inBox({ looseLength: '8 m', looseBreadth: '2 m' });
    expect(lost.number('looseLost')).toBeNear(2 / 3, 1e-9);
    expect(lost.warnings.map(({ says }) => says).join(' ')).toContain('Bail');
  });

  test('full of water she floats as the flotation has it, or holds nobody up', () => {
    const told = (entries: Readonly<Record<string, string>>) => inBox({ swampedLift: '40 kg', ...entries });
    expect(told({ swampedHands: '4', swampedTrim: '0.5°' }).words).toContain(
      '4 people; with yours she lies upright, level',
    );
    expect(told({ swampedHands: '1', swampedTrim: '3°', swampedHeel: '5°' }).words).toContain(
      '1 person; with yours she lies over by 5°, bow 3° down',
    );
    expect(told({ swampedTrim: '-3°' }).words).toContain('upright, stern 3° down');
    expect(told({ swampedHeel: '170°' }).words).toContain('with yours she turns over.');
    expect(told({ swampedHands: '0' }).words).toContain('nobody hanging on');
    const short = told({ swampedLift: '0 kg', swampedHands: '0' });
    expect(short.number('swampedFloats')).toBe(0);
    expect(short.number('swampedShort')).toBe(4);
    expect(short.words).toContain('no lift left');
    expect(short.warnings.at(-1)!.says).toContain('for 4 more');
  });

  test('top-heavy she won’t stay upright, and too heavy there is a sentence', () => {
    const tender = inBox({ centreHeight: '1 m' });
    expect(tender.number('metacentricHeight')).toBeLessThan(0);
    expect(tender.warnings[0]!.says).toContain('upright she won’t stay');
    expect(tender.number('smallHeel')).toBeNear(Math.PI / 2, 1e-9);
    const sunk = inBox({ mass: '19.9 t' });
    expect(sunk.number('floats')).toBe(0);
    expect(sunk.words).toContain('no rest');
    expect(sunk.drawing).toBeDefined();
  });
});

test.each(starters.map(({ id, table }) => [id, table] as const))(
  '%s is as stiff as float has it, and heels as it does',
  (_, table) => {
    const load = { mass: '260 kg', centreForward: '1.8 m', centreHeight: '0.3 m', density: '1000 kg/m3' };
    const tried = tryCell(stability, { ...load, people: '1', person: '75 kg', aside: '300 mm' }, table);
    const floats = tryCell(float, { ...load, moves: 'side', mover: '75 kg', far: '300 mm' }, table);
    const still = tryCell(float, load, table);
    expect(tried.number('metacentricHeight')).toBeNear(still.number('stiffness'), 1e-6);
    expect(tried.number('freeboard')).toBeNear(still.number('leastFreeboard'), 0, 1e-3);
    expect(tried.number('peopleHeel')).toBeNear(floats.number('heel'), 1e-6);
    expect(tried.number('peopleFreeboard')).toBeNear(floats.number('leastFreeboard'), 0, 1e-9);
  },
);

test('the drawing and the chart show the lever that is told', () => {
  const tried = inBox();
  const drawing = provesItsDrawing(tried.drawing);
  expect(drawing.says).toContain('rights her');
  expect(tried.chart!.points![0]).toMatchObject({ x: 20 * DEGREE, y: tried.number('rightingLever') });
  expect(tried.chart!.limits!.map(({ at }) => at)).toStrictEqual([tried.number('swamps')]);
  const decked = inBox({ sideDeck: '200 mm' });
  expect(decked.chart!.limits!.map(({ at }) => at)).toStrictEqual([
    decked.number('sheerUnder'),
    decked.number('swamps'),
  ]);
  // A quarter of a cubic metre: closed up to a coaming of half a metre she lies on her side before any comes in.
  const high = inBox({ mass: '200 kg', coaming: '500 mm', sideDeck: '1 m', centreHeight: '0 m' });
  expect(high.number('swamps')).toBe(Math.PI / 2);
  expect(high.words).toContain('no water comes in');
  expect(high.chart!.says).toContain('No water comes in');
  expect(high.chart!.limits).toStrictEqual([]);
});

test('the formula is drawn as far as it leaves the curve room', () => {
  const [curve, wall] = inBox().chart!.lines;
  const greatest = Math.max(...curve!.points.map(([, lever]) => lever));
  expect(Math.max(...wall!.points.map(([, lever]) => lever))).toBeLessThanOrEqual(1.5 * greatest);
  expect(wall!.points.length).toBeGreaterThan(3);
});

// A drawing is given all values of its cell, so none of them may want it.
test('no value asks for the whole curve: that waits for the chart', () => {
  const hull = buildHull(offsetsOf(boxTable));
  const values = inBox().all as unknown as StabilityValues;
  const found = new Map<unknown, unknown>();
  const ask: Ask = <T>(fact: Fact<never, T>): T => {
    if (!found.has(fact))
      found.set(fact, fact.find(values as never, { hull, ask, found: () => null, beside: () => null }));
    return found.get(fact) as T;
  };
  const told = Object.values<object>(stability.steps).flatMap((one) =>
    'fact' in one ? [one.fact as Fact<never, unknown>] : [],
  );
  told.forEach(ask);
  expect([found.size > told.length / 3, found.has(held), found.has(levers)]).toStrictEqual([
    true,
    true,
    false,
  ]);
  leverChart(values, { hull, say: String, ask });
  expect(found.has(levers)).toBe(true);
});
