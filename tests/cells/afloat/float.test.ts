import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { float } from '../../../src/cells/afloat/float';
import { lines } from '../../../src/cells/shape/lines';
import { upOf } from '../../../src/kernel';
import { box } from '../../boat/shapes';
import '../../kernel/near';
import { provesItsDrawing } from '../proofs';
import { tableThrough } from '../shape/table-through';
import { tryCell } from '../try-cell';

const boxTable = tableThrough(box(6, 2, 1));
const inBox = (entries: Readonly<Record<string, string>> = {}) =>
  tryCell(
    float,
    { mass: '3000 kg', centreForward: '3 m', centreHeight: '0.4 m', station: 'frame2', ...entries },
    boxTable,
  );

describe('a box 6 by 2 by 1 m of 3000 kg in fresh water (closed form)', () => {
  test.each([
    ['volume', 3],
    ['toSheer', 12],
    ['movedForward', 3],
    ['movedHeight', 0.4],
    ['movedSide', 0],
    ['floats', 1],
    ['draught', 0.25],
    ['trim', 0],
    ['heel', 0],
    ['leastFreeboard', 0.75],
    // KB 0.125, BM 2^2 / (12 x 0.25), KG 0.4.
    ['stiffness', 0.125 + 4 / 3 - 0.4],
    ['waterplane', 12],
    ['sinks', 120],
    ['place', 3],
    ['waterUp', 0.25],
    ['sheerDown', 0.75],
    ['freePort', 0.75],
    ['freeStarboard', 0.75],
  ])('%s %f', (key, value) => {
    expect(inBox().number(key)).toBeNear(value, 1e-8, 1e-8);
    expect(inBox().all['leastSide']).toBe('both sides');
  });

  test('a person who moves to the side heels her as the wall-sided formula says, and the low side loses', () => {
    const tried = inBox({ moves: 'side', mover: '150 kg', far: '800 mm' });
    expect(tried.number('movedSide')).toBeNear(0.04, 1e-12);
    // G's offset = lever of the wall-sided formula over cos.
    const heel = tried.number('heel');
    const [gm, bm] = [0.125 + 4 / 3 - 0.4, 4 / 3];
    expect(Math.sin(heel) * (gm + (bm / 2) * Math.tan(heel) ** 2)).toBeNear(0.04 * Math.cos(heel), 1e-7);
    expect(heel).toBeGreaterThan(0);
    expect(tried.all['leastSide']).toBe('port');
    expect(tried.number('freePort')).toBeNear((1 - 0.25) * Math.cos(heel) - Math.sin(heel), 1e-7);
    expect(tried.number('freeStarboard')).toBeNear((1 - 0.25) * Math.cos(heel) + Math.sin(heel), 1e-7);
    // The line is painted with everybody in place.
    expect(tried.number('waterUp')).toBeNear(0.25, 1e-8);
    expect(
      inBox({ moves: 'side', mover: '150 kg', far: '800 mm', centreSide: '-40 mm' }).number('heel'),
    ).toBeNear(0, 0, 1e-9);
  });

  test('who walks forward puts her bow down, and who stands up makes her tender', () => {
    const walks = inBox({ moves: 'forward', mover: '150 kg', far: '2 m' });
    expect(walks.number('movedForward')).toBeNear(3.1, 1e-12);
    // Wall-sided along: tan (GM_L + BM_L tan^2 / 2) = 0.1, BM_L 12.
    const t = Math.tan(walks.number('trim'));
    expect(t * (0.125 + 12 - 0.4 + 6 * t ** 2)).toBeNear(0.1, 1e-7);
    expect(walks.number('trimSize')).toBe(walks.number('trim'));
    expect(walks.words).toContain('by the bow');
    const sits = inBox({ centreForward: '2.9 m', centreSide: '-40 mm' });
    expect(sits.number('trimSize')).toBe(-sits.number('trim'));
    expect(sits.number('heelSize')).toBe(-sits.number('heel'));
    expect(sits.words).toMatch(/by the stern and heeled .* to starboard/);
    expect(walks.number('leastAt')).toBeNear(6, 1e-9);
    const stands = inBox({ moves: 'stands', mover: '150 kg', far: '400 mm' });
    expect(stands.number('movedHeight')).toBeNear(0.42, 1e-12);
    expect(stands.number('stiffness')).toBeNear(inBox().number('stiffness') - 0.02, 1e-8);
  });

  test('too heavy she sinks, and too far aft she stands on end; the rest is still drawn', () => {
    const sunk = inBox({ mass: '13 t' });
    expect(sunk.number('floats')).toBe(0);
    expect(sunk.warnings.map(({ says }) => says).join(' ')).toContain('she sinks');
    expect(sunk.drawing).toBeDefined();
    const upended = inBox({ centreForward: '12 m' });
    expect(upended.number('floats')).toBe(0);
    expect(upended.words).toContain('no rest');
  });
});

