import { describe, expect, test } from 'vitest';
import {
  buildHull,
  isUnread,
  lists,
  offsetsOf,
  readTable,
  starter,
  starters,
  type Table,
} from '../../../src/boat';

import { framePattern } from '../../../src/cells/frames/frame-pattern';
import { strongback } from '../../../src/cells/frames/strongback';
import { plainShown, write } from '../../../src/measure';
import { distance } from '../../../src/kernel';
import { withoutChines, withTwoChines } from '../odd-boats';
import { measured, provesItsDrawing } from '../proofs';
import { tryCell } from '../try-cell';
import { onHandAlone } from '../alone';

const dory = starter('ferry-dory')!;
const punt = starter('creek-punt')!;
const everyBoat = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['no chine', withoutChines] as const,
  ['two chines', withTwoChines] as const,
];

/** An invented boat, to the inside of the skin so that every mark is the table's own: x, half-breadth and height by station. */
function boat(
  stations: readonly { keel: number; sheerX: number; half: number; low: number; high: number }[],
): Table {
  const made = readTable({
    name: 'trial',
    unit: 'mm',
    offsetsTo: 'inside of skin',
    edges: ['keel', 'chine', 'sheer'],
    stations: stations.map(({ keel, sheerX, half, low, high }, i) => ({
      name: `mark ${i}`,
      keel: { x: keel, y: 0, z: low },
      chine: { x: keel, y: half * 0.8, z: low },
      sheer: { x: sheerX, y: half, z: high },
    })),
  });
  if (isUnread(made)) throw new Error(made.faults.join('; '));
  return made;
}

/** Plumb ends, one breadth, one height: all can be reckoned by hand. */
const box = boat([0, 1000, 2000, 3000].map((x) => ({ keel: x, sheerX: x, half: 500, low: 100, high: 600 })));

/** Lines of any number of stations, from transom to stem. */
const manyStations = (count: number) =>
  boat(
    Array.from({ length: count }, (_, i) => {
      const t = i / (count - 1);
      const end = i === 0 ? -120 : i === count - 1 ? 250 : 0;
      const half = i === count - 1 ? 0 : 800 * (1 - 0.5 * Math.abs(t - 0.4)) * Math.min(1, 3 * (1 - t));
      return {
        keel: t * 5200,
        sheerX: t * 5200 + end,
        half,
        low: 300 * (t - 0.4) ** 2,
        high: 560 + 200 * t * t,
      };
    }),
  );

const stationsOf = (table: Table) => lists(table).stations.map(({ id }) => id);
const says = (entries: Record<string, string>, table = dory) =>
  tryCell(strongback, entries, table)
    .warnings.map((one) => one.says)
    .join(' | ');

