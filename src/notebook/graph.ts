/**
 * The graph of quantities: one computed signal a quantity, evaluated only when looked at.
 *
 * Given quantities hold entries (texts over other quantities); derived ones hold functions.
 * A value is a number, a choice or an issue, so a fault stays with what depends on it: whoever
 * asks for a quantity without a value becomes an issue itself and says what it waits for.
 */
import { computed, type ReadonlySignal } from '@preact/signals-core';
import { attempt, type Derived, type Given, type Hull, type Read, type Value } from '../boat';
import {
  type Issue,
  isIssue,
  issue,
  nearestNames,
  read as readEntry,
  type Reading,
  type Shown,
} from '../measure';

/** What a given quantity's entry is at the moment, and how it came to be. */
export interface EntryState {
  readonly text: string;
  /** True if the builder (or the version in hand) wrote it; false if the preset holds. */
  readonly written: boolean;
  /** Quantities the text names. */
  readonly names: readonly string[];
}

export interface Graph {
  readonly names: readonly string[];
  has(name: string): boolean;
  quantity(name: string): Given | Derived | undefined;
  /** The value now; tracked when read inside a computed or an effect. */
  value(name: string): Value;
  /** The entry of a given quantity now; tracked. */
  entry(name: string): EntryState | undefined;
  /** The hull, or why it can't be drawn; tracked. */
  hull(): Hull | Issue;
  /** What a quantity read when it was last worked out. */
  dependsOn(name: string): readonly string[];
  /** Works something out from the graph, turning a missing value into an issue; tracked. */
  readonly work: <T>(by: (read: Read) => T) => T | Issue;
}

export interface GraphParts {
  readonly given: readonly Given[];
  readonly derived: readonly Derived[];
  readonly hull: (read: Read) => Hull;
  /** The written entry of a given quantity, tracked; undefined where nothing is written. */
  readonly written: (name: string) => string | undefined;
  /** Units in which bare numbers in presets and files are read. */
  readonly shown: Shown;
}

/** Thrown by a read that finds no value, caught where the asking quantity is worked out. */
class Waiting extends Error {
  readonly why: Issue;
  constructor(why: Issue) {
    super(why.issue);
    this.why = why;
  }
}

/** The hull has no name of its own among the quantities, but takes part in circles. */
const HULL = 'the hull';

/** The asker that a preset is, where it depends on a choice: it is worked out apart from the value. */
const presetOf = (name: string) => `${name} (preset)`;

