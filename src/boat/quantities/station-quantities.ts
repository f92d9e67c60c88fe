/**
 * What each station offers to the notebook: how edges run past it and how panels lie on it.
 */
import { issue } from '../../measure';
import { fromHull } from './make-derived';
import { endQuantities } from './end-quantities';
import type { Hull } from '../hull/hull';
import type { Layout } from './lists';
import type { Named } from '../table/named';
import type { Derived } from './quantity';
import { isPost, type Role, type Station } from '../hull/station';

type Place = Named & { readonly role: Role };

export function stationQuantities(layout: Layout): Derived[] {
  return layout.stations.flatMap((station, i) => [
    ...placeOf(station, i < layout.stations.length - 1),
    ...layout.edges.flatMap((edge, e) => edgeThere(station, edge, layout.panels[e - 1], layout.panels[e])),
    ...layout.panels.flatMap((panel) => panelThere(station, panel)),
    ...(station.role === 'frame' ? [standsBy(station)] : []),
    ...endQuantities(station),
  ]);
}

function placeOf({ name, label }: Named, hasNext: boolean): Derived[] {
  const position = fromHull(
    `${name}.position`,
    'length',
    `position of ${label} along the boat, at the keel`,
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

/** A choice, so that cells that stand without a boat can be answered by hand. */
function standsBy({ name, label }: Named): Derived {
  return {
    name: `${name}.stands`,
    kind: 'choice',
    meaning: `side of its line on which ${label} stands by custom, so that bevels are only cut off`,
    source: 'custom of the trade; common practice, no source',
    options: [
      { id: 'forward', label: 'forward of its line' },
      { id: 'aft', label: 'aft of its line' },
    ],
    from: (read) => read.hull().station(name).stands,
  };
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
