/** Works out a boat's quantities from its presets and written entries, without the notebook. */
import {
  boatQuantities,
  type Ends,
  endsOf,
  type Hull,
  plannedEnds,
  type Read,
  type Table,
  type Value,
} from '../../src/boat';
import { attempt } from '../../src/boat/attempt';
import { isIssue, plainShown, read as readEntry } from '../../src/measure';

export interface DerivedBoat {
  readonly names: readonly string[];
  value(name: string): Value;
  /** The number, or an error with the issue. */
  number(name: string): number;
  hull(): Hull;
}

export function deriveBoat(
  table: Table,
  written: Readonly<Record<string, string>> = {},
  ends: Ends = plannedEnds(table),
): DerivedBoat {
  const { given, derived, hull: draw } = boatQuantities(table, ends);
  const kinds = new Map([...given, ...derived].map(({ name, kind }) => [name, kind]));
  const values = new Map<string, Value>();
  const givens = new Map(given.map((quantity) => [quantity.name, quantity]));
  const deriveds = new Map(derived.map((quantity) => [quantity.name, quantity]));
  let hull: Hull | null = null;

  const read: Read = {
    number,
    maybe: (name) => {
      const found = value(name);
      return typeof found === 'number' ? found : null;
    },
    choice: (name) => {
      const chosen = value(name);
      if (typeof chosen !== 'string') throw new Error(`${name} is no choice`);
      return chosen;
    },
    has: (name) => kinds.has(name),
    hull: () => (hull ??= draw(read)),
    inches: () => false,
    found: () => null,
    fact: (_, find) => {
      const found = find(read);
      if (isIssue(found)) throw new Error(found.issue);
      return found;
    },
  };

  function value(name: string): Value {
    const known = values.get(name);
    if (known !== undefined) return known;
    const made = work(name);
    values.set(name, made);
    return made;
  }

  function work(name: string): Value {
    const entry = givens.get(name);
    if (!entry) {
      const quantity = deriveds.get(name);
      if (!quantity) throw new Error(`there is no quantity ${name}`);
      return attempt(() => quantity.from(read));
    }
    const text = written[name] ?? entry.preset;
    if (entry.kind === 'choice') return text;
    const reading = readEntry(text, {
      kind: entry.kind,
      shown: plainShown,
      field: entry.meaning,
      kindOf: (other) => kinds.get(other),
    });
    return isIssue(reading) ? reading : reading.evaluate(number);
  }

  function number(name: string): number {
    const found = value(name);
    if (typeof found === 'number') return found;
    throw new Error(`${name}: ${isIssue(found) ? found.issue : found}`);
  }

  // As the notebook has it: by what she ends in as she stands.
  const standing = endsOf(read.hull());
  if (standing !== ends) return deriveBoat(table, written, standing);
  return { names: [...kinds.keys()], value, number, hull: () => read.hull() };
}
