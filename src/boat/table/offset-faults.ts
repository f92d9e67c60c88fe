/**
 * What is wrong with the offsets.
 *
 * Faults are data: each names its station, edge and column where it has one, and says in a sentence
 * what is wrong. A fault at an edge spoils that edge and what is made of it; the rest of the hull stands.
 */
import type { Vec2, Vec3 } from '../../kernel';
import type { Named } from './named';
import { isTaken } from './names';
import { type Column, columns, complete, type Offsets } from './offsets';
import { withoutRounding } from './rounding';
import { MOST_EDGES, MOST_STATIONS } from './table';

export interface Fault {
  /** Names as in quantities; null where the fault is not of one station, edge or column. */
  readonly station: string | null;
  readonly edge: string | null;
  readonly column: Column | null;
  /** A sentence without a full stop. */
  readonly says: string;
}

const FEWEST_STATIONS = 3;
/** No boat of this kind reaches further from its base point; a number beyond is in the wrong unit. */
const FARTHEST = 50;

/** Everything wrong with the offsets, in the order of the table; empty when a hull can be drawn. */
export function offsetFaults(given: Offsets): readonly Fault[] {
  const offsets = withoutRounding(given);
  const whole = tableFaults(offsets);
  const edges = offsets.edges.flatMap((_, edge) => edgeFaults(offsets, edge));
  return [...whole, ...edges, ...sectionFaults(offsets)];
}

/** Faults that spoil the whole table: too little or too much of it, names that can't be told apart. */
function tableFaults({ edges, stations }: Offsets): Fault[] {
  const faults: Fault[] = [];
  const say = (says: string, place: Partial<Fault> = {}) =>
    faults.push({ station: null, edge: null, column: null, ...place, says });
  if (stations.length < FEWEST_STATIONS) {
    say(`a hull needs at least ${FEWEST_STATIONS} stations; the table has ${stations.length}`);
  }
  if (stations.length > MOST_STATIONS) {
    say(`the table has ${stations.length} stations; ${MOST_STATIONS} are the most that can be drawn`);
  }
  if (edges.length < 2) say('a hull needs at least two edges, a keel and a sheer');
  if (edges.length > MOST_EDGES) {
    say(`the table has ${edges.length} edges; ${MOST_EDGES} are the most that can be drawn`);
  }
  const seen = new Map<string, string>();
  const check = ({ name, label }: Named, kind: 'edge' | 'station') => {
    const before = seen.get(name);
    if (name === '') say(`the ${kind} "${label}" needs a letter or a figure in its name`, { [kind]: name });
    else if (isTaken(name, kind)) {
      say(`the ${kind} "${label}" has a name that the notebook needs for something else; give it another`, {
        [kind]: name,
      });
    } else if (before !== undefined) {
      say(
        before === label
          ? `the name "${label}" stands twice; edges and stations need names of their own`
          : `"${before}" and "${label}" are told apart only by signs or capitals; give one another name`,
        { [kind]: name },
      );
    } else seen.set(name, label);
  };
  for (const edge of edges) check(edge, 'edge');
  for (const station of stations) check(station, 'station');
  return faults;
}

