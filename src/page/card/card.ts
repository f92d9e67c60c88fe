/** What a cell's shop card says, as plain data: both versions where there are two, and nothing to press. */
import { isIssue, type KindId, write, writeDifference } from '../../measure';
import type { Value } from '../../boat';
import {
  answerInWords,
  answersOf,
  grouped,
  type Instance,
  kindOfKey,
  subjectOf,
  type Source,
  warningsOf,
} from '../../cells';
import type { Graph } from '../../notebook';
import { askedOf } from '../asked';
import { type Bench, optionsFor, sayOf, sayValue, tiedWith, versionWords } from '../bench';
import { within } from '../within';
import { capital, waitsFor } from '../words';
import { type CardTable, cardTable } from './card-table';
import { graphsOf, inEach, type Said, sentencesInEach, tiedValue, type Versions } from './versions';
import { type Origin, whereFrom } from './where-from';

export interface CardFigure extends Said {
  /** A number stands large; words and what is waited for stand less so. */
  readonly large: boolean;
  readonly remainder: string;
  readonly difference: string;
}

export interface CardAnswer {
  readonly label: string;
  readonly datum: string;
  readonly figures: readonly CardFigure[];
}

export interface CardInput {
  readonly label: string;
  readonly values: readonly Said[];
  readonly from: string;
  readonly origin: Origin;
  readonly weight: Weight;
  /** The group that it stands in: `The wood`; empty where it decides. */
  readonly group: string;
}

/**
 * How much it matters that an input is told: it can't be used; or it is written over, as built, or
 * unlike in the two versions; or it is as usual, and decides, or stands in a group.
 */
export type Weight = 'wrong' | 'stands out' | 'deciding' | 'grouped';

/** A source in a few words; in full, with what was taken from it, it stands on the page. */
export interface CardSource {
  readonly inShort: string;
  readonly known: Source['known'];
}

export interface Card {
  readonly boat: string;
  readonly versions: string;
  readonly day: string;
  readonly title: string;
  readonly question: string;
  readonly answers: readonly CardAnswer[];
  readonly words: readonly Said[];
  readonly warnings: readonly (Said & { readonly head: string; readonly limit: string })[];
  readonly cautions: readonly string[];
  readonly inputs: readonly CardInput[];
  readonly table: CardTable | null;
  readonly sources: readonly CardSource[];
  /** Under which a browser keeps the printed page: `frame-3 bevels - Ferry dory`. */
  readonly fileName: string;
}

export function cardOf(instance: Instance, bench: Bench): Card {
  const { cell } = instance;
  const boat = bench.name.value;
  const versions = graphsOf(bench);
  const place = placeOf(instance, bench);
  return {
    boat,
    versions: versionsInHand(bench),
    day: new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' }),
    title: place ? `${cell.title}, ${place}` : cell.title,
    question: cell.question,
    answers: answersOf(instance, (by) => bench.book.inHand.value.workOut(by)).map(
      ({ of, label, from, tolerance }) => ({
        label,
        datum: tolerance
          ? `${from}, within ${within(tolerance, kindOfKey(cell, of), bench.shown.value)}`
          : from,
        figures: figuresOf(`${instance.name}.${of}`, bench),
      }),
    ),
    words: sentencesInEach(versions, (graph) => wordsFrom(instance, graph, bench)),
    warnings: warningsFrom(instance, versions, bench),
    cautions: cell.cautions,
    inputs: inputsOf(instance, bench),
    table: cardTable(instance, bench),
    sources: cell.sources.map((source) => ({ inShort: sourceInShort(source), known: source.known })),
    fileName: fileNameOf(cell.title, place, boat),
  };
}

function sourceInShort({ text, known }: Source): string {
  if (known === 'geometry' || known === 'common practice') return known;
  const name = text.split(/[:;]/)[0]!.trim(); // split gives at least one
  return known === 'published' ? name : `${name} (${known})`;
}

/** Says which version it is where there are two. */
function versionsInHand({ book }: Bench): string {
  const { first, second } = versionWords;
  if (!book.second.value) return '';
  const inHand = book.inHand.value === book.second.value ? second : first;
  return `${first.toLowerCase()} and ${second.toLowerCase()}, in hand: ${inHand.toLowerCase()}`;
}

function figuresOf(name: string, bench: Bench): CardFigure[] {
  const versions = graphsOf(bench);
  const kind = bench.book.first.value.quantity(name)?.kind ?? 'number';
  return versions.map(([version, graph]) => {
    const value = graph.value(name);
    const than = version === 'second' ? bench.book.first.value.value(name) : undefined;
    return {
      version,
      word: versions.length > 1 ? versionWords[version] : '',
      difference: than === undefined ? '' : differenceOf(value, than, kind, bench),
      ...figureOf(value, kind, name, graph, bench),
    };
  });
}

