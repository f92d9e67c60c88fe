/**
 * How the side comes to the ends of the boat, place by place: `transom.side.foot.lean`, `stem.tenth3.entry`. A
 * list of its own, for the cells that ask for it bring it with them.
 */
import { add, unit, type Vec3 } from '../../kernel';
import { issue, nameOf } from '../../measure';
import type { Hull } from '../hull/hull';
import type { Layout } from './lists';
import { fromHull } from './make-derived';
import type { Named } from '../table/named';
import { postLength, skinOnPost } from '../hull/post-skin';
import type { Derived } from './quantity';
import { isPost, type Role, type Station } from '../hull/station';

type Place = Named & { readonly role: Role };

export function endAngleQuantities({ stations }: Layout): readonly Derived[] {
  return stations
    .filter(({ role }) => role !== 'frame')
    .flatMap((station) => (isPost(station.role) ? alongPost(station) : sideAtTransom(station)));
}

/** Where the side meets a transom, upward: its lower edge, the mean of both, its upper edge. */
const sidePlaces = ['foot', 'middle', 'head'] as const;

function sideAtTransom({ name: station, label, role }: Place): Derived[] {
  const name = nameOf(role);
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
