/**
 * What the ends of the hull offer to the notebook, named for what stands there, not for what the plan calls
 * it: `transom.rake`, `bowTransom.width`, `stem.bevel`.
 */
import { add, unit, type Vec3 } from '../kernel';
import { issue, nameOf } from '../measure';
import { type Hull, postLine } from './hull';
import { fromHull } from './make-derived';
import type { Named } from './named';
import { postLength, skinOnPost } from './post-skin';
import type { Derived } from './quantity';
import { isPost, type Role, type Station } from './station';

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
    ...sideAtTransom(station, name),
  ];
}

/** Where the side meets a transom, upward: its lower edge, the mean of both, its upper edge. */
const sidePlaces = ['foot', 'middle', 'head'] as const;

function sideAtTransom({ name: station, label }: Place, name: string): Derived[] {
  const ask =
    (place: (typeof sidePlaces)[number], of: (normal: Vec3, end: Station) => number) => (hull: Hull) => {
      const end = hull.station(station);
      const side = hull.panels.at(-1);
      if (!side) return issue('the hull has no side');
      const [low, high] = [end.normal(side.inner.name, 'side'), end.normal(side.outer.name, 'side')];
      return of(place === 'foot' ? low : place === 'head' ? high : unit(add(low, high)), end);
    };
  return sidePlaces.flatMap((place) => [
    fromHull(
      `${name}.side.${place}.lean`,
      'angle',
      `lean of the side out of plumb at the ${place} of its edge on the ${label}`,
      ask(place, ([, , up]) => -Math.asin(up)),
    ),
    fromHull(
      `${name}.side.${place}.turn`,
      'angle',
      `angle of the side in plan there, + where it closes in going away from the ${label}`,
      ask(place, ([forward, out], end) => Math.atan2(end.index === 0 ? forward : -forward, out)),
    ),
  ]);
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
    ...alongPost(station),
  ];
}

/** Places on a post, from its foot at the keel to its head at the sheer, and their shares of its length. */
const postPlaces = Array.from({ length: 11 }, (_, tenth): readonly [string, number] => [
  tenth === 0 ? 'foot' : tenth === 10 ? 'head' : `tenth${tenth}`,
  tenth / 10,
]);

function alongPost({ name: place, label, role }: Place): Derived[] {
  const name = nameOf(role);
  return [
    fromHull(`${name}.run`, 'length', `length of the ${label} along its line, keel to sheer`, (hull) =>
      postLength(hull, hull.station(place)),
    ),
    ...postPlaces.flatMap(([at, share]) => {
      const there = (hull: Hull) => skinOnPost(hull, hull.station(place), share);
      const words = `${share * 100} % of the way up the ${label}`;
      return [
        fromHull(
          `${name}.${at}.up`,
          'length',
          `distance along the line of the ${label} from its foot, ${words}`,
          (hull) => there(hull).up,
        ),
        fromHull(
          `${name}.${at}.entry`,
          'angle',
          `angle between the skin and the centreline plane, square to the post, ${words}`,
          (hull) => there(hull).entry,
        ),
        fromHull(
          `${name}.${at}.rake`,
          'angle',
          `lean out of plumb, + out of the boat, ${words}`,
          (hull) => there(hull).rake,
        ),
      ];
    }),
  ];
}
