/**
 * A long line of the hull as the loft floor shows it: one edge in plan or in profile, point by point.
 */
import { type Edge, type Hull, isPost } from '../../boat';
import { once } from '../../boat/once';
import {
  type Batten,
  bendBatten,
  derivativeAt,
  type FairRun,
  fairRun,
  type Hollow,
  hollows,
  missWhenLifted,
  pushesOn,
  type Tightest,
  tightest,
  turnOfLine,
  type Vec3,
  viewCurvature,
} from '../../kernel';

export type LineView = 'plan' | 'profile';

export const lineViews: readonly { readonly id: LineView; readonly label: string }[] = [
  { id: 'plan', label: 'plan' },
  { id: 'profile', label: 'profile' },
];

/** All but the points is worked out when first asked for. Metres. */
export interface LongLine {
  readonly edge: Edge;
  readonly view: LineView;
  readonly x: readonly number[];
  /** Half-breadths or heights, one a station. */
  readonly values: readonly number[];
  /** The edge's own batten, as the hull has it. */
  readonly batten: Batten;
  /** +1 where it bends towards greater values on the whole, -1 where away. */
  readonly turn: 1 | -1;
  /** Bend at each station, 1/m, + where the batten bends the right way. */
  readonly bends: readonly number[];
  readonly hollows: readonly Hollow[];
  /** A thin batten bent on the floor through the points, its ends running on free. */
  readonly freeBatten: Batten;
  /** Force of each station's duck on it over its stiffness, 1/m2: + outboard in plan, + up in profile. */
  readonly ducks: readonly number[];
  /** How far each point stands proud of that batten when its duck alone is lifted, m. */
  readonly misses: readonly number[];
  /** @param spread of the offsets as written, m */
  run(spread: number): FairRun;
}

/** One station of a line moved on trial, m. */
export interface Trial {
  readonly index: number;
  readonly by: number;
}

/** Stations at which every edge lies on the centreline: their half-breadths are nothing by nature, and never wrong. */
export function postsOf({ stations }: Hull): readonly number[] {
  return stations.filter(({ role }) => isPost(role)).map(({ index }) => index);
}

/** @throws the fault of an edge that can't be drawn */
export function longLine(
  hull: Hull,
  edge: Edge,
  view: LineView,
  { index, by }: Trial = { index: 0, by: 0 },
): LongLine {
  const points = edge.points.map((point, i): Vec3 => {
    if (i !== index || by === 0) return point;
    return view === 'plan' ? [point[0], point[1] + by, point[2]] : [point[0], point[1], point[2] + by];
  });
  const x = points.map((point) => point[0]);
  const values = points.map((point) => point[view === 'plan' ? 1 : 2]);
  if (values.some((value) => view === 'plan' && value < 0))
    throw new Error(`moved so far in, the ${edge.label} would cross the centreline`);
  const batten = once(() => (by === 0 ? edge.batten : bendBatten(points)));
  const turn = once(() => turnOfLine(batten(), view));
  const bends = once(() => Array.from(batten().knots, (t) => turn() * viewCurvature(batten(), t, view)));
  const hollowed = once(() => hollows(batten(), view, turn()));
  const onFloor = x.map((at, i): Vec3 => [at, values[i]!, 0]); // a value for each x
  const free = once(() => bendBatten(onFloor, { start: 'natural', end: 'natural' }));
  const ducks = once(() => ducksOn(free()));
  const misses = once(() => x.map((_, i) => missWhenLifted(x, values, i)));
  return {
    edge,
    view,
    x,
    values,
    get batten() {
      return batten();
    },
    get turn() {
      return turn();
    },
    get bends() {
      return bends();
    },
    get hollows() {
      return hollowed();
    },
    get freeBatten() {
      return free();
    },
    get ducks() {
      return ducks();
    },
    get misses() {
      return misses();
    },
    run: (spread) => withinHull(fairRun(x, values, spread), values, view, postsOf(hull)),
  };
}

/**
 * In plan no correction goes past the centreline, nor off it at a stem: as far as may be it goes, and clears as much as
 * so short a step can.
 */
function withinHull(
  run: FairRun,
  values: readonly number[],
  view: LineView,
  posts: readonly number[],
): FairRun {
  if (view === 'profile') return run;
  const corrections = run.corrections.map((one, i) => {
    const least = 0 - values[i]!; // a correction each
    const most = posts.includes(i) ? 0 : Infinity;
    const correction = Math.min(Math.max(one.correction, least), most);
    if (correction === one.correction) return one;
    const share = correction / one.correction;
    return { ...one, correction, clears: one.clears * (1 - (1 - share) ** 2) };
  });
  return { ...run, corrections };
}

/** The force of each duck across the batten, over its stiffness. */
function ducksOn(batten: Batten): readonly number[] {
  return pushesOn(batten).map(([px, py], i) => {
    const [dx, dy] = derivativeAt(batten, batten.knots[i]!, 1); // a push a knot
    return (py * dx - px * dy) / Math.hypot(dx, dy);
  });
}

/** Where the batten with free ends bends hardest in the line's view. @throws where it is straight */
export function tightestOf(line: LongLine, from?: number, to?: number): Tightest {
  const found = tightest(line.freeBatten, from, to);
  if (found) return found;
  throw new Error(
    `the ${line.edge.label} is straight there in ${line.view}: a batten lies along it without bending`,
  );
}

/** The same from half a bay aft of a station to half a bay forward of it. */
export function tightestAbout(line: LongLine, index: number): Tightest {
  const { knots } = line.freeBatten;
  const at = knots[index]!; // a knot a station
  const half = (other: number | undefined) => ((other ?? at) + at) / 2;
  return tightestOf(line, half(knots[index - 1]), half(knots[index + 1]));
}

/** The point of a batten that is nearest by the parameter. */
export function nearestKnot({ knots }: Batten, parameter: number): number {
  const away = Array.from(knots, (knot) => Math.abs(knot - parameter));
  return away.indexOf(Math.min(...away));
}

/** Every line of the hull that can be drawn; the keel in plan is the centreline itself. */
export function longLines(hull: Hull): readonly LongLine[] {
  return hull.edges
    .filter((edge) => !hull.faults.some((fault) => fault.edge === edge.name || fault.edge === null))
    .flatMap((edge) =>
      lineViews
        .filter(({ id }) => edge.index > 0 || id === 'profile')
        .map(({ id }) => longLine(hull, edge, id)),
    );
}
