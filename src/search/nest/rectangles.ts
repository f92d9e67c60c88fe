/**
 * Whether rectangles can lie together on one sheet at all: every way is tried or ruled out. Any packing can be built up
 * so that each piece lands in a corner of the staircase over those before it; so only these corners are tried.
 *
 * Source: S. Martello, D. Pisinger and D. Vigo, The three-dimensional bin packing problem, Operations Research 48
 * (2000), section 3; that no packing in a plane is missed: E. den Boef, J. Korst, S. Martello, D. Pisinger and D. Vigo,
 * Erratum, Operations Research 53 (2005).
 */
import { layPerfectly } from './perfect';
import type { Effort, PlacedRect, RectWays } from './rects';

/** The staircase: its treads from left to right, where each begins and how high it lies; they only go down. */
type Stairs = readonly (readonly [from: number, height: number])[];

/**
 * @param counts how many there are of each kind
 * @returns where they lie; null where they can't; undefined where the effort ran out first
 */
export function layTogether(
  kinds: readonly RectWays[],
  counts: readonly number[],
  room: { readonly length: number; readonly width: number },
  effort: Effort,
): readonly PlacedRect[] | null | undefined {
  const left = [...counts];
  const areas = kinds.map((ways) => ways[0]![0] * ways[0]![1]); // a kind lies some way
  let wanted = left.reduce((sum, count, kind) => sum + count * areas[kind]!, 0);
  if (wanted === room.length * room.width) return layPerfectly(kinds, counts, room, effort);
  const placed: PlacedRect[] = [];
  const hopeless = new Set<string>();

  const fill = (stairs: Stairs): boolean | undefined => {
    if (wanted === 0) return true;
    effort.left -= 1;
    if (effort.left < 0) return undefined;
    const open = useful(stairs);
    if (room.length * room.width - under(open, room.length) < wanted) return false;
    const key = `${open.join(' ')}|${left.join(' ')}`;
    if (hopeless.has(key)) return false;
    // A tread on which nothing more fits stays out of what is tried; useful() has raised it.
    for (const [x, y] of open) {
      for (const [kind, ways] of kinds.entries()) {
        if (left[kind] === 0) continue;
        for (const [way, [width, height]] of ways.entries()) {
          if (x + width > room.length || y + height > room.width) continue;
          left[kind]! -= 1;
          wanted -= areas[kind]!;
          placed.push({ kind, way, x, y });
          const done = fill(raised(open, x + width, y + height));
          if (done !== false) return done;
          placed.pop();
          wanted += areas[kind]!;
          left[kind]! += 1;
        }
      }
    }
    hopeless.add(key);
    return false;
  };

  /** Where nothing that is left fits on a tread, what lies over it is lost. */
  const useful = (stairs: Stairs): Stairs => {
    const ways = kinds.flatMap((of, kind) => (left[kind]! > 0 ? of : []));
    let open = stairs;
    for (const [x, y] of stairs) {
      if (ways.some(([width, height]) => x + width <= room.length && y + height <= room.width)) continue;
      const next = stairs.find(([from]) => from > x)?.[0] ?? room.length;
      // Up to the tread before it, or all the way where it is the first.
      const before = open.findLast(([from]) => from < x)?.[1] ?? room.width;
      open = raised(open, next, before);
    }
    return open;
  };

  const done = fill([[0, 0]]);
  return done === undefined ? undefined : done ? [...placed] : null;
}

/** The staircase with all to the left of and below a corner filled. */
function raised(stairs: Stairs, right: number, high: number): Stairs {
  const kept: (readonly [number, number])[] = [];
  let passed = 0;
  for (const [from, height] of stairs) {
    if (height >= high) kept.push([from, height]);
    else {
      if ((kept.at(-1)?.[1] ?? Infinity) > high) kept.push([from, high]);
      break;
    }
  }
  for (const [from, height] of stairs) {
    if (from <= right) passed = height;
    else if (height < high) kept.push([from, height]);
  }
  if (passed < high) {
    const at = kept.findIndex(([from]) => from > right);
    kept.splice(at < 0 ? kept.length : at, 0, [right, passed]);
  }
  return kept.filter(([from, height], i) => i === 0 || (height < kept[i - 1]![1] && from > kept[i - 1]![0]));
}

/** Area under a staircase. */
function under(stairs: Stairs, length: number): number {
  return stairs.reduce((sum, [from, height], i) => {
    const to = Math.min(length, stairs[i + 1]?.[0] ?? length);
    return sum + Math.max(0, to - from) * height;
  }, 0);
}
