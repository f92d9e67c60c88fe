/**
 * Searches for the cheapest way to cut pieces out of boards, section by section, with a mixed-integer
 * solver. It counts nodes and never the time, so that the same problem is answered the same way again.
 */
import loadHighs, { type Highs } from 'highs';
import {
  costAtLeast,
  costOf,
  type CuttingAnswer,
  type CuttingPlan,
  type CuttingProblem,
  faultsOfPlan,
  shopPlan,
} from '../kernel/cutting';
import { type CuttingModel, cuttingModel } from '../kernel/cutting-model';
import type { Searcher } from './searcher';
import { wasmOf } from './wasm';

/** Branches looked at before a section is given up as unproved. */
const MOST_NODES = 3000;

/** Costs nearer than this, of the whole, are the same money. */
const SAME = 1e-6;
/** And where the whole is nothing. */
const TINY = 1e-9;

/**
 * @param problem the sections as JSON, a list of `CuttingProblem`
 * @param tell gets a `CuttingAnswer` each time a plan gets cheaper or is proved
 */
export const searchBoards: Searcher = async (problem, tell) => {
  const sections = JSON.parse(problem) as CuttingProblem[];
  const plans = sections.map(shopPlan);
  const proved = sections.map(() => false);
  const tellAll = () => tell({ plans: [...plans], proved: [...proved] } satisfies CuttingAnswer);
  tellAll();
  const highs = await loadHighs(await wasmOf());
  for (const [at, section] of sections.entries()) {
    proved[at] = searchSection(highs, section, plans[at]!, (better) => {
      plans[at] = better;
      tellAll();
    });
    tellAll();
  }
  const open = proved.filter((is) => !is).length;
  return open === 0
    ? 'Proved: with these boards and prices no plan costs less.'
    : `The best found; not proved for ${open} of ${proved.length} sections, where a cheaper plan may exist.`;
};

/** @returns whether the last plan told, or the one begun with, is proved to be the cheapest */
function searchSection(
  highs: Highs,
  section: CuttingProblem,
  known: CuttingPlan,
  tell: (better: CuttingPlan) => void,
): boolean {
  let best = known;
  const isLeast = (least: number) => costOf(best, section) <= least * (1 + SAME) + TINY;
  if (isLeast(costAtLeast(section))) return true;
  const model = cuttingModel(section, best);
  const solved = solve(highs, model, (solution) => {
    const plan = model.read(solution);
    if (isLeast(costOf(plan, section)) || faultsOfPlan(plan, section).length > 0) return;
    best = plan;
    tell(plan);
  });
  return solved && model.complete;
}

/**
 * Runs the solver over a model. Each better solution goes to `take` as it is found.
 *
 * @returns whether it is proved that the last is the least; not where the branches ran out first
 */
function solve(
  highs: Highs,
  model: Pick<CuttingModel, 'columns' | 'rows'>,
  take: (solution: ArrayLike<number>) => void,
): boolean {
  return highs.withModel(dataOf(model, highs), (solver) => {
    solver.options.set({ output_flag: false, random_seed: 1, mip_max_nodes: MOST_NODES, mip_rel_gap: SAME });
    solver.run({
      [highs.constants.callbackType.mipImprovingSolution]: ({ data }) => {
        if (data.mip_solution) take(data.mip_solution);
      },
    });
    if (solver.getModelStatus() !== highs.constants.modelStatus.optimal) return false;
    take(solver.getSolution().colValue);
    return true;
  });
}

/** The model as the solver takes it: rows packed one after another. */
function dataOf({ columns, rows }: Pick<CuttingModel, 'columns' | 'rows'>, highs: Highs) {
  const finite = (value: number) => (Number.isFinite(value) ? value : Math.sign(value) * highs.infinity);
  const { continuous, integer } = highs.constants.variableType;
  const starts = [0];
  for (const { terms } of rows) starts.push(starts.at(-1)! + terms.length);
  return {
    numCols: columns.length,
    numRows: rows.length,
    colCost: columns.map(({ cost }) => cost),
    colLower: columns.map(({ least }) => finite(least)),
    colUpper: columns.map(({ most }) => finite(most)),
    rowLower: rows.map(({ least }) => finite(least)),
    rowUpper: rows.map(({ most }) => finite(most)),
    integrality: columns.map(({ whole }) => (whole ? integer : continuous)),
    matrix: {
      format: 'csr' as const,
      numRows: rows.length,
      numCols: columns.length,
      starts,
      indices: rows.flatMap(({ terms }) => terms.map(([column]) => column)),
      values: rows.flatMap(({ terms }) => terms.map(([, factor]) => factor)),
    },
  };
}