export function createGraph(parts: GraphParts): Graph {
  const given = new Map(parts.given.map((quantity) => [quantity.name, quantity]));
  const derived = new Map(parts.derived.map((quantity) => [quantity.name, quantity]));
  const names = [...given.keys(), ...derived.keys()];
  const dependencies = new Map<string, Set<string>>();
  const entries = new Map<string, ReadonlySignal<EntryState>>();
  const values = new Map<string, ReadonlySignal<Value>>();

  const quantity = (name: string) => given.get(name) ?? derived.get(name);
  const kindOfName = (name: string) => quantity(name)?.kind;

  /** The value of `name` for `asker`; never an issue. */
  function ask(asker: string, name: string): number | string {
    noteDependence(asker, name);
    if (!quantity(name)) {
      const near = nearestNames(name, names);
      throw new Waiting(
        issue(`there is no quantity "${name}"${near.length ? `; nearest: ${near.join(', ')}` : ''}`),
      );
    }
    const value = guardCircle(asker, name, () => signalOf(name).value);
    if (isIssue(value)) throw new Waiting(waitFor(asker, name, value));
    return value;
  }

  function noteDependence(asker: string, name: string): void {
    const known = dependencies.get(asker);
    if (known) known.add(name);
    else dependencies.set(asker, new Set([name]));
  }

  /**
   * Signals refuse to read a computed that is being worked out. That refusal is our circle:
   * it is named by the shortest way from `name` back to `asker`. What was refused is not tracked, so
   * the asker watches the entries behind it instead: whichever of them is mended wakes it.
   */
  function guardCircle<T>(asker: string, name: string, look: () => T): T {
    try {
      return look();
    } catch (fault) {
      if (!(fault instanceof Error) || !/cycle/i.test(fault.message)) throw fault;
      const way = shortestWay(name, asker) ?? [name, asker];
      watchEntriesBehind(name);
      throw new Waiting({ ...issue(`goes round in a circle: ${[...way, name].join(' -> ')}`), circle: way });
    }
  }

  /** Tracks the entry of all that `name` was worked out from, choices that picked a link among them. */
  function watchEntriesBehind(name: string): void {
    const behind = new Set([name]);
    for (const at of behind) {
      if (given.has(at)) parts.written(at);
      for (const asker of [at, presetOf(at)])
        for (const next of dependencies.get(asker) ?? []) behind.add(next);
    }
  }

  function shortestWay(from: string, to: string): string[] | undefined {
    const cameFrom = new Map<string, string | undefined>([[from, undefined]]);
    for (const at of cameFrom.keys()) {
      if (at === to) {
        const way: string[] = [];
        for (let step: string | undefined = at; step !== undefined; step = cameFrom.get(step))
          way.unshift(step);
        return way;
      }
      for (const next of dependencies.get(at) ?? []) if (!cameFrom.has(next)) cameFrom.set(next, at);
    }
    return undefined;
  }

  /** Why `asker` has no value, given why `name` has none: its own circle, or a wait for the first cause. */
  function waitFor(asker: string, name: string, why: Issue): Issue {
    if (why.circle?.includes(asker)) return why;
    return { issue: why.issue, waitsFor: why.waitsFor ?? name };
  }

  function readerFor(asker: string): Read {
    const expect = (type: 'number' | 'string', name: string) => {
      const value = ask(asker, name);
      if (typeof value !== type)
        throw new Waiting(
          issue(`${name} is ${type === 'number' ? 'a choice, not a number' : 'a number, not a choice'}`),
        );
      return value;
    };
    return {
      number: (name) => expect('number', name) as number,
      maybe: (name) => {
        noteDependence(asker, name);
        const value = quantity(name) ? guardCircle(asker, name, () => signalOf(name).value) : undefined;
        // Going on without it would hide a circle that closes here.
        if (isIssue(value) && value.circle?.includes(asker)) throw new Waiting(value);
        return typeof value === 'number' ? value : null;
      },
      choice: (name) => expect('string', name) as string,
      hull: () => {
        noteDependence(asker, HULL);
        const hull = guardCircle(asker, HULL, () => hullSignal.value);
        if (isIssue(hull)) throw new Waiting(waitFor(asker, HULL, hull));
        return hull;
      },
    };
  }

  /** Runs `by`; a read without a value, or a hull that can't give it, ends it as an issue. Slips of ours pass on. */
  function workFor<T>(asker: string, by: (read: Read) => T): T | Issue {
    dependencies.delete(asker);
    try {
      return attempt(() => by(readerFor(asker)));
    } catch (fault) {
      if (fault instanceof Waiting) return fault.why;
      throw fault;
    }
  }

  const hullSignal = computed(() => workFor(HULL, parts.hull));

  function entryOf(definition: Given): ReadonlySignal<EntryState> {
    const known = entries.get(definition.name);
    if (known) return known;
    const reading = readingOf(definition);
    const made = computed<EntryState>(() => {
      const written = parts.written(definition.name);
      const { text, expression } = reading.value;
      return {
        text,
        written: written !== undefined,
        names: namedIn(expression),
      };
    });
    entries.set(definition.name, made);
    return made;
  }

  /** The text in force and what it says: an expression, the name of another choice, or an issue. */
  const readings = new Map<string, ReadonlySignal<{ text: string; expression: Reading | string }>>();
  function readingOf(definition: Given) {
    const known = readings.get(definition.name);
    if (known) return known;
    const presetText = computed(() =>
      definition.presetFrom ? workFor(presetOf(definition.name), definition.presetFrom) : definition.preset,
    );
    const made = computed(() => {
      const text = parts.written(definition.name) ?? presetText.value;
      // A link that waits for a choice leaves no other number in its place.
      if (isIssue(text)) return { text: '', expression: text };
      return { text, expression: definition.kind === 'choice' ? text : readNumberEntry(definition, text) };
    });
    readings.set(definition.name, made);
    return made;
  }

  function readNumberEntry(definition: Given, text: string): Reading {
    return readEntry(text, {
      kind: definition.kind,
      shown: parts.shown,
      field: definition.meaning,
      kindOf: kindOfName,
      known: () => names,
    });
  }

  function signalOf(name: string): ReadonlySignal<Value> {
    const known = values.get(name);
    if (known) return known;
    const definition = given.get(name);
    const made = definition
      ? computed(() => givenValue(definition))
      : computed(() => derivedValue(derived.get(name)!));
    values.set(name, made);
    return made;
  }

  function derivedValue(definition: Derived): Value {
    return finite(definition.meaning, workFor(definition.name, definition.from));
  }

  function givenValue(definition: Given): Value {
    const { text, expression } = readingOf(definition).value;
    if (typeof expression === 'string')
      return workFor(definition.name, (read) => chosen(definition, text, read));
    if (isIssue(expression)) return expression;
    const value = workFor(definition.name, (read) => expression.evaluate((name) => read.number(name)));
    if (isIssue(value)) return value;
    return outOfRange(definition, value) ?? finite(definition.meaning, value);
  }

  function chosen(definition: Given, text: string, read: Read): string | Issue {
    const options = definition.options ?? [];
    const id = text.includes('.') ? read.choice(text) : text;
    if (options.some((option) => option.id === id)) return id;
    if (options.length === 0) return issue(`${definition.meaning}: this boat has none to choose from`);
    return issue(
      `${definition.meaning} is one of ${options.map((option) => option.label).join(', ')}; "${id}" is none of them`,
    );
  }

  const limits = new Map<string, number | undefined>();
  function limitOf(definition: Given, end: 'min' | 'max'): number | undefined {
    const key = `${definition.name} ${end}`;
    if (limits.has(key)) return limits.get(key);
    const text = definition[end];
    const reading = text === undefined ? undefined : readNumberEntry(definition, text);
    const value = reading && !isIssue(reading) ? reading.evaluate(() => Number.NaN) : undefined;
    const limit = typeof value === 'number' ? value : undefined;
    limits.set(key, limit);
    return limit;
  }

  function outOfRange(definition: Given, value: number): Issue | undefined {
    const min = limitOf(definition, 'min');
    const max = limitOf(definition, 'max');
    if (min !== undefined && value < min)
      return issue(`${definition.meaning} must be at least ${definition.min}`);
    if (max !== undefined && value > max)
      return issue(`${definition.meaning} must be at most ${definition.max}`);
    return undefined;
  }

  return {
    names,
    has: (name) => given.has(name) || derived.has(name),
    quantity,
    value: (name) => {
      if (!quantity(name)) return issue(`there is no quantity "${name}"`);
      return signalOf(name).value;
    },
    entry: (name) => {
      const definition = given.get(name);
      return definition && entryOf(definition).value;
    },
    hull: () => hullSignal.value,
    dependsOn: (name) => [...(dependencies.get(name) ?? [])],
    work: (by) => workFor('(page)', by),
  };
}

/** Quantities an entry names; a choice's entry is an option's id unless it has a dot. */
function namedIn(expression: Reading | string): readonly string[] {
  if (typeof expression === 'string') return expression.includes('.') ? [expression] : [];
  return isIssue(expression) ? [] : expression.names;
}

function finite(meaning: string, value: Value): Value {
  if (typeof value !== 'number' || Number.isFinite(value)) return value;
  return issue(
    `${meaning} has no value with these numbers: the working divides by zero or runs past what can be reckoned`,
  );
}
