/** How every station of the boat stands on the jig: worked out once for a whole table. */
import { isPost, type Station } from '../../boat';
import { insetPoint } from '../../boat/hull/inset';
import type { Vec3 } from '../../kernel';
import type { SkinAsked } from '../common/frame/frame-facts';
import { fact } from '../form/fact';
import { GEOMETRY } from '../../trade/sources';

/** Marks lie on the keel and on the sheer: of the skin only the lowest panel and the uppermost are over them. */
export type JigSkin = Omit<SkinAsked, 'bilgeThickness'>;

/** A station's marks inside the skin, on the face that stands on the station line, port side; m, in the boat's axes. */
export interface StationOnJig {
  readonly station: Station;
  readonly sheer: Vec3;
  /** On the centreline, at the bottom. */
  readonly foot: Vec3;
}

export const standings = fact(
  'the planes of the skin moved in by their thickness, on the face that stands on the line',
  GEOMETRY,
  (asked: JigSkin, { hull }) => {
    const [keel, sheer] = [hull.edges[0]!, hull.edges.at(-1)!]; // every hull has a keel and a sheer
    const inside = hull.offsets.offsetsTo === 'inside of skin';
    /** From aft forward. */
    const all = hull.stations.map((station): StationOnJig => {
      const mark = (edge: typeof keel): Vec3 =>
        inside
          ? edge.points[station.index]! // one point a station
          : insetPoint(hull, edge, station, (panel) =>
              panel === 'bottom' ? asked.bottomThickness : asked.sideThickness,
            );
      return { station, sheer: mark(sheer), foot: mark(keel) };
    });
    const along = all.flatMap((one) => [one.sheer[0], one.foot[0]]);
    // Along the boat, of all marks.
    return { all, aftmost: Math.min(...along), foremost: Math.max(...along) };
  },
);

/** The station in hand. */
export const standing = fact(
  standings.how,
  GEOMETRY,
  ({ station }: JigSkin & { readonly station: string }, { hull, ask }) =>
    ask(standings).all[hull.station(station).index]!, // one a station
);

/** Breadth of less than this is none, m. */
const SHARP = 1e-3;

/** The aftmost station with two sheer marks: the transom, or the first frame of a boat that is sharp at both ends. */
export const aftCorners = fact(
  'the aftmost station that has breadth at the sheer',
  GEOMETRY,
  (_: JigSkin, { ask }) => {
    const found = ask(standings).all.find(({ sheer }) => sheer[1] > SHARP);
    if (!found) throw new Error('no station of this boat has breadth at the sheer');
    return found;
  },
);

/** The mark on the centreline from which lengths are taped: plumb under the foremost station's sheer. */
export const foreMark = fact('the foremost station', GEOMETRY, (_: JigSkin, { ask }) => {
  const last = ask(standings).all.at(-1);
  if (!last) throw new Error('the boat has no stations yet');
  return last;
});

/** Legs under a station: one under a stem, two elsewhere. */
export const legsOf = ({ station }: StationOnJig): number => (isPost(station.role) ? 1 : 2);
