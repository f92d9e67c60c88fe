/**
 * Rectangles that fill their sheet without any waste: then the lowest hollow of the skyline must be filled from its left
 * end by one of them, and nothing else need be tried.
 */
import type { Effort, PlacedRect, RectWays } from './rects';

/** @returns as of `layTogether`, for pieces whose areas make up the room's */
export function layPerfectly(
  kinds: readonly RectWays[],
  counts: readonly number[],
  room: { readonly length: number; readonly width: number },
  effort: Effort,
): readonly PlacedRect[] | null | undefined {
  const left = [...counts];
  // The widest first: they have the fewest places.
  const tried = kinds
    .flatMap((ways, kind) => ways.map(([width, height], way) => ({ kind, way, width, height })))
    .toSorted((a, b) => b.width - a.width || b.height - a.height);
  const placed: PlacedRect[] = [];
  const hopeless = new Set<string>();

  /** @param skyline where each stretch begins and how high it stands, from left to right */
  const fill = (skyline: readonly (readonly [from: number, height: number])[]): boolean | undefined => {
    effort.left -= 1;
    if (effort.left < 0) return undefined;
    let at = 0;
    skyline.forEach(([, height], i) => {
      if (height < skyline[at]![1]) at = i;
    });
    const [x, y] = skyline[at]!;
    if (y === room.width) return true;
    const key = `${skyline.join(' ')}|${left.join(' ')}`;
    if (hopeless.has(key)) return false;
    const gap = (skyline[at + 1]?.[0] ?? room.length) - x;
    for (const { kind, way, width, height } of tried) {
      if (left[kind] === 0 || width > gap || y + height > room.width) continue;
      left[kind]! -= 1;
      placed.push({ kind, way, x, y });
      const stretches = [...skyline];
      stretches.splice(at, 1, [x, y + height], ...(width < gap ? [[x + width, y] as const] : []));
      const done = fill(stretches.filter(([, high], i) => i === 0 || high !== stretches[i - 1]![1]));
      if (done !== false) return done;
      placed.pop();
      left[kind]! += 1;
    }
    hopeless.add(key);
    return false;
  };

  const done = fill([[0, 0]]);
  return done === undefined ? undefined : done ? placed : null;
}