describe('on every starter', () => {
  test.each(starters.map(({ id, table }) => [id, table] as const))(
    '%s, with her centre plumb over that of level water, floats as the lines have it',
    (_, table) => {
      const level = tryCell(lines, { by: 'weight', weight: '260 kg' }, table);
      const first = tryCell(float, { mass: '260 kg', centreForward: '1.8 m', centreHeight: '0.3 m' }, table);
      expect(first.number('floats')).toBe(1);
      // Move the load until she lies level.
      let forward = 1.8;
      for (let i = 0; i < 12; i += 1) {
        const tried = tryCell(
          float,
          { mass: '260 kg', centreForward: `${forward * 1000} mm`, centreHeight: '0.3 m' },
          table,
        );
        forward -= tried.number('trim') * 8;
      }
      const tried = tryCell(
        float,
        { mass: '260 kg', centreForward: `${forward * 1000} mm`, centreHeight: '0.3 m' },
        table,
      );
      expect(Math.abs(tried.number('trim'))).toBeLessThan(2e-3);
      expect(tried.number('draught')).toBeNear(level.number('deep'), 0, 0.004);
      expect(tried.number('leastFreeboard')).toBeNear(level.number('freeboard'), 0, 0.006);
      expect(tried.number('sinks')).toBeNear(level.number('sinkage'), 0.01);
    },
  );

  test('the waterline to paint lies in the water’s own plane, at every station', () => {
    for (const { table } of starters) {
      const tried = tryCell(
        float,
        { mass: '260 kg', centreForward: '1.7 m', centreHeight: '0.3 m', centreSide: '0 mm' },
        table,
      );
      const hull = buildHull(offsetsOf(table));
      const up = upOf({ heel: tried.number('heel'), trim: tried.number('trim') });
      const heights = tried.rows.map(({ id }) => {
        const { x } = hull.station(id);
        return up[0] * x + up[2] * Number(tried.inRow(id, 'waterUp'));
      });
      expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(1e-9);
    }
  });
});

test('the sea is as dense as its warmth and salt make it, until a density is typed', () => {
  const sea = tryCell(float, { water: 'sea', waterWarmth: '15 °C', waterSalt: '35' });
  expect(sea.number('seaDensity')).toBeNear(1025.9728, 0, 1e-3);
  expect(sea.number('density')).toBe(sea.number('seaDensity'));
  expect(tryCell(float, { water: 'sea', density: '1010 kg/m3' }).number('density')).toBe(1010);
});

test('the drawing shows the freeboard that is told', () => {
  const tried = inBox();
  const drawing = provesItsDrawing(tried.drawing);
  expect(drawing.says).toContain('Draught 250 mm');
  expect(drawing.shapes.some((shape) => 'text' in shape && shape.text === '750 mm')).toBe(true);
  expect(tried.chart?.lines.map(({ name }) => name)).toStrictEqual(['port', 'starboard']);
});

test('the body plan shows every station in the same water, and the low side as near to it as is told', () => {
  const tried = inBox({ moves: 'side', mover: '150 kg', far: '800 mm', centreForward: '2.9 m' });
  const lines = tried.drawing!.shapes.flatMap((shape) => (shape.shape === 'line' ? [shape] : []));
  // Five stations, from the sheer down and up to the sheer again: six corners each. Both ends of the plan come before.
  const round = lines.filter(({ points }) => points.length === 6 && points[2]![0] === points[3]![0]);
  const water = lines.findLast(({ pen }) => pen === 'thin')!.points[0]![1];
  expect(round).toHaveLength(2 + 5);
  const stations = round.slice(2);
  const sheers = stations.flatMap(({ points }) => [points[0]![1], points.at(-1)![1]]);
  expect((Math.min(...sheers) - water) / 1000).toBeNear(tried.number('leastFreeboard'), 1e-6);
});
