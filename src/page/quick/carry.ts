/** What was typed in a cell that stands by itself, as entries of the boat's own cell of the same kind. */
import { type BoatLists, type Table, lists } from '../../boat';
import { type Cell, type Instance, isChoice, optionsOf } from '../../cells';
import { isIssue, type Shown } from '../../measure';
import type { BookState, Changes, Graph } from '../../notebook';
import { entryOf } from '../input/entry-text';
import { typedIn } from './start-again';

export interface Carried {
  /** Entries of the boat's cell, by their full names. */
  readonly changes: Changes;
  /** Keys of the inputs that are taken. */
  readonly taken: readonly string[];
  /** Whether one of them shows a number of the boat's or the shop's, which stays as it is. */
  readonly onlyHere: boolean;
  readonly left: readonly Left[];
}

/** What is not taken, and why not: `thickness, which is measured on her`. */
export interface Left {
  readonly key: string;
  readonly why: string;
}

/**
 * @param from the cell on the sheet without a boat, what is written there, and what it comes to
 * @param boat as she stands
 * @param asked keys of the inputs that are asked on the sheet
 */
export function carry(
  from: { readonly instance: Instance; readonly state: BookState; readonly graph: Graph },
  boat: Pick<BookState, 'table' | 'asBuilt'>,
  asked: readonly string[],
  shown: Shown,
): Carried {
  const { instance, state, graph } = from;
  const { cell, name } = instance;
  const changes: Record<string, string> = {};
  const left: Left[] = [];
  for (const full of typedIn(state, name)) {
    const key = full.slice(name.length + 1);
    const spec = cell.inputs[key];
    if (!spec) continue;
    const text = textOf(graph, full, shown);
    const why =
      text === null
        ? 'which can’t be read'
        : !asked.includes(key)
          ? 'which is not asked as the cell stands'
          : whyNot(cell, key, text, boat);
    if (why === null && text !== null) changes[`${cell.id}.${key}`] = text;
    else if (why !== null) left.push({ key, why });
  }
  const taken = Object.keys(changes).map((full) => full.slice(cell.id.length + 1));
  return { changes, taken, onlyHere: taken.some((key) => isOwned(cell, key)), left };
}

/** The entry as it can stand elsewhere: names of numbers give way to what they come to. */
function textOf(graph: Graph, full: string, shown: Shown): string | null {
  const entry = graph.entry(full);
  const value = graph.value(full);
  if (!entry || isIssue(value)) return null;
  return entry.names.length === 0 || typeof value === 'string'
    ? entry.text
    : entryOf(value, graph.quantity(full)!.kind, shown); // it has an entry
}

function whyNot(
  cell: Cell,
  key: string,
  text: string,
  { table, asBuilt }: Pick<BookState, 'table' | 'asBuilt'>,
): string | null {
  const full = `${cell.id}.${key}`;
  const spec = cell.inputs[key]!; // only what is an input is asked for
  if (isChoice(spec) && !optionsOf(spec, listsOf(table)).some(({ id }) => id === text))
    return 'which she can’t have';
  if (full in asBuilt.measured) return 'which is measured on her';
  return Object.values(asBuilt.cut).some(({ held }) => full in held) ? 'which a part is cut to' : null;
}

const listsOf = (table: Table): BoatLists => lists(table);

/** A number that somebody else says: written here, it departs from that one. */
function isOwned(cell: Cell, key: string): boolean {
  const { owners, from } = cell.inputs[key]!; // as above
  return (owners?.length ?? 0) > 0 && from !== undefined;
}
