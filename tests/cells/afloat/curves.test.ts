import { describe, expect, test } from 'vitest';
import { starters } from '../../../src/boat';
import { curves } from '../../../src/cells/afloat/curves';
import { float } from '../../../src/cells/afloat/float';
import { lines } from '../../../src/cells/shape/lines';
import { box } from '../../boat/shapes';
import '../../kernel/near';
import { provesItsDrawing } from '../proofs';
import { tableThrough } from '../shape/table-through';
import { tryCell } from '../try-cell';

const boxTable = tableThrough(box(6, 2, 1));
const inBox = (entries: Readonly<Record<string, string>> = {}) =>
  tryCell(curves, { draught: '0.25 m', centreHeight: '0.4 m', density: '1000 kg/m3', ...entries }, boxTable);

describe('a box 6 by 2 by 1 m, 0.25 m deep in fresh water (closed form)', () => {
  test.each([
    ['deep', 0.25],
    ['lowest', 0],
    ['leastSheer', 1],
    ['waterline', 0.25],
    ['freeboard', 0.75],
    ['volume', 3],
    ['mass', 3000],
    ['buoyancyForward', 3],
    ['buoyancyHeight', 0.125],
    ['waterplane', 12],
    ['flotation', 3],
    ['waterlineLength', 6],
    ['wetted', 12 + 0.25 * 16],
    ['sinks', 120],
    ['metacentre', 0.125 + 4 / 3],
    ['longMetacentre', 12.125],
    ['stiffness', 0.125 + 4 / 3 - 0.4],
    // W GM_L / L, a hundredth of it.
    ['trimMoment', (3000 * 11.725 * 0.01) / 6],
    ['walks', (3000 * 11.725 * 0.01) / 6 / 75],
  ])('%s %f', (key, value) => {
    expect(inBox({ person: '75 kg' }).number(key)).toBeNear(value, 1e-9, 1e-9);
  });

  test('its table goes up to the sheer in even steps, each loaded by as much as the last', () => {
    const tried = inBox();
    tried.rows.forEach(({ id }, i) => expect(Number(tried.inRow(id, 'mass'))).toBeNear((i + 1) * 2000, 1e-9));
    expect(tried.rows).toHaveLength(6);
  });

  test('a load trims her as float has it', () => {
    // A small trim: the person walks a tenth of what changes it by 10 mm, from the middle forward.
    const { trim, way } = (() => {
      const walks = inBox({ person: '100 kg' }).number('walks') / 10;
      const floats = tryCell(
        float,
        {
          mass: '3000 kg',
          centreForward: '3 m',
          centreHeight: '0.4 m',
          moves: 'forward',
          mover: '100 kg',
          far: `${walks * 1000} mm`,
          station: 'frame2',
        },
        boxTable,
      );
      return { trim: floats.number('trim'), way: 6 };
    })();
    expect(way * Math.tan(trim)).toBeNear(0.001, 1e-5);
  });

  test('begins at the draught at which all aboard float level, no deeper than her sheer', () => {
    expect(inBox({ laden: '3000 kg' }).number('usualDraught')).toBeNear(0.25, 1e-9);
    expect(inBox({ laden: '20 t' }).number('usualDraught')).toBeNear(1, 1e-9);
  });

  test('over her sheer she would fill, and all of her under has no waterline', () => {
    expect(inBox({ draught: '1.2 m' }).words).toContain('the whole hull lies under');
    expect(
      inBox({ centreHeight: '2 m' })
        .warnings.map(({ says }) => says)
        .join(' '),
    ).toContain('above her metacentre');
  });
});

test.each(starters.map(({ id, table }) => [id, table] as const))(
  '%s displaces at a draught what the lines have it',
  (_, table) => {
    const tried = tryCell(curves, { draught: '160 mm', density: '1000 kg/m3' }, table);
    const level = tryCell(lines, { by: 'draught', 'hull.draught': '160 mm' }, table);
    expect(tried.number('mass')).toBeNear(level.number('mass'), 1e-9);
    expect(tried.number('sinks')).toBeNear(level.number('sinkage'), 1e-9);
    expect(tried.number('waterlineLength')).toBeNear(level.number('waterlineLength'), 1e-9);
  },
);

test('the drawing and the chart show what is told', () => {
  const tried = inBox();
  const drawing = provesItsDrawing(tried.drawing);
  expect(drawing.says).toContain('250 mm');
  const [deep, mass] = tried.chart!.lines[0]!.points.at(-1)!;
  expect(deep).toBeNear(1, 1e-9);
  expect(mass).toBeNear(12_000, 1e-9);
  expect(tried.chart!.points![0]).toMatchObject({ x: 0.25 });
});
