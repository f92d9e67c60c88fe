/** The table of offsets as a cell: what the numbers make, and what is said while they are not all there. */
import { describe, expect, test } from 'vitest';
import { demoBoat, starter, starters, type Table } from '../../../src/boat';
import type { Cell } from '../../../src/cells';
import { lines } from '../../../src/cells/shape/lines';
import { offsets } from '../../../src/cells/shape/offsets';
import { withoutChines, withTwoChines } from '../odd-boats';
import { measured, provesItsDrawing } from '../proofs';
import { tryCell } from '../try-cell';

const skiff = starter('class-skiff')!;

describe('on the class skiff', () => {
  const tried = tryCell(offsets, { station: 'frame3', edge: 'sheer' }, skiff);

  test('the whole by hand: from x -100 to 4120, the diagonal from the corner of the transom to the stem head', () => {
    expect(tried.issues).toStrictEqual({});
    expect(tried.number('length')).toBeCloseTo(4.22, 12);
    expect(tried.number('stations')).toBe(7);
    expect(tried.number('edges')).toBe(3);
    expect(tried.number('depth')).toBeCloseTo((519 - 76) / 1000, 12);
    // The batten bulges little beyond its widest point, 711 mm at frame 2.
    expect(tried.number('beam')).toBeGreaterThanOrEqual(1.422);
    expect(tried.number('beam')).toBeLessThan(1.43);
    // In plan: a tape on the floor knows no height.
    expect(tried.number('diagonal')).toBeCloseTo(Math.hypot(4.22, 0.58), 12);
  });

  test('a point, and the angles of its section', () => {
    expect(['forward', 'halfBreadth', 'height'].map((key) => tried.number(key))).toStrictEqual([
      2.25, 0.642, 0.54,
    ]);
    expect(tried.number('flare')).toBeCloseTo(Math.atan2(642 - 495, 540 - 96), 12);
    expect(tried.number('deadrise')).toBeCloseTo(0, 12);
    expect(tried.number('frame1.flare')).toBeCloseTo(Math.atan2(666 - 526, 525 - 96), 12);
    expect(tried.words).toContain(
      'At frame 3 the sheer stands 642 mm out from the centreline and 540 mm above',
    );
  });

  test('the drawing measures what the numbers say', () => {
    const drawing = provesItsDrawing(tried.drawing);
    expect(measured(drawing, '642 mm')).toBeCloseTo(642, 9);
    expect(measured(drawing, '540 mm')).toBeCloseTo(540, 9);
  });
});

test('a bottom that comes to a point has no deadrise there, in the table of either cell', () => {
  const inTable = (cell: Cell, station: string) => {
    return tryCell(cell, { station: 'frame3' }, skiff).inRow(station, 'deadrise');
  };
  for (const cell of [offsets, lines]) {
    expect(inTable(cell, 'stem')).toBe('none');
    expect(inTable(cell, 'frame3')).toBe(tryCell(cell, { station: 'frame3' }, skiff).number('deadrise'));
    expect(inTable(cell, 'transom')).toBeCloseTo(0, 12);
    // What the picture and the words need is there all the same.
    const there = tryCell(cell, { station: 'stem' }, skiff);
    expect(there.issues).toStrictEqual({});
    expect(there.number('across')).toBe(0);
  }
});

describe('against the plan', () => {
  test('says nothing until the plan’s length is typed, nor within the difference allowed', () => {
    expect(tryCell(offsets, {}, skiff).warnings).toStrictEqual([]);
    expect(tryCell(offsets, { planLength: '4.229 m' }, skiff).warnings).toStrictEqual([]);
  });

  test('five inches short and three narrow are told', () => {
    const says = tryCell(
      offsets,
      { planLength: '4.22 m + 5 in', planBeam: '1.422 m + 3 in' },
      skiff,
    ).warnings.map((warning) => warning.says);
    expect(says).toStrictEqual([
      'The plan says 4347 mm over all, the table makes 4220 mm: look for a number lost or misread before anything is cut.',
      expect.stringMatching(/^The plan says 1498 mm of breadth, the table makes 1422 mm/) as string,
    ]);
  });
});

