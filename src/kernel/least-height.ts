import { convexOutline } from './convex';
import type { Vec2 } from './vec';

/** How to lay some points so that they stand least high over a straight line. */
export interface LeastHeight {
  /** Angle to turn them by, rad, within half a right angle either way of none where they are longest along x. */
  readonly turn: number;
  /** What then lies left of 0 and below it: the point that comes to the origin, in the old axes turned. */
  readonly origin: Vec2;
  readonly length: number;
  readonly height: number;
}

/**
 * The turn that makes the least height, m, by going round the outline: in it one side of the tightest convex outline
 * lies on the line, or on the one opposite. Turned so that what ran along +x still runs forward.
 *
 * Source: H. Freeman and R. Shapira, Determining the minimum-area encasing rectangle for an arbitrary closed curve,
 * Communications of the ACM 18(7), 1975; the same holds of the least height.
 *
 * @throws where there are no two points apart
 */
export function leastHeight(points: readonly Vec2[]): LeastHeight {
  const outline = convexOutline(points);
  let best: LeastHeight | null = null;
  outline.forEach((from, i) => {
    const to = outline[(i + 1) % outline.length]!;
    // Either way along the side: the one that keeps x forward.
    const forward = to[0] > from[0] || (to[0] === from[0] && to[1] > from[1]) ? 1 : -1;
    const turn = -Math.atan2(forward * (to[1] - from[1]), forward * (to[0] - from[0]));
    const laid = boxOfTurned(outline, turn);
    if (outline.length > 1 && (best === null || laid.height < best.height)) best = { turn, ...laid };
  });
  if (best === null) throw new Error('points that are all the same can’t be laid along a line');
  return best;
}

/** A point turned about the origin, anticlockwise. */
export function turned([x, y]: Vec2, angle: number): Vec2 {
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  return [cosine * x - sine * y, sine * x + cosine * y];
}

/** The box round points that are turned so; asked for each side of an outline, so no list is made for it. */
function boxOfTurned(
  points: readonly Vec2[],
  angle: number,
): Pick<LeastHeight, 'origin' | 'length' | 'height'> {
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of points) {
    const along = cosine * x - sine * y;
    const up = sine * x + cosine * y;
    if (along < left) left = along;
    if (along > right) right = along;
    if (up < bottom) bottom = up;
    if (up > top) top = up;
  }
  return { origin: [left, bottom], length: right - left, height: top - bottom };
}
