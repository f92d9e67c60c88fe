/** Quantities of a boat without a browser: the notebook's own graph, asked from the command line. */
import { builtEntries, partOf } from '../boat';
import { type Issue, isIssue, kindOf, plainShown, unknownName } from '../measure';
import { type FormulasPlaced, linesOf, placeFormulas } from '../notebook/formulas/place-formulas';
import { withFormulas } from '../notebook/formulas/with-formulas';
import type { Graph } from '../notebook/graph/graph';
import { standing } from '../notebook/graph/standing';
import { parseNotebook } from '../notebook/markdown';
import { wholeCatalogue } from '../notebook/graph/whole-catalogue';
import { type Request, readArguments } from './arguments';
import { type BoatAsked, boatNamed, type ReadFile } from './boat';
import { type AskedFurther, askedFurther } from './further';
import { help } from './help';

export interface Reckoned {
  /** For the output: JSON or help; empty where anything is at fault. */
  readonly out: string;
  /** For the error stream: sentences, one a line. */
  readonly err: string;
  /** 0, or 2 where what was asked is at fault. */
  readonly code: 0 | 2;
}

/**
 * Runs the command.
 * @param args the words after the command's own name: see `help.ts`
 * @param readFile reads a boat file, as text
 */
export function reckon(args: readonly string[], readFile: ReadFile): Reckoned {
  const asked = readArguments(args);
  if (asked === 'help') return { out: help, err: '', code: 0 };
  if ('faults' in asked) return refuse(asked.faults);
  const boat = boatNamed(asked.boat, readFile);
  if ('faults' in boat) return refuse(boat.faults);
  const { graph, isLines } = graphOf(boat, asked);
  const faults = [
    ...faultsOfFile(graph, boat, isLines),
    ...faultsOfSet(graph, asked, isLines),
    ...faultsOfNames(graph, asked),
  ];
  if (faults.length > 0) return refuse(faults);
  return asked.further ? furtherOf(graph, asked, asked.further) : printed(valuesOf(graph, asked.names));
}

const printed = (all: object): Reckoned => ({ out: `${JSON.stringify(all, null, 2)}\n`, err: '', code: 0 });

function furtherOf(graph: Graph, { names }: Request, further: AskedFurther): Reckoned {
  const other = 'against' in further ? further.against : further.by;
  if (!graph.has(other)) return refuse([unknown(graph, other)]);
  const all = names.map((name) => [name, askedFurther(graph, name, further)] as const);
  const amiss = all.flatMap(([, found]) => (isIssue(found) ? [found.issue] : []));
  return amiss.length > 0 ? refuse(amiss) : printed(Object.fromEntries(all));
}

function refuse(sentences: readonly string[]): Reckoned {
  return { out: '', err: [...new Set(sentences)].map((sentence) => `${sentence}\n`).join(''), code: 2 };
}

/** Whether an entry holds the lines of a formula, which are no quantity of their own. */
type IsLines = (name: string) => boolean;

function graphOf(boat: BoatAsked, { set }: Request): { graph: Graph; isLines: IsLines } {
  const { table, entries, asBuilt } = boat;
  const [written, built] = [{ ...entries, ...Object.fromEntries(set) }, builtEntries(asBuilt)];
  const { texts } = formulasOf(boat, written);
  const catalogueOf: typeof wholeCatalogue = (of, ends) => withFormulas(wholeCatalogue(of, ends), texts);
  const stands = standing(() => table, catalogueOf, { entries: () => written, shown: plainShown });
  const { graph } = stands((design) => design.asBuilt(() => built)).value;
  return { graph, isLines: (name) => texts.some((text) => linesOf(text.name) === name) };
}

/** The builder's own formulas: those in the notebooks of the boat's file, and those that stand in none. */
function formulasOf(
  { table, notebooks = {} }: BoatAsked,
  written: Readonly<Record<string, string>>,
): FormulasPlaced {
  const pages = Object.entries(notebooks).flatMap(([id, { text, away }]) =>
    away ? [] : [parseNotebook(text, id)],
  );
  const { namesOf } = wholeCatalogue(table);
  return placeFormulas(
    pages.filter(({ boat }) => boat === null),
    written,
    (word) => namesOf(word).length > 0,
  );
}

/**
 * Entries of the boat's file that can't be written, or can't be read. A notebook's own instances
 * (`quickScarf.thickness`) are not known here; their entries bear on nothing that can be asked.
 */
function faultsOfFile(graph: Graph, { entries, asBuilt }: BoatAsked, isLines: IsLines): string[] {
  const words = new Set(graph.names.map(partOf));
  const names = [...Object.keys(entries), ...Object.keys(asBuilt.measured)];
  return faultsOfEntries(
    graph,
    names.filter((name) => words.has(partOf(name)) && !isLines(name)),
  );
}

function faultsOfSet(graph: Graph, { set }: Request, isLines: IsLines): string[] {
  const names = [...set.keys()].filter((name) => !isLines(name));
  const faults = faultsOfEntries(graph, names);
  // What is typed over it in the notebook moves nothing either; here nobody would see that.
  const built = names.filter((name) => graph.entry(name)?.built !== undefined);
  return [
    ...faults,
    ...built.map(
      (name) => `${name} is measured or cut (${graph.entry(name)?.built}), so --set can't move it`,
    ),
  ];
}

/** Entries that can't be written, or can't be read. */
function faultsOfEntries(graph: Graph, names: readonly string[]): string[] {
  return names.flatMap((name) => {
    const quantity = graph.quantity(name);
    if (!quantity) return [unknown(graph, name)];
    if (!('preset' in quantity)) return [`${name} follows from others and can't be set`];
    const value = graph.value(name);
    // A link to what has no value is no fault of the entry.
    return isIssue(value) && value.waitsFor === undefined ? [value.issue] : [];
  });
}

/** Names that are not there, or have no value. */
function faultsOfNames(graph: Graph, { names, set }: Request): string[] {
  return names.flatMap((name) => {
    if (!graph.has(name)) return [unknown(graph, name)];
    const value = graph.value(name);
    // The entry's own sentence stands already.
    if (!isIssue(value) || set.has(value.waitsFor ?? name)) return [];
    return [sentenceOf(name, value)];
  });
}

function sentenceOf(name: string, { issue, waitsFor }: Issue): string {
  return waitsFor === undefined
    ? `${name} has no value: ${issue}`
    : `${name} waits for ${waitsFor}: ${issue}`;
}

function unknown(graph: Graph, name: string): string {
  return unknownName(name, graph.names);
}

function valuesOf(graph: Graph, names: readonly string[]): object {
  return Object.fromEntries(
    names.map((name) => {
      const value = graph.value(name);
      const unit = typeof value === 'number' ? kindOf(graph.quantity(name)!.kind).si : ''; // all names are there
      return [name, { value, unit }];
    }),
  );
}
