import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { starters, type Table } from '../../../../src/boat';
import { glue } from '../../../../src/cells/timber/gluing/glue';
import { jointOptions } from '../../../../src/cells/timber/gluing/joint-list';
import { withoutChines, withTwoChines } from '../../odd-boats';
import { measured, provesItsDrawing, testDrawings } from '../../proofs';
import { tryCell } from '../../try-cell';

const paste = { glue: 'polyurethane', length: '10 m', width: '38 mm', film: '1 mm', shop: '20 °C' };
const epoxy = { ...paste, glue: 'epoxy', film: '0.5 mm', waste: '0 %' };
const says = (entries: Readonly<Record<string, string>>) =>
  tryCell(glue, entries)
    .warnings.map((warning) => warning.says)
    .join(' | ');
const names = jointOptions.map(({ id }) => id);
/** Those that `all` adds up: a boat's timbers are solid. */
const joints = names.slice(0, names.indexOf('all'));

describe('glue', () => {
  test('a 6 mm bead on 20 m: two cartridges, of which one lays 10.6 m', () => {
    const tried = tryCell(glue, { ...paste, length: '20 m', beads: '1', bead: '6 mm', waste: '0 %' });
    expect(tried.number('volume') * 1e6).toBeCloseTo((20_000 * Math.PI * 36) / 4 / 1000, 6);
    expect(tried.number('packs')).toBe(2);
    expect(Math.abs(tried.number('fromPack') - 10.61)).toBeLessThan(0.005);
  });

  test('the bead needed closes to the film asked for', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 300 }),
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 6 }),
        (width, tenths, beads) => {
          const tried = tryCell(glue, {
            ...paste,
            width: `${width} mm`,
            film: `${tenths / 10} mm`,
            beads: `${beads}`,
          });
          expect(tried.number('filmLaid') / tried.number('film')).toBeCloseTo(1, 9);
        },
      ),
      { seed: 2, numRuns: 30 },
    );
  });

  test('a face of 90 mm takes three beads, one of 38 a single one', () => {
    expect(tryCell(glue, { joint: 'bottomKeelson', keelsonWidth: '90 mm' }).number('beads')).toBe(3);
    expect(tryCell(glue, { joint: 'sideLogs', logWidth: '38 mm' }).number('beads')).toBe(1);
    expect(tryCell(glue, { joint: 'sideLogs', logWidth: '40 mm' }).number('beads')).toBe(1);
  });

  test('epoxy: 0.38 m² primed on both faces and half a millimetre of paste, by hand', () => {
    const tried = tryCell(glue, { ...epoxy, hardenerPer100: '43', fillerShare: '25 %' });
    expect(tried.number('area')).toBeCloseTo(0.38, 12);
    expect(tried.number('priming') * 1100).toBeCloseTo(2 * 0.38 * 0.125, 12);
    expect(tried.number('total') * 1e6).toBeCloseTo(190, 9);
    // 100 g of epoxy take 90.91 mL, 25 g of flour 16.67: the epoxy is 84.5 % of the paste.
    expect(tried.number('thickened') * 1e6).toBeCloseTo((190 * 90.909) / (90.909 + 16.667), 2);
    const { resin, hardener, mixed, filler } = {
      resin: tried.number('resin'),
      hardener: tried.number('hardener'),
      mixed: tried.number('mixed'),
      filler: tried.number('filler'),
    };
    expect(resin + hardener).toBeCloseTo(mixed, 12);
    expect(hardener / resin).toBeCloseTo(0.43, 12);
    expect(filler).toBeCloseTo(0.25 * tried.number('thickened') * 1100, 12);
    expect(tried.number('packs')).toBe(1);
  });

  test('spread glues go by weight', () => {
    const tried = tryCell(glue, { ...paste, glue: 'resorcinol', waste: '0 %', density: '1000 kg/m^3' });
    expect(tried.number('volume') * 1000).toBeCloseTo(0.38 * 0.325, 12);
    expect(tried.number('priming')).toBe(0);
    expect(tried.number('mixed')).toBe(0);
  });

  test('a run is closed in the open time, which halves with each ten kelvin', () => {
    const at = (shop: string) => tryCell(glue, { ...paste, shop, perMetre: '2 min' }).number('atOnce');
    expect(at('20 °C')).toBeCloseTo(5, 12);
    expect(at('30 °C')).toBeCloseTo(2.5, 12);
    expect(
      tryCell(glue, { ...paste, length: '12 m', perMetre: '2 min', joint: 'bottomKeelson' }).number('goes'),
    ).toBe(3);
    // Port and starboard one after the other: twice two.
    expect(tryCell(glue, { ...paste, length: '12 m', perMetre: '2 min' }).number('goes')).toBe(4);
  });

  describe.each([
    ...starters,
    { id: 'no chines', table: withoutChines },
    { id: 'two chines', table: withTwoChines },
  ])('on the $id', ({ table }) => {
    test.each(['polyurethane', 'epoxy', 'pva'])(
      'all joints together are the sum of the joints, %s',
      (kind) => {
        const tried = tryCell(glue, { glue: kind }, table);
        expect(tried.issues).toEqual({});
        for (const key of ['jointLength', 'area', 'volume']) {
          const each = joints.map((id) => tried.number(`${id}.${key}`));
          const sum = each.reduce((a, b) => a + b, 0);
          expect(tried.number(`all.${key}`) / sum).toBeCloseTo(1, 9);
        }
      },
    );
  });

  test('what is typed for the joint in hand is not said of another', () => {
    const tried = tryCell(glue, { joint: 'sideLogs', length: '1 m', film: '1 mm' });
    const untyped = tryCell(glue, { joint: 'sideLogs' });
    expect(tried.number('volume')).toBeLessThan(untyped.number('volume'));
    expect(tried.number('rubRails.run')).toBe(untyped.number('rubRails.run'));
    expect(tried.number('rubRails.run')).toBeGreaterThan(1);
    // The thickness holds for all joints: half a millimetre more on each.
    const paste = (of: typeof tried, id: string) => of.number(`${id}.total`) / of.number(`${id}.area`);
    expect(paste(tried, 'rubRails') / paste(untyped, 'rubRails')).toBeCloseTo(2, 9);
    expect(tried.number('all.run')).toBeCloseTo(
      joints.reduce((sum, id) => sum + untyped.number(`${id}.run`), 0),
      9,
    );
  });

  test('a joint that the boat has not takes no glue in the table either', () => {
    const tried = tryCell(glue, { joint: 'sideClamps', length: '8 m' }, withoutChines);
    expect(tried.number('sideLogs.run')).toBe(0);
    expect(tried.number('sideLogs.volume')).toBe(0);
  });

  test('the table has a row for each joint that there is, and for no other', () => {
    const rowsIn = (table: Table) => {
      const tried = tryCell(glue, { glue: 'polyurethane' }, table);
      return tried.rows.map(({ id }) => id);
    };
    expect(rowsIn(withoutChines)).toContain('sideClamps');
    expect(rowsIn(withoutChines).filter((id) => /logs/i.test(id))).toStrictEqual([]);
    for (const { table } of starters) expect(rowsIn(table)).toContain('all');
  });

  test('all together are told without beads, and beads are always whole', () => {
    for (const kind of ['polyurethane', 'epoxy', 'pva']) {
      const tried = tryCell(glue, { joint: 'all', glue: kind });
      expect(tried.words).toMatch(/^All joints together take /);
      expect(tried.words).not.toContain('bead');
      for (const id of names) expect(tried.number(`${id}.usualBeads`) % 1).toBe(0);
    }
  });

  test('what multiplies the glue stands in the sentence', () => {
    expect(tryCell(glue, { joint: 'sideLogs' }).words).toMatch(/for 2 pieces, \d+ mm together/);
    expect(tryCell(glue, { joint: 'sideLogs', glue: 'pva' }).words).toMatch(/on 2 pieces, \d+ mm together/);
    expect(tryCell(glue, { joint: 'bottomKeelson' }).words).not.toContain('pieces');
  });

  test('takes its lengths from the boat: keelson seats, logs and clamps', () => {
    const tried = tryCell(glue, {});
    const own = (name: string) => tryCell(glue, { joint: 'sideLogs', length: name }).number('length');
    expect(tried.number('sideLogs.jointLength')).toBe(own('chineLog.totalLength'));
    expect(tried.number('sideClamps.jointLength')).toBe(own('sheerClamp.totalLength'));
    expect(tried.number('bottomKeelson.jointLength')).toBe(own('keelson.totalLength'));
    expect(tried.number('keelsonFrames.jointLength')).toBeCloseTo(
      own('(hull.frames + 2) * keelson.width'),
      12,
    );
  });

  test('a boat without chine logs has no such joint, and says so', () => {
    const tried = tryCell(glue, { joint: 'sideLogs' }, withoutChines);
    expect(tried.number('volume')).toBe(0);
    expect(tried.number('packs')).toBe(0);
    expect(tried.words).toBe('There is no such joint: its length is 0.');
    provesItsDrawing(tried.drawing);
  });

  describe('warnings', () => {
    const short = { ...epoxy, length: '2 m' };
    test('none for a short run of epoxy', () => expect(says(short)).toBe(''));
    test('a gap too wide', () =>
      expect(says({ ...short, film: '4 mm' })).toContain('more than this glue bridges'));
    test('a bead too thin', () => expect(says({ ...paste, bead: '3 mm' })).toContain('leaves places bare'));
    test('too long at once', () =>
      expect(says({ ...epoxy, length: '100 m' })).toContain('can be closed at once'));
    test('too cold', () => expect(says({ ...short, shop: '9 °C' })).toContain('may never cure'));
    test('too damp', () => expect(says({ ...short, moisture: '17 %' })).toContain('The wood holds 17'));
    test('too dry', () => expect(says({ ...short, moisture: '5 %' })).toContain('at least'));
    test('under water', () => {
      expect(says({ ...paste, joint: 'bottomLogs' })).toContain('under water');
      expect(says({ ...paste, joint: 'rubRails' })).not.toContain('under water');
      expect(says({ ...epoxy, joint: 'bottomLogs' })).not.toContain('under water');
    });
  });

  testDrawings(glue, {
    'as it stands': {},
    'three beads': { joint: 'bottomKeelson' },
    epoxy,
    pva: { ...paste, glue: 'pva' },
    'a wide gap': { ...paste, film: '5 mm' },
    'a thin bead': { ...paste, bead: '0.5 mm' },
    'a narrow face': { ...paste, width: '3 mm' },
    'a wide face': { ...paste, width: '1 m' },
  });

  test('the drawing spans the width and the bead it says', () => {
    const tried = tryCell(glue, { ...paste, beads: '1', bead: '6 mm' });
    expect(measured(tried.drawing, '38 mm')).toBeCloseTo(38, 9);
    const round = tried.drawing?.shapes.find((shape) => shape.shape === 'circle');
    expect(round?.shape === 'circle' ? round.radius : 0).toBeCloseTo(3, 9);
    expect(tried.drawing?.shapes.some((shape) => 'text' in shape && shape.text === 'laid, bead 6 mm')).toBe(
      true,
    );
  });

  test('the chart passes through the film in hand', () => {
    const tried = tryCell(glue, { ...paste, film: '1 mm' });
    const at = tried.chart?.lines[0]?.points.find(([film]) => Math.abs(film - 0.001) < 1e-9);
    expect(at?.[1]).toBeCloseTo(tried.number('volume'), 12);
  });
});