function figureOf(value: Value, kind: KindId, name: string, graph: Graph, bench: Bench) {
  if (typeof value === 'number') {
    const { text, remainder } = write(value, kind, bench.shown.value, graph.mannerOf(name));
    return { text, remainder, large: true };
  }
  const text = isIssue(value)
    ? `waits for ${waitsFor(bench, value)}`
    : sayOf(graph, name, value, bench.shown.value);
  return { text, remainder: '', large: false };
}

function differenceOf(is: Value, was: Value, kind: KindId, bench: Bench): string {
  if (typeof is !== 'number' || typeof was !== 'number') return '';
  return is === was ? 'the same' : writeDifference(is - was, kind, bench.shown.value);
}

function wordsFrom(instance: Instance, graph: Graph, bench: Bench): string {
  const words = graph.workOut((read) => answerInWords(instance, read, tiedWith(bench)));
  return isIssue(words) ? `${capital(words.issue)}.` : words;
}

function warningsFrom(instance: Instance, versions: Versions, bench: Bench): Card['warnings'] {
  const all = versions.flatMap(([version, graph]) =>
    warningsOf(instance, (by) => graph.workOut(by), tiedWith(bench)).map(({ warning, says }) => ({
      version,
      word: versionWords[version],
      text: says,
      head: warning.weight === 'stop' ? 'Stop' : 'Mind',
      limit: capital(warning.limit),
    })),
  );
  const times = (text: string) => all.filter((one) => one.text === text).length;
  return all
    .filter((one, index) => all.findIndex(({ text }) => text === one.text) === index)
    .map((one) => (times(one.text) === versions.length ? { ...one, word: '' } : one));
}

/** The deciding ones first, then group by group. */
function inputsOf(instance: Instance, bench: Bench): CardInput[] {
  const asked = askedOf(instance, bench).map(([key]) => [key, key] as const);
  const { deciding, groups } = grouped(instance.cell, asked, bench.boatless.value);
  const of = (keys: readonly string[], group: string) =>
    keys.map((key) => inputOf(instance, key, group, bench));
  return [...of(deciding, ''), ...groups.flatMap(({ name, fields }) => of(fields, name))];
}

function inputOf(instance: Instance, key: string, group: string, bench: Bench): CardInput {
  const name = `${instance.name}.${key}`;
  const spec = instance.cell.inputs[key]!; // the key is one of the inputs
  const versions = graphsOf(bench);
  const { origin, says } = whereFrom(bench, bench.book.inHand.value, name);
  const wrong = versions.some(([, graph]) => isIssue(graph.value(name)));
  const values = inEach(versions, (graph) => inputText(bench, graph, name));
  const standsOut = origin === 'written' || origin === 'built' || values.length > 1;
  const asUsual = group === '' ? 'deciding' : 'grouped';
  return {
    label: spec.label,
    values,
    from: says,
    origin,
    weight: wrong ? 'wrong' : standsOut ? 'stands out' : asUsual,
    group,
  };
}

/** The value, or what was typed and why it can't be used. */
function inputText(bench: Bench, graph: Graph, name: string): string {
  const value = graph.value(name);
  if (!isIssue(value)) return tiedValue(value, name, graph, bench);
  if (value.waitsFor !== undefined) return `waits for ${waitsFor(bench, value)}`;
  const entry = graph.entry(name);
  return `“${entry?.built ?? entry?.text ?? ''}”: ${value.issue}`;
}

/** Which of the boat's frames, edges or panels the cell speaks of: `frame 3`; empty where it speaks of none. */
function placeOf(instance: Instance, bench: Bench): string {
  const subject = bench.boatless.value ? undefined : subjectOf(instance.cell);
  if (subject === undefined) return '';
  const graph = bench.book.inHand.value;
  const of = `${instance.name}.${subject}`;
  const chosen = graph.value(of);
  return isIssue(chosen) ? '' : sayValue(chosen, 'choice', bench.shown.value, optionsFor(graph, of));
}

/** What no file's name may hold. */
const NOT_IN_NAMES = /[\\/:*?"<>|\s]+/g;

function fileNameOf(title: string, place: string, boat: string): string {
  const plain = (text: string) => text.replaceAll(NOT_IN_NAMES, ' ').trim();
  const head = [plain(place).toLowerCase().replaceAll(' ', '-'), plain(title).toLowerCase()];
  return `${head.filter((words) => words !== '').join(' ')} - ${plain(boat)}`;
}
