/** How long an outline is taller than a height: where two such can't lie one above the other. */
import type { Vec2 } from './vec';

/**
 * What of an outline's length along x has an upright line inside it longer than a height, m. Never more than there is:
 * of several lines above one another only the one that is longest for most of the way counts.
 */
export function tallStretch(outline: readonly Vec2[], height: number): number {
  const places = [...new Set(outline.map(([x]) => x))].toSorted((a, b) => a - b);
  return places.slice(1).reduce((sum, to, i) => sum + tallBetween(outline, places[i]!, to, height), 0);
}

/** Between two neighbouring corners' places no side ends: what lies between two sides grows or shrinks evenly. */
function tallBetween(outline: readonly Vec2[], from: number, to: number, height: number): number {
  const sides = outline
    .flatMap((a, i): (readonly [number, number])[] => {
      const b = outline[(i + 1) % outline.length]!;
      if (Math.min(a[0], b[0]) > from || Math.max(a[0], b[0]) < to) return [];
      const at = (x: number) => a[1] + ((x - a[0]) / (b[0] - a[0])) * (b[1] - a[1]);
      return [[at(from), at(to)]];
    })
    .toSorted((a, b) => a[0] + a[1] - b[0] - b[1]);
  let most = 0;
  for (let i = 0; i + 1 < sides.length; i += 2) {
    const [low, high] = [sides[i]!, sides[i + 1]!];
    const [here, there] = [high[0] - low[0] - height, high[1] - low[1] - height];
    if (here <= 0 && there <= 0) continue;
    const share = here > 0 && there > 0 ? 1 : Math.max(here, there) / Math.abs(here - there);
    most = Math.max(most, share * (to - from));
  }
  return most;
}
