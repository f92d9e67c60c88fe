/** The skin: how a ruled surface curves, what plywood takes of a bend and of a twist, panels laid flat. */
import { flatPanel } from '../../src/boat/hull/flat-panel';
import { judge } from '../../src/boat/joinery/plywood-bends';
import { edgeStrain, spanStrip, type Vec2, type Vec3 } from '../../src/kernel';
import type { Curve } from '../../src/kernel';
import { rulingEnd, rulingOf } from '../../src/kernel/ruling';
import { findRoot } from '../../src/kernel/roots';
import { type Grain, leastBendRadius, pickedBendRadius } from '../../src/trade/plywood-bend';
import { hullThrough } from '../boat/shapes';
import type { Check } from './check';

const INCH = 0.0254;
const DEG = Math.PI / 180;
const MM = 1e-3;

/** A bend square across the panel, or a twist, as a strain of the least radius that a panel takes. */
const strainAt = (grain: Grain) => {
  const thickness = 0.25 * INCH;
  const common = {
    along: leastBendRadius(thickness, 'along').radius,
    across: leastBendRadius(thickness, 'across').radius,
  };
  // The curvature that takes all of it, as a strain of the faces.
  const least = (bend: number) =>
    judge({ bend, axis: Math.PI / 2, twist: 0 }, { thickness, grain, common, picked: common, allowed: 1 })
      .common.both - 1;
  return (thickness / 2) * (findRoot(least, 0, 10) ?? NaN);
};

/** Curvature of z = xy at a place, from how fast the normal turns along a short piece of the ruling there. */
function saddleCurvature(x: number, y: number): number {
  const short = 1e-4;
  const write = (at: number) => Float64Array.of(x, at, x * at, 1, 0, at, 0, 0, 0);
  const [low, high] = [y - short / 2, y + short / 2];
  const across: Vec3 = [0, short, x * short];
  const ruling = rulingOf(x, x, rulingEnd(write(low), across), rulingEnd(write(high), across), null);
  return -(((ruling?.twist ?? NaN) / Math.hypot(short, x * short)) ** 2);
}

/** A level arc of a radius, at a height. */
const arc = (radius: number, z: number): Curve => ({
  start: -0.4,
  end: 0.4,
  write: (t, out) => {
    const [s, c] = [Math.sin(t), Math.cos(t)];
    out.set([radius * s, radius * c, z, radius * c, -radius * s, 0, -radius * s, -radius * c, 0]);
  },
});

const long = (line: readonly Vec2[]) =>
  line.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - line[i]![0], y - line[i]![1]), 0);

/** A side of a hull of 17 stations whose edges are arcs of these radii about one upright axis, heights apart. */
function conicalSide(low: number, high: number, tall: number) {
  const angles = Array.from({ length: 17 }, (_, i) => -0.4 + (0.8 * i) / 16);
  const at = (radius: number, angle: number, z: number): Vec3 => [
    radius * Math.sin(angle),
    radius * Math.cos(angle) - low + 0.5,
    z,
  ];
  return hullThrough({
    keel: angles.map((a): Vec3 => [low * Math.sin(a), 0, 0]),
    chine: angles.map((a) => at(low, a, 0)),
    sheer: angles.map((a) => at(high, a, tall)),
  }).panel('side');
}

const FORM = 'APA concrete-form panel table, Douglas-fir, dry';

