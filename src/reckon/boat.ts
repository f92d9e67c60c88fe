/** The boat named on the command line: one of the starters, or a boat file. */
import {
  type AsBuilt,
  isUnread,
  nothingBuilt,
  type OwnNotebooks,
  readBoatFile,
  starter,
  starters,
  type Table,
} from '../boat';
import { stateOf } from '../notebook/state/boat-state';
import { keepOnly } from '../notebook/state/state';
import { type Issue, isIssue, nearestNames } from '../measure';

export interface BoatAsked {
  readonly table: Table;
  readonly entries: Readonly<Record<string, string>>;
  readonly asBuilt: AsBuilt;
  /** The builder's own, for the formulas in them; left out where there is none. */
  readonly notebooks?: OwnNotebooks;
}

/** The text of the file at a path, or why there is none, as the end of a sentence: `there is no such file`. */
export type ReadFile = (path: string) => string | Issue;

/** The boat of this id or at this path, or what is wrong as sentences. */
export function boatNamed(
  name: string,
  readFile: ReadFile,
): BoatAsked | { readonly faults: readonly string[] } {
  const table = starter(name);
  if (table) return { table, entries: {}, asBuilt: nothingBuilt };
  const text = readFile(name);
  if (!isIssue(text)) return boatIn(name, text);
  // A word without a dot or a slash was meant for a starter.
  if (/[./\\]/.test(name)) return { faults: [`the boat file "${name}" can't be read: ${text.issue}`] };
  const ids = starters.map(({ id }) => id);
  const [near] = nearestNames(name, ids, 1);
  const offer = near === undefined ? '' : `; the nearest is ${near}`;
  return {
    faults: [
      `there is no starter boat "${name}"${offer}; the starters are ${ids.join(', ')}, and a boat file goes by its path`,
    ],
  };
}

function boatIn(path: string, text: string): BoatAsked | { readonly faults: readonly string[] } {
  const boat = readBoatFile(text);
  if (isUnread(boat)) return { faults: boat.faults.map((fault) => `the boat file "${path}": ${fault}`) };
  // Of two versions, the one in hand is what the page shows too.
  const { table, entries, asBuilt, notebooks } = keepOnly(stateOf(boat), boat.inHand ?? 'first');
  return { table, entries, asBuilt, notebooks };
}
