import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { bevels } from '../../../src/cells/frames/bevels';
import { framePattern } from '../../../src/cells/frames/frame-pattern';
import { dihedral } from '../../../src/kernel';
import { measured, provesItsDrawing, testDrawings } from '../proofs';
import { withoutChines, withTwoChines } from '../odd-boats';
import { tryCell } from '../try-cell';

const DEGREE = Math.PI / 180;
/** A plumb-sided frame with level, parallel lines, but for what is written. */
const plain = {
  flare: '0 deg',
  sheerFlare: '0 deg',
  deadrise: '0 deg',
  chinePlan: '0',
  chineProfile: '0',
  keelProfile: '0',
  sheerPlan: '0',
  sheerProfile: '0',
  custom: 'larger',
};
/** Two roads of a dozen operations each on numbers near 1; rounding leaves 1e-15. */
const CLOSE = 1e-10;
const says = (entries: Record<string, string>) =>
  tryCell(bevels, { ...plain, ...entries }).warnings.map((one) => one.says);

describe('bevels', () => {
  test('flare 20°, plan 10°, level: 9.408°, and 3.15 mm off a 19 mm frame', () => {
    const tried = tryCell(bevels, { ...plain, flare: '20 deg', chinePlan: 'tan(10 deg)', siding: '19 mm' });
    expect(tried.number('chineBevel') / DEGREE).toBeCloseTo(9.408, 3);
    expect(tried.number('chineRemoval') * 1000).toBeCloseTo(19 * Math.tan(9.408 * DEGREE), 3);
    expect(tried.number('chineGauge') / DEGREE).toBeCloseTo(90 - 9.408, 3);
  });

  test('a plumb side has the angle of its plan, a bottom that of its profile', () => {
    const tried = tryCell(bevels, { ...plain, sheerPlan: 'tan(12 deg)', chineProfile: 'tan(7 deg)' });
    expect(tried.number('sheerBevel') / DEGREE).toBeCloseTo(12, 10);
    expect(tried.number('bottomBevel') / DEGREE).toBeCloseTo(-7, 10);
  });

  test('gauge and bevel make a right angle at every edge, and the far face loses thickness × tangent', () => {
    const tried = tryCell(bevels, { frame: 'frame5', siding: '25 mm' });
    for (const edge of ['chine', 'sheer', 'bottom']) {
      const bevel = Math.abs(tried.number(`${edge}Bevel`));
      expect(tried.number(`${edge}Gauge`) + bevel).toBeCloseTo(Math.PI / 2, 12);
      expect(tried.number(`${edge}Removal`)).toBeCloseTo(0.025 * Math.tan(bevel), 12);
    }
    expect(tried.number('wind')).toBeCloseTo(
      Math.abs(tried.number('chineBevel') - tried.number('sheerBevel')),
      12,
    );
  });

  test('parallel lines have no bevel, and side and bottom meet at 90° + flare + deadrise', () => {
    const tried = tryCell(bevels, { ...plain, flare: '25 deg', deadrise: '15 deg' });
    expect(tried.number('chineBevel')).toBe(0);
    expect(tried.number('chineAngle') / DEGREE).toBeCloseTo(130, 9);
    expect(tried.number('logPlaning') * 1000).toBeCloseTo(19 * Math.tan(40 * DEGREE), 9);
  });

  test('mirrored fore and aft, every bevel changes its sign and no angle its size', () => {
    const lines = { flare: '18 deg', sheerFlare: '24 deg', deadrise: '9 deg' };
    const there = tryCell(bevels, {
      ...lines,
      chinePlan: '0.2',
      chineProfile: '0.1',
      sheerPlan: '0.3',
      sheerProfile: '-0.05',
    });
    const back = tryCell(bevels, {
      ...lines,
      chinePlan: '-0.2',
      chineProfile: '-0.1',
      sheerPlan: '-0.3',
      sheerProfile: '0.05',
    });
    for (const key of ['chineBevel', 'sheerBevel', 'bottomBevel'])
      expect(back.number(key)).toBeCloseTo(-there.number(key), 12);
    for (const key of ['chineAngle', 'chineRemoval', 'wind'])
      expect(back.number(key)).toBeCloseTo(there.number(key), 12);
  });

  // The second road: the hull takes its bevels from the normals of the skin, the cell from slopes and flare.
  describe.each(starters.map(({ id, table }) => [id, table] as const))('on the %s', (_id, table) => {
    const hull = buildHull(offsetsOf(table));
    const tried = tryCell(bevels, {}, table);

    test.each(hull.frames.map((frame) => [frame.name, frame] as const))(
      'the bevels of %s are those of the hull',
      (name, frame) => {
        expect(Math.abs(tried.number(`${name}.chineBevel`) - frame.bevel('chine', 'side'))).toBeLessThan(
          CLOSE,
        );
        expect(Math.abs(tried.number(`${name}.sheerBevel`) - frame.bevel('sheer', 'side'))).toBeLessThan(
          CLOSE,
        );
        expect(Math.abs(tried.number(`${name}.bottomBevel`) - frame.bevel('chine', 'bottom'))).toBeLessThan(
          CLOSE,
        );
        const keel = frame.bevel('keel', 'bottom');
        expect(Math.abs(tried.number(`${name}.keelBevel`) - keel)).toBeLessThan(CLOSE);
        expect(Math.abs(tried.number(`${name}.chineAngle`) - frame.angle('chine'))).toBeLessThan(CLOSE);
      },
    );

    test('the sine of a bevel is the lean of the skin’s normal aft', () => {
      for (const frame of hull.frames) {
        const normal = frame.normal('chine', 'side');
        expect(Math.abs(Math.sin(tried.number(`${frame.name}.chineBevel`)) + normal[0])).toBeLessThan(CLOSE);
        expect(
          Math.abs(
            tried.number(`${frame.name}.chineAngle`) - dihedral(normal, frame.normal('chine', 'bottom')),
          ),
        ).toBeLessThan(CLOSE);
      }
    });
  });

  test('a slope one in a hundred out gives another bevel: the second road can fail', () => {
    const [first] = starters;
    const frame = buildHull(offsetsOf(first!.table)).station('frame5');
    const off = tryCell(
      bevels,
      { frame: 'frame5', chinePlan: 'frame5.chine.planSlope + 0.01' },
      first!.table,
    );
    expect(Math.abs(off.number('chineBevel') - frame.bevel('chine', 'side'))).toBeGreaterThan(0.005);
  });

  test('a keel that rises going forward takes the forward corner off the bottom’s edge; a level one takes none', () => {
    const tried = tryCell(bevels, { ...plain, keelProfile: 'tan(6 deg)', siding: '19 mm' });
    expect(tried.number('keelBevel') / DEGREE).toBeCloseTo(-6, 10);
    expect(tried.number('keelRemoval') * 1000).toBeCloseTo(19 * Math.tan(6 * DEGREE), 9);
    expect(tryCell(bevels, { ...plain, keelProfile: '0' }).number('keelBevel')).toBeCloseTo(0, 12);
  });

  test('a row of the table speaks of its own frame', () => {
    const tried = tryCell(bevels, { frame: 'frame2' });
    expect(tried.number('frame2.flareThere')).toBe(tried.number('flare'));
    expect(tried.number('frame5.flareThere')).not.toBeCloseTo(tried.number('flare'), 3);
    expect(Math.tan(tried.number('frame2.chineInPlan'))).toBeCloseTo(tried.number('chinePlan'), 12);
  });

  describe('the face on the line', () => {
    test.each(starters)(
      'of every frame of the $table.name is that of its pattern, whichever side is typed',
      ({ table }) => {
        for (const { name, stands } of buildHull(offsetsOf(table)).frames)
          for (const side of ['custom', 'forward', 'aft'] as const) {
            const pattern = tryCell(framePattern, { frame: name, side }, table).all['stands'];
            const tried = tryCell(bevels, { frame: name, side }, table);
            expect([name, side, tried.number('forwardOnLine')]).toStrictEqual([
              name,
              side,
              pattern === 'aft' ? 1 : 0,
            ]);
            expect(tried.words).toContain(
              pattern === 'aft' ? 'The forward face stands on the line' : 'The after face stands on the line',
            );
            expect(pattern).toBe(side === 'custom' ? stands : side);
          }
      },
    );
    test('is the smaller one where she stands against the custom: the wood to leave is what is planed off', () => {
      const against = tryCell(bevels, { frame: 'frame5', side: 'aft' });
      expect(against.number('proudChine')).toBe(against.number('chineRemoval'));
      expect(against.number('proudSheer')).toBeGreaterThan(0.001);
      expect(tryCell(bevels, { frame: 'frame5' }).number('proudSheer')).toBe(0);
    });
  });

  describe('words', () => {
    test('name the frame, the face on the line and the face that is marked', () =>
      expect(tryCell(bevels, { frame: 'frame5' }).words).toMatch(
        /^The after face stands on the line. The side closes in going forward: plane the forward corner .* Mark on the forward face .* The bottom’s edge loses its forward corner/,
      ));
    const words = (entries: Record<string, string>) => tryCell(bevels, { ...plain, ...entries }).words;
    test('aft body: plane the after corner', () =>
      expect(words({ chinePlan: '0.2', sheerPlan: '0.2' })).toContain('plane the after corner'));
    test('bow: plane the forward corner', () =>
      expect(words({ chinePlan: '-0.2', sheerPlan: '-0.2' })).toContain('plane the forward corner'));
    test('wound through square', () =>
      expect(words({ chinePlan: '0.1', sheerPlan: '-0.1' })).toContain('winds through square'));
    test('the other way', () =>
      expect(words({ chinePlan: '-0.1', sheerPlan: '0.1' })).toContain(
        'at the chine plane 1.9 mm off the forward face',
      ));
  });

  describe('warnings', () => {
    test('none for a usual frame', () =>
      expect(says({ flare: '20 deg', sheerFlare: '20 deg', chinePlan: '0.2', sheerPlan: '0.22' })).toEqual(
        [],
      ));
    test('a change of hand is found either way, and not where there is none', () => {
      expect(says({ chinePlan: '-0.1', sheerPlan: '0.1' }).join(' ')).toContain(
        'not the larger one everywhere',
      );
      expect(says({ chinePlan: '-0.1', sheerPlan: '-0.12' })).toEqual([]);
    });
    test.each([
      ['past the tilt of a saw', { chinePlan: '1.2', sheerPlan: '1.2' }, 'past the tilt'],
      ['changes hand', { chinePlan: '0.1', sheerPlan: '-0.1' }, 'not the larger one everywhere'],
      [
        'opposite ways',
        { chinePlan: '0.1', sheerPlan: '0.1', chineProfile: '0.1' },
        'not the larger one everywhere',
      ],
      ['winds', { chinePlan: '0.1', sheerPlan: '0.3' }, 'winds by'],
      ['takes over half', { chinePlan: '0.6', sheerPlan: '0.6' }, 'more than half'],
      ['flat chine', { flare: '40 deg', deadrise: '30 deg' }, 'a square log would lose'],
    ])('%s', (_what, entries, wanted) => expect(says(entries).join(' ')).toContain(wanted));
  });

  describe('drawing', () => {
    testDrawings(bevels, {
      'as the boat stands': {},
      bow: { frame: 'frame5' },
      stern: { frame: 'frame1' },
      square: plain,
      steep: { ...plain, chinePlan: '2.5', sheerPlan: '-2.5' },
      'flat chine': { ...plain, flare: '70 deg', deadrise: '15 deg' },
    });

    test('its dimensions read as the figures and span them', () => {
      const tried = tryCell(bevels, { frame: 'frame5' });
      const drawing = provesItsDrawing(tried.drawing);
      const off = tried.number('chineRemoval') * 1000;
      expect(measured(drawing, `${off.toFixed(1)} mm`)).toBeCloseTo(off, 9);
      const angle = drawing.shapes.find(
        (shape) =>
          shape.shape === 'angle' && shape.text === `${(tried.number('chineAngle') / DEGREE).toFixed(1)}°`,
      );
      if (angle?.shape !== 'angle') throw new Error('no angle of the chine log');
      expect(angle.to - angle.from).toBeCloseTo(tried.number('chineAngle'), 9);
    });
  });

  test('the chart follows the chine from frame to frame and marks this one', () => {
    const tried = tryCell(bevels, { frame: 'frame2' });
    const line = tried.chart?.lines[0]?.points ?? [];
    expect(line).toHaveLength(5);
    expect(line[1]?.[1]).toBeCloseTo(tried.number('chineAngle'), 6);
    expect(tried.chart?.points?.[0]).toMatchObject({ x: line[1]?.[0] });
  });
});

test('a boat without a chine has one edge a side, and no bevel of a chine is told', () => {
  const tried = tryCell(bevels, {}, withoutChines);
  expect(tried.issues).toStrictEqual({});
  expect(tried.words).toMatch(/no chine: each frame has one edge a side/);
  expect(tried.drawing?.says).not.toMatch(/chine/);
  expect(tried.number('hasChine')).toBe(0);
  expect(tried.warnings.filter(({ says }) => says.includes('chine'))).toStrictEqual([]);
});

test('of two chines the one under the side is taken', () => {
  expect(tryCell(bevels, {}, withTwoChines).all['chine']).toBe('upperChine');
});

test('a frame that the skin crosses square keeps its edges', () => {
  const level = { chinePlan: '0', chineProfile: '0', sheerPlan: '0', sheerProfile: '0', keelProfile: '0' };
  expect(tryCell(bevels, level).words).toMatch(/leave its edges as they were sawn/);
});
