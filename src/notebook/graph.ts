/**
 * The graph of quantities: one computed signal a quantity, evaluated only when looked at.
 *
 * Given quantities hold entries (texts over other quantities); derived ones hold functions.
 * A value is a number, a choice or an issue, so a fault stays with what depends on it: whoever
 * asks for a quantity without a value becomes an issue itself and says what it waits for.
 */
import { computed, type ReadonlySignal } from '@preact/signals-core';
import { attempt, type Derived, type Found, type Given, type Hull, type Read, type Value } from '../boat';
import { type Issue, isIssue, issue, type Shown, unknownName } from '../measure';
import { createDependencies } from './dependencies';
import {
  chosenBy,
  type EntryReading,
  namedIn,
  rangeOf,
  readBuilt,
  readGiven,
  type Surroundings,
} from './given';
import type { Changes } from './state';

/** What a given quantity's entry is by the design, how it came to be, and what stands in its place. */
export interface EntryState {
  readonly text: string;
  /** True if the builder (or the version in hand) wrote it; false if the preset holds. */
  readonly written: boolean;
  /** Quantities the text names. */
  readonly names: readonly string[];
  /** What was measured or cut to, where anything was: it holds in place of the text, in every version. */
  readonly built?: string;
}

export interface Graph {
  readonly names: readonly string[];
  has(name: string): boolean;
  quantity(name: string): Given | Derived | undefined;
  /** The value now; tracked when read inside a computed or an effect. */
  value(name: string): Value;
  /** What a quantity would be, had nothing been measured or cut; tracked. */
  designed(name: string): Value;
  /** The entry of a given quantity now; tracked. */
  entry(name: string): EntryState | undefined;
  /** The hull, or why it can't be drawn; tracked. */
  hull(): Hull | Issue;
  /** What a quantity read when it was last worked out. */
  dependsOn(name: string): readonly string[];
  /** Works something out from the graph, turning a missing value into an issue; tracked. */
  readonly work: <T>(by: (read: Read) => T) => T | Issue;
  /** The same hull with other answers given to the cells; null stands for a preset. It follows this graph. */
  lookedAt(answers: Changes): Graph;
}

export interface GraphParts {
  readonly given: readonly Given[];
  readonly derived: readonly Derived[];
  readonly hull: (read: Read) => Hull;
  /** The written entry of a given quantity, tracked; undefined where nothing is written. */
  readonly written: (name: string) => string | undefined;
  /** The entry that was measured or cut to and stands in place of what is written, tracked. */
  readonly built?: (name: string) => string | undefined;
  /** What searches have found, tracked; without it nothing has been. */
  readonly found?: Found;
  /** Units in which bare numbers in presets and files are read. */
  readonly shown: Shown;
  /** The units the builder has chosen, tracked: what is sold by them, and what sentences are told in; else `shown`. */
  readonly chosen?: () => Shown;
}

/** Thrown by a read that finds no value, caught where the asking quantity is worked out. */
class Waiting extends Error {
  readonly why: Issue;
  constructor(why: Issue) {
    super(why.issue);
    this.why = why;
  }
}

/** The asker that a preset is where it turns on a choice: it is worked out apart from the value. */
const presetOf = (name: string) => `${name} (preset)`;

/** The hull has no name of its own among the quantities, but takes part in circles. */
const HULL = 'the hull';

