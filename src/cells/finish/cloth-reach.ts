/** How far a stock of resin goes over the cloth, piece by piece in the order of laying. */
import type { ClothPlan } from './cloth-plan';

/** How much of one piece is wetted out: 1 of all of it, 0 of none. */
export interface ClothReach {
  readonly shares: readonly number[];
  /** The piece in which the resin runs out, counted from 1; 0 where it does not. */
  readonly stops: number;
}

/** @param wets area of cloth that the stock wets out, m2 */
export function reachOver({ pieces }: Pick<ClothPlan, 'pieces'>, wets: number): ClothReach {
  let left = wets;
  const shares = pieces.map(({ laid }) => {
    const share = laid > 0 ? Math.min(1, Math.max(0, left / laid)) : 1;
    left -= laid;
    return share;
  });
  // What rounding leaves of a piece is no piece left dry.
  return { shares, stops: shares.findIndex((share) => share < 1 - 1e-9) + 1 };
}
