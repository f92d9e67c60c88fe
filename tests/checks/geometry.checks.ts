/** Lofting, compound angles and developable panels against closed forms and printed charts. */
import { buildHull, type Offsets, offsetsOf } from '../../src/boat';
import { bevels } from '../../src/cells/frames/bevels';
import { compoundCut } from '../../src/cells/frames/compound-cut';
import {
  type Curve,
  differences,
  fitSpline,
  missWhenLifted,
  spanStrip,
  splineAt,
  type Strip,
  type Vec2,
} from '../../src/kernel';
import { isIssue, type KindId, plainShown, read } from '../../src/measure';
import { rulingEnd, rulingOf } from '../../src/kernel/ruling';
import { insideOf } from '../boat/inside-of';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const deg = (radians: number) => (radians * 180) / Math.PI;
const rad = (degrees: number) => (degrees * Math.PI) / 180;

/** What the builder's entry is read as, in SI. */
export function readAs(text: string, kind: KindId): number {
  const reading = read(text, { kind, shown: plainShown, field: 'the check' });
  if (isIssue(reading)) throw new Error(reading.issue);
  const value = reading.evaluate(() => NaN);
  if (isIssue(value)) throw new Error(value.issue);
  return value;
}

const natural = { start: 'natural', end: 'natural' } as const;
const bent = fitSpline([0, 1, 2], [0, 1, 0], natural);

const lofting: readonly Check[] = [
  {
    id: 'L1',
    cell: 'measure',
    what: 'offset in feet, inches and eighths',
    input: '2-3-4',
    expected: [698.5],
    unit: 'mm',
    tolerance: 1e-9,
    source: 'a designer’s explanation of tables of offsets, amateur boatbuilding forum, 2010',
    known: 'published',
    obtain: () => [readAs('2-3-4', 'length') * 1000],
  },
  {
    id: 'L2',
    cell: 'measure',
    what: 'offset with half an eighth added',
    input: '1-10-7+',
    expected: [582.6125],
    unit: 'mm',
    tolerance: 1e-4,
    source: 'common practice, no source: + adds half an eighth',
    known: 'common practice',
    obtain: () => [readAs('1-10-7+', 'length') * 1000],
  },
  {
    id: 'L3',
    cell: 'kernel',
    what: 'batten over three ducks, free ends, a quarter along',
    input: '(0,0) (1,1) (2,0) at x = 0.5',
    expected: [0.6875],
    unit: '',
    tolerance: 1e-9,
    source: 'natural cubic spline by hand: M = -3 at the middle',
    known: 'closed form',
    obtain: () => [splineAt(bent, 0.5)],
  },
  {
    id: 'L4',
    cell: 'kernel',
    what: 'bend of the same batten at its middle duck',
    input: '(0,0) (1,1) (2,0)',
    expected: [-3],
    unit: '',
    tolerance: 1e-9,
    source: 'natural cubic spline by hand: M = -3 at the middle',
    known: 'closed form',
    obtain: () => [splineAt(bent, 1, 2)],
  },
  {
    id: 'L5',
    cell: 'kernel',
    what: 'third differences of the cubes',
    input: '0, 1, 8, 27, 64',
    expected: [6, 6],
    unit: '',
    tolerance: 1e-12,
    source: 'third difference of x³ is 3! = 6',
    known: 'closed form',
    obtain: () => differences([0, 1, 8, 27, 64], 3),
  },
  {
    id: 'L6',
    cell: 'kernel',
    what: 'third differences with one number 0.1 out: +e, -3e, +3e, -e',
    input: '0, 1, 8, 27.1, 64, 125, 216',
    expected: [6.1, 5.7, 6.3, 5.9],
    unit: '',
    tolerance: 1e-9,
    source: 'binomial signs of a single error in third differences',
    known: 'closed form',
    obtain: () => differences([0, 1, 8, 27.1, 64, 125, 216], 3),
  },
  {
    id: 'L7',
    cell: 'kernel',
    what: 'how far a point springs off a free batten over four others when its duck is lifted',
    input: '1, 8, 27.1, 64, 125 over even steps, middle one lifted',
    expected: [1.225],
    unit: '',
    tolerance: 1e-9,
    source:
      'three-moment equation of a beam on four supports: (3, −11, 16, −11, 3) / 16 of the five values; e alone gives e',
    known: 'closed form',
    obtain: () => [missWhenLifted([1, 2, 3, 4, 5], [1, 8, 27.1, 64, 125], 2)],
  },
  {
    id: 'L8',
    cell: 'kernel',
    what: 'what free ends make of x² with the middle point lifted',
    input: 'x² at 0, 1, 3, 4; read at 2',
    expected: [3.875],
    unit: '',
    tolerance: 1e-9,
    source: 'natural cubic spline by hand',
    known: 'closed form',
    obtain: () => [splineAt(fitSpline([0, 1, 3, 4], [0, 1, 9, 16], natural), 2)],
  },
  {
    id: 'L11',
    cell: 'boat',
    what: 'skin thickness across a frame where the side runs in at an angle',
    input: '9 mm, bevel 20°',
    expected: [9.578],
    unit: 'mm',
    tolerance: 0.001,
    source: 't / cos β',
    known: 'closed form',
    obtain: () => {
      const wedge = buildHull(wedgeOf(Math.tan(rad(20))));
      const inside = insideOf(wedge, (panel) => (panel === 'side' ? 0.009 : 0));
      const chine = inside.points[1]?.[1]?.[1] ?? NaN;
      return [((wedge.edges[1]?.points[1]?.[1] ?? NaN) - chine) * 1000];
    },
  },
  {
    id: 'L12',
    cell: 'boat',
    what: 'height of a raked transom up its slope',
    input: '380 mm high, rake 13°',
    expected: [389.996],
    unit: 'mm',
    tolerance: 0.01,
    source: 'z / cos ρ',
    known: 'closed form',
    obtain: () => {
      const raked = buildHull(wedgeOf(0, 0.38, 0.38 * Math.tan(rad(13))));
      return [(raked.stations[0]?.outline.at(-1)?.[1] ?? NaN) * 1000];
    },
  },
];