export const rows: readonly Check[] = [
  {
    id: 'D5',
    cell: 'kernel',
    what: 'Gaussian curvature of a saddle',
    input: 'z = xy at (0, 0) and (1, 1)',
    expected: [-1, -1 / 9],
    unit: '',
    tolerance: 1e-6,
    source: 'K = -1 / (1 + x² + y²)²',
    known: 'closed form',
    obtain: () => [saddleCurvature(0, 0), saddleCurvature(1, 1)],
  },
  {
    id: 'D6',
    cell: 'panels',
    what: 'edges of a side bent to a cylinder, on the flat panel, and its height there',
    input: 'radius 4 m, 0.8 rad, 0.5 m tall',
    expected: [3200, 3200, 500],
    unit: 'mm',
    tolerance: 0.05,
    source: 'a cylinder rolls out to a rectangle of its arc',
    known: 'closed form',
    obtain: () => {
      const { inner, outer, width } = flatPanel(conicalSide(4, 4, 0.5));
      return [long(inner) / MM, long(outer) / MM, width / MM];
    },
  },
  {
    id: 'D7',
    cell: 'panels',
    what: 'edges of a side bent to a cone, on the flat panel, and its height over the chord of the lower edge',
    input: 'radii 4 and 4.3 m, 0.4 m apart plumb, 0.8 rad',
    // Slant 0.5 for 0.3 m of radius: arcs of 20/3 and 43/6 m, opened by 0.8 × 0.6 = 0.48 rad.
    expected: [3200, 3440, 1000 * (43 / 6 - (20 / 3) * Math.cos(0.24))],
    unit: 'mm',
    tolerance: 0.05,
    source: 'a cone rolls out to a sector: slant radius r / sin a, opening φ sin a',
    known: 'closed form',
    obtain: () => {
      const { inner, outer, width } = flatPanel(conicalSide(4, 4.3, 0.4));
      return [long(inner) / MM, long(outer) / MM, width / MM];
    },
  },
  {
    id: 'D8',
    cell: 'kernel',
    what: 'length of both edges of a cone on the sheet',
    input: 'radii 1.2 and 0.6 m, 0.8 m apart plumb, 0.8 rad',
    expected: [960, 480],
    unit: 'mm',
    tolerance: 0.05,
    source: 'rolling out keeps lengths',
    known: 'closed form',
    obtain: () => {
      const { flat } = spanStrip(arc(1.2, 0), arc(0.6, 0.8));
      return [long(flat.first) / MM, long(flat.second) / MM];
    },
  },
  {
    id: 'PW5',
    cell: 'kernel',
    what: 'stretch of the edges of a twisted sheet',
    input: 'normals 5° and 10° apart from edge to edge',
    expected: [6.346e-4, 2.538e-3],
    unit: '',
    tolerance: 1e-6,
    source: 'a strip turned by psi across its width: psi² / 12 at the edges',
    known: 'closed form',
    obtain: () => [edgeStrain(5 * DEG), edgeStrain(10 * DEG)],
  },
  {
    id: 'PW6',
    cell: 'kernel',
    what: 'twist that stretches the edges by a given strain',
    input: 'strain 0.003',
    expected: [10.871],
    unit: 'deg',
    tolerance: 0.001,
    source: 'psi = √(12 strain)',
    known: 'closed form',
    obtain: () => [(findRoot((psi) => edgeStrain(psi) - 0.003, 0, 1) ?? NaN) / DEG],
  },
  {
    id: 'PW8',
    cell: 'panels',
    what: 'strain of the faces at the least radius, across the face grain; along it',
    input: '1/4 in',
    expected: [5.208e-3, 2.083e-3],
    unit: '',
    tolerance: 1e-6,
    source: `${FORM}: 2 ft and 5 ft, t / (2 R)`,
    known: 'published',
    obtain: () => [strainAt('across'), strainAt('along')],
  },
  {
    id: 'PW9',
    cell: 'trade',
    what: 'strain of the faces at the least radius of thick panels, across the face grain; along it',
    input: '3/4 in',
    expected: [2.604e-3, 1.5625e-3],
    unit: '',
    tolerance: 1e-6,
    source: `${FORM}: 12 ft and 20 ft, half the strain of a panel of 1/4 in across the grain`,
    known: 'published',
    obtain: () =>
      (['across', 'along'] as const).map(
        (grain) => (0.75 * INCH) / (2 * leastBendRadius(0.75 * INCH, grain).radius),
      ),
  },
  {
    id: 'W48',
    cell: 'trade',
    what: 'least radius of aircraft plywood, dry, axis square to the face grain; soaked, up to 45° off it',
    input: '0.250 in, five plies',
    expected: [31, 5],
    unit: 'in',
    tolerance: 1e-9,
    source: 'FAA AC 43.13-1B, minimum recommended bend radii for aircraft plywood, as reproduced',
    known: 'published',
    obtain: () => [
      pickedBendRadius(0.25 * INCH, 'along', 'dry').radius / INCH,
      pickedBendRadius(0.25 * INCH, 'across', 'soaked').radius / INCH,
    ],
  },
];