describe('strongback', () => {
  test('lumber comes in lengths of the place: 4.8 m, or 16 ft for who works in feet', () => {
    const feet = { ...plainShown, length: 'feet' } as const;
    expect(tryCell(strongback).words).toMatch(/\d+ lengths of 4\.8 m make it/);
    expect(tryCell(strongback, {}, undefined, feet).words).toMatch(/\d+ lengths of 16 ft make it/);
    expect(tryCell(strongback, {}, undefined, feet).number('stock')).toBeCloseTo(16 * 0.3048, 12);
    // What the builder types stays what it is.
    expect(tryCell(strongback, { stock: '4.2 m' }, undefined, feet).words).toContain('lengths of 4.2 m');
  });

  test('a box by hand: running distances from one end, legs, jig, lumber', () => {
    const tried = tryCell(
      strongback,
      {
        station: 'mark1',
        overhang: '200 mm',
        clearance: '100 mm',
        gauge: '600 mm',
        spallBeyond: '50 mm',
        legOverlap: '200 mm',
        waste: '0 %',
        stock: '2 m',
      },
      box,
    );
    const of = (key: string) => tried.number(key) * 1000;
    expect(stationsOf(box).map((id) => Math.round(of(`${id}.running`)))).toStrictEqual([
      200, 1200, 2200, 3200,
    ]);
    expect(of('levelLine')).toBeCloseTo(700, 9);
    expect(of('leg')).toBeCloseTo(100, 9);
    expect(of('footAboveJig')).toBeCloseTo(600, 9);
    expect(of('jigLength')).toBeCloseTo(3400, 9);
    expect(of('jigDiagonal')).toBeCloseTo(Math.hypot(3400, 600), 9);
    expect(of('nailLength')).toBeCloseTo(Math.hypot(2000, 500, 100), 9);
    expect(of('crossLength')).toBeCloseTo(Math.hypot(1000, 1000), 9);
    // Rails 2 × 3400; four spalls of 1100; eight legs of 300; four props of 600 √2.
    expect(of('lumber')).toBeCloseTo(6800 + 4400 + 2400 + 2400 * Math.SQRT2, 6);
    expect(tried.number('boards')).toBe(Math.ceil((6800 + 4400 + 2400 + 2400 * Math.SQRT2) / 2000));
    expect(tried.number('railPieces')).toBe(2);
  });

  describe.each(everyBoat)('on the %s', (_id, table) => {
    const tried = tryCell(strongback, {}, table);
    const hull = buildHull(offsetsOf(table));

    test('every station hangs from the level line: leg and height add up to it, and so do foot and its height', () => {
      expect(tried.issues).toStrictEqual({});
      for (const id of stationsOf(table)) {
        expect(tried.number(`${id}.leg`) + tried.number(`${id}.sheerHeight`)).toBeCloseTo(
          tried.number('levelLine'),
          12,
        );
        expect(tried.number(`${id}.footAboveJig`) + tried.number(`${id}.footHeight`)).toBeCloseTo(
          tried.number('levelLine'),
          12,
        );
        expect(tried.number(`${id}.leg`)).toBeGreaterThan(0.149);
      }
    });

    test('frames stand as far apart as the plan’s stations, all from the one end, and the jig takes them all in', () => {
      const [first, ...rest] = hull.frames;
      for (const { name, x } of rest)
        expect(tried.number(`${name}.running`) - tried.number(`${first!.name}.running`)).toBeCloseTo(
          x - first!.x,
          9,
        );
      for (const id of stationsOf(table)) {
        expect(tried.number(`${id}.running`)).toBeGreaterThanOrEqual(0.3 - 1e-12);
        expect(tried.number(`${id}.footRunning`)).toBeLessThanOrEqual(
          tried.number('jigLength') - 0.3 + 1e-12,
        );
      }
    });

    // The second road: the pattern of the frame finds its corners by its own members.
    test('its sheer marks are those of the frame’s pattern', () => {
      for (const { name } of hull.frames) {
        const pattern = tryCell(framePattern, { frame: name }, table);
        expect(tried.number(`${name}.sheerOut`)).toBeCloseTo(pattern.number('side.headHalfBreadth'), 12);
        expect(tried.number(`${name}.sheerHeight`)).toBeCloseTo(pattern.number('sheerHeight'), 12);
        expect(tried.number(`${name}.footHeight`)).toBeCloseTo(pattern.number('keelHeight'), 12);
      }
    });

    test('it is drawn, from either end of the boat, without texts on each other', () => {
      for (const station of [stationsOf(table)[0]!, stationsOf(table).at(-1)!])
        expect(
          provesItsDrawing(tryCell(strongback, { station }, table).drawing).shapes.length,
        ).toBeGreaterThan(10);
    });
  });

  test('the wood stands on the side that the custom asks for, and inboard at both ends', () => {
    const tried = tryCell(strongback, {}, dory);
    expect(stationsOf(dory).map((id) => tried.all[`${id}.stands`])).toStrictEqual([
      'forward',
      'aft',
      'aft',
      'forward',
      'forward',
      'forward',
      'aft',
    ]);
    const turned = tryCell(strongback, { side: 'aft', face: 'inner' }, punt);
    expect(stationsOf(punt).map((id) => turned.all[`${id}.stands`])).toStrictEqual([
      'aft',
      'aft',
      'aft',
      'aft',
      'forward',
    ]);
    expect(tried.number('frame1.farFace')).toBeCloseTo(tried.number('frame1.running') - 0.019, 12);
    expect(tried.number('frame4.farFace')).toBeCloseTo(tried.number('frame4.running') + 0.019, 12);
  });

  test('a raked transom and a stem stand apart at sheer and bottom by their rake', () => {
    const tried = tryCell(strongback, {}, dory);
    const hull = buildHull(offsetsOf(dory));
    expect(Math.atan2(tried.number('transom.footAhead'), tried.number('transom.frameDepth'))).toBeCloseTo(
      -hull.aft.plane.lean,
      9,
    );
    expect(tried.number('frame2.footAhead')).toBeCloseTo(0, 12);
    expect(tried.number('stem.footAhead')).toBeLessThan(-0.4);
  });

  test('legs make good a jig that is out of level: all sheer marks come to one level line', () => {
    const [starboardLow, foreLow] = [0.008, -0.006];
    const tried = tryCell(strongback, { starboardLow: '8 mm', foreLow: '-6 mm' }, dory);
    for (const id of stationsOf(dory)) {
      const of = (key: string) => tried.number(`${id}.${key}`);
      for (const [side, key] of [
        [1, 'legPort'],
        [-1, 'legStarboard'],
      ] as const) {
        const jig =
          (side * of('sheerOut') * starboardLow) / 0.6 -
          (foreLow * of('running')) / tried.number('jigLength');
        expect(jig + of(key)).toBeCloseTo(of('leg'), 12);
      }
    }
    expect(tried.number('frame3.legStarboard')).toBeGreaterThan(tried.number('frame3.legPort'));
  });

  test('from the nail to a mark, and from mark to mark, is what a tape in space reads', () => {
    const tried = tryCell(strongback, {}, dory);
    const at = (id: string, side = 1) =>
      [
        tried.number(`${id}.running`),
        side * tried.number(`${id}.sheerOut`),
        tried.number(`${id}.leg`),
      ] as const;
    const nail = [tried.number('stem.running'), 0, 0] as const;
    for (const id of stationsOf(dory))
      expect(tried.number(`${id}.nailLength`)).toBeCloseTo(distance(nail, at(id)), 12);
    expect(tried.number('frame2.crossLength')).toBeCloseTo(distance(at('frame2'), at('frame3', -1)), 12);
    expect(tried.number('stem.crossLength')).toBeCloseTo(distance(at('stem'), at('frame5', -1)), 12);
    expect(tried.number('stemAhead')).toBeCloseTo(tried.number('transom.nailAhead'), 12);
  });

  test('a boat that is sharp at both ends gives her first frame’s corners', () => {
    const sharp = boat(
      [0, 0.5, 0.85, 0.9, 0.5, 0].map((share, i) => ({
        keel: i * 800,
        sheerX: i * 800 + (i === 0 ? -150 : i === 5 ? 150 : 0),
        half: 600 * share,
        low: 60,
        high: 560,
      })),
    );
    const tried = tryCell(strongback, { station: 'mark0' }, sharp);
    expect(tried.issues).toStrictEqual({});
    expect(tried.number('cornerOut') * 1000).toBeCloseTo(300, 6);
    expect(tried.words).toContain('Set the stem’s sheer mark plumb over');
    // One leg under each end, two under each frame: 2 × 1 + 4 × 2.
    const lapped = tryCell(strongback, { station: 'mark0', legOverlap: '1 m' }, sharp);
    const bare = tryCell(strongback, { station: 'mark0', legOverlap: '0 mm' }, sharp);
    expect(lapped.number('legsLength') - bare.number('legsLength')).toBeCloseTo(10, 9);
  });

  test('says how each kind of station stands', () => {
    const words = (station: string, table = dory) => tryCell(strongback, { station }, table).words;
    expect(words('frame1')).toContain('aft of its line, its forward face on it');
    expect(words('frame4')).toContain('forward of its line, its after face on it');
    expect(words('transom')).toContain('the difference is its rake');
    expect(words('bowTransom', punt)).toContain('Set the transom’s sheer marks plumb over');
    expect(words('stem')).toContain('both on the string');
  });

  describe('warnings', () => {
    test('none on a low jig for a short boat', () => {
      expect(says({ jigTop: '300 mm' }, punt)).toBe('');
    });
    test.each([
      ['level line through the boat', { levelLine: '900 mm' }, 'reach into the jig'],
      ['little room', { levelLine: '1100 mm' }, 'clamps and the plane will not get in'],
      ['high', { jigTop: '800 mm' }, 'plan for steps'],
      ['rails deeper than the jig is high', { jigTop: '100 mm' }, 'lay them flat'],
      ['out of level', { starboardLow: '-11 mm' }, 'wedge it first'],
      ['short lumber', { stock: '3 m' }, 'Each rail takes 2 pieces'],
    ])('%s', (_what, entries, wanted) => {
      expect(says(entries)).toContain(wanted);
    });
  });

  describe('drawing', () => {
    test.each([3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 20])(
      'is drawn without texts on each other: %d stations',
      (count) => {
        const table = manyStations(count);
        for (const station of ['mark0', 'mark1', `mark${count - 1}`])
          expect(
            provesItsDrawing(tryCell(strongback, { station }, table).drawing).shapes.length,
          ).toBeGreaterThan(10);
      },
    );

    test('its running dimensions read as the figures and span them from the after end', () => {
      const tried = tryCell(strongback, {}, dory);
      const text = (key: string) => write(tried.number(key), 'length', plainShown).text;
      for (const id of stationsOf(dory)) {
        const drawn = tried.drawing?.shapes.find(
          (shape) =>
            shape.shape === 'dim' && shape.run === 'horizontal' && shape.text === text(`${id}.running`),
        );
        if (drawn?.shape !== 'dim') throw new Error(`no running dimension for ${id}`);
        expect(drawn.from[0]).toBe(0);
        expect(drawn.to[0]).toBeCloseTo(tried.number(`${id}.running`) * 1000, 9);
      }
      for (const key of ['leg', 'footAboveJig', 'jigLength'])
        expect(measured(tried.drawing, text(key))).toBeCloseTo(tried.number(key) * 1000, 9);
    });

    test('says so where there is no hull', () => {
      const values = tryCell(strongback).all as never;
      const drawn = strongback.draw!(values, onHandAlone(strongback, values, null, String));
      expect(drawn.says).toBe('There is no hull to set up.');
    });
  });
});
