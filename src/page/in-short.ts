/** What a quantity is, short enough for a line, wherever it is spoken of away from its own field. */
import type { Instance } from '../cells';
import { upToComma, wordsOf } from '../measure';
import type { Bench } from './bench';
import { notebookWith, openHead } from './library';
import { readable } from './words';

export const small = (text: string): string =>
  /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;

/** Numbers out of the tables of woods, and the shop's: what they are says more than their names. */
const inTables = /^(timber|plywood|shop)\./;

/** What a quantity is, short enough for a line: `Scarf joint: taper`, `tightest radius of the keel`. */
export function inShort(bench: Bench, name: string): string {
  const [part = '', ...rest] = name.split('.');
  const instance = bench.instances.value.get(part);
  if (instance) return `${titleOf(instance, bench)}: ${labelOf(instance, rest)}`;
  // A station's quantities are told apart by their names; their meanings run to whole sentences.
  if (rest.length > 1 && !inTables.test(name)) return readable(name);
  return upToComma(bench.book.inHand.value.quantity(name)?.meaning ?? readable(name));
}

/** The same within its own cell, where the cell need not be named. */
export function inShortWithin(bench: Bench, name: string, cell: string): string {
  const [part = '', ...rest] = name.split('.');
  const instance = part === cell ? bench.instances.value.get(part) : undefined;
  if (instance) return labelOf(instance, rest);
  return bench.instances.value.has(part) || inTables.test(name) ? inShort(bench, name) : readable(name);
}

/** A cell's title; where the same cell stands in several notebooks, the one elsewhere says where. */
export function titleOf({ cell, name }: Instance, bench: Bench): string {
  const twins = [...bench.instances.value.values()].filter((other) => other.cell === cell);
  const home = notebookWith(name);
  return twins.length < 2 || !home || home === openHead() ? cell.title : `${cell.title} (${home.title})`;
}

/** An answer's or input's own label, else what the step works out; in a row of a table, with the row. */
function labelOf({ cell }: Instance, parts: readonly string[]): string {
  const key = parts.at(-1) ?? '';
  const label =
    cell.answers.find((answer) => answer.of === key)?.label ??
    cell.inputs[key]?.label ??
    upToComma(cell.steps[key]?.meaning ?? wordsOf(key));
  return parts.length > 1 ? `${small(label)}, ${wordsOf(parts[0]!)}` : small(label); // more than one, so there is a first
}
