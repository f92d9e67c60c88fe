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

export function movedHull(hull: Hull, moves: readonly Move[]): Hull {
  const real = moves.filter(({ by }) => by !== 0);
  return real.length === 0 ? hull : buildHull({ ...hull.offsets, points: movedPoints(hull, real) });
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
