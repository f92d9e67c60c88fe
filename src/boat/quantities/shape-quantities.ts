/**
 * What the hull's shape offers to the notebook: the whole, its edges and its panels.
 */
import { type Issue, issue } from '../../measure';
import { FORM_PANELS, leastBendRadius } from '../../trade/plywood-bend';
import type { Edge } from '../hull/edge';
import { flatPanel } from '../hull/flat-panel';
import { fromHull } from './make-derived';
import type { Hull } from '../hull/hull';
import type { Layout } from './lists';
import type { Named } from '../table/named';
import type { Derived } from './quantity';

export function shapeQuantities(layout: Layout): Derived[] {
  return [
    ...hullQuantities(layout),
    ...layout.edges.flatMap(edgeQuantities),
    ...layout.chines.map((chine) => meanAngle(chine, 'angle inside the hull between the panels that meet')),
    ...layout.edges
      .slice(0, 1)
      .map((keel) => meanAngle(keel, 'angle inside the hull between the two sides of the bottom')),
    ...layout.panels.flatMap(panelQuantities),
  ];
}

function hullQuantities({ stations }: Layout): Derived[] {
  const frames = stations.filter(({ role }) => role === 'frame').length;
  return [
    fromHull(
      'hull.length',
      'length',
      'length of the hull over all, raked ends included',
      (hull) => hull.length,
    ),
    fromHull('hull.beam', 'length', 'greatest breadth of the hull', (hull) => hull.beam),
    fromHull(
      'hull.depth',
      'length',
      'height of the sheer above the keel at the widest station',
      (hull) => hull.depth,
    ),
    fromHull('hull.volume', 'displacement', 'volume of the hull up to the sheer', (hull) => hull.volume),
    fromHull(
      'hull.widestAt',
      'length',
      'position of the widest station along the boat',
      (hull) => hull.widest.x,
    ),
    fromHull('hull.skinArea', 'area', 'area of the skin, both sides of the boat, without transoms', skinArea),
    fromHull(
      'hull.surfaceArea',
      'area',
      'area of skin and transoms, both sides of the boat, one face',
      (hull) => skinArea(hull) + [hull.aft, hull.fore].reduce((sum, end) => sum + end.area, 0),
    ),
    { name: 'hull.frames', kind: 'count', meaning: 'number of frames', from: () => frames },
    fromHull('hull.frameSpacing', 'length', 'mean distance between stations', (hull) => mean(bays(hull))),
    fromHull('hull.longestBay', 'length', 'greatest distance between neighbouring stations', (hull) =>
      Math.max(...bays(hull)),
    ),
  ];
}

const skinArea = (hull: Hull) => 2 * hull.panels.reduce((sum, panel) => sum + panel.area, 0);
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Distances between neighbouring stations along the keel. */
function bays(hull: Hull): readonly number[] {
  return hull.stations.slice(1).map((station, i) => station.x - hull.stations[i]!.x); // the list shifted by one
}

function edgeQuantities({ name, label }: Named): Derived[] {
  const bend =
    (ask: (bend: NonNullable<Edge['leastRadius']>) => number) =>
    (hull: Hull): number | Issue => {
      const { leastRadius } = hull.edge(name);
      return leastRadius ? ask(leastRadius) : issue(`the ${label} is straight, so it has no tightest bend`);
    };
  return [
    fromHull(
      `${name}.length`,
      'length',
      `length of the ${label} along its curve`,
      (hull) => hull.edge(name).length,
    ),
    fromHull(
      `${name}.leastRadius`,
      'length',
      `tightest radius of the ${label}`,
      bend(({ radius }) => radius),
    ),
    fromHull(
      `${name}.leastRadiusAt`,
      'length',
      `position along the boat of the tightest bend of the ${label}`,
      bend(({ x }) => x),
    ),
    fromHull(
      `${name}.leastRadiusAlong`,
      'length',
      `length along the ${label} from its after end to its tightest bend`,
      bend(({ along }) => along),
    ),
  ];
}

function meanAngle({ name, label }: Named, what: string): Derived {
  return fromHull(`${name}.meanAngle`, 'angle', `mean along the ${label} of the ${what}`, (hull) => {
    const edge = hull.edge(name);
    const { arcs } = edge;
    const angles = hull.stations.map((station) => station.angle(name));
    let turned = 0;
    for (let i = 1; i < arcs.length; i++)
      turned += ((angles[i - 1]! + angles[i]!) / 2) * (arcs[i]! - arcs[i - 1]!);
    return turned / edge.length;
  });
}

function panelQuantities({ name, label }: Named): Derived[] {
  const limit = (grain: 'across' | 'along', words: string): Derived => ({
    name: `${name}.bendLimit${grain === 'across' ? 'Across' : 'Along'}`,
    kind: 'length',
    meaning: `least radius that the plywood of the ${label} takes dry, ${words}`,
    source: `${FORM_PANELS}; a panel under 1/4 in (6.4 mm) is given the radius of that row, and takes a tighter one`,
    from: (read) => {
      const { radius, panel } = leastBendRadius(read.number(`${name}.thickness`), grain);
      return panel === 'thicker'
        ? issue(`the published radii end at 3/4 in (19 mm), and the ${label} is thicker`)
        : radius;
    },
  });
  return [
    fromHull(
      `${name}.area`,
      'area',
      `area of the ${label} laid flat, one side of the boat`,
      (hull) => hull.panel(name).area,
    ),
    fromHull(
      `${name}.leastRadius`,
      'length',
      `tightest radius of the ${label} across its rulings`,
      (hull) => {
        const { leastRadius } = hull.panel(name);
        return leastRadius?.radius ?? issue(`the ${label} is flat, so it has no tightest bend`);
      },
    ),
    fromHull(
      `${name}.leastRadiusAt`,
      'length',
      `position along the boat of the tightest bend of the ${label}`,
      (hull) => {
        const { leastRadius } = hull.panel(name);
        return leastRadius?.x ?? issue(`the ${label} is flat, so it has no tightest bend`);
      },
    ),
    fromHull(
      `${name}.twist`,
      'angle',
      `greatest twist left in the ${label} along one ruling`,
      (hull) => hull.panel(name).twist.angle,
    ),
    fromHull(
      `${name}.twistAt`,
      'length',
      `position along the boat of the greatest twist of the ${label}`,
      (hull) => hull.panel(name).twist.x,
    ),
    fromHull(
      `${name}.flatLength`,
      'length',
      `length of the pattern of the ${label}, along the straight edge over which it stands least high`,
      (hull) => flatPanel(hull.panel(name)).length,
    ),
    fromHull(
      `${name}.flatWidth`,
      'length',
      `least width of the pattern of the ${label}, square to that edge`,
      (hull) => flatPanel(hull.panel(name)).width,
    ),
    limit('across', 'bent across the face grain'),
    limit('along', 'bent along the face grain'),
    fromHull(
      `${name}.centre.x`,
      'length',
      `position along the boat of the middle of the ${label}`,
      (hull) => hull.panel(name).centre[0],
    ),
    fromHull(
      `${name}.centre.z`,
      'length',
      `height of the middle of the ${label}`,
      (hull) => hull.panel(name).centre[2],
    ),
  ];
}
