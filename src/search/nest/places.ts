/** Where a shape may lie on a sheet with others on it: the corners of what is left free for it. */
import { forbids, type NoFit } from './no-fit';

/** A no-fit polygon where its shape lies. */
export interface Barred {
  readonly noFit: NoFit;
  readonly x: number;
  readonly y: number;
}

/** What is better among places; less is better, and the first tells. */
export type Score = (x: number, y: number) => readonly [first: number, second: number];

/**
 * The best place for a shape's corner, within 0 to `right` and 0 to `high` and outside all that bars it. Bottom-left
 * placing needs only corners of the free room: of the sheet, of the no-fit polygons, and where their sides cross.
 *
 * Source: E. K. Burke, R. S. R. Hellier, G. Kendall and G. Whitwell, Complete and robust no-fit polygon generation for
 * the irregular stock cutting problem, European Journal of Operational Research 179 (2007).
 *
 * @returns null where there is none
 */
export function bestPlace(
  right: number,
  high: number,
  barred: readonly Barred[],
  score: Score,
): readonly [x: number, y: number] | null {
  if (right < 0 || high < 0) return null;
  let best: readonly [x: number, y: number] | null = null;
  let [least, second] = [Infinity, Infinity];
  const consider = (atX: number, atY: number) => {
    const x = Math.round(atX);
    const y = Math.round(atY);
    if (x < 0 || y < 0 || x > right || y > high) return;
    const [one, two] = score(x, y);
    if (one > least || (one === least && two >= second)) return;
    for (const { noFit, x: ox, y: oy } of barred) if (forbids(noFit, x - ox, y - oy)) return;
    best = [x, y];
    [least, second] = [one, two];
  };
  consider(0, 0);
  consider(right, 0);
  consider(0, high);
  consider(right, high);
  const sides = barred.map((one) => sidesWithin(one, right, high));
  for (const of of sides) {
    for (let i = 0; i < of.length; i += 4) {
      const [ax, ay, bx, by] = [of[i]!, of[i + 1]!, of[i + 2]!, of[i + 3]!];
      consider(bx, by);
      for (const x of [0, right]) if (ax < x !== bx < x) consider(x, ay + ((x - ax) / (bx - ax)) * (by - ay));
      for (const y of [0, high]) if (ay < y !== by < y) consider(ax + ((y - ay) / (by - ay)) * (bx - ax), y);
    }
  }
  for (let one = 0; one < sides.length; one++)
    for (let other = one + 1; other < sides.length; other++) crossings(sides[one]!, sides[other]!, consider);
  return best;
}

/** The sides that come near the free room, as ax, ay, bx, by …, each in its place. */
function sidesWithin({ noFit, x, y }: Barred, right: number, high: number): readonly number[] {
  const found: number[] = [];
  for (const ring of noFit.rings) {
    let ax = ring[ring.length - 2]! + x;
    let ay = ring[ring.length - 1]! + y;
    for (let i = 0; i < ring.length; i += 2) {
      const bx = ring[i]! + x;
      const by = ring[i + 1]! + y;
      if (
        (ax >= 0 || bx >= 0) &&
        (ax <= right || bx <= right) &&
        (ay >= 0 || by >= 0) &&
        (ay <= high || by <= high)
      )
        found.push(ax, ay, bx, by);
      ax = bx;
      ay = by;
    }
  }
  return found;
}

function crossings(
  one: readonly number[],
  other: readonly number[],
  consider: (x: number, y: number) => void,
): void {
  for (let i = 0; i < one.length; i += 4) {
    const [ax, ay, bx, by] = [one[i]!, one[i + 1]!, one[i + 2]!, one[i + 3]!];
    const [left, right] = ax < bx ? [ax, bx] : [bx, ax];
    const [low, high] = ay < by ? [ay, by] : [by, ay];
    for (let k = 0; k < other.length; k += 4) {
      const cx = other[k]!;
      const dx = other[k + 2]!;
      if ((cx < left && dx < left) || (cx > right && dx > right)) continue;
      const cy = other[k + 1]!;
      const dy = other[k + 3]!;
      if ((cy < low && dy < low) || (cy > high && dy > high)) continue;
      const turn = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx);
      if (turn === 0) continue;
      const s = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / turn;
      const t = ((cx - ax) * (by - ay) - (cy - ay) * (bx - ax)) / turn;
      if (s >= 0 && s <= 1 && t >= 0 && t <= 1) consider(ax + s * (bx - ax), ay + s * (by - ay));
    }
  }
}
