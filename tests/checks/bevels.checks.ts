/** Bevels of frames, logs, stems and compound cuts, through the cells that give them. */
import { bevels } from '../../src/cells/frames/bevels';
import { compoundCut } from '../../src/cells/frames/compound-cut';
import { rollingBevel } from '../../src/cells/frames/rolling-bevel';
import { stemBevel } from '../../src/cells/frames/stem-bevel';
import type { Vec3 } from '../../src/kernel';
import { box, coneSided, type Lines, planeSided, veePrism, wedge } from '../boat/shapes';
import { tableThrough } from '../cells/shape/table-through';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const RAD = Math.PI / 180;
const deg = (radians: number) => radians / RAD;
const on = (lines: Lines) => tableThrough(lines);

const SAW_CHART =
  '“Compound-angle settings for popular structures”, printed in the operator’s manuals of bench saws';
const NORMALS = 'plane geometry of the two normals';

/** A box of equal sides: both boards lean alike, and in plan the sides turn by a full circle over their number. */
const boxCorner = (sides: number, pitch: number) =>
  tryCell(compoundCut, {
    joint: 'mitre',
    lean: `${90 - pitch} deg`,
    rake: `${90 - pitch} deg`,
    turn: `${360 / sides - 90} deg`,
  });

/** Mitre and tilt as printed, to two decimals, by number of sides and pitch above level. */
const chart: readonly (readonly [sides: number, pitch: number, mitre: number, tilt: number])[] = [
  [4, 5, 44.89, 3.53],
  [4, 10, 44.56, 7.05],
  [4, 15, 44.01, 10.55],
  [4, 20, 43.22, 14],
  [4, 25, 42.19, 17.39],
  [4, 30, 40.89, 20.7],
  [4, 35, 39.32, 23.93],
  [4, 40, 37.45, 27.03],
  [4, 45, 35.26, 30],
  [4, 50, 32.73, 32.8],
  [4, 55, 29.84, 35.4],
  [4, 60, 26.57, 37.76],
  [4, 65, 22.91, 39.86],
  [4, 70, 18.88, 41.64],
  [4, 75, 14.51, 43.08],
  [4, 90, 0, 45],
  [5, 10, 35.58, 5.86],
  [6, 45, 22.21, 20.7],
  [8, 25, 20.58, 9.31],
];

const chartRows = chart.map(([sides, pitch, mitre, tilt], i): Check => ({
  id: `B${20 + i}`,
  cell: 'compoundCut',
  what: 'mitre and tilt for a box of equal sides',
  input: `${sides} sides, pitch ${pitch}° above level`,
  expected: [mitre, tilt],
  unit: 'deg',
  // Printed to two decimals.
  tolerance: 0.005,
  source: SAW_CHART,
  known: 'published',
  obtain: () => {
    const tried = boxCorner(sides, pitch);
    return [deg(tried.number('endCut')), deg(tried.number('sawTilt'))];
  },
}));

/** Side and raked transom: angle between them, edge on the transom, edge on the side from a level line. */
const corners: readonly (readonly [lean: number, rake: number, turn: number, ...expected: number[]])[] = [
  [15, 12, 0, 93.085, 14.687, 101.602],
  [15, 12, 8, 85.545, 16.378, 103.696],
  [15, 12, -8, 100.679, 13.249, 99.701],
  [20, 13, 10, 85.293, 21.79, 105.674],
  [0, 12, 10, 80.221, 2.1, 102.18],
];

const cornerRows = corners.map(([lean, rake, turn, ...expected], i): Check => ({
  id: `B${40 + i}`,
  cell: 'compoundCut',
  what: 'side and raked transom: angle inside, edge on the transom, edge on the side off a level line',
  input: `lean ${lean}°, rake ${rake}°, plan ${turn}°`,
  expected,
  unit: 'deg',
  tolerance: 0.001,
  source: NORMALS,
  known: 'closed form',
  obtain: () => {
    const tried = tryCell(compoundCut, { lean: `${lean} deg`, rake: `${rake} deg`, turn: `${turn} deg` });
    return [tried.number('angle'), tried.number('onTransom'), tried.number('endCut') + 90 * RAD].map(deg);
  },
}));

const closed = (row: Omit<Check, 'known' | 'unit'> & Partial<Pick<Check, 'known' | 'unit'>>): Check => ({
  known: 'closed form',
  unit: 'deg',
  ...row,
});

/** A plane side that leans out by its flare and closes in to a raked stem by p in plan. */
function planeBow(p: number, flare: number): Lines {
  const line = (z: number): Vec3[] => [
    ...[0, 1, 2, 3].map((x): Vec3 => [x, p * (4 - x) + Math.tan(flare) * z, z]),
    [4 + (Math.tan(flare) * z) / p, 0, z],
  ];
  return { keel: [0, 1, 2, 3, 4].map((x): Vec3 => [x, 0, 0]), chine: line(0), sheer: line(0.6) };
}

