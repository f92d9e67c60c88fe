/** Where the runs of one layer of cloth lie side by side, so that no seam stands on one of the layer under it. */
import { runsToCover } from '../../kernel/on-roll';
import type { ClothRules } from './cloth-rules';

/** One width of cloth across the height that is covered, m from its low edge. */
export interface ClothRun {
  readonly from: number;
  readonly wide: number;
}

type RunRules = Pick<ClothRules, 'width' | 'lap' | 'seamShift'>;

/** What rounding leaves of a width that fits, m. */
const HAIR = 1e-9;

/**
 * Runs of one width, as many as are needed. In every other layer all seams are shifted: the first run is wider by the
 * shift and the last narrower; where the roll is too narrow for that, one run more puts them between those below.
 *
 * @param layer 0 for the one on the wood
 * @throws a sentence, where the roll is no wider than the lap
 */
export function runsOfLayer(
  height: number,
  { width, lap, seamShift }: RunRules,
  layer: number,
): readonly ClothRun[] {
  const least = runsToCover(height, width, lap);
  const isUpper = layer % 2 === 1 && least > 1;
  const wide = evenly(height, lap, least);
  if (!isUpper) return sideBySide(lap, wide, least, 0);
  return wide + seamShift <= width + HAIR && wide - seamShift > lap
    ? sideBySide(lap, wide, least, seamShift)
    : sideBySide(lap, evenly(height, lap, least + 1), least + 1, 0);
}

const evenly = (height: number, lap: number, count: number) => (height + (count - 1) * lap) / count;

function sideBySide(lap: number, wide: number, count: number, shift: number): readonly ClothRun[] {
  return Array.from({ length: count }, (_, i): ClothRun => ({
    from: i * (wide - lap) + (i > 0 ? shift : 0),
    wide: wide + (i === 0 ? shift : 0) - (i === count - 1 ? shift : 0),
  }));
}

/** The middles of their laps. */
export const seamsOf = (runs: readonly ClothRun[], lap: number): readonly number[] =>
  runs.slice(1).map(({ from }) => from + lap / 2);

/** The least distance between a seam of one layer and one of the next, m; null where no two layers have seams. */
export function leastApart(layers: readonly (readonly number[])[]): number | null {
  const apart = layers
    .slice(1)
    .flatMap((upper, i) => upper.flatMap((at) => layers[i]!.map((under) => Math.abs(at - under))));
  return apart.length > 0 ? Math.min(...apart) : null;
}
