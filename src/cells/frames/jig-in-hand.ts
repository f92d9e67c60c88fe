/** How every station of the boat stands on the jig, from the cell's values: worked out once for a whole table. */
import { isPost, type Hull, type Station } from '../../boat';
import { insetPoint } from '../../boat/hull/inset';
import type { Vec3 } from '../../kernel';
import type { Values } from '../form/define';
import { thicknessKey } from '../common/frame/frame-in-hand';

/** What the marks inside the skin follow from. */
export const SKIN_INPUTS = ['sideThickness', 'bottomThickness', 'bilgeThickness'] as const;

/** A station's marks inside the skin, on the face that stands on the station line, port side; m, in the boat's axes. */
export interface Standing {
  readonly station: Station;
  readonly sheer: Vec3;
  /** On the centreline, at the bottom. */
  readonly foot: Vec3;
}

export interface Standings {
  /** From aft forward. */
  readonly all: readonly Standing[];
  /** Along the boat, of all marks. */
  readonly aftmost: number;
  readonly foremost: number;
}

const known = new WeakMap<Hull, { readonly key: string; readonly standings: Standings }>();

/** @throws a sentence where the hull has a fault */
export function standingsOf(hull: Hull, values: Values): Standings {
  const key = SKIN_INPUTS.map((name) => values[name]).join(' ');
  const before = known.get(hull);
  if (before?.key === key) return before.standings;
  const all = hull.stations.map((station): Standing => {
    const [keel, sheer] = [hull.edges[0]!, hull.edges.at(-1)!]; // every hull has a keel and a sheer
    const inside = hull.offsets.offsetsTo === 'inside of skin';
    const mark = (edge: typeof keel): Vec3 =>
      inside
        ? edge.points[station.index]! // one point a station
        : insetPoint(hull, edge, station, (panel) => Number(values[thicknessKey(panel)]));
    return { station, sheer: mark(sheer), foot: mark(keel) };
  });
  const along = all.flatMap(({ sheer, foot }) => [sheer[0], foot[0]]);
  const standings = { all, aftmost: Math.min(...along), foremost: Math.max(...along) };
  known.set(hull, { key, standings });
  return standings;
}

export function standingInHand(hull: Hull, values: Values): Standing {
  return standingsOf(hull, values).all[hull.station(String(values['station'])).index]!; // one a station
}

/** Breadth of less than this is none, m. */
const SHARP = 1e-3;

/** The aftmost station with two sheer marks: the transom, or the first frame of a boat that is sharp at both ends. */
export function aftCorners(hull: Hull, values: Values): Standing {
  const found = standingsOf(hull, values).all.find(({ sheer }) => sheer[1] > SHARP);
  if (!found) throw new Error('no station of this boat has breadth at the sheer');
  return found;
}

/** The mark on the centreline from which lengths are taped: plumb under the foremost station's sheer. */
export function foreMark(hull: Hull, values: Values): Standing {
  const last = standingsOf(hull, values).all.at(-1);
  if (!last) throw new Error('the boat has no stations yet');
  return last;
}

/** Legs under a station: one under a stem, two elsewhere. */
export const legsOf = ({ station }: Standing): number => (isPost(station.role) ? 1 : 2);
