/** A body that hangs in the loop of a rope between two posts, seen along the axis that it can be turned about. */
import { distance2, type Vec2 } from './vec';

/** Where the rope is made fast on the posts, from the floor and from each other, m. */
export interface Posts {
  readonly apart: number;
  readonly high: number;
}

/** A leg that leans outward by no more than this hangs plumb, rad. */
const PLUMB = 1e-9;

export interface Slung {
  /** Of each leg out of plumb, rad. */
  readonly left: number;
  readonly right: number;
  /** Where the legs leave the body, m. */
  readonly leaves: readonly [left: Vec2, right: Vec2];
  /** The rope from the one to the other, under the body. */
  readonly under: readonly Vec2[];
  /** By how much it turns on the way, rad. */
  readonly wrap: number;
  /** All of it from post to post, m. */
  readonly length: number;
}

/**
 * @param outline convex, anticlockwise, m, as it hangs: the floor at height 0, the middle of the posts at 0 across
 * @throws where the posts stand inside the body, or the body above the ropes’ ends
 */
export function slung(outline: readonly Vec2[], { apart, high }: Posts): Slung {
  if (outline.some(([, y]) => y >= high)) throw new Error('she hangs higher than the ropes are made fast');
  const leans = (side: 1 | -1) => outline.map(([x, y]) => Math.atan2(apart / 2 - side * x, high - y)); // from plumb, inward to the body
  const tightest = (list: readonly number[]) => list.indexOf(Math.min(...list));
  const [atLeft, atRight] = [leans(-1), leans(1)];
  const [l, r] = [tightest(atLeft), tightest(atRight)];
  const [left, right] = [atLeft[l]!, atRight[r]!]; // an outline has points
  if (Math.min(left, right) < -PLUMB) throw new Error('the posts stand closer together than she is broad');
  const n = outline.length;
  const under = Array.from({ length: ((r - l + n) % n) + 1 }, (_, k) => outline[(l + k) % n]!);
  const end = (side: 1 | -1): Vec2 => [(side * apart) / 2, high];
  return {
    left,
    right,
    leaves: [outline[l]!, outline[r]!],
    under,
    wrap: Math.PI - left - right,
    length: [...under, end(1)].reduce(
      (sum, point, k) => sum + distance2(k === 0 ? end(-1) : under[k - 1]!, point),
      0,
    ),
  };
}

/**
 * Pull in each leg for one unit of weight in the loop: no pull is left over sideways.
 *
 * @returns left and right
 */
export function pullsOn({ left, right }: Pick<Slung, 'left' | 'right'>): readonly [number, number] {
  const both = Math.sin(left + right);
  // Both legs plumb share it.
  return both < 1e-9 ? [0.5, 0.5] : [Math.sin(right) / both, Math.sin(left) / both];
}