/** A plumb-sided box or wedge with three stations a metre apart; the transom may be raked. */
function wedgeOf(slope: number, height = 0.4, rake = 0): Offsets {
  const stations = ['transom', 'frame 1', 'bow transom'].map((name, i) => {
    const top = i === 0 ? -rake : i;
    return {
      name,
      points: [
        { x: i, y: 0, z: 0 },
        { x: i, y: 0.3 + slope * i, z: 0 },
        { x: top, y: 0.3 + slope * top, z: height },
      ],
    };
  });
  return offsetsOf({
    name: 'wedge',
    note: '',
    unit: 'm',
    offsetsTo: 'outside of skin',
    edges: ['keel', 'chine', 'sheer'],
    stations,
  });
}

const angles: readonly Check[] = [
  {
    id: 'B12',
    cell: 'compoundCut',
    what: 'tilt for butted corners of a four-sided box',
    input: '4 sides, pitch 75°',
    expected: [3.841],
    unit: 'deg',
    tolerance: 0.001,
    source: 'asin(cos² pitch)',
    known: 'closed form',
    obtain: () => [
      deg(tryCell(compoundCut, { lean: '15 deg', rake: '15 deg', turn: '0 deg' }).number('sawTilt')),
    ],
  },
  {
    id: 'B16',
    cell: 'bevels',
    what: 'bevel from flare and the slopes of the long line',
    input: 'flare 25°, 0.15 in plan, 0.05 in profile',
    expected: [6.55],
    unit: 'deg',
    tolerance: 0.001,
    source: 'plane geometry of the two normals',
    known: 'closed form',
    obtain: () => [
      deg(tryCell(bevels, { flare: '25 deg', chinePlan: '0.15', chineProfile: '0.05' }).number('chineBevel')),
    ],
  },
];

