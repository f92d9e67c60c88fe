/** The hull as a thing to look at: panels, end faces, long edges and the sections at the stations, both sides. */
import { attempt, type Hull, isPost } from '../../boat';
import { portSkin } from '../../boat/hull/port-skin';
import { distance, joined, type Mesh, mirrored, type Vec3 } from '../../kernel';
import { isIssue } from '../../measure';

/** A part by the name that lights it. */
interface Part {
  readonly name: string;
}
export interface ModelPanel extends Part {
  readonly mesh: Mesh;
}
export interface ModelFace extends Part {
  /** Both sides, in order round it. */
  readonly corners: readonly Vec3[];
}
export interface ModelLine extends Part {
  readonly points: readonly Vec3[];
}

/** Metres, in the hull's own axes. */
export interface HullModel {
  readonly panels: readonly ModelPanel[];
  readonly ends: readonly ModelFace[];
  readonly edges: readonly ModelLine[];
  readonly frames: readonly ModelLine[];
  readonly middle: Vec3;
  /** Half the box round her: length, breadth and height. */
  readonly half: Vec3;
  /** From the middle to her farthest point. */
  readonly reach: number;
}

const ALONG = 65;

const known = new WeakMap<Hull, HullModel | null>();

/** Null for a hull that a fault keeps from being drawn. */
export function modelOf(hull: Hull): HullModel | null {
  const kept = known.get(hull);
  if (kept !== undefined) return kept;
  const made = attempt(() => makeModel(hull));
  const model = isIssue(made) ? null : made;
  known.set(hull, model);
  return model;
}

function makeModel(hull: Hull): HullModel {
  const skin = portSkin(hull);
  const frames = hull.stations.map((station) => ({
    name: station.name,
    points: bothSides(skin.section(station)),
  }));
  const edges = hull.edges.flatMap((edge) => {
    const port = edge.polyline(ALONG);
    const lines = port.every(([, y]) => y === 0) ? [port] : [port, port.map(toStarboard)];
    return lines.map((points) => ({ name: edge.name, points }));
  });
  const ends = [hull.aft, hull.fore]
    .filter(({ role }) => !isPost(role))
    .map(({ name, corners }) => ({ name, corners: bothSides(corners) }));
  return {
    panels: hull.panels.map(({ name, mesh }) => ({ name, mesh: joined(mesh, mirrored(mesh)) })),
    ends,
    edges,
    frames,
    ...boundsOf([...edges, ...frames].flatMap(({ points }) => points)),
  };
}

const toStarboard = ([x, y, z]: Vec3): Vec3 => [x, -y, z];

/** From the port sheer down to the keel and up again to starboard. */
const bothSides = (section: readonly Vec3[]): readonly Vec3[] => [
  ...section.toReversed(),
  ...section.map(toStarboard).filter(([, y]) => y !== 0),
];

function boundsOf(points: readonly Vec3[]): Pick<HullModel, 'middle' | 'half' | 'reach'> {
  const ends = ([0, 1, 2] as const).map((axis) => {
    const all = points.map((point) => point[axis]);
    return [Math.min(...all), Math.max(...all)] as const;
  });
  const [[x0, x1], [y0, y1], [z0, z1]] = ends as [Ends, Ends, Ends]; // one an axis
  const middle: Vec3 = [(x0 + x1) / 2, (y0 + y1) / 2, (z0 + z1) / 2];
  const half: Vec3 = [(x1 - x0) / 2, (y1 - y0) / 2, (z1 - z0) / 2];
  const reach = Math.max(...points.map((point) => distance(point, middle)));
  return { middle, half, reach };
}

type Ends = readonly [least: number, most: number];
