/** The running of a cell's formulas: in the graph one by one, or all in order for a picture that sweeps an input. */
import { attempt, type Found, type Hull, type Read } from '../../boat';
import { formula, type Formula, isIssue, type Issue, issue, type KindId, type Manner } from '../../measure';
import { type Cell, isHullStep, type OnHand, type StepSpec, type Values } from './define';
import type { Instance } from './instance';
import { mannerOf } from './manner';

/** The value of an input or step of the instance. */
export function valueOf(instance: Instance, key: string, read: Read): number | string {
  const { inputs, steps } = instance.cell;
  const name = `${instance.name}.${key}`;
  return (inputs[key] ?? steps[key])?.kind === 'choice' ? read.choice(name) : read.number(name);
}

/** Where no search has run. */
export const nothingFound: Found = () => null;

/** Runs one step on the values it names; `hull` and `found` are asked only by a step that needs them. */
export function runStep(
  cell: Cell,
  spec: StepSpec,
  lookUp: (key: string) => number | string,
  { hull, found }: Pick<Read, 'hull' | 'found'>,
): number | string | Issue {
  if (!isHullStep(spec)) return evaluateFormula(compiled(cell, spec.formula), lookUp);
  const values = Object.fromEntries(spec.uses.map((key) => [key, lookUp(key)]));
  const of = hull();
  return attempt(() => spec.find(of, values, found));
}

/** Runs a formula of the cell; every name in it is an input or a step of the cell. */
export function evaluateFormula(runnable: Formula, lookUp: (key: string) => number | string): number | Issue {
  const scope: Record<string, number | string> = {};
  for (const key of runnable.names) scope[key] = lookUp(key);
  return runnable.evaluate(scope);
}

const formulas = new WeakMap<Cell, Map<string, Formula>>();
/** Compiles a formula of the cell once; one that can't be read is a fault of ours and is thrown. */
export function compiled(cell: Cell, text: string): Formula {
  const ofCell = formulas.get(cell) ?? new Map<string, Formula>();
  formulas.set(cell, ofCell);
  const known = ofCell.get(text);
  if (known) return known;
  const made = formula(text, cell.functions);
  if (isIssue(made)) throw new Error(`${cell.id}: the formula "${text}" can't be read: ${made.issue}`);
  ofCell.set(text, made);
  return made;
}

/** A step that names what is not there is a fault of ours. */
function given(key: string, values: Values): number | string {
  const value = values[key];
  if (value === undefined) throw new TypeError(`no value was given for "${key}"`);
  return value;
}

/**
 * The cell's steps run in order on given inputs, outside the graph.
 * @param inputs a value for every input; choices as ids, numbers in SI
 * @returns inputs and steps, or why the first failing step has no value
 */
export function runSteps(
  cell: Cell,
  inputs: Values,
  hull: Hull | null = null,
  found: Found = nothingFound,
): Values | Issue {
  const values: Record<string, number | string> = {};
  for (const key of Object.keys(cell.inputs)) values[key] = given(key, inputs);
  for (const [key, spec] of Object.entries(cell.steps)) {
    if (isHullStep(spec) && hull === null) return issue('there is no hull to ask');
    // The hull was asked for just before.
    const value = runStep(cell, spec, (name) => given(name, values), { hull: () => hull!, found });
    if (isIssue(value)) return value;
    values[key] = value;
  }
  return values;
}

/** In a picture a number of the cell is written as everywhere else, though only its value is at hand. */
function mannerOfValue(cell: Cell, values: Values, value: number, kind: KindId): Manner {
  const manners = Object.keys(values).flatMap((key) =>
    values[key] === value && (cell.inputs[key] ?? cell.steps[key])?.kind === kind
      ? [mannerOf(cell, key)]
      : [],
  );
  const bound = manners[0]?.bound;
  return {
    // What is as large by chance, and no limit, is not rounded as one.
    ...(manners.every((manner) => manner?.bound === bound) && { bound }),
    within: manners.find((manner) => manner?.within !== undefined)?.within,
  };
}

/** What a cell's pictures may use. */
export function onHand(
  cell: Cell,
  values: Values,
  hull: Hull | null,
  say: OnHand['say'],
  found: Found = nothingFound,
): OnHand {
  const rerun: OnHand['rerun'] = (changes) =>
    runSteps(cell, { ...values, ...changes } as Values, hull, found);
  return {
    say: (value, kind, options) => say(value, kind, options ?? mannerOfValue(cell, values, value, kind)),
    hull,
    found,
    rerun,
  };
}

/** All values of an instance, for its pictures. */
export function valuesOf(instance: Instance, read: Read): Values {
  const { inputs, steps } = instance.cell;
  return Object.fromEntries(
    [...Object.keys(inputs), ...Object.keys(steps)].map((key) => [key, valueOf(instance, key, read)]),
  );
}
