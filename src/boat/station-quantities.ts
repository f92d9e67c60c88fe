/**
 * What each station offers to the notebook: how edges run past it and how panels lie on it.
 */
import { issue } from '../measure';
import { fromHull } from './make-derived';
import { type Hull, postLine } from './hull';
import type { Layout } from './lists';
import type { Named } from './named';
import type { Derived } from './quantity';
import { isPost, type Role, type Station } from './station';

type Place = Named & { readonly role: Role };

export function stationQuantities(layout: Layout): Derived[] {
  return layout.stations.flatMap((station, i) => [
    ...placeOf(station, i < layout.stations.length - 1),
    ...layout.edges.flatMap((edge, e) => edgeThere(station, edge, layout.panels[e - 1], layout.panels[e])),
    ...layout.panels.flatMap((panel) => panelThere(station, panel)),
    ...(isPost(station.role)
      ? postQuantities(station)
      : station.role === 'frame'
        ? []
        : transomQuantities(station)),
  ]);
}

function placeOf({ name, label }: Named, hasNext: boolean): Derived[] {
  const position = fromHull(
    `${name}.position`,
    'length',
    `distance forward of ${label} at the keel`,
    (hull) => hull.station(name).x,
  );
  if (!hasNext) return [position];
  return [
    position,
    fromHull(`${name}.spacing`, 'length', `distance from ${label} to the next station forward`, (hull) => {
      const station = hull.station(name);
      const next = hull.stations[station.index + 1];
      return next ? next.x - station.x : issue(`no station stands forward of ${label}`);
    }),
  ];
}

function edgeThere(
  station: Place,
  edge: Named,
  below: Named | undefined,
  above: Named | undefined,
): Derived[] {
  const at = `${station.name}.${edge.name}`;
  const words = `of the ${edge.label} at ${station.label}`;
  const index = (hull: Hull) => hull.station(station.name).index;
  const slope = (hull: Hull) => hull.edge(edge.name).slopes[index(hull)]!; // one a station
  const around = [
    ...(below ? [{ panel: below, word: 'below' }] : []),
    ...(above ? [{ panel: above, word: 'above' }] : []),
  ];
  const bevelMeaning = isPost(station.role)
    ? 'angle to the centreline plane'
    : 'bevel, + opening out forward,';
  return [
    fromHull(
      `${at}.planSlope`,
      'ratio',
      `slope in plan ${words}, + widening forward`,
      (hull) => slope(hull).plan,
    ),
    fromHull(
      `${at}.profileSlope`,
      'ratio',
      `slope in profile ${words}, + rising forward`,
      (hull) => slope(hull).profile,
    ),
    fromHull(
      `${at}.along`,
      'length',
      `length along the ${edge.label} from its after end to ${station.label}`,
      (hull) => hull.edge(edge.name).arcs[index(hull)]!, // one a station
    ),
    ...(above
      ? [
          fromHull(`${at}.angle`, 'angle', `angle inside the hull ${words}`, (hull) =>
            hull.station(station.name).angle(edge.name),
          ),
        ]
      : []),
    ...around.flatMap(({ panel, word }) => [
      fromHull(
        `${at}.${panel.name}.bevel`,
        'angle',
        `${bevelMeaning} of the ${panel.label} at the ${edge.label}, ${station.label}`,
        (hull) => hull.station(station.name).bevel(edge.name, panel.name),
      ),
      fromHull(
        `${at}.${word}.flare`,
        'angle',
        `flare of the skin just ${word} the ${edge.label} at ${station.label}`,
        (hull) => hull.station(station.name).skinFlare(edge.name, panel.name),
      ),
      fromHull(
        `${at}.${word}.deadrise`,
        'angle',
        `deadrise of the skin just ${word} the ${edge.label} at ${station.label}`,
        (hull) => Math.PI / 2 - hull.station(station.name).skinFlare(edge.name, panel.name),
      ),
    ]),
  ];
}

function panelThere(station: Place, panel: Named): Derived[] {
  const at = `${station.name}.${panel.name}`;
  const words = `of the ${panel.label} at ${station.label}`;
  const ask = (of: (station: Station) => number) => (hull: Hull) => of(hull.station(station.name));
  const shared = [
    fromHull(
      `${at}.flare`,
      'angle',
      `flare ${words}, from the vertical`,
      ask((place) => place.flare(panel.name)),
    ),
    fromHull(
      `${at}.deadrise`,
      'angle',
      `deadrise ${words}, from the horizontal`,
      ask((place) => place.deadrise(panel.name)),
    ),
    fromHull(
      `${at}.girth`,
      'length',
      `length of the section ${words}`,
      ask((place) => place.girth(panel.name)),
    ),
  ];
  if (station.role === 'frame') {
    return [
      ...shared,
      fromHull(
        `${at}.crown`,
        'length',
        `crown ${words}: how far the skin stands outside the straight frame`,
        (hull) => hull.station(station.name).crown(panel.name),
      ),
    ];
  }
  return [
    ...shared,
    fromHull(
      `${at}.tilt`,
      'angle',
      `lean out of plumb ${words}`,
      ask((place) => place.tilt(panel.name).tilt),
    ),
    fromHull(
      `${at}.planAngle`,
      'angle',
      `angle in plan ${words}, + closing in forward`,
      ask((place) => place.tilt(panel.name).plan),
    ),
  ];
}

/** Names of an end go by what it is, whatever the plan calls it. */
export const endNames = {
  transom: 'transom',
  'bow transom': 'bowTransom',
  stem: 'stem',
  sternpost: 'sternpost',
} as const;

function transomQuantities(station: Place): Derived[] {
  const name = endNames[station.role === 'bow transom' ? 'bow transom' : 'transom'];
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
  const name = endNames[station.role === 'sternpost' ? 'sternpost' : 'stem'];
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
