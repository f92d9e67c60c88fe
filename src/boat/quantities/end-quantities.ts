/**
 * What the ends of the hull offer to the notebook, named for what stands there, not for what the plan calls
 * it: `transom.rake`, `bowTransom.width`, `stem.bevel`.
 */
import { issue, nameOf } from '../../measure';
import { type Hull, postLine } from '../hull/hull';
import { fromHull } from './make-derived';
import type { Named } from '../table/named';
import type { Derived } from './quantity';
import { isPost, type Role, type Station } from '../hull/station';

type Place = Named & { readonly role: Role };

/** None for a frame. */
export function endQuantities(station: Place): Derived[] {
  if (station.role === 'frame') return [];
  return isPost(station.role) ? postQuantities(station) : transomQuantities(station);
}

function transomQuantities(station: Place): Derived[] {
  const name = nameOf(station.role);
  const outward = station.role === 'transom' ? -1 : 1;
  const ask = (of: (station: Station) => number) => (hull: Hull) => of(hull.station(station.name));
  const words = `of the ${station.label}`;
  return [
    fromHull(
      `${name}.rake`,
      'angle',
      `rake ${words} from the vertical, + where its top leans out of the boat`,
      ask((end) => outward * end.plane.lean),
    ),
    fromHull(
      `${name}.height`,
      'length',
      `height ${words} up its slope, at the sheer`,
      ask((end) => end.outline.at(-1)![1] - Math.min(...end.outline.map(([, u]) => u))),
    ),
    fromHull(
      `${name}.width`,
      'length',
      `greatest breadth ${words}`,
      ask((end) => 2 * Math.max(...end.outline.map(([y]) => y))),
    ),
    fromHull(
      `${name}.warp`,
      'length',
      `farthest that a corner ${words} lies from one plane`,
      ask((end) => end.plane.miss),
    ),
  ];
}

function postQuantities(station: Place): Derived[] {
  const name = nameOf(station.role);
  const outward = station.role === 'sternpost' ? -1 : 1;
  return [
    fromHull(
      `${name}.rake`,
      'angle',
      `rake of the ${station.label} from the vertical, + where its top leans out of the boat`,
      (hull) => {
        const line = postLine(hull.station(station.name));
        const foot = line[0]!; // a post has a foot
        const head = line.at(-1)!;
        return Math.atan2(outward * (head[0] - foot[0]), head[2] - foot[2]);
      },
    ),
    fromHull(
      `${name}.bevel`,
      'angle',
      `mean angle between the side and the centreline plane at the ${station.label}`,
      (hull) => {
        const place = hull.station(station.name);
        const side = hull.panels.at(-1);
        return side
          ? (place.bevel(side.inner.name, side.name) + place.bevel(side.outer.name, side.name)) / 2
          : issue('the hull has no side');
      },
    ),
  ];
}
