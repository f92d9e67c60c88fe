/** Which packs to buy when a shop sells the same stuff in several sizes. */

/** A size on the shelf. A size of zero stands for one that is not sold. */
export interface Pack {
  /** What it holds, in the unit of the need. */
  readonly holds: number;
  readonly price: number;
}

export interface Purchase {
  /** How many of each size, in the order asked. */
  readonly counts: readonly number[];
  readonly cost: number;
  /** What is bought beyond the need. */
  readonly over: number;
}

/** A size of which more than this would be needed is no pack for the job; nor are more purchases tried. */
const MOST = 5e4;

/** Relative play for sums of prices and sizes that are equal but for rounding. */
const EQUAL = 1e-9;

/**
 * The purchase of least cost that covers a need; of equal costs the one that leaves least over, then
 * the one with fewest packs. Exact: every purchase that could win is tried. Buying by unit price
 * alone is not enough, for a need of 13 with packs of 4 and 15 is met cheaper by one large pack.
 *
 * @throws where nothing is sold in any size, or the packs are so small that there is no end of purchases
 */
export function cheapestPacks(need: number, packs: readonly Pack[]): Purchase {
  // Largest first, so that the last size only fills what is left and needs no trial of its own.
  const sold = packs
    .map((pack, index) => ({ ...pack, index }))
    .filter((pack) => pack.holds > 0 && pack.holds * MOST >= need)
    .sort((a, b) => b.holds - a.holds);
  if (packs.every((pack) => pack.holds <= 0))
    throw new Error('give the size of at least one pack that is sold');
  const ways = sold.slice(0, -1).reduce((product, pack) => product * (packsFor(need, pack.holds) + 1), 1);
  if (sold.length === 0 || ways > MOST) {
    throw new Error('the packs are too small for what is needed: put in the sizes that the shop sells');
  }
  const leastRate = Math.min(...sold.map((pack) => pack.price / pack.holds));
  const counts = packs.map(() => 0);
  let best: Purchase | null = null;

  const tryFrom = (place: number, left: number, cost: number): void => {
    // No way on costs less than the cheapest rate for what is still wanting.
    if (best && cost + Math.max(0, left) * leastRate > best.cost * (1 + EQUAL)) return;
    const pack = sold[place];
    if (!pack || left <= need * EQUAL) {
      const purchase = { counts: [...counts], cost, over: Math.max(0, -left) };
      if (!best || better(purchase, best)) best = purchase;
      return;
    }
    const enough = packsFor(left, pack.holds);
    // The last size fills up; the others may leave room for it.
    const least = place === sold.length - 1 ? enough : 0;
    for (let n = enough; n >= least; n--) {
      counts[pack.index] = n;
      tryFrom(place + 1, left - n * pack.holds, cost + n * pack.price);
    }
    counts[pack.index] = 0;
  };

  tryFrom(0, Math.max(0, need), 0);
  return best!; // the first trial always ends in a purchase
}

const packsFor = (need: number, holds: number) => Math.max(0, Math.ceil(need / holds - EQUAL));

function better(a: Purchase, b: Purchase): boolean {
  const byCost = compare(a.cost, b.cost);
  if (byCost !== 0) return byCost < 0;
  const byOver = compare(a.over, b.over);
  return byOver === 0 ? total(a.counts) < total(b.counts) : byOver < 0;
}

function compare(a: number, b: number): number {
  return Math.abs(a - b) <= EQUAL * Math.max(a, b, EQUAL) ? 0 : a - b;
}

const total = (counts: readonly number[]) => counts.reduce((sum, n) => sum + n, 0);
