import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { starters } from '../../../src/boat';
import { sand } from '../../../src/cells/finish/sand';
import { grits, sandings } from '../../../src/trade/grits';
import { type Tried, tryCell } from '../try-cell';

const HOUR = 3600;
const job = (entries: Record<string, string> = {}): Tried => tryCell(sand, { area: '10 m^2', ...entries });

describe('sand', () => {
  test('ten square metres before paint: 80, 120, 150, and of each fourteen discs that do 0.75 m²', () => {
    const tried = job();
    expect(tried.all['sequence']).toBe('80, 120, 150');
    expect([tried.number('grits'), tried.number('finest')]).toStrictEqual([3, 150]);
    expect([tried.number('perGrit'), tried.number('pieces')]).toStrictEqual([14, 42]);
    expect(tried.number('face')).toBe(10);
    expect(job({ times: '3' }).number('face')).toBe(30);
    expect(job({ area: '0 m^2' }).number('pieces')).toBe(0);
    // Exactly a dozen pieces' worth takes a dozen.
    expect(job({ area: '9 m^2' }).number('perGrit')).toBe(12);
    expect(job({ state: 'soft' }).number('perGrit')).toBe(27);
  });

  test('each grain is six to eight tenths of the one before: no step is too long', () => {
    const size = new Map(grits.rows.map(({ label, cells }) => [Number(label), cells.fepa!.value]));
    const steps = sandings.flatMap(({ grits: list }) =>
      list.slice(1).map((grit, i) => size.get(grit)! / size.get(list[i]!)!),
    );
    expect(steps.length).toBeGreaterThan(4);
    for (const step of steps) expect(Math.abs(step - 0.7)).toBeLessThan(0.11);
  });

  test('paper does as much face as it has size', () => {
    const disc = (Math.PI / 4) * 0.125 ** 2;
    for (const [sander, area] of [
      ['disc5', disc],
      ['disc6', (Math.PI / 4) * 0.15 ** 2],
      ['belt', 0.075 * 0.533],
      ['sheet', (0.23 * 0.28) / 4],
    ] as const) {
      const tried = job({ sander });
      expect(tried.number('paper')).toBeCloseTo(area, 5);
      expect(tried.number('usualReach') / 0.75).toBeCloseTo(area / disc, 3);
      expect(tried.number('reach')).toBe(tried.number('usualReach'));
    }
  });

  test('dust: what comes off, its weight, and the heap', () => {
    const tried = job({ takenOff: '100 µm', density: '1000 kg/m^3', bulk: '250 kg/m^3' });
    expect(tried.number('solid') * 1000).toBeCloseTo(3, 9);
    expect(tried.number('dust')).toBeCloseTo(3, 9);
    expect(tried.number('heap') * 1000).toBeCloseTo(12, 9);
  });

  test('wood dust is held to a fifth of what glass and epoxy are, and the mask goes by it', () => {
    expect(job({ work: 'paint' }).number('limit') / job({ work: 'wood' }).number('limit')).toBeCloseTo(5, 9);
    expect(job({ escapes: '0 %' }).number('mask')).toBe(20);
    expect(job({ escapes: '0 %' }).words).toContain('Wear a P100 or FFP3 mask');
    const dusty = job({ escapes: '5 %', changes: '1' });
    expect(dusty.number('over')).toBeGreaterThan(20);
    expect(dusty.number('mask')).toBe(50);
    expect(dusty.words).toContain('Wear a full-face mask');
  });

  test('each grit has its grain, the nearest grade where none is sold', () => {
    for (const { label, cells } of grits.rows) {
      expect(job({ grit: label }).number('grain')).toBe(cells.fepa!.value);
      expect(job({ grit: label, marked: 'cami' }).number('grain')).toBe(cells.cami!.value);
    }
    expect(['grit80', 'grit150'].map((id) => job().inRow(id, 'grain'))).toStrictEqual([
      job({ grit: '80' }).number('grain'),
      job({ grit: '150' }).number('grain'),
    ]);
    expect(job({ grit: '50' }).number('grain')).toBeCloseTo(269e-6, 12);
  });

  test('its graph marks the grits in use, at their grains', () => {
    const points = job().chart!.points!.map(({ x, y, label }) => [label, x, Math.round(y * 1e6)]);
    expect(points).toStrictEqual([
      ['80 grit', 80, 201],
      ['120 grit', 120, 125],
      ['150 grit', 150, 100],
    ]);
  });

  test('a quarter of an hour to a square metre and grit, and never no time', () => {
    expect(job().number('usualTime') / HOUR).toBeCloseTo(7.5, 9);
    expect(job().number('lasts')).toBe(job().number('usualTime'));
    expect(job({ area: '0 m^2' }).number('usualTime') / HOUR).toBeCloseTo(0.1, 9);
  });

  test('more air, less dust: in proportion', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 10, max: 300 }), (changes, room) => {
        const [one, two] = [changes, 2 * changes].map((n) => job({ changes: `${n}`, room: `${room} m^3` }));
        expect(one!.number('over') / two!.number('over')).toBeCloseTo(2, 9);
        expect(one!.number('clears') / two!.number('clears')).toBeCloseTo(2, 9);
      }),
      { seed: 2, numRuns: 15 },
    );
    expect(job({ changes: '6' }).number('clears') / HOUR).toBeCloseTo(Math.log(100) / 6, 9);
  });

  test.each(starters.map(({ id, table }) => [id, table] as const))(
    'has an answer on the %s',
    (_id, table) => {
      expect(tryCell(sand, {}, table).issues).toStrictEqual({});
    },
  );

  test('speaks up: soft epoxy, much dust, a belt on plywood', () => {
    const says = (entries: Record<string, string>) =>
      job({ escapes: '0 %', ...entries })
        .warnings.map((one) => one.says)
        .join(' ');
    expect(says({})).toBe('');
    expect(says({ state: 'soft' })).toContain('Leave it');
    expect(says({ work: 'wood', sander: 'belt' })).toContain('face veneer');
    expect(says({ escapes: '100 %', changes: '1' })).toContain('a stronger fan, or go outdoors');
  });
});
