import { describe, expect, test } from 'vitest';
import { demoBoat, lists, starter, starters } from '../../../src/boat';
import { plainInstance } from '../../../src/cells';
import { framePattern } from '../../../src/cells/frames/frame-pattern';
import { limber } from '../../../src/cells/frames/limber';
import { notch } from '../../../src/cells/frames/notch';
import { plainShown, type Shown } from '../../../src/measure';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { createGraph } from '../../../src/notebook/graph/graph';
import { measured, provesItsDrawing, testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

const INCH = 0.0254;
const feet: Shown = { length: 'feet', fraction: 16, mass: 'lb', money: '' };
/** Keelson 5 1/2 by 1 1/2 in, limbers and drill 1/2 in, in a deep member. */
const common = {
  keelsonWidth: '5 1/2 in',
  keelsonThickness: '1 1/2 in',
  limberWidth: '1/2 in',
  holeDiameter: '1/2 in',
  frameDepth: '7 in',
  deadrise: '0 deg',
  keelSlope: '0',
  coefficient: '0.6',
};
const says = (entries: Record<string, string>) => tryCell(limber, entries).warnings.map((one) => one.says);

describe('limber', () => {
  test('a 5 1/2 by 1 1/2 in keelson: holes 3 in out and 1 1/4 in up, slot 6 1/2 in, saw at 1 1/2 in', () => {
    const tried = tryCell(limber, { ...common, kerf: '1/8 in' });
    expect(tried.number('holeFromCentre') / INCH).toBeCloseTo(3, 10);
    expect(tried.number('holeAboveBottom') / INCH).toBeCloseTo(1.25, 10);
    expect(tried.number('slotWidth') / INCH).toBeCloseTo(6.5, 10);
    expect(tried.number('cutDepth') / INCH).toBeCloseTo(1.5, 10);
    expect(tried.number('passes')).toBe(52);
  });

  test('takes the keelson and the frame from the boat, and follows them', () => {
    const tried = tryCell(limber, {
      'keelson.width': '100 mm',
      'keelson.thickness': '22 mm',
      'frame.moulded': '95 mm',
      'frame.limberWidth': '15 mm',
      'frame.limberDrill': '16 mm',
      deadrise: '0 deg',
      keelSlope: '0',
    });
    expect(tried.number('holeDiameter')).toBeCloseTo(0.016, 12);
    expect(tried.number('slotWidth')).toBeCloseTo(0.13, 12);
    expect(tried.number('cutDepth')).toBeCloseTo(0.022, 12);
    expect(tried.number('woodLeft')).toBeCloseTo(0.073, 12);
  });

  test('a typed width cuts the link', () => {
    expect(
      tryCell(limber, { 'keelson.width': '100 mm', keelsonWidth: '80 mm' }).number('keelsonWidth'),
    ).toBeCloseTo(0.08, 12);
  });

  test('the side and the top of the slot touch the hole', () => {
    const tried = tryCell(limber, { ...common, holeDiameter: '3/8 in', limberWidth: '13 mm' });
    const radius = tried.number('holeDiameter') / 2;
    expect(tried.number('holeFromCentre') + radius).toBeCloseTo(tried.number('slotWidth') / 2, 12);
    expect(tried.number('holeAboveBottom') + radius).toBeCloseTo(tried.number('cutDepth'), 12);
  });

  test('the hole’s rounded corner is all that the limber lacks of a rectangle', () => {
    const tried = tryCell(limber, common);
    const corner = (1 - Math.PI / 4) * (0.25 * INCH) ** 2;
    expect(tried.number('drainArea')).toBeCloseTo(0.5 * 1.5 * INCH ** 2 - corner, 12);
  });

  test('clear area with deadrise is what numerical integration of the section gives', () => {
    for (const deadrise of [0, 4, 8, 12, 16, 20, 30]) {
      const tried = tryCell(limber, { ...common, holeDiameter: '1/8 in', deadrise: `${deadrise} deg` });
      const from = tried.number('keelsonWidth') / 2;
      const to = tried.number('slotWidth') / 2;
      const rise = Math.tan((deadrise * Math.PI) / 180);
      let area = 0;
      const n = 2000;
      for (let i = 0; i < n; i++) {
        const y = from + ((i + 0.5) / n) * (to - from);
        area += (Math.max(0, tried.number('cutDepth') - y * rise) * (to - from)) / n;
      }
      const corner = (1 - Math.PI / 4) * tried.number('cornerRadius') ** 2;
      // The midpoint rule is exact but for the cell in which the bottom meets the top of the slot.
      expect(Math.abs(tried.number('drainArea') + corner - area)).toBeLessThan(1e-8);
    }
  });

  test('water through 400 mm² under 20 mm is 9.02 L a minute; a 9.02 L puddle, falling, takes two', () => {
    const corner = '(1 - pi / 4) * (1/16 in)^2';
    const tried = tryCell(limber, {
      keelsonThickness: '20 mm',
      limberWidth: `10 mm + ${corner} / 20 mm`,
      holeDiameter: '1/8 in',
      head: '20 mm',
      bucket: '9.02 L',
      coefficient: '0.6',
      deadrise: '0 deg',
      keelSlope: '0',
    });
    expect(tried.number('clearArea') * 1e6).toBeCloseTo(400, 9);
    expect(tried.number('flow') * 60_000).toBeCloseTo(9.02, 2);
    expect(tried.number('drainTime')).toBeCloseTo(120, 1);
  });

  test.each([
    ['level', '0 deg', 0],
    ['level', '5 deg', 1],
    ['trimmed', '0 deg', 1],
    ['trimmed', '5 deg', 2],
  ])('a puddle, %s over a deadrise of %s, runs out as its surface shrinks', (lies, deadrise, power) => {
    const tried = tryCell(limber, { ...common, lies, deadrise });
    const [volume, flow, head] = [tried.number('bucket'), tried.number('flow'), tried.number('head')];
    // Slices of the falling puddle, each at the flow of its own depth; the surface goes with depth ^ power.
    const surface = (volume * (power + 1)) / head ** (power + 1);
    const n = 20_000;
    let time = 0;
    for (let i = 0; i < n; i++) {
      // Equal steps of the depth's root, so that the last drops are not skipped.
      const at = head * ((i + 0.5) / n) ** 2;
      const step = head * (((i + 1) / n) ** 2 - (i / n) ** 2);
      time += (surface * at ** power * step) / (flow * Math.sqrt(at / head));
    }
    expect(time / tried.number('drainTime')).toBeCloseTo(1, 6);
  });

  test('a keel that climbs makes the slot deeper plumb, and its top higher on one face', () => {
    const tried = tryCell(limber, { ...common, keelSlope: '0.25', siding: '20 mm' });
    expect(tried.number('cutDepth')).toBeCloseTo(1.5 * INCH * Math.hypot(1, 0.25), 12);
    expect(tried.number('roofRise')).toBeCloseTo(0.005, 12);
    expect(tried.number('holeAboveBottom')).toBeCloseTo(tried.number('cutDepth') - 0.25 * INCH, 12);
    expect(tried.number('roofSlope')).toBeCloseTo(Math.atan(0.25), 12);
  });

  test('with deadrise the member is deeper plumb, and the hole nearer to its edge', () => {
    const tried = tryCell(limber, { ...common, deadrise: '15 deg' });
    const rise = Math.tan(Math.PI / 12);
    expect(tried.number('depthThere')).toBeCloseTo((7 * INCH) / Math.cos(Math.PI / 12), 12);
    expect(tried.number('holeAboveEdge')).toBeCloseTo((1.25 - 3 * rise) * INCH, 12);
  });

  test.each(starters.map(({ id, table }) => [id, table] as const))(
    'on the %s the slot is that of the frame’s pattern at every frame',
    (_, table) => {
      const slots = tryCell(limber, {}, table);
      for (const { id: frame } of lists(table).frames) {
        const pattern = tryCell(framePattern, { frame }, table);
        // The cell sets the saw to the keelson's thickness where its climb makes less than 0.25 mm of a difference.
        expect(Math.abs(slots.number(`${frame}.cutDepth`) - pattern.number('slotDepth'))).toBeLessThan(
          2.5e-4,
        );
        expect(slots.number(`${frame}.slotWidth`)).toBeCloseTo(pattern.number('slotWidth'), 12);
      }
    },
  );

  test('four times the head runs out in half the time', () => {
    const slow = tryCell(limber, { ...common, head: '10 mm' }).number('drainTime');
    const fast = tryCell(limber, { ...common, head: '40 mm' }).number('drainTime');
    expect(slow / fast).toBeCloseTo(2, 10);
  });

  test('a notch of nothing leaves everything, of the whole depth nothing', () => {
    expect(
      tryCell(limber, { ...common, keelsonThickness: '3 mm', frameDepth: '500 mm' }).number('modulusLeft'),
    ).toBeCloseTo(0.994 ** 2, 12);
    expect(
      tryCell(limber, { ...common, keelsonThickness: '70 mm', frameDepth: '70 mm' }).number('modulusLeft'),
    ).toBe(0);
    expect(
      tryCell(limber, { ...common, keelsonThickness: '35 mm', frameDepth: '70 mm' }).number('stiffnessLeft'),
    ).toBeCloseTo(0.125, 12);
  });

  test('at every frame of a vee bottom the deadrise of that frame holds', () => {
    const vee = starter('vee-launch')!;
    const tried = tryCell(limber, {}, vee);
    for (const frame of ['frame1', 'frame4', 'frame6']) {
      const alone = tryCell(limber, { frame }, vee);
      expect(tried.number(`${frame}.outerHeight`)).toBe(alone.number('outerHeight'));
    }
    expect(tried.number('frame6.clearArea')).toBe(0);
  });

  describe('warnings', () => {
    test('none for a shallow slot with room for the water', () => {
      expect(says({ ...common, limberWidth: '3/4 in', hullLength: '4.5 m' })).toEqual([]);
    });
    test.each([
      [
        'drill wider than the slot is deep',
        { keelsonThickness: '5 mm', holeDiameter: '1/2 in' },
        'outside the wood',
      ],
      ['corner under the keelson', { limberWidth: '1/4 in', holeDiameter: '3/4 in' }, 'would not bed'],
      ['cut through', { frameDepth: '1 1/2 in' }, 'right through'],
      ['more than a third', { frameDepth: '4 in' }, 'leaves 39.1 % of the strength'],
      ['more than a quarter', { frameDepth: '5 1/2 in' }, 'only where glued gussets'],
      ['narrow', { limberWidth: '3/8 in', holeDiameter: '3/8 in' }, 'a shaving or a leaf'],
      ['little area', { hullLength: '7 m', keelsonThickness: '14 mm' }, 'little for a boat of 7000 mm'],
      ['holes break out', { deadrise: '20 deg' }, 'break out of the bottom edge'],
      ['keel that climbs', { keelSlope: '0.1' }, 'saw to the lower mark'],
      ['no way for water', { deadrise: '40 deg' }, 'no way for water'],
      ['kerf wider than half the slot', { keelsonWidth: '10 mm', kerf: '1 in' }, 'wider than half the slot'],
    ])('%s', (_what, entries, wanted) => {
      expect(says({ ...common, limberWidth: '3/4 in', hullLength: '4.5 m', ...entries }).join(' ')).toContain(
        wanted,
      );
    });
    test('a third is still a third', () => {
      expect(
        says({ ...common, limberWidth: '3/4 in', hullLength: '4.5 m', frameDepth: '4 1/2 in' }).join(' '),
      ).toContain('only where glued gussets');
    });
  });

  describe('drawing', () => {
    testDrawings(limber, {
      'flat bottom': common,
      'boat as it stands': {},
      vee: { deadrise: '10 deg' },
      'steep vee': { deadrise: '30 deg' },
      'drill that breaks out': { deadrise: '8 deg', holeDiameter: '1 in' },
      'cut through': { frameDepth: '20 mm', keelsonThickness: '25 mm' },
    });

    test('its dimensions read as the figures and span them', () => {
      const tried = tryCell(limber, common, undefined, feet);
      const drawing = provesItsDrawing(tried.drawing);
      expect(measured(drawing, '3 in')).toBeCloseTo(76.2, 9);
      expect(measured(drawing, '1 1/4 in')).toBeCloseTo(31.75, 9);
      expect(measured(drawing, '6 1/2 in')).toBeCloseTo(165.1, 9);
      expect(measured(drawing, '5 1/2 in')).toBeCloseTo(139.7, 9);
      expect(measured(drawing, '1 1/2 in')).toBeCloseTo(38.1, 9);
    });

    test('the frame’s outline touches each drilled circle at the side and the top of the slot', () => {
      const { shapes } = provesItsDrawing(tryCell(limber, common).drawing);
      const holes = shapes.filter((shape) => shape.shape === 'circle');
      const frame = shapes.find((shape) => shape.shape === 'area' && shape.fill === 'plain');
      if (frame?.shape !== 'area' || holes.length !== 2) throw new Error('two holes in one frame');
      for (const hole of holes) {
        const { at, radius } = hole;
        const gaps = frame.rings[0]!.map(([x, y]) => Math.hypot(x - at[0], y - at[1]) - radius);
        expect(gaps.filter((gap) => Math.abs(gap) < 1e-9)).toHaveLength(9);
        expect(Math.min(...gaps)).toBeGreaterThan(-1e-9);
      }
    });
  });
});

test('the boat’s width of limbers leads: cell, pattern and what is kept free of screws follow it', () => {
  const typed = { 'frame.limberWidth': '20 mm', 'frame.limberDrill': '10 mm' };
  const slot = tryCell(limber, typed).number('slotWidth');
  expect(slot).toBeCloseTo(0.13, 12);
  expect(tryCell(framePattern, typed).number('slotWidth')).toBeCloseTo(slot, 12);
  const { graph } = keepOuts(typed);
  expect(graph.value('frame3.keel.slot.keepOut.outboard')).toBeCloseTo(slot / 2 + 0.0125, 12);
});

function keepOuts(typed: Readonly<Record<string, string>>) {
  const catalogue = catalogueOf(demoBoat, [plainInstance(notch)]);
  return { graph: createGraph({ catalogue: () => catalogue, entries: () => typed, shown: plainShown }) };
}