describe('a frame whose edges do not stand equally far forward', () => {
  const leaning = (by: string) =>
    tryCell(offsets, { 'frame3.sheer.x': by }, skiff).warnings.map(({ says }) => says);
  test('is told, with how far; not for what rounding leaves', () => {
    expect(leaning('2350 mm')).toStrictEqual([
      expect.stringMatching(/^1 frame leans, its edges up to 100 mm apart fore and aft/),
    ]);
    expect(leaning('2250.9 mm')).toStrictEqual([]);
    expect(leaning('2251.1 mm')).toHaveLength(1);
  });
  test('and where two lean, both are counted', () => {
    const { warnings } = tryCell(offsets, { 'frame3.sheer.x': '2350 mm', 'frame2.keel.x': '1470 mm' }, skiff);
    expect(warnings.map(({ says }) => says)).toStrictEqual([
      expect.stringMatching(/^2 frames lean, their edges up to 100 mm/),
    ]);
  });
});

describe('with numbers missing or wrong', () => {
  const without = (
    station: number,
    edge: number,
    more: Partial<Table['stations'][number]['points'][number]>,
  ): Table => ({
    ...skiff,
    stations: skiff.stations.map((one, s) =>
      s === station
        ? { ...one, points: one.points.map((point, e) => (e === edge ? { ...point, ...more } : point)) }
        : one,
    ),
  });

  test('one missing is counted, what hangs on it waits, the rest stands', () => {
    const tried = tryCell(offsets, { station: 'frame3', edge: 'chine' }, without(3, 2, { z: null }));
    expect([tried.number('missing'), tried.number('faults')]).toStrictEqual([1, 0]);
    expect(tried.words).toContain('One number is still missing');
    expect(tried.issues['length']).toContain('frame 3, sheer: the height is missing');
    expect(tried.number('halfBreadth')).toBe(0.495);
    expect(tried.drawing).toBeUndefined();
  });

  test('a wrong one is a fault of its own', () => {
    const tried = tryCell(offsets, {}, without(3, 2, { z: 90 }));
    expect([tried.number('missing'), tried.number('faults')]).toStrictEqual([0, 1]);
    expect(tried.words).toContain('the table has a fault');
  });

  test('a blank table counts every box but the keel’s half-breadths, and nothing is NaN', () => {
    const none = { x: null, y: null, z: null };
    const blank: Table = {
      ...skiff,
      stations: skiff.stations.map(({ name }) => ({ name, points: [{ ...none, y: 0 }, none, none] })),
    };
    const tried = tryCell(offsets, {}, blank);
    expect(tried.number('missing')).toBe(7 * (2 + 3 + 3));
    expect(JSON.stringify(tried)).not.toMatch(/NaN|Infinity/);
    expect(Object.values(tried.issues).every((issue) => issue.length > 10)).toBe(true);
  });

  test('a table without a station waits in words', () => {
    const tried = tryCell(offsets, {}, { ...skiff, stations: [] });
    expect(tried.number('stations')).toBe(0);
    expect(tried.number('faults')).toBeGreaterThan(0);
    expect(tried.issues['station']).toContain('none to choose from');
    expect(tried.issues['length']).toContain('at least 3 stations');
  });
});

test.each([
  ...starters.map(({ id, table }) => [id, table] as const),
  ['without chines', withoutChines] as const,
  ['with two chines', withTwoChines] as const,
])('is drawn at every station of the %s', (_, table) => {
  for (const { name } of table.stations) {
    const station = name.replaceAll(/ (.)/g, (__, letter: string) => letter.toUpperCase());
    const tried = tryCell(offsets, { station, edge: 'sheer' }, table);
    expect(tried.issues['length']).toBeUndefined();
    expect(tried.number('faults')).toBe(0);
  }
  provesItsDrawing(tryCell(offsets, {}, table).drawing);
});

test('the demo boat is within its plan', () => {
  expect(tryCell(offsets, {}, demoBoat).number('lengthOff')).toBe(0);
});
