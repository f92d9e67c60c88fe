/** What the entry of one given quantity says: its expression or choice, its limits, and the words when it says nothing usable. */
import type { Given, Read } from '../../boat';
import {
  type Bound,
  type Issue,
  isIssue,
  issue,
  type KindId,
  kindOf as kindNamed,
  read,
  type Reading,
  type Shown,
  write,
} from '../../measure';
import { limitsOf } from './limits';

/** The notebook round an entry: the units of bare numbers, and the names it may use. */
export interface Surroundings {
  readonly shown: Shown;
  /** The units that sentences are told in, tracked. */
  readonly told: () => Shown;
  readonly kindOf: (name: string) => KindId | undefined;
  readonly known: () => Iterable<string>;
  readonly meaningOf: (name: string) => string | undefined;
}

/** An entry's text and what it means: an expression, the id or name of a choice, or an issue. */
export interface EntryReading {
  readonly text: string;
  readonly means: Reading | string;
}

export function readGiven(definition: Given, text: string, around: Surroundings): EntryReading {
  return { text, means: definition.kind === 'choice' ? text : readNumber(definition, text, around) };
}

/** The same for what was measured or cut to: it stands by itself, and so lies in no circle and follows no edit. */
export function readBuilt(definition: Given, text: string, around: Surroundings): EntryReading {
  const reading = readGiven(definition, text, around);
  const [named] = namedIn(reading);
  if (named === undefined) return reading;
  const fault = `${definition.meaning}: what is measured is read off the wood and follows nothing else; write the number without ${named}`;
  return { text, means: issue(fault) };
}

/** Quantities an entry names; a choice's entry is an option's id unless it has a dot. */
export function namedIn({ means }: EntryReading): readonly string[] {
  if (typeof means === 'string') return means.includes('.') ? [means] : [];
  return isIssue(means) ? [] : means.names;
}

/** The one quantity that an entry is filled by, as it is. */
export function linkIn(reading: EntryReading): string | undefined {
  const [link, ...others] = namedIn(reading);
  return others.length === 0 && reading.text === link ? link : undefined;
}

/** The answer that a choice's entry gives, by itself or by way of another choice. */
export function chosenBy(definition: Given, text: string, others: Read): string | Issue {
  const { meaning, options = [] } = definition;
  const id = text.includes('.') ? others.choice(text) : text;
  if (options.some((option) => option.id === id)) return id;
  if (options.length === 0) return issue(`${meaning}: this boat has none to choose from`);
  const labels = options.map((option) => option.label).join(', ');
  return issue(`${meaning} is one of ${labels}; "${id}" is none of them`);
}

/** A label that its number completes, `the end stands off by`: in a sentence of its own it is quoted. */
const NO_NOUN = /[,:]|\b(?:by|for|lasts|nearest|than|to|with)$/;

/** A checker of a quantity's limits; these are read once, and told in the units chosen. */
export function rangeOf(definition: Given, around: Surroundings): (value: number) => Issue | undefined {
  const { meaning } = definition;
  const { least, most } = limitsOf(definition);
  const says = (bound: Bound, value: number, text = '') =>
    issue(
      `${NO_NOUN.test(meaning) ? `"${meaning}"` : meaning} must be at ${bound} ${limitInWords(bound, value, text, definition.kind, around.told())}`,
    );
  return (value) => {
    if (value < least) return says('least', least, definition.min);
    if (value > most) return says('most', most, definition.max);
    return undefined;
  };
}

/** As it is set where that is in the builder's own units, with the signs that numbers have everywhere else: `−60°`. */
function limitInWords(bound: Bound, value: number, text: string, kind: KindId, told: Shown): string {
  const { follows } = kindNamed(kind);
  const isMetric =
    follows === 'neither' || (follows === 'length' ? told.length === 'mm' : told.mass === 'kg');
  const isOwn = isMetric && !/(^|[ /])(in|ft|yd|lb|oz|lbf|psi|gal)\b|°F/.test(text);
  return isOwn ? text.replace(/ ?deg$/, '°').replace(/^-/, '−') : write(value, kind, told, { bound }).text;
}

/** What means the same for every quantity of a kind, by the units of bare numbers: presets and limits are the same few texts. */
const literals = new WeakMap<Shown, Map<KindId, Map<string, Reading>>>();
/** More of one kind are forgotten: a slider leaves one behind at every step. */
const MOST_KEPT = 1000;

/** A number that names nothing is read once. */
function readNumber(of: Given, text: string, around: Surroundings): Reading {
  const byKind = literals.get(around.shown) ?? new Map<KindId, Map<string, Reading>>();
  literals.set(around.shown, byKind);
  const known = byKind.get(of.kind) ?? new Map<string, Reading>();
  byKind.set(of.kind, known);
  const before = known.get(text);
  if (before) return before;
  const reading = readAnew(of, text, around);
  // A sentence speaks of its own field.
  if (isIssue(reading) || reading.names.length > 0 || isIssue(reading.evaluate(unnamed))) return reading;
  if (known.size >= MOST_KEPT) known.clear();
  known.set(text, reading);
  return reading;
}

const unnamed = () => issue('it names no quantity');

function readAnew({ kind, meaning, otherwise = [] }: Given, text: string, around: Surroundings): Reading {
  const readAs = (of: KindId) => read(text, { ...around, kind: of, field: meaning });
  const reading = readAs(kind);
  if (!isIssue(reading)) return reading;
  // What would be right elsewhere is told where.
  const fitting = otherwise.find((other) => !isIssue(readAs(other.kind)));
  return fitting ? issue(`${reading.issue}; ${fitting.says}`) : reading;
}
