/**
 * Searches for the cheapest way to cut long parts out of boards, section by section, with a mixed-integer
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
import type { Searcher } from './searchers';
import { wasmOf } from './wasm';

/** Branches looked at before a section is given up as unproved. */
const MOST_NODES = 20_000;

/** Costs nearer than this, of the whole, are the same money. */
const SAME = 1e-6;

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
  let best = costOf(known, section);
  if (best <= costAtLeast(section) * (1 + SAME)) return true;
  const model = cuttingModel(section, known);
  const take = (solution: ArrayLike<number>) => {
    const plan = model.read(solution);
    const cost = costOf(plan, section);
    if (cost >= best * (1 - SAME) || faultsOfPlan(plan, section).length > 0) return;
    best = cost;
    tell(plan);
  };
  return highs.withModel(dataOf(model, highs), (solver) => {
    solver.options.set({
      output_flag: false,
      random_seed: 1,
      mip_max_nodes: MOST_NODES,
      mip_rel_gap: SAME,
    });
    const start = model.write(known);
    if (start) solver.setSolution({ colValue: start });
    solver.run({
      [highs.constants.callbackType.mipImprovingSolution]: ({ data }) => {
        if (data.mip_solution) take(data.mip_solution);
      },
    });
    const { optimal } = highs.constants.modelStatus;
    const isOptimal = solver.getModelStatus() === optimal;
    if (isOptimal) take(solver.getSolution().colValue);
    return isOptimal && model.complete;
  });
}

/** The model as the solver takes it: rows packed one after another. */
function dataOf({ columns, rows }: CuttingModel, highs: Highs) {
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