/** Writes a circle of radius r at height z, half of it: twice the strip is the whole body. */
const halfCircle = (r: number, z: number): Curve => ({
  start: 0,
  end: Math.PI,
  write: (t, out) => {
    const [c, s] = [Math.cos(t), Math.sin(t)];
    out.set([r * c, r * s, z, -r * s, r * c, 0, -r * c, -r * s, 0]);
  },
});

/** One turn of the line that runs a given way along the tangents of the helix (cos t, sin t, t). */
const alongTangents = (way: number): Curve => ({
  start: 0,
  end: 2 * Math.PI,
  write: (t, out) => {
    const [c, s, w] = [Math.cos(t), Math.sin(t), way / Math.SQRT2];
    out.set([c - w * s, s + w * c, t + w, -s - w * c, c - w * s, 1, -c + w * s, -s - w * c, 0]);
  },
});

/** The angle on the flat sheet between its first and its last ruling, summed over the sheet, deg. */
function sector(strip: Strip): number {
  const { first, second } = strip.flat;
  const direction = (i: number): Vec2 => [second[i]![0] - first[i]![0], second[i]![1] - first[i]![1]];
  let turned = 0;
  for (let i = 1; i < first.length; i++) {
    const [a, b] = [direction(i - 1), direction(i)];
    turned += Math.atan2(a[0] * b[1] - a[1] * b[0], a[0] * b[0] + a[1] * b[1]);
  }
  return deg(Math.abs(turned));
}

/** The twist of the ruling x = const of z = xy on the unit square, deg. */
function saddleTwist(x: number): number {
  const write = (y: number) => Float64Array.of(x, y, x * y, 1, 0, y, 0, 0, 0);
  const across = [0, 1, x] as const;
  const ruling = rulingOf(x, x, rulingEnd(write(0), across), rulingEnd(write(1), across), null);
  return deg(ruling?.twist ?? NaN);
}

const developables: readonly Check[] = [
  {
    id: 'D1',
    cell: 'kernel',
    what: 'a cone laid flat: sector and area',
    input: 'base radius 3, height 4',
    expected: [216, 47.1239],
    unit: '',
    tolerance: 0.001,
    source: 'sector 2πr/l, area πrl',
    known: 'closed form',
    obtain: () => {
      const strip = spanStrip(halfCircle(0, 4), halfCircle(3, 0));
      return [2 * sector(strip), 2 * strip.area];
    },
  },
  {
    id: 'D2',
    cell: 'kernel',
    what: 'a frustum laid flat: sector and area',
    input: 'radii 1 and 2, height 1',
    expected: [254.558, 13.3286],
    unit: '',
    tolerance: 0.001,
    source: 'difference of two cones',
    known: 'closed form',
    obtain: () => {
      const strip = spanStrip(halfCircle(1, 1), halfCircle(2, 0));
      return [2 * sector(strip), 2 * strip.area];
    },
  },
  {
    id: 'D3',
    cell: 'kernel',
    what: 'the tangent surface of a helix laid flat: turning over one turn',
    input: 'radius 1, pitch 2π, 0.5 to 1.5 along the tangents',
    expected: [254.558],
    unit: 'deg',
    tolerance: 0.01,
    source:
      'bending keeps the curvature a / (a² + b²) of the edge: M. P. do Carmo, Differential Geometry of Curves and Surfaces, section 3-5',
    known: 'closed form',
    obtain: () => [sector(spanStrip(alongTangents(0.5), alongTangents(1.5), { cells: 128 }))],
  },
  {
    id: 'D4',
    cell: 'kernel',
    what: 'twist of the rulings of a saddle',
    input: 'z = xy, unit square, x = 0, 0.5, 1',
    expected: [45, 41.81, 35.264],
    unit: 'deg',
    tolerance: 0.001,
    source: 'angle between the normals (-y, -x, 1) at y = 0 and y = 1',
    known: 'closed form',
    obtain: () => [saddleTwist(0), saddleTwist(0.5), saddleTwist(1)],
  },
];

export const rows: readonly Check[] = [...lofting, ...angles, ...developables];
