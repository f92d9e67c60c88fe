import { describe, expect, test } from 'vitest';
import { roll } from '../../../src/cells/handling/roll';
import { starters } from '../../../src/boat';
import { box, steps } from '../../boat/shapes';
import type { Vec3 } from '../../../src/kernel';
import { tableThrough } from '../shape/table-through';
import { testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

const G = 9.80665;
const DEGREE = Math.PI / 180;
/** A box 4 m long, 1.5 m broad and 0.6 m deep. */
const boxBoat = tableThrough(box(4, 1.5, 0.6));
const set = { mass: '120 kg', centreHeight: '300 mm', angle: '30 deg', askew: '0 deg' };
const hung = {
  ...set,
  way: 'ropes',
  centreForward: '2 m',
  aftRope: '25 %',
  foreRope: '75 %',
  posts: '2.5 m',
  postHigh: '3 m',
  clear: '200 mm',
};
const tried = (entries: Record<string, string> = {}) => tryCell(roll, { ...set, ...entries }, boxBoat);
const slung = (entries: Record<string, string> = {}) => tryCell(roll, { ...hung, ...entries }, boxBoat);
const says = ({ warnings }: { readonly warnings: readonly { readonly says: string }[] }) =>
  warnings.map((one) => one.says).join(' ');

describe('a box boat over her own edge', () => {
  test('what hangs at her far sheer, and where she stands in balance', () => {
    const one = tried();
    const [arm, start] = [Math.hypot(0.75, 0.3), Math.atan2(0.3, 0.75)];
    expect(one.number('lever')).toBeCloseTo(arm * Math.cos(start + 30 * DEGREE), 9);
    expect(one.number('arm')).toBeCloseTo(1.5, 9);
    expect(one.number('turningMoment')).toBeCloseTo(120 * one.number('lever'), 9);
    expect(one.number('atSheer')).toBeCloseTo((120 * one.number('lever')) / 1.5, 9);
    expect(one.number('atSheerSize')).toBeCloseTo(one.number('atSheer'), 12);
    expect(one.number('handForce')).toBeCloseTo(one.number('atSheer') * G, 9);
    expect(one.number('balanceAngle')).toBeCloseTo(90 * DEGREE - start, 9);
    expect(one.number('landingAngle')).toBeCloseTo(90 * DEGREE, 9);
    expect(one.number('restAngle')).toBeCloseTo(90 * DEGREE, 9);
    expect(one.number('heaviest')).toBeCloseTo(60, 9);
    expect(one.number('lies')).toBeCloseTo(150 * DEGREE, 12);
    // Past the balance her weight is held back.
    expect(tried({ angle: '80 deg' }).number('atSheer')).toBeLessThan(0);
    expect(tried({ angle: '80 deg' }).number('atSheerSize')).toBeGreaterThan(0);
  });

  test('rise, work and fall', () => {
    const one = tried();
    const arm = Math.hypot(0.75, 0.3);
    expect(one.number('broad')).toBeCloseTo(1.5, 9);
    expect(one.number('deep')).toBeCloseTo(0.6, 9);
    expect(one.number('radius')).toBeCloseTo(arm, 9);
    expect(one.number('farthest')).toBeCloseTo(Math.hypot(1.5, 0.6), 9);
    expect(one.number('rise')).toBeCloseTo(arm - 0.3, 9);
    expect(one.number('work')).toBeCloseTo(120 * G * (arm - 0.3), 6);
    expect(one.number('fall')).toBeCloseTo(arm - 0.75, 9);
    expect(one.number('gyration')).toBeCloseTo(Math.hypot(1.5, 0.6) / Math.sqrt(12), 9);
    expect(one.number('likeDrop')).toBeCloseTo(one.number('fallSpeed') ** 2 / (2 * G), 9);
  });

  test('the rope that holds her back, and its tail behind the turns', () => {
    const one = tried({ askew: '60 deg', turns: '1', grips: '0.25' });
    expect(one.number('held')).toBeCloseTo((120 * 0.3) / 1.5, 9);
    expect(one.number('checkLoad')).toBeCloseTo(48, 9);
    expect(one.number('ropeLoad')).toBeCloseTo(48, 9);
    expect(one.number('tailShare')).toBeCloseTo(Math.exp(-0.25 * 2 * Math.PI), 12);
    expect(one.number('tail')).toBeCloseTo(48 * Math.exp(-Math.PI / 2), 9);
    expect(one.words).toContain('and there she rests');
    // 12 mm manila: 900 lb for a girth of an inch, squared.
    const manila = tried({ rope: 'manila', ropeSize: '1 in', knotTakes: '50 %', ropeFactor: '5' });
    expect(manila.number('ropeBreaks') / 0.45359237).toBeCloseTo(900 * Math.PI ** 2, 3);
    expect(manila.number('ropeBears')).toBeCloseTo(manila.number('ropeBreaks') / 10, 9);
    expect(says(tried({ mass: '3000 kg' }))).toContain('take a thicker one');
  });

  test('the hands, by the lifting equation', () => {
    const one = tried({
      handsOut: '500 mm',
      handsHigh: '250 mm',
      travel: '900 mm',
      turnAside: '50 deg',
      rate: '3',
    });
    expect(one.number('outward')).toBeCloseTo(0.5, 12);
    expect(one.number('lowness')).toBeCloseTo(1 - 0.003 * 50, 12);
    expect(one.number('going')).toBeCloseTo(0.82 + 4.5 / 90, 12);
    expect(one.number('aside')).toBeCloseTo(1 - 0.0032 * 50, 12);
    expect(one.number('often')).toBeCloseTo(0.88, 12);
    expect(one.number('gripped')).toBeCloseTo(0.9, 12);
    expect(one.number('each')).toBeCloseTo(23 * 0.5 * 0.85 * 0.87 * 0.84 * 0.88 * 0.9, 9);
    // Closer than 25 cm, and up by less, counts as 25.
    const near = tried({ handsOut: '100 mm', travel: '0 mm', hold: 'fair', handsHigh: '750 mm' });
    expect(near.number('outward')).toBe(1);
    expect(near.number('going')).toBe(1);
    expect(near.number('gripped')).toBe(1);
    expect(tried({ hold: 'fair', handsHigh: '740 mm' }).number('gripped')).toBe(0.95);
    expect(near.number('people')).toBe(Math.ceil(60 / (23 / 2)));
    expect(near.number('together')).toBeCloseTo((near.number('people') * 23) / 2, 9);
    expect(tried({ handsOut: '640 mm' }).issues['people']).toContain('630 mm');
    expect(says(near)).toContain('more than four rarely lift as one');
  });

  test('room to go over, and the doorway', () => {
    const one = tried();
    // Her diagonal stands upright on the way; the floor taken is all she lies on, and her side.
    expect(one.number('roomHigh')).toBeCloseTo(Math.hypot(1.5, 0.6), 3);
    expect(one.number('roomUp')).toBeCloseTo(one.number('roomHigh'), 12);
    expect(one.number('roomAcross')).toBeCloseTo(1.5 + 0.6 + 1.5, 2);
    const tight = tried({ doorBroad: '700 mm', doorHigh: '1600 mm' });
    expect(tight.number('doorSpare')).toBeCloseTo(0.1, 9);
    expect(tight.number('doorLean')).toBeCloseTo(90 * DEGREE, 6);
    expect(says(tried({ doorBroad: '500 mm', doorHigh: '1600 mm' }))).toContain('however she is leaned');
    expect(says(tried({ ceiling: '1600 mm' }))).toContain('1616 mm high');
    expect(says(tried({ floorFree: '3 m' }))).toContain('of floor');
  });

  test('says from where on no hand stays on her', () => {
    expect(says(tried({ angle: '62 deg' }))).not.toContain('no hands on her');
    expect(says(tried({ angle: '64 deg' }))).toContain('no hands on her');
    expect(says(tried({ angle: '85 deg' }))).toContain('no hands on her');
    expect(says(tried({ angle: '92 deg' }))).not.toContain('no hands on her');
  });
});

describe('a box boat in two rope cradles', () => {
  test('ropes share her, and each leg is pulled as it leans', () => {
    const one = slung({ centreForward: '1.5 m', angle: '0 deg' });
    expect(one.number('foreShare')).toBeCloseTo(0.25, 9);
    expect(one.number('foreBears')).toBeCloseTo(30, 9);
    expect(one.number('aftBears')).toBeCloseTo(90, 9);
    // Posts half a metre out of her sides, 2.8 m over what is lowest of her.
    const lean = Math.atan(0.5 / 2.8);
    expect(one.number('legLean')).toBeCloseTo(lean, 9);
    expect(one.number('legPull')).toBeCloseTo(90 / (2 * Math.cos(lean)), 9);
    expect(one.number('postPull')).toBeCloseTo(45 * Math.tan(lean), 9);
    expect(one.number('ropeLoad')).toBeCloseTo(one.number('legPull'), 12);
    expect(one.number('roomUp')).toBeCloseTo(one.number('roomHigh') + 0.2, 9);
    expect(tried().number('aftBears')).toBe(0);
    expect(tried().number('legPull')).toBe(0);
  });

  test('friction holds her where her centre lies near the middle of the loops', () => {
    const one = slung({ centreHeight: '100 mm', angle: '90 deg', grips: '0.25', drags: '0.45' });
    // On her side: 0.6 m across the loops, the middle 0.3 m from her bottom, her centre 0.1 m from it.
    const wrap = Math.PI - 2 * Math.atan((1.25 - 0.3) / 2.8);
    expect(one.number('off')).toBeCloseTo(0.2, 9);
    expect(one.number('heldOff')).toBeCloseTo(0.3 * Math.tanh((0.25 * wrap) / 2), 9);
    expect(one.number('draggedOff')).toBeCloseTo(0.3 * Math.tanh((0.45 * wrap) / 2), 9);
    expect(one.number('cradleArm')).toBeCloseTo(Math.hypot(0.75, 0.5), 9);
    expect(one.number('turnPull')).toBeCloseTo(
      (120 * (one.number('draggedOff') - 0.2)) / one.number('cradleArm'),
      9,
    );
    expect(one.number('atSheer')).toBeCloseTo(one.number('turnPull'), 12);
    const slips = one.number('slipAngle') / DEGREE;
    expect(slips).toBeGreaterThan(0);
    expect(slips).toBeLessThan(90);
    const turnedBy = (degrees: number) => slung({ centreHeight: '100 mm', angle: `${degrees} deg` });
    const goes = (degrees: number) => turnedBy(degrees).number('off') > turnedBy(degrees).number('heldOff');
    expect([goes(slips - 1), goes(slips)]).toStrictEqual([false, true]);
    // With her centre in her middle she stays wherever she is left.
    expect(slung().number('slipAngle')).toBeCloseTo(Math.PI, 12);
  });

  test('a rope round an even girth stays; under a bow that narrows it is drawn forward', () => {
    expect(slung().number('runs')).toBeCloseTo(0, 6);
    expect(slung().number('stay')).toBeCloseTo(0, 6);
    const xs = steps(0, 4, 5);
    const half = (x: number) => 0.75 - 0.15 * x;
    const narrow = tableThrough({
      keel: xs.map((x): Vec3 => [x, 0, 0]),
      chine: xs.map((x): Vec3 => [x, half(x), 0]),
      sheer: xs.map((x): Vec3 => [x, half(x), 0.6]),
    });
    // Legs from the bottom's corners: each metre forward takes 0.15 m from each half of the bottom, and gives its
    // slanted share back to each leg.
    const one = tryCell(roll, { ...hung, angle: '180 deg' }, narrow);
    const lean = Math.atan((1.25 - half(3)) / 2.8);
    const less = 2 * 0.15 * (1 - Math.sin(lean));
    expect(one.number('runs')).toBeCloseTo(less / (Math.PI - 2 * lean), 4);
    expect(one.number('stay')).toBeCloseTo((less * 60) / (2 * Math.cos(lean)), 3);
    expect(says(tryCell(roll, { ...hung, angle: '180 deg', grips: '0.05' }, narrow))).toContain(
      'runs out under her bow',
    );
  });

  test('usual places, and what can’t be hung', () => {
    const one = slung();
    expect(one.number('aftPlace')).toBeCloseTo(1, 9);
    expect(one.number('forePlace')).toBeCloseTo(3, 9);
    expect(one.number('usualPosts')).toBeCloseTo(2.1, 9);
    expect(one.number('usualHigh')).toBeCloseTo(Math.hypot(1.5, 0.6) + 0.6, 9);
    expect(one.number('beside')).toBeCloseTo(0.5, 9);
    expect(one.number('legsLong')).toBeCloseTo(2.8, 9);
    const tipped = slung({ centreForward: '3.5 m' });
    expect(says(tipped)).toContain('she tips out of them');
    expect(tipped.number('foreBears')).toBeCloseTo(120, 9);
    expect(slung({ posts: '1 m' }).issues['legPull']).toContain('closer together');
    expect(slung({ postHigh: '500 mm' }).issues['legPull']).toContain('higher than the ropes');
    expect(says(slung({ posts: '9 m' }))).toContain('out of plumb');
  });
});

test.each(starters)('has an answer both ways on $id', ({ table }) => {
  for (const way of ['edge', 'ropes'] as const) {
    const one = tryCell(roll, { way, mass: '120 kg' }, table);
    expect(one.issues).toStrictEqual({});
    expect(one.drawing).toBeDefined();
  }
});

test('the picture’s arrow and the chart say what the figures say', () => {
  const one = tried({ angle: '40 deg' });
  const written = (one.drawing?.shapes ?? []).flatMap((shape) => ('text' in shape ? [shape.text] : []));
  expect(written.some((text) => text.startsWith('push on'))).toBe(true);
  const [line] = one.chart!.lines;
  const at = line!.points.find(([angle]) => Math.abs(angle - 40 * DEGREE) < 1e-9)!;
  expect(at[1]).toBeCloseTo(one.number('atSheer'), 9);
  const past = tried({ angle: '80 deg' }).drawing?.shapes ?? [];
  expect(past.some((shape) => 'text' in shape && shape.text.startsWith('hold back'))).toBe(true);
  const inRopes = slung({ angle: '40 deg' });
  const there = inRopes.chart!.lines[0]!.points.find(([angle]) => Math.abs(angle - 40 * DEGREE) < 1e-9)!;
  expect(there[1]).toBeCloseTo(inRopes.number('atSheer'), 9);
});

describe('drawing', () => {
  testDrawings(roll, {
    'as it opens': {},
    'upside down': { angle: '0 deg' },
    'in balance': { angle: '68.8 deg' },
    'on her side': { angle: '110 deg' },
    'right side up': { angle: '180 deg' },
    'in the ropes': { way: 'ropes' },
    'on edge in the ropes': { way: 'ropes', angle: '90 deg' },
    'right side up in the ropes': { way: 'ropes', angle: '180 deg' },
  });
});
