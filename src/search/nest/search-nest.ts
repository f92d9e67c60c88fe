/** Given pieces on sheets: the best plan found, and what no plan can cost less than. */
import { faultsOfNest, type NestPlan, type NestProblem } from '../../kernel/nest';
import { impossibleNest } from '../../kernel/nest-shop';
import { improve, isBetter } from './improve';
import { leastOf } from './least';
import { makePacker, type Packed } from './pack';

export interface NestFound {
  readonly plan: NestPlan;
  readonly cost: number;
  readonly least: number;
  /** The best that is left in one, m2. */
  readonly offcut: number;
}

/** A plan as cheap as this is as cheap as that. */
const SAME = 1e-9;
export const isLeast = ({ cost, least }: Pick<NestFound, 'cost' | 'least'>): boolean =>
  cost <= least * (1 + SAME) + SAME;

/**
 * @param effort states of sheets that may be worked out
 * @param better gets each better plan
 * @throws a sentence where some piece fits no sheet
 */
export function searchNest(
  problem: NestProblem,
  effort: number,
  better: (found: NestFound) => void = () => {},
): NestFound {
  const none = impossibleNest(problem);
  if (none !== null) throw new Error(none);
  const packer = makePacker(problem);
  let best: Packed | null = null;
  let least = packer.leastCost;
  const found = (packed: Packed): NestFound => ({
    plan: packer.plan(packed),
    cost: packed.cost,
    least,
    offcut: packed.offcut,
  });
  const take = (packed: Packed) => {
    if (!isBetter(packed, best) || faultsOfNest(packer.plan(packed), problem).length > 0) return;
    best = packed;
    better(found(packed));
  };
  const first = improve(packer, effort / 4, { better: take });
  if (first === null || best === null) throw new Error('no plan was found for these pieces');
  const proof = leastOf(packer, best);
  least = proof.cost;
  if (proof.packed) take(proof.packed);
  improve(packer, (effort * 3) / 4, { better: take, from: best });
  return found(best);
}
