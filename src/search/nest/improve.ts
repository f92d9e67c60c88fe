/** Looks for a better packing: from the best known, a few pieces change their places in the order, and so on. */
import { generator } from '../../kernel';
import type { Packed, Packer, Recipe } from './pack';
import { pulls } from './sheet-states';

/** Cheaper, or as cheap with more left in one; by more than rounding. */
export function isBetter(one: Packed, other: Packed | null): boolean {
  if (!other) return true;
  if (!isSame(one.cost, other.cost)) return one.cost < other.cost;
  return one.offcut > other.offcut * (1 + 1e-9) + 1e-9;
}

const isSame = (one: number, other: number) => Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(other));

/**
 * The best of what a shop would try, and of what comes of it.
 *
 * @param effort states of sheets that may be worked out, from now on
 * @param better gets each packing that is better than all before
 * @param from a packing to begin from, that nothing worse is told after
 */
export function improve(
  packer: Packer,
  effort: number,
  {
    better,
    from = null,
    enough,
  }: { better?: (packed: Packed) => void; from?: Packed | null; enough?: (best: Packed) => boolean } = {},
): Packed | null {
  const end = packer.states.made() + effort;
  let best = from;
  const take = (packed: Packed | null) => {
    if (!packed || !isBetter(packed, best)) return;
    best = packed;
    better?.(packed);
  };
  for (const recipe of packer.recipes()) {
    take(packer.pack(recipe));
    if (best && enough?.(best)) return best;
    if (packer.states.made() > end) return best;
  }
  if (!best || packer.kinds.length === 1) return best;
  const random = generator(SEED);
  let here: Packed = best;
  // What is known already costs nothing, so turns are counted too.
  for (let turn = 0; turn < effort && packer.states.made() < end; turn += 1) {
    const next = packer.pack(changed(here.recipe, random, packer));
    if (next && !isWorse(next, here, packer.leastCost)) here = next;
    take(next);
    if (best && enough?.(best)) return best;
    // Lost in a poor neighbourhood: back to the best.
    if (turn % BACK === BACK - 1) here = best;
  }
  return best;
}

const SEED = 20_240_901;
const BACK = 120;

/** Until no plan can cost less the fuller the full sheets the better; then the more is left in one. */
function isWorse(next: Packed, here: Packed, leastCost: number): boolean {
  if (!isSame(next.cost, here.cost)) return next.cost > here.cost;
  return isSame(here.cost, leastCost) ? next.offcut < here.offcut : next.uneven < here.uneven;
}

/** One piece goes elsewhere in the order, or two change places; now and then the pull or the stock changes. */
function changed({ order, pull, stock }: Recipe, random: () => number, packer: Packer): Recipe {
  const pick = (count: number) => Math.floor(random() * count);
  const next = [...order];
  for (let times = 1 + pick(2); times > 0; times -= 1) {
    const from = pick(next.length);
    const to = pick(next.length);
    if (random() < 0.5) [next[from], next[to]] = [next[to]!, next[from]!];
    else next.splice(to, 0, ...next.splice(from, 1));
  }
  return {
    order: next,
    pull: random() < 0.15 ? pulls[pick(pulls.length)]! : pull,
    stock: random() < 0.15 ? pick(packer.problem.stocks.length) : stock,
  };
}
