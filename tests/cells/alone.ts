/** A cell run by itself, on given values: a second road beside the graph. */
import { attempt, type Found, type Hull } from '../../src/boat';
import { type Cell, onHand, type OnHand, type Values } from '../../src/cells';
import type { Fact } from '../../src/cells/form/fact';
import { findFact, runStep, type Scope } from '../../src/cells/form/steps';
import { isIssue, type Issue } from '../../src/measure';

/** Where no search has run. */
export const nothingFound: Found = () => null;

/** A step that names what is not there is a fault of ours. */
function given(key: string, values: Values): number | string {
  const value = values[key];
  if (value === undefined) throw new TypeError(`no value was given for "${key}"`);
  return value;
}

/**
 * Outside the graph: each fact is worked out once.
 * @param lookUp the value of an input, or of a step worked out before
 */
export function scopeAlone(lookUp: Scope['lookUp'], hull: Hull | null, found: Found = nothingFound): Scope {
  const known = new Map<Fact<never, unknown>, unknown>();
  const scope: Scope = {
    lookUp,
    hull: () => {
      if (!hull) throw new Error('there is no hull to ask');
      return hull;
    },
    found,
    ask: <T>(fact: Fact<never, T>): T => {
      const value = known.has(fact) ? (known.get(fact) as T | Issue) : findFact(fact, scope);
      known.set(fact, value);
      if (isIssue(value)) throw new Error(value.issue);
      return value;
    },
    beside: () => null,
  };
  return scope;
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
  const scope = scopeAlone((key) => given(key, values), hull, found);
  for (const [key, spec] of Object.entries(cell.steps)) {
    const value = attempt(() => runStep(cell, spec, scope));
    if (isIssue(value)) return value;
    values[key] = value;
  }
  return values;
}

/** What pictures may use, all of it worked out from given values. */
export function onHandAlone(
  cell: Cell,
  values: Values,
  hull: Hull | null,
  say: OnHand['say'],
  found: Found = nothingFound,
): OnHand {
  return onHand(cell, values, {
    say,
    hull,
    found,
    ask: scopeAlone((key) => given(key, values), hull, found).ask,
    with: (changes) => runSteps(cell, { ...values, ...changes } as Values, hull, found),
  });
}

/** A fact of a cell on given values. @throws the sentence that says why it has no value */
export const askFact = <T>(of: Fact<never, T>, values: Values, hull: Hull, found?: Found): T =>
  scopeAlone((key) => values[key]!, hull, found).ask(of);
