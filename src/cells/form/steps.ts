/** The running of a cell's steps, one by one, on what the graph has. */
import { attempt, type Read } from '../../boat';
import { onceEach } from '../../boat/once';
import { formula, type Formula, isIssue, type Issue, type KindId, type Manner } from '../../measure';
import { type Cell, isTold, type OnHand, type StepSpec, type Values } from './define';
import { type Ask, type Asking, type Beside, type Fact, labelOf, note, type Reads, readsOf } from './fact';
import type { Instance } from './instance';
import { mannerOf } from './manner';

/** The value of an input or step of the instance. */
export const valueOf = (instance: Instance, key: string, read: Read): number | string =>
  scopeOf(instance, read).lookUp(key);

/** A cell under a name. */
interface Named {
  readonly cell: Beside;
  readonly name: string;
}

const scopes = new WeakMap<Read, WeakMap<Named, Scope>>();

/** The values and facts of the instance, as the graph has them; one for each who reads, for every step asks for it. */
export function scopeOf(instance: Named, read: Read): Scope {
  const ofReader = scopes.get(read) ?? new WeakMap<Named, Scope>();
  scopes.set(read, ofReader);
  const scope = ofReader.get(instance) ?? freshScope(instance, read);
  ofReader.set(instance, scope);
  return scope;
}

function freshScope(instance: Named, read: Read): Scope {
  const { inputs, steps } = instance.cell;
  // A name that is made once is known again without comparing its letters.
  const quantity = onceEach((key: string) => ({
    name: `${instance.name}.${key}`,
    isChoice: (inputs[key] ?? steps[key])?.kind === 'choice',
  }));
  return {
    hull: read.hull,
    found: read.found,
    lookUp: (key) => {
      const { name, isChoice } = quantity(key);
      return isChoice ? read.choice(name) : read.number(name);
    },
    ask: (fact) =>
      read.fact(`${instance.name}.${labelOf(fact)}`, (by) => findFact(fact, scopeOf(instance, by))),
    beside: (other) => besideBy(other, read),
  };
}

const plain = onceEach((cell: Beside): Named => ({ cell, name: cell.id }));

/** Facts of a cell under its own name, by whoever reads; null where it has no quantities. */
export function besideBy(cell: Beside, read: Read): Ask | null {
  const stands = Object.keys(cell.inputs).every((key) => read.has(`${cell.id}.${key}`));
  return stands ? scopeOf(plain(cell), read).ask : null;
}

/** Where a step's values come from. */
export interface Scope extends Pick<Read, 'hull' | 'found'> {
  readonly lookUp: (key: string) => number | string;
  readonly ask: Ask;
  readonly beside: Asking['beside'];
}

/** Runs one step on the values it names; the hull and what is found are asked only by a step that needs them. */
export function runStep(cell: Cell, spec: StepSpec, scope: Scope): number | string | Issue {
  if (!isTold(spec)) return evaluateFormula(compiled(cell, spec.formula), scope.lookUp);
  return attempt(() => spec.part(scope.ask(spec.fact), valuesBy(noting(readsOf(spec), scope.lookUp))));
}

/** The values that a step turns on: those in its formula, or those that its fact has been seen to ask for. */
export function asksFor(cell: Cell, spec: StepSpec): readonly string[] {
  if (!isTold(spec)) return compiled(cell, spec.formula).names;
  return [...new Set([...readsOf(spec).keys, ...readsThrough(spec.fact)])];
}

function readsThrough(fact: Fact<never, unknown>): readonly string[] {
  const { keys, facts } = readsOf(fact);
  return [...keys, ...[...facts].flatMap(readsThrough)];
}

/** Finds a fact by the values of a cell; those that it names are looked up, and no others. */
export function findFact<T>(fact: Fact<never, T>, scope: Scope): T | Issue {
  const reads = readsOf(fact);
  const at: Asking = {
    get hull() {
      return scope.hull();
    },
    found: scope.found,
    ask: (other) => {
      note(reads.facts, other);
      return scope.ask(other);
    },
    beside: scope.beside,
  };
  return attempt(() => fact.find(valuesBy(noting(reads, scope.lookUp)), at));
}

/** Looks up, and takes note of what for. */
const noting =
  ({ keys }: Reads, lookUp: Scope['lookUp']): Scope['lookUp'] =>
  (key) => {
    note(keys, key);
    return lookUp(key);
  };

/** Values that are looked up when they are named: of the cell that has the fact, as `defineCell` sees to. */
function valuesBy(lookUp: Scope['lookUp']): never {
  const named: ProxyHandler<object> = { get: (_, key) => lookUp(String(key)) };
  return new Proxy({}, named) as never;
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

/** What a cell's pictures may use; numbers in them are written as everywhere else. */
export function onHand(cell: Cell, values: Values, at: OnHand): OnHand {
  const say: OnHand['say'] = (value, kind, options) =>
    at.say(value, kind, options ?? mannerOfValue(cell, values, value, kind));
  return { ...at, say };
}

/** Changes of a cell's values by the full names of an instance's quantities. */
export function underName({ name }: Instance, changes: Partial<Values>): Values {
  return Object.fromEntries(
    Object.entries(changes).flatMap(([key, value]) =>
      value === undefined ? [] : [[`${name}.${key}`, value]],
    ),
  );
}

/** All values of an instance, for its pictures. */
export function valuesOf(instance: Instance, read: Read): Values {
  const { inputs, steps } = instance.cell;
  return Object.fromEntries(
    [...Object.keys(inputs), ...Object.keys(steps)].map((key) => [key, valueOf(instance, key, read)]),
  );
}