export function createGraph(parts: GraphParts): Graph {
  const given = new Map(parts.given.map((quantity) => [quantity.name, quantity]));
  const derived = new Map(parts.derived.map((quantity) => [quantity.name, quantity]));
  const names = [...given.keys(), ...derived.keys()];
  // One of two would win in silence.
  if (new Set(names).size < parts.given.length + parts.derived.length)
    throw new TypeError(`two quantities of one name: ${repeatedIn(parts).join(', ')}`);
  const dependencies = createDependencies();

  const quantity = (name: string) => given.get(name) ?? derived.get(name);
  const chosen = parts.chosen ?? (() => parts.shown);
  const inches = computed(() => chosen().length !== 'mm');
  const around: Surroundings = {
    shown: parts.shown,
    told: chosen,
    kindOf: (name) => quantity(name)?.kind,
    known: () => names,
    meaningOf: (name) =>
      quantity(name)
        ?.meaning.split(/[,;:(]/)[0]
        ?.trim(),
  };

  /** The value of `name` for `asker`; never an issue. */
  function ask(asker: string, name: string): number | string {
    dependencies.note(asker, name);
    if (!quantity(name)) {
      throw new Waiting(issue(unknownName(name, names, around.meaningOf)));
    }
    const value = guardCircle(asker, name, () => valueSignal(name).value);
    if (isIssue(value)) throw new Waiting(waitFor(asker, name, value));
    return value;
  }

  /**
   * Signals refuse to read a computed that is being worked out. That refusal is our circle:
   * it is named by the shortest way from `name` back to `asker`. What was refused is not tracked, so
   * the asker watches the entries behind it instead, choices that picked a link among them:
   * whichever is mended wakes it.
   */
  function guardCircle<T>(asker: string, name: string, look: () => T): T {
    try {
      return look();
    } catch (fault) {
      if (!(fault instanceof Error) || !/cycle/i.test(fault.message)) throw fault;
      const way = dependencies.way(name, asker) ?? [name, asker];
      for (const behind of dependencies.behind(name, presetOf)) if (given.has(behind)) watch(behind);
      throw new Waiting({ ...issue(`goes round in a circle: ${[...way, name].join(' -> ')}`), circle: way });
    }
  }

  function watch(name: string): void {
    parts.written(name);
    parts.built?.(name);
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
        dependencies.note(asker, name);
        const value = quantity(name) ? guardCircle(asker, name, () => valueSignal(name).value) : undefined;
        // Going on without it would hide a circle that closes here.
        if (isIssue(value) && value.circle?.includes(asker)) throw new Waiting(value);
        return typeof value === 'number' ? value : null;
      },
      why: (name) => {
        dependencies.note(asker, name);
        if (!given.has(name) || (parts.written(name) ?? parts.built?.(name)) === undefined) return null;
        const value = guardCircle(asker, name, () => valueSignal(name).value);
        return isIssue(value) ? value.issue : null;
      },
      choice: (name) => expect('string', name) as string,
      hull: () => {
        dependencies.note(asker, HULL);
        const hull = guardCircle(asker, HULL, () => hullSignal.value);
        if (isIssue(hull)) throw new Waiting(waitFor(asker, HULL, hull));
        return hull;
      },
      inches: () => inches.value,
      found: parts.found ?? (() => null),
    };
  }

  /** Runs `by`; a read without a value, or a hull that can't give it, ends it as an issue. Slips of ours pass on. */
  function workFor<T>(asker: string, by: (read: Read) => T): T | Issue {
    try {
      return attempt(() => by(readerFor(asker)));
    } catch (fault) {
      if (fault instanceof Waiting) return fault.why;
      throw fault;
    }
  }

  /** As `workFor`, for what has a name and so a record of its own. */
  function workOut<T>(name: string, by: (read: Read) => T): T | Issue {
    dependencies.forget(name);
    return workFor(name, by);
  }

  const hullSignal = computed(() => workOut(HULL, parts.hull));

  /** The entry in force: what is written, else the preset, which may turn on a choice of the same cell. */
  const readingSignal = once((name: string) => {
    const definition = given.get(name)!; // asked only for given quantities
    const presetText = computed(() =>
      definition.presetFrom ? workOut(presetOf(name), definition.presetFrom) : definition.preset,
    );
    return computed((): EntryReading => {
      const text = parts.written(name) ?? presetText.value;
      // A link that waits for a choice leaves no other number in its place.
      return isIssue(text) ? { text: '', says: text } : readGiven(definition, text, around);
    });
  });

  const builtSignal = once((name: string) =>
    computed((): EntryReading | undefined => {
      const text = parts.built?.(name);
      return text === undefined ? undefined : readBuilt(given.get(name)!, text, around); // asked only for given quantities
    }),
  );

  const valueSignal = once((name: string): ReadonlySignal<Value> => {
    const definition = given.get(name);
    if (definition) return givenSignal(definition);
    const { meaning, from } = derived.get(name)!; // asked only for names there are
    return computed(() => finite(meaning, workOut(name, from)));
  });

  function givenSignal(definition: Given): ReadonlySignal<Value> {
    const { name, meaning } = definition;
    const reading = readingSignal(name);
    const outOfRange = rangeOf(definition, around);
    return computed(() => {
      dependencies.forget(name);
      const { text, says } = builtSignal(name).value ?? reading.value;
      if (typeof says === 'string') return workFor(name, (read) => chosenBy(definition, text, read));
      if (isIssue(says)) return says;
      const value = workFor(name, (read) => says.evaluate((other) => read.number(other)));
      return isIssue(value) ? value : (outOfRange(value) ?? finite(meaning, value));
    });
  }

  const value = (name: string): Value =>
    quantity(name) ? valueSignal(name).value : issue(`there is no quantity "${name}"`);

  /** The design is a graph of its own, made when it is first asked for. */
  let design: Graph | undefined;
  const designed = (name: string): Value => {
    const { built, ...asDesigned } = parts;
    if (!built) return value(name);
    design ??= createGraph(asDesigned);
    return design.value(name);
  };

  return {
    names,
    has: (name) => quantity(name) !== undefined,
    quantity,
    value,
    designed,
    entry: (name) => {
      if (!given.has(name)) return undefined;
      const reading = readingSignal(name).value;
      const built = builtSignal(name).value;
      return {
        text: reading.text,
        written: parts.written(name) !== undefined,
        names: namedIn(reading),
        ...(built && { built: built.text }),
      };
    },
    hull: () => hullSignal.value,
    dependsOn: (name) => dependencies.of(name),
    work: (by) => workFor('(page)', by),
    lookedAt: (answers) =>
      createGraph({
        ...parts,
        hull: () => known(hullSignal.value),
        written: (name) => (name in answers ? (answers[name] ?? undefined) : parts.written(name)),
      }),
  };
}

/** Makes a thing for a name when it is first asked for, and the same one ever after. */
function once<T>(make: (name: string) => T): (name: string) => T {
  const made = new Map<string, T>();
  return (name) => {
    const known = made.get(name);
    if (known !== undefined) return known;
    const fresh = make(name);
    made.set(name, fresh);
    return fresh;
  };
}

/** The hull as it stands; why there is none becomes a sentence of whoever asks. */
function known(hull: Hull | Issue): Hull {
  if (isIssue(hull)) throw new Error(hull.issue);
  return hull;
}

function repeatedIn({ given, derived }: GraphParts): string[] {
  const all = [...given, ...derived].map(({ name }) => name);
  return all.filter((name, index) => all.indexOf(name) !== index);
}

function finite(meaning: string, value: Value): Value {
  if (typeof value !== 'number' || Number.isFinite(value)) return value;
  return issue(
    `${meaning} has no value with these numbers: the working divides by zero or runs past what can be reckoned`,
  );
}
