/** Handling: shares of two supports and the lever, by statics. */
import { lift } from '../../src/cells/handling/lift';
import { roll } from '../../src/cells/handling/roll';
import { trailer } from '../../src/cells/handling/trailer';
import { leftAtRate, liftedBy } from '../../src/trade/lifting';
import { rollingOf, type Vec2 } from '../../src/kernel';
import { box } from '../boat/shapes';
import { tableThrough } from '../cells/shape/table-through';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const trailed = (key: string, entries: Record<string, string>) => tryCell(trailer, entries).number(key);
const of = (key: string, entries: Record<string, string>) => tryCell(lift, entries).number(key);

const G = 9.80665;
const POUND = 0.45359237;
const DEGREE = Math.PI / 180;
/** A box 1.5 m broad and 0.6 m deep of 120 kg, its centre in its middle. */
const boxBoat = tableThrough(box(4, 1.5, 0.6));
const rolled = (keys: readonly string[], entries: Record<string, string> = {}) => {
  const one = tryCell(roll, { mass: '120 kg', centreHeight: '300 mm', angle: '0 deg', ...entries }, boxBoat);
  return keys.map((key) => one.number(key));
};
const moments = (degrees: readonly number[]) =>
  degrees.flatMap((angle) => rolled(['turningMoment'], { angle: `${angle} deg` }));
/** Share that is left behind so many turns round a post. */
const behind = (grips: number, turns: number) =>
  rolled(['tailShare'], { grips: `${grips}`, turns: `${turns}` })[0]!;
const allowed = (entries: Record<string, string>) => rolled(['each'], entries);

