/** What the US rule for small boats measures on the hull, worked out from the hull drawn. */
import { floodingVolume, sideLoadsOf } from '../hull/float-plane';
import type { Hull } from '../hull/hull';
import { FOOT, INCH, POUND } from '../../measure/si';
import { fromBoth, fromHull } from './make-derived';
import type { Derived, Read } from './quantity';
import type { Layout } from './lists';

/** Fresh water as the rule has it: 62.4 lb/ft3, in kg/m3 (33 CFR 183.105). */
const WATER = (62.4 * POUND) / FOOT ** 3;

const FLOAT_PLANE =
  '33 CFR 183.35 and 183.37: the deepest level immersion that lets no water in, of the hull as drawn';
const ONE_SIDE = '33 CFR 183.41(a)(2), which has it measured in the water; here by the hull as drawn';
const GREATEST = '33 CFR 183.53(a)(1)';

const orElse = (read: Read, name: string, otherwise: number | (() => number)): number => {
  if (read.has(name)) return read.number(name);
  return typeof otherwise === 'number' ? otherwise : otherwise();
};

const cutOf = (read: Read): number => orElse(read, 'transomCut.cutHeight', 15 * INCH);

/** The boat without people, and where these sit; a boat whose weights stand nowhere is her bare wood. */
function sideLoads(read: Read): (cut: number | null) => number {
  const hull = read.hull();
  const of = (name: string, wood: string) => orElse(read, name, () => read.number(wood));
  const keel = hull.widest.corners[0]![2]; // keel and sheer at least
  return sideLoadsOf(
    hull,
    {
      mass: of('weights.rigged', 'hull.structureMass'),
      forward: of('weights.riggedForward', 'hull.structureCentre.x'),
      height: of('weights.riggedHeight', 'hull.structureCentre.z'),
    },
    {
      forward: of('weights.peopleForward', 'hull.widestAt'),
      height: keel + read.number('thwart.height'),
    },
    WATER,
  );
}

/** A stern narrower than half her beam is no full transom: then the after quarter counts. */
function sternBreadth(hull: Hull): number {
  const broad = 2 * Math.max(...hull.aft.corners.map(([, y]) => y));
  if (broad > hull.beam / 2) return broad;
  const points = hull.edges.flatMap((edge) => edge.polyline(129));
  const aft = Math.min(...points.map(([x]) => x));
  return 2 * Math.max(...points.filter(([x]) => x <= aft + hull.length / 4).map(([, y]) => y));
}

/** None where there is no hull to measure. */
export function floatPlaneQuantities({ stations }: Layout): readonly Derived[] {
  if (stations.length === 0) return [];
  return [
    fromBoth(
      'floatPlane.overCut',
      'mass',
      'water pushed aside before any comes in over the motor’s cut-out or the sheer',
      FLOAT_PLANE,
      (hull, read) => WATER * floodingVolume(hull, cutOf(read)),
    ),
    fromHull(
      'floatPlane.overSheer',
      'mass',
      'water pushed aside before any comes in over the sheer',
      (hull) => WATER * floodingVolume(hull, null),
    ),
    fromBoth(
      'floatPlane.sideOverCut',
      'mass',
      'load along one side at which water is about to come in, over the motor’s cut-out or the sheer',
      ONE_SIDE,
      (_, read) => read.fact('floatPlane.sideLoads', sideLoads)(cutOf(read)),
    ),
    fromBoth(
      'floatPlane.sideOverSheer',
      'mass',
      'load along one side at which water is about to come in over the sheer',
      ONE_SIDE,
      (_, read) => read.fact('floatPlane.sideLoads', sideLoads)(null),
    ),
    fromBoth(
      'floatPlane.sternBreadth',
      'length',
      'breadth that counts for her power: of a full transom, or else the broadest of the after quarter',
      GREATEST,
      sternBreadth,
    ),
    {
      name: 'floatPlane.bottom',
      kind: 'choice',
      meaning: 'form of her bottom',
      source:
        'a bottom that rises less than 2° from keel to chine, with a hard chine; common practice, no source',
      options: [
        { id: 'flat', label: 'flat, with hard chines' },
        { id: 'other', label: 'any other' },
      ],
      from: (read) => (isFlat(read.hull()) ? 'flat' : 'other'),
    },
  ];
}

function isFlat({ widest: { corners } }: Hull): boolean {
  const [keel, chine] = [corners[0]!, corners[1]!]; // keel and sheer at least
  return corners.length > 2 && Math.atan2(chine[2] - keel[2], chine[1]) < (2 * Math.PI) / 180;
}
