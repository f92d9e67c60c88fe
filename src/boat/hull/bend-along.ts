/** How hard an edge bends from its after end to its fore end. */
import { curvatureAt, lengthTo } from '../../kernel';
import type { Stretch } from '../../kernel/laid-boards';
import type { Edge } from './edge';

export interface BendAlong {
  /** Hardest bend of the whole edge, 1/m; 0 where it is straight. */
  readonly worst: number;
  /** Length along the edge and bend there, at every look, m and 1/m. */
  readonly looks: readonly (readonly [along: number, bend: number])[];
  /** Hardest bend within a stretch of the edge, 1/m. */
  within(stretch: Stretch): number;
}

/** Looks in each bay; between them the bend is taken as running straight, which costs less than a thousandth. */
const LOOKS = 48;

const known = new WeakMap<Edge, BendAlong>();

/** @throws the fault of an edge that can't be drawn */
export function bendAlong(edge: Edge): BendAlong {
  const before = known.get(edge);
  if (before) return before;
  const fresh = lookAlong(edge);
  known.set(edge, fresh);
  return fresh;
}

function lookAlong({ batten, leastRadius }: Edge): BendAlong {
  const { knots } = batten;
  const worst = leastRadius ? 1 / leastRadius.radius : 0;
  const parameters = Array.from(knots.subarray(1), (knot, i) =>
    Array.from({ length: LOOKS }, (_, k) => knots[i]! + ((knot - knots[i]!) * k) / LOOKS),
  ).flat();
  parameters.push(knots.at(-1)!); // a batten has two knots or more
  // A straight edge bends by rounding only.
  const bendAt = (t: number) => (worst === 0 ? 0 : Math.min(worst, curvatureAt(batten, t).magnitude));
  const looks = parameters.map((t) => [lengthTo(batten, t), bendAt(t)] as const);
  if (leastRadius) {
    const at = looks.findIndex(([along]) => along >= leastRadius.along);
    looks.splice(at < 0 ? looks.length : at, 0, [leastRadius.along, worst]);
  }
  return { worst, looks, within: (stretch) => hardest(looks, stretch) };
}

function hardest(looks: BendAlong['looks'], { from, to }: Stretch): number {
  const first = firstBeyond(looks, from);
  const last = firstBeyond(looks, to);
  let most = Math.max(bendAt(looks, first, from), bendAt(looks, last, to));
  for (let i = first; i < last; i++) most = Math.max(most, looks[i]![1]);
  return most;
}

/** The first look beyond a place, by halving; the last where none is. */
function firstBeyond(looks: BendAlong['looks'], along: number): number {
  let [low, high] = [0, looks.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (looks[middle]![0] > along) high = middle;
    else low = middle + 1;
  }
  return low;
}

function bendAt(looks: BendAlong['looks'], beyond: number, along: number): number {
  const [end, after] = looks[beyond]!;
  const [start, before] = looks[Math.max(0, beyond - 1)]!;
  const share = end > start ? Math.min(1, Math.max(0, (along - start) / (end - start))) : 0;
  return before + share * (after - before);
}
