/** The lines of a cell's working: formulas, and what is told of facts. */
import type { Bound, KindId } from '../../measure';
import type { ToldStep } from './fact';

/** One line of working. */
export type StepSpec = FormulaStep | ToldStep;

export interface FormulaStep {
  readonly kind: KindId;
  /** Over inputs, earlier steps and the cell's functions: `slope * thickness`. */
  readonly formula: string;
  readonly meaning: string;
  /** Where the formula is from: a published source, `common practice, no source`, `geometry`, or `from memory: ...`. */
  readonly source: string;
  /** Of a limit: `at most` is never written larger than it is, `at least` never smaller. */
  readonly bound?: Bound;
}

export type Steps = Readonly<Record<string, StepSpec>>;

/** A line of working. */
export function step(
  kind: KindId,
  formula: string,
  meaning: string,
  source: string,
  bound?: Bound,
): FormulaStep {
  return { kind, formula, meaning, source, ...(bound && { bound }) };
}

export function isFormula(spec: StepSpec): spec is FormulaStep {
  return 'formula' in spec;
}

/** Whether a line of working tells a part of a fact. */
export function isTold(spec: StepSpec): spec is ToldStep {
  return 'fact' in spec;
}