/** Faults along one edge: missing numbers, points behind one another, a keel off the centreline. */
function edgeFaults({ edges, stations, points, whyMissing }: Offsets, index: number): Fault[] {
  const edge = edges[index];
  const line = points[index];
  if (!edge || !line) return [];
  const faults: Fault[] = [];
  const say = (station: Named, column: Column, says: string) =>
    faults.push({
      station: station.name,
      edge: edge.name,
      column,
      says: `${station.label}, ${edge.label}: ${says}`,
    });
  let last: { readonly x: number; readonly label: string } | null = null;
  stations.forEach((station, i) => {
    const point = line[i] ?? [null, null, null];
    columns.forEach((column, c) => {
      const value = point[c] ?? null;
      if (value === null) {
        const why = whyMissing?.(station.name, edge.name, column) ?? null;
        if (why === null) say(station, column, `the ${columnWords[column]} is missing`);
        else faults.push({ station: station.name, edge: edge.name, column, says: why });
      } else if (!Number.isFinite(value)) say(station, column, `the ${columnWords[column]} is not a number`);
      else if (Math.abs(value) > FARTHEST) {
        say(station, column, `the ${columnWords[column]} is more than ${FARTHEST} m; is the unit right?`);
      }
    });
    const [x, y] = point;
    if (y !== null && y < 0)
      say(
        station,
        'halfBreadth',
        'a half-breadth is measured out from the centreline, so it can’t be below 0',
      );
    if (index === 0 && y !== null && y > 0) {
      say(station, 'halfBreadth', `the ${edge.label} lies on the centreline, so its half-breadth is 0`);
    }
    if (x === null || !Number.isFinite(x)) return;
    if (last && x === last.x) say(station, 'x', `it stands exactly as far forward as ${last.label}`);
    else if (last && x < last.x)
      say(station, 'x', `it stands aft of ${last.label}, but stations go from aft forward`);
    last = { x, label: station.label };
  });
  return faults;
}

const columnWords: Readonly<Record<Column, string>> = {
  x: 'distance forward',
  halfBreadth: 'half-breadth',
  height: 'height',
};

/** Faults across one station: edges that lie below or on the one before, or a section that crosses itself. */
function sectionFaults({ edges, stations, points }: Offsets): Fault[] {
  const faults: Fault[] = [];
  stations.forEach((station, i) => {
    const ends = i === 0 || i === stations.length - 1;
    const section = edges.map((_, edge) => complete(points[edge]?.[i]));
    for (let edge = 1; edge < edges.length; edge++) {
      const below = section[edge - 1];
      const here = section[edge];
      const inner = edges[edge - 1];
      const outer = edges[edge];
      if (!below || !here || !inner || !outer) continue;
      const say = (column: Column, says: string) =>
        faults.push({ station: station.name, edge: outer.name, column, says: `${station.label}: ${says}` });
      // Edges may run together at the stem, nowhere else.
      const meet = here[1] === below[1] && here[2] === below[2];
      // A bottom may hang lower at its chine than at the keel; above the chine, and up a stem, everything rises.
      const upStem = here[1] === 0 && below[1] === 0;
      const rises = edge > 1 || upStem;
      if (meet && !ends)
        say('halfBreadth', `the ${inner.label} and the ${outer.label} meet before the end of the hull`);
      else if (rises && here[2] < below[2]) {
        say(
          'height',
          `the ${outer.label} lies lower than the ${inner.label}; from the keel outward each edge is higher`,
        );
      } else if (!upStem && crossesEarlier(section, edge)) {
        say('halfBreadth', `the section crosses itself between the ${inner.label} and the ${outer.label}`);
      }
    }
  });
  return faults;
}

/** Whether the line up to `edge` cuts an earlier line of the section, or folds back on the one before. */
function crossesEarlier(section: readonly (Vec3 | null)[], edge: number): boolean {
  const inPlane = (point: Vec3 | null | undefined): Vec2 | null => (point ? [point[1], point[2]] : null);
  const a = inPlane(section[edge - 1]);
  const b = inPlane(section[edge]);
  if (!a || !b) return false;
  for (let other = 1; other < edge; other++) {
    const c = inPlane(section[other - 1]);
    const d = inPlane(section[other]);
    if (!c || !d) continue;
    if (other === edge - 1 ? foldsBack(c, d, b) : segmentsCross(a, b, c, d)) return true;
  }
  return false;
}

const turn = (a: Vec2, b: Vec2, c: Vec2) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

function foldsBack(from: Vec2, corner: Vec2, to: Vec2): boolean {
  const back = (to[0] - corner[0]) * (corner[0] - from[0]) + (to[1] - corner[1]) * (corner[1] - from[1]);
  return back < 0 && turn(from, corner, to) === 0;
}

function segmentsCross(a: Vec2, b: Vec2, c: Vec2, d: Vec2): boolean {
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}
