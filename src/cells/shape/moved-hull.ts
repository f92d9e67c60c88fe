/** The hull with some of its offsets moved, as a second version would have it. */
import { buildHull, type Hull, type OffsetPoint } from '../../boat';
import type { LineView } from './long-line';

export interface Move {
  readonly edge: string;
  readonly station: string;
  readonly view: LineView;
  /** m, + outboard or up. */
  readonly by: number;
}

const kept = new WeakMap<Hull, Map<string, Hull>>();

/** Kept while the hull it was made from is: several steps ask for the same one. */
export function movedHull(hull: Hull, moves: readonly Move[]): Hull {
  const real = moves.filter(({ by }) => by !== 0);
  if (real.length === 0) return hull;
  const known = kept.get(hull) ?? new Map<string, Hull>();
  kept.set(hull, known);
  const key = JSON.stringify(real);
  const made = known.get(key) ?? buildHull({ ...hull.offsets, points: movedPoints(hull, real) });
  if (known.size > 8) known.clear();
  known.set(key, made);
  return made;
}

function movedPoints(hull: Hull, moves: readonly Move[]): readonly (readonly OffsetPoint[])[] {
  const { edges, stations, points } = hull.offsets;
  return points.map((line, edge) =>
    line.map((point, station) =>
      moves
        .filter((move) => edges[edge]?.name === move.edge && stations[station]?.name === move.station)
        .reduce(moveBy, point),
    ),
  );
}

function moveBy([x, y, z]: OffsetPoint, { view, by }: Move): OffsetPoint {
  const added = (value: number | null) => (value === null ? null : value + by);
  return view === 'plan' ? [x, added(y), z] : [x, y, added(z)];
}