export const rows: readonly Check[] = [
  {
    id: 'HL1',
    cell: 'lift',
    what: 'what two supports bear',
    input: '120 kg, supports at 0.8 and 3.8 m, centre of mass at 2.1 m',
    expected: [68, 52],
    unit: 'kg',
    tolerance: 0.01,
    source: 'statics: moments about either support',
    known: 'closed form',
    obtain: () => {
      // This end is the after one, so that the other lies 3.0 m forward of it.
      const slings = { mass: '120 kg', span: '3 m', centre: '1.7 m' };
      return [of('load', slings), of('stays', slings)];
    },
  },
  {
    id: 'HL2',
    cell: 'lift',
    what: 'push on a lever',
    input: '180 kg on an arm of 0.25 m, hands on one of 1.75 m',
    expected: [25.71],
    unit: 'kg',
    tolerance: 0.01,
    source: 'statics: moments about the block',
    known: 'closed form',
    obtain: () => [of('push', { mass: '180 kg', span: '2 m', centre: '2 m', lever: '2 m', short: '0.25 m' })],
  },
  {
    id: 'HL3',
    cell: 'trailer',
    what: 'weight on the ball',
    input: '1000 kg in all, 4.5 m from ball to axle, its centre 4.15 m from the ball',
    expected: [77.78],
    unit: 'kg',
    tolerance: 0.01,
    source: 'statics: moments about the axle',
    known: 'closed form',
    // All of it is boat but a kilogram of trailer that stands on its axle.
    obtain: () => [
      trailed('tongue', {
        boat: '1000 kg',
        balance: '2 m',
        behind: '1.65 m',
        ball: '4.5 m',
        empty: '1 kg',
        emptyTongue: '0 kg',
      }),
    ],
  },
  {
    id: 'HL4',
    cell: 'trailer',
    what: 'straps by length: bow against a stop, and free',
    input: '16 ft, 900 lb',
    expected: [2, 3],
    unit: '',
    tolerance: 0,
    source: '49 CFR 393.110',
    known: 'published',
    obtain: () =>
      ['stopped', 'free'].map((bow) => trailed('byLength', { long: '16 ft', boat: '900 lb', bow })),
  },
  {
    id: 'HL5',
    cell: 'trailer',
    what: 'hold forward, to a side and down',
    input: '900 lb',
    expected: [391.5, 225, 180],
    unit: 'lb',
    tolerance: 0.1,
    source: '49 CFR 393.102, at the working load limit',
    known: 'published',
    obtain: () =>
      ['holdForward', 'holdSide', 'holdDown'].map((key) => trailed(key, { boat: '900 lb' }) / 0.45359237),
  },
  {
    id: 'HL6',
    cell: 'roll',
    what: 'moment of a box over its edge, kg m, before and past the balance',
    input: '1.5 m broad, 0.6 m deep, 120 kg; turned by 0, 30, 60, 80 and 90°',
    expected: [90, 59.94, 13.82, -19.82, -36],
    unit: 'kg m',
    tolerance: 0.01,
    source: 'W r cos(start + turned), r = hypot(0.75, 0.3) m, by hand',
    known: 'closed form',
    obtain: () => moments([0, 30, 60, 80, 90]),
  },
  {
    id: 'HL7',
    cell: 'roll',
    what: 'where that box stands in balance',
    input: 'the same',
    expected: [68.2],
    unit: '°',
    tolerance: 0.01,
    source: '90° − atan(0.6 / 1.5), by hand',
    known: 'closed form',
    obtain: () => rolled(['balanceAngle']).map((angle) => angle / DEGREE),
  },
  {
    id: 'HL8',
    cell: 'roll',
    what: 'rise of its centre, work of it, and speed of its far corner when it falls on its side',
    input: 'the same',
    expected: [0.5078, 597.5, 1.844],
    unit: 'm, J, m/s',
    tolerance: 0.1,
    rough: { noticed: 0.3, finer: 'HL9' },
    source: 'm g rise; hypot(B, D) sqrt(2 g fall / (r² + (B² + D²) / 12)), by hand',
    known: 'closed form',
    obtain: () => rolled(['rise', 'work', 'fallSpeed']),
  },
  {
    id: 'HL9',
    cell: 'roll',
    what: 'the same rise and speed, finely',
    input: 'the same',
    expected: [0.5078, 1.844],
    unit: 'm, m/s',
    tolerance: 0.001,
    source: 'the same, by hand',
    known: 'closed form',
    obtain: () => rolled(['rise', 'fallSpeed']),
  },
  {
    id: 'HL10',
    cell: 'kernel',
    what: 'moment of 120 kg whose centre lies 0.6 m from the edge it is turned over, 20° up',
    input: 'turned by 0 and 30°',
    expected: [67.66, 46.28],
    unit: 'kg m',
    tolerance: 0.01,
    source: 'W r cos(start + turned), by hand',
    known: 'closed form',
    obtain: () => {
      const [across, up] = [0.6 * Math.cos(20 * DEGREE), 0.6 * Math.sin(20 * DEGREE)];
      const outline: readonly Vec2[] = [
        [-across, 0],
        [across, 0],
        [across, 2 * up],
        [-across, 2 * up],
      ];
      const over = rollingOf(outline, [0, up]);
      return [0, 30].map((turned) => 120 * over.at(turned * DEGREE).lever);
    },
  },
  {
    id: 'HL11',
    cell: 'roll',
    what: 'pull that holds a load by a rope round a post',
    input: '100 kg, friction 0.2, 270°',
    expected: [382.26],
    unit: 'N',
    tolerance: 0.1,
    source: 'an exercise of engineering mechanics, rope friction',
    known: 'published',
    // The exercise takes g as 9.81.
    obtain: () => [981 * behind(0.2, 0.75)],
  },
  {
    id: 'HL12',
    cell: 'roll',
    what: 'load that a hand of 80 lb holds on a bollard, two turns and two and two thirds',
    input: 'friction 0.3291',
    expected: [5000, 20000],
    unit: 'lb',
    tolerance: 30,
    source:
      'F. P. Beer and E. R. Johnston, Vector Mechanics for Engineers: Statics, problem on a hawser: 5000 lb at two turns; 20 000 lb takes 2.67',
    known: 'published',
    obtain: () => [2, 2.67].map((turns) => 80 / behind(0.3291, turns)),
  },
  {
    id: 'HL13',
    cell: 'roll',
    what: 'ratio of the two ends at a quarter, half, three quarters and a whole turn; and at half and a whole one',
    input: 'friction 0.25; 0.5',
    expected: [1.481, 2.193, 3.248, 4.81, 4.81, 23.141],
    unit: '',
    tolerance: 0.001,
    source: 'e^(friction × angle), by hand',
    known: 'closed form',
    obtain: () => [
      ...[0.25, 0.5, 0.75, 1].map((turns) => 1 / behind(0.25, turns)),
      ...[0.5, 1].map((turns) => 1 / behind(0.5, turns)),
    ],
  },
  {
    id: 'HL14',
    cell: 'roll',
    what: 'ratio of the two ends of a cord on a pine roller, a turn and a half',
    input: 'friction 0.28, as measured',
    expected: [14],
    unit: '',
    tolerance: 0.01,
    source: 'a knot-tyers’ measurement: 14 to 1 over three half turns',
    known: 'published',
    obtain: () => [1 / behind(0.28, 1.5)],
  },
  {
    id: 'HL21',
    cell: 'roll',
    what: 'load over hand for a rope once round a post, smooth',
    input: 'friction 0.3, one turn',
    expected: [6.586],
    unit: '',
    tolerance: 0.001,
    source: 'exp (0.3 × 2π), the belt of Euler and Eytelwein; a teaching page prints 6.6',
    known: 'published',
    obtain: () => [1 / behind(0.3, 1)],
  },
  {
    id: 'HL15',
    cell: 'roll',
    what: 'load that breaks manila rope, and what is hung on it at a fifth, whole and knotted',
    input: 'half an inch across, girth 1.57 in',
    expected: [2218, 444, 222],
    unit: 'lb',
    tolerance: 0.5,
    source: 'a seamanship course: 900 C², of which a fifth at the most; a knot takes half',
    known: 'published',
    obtain: () => {
      const manila = { rope: 'manila', ropeSize: `${1.57 / Math.PI} in`, ropeFactor: '5' };
      const whole = rolled(['ropeBreaks', 'ropeBears'], { ...manila, knotTakes: '0 %' });
      const knotted = rolled(['ropeBears'], { ...manila, knotTakes: '50 %' });
      return [...whole, ...knotted].map((mass) => mass / POUND);
    },
  },
  {
    id: 'HL16',
    cell: 'roll',
    what: 'what the lifting guide allows one person: low and far out; farther up by a poor hold',
    input: 'H 40 V 20 D 60 cm; H 35 V 60 D 40 cm; both with a poor hold, seldom',
    expected: [9.669, 13.17],
    unit: 'kg',
    tolerance: 0.005,
    source: 'DHHS (NIOSH) 94-110, the equation, by hand',
    known: 'closed form',
    obtain: () => [
      ...allowed({ handsOut: '400 mm', handsHigh: '200 mm', travel: '600 mm', hold: 'poor', rate: '0.2' }),
      ...allowed({ handsOut: '350 mm', handsHigh: '600 mm', travel: '400 mm', hold: 'poor', rate: '0.2' }),
    ],
  },
  {
    id: 'HL17',
    cell: 'roll',
    what: 'what the lifting guide allows one person, a worked exercise',
    input: 'H 25 V 55 D 95 cm, fair hold, three lifts a minute',
    expected: [15.7],
    unit: 'kg',
    tolerance: 0.1,
    source: 'Fundamentals and Assessment Tools for Occupational Ergonomics, 46.2.1',
    known: 'published',
    obtain: () =>
      allowed({ handsOut: '250 mm', handsHigh: '550 mm', travel: '950 mm', hold: 'fair', rate: '3' }),
  },
  {
    id: 'HL18',
    cell: 'trade',
    what: 'share of a lift that is left at a rate between two rows',
    input: '2.4 lifts a minute, up to an hour',
    expected: [0.898],
    unit: '',
    tolerance: 0.001,
    source: 'DHHS (NIOSH) 94-110, p. 7: interpolation',
    known: 'published',
    obtain: () => [leftAtRate(2.4)],
  },
  {
    id: 'HL19',
    cell: 'trade',
    what: 'what two and three people lift of 20 kg each',
    input: '20 kg',
    expected: [26.7, 30],
    unit: 'kg',
    tolerance: 0.1,
    source: 'HSE: two thirds of the sum for two, half for three',
    known: 'published',
    obtain: () => [liftedBy(2, 20), liftedBy(3, 20)],
  },
  {
    id: 'HL20',
    cell: 'roll',
    what: 'pull in a leg of a cradle 30° out of plumb',
    input: '1000 N in the loop',
    expected: [577.4],
    unit: 'N',
    tolerance: 0.1,
    source: 'W / (2 cos 30°), by hand',
    known: 'closed form',
    // A box 1.5 m broad that hangs 0.2 m over the floor, the ropes' ends 1 m out of its bottom's corners.
    obtain: () =>
      rolled(['legPull'], {
        way: 'ropes',
        mass: `${2000 / G} kg`,
        centreForward: '2 m',
        aftRope: '25 %',
        foreRope: '75 %',
        posts: '3.5 m',
        postHigh: `${0.2 + 1 / Math.tan(30 * DEGREE)} m`,
        clear: '200 mm',
        angle: '180 deg',
      }).map((mass) => mass * G),
  },
];
