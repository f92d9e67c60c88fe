/** The hull as a thing to look at: panels, end faces, long edges and the sections at the stations, both sides. */
import { attempt, type Hull, isPost } from '../../boat';
import { stationSection } from '../../cells/shape/lines-cuts';
import { joined, type Mesh, mirrored, type Vec3 } from '../../kernel';
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
  /** The middle of the hull, and the distance from there to its farthest point. */
  readonly middle: Vec3;
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
  const frames = hull.stations.map((station) => ({
    name: station.name,
    points: bothSides(stationSection(hull, station)),
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

function boundsOf(points: readonly Vec3[]): Pick<HullModel, 'middle' | 'reach'> {
  const middleOn = (axis: 0 | 1 | 2) => {
    const all = points.map((point) => point[axis]);
    return (Math.min(...all) + Math.max(...all)) / 2;
  };
  const middle: Vec3 = [middleOn(0), middleOn(1), middleOn(2)];
  const reach = Math.max(...points.map((p) => Math.hypot(...p.map((value, axis) => value - middle[axis]!))));
  return { middle, reach };
}
