/**
 * The hull, drawn from its offsets.
 *
 * Axes: x forward from the after end of the bottom on the centreline, y half-breadth to port, z up from
 * the base line. Metres and radians. Edges are listed from the keel outward, stations from aft forward,
 * panels between neighbouring edges; all of them port side, the hull being the same to starboard.
 *
 * Signs: slopes dy/dx and dz/dx going forward; flare from the vertical, + outward; deadrise from the
 * horizontal, + rising outward, so that the two add up to a right angle; a bevel is + where the skin opens
 * out going forward, as in the after body; crown is + where the skin stands outside the straight section.
 *
 * The geometry lies on the face of the skin that the offsets are measured to, and knows no thickness:
 * see skin.ts for the other face.
 *
 * A hull is immutable. What follows from the offsets is worked out when first asked for and kept. What a
 * fault spoils throws an `Error` with the fault's sentence when asked for (see attempt.ts); the rest stands.
 */
import { type Mesh, meshVolume, type Vec3 } from '../../kernel';
import { closedBody } from './body';
import { type Edge, makeEdge } from './edge';
import { panelNames } from '../table/names';
import { find, type Named } from '../table/named';
import { type Fault, offsetFaults } from '../table/offset-faults';
import { complete, type Offsets } from '../table/offsets';
import { once } from '../once';
import { makePanel, type Panel } from './panel';
import { withoutRounding } from '../table/rounding';
import { isPost, makeStation, roleOf, type Station } from './station';
import { wordsOf } from '../../measure';

export interface Hull {
  readonly offsets: Offsets;
  readonly faults: readonly Fault[];
  readonly edges: readonly Edge[];
  readonly panels: readonly Panel[];
  readonly stations: readonly Station[];
  /** Stations that carry frames: all but the first and the last. */
  readonly frames: readonly Station[];
  edge(name: string): Edge;
  panel(name: string): Panel;
  station(name: string): Station;
  readonly aft: Station;
  readonly fore: Station;
  /** The station of greatest half-breadth. */
  readonly widest: Station;
  /** Between the extreme points of all edges, raked ends included, m. */
  readonly length: number;
  /** Twice the greatest half-breadth along the edges, m. */
  readonly beam: number;
  /** Height of the sheer above the keel at the widest station, m. */
  readonly depth: number;
  /** Closed, both sides, with a lid across the sheer. */
  readonly body: Mesh;
  /** Volume up to the sheer, m3. */
  readonly volume: number;
}

/**
 * Draws the hull. Edges and panels whose points have not changed are shared with earlier hulls, so moving
 * one offset works out again only what hangs on it.
 *
 * Never throws for bad offsets: see `faults`.
 */
export function buildHull(given: Offsets): Hull {
  const offsets = withoutRounding(given);
  const faults = offsetFaults(offsets);
  const edges = offsets.edges.map((named, index) => edgeThrough(offsets, faults, named, index));
  const panels = panelsBetween(edges);
  const widestIndex = once(() => indexOfWidest(edges));
  const around = { edges, panels, widestIndex };
  const stations = offsets.stations.map((named, index) => {
    const halfBreadths = offsets.points.map((line) => line[index]?.[1] ?? null);
    return makeStation(named, index, roleOf(index, offsets.stations.length, halfBreadths), around);
  });
  const aft = () => need(stations[0], 'the hull has no stations');
  const fore = () => need(stations.at(-1), 'the hull has no stations');
  const body = once(() => closedBody(panels, aft(), fore()));
  const volume = once(() => meshVolume(body()));
  const length = once(() => lengthOverAll(edges));
  const beam = once(() => 2 * Math.max(...edges.map((edge) => edge.greatestHalfBreadth)));
  return {
    offsets,
    faults,
    edges,
    panels,
    stations,
    frames: stations.filter((station) => station.role === 'frame'),
    edge: (name) => find(edges, name, 'edge'),
    panel: (name) => find(panels, name, 'panel'),
    station: (name) => find(stations, name, 'station'),
    get aft() {
      return aft();
    },
    get fore() {
      return fore();
    },
    get widest() {
      return need(stations[widestIndex()], 'the hull has no stations');
    },
    get length() {
      return length();
    },
    get beam() {
      return beam();
    },
    get depth() {
      const { corners } = need(stations[widestIndex()], 'the hull has no stations');
      return corners.at(-1)![2] - corners[0]![2]; // a hull without a keel and a sheer has faults and got no points
    },
    get body() {
      return body();
    },
    get volume() {
      return volume();
    },
  };
}

/** The end of the hull that has this role, or null. */
export function endWith(hull: Hull, role: Station['role']): Station | null {
  return [hull.aft, hull.fore].find((station) => station.role === role) ?? null;
}

/** The line of a stem or sternpost in the centreline plane, from the keel up, without repeated points, m. */
export function postLine(station: Station): readonly Vec3[] {
  if (!isPost(station.role)) throw new Error(`the ${station.label} is not a stem: it has breadth`);
  return station.corners.filter(
    (point, i, all) => i === 0 || point.some((value, axis) => value !== all[i - 1]![axis]),
  );
}

function need<T>(value: T | undefined, sentence: string): T {
  if (value === undefined) throw new Error(sentence);
  return value;
}

/** Edges seen lately, by name and numbers. Small: two versions of one boat with a few edits each. */
const lately = new Map<string, Edge>();
const KEPT = 64;

function edgeThrough(offsets: Offsets, faults: readonly Fault[], named: Named, index: number): Edge {
  const fault = faults.find(
    ({ edge, station }) => edge === named.name || (edge === null && station === null),
  );
  if (fault) {
    return makeEdge(named, index, () => {
      throw new Error(fault.says);
    });
  }
  // Without faults every point is complete.
  const points = offsets.points[index]!.map((point) => complete(point)!);
  const key = `${index} ${named.name} ${named.label} ${points.join(' ')}`;
  const known = lately.get(key);
  const edge = known ?? makeEdge(named, index, () => points);
  // Put last, so that the first is the one longest unused.
  lately.delete(key);
  lately.set(key, edge);
  if (lately.size > KEPT) lately.delete(lately.keys().next().value!);
  return edge;
}

const panelsOf = new WeakMap<Edge, WeakMap<Edge, Map<string, Panel>>>();

function panelsBetween(edges: readonly Edge[]): readonly Panel[] {
  return panelNames(edges.length).map((name, index) => {
    const inner = edges[index]!; // one panel between each two edges
    const outer = edges[index + 1]!;
    const byOuter = panelsOf.get(inner) ?? new WeakMap<Edge, Map<string, Panel>>();
    panelsOf.set(inner, byOuter);
    const byName = byOuter.get(outer) ?? new Map<string, Panel>();
    byOuter.set(outer, byName);
    const panel = byName.get(name) ?? makePanel({ name, label: wordsOf(name) }, index, inner, outer);
    byName.set(name, panel);
    return panel;
  });
}

function indexOfWidest(edges: readonly Edge[]): number {
  let widest = 0;
  let most = -1;
  for (const edge of edges) {
    edge.points.forEach(([, y], i) => {
      // The aftermost of equals.
      if (y > most || (y === most && i < widest)) [most, widest] = [y, i];
    });
  }
  return widest;
}

function lengthOverAll(edges: readonly Edge[]): number {
  const ends = edges.flatMap(({ points }) => [points[0]![0], points.at(-1)![0]]); // stations run forward
  return Math.max(...ends) - Math.min(...ends);
}