export const rows: readonly Check[] = [
  closed({
    id: 'B18',
    cell: 'bevels',
    what: 'every bevel of a square box, and the angle at its chine',
    input: 'box 3 m × 1 m × 0.4 m',
    expected: [0, 0, 0, 0, 90],
    tolerance: 1e-6,
    source: 'a box is square',
    obtain: () => {
      const tried = tryCell(bevels, { frame: 'frame2' }, on(box(3, 1, 0.4)));
      return ['chineBevel', 'sheerBevel', 'bottomBevel', 'keelBevel', 'chineAngle'].map((key) =>
        deg(tried.number(key)),
      );
    },
  }),
  closed({
    id: 'B19',
    cell: 'bevels',
    what: 'planed off by a bevel',
    input: '14° on 1 in of frame',
    expected: [0.25],
    unit: 'in',
    tolerance: 0.001,
    source: 'a builder’s rule: 14° is 1/4 in to the inch; common practice, no source',
    known: 'common practice',
    obtain: () => [
      tryCell(bevels, { siding: '1 in', flare: '0 deg', chinePlan: 'tan(14 deg)', chineProfile: '0' }).number(
        'chineRemoval',
      ) / 0.0254,
    ],
  }),
  ...chartRows,
  ...cornerRows,
  closed({
    id: 'B45',
    cell: 'compoundCut',
    what: 'edge of a raked transom against a plane side, read from a hull',
    input: 'flare 15°, parallel level lines, rake 12°, table of offsets',
    expected: [93.085, 14.687],
    tolerance: 0.001,
    source: NORMALS,
    obtain: () => {
      const table = on(planeSided({ flare: 15 * RAD, plan: 0, profile: 0, rake: 12 * RAD, height: 0.5 }));
      const tried = tryCell(compoundCut, {}, table);
      return [deg(tried.number('angle')), deg(tried.number('onTransom'))];
    },
  }),
  closed({
    id: 'B46',
    cell: 'rollingBevel',
    what: 'corner of a vee prism, between its frames',
    input: 'flare 25°, deadrise 15°',
    expected: [130],
    tolerance: 1e-6,
    source: '90° + flare + deadrise in a section square to the log',
    obtain: () => {
      const table = on(veePrism(3, 0.6, 15 * RAD, 0.4, 25 * RAD));
      return [deg(tryCell(rollingBevel, { at: '1050 mm' }, table).number('angle'))];
    },
  }),
  closed({
    id: 'B47',
    cell: 'rollingBevel',
    what: 'corner of a level bottom and a side bent as a cone, at three marks',
    input: 'cone of radius 6 m growing by 0.35 m in 0.6 m of height',
    expected: [120.2564, 120.2564, 120.2564],
    // A batten through 17 points of a circle of 6 m strays in slope by less than this.
    tolerance: 0.01,
    source: 'the ruling of an upright cone makes one angle with the level: 90° + atan(0.35 / 0.6)',
    obtain: () => {
      const table = on(coneSided({ r1: 6, r2: 6.35, height: 0.6, half: 0.42, keelOffset: 5, stations: 17 }));
      return ['450 mm', '2400 mm', '4350 mm'].map((at) =>
        deg(tryCell(rollingBevel, { at }, table).number('angle')),
      );
    },
  }),
  closed({
    id: 'B48',
    cell: 'rollingBevel',
    what: 'off the under face of a square log',
    input: 'log 19 mm thick, flare 25°, deadrise 15°',
    expected: [15.943],
    unit: 'mm',
    tolerance: 0.001,
    source: 'thickness × tan(40°)',
    obtain: () => [
      tryCell(rollingBevel, { flare: '25 deg', deadrise: '15 deg', logThickness: '19 mm' }).number(
        'bottomOff',
      ) * 1000,
    ],
  }),
  closed({
    id: 'B49',
    cell: 'stemBevel',
    what: 'stem of a boat that is a triangle in plan',
    input: '1.2 m broad, 4 m long',
    expected: [8.531, 98.531],
    tolerance: 0.001,
    source: 'half angle atan(0.6 / 4), and a right angle more on the face',
    obtain: () => {
      const tried = tryCell(stemBevel, { place: 'tenth3' }, on(wedge(4, 1.2, 0.5)));
      return [deg(tried.number('bevel')), deg(tried.number('gauge'))];
    },
  }),
  closed({
    id: 'B50',
    cell: 'stemBevel',
    what: 'raked stem of a plane, flared side: bevel, rake, and the bevel held level',
    input: 'closing in 0.3 in plan, flare 20°',
    expected: [25.2519, 50.5032, 16.6992],
    tolerance: 0.001,
    source:
      'normal (0.3, 1, -tan 20°): cos bevel = 1 / its length, tan rake = tan 20° / 0.3, tan level = 0.3',
    obtain: () => {
      const tried = tryCell(stemBevel, { place: 'tenth6' }, on(planeBow(0.3, 20 * RAD)));
      return ['bevel', 'rake', 'level'].map((key) => deg(tried.number(key)));
    },
  }),
  closed({
    id: 'B51',
    cell: 'stemBevel',
    what: 'landing of the side on a stem: in from the edge, bearding line, face left',
    input: 'landing 30 mm at 30°, stem 45 mm',
    expected: [15, 25.981, 15],
    unit: 'mm',
    tolerance: 0.001,
    source: 'right triangle of 30°: half the landing, and its √3/2',
    obtain: () => {
      const tried = tryCell(stemBevel, { entry: '30 deg', landing: '30 mm', siding: '45 mm' });
      return ['inset', 'back', 'faceLeft'].map((key) => tried.number(key) * 1000);
    },
  }),
];
