/**
 * Every length that stands in a field before anybody has typed is one that a builder would say, in millimetres and in
 * inches: a size from a plan or a shop, not a conversion.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { demoBoat, type Given } from '../../src/boat';
import { isChoice, plainInstance } from '../../src/cells';
import { cells } from '../../src/cells/all';
import { bySystem } from '../../src/cells/form/instance';
import { inchTwin, isIssue, plainShown, read, type Shown } from '../../src/measure';
import { catalogueOf } from '../../src/notebook/graph/catalogue';
import { parseNotebook } from '../../src/notebook/markdown';
import { standing } from '../../src/notebook/graph/standing';
import { cellOf } from './cell-of';

const INCH = 0.0254;
const feet: Shown = { length: 'feet', fraction: 16, mass: 'lb', money: '' };
const taped = (kind: string) => kind === 'length' || kind === 'drill';

/** Marks of a builder's tape, by how long a thing is: common practice, no source. */
function isRoundInches(metres: number): boolean {
  const inches = Math.abs(metres) / INCH;
  const mark =
    inches < 1 / 16 ? 1 / 64 : inches < 1 / 4 ? 1 / 32 : inches < 12 ? 1 / 16 : inches < 36 ? 1 / 8 : 1 / 2;
  return isWhole(inches / mark);
}
function isRoundMillimetres(metres: number): boolean {
  const millimetres = Math.abs(metres) * 1000;
  const mark =
    millimetres < 2 ? 0.1 : millimetres < 20 ? 0.5 : millimetres < 100 ? 1 : millimetres < 1000 ? 5 : 10;
  return isWhole(millimetres / mark);
}
const isWhole = (number: number) => Math.abs(number - Math.round(number)) < 1e-6;

/** What is no size of custom, and why. */
const exceptions: Readonly<Record<string, string>> = {
  'transomCut.motorHeight': 'outboard motors are built for transoms of 15, 20, 25 and 30 in the world over',
  'cloth.width': 'cloth is woven 60 in wide, and sold so in metres too',
  'squareCheck.diagonalAC': 'the true diagonal of 2.4 by 1.2 m, which is worked out',
  'squareCheck.diagonalBD': 'the true diagonal of 2.4 by 1.2 m, which is worked out',
  'stemCheck.ahead': 'worked out from two lengths of 5 m',
  'clamps.keelsonRadius': 'straight: a boat without that part has no bend in it',
  'clamps.logRadius': 'straight',
  'clamps.clampRadius': 'straight',
  'clamps.railRadius': 'straight',
};

const valueOf = (text: string): number => {
  const reading = read(text, { kind: 'length', shown: plainShown, field: 'preset' });
  const value = isIssue(reading) ? reading : reading.evaluate(() => Number.NaN);
  return isIssue(value) ? Number.NaN : value;
};

/** Of a pair of presets, those that nobody would say. */
const ragged = (name: string, metric: string, inch: string | undefined): string[] => [
  ...(isRoundMillimetres(valueOf(metric)) ? [] : [`${name}: ${metric}`]),
  ...(inch !== undefined && isRoundInches(valueOf(inch)) ? [] : [`${name}: ${metric} has no round inches`]),
];

test('of every cell, where nothing fills the field', () => {
  const found = cells.flatMap((cell) =>
    Object.entries(cell.inputs).flatMap(([key, spec]) =>
      isChoice(spec) || !taped(spec.kind) || valueOf(spec.preset) === 0
        ? []
        : ragged(`${cell.id}.${key}`, spec.preset, spec.presetInch ?? inchTwin(spec.preset)),
    ),
  );
  const names = new Set(found.map((text) => text.replace(/:.*/, '')));
  expect(found.filter((text) => exceptions[text.replace(/:.*/, '')] === undefined)).toStrictEqual([]);
  // An exception that has become round is none.
  expect(Object.keys(exceptions).filter((name) => !names.has(name))).toStrictEqual([]);
});

describe.each([
  ['millimetres', plainShown, isRoundMillimetres],
  ['feet and inches', feet, isRoundInches],
] as const)('of the boat as she comes, and of the steps that fill a field, in %s', (_, shown, isRound) => {
  const { graph } = standing(
    () => demoBoat,
    (of, ends) => catalogueOf(of, cells.map(plainInstance), ends),
    { entries: () => ({}), shown },
  )().value;
  const own = graph.names.filter((name) => !cells.some(({ id }) => name.startsWith(`${id}.`)));

  test('what the boat is given', () => {
    const given = own.flatMap((name) => {
      const quantity = graph.quantity(name) as Given | undefined;
      const entry = graph.entry(name);
      // A link brings what was worked out; a station's offsets are the plan's.
      return quantity && taped(quantity.kind) && entry && entry.names.length === 0 && quantity.preset !== ''
        ? [[name, graph.value(name)] as const]
        : [];
    });
    const sizes = given.filter(([name]) => !/^\w+\.\w+\.\w+$/.test(name));
    expect(sizes.length).toBeGreaterThan(25);
    expect(sizes.filter(([, value]) => typeof value === 'number' && !isRound(value))).toStrictEqual([]);
  });

  test('customary sizes that a cell proposes', () => {
    const proposed = [
      'fasten.usualLeast',
      'fasten.usualMost',
      'fasten.twoRows',
      'screwMap.customPitch',
      'butt.usualLength',
      'fillet.usualRadius',
      'laminate.usualPitch',
      'clamps.usualPitch',
      'clamps.saidPitch',
    ];
    const amiss = proposed.flatMap((name) => {
      const value = graph.value(name);
      return typeof value === 'number' && isRound(value) ? [] : [`${name}: ${JSON.stringify(value)}`];
    });
    expect(amiss).toStrictEqual([]);
  });
});

test('of every placing that gives a size in both systems', () => {
  const folder = new URL('../../notebooks/', import.meta.url);
  const found = readdirSync(folder)
    .filter((name) => name.endsWith('.md'))
    .flatMap((name) => parseNotebook(readFileSync(new URL(name, folder), 'utf8'), name).places)
    .flatMap(({ cell, instance, presets }) =>
      Object.entries(presets).flatMap(([key, entry]) => {
        const [metric, inch] = bySystem(entry);
        const kind = cellOf(cell)?.inputs[key]?.kind;
        // What was taped in the story of a placing is read to the last mark.
        const isTold = /Length|diagonal/.test(key);
        return kind !== 'length' || inch === undefined || metric === undefined || isTold
          ? []
          : ragged(`${instance}.${key}`, metric, inch);
      }),
    );
  expect(found).toStrictEqual([]);
});
