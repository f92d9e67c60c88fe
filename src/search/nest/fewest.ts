/** How few sheets rectangles can be got from at all, or that fewer can't be ruled out. */
import { layTogether } from './rectangles';
import type { Effort, PlacedRect, RectWays } from './rects';

export interface Fewest {
  /** No plan has fewer. */
  readonly least: number;
  /** A plan with so many, sheet by sheet, where one was met. */
  readonly sheets: readonly (readonly PlacedRect[])[] | null;
}

/**
 * @param counts how many there are of each kind
 * @param known sheets that are known to be enough
 * @param least sheets that are known to be needed
 */
export function fewestSheets(
  kinds: readonly RectWays[],
  counts: readonly number[],
  room: { readonly length: number; readonly width: number },
  { known, least, effort }: { readonly known: number; readonly least: number; readonly effort: Effort },
): Fewest {
  const areas = kinds.map((ways) => ways[0]![0] * ways[0]![1]);
  const whole = room.length * room.width;
  const areaOf = (of: readonly number[]) => of.reduce((sum, count, kind) => sum + count * areas[kind]!, 0);
  const onOne = new Map<string, readonly PlacedRect[] | null>();
  const fits = (of: readonly number[]): readonly PlacedRect[] | null | undefined => {
    const key = of.join(' ');
    const told = onOne.get(key);
    if (told !== undefined) return told;
    const found = layTogether(kinds, of, room, effort);
    if (found !== undefined) onOne.set(key, found);
    return found;
  };

  const hopeless = new Set<string>();
  /** Sheets for all that is left, at most so many; null where there are none, undefined where the effort ran out. */
  const cover = (left: readonly number[], sheets: number): (readonly PlacedRect[])[] | null | undefined => {
    const area = areaOf(left);
    if (area === 0) return [];
    if (area > sheets * whole) return null;
    const key = `${sheets}|${left.join(' ')}`;
    if (hopeless.has(key)) return null;
    // The largest that is left lies on some sheet; which others lie beside it?
    const largest = [...left.keys()]
      .filter((kind) => left[kind]! > 0)
      .toSorted((a, b) => areas[b]! - areas[a]!)[0]!;
    const spare = sheets * whole - area;
    for (const beside of sets(left, areas, largest, whole)) {
      if (whole - areaOf(beside) > spare) continue;
      effort.left -= 1;
      if (effort.left < 0) return undefined;
      const here = fits(beside);
      if (here === undefined) return undefined;
      if (!here) continue;
      const rest = cover(
        left.map((count, kind) => count - beside[kind]!),
        sheets - 1,
      );
      if (rest !== null) return rest && [here, ...rest];
    }
    hopeless.add(key);
    return null;
  };

  for (let sheets = least; sheets < known; sheets += 1) {
    const found = cover(counts, sheets);
    if (found !== null) return { least: sheets, sheets: found ?? null };
  }
  return { least: known, sheets: null };
}

/** All sets with one of a kind in them, whose area a sheet has; the fullest first. */
function sets(
  left: readonly number[],
  areas: readonly number[],
  largest: number,
  most: number,
): readonly (readonly number[])[] {
  const found: { set: number[]; area: number }[] = [];
  const build = (kind: number, set: number[], area: number) => {
    if (area > most) return;
    if (kind === left.length) {
      found.push({ set, area });
      return;
    }
    const from = kind === largest ? 1 : 0;
    for (let count = from; count <= left[kind]!; count += 1)
      build(kind + 1, [...set, count], area + count * areas[kind]!);
  };
  build(0, [], 0);
  return found.toSorted((a, b) => b.area - a.area).map(({ set }) => set);
}
