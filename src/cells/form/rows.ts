/** Which rows a cell's table has at the moment. */
import type { Option, Read, Value } from '../../boat';
import { type Issue, isIssue } from '../../measure';
import type { TableColumn } from './define';
import type { Instance } from './instance';
import { scopeOf } from './steps';

/** What the rows are read by. */
export interface TableReader {
  /** The value of a quantity by its full name. */
  readonly value: (name: string) => Value;
  readonly workOut: <T>(by: (read: Read) => T) => T | Issue;
}

/** A row, and what it gives for the input that the table runs over. */
export interface TableRow extends Pick<Option, 'id' | 'label'> {
  readonly value: number | string;
}

/**
 * Those of a choice's options, or of a list, that have a row in the cell's table: all, but where the table leaves out
 * rows by a step that is 0 in them. None, while the list can't be found.
 */
export function rowsOf(instance: Instance, options: readonly Option[], by: TableReader): readonly TableRow[] {
  const { table } = instance.cell;
  const { rows: list, only } = table ?? {};
  const listed = list && by.workOut((read) => scopeOf(instance, read).ask(list));
  if (isIssue(listed)) return [];
  const rows = listed ?? options.map((option) => ({ ...option, value: option.id }));
  return only === undefined
    ? rows
    : rows.filter(({ id }) => by.value(`${instance.name}.${id}.${only}`) !== 0);
}

/** Nearer than this, as a share, two numbers are one. */
const ALIKE = 1e-9;

/** Whether the row is the one that the cell's answers speak of. */
export function isInHand({ name, cell: { table } }: Instance, { value }: TableRow, by: TableReader): boolean {
  const now = by.value(`${name}.${table?.over}`);
  if (typeof now !== 'number' || typeof value !== 'number') return now === value;
  return Math.abs(now - value) <= ALIKE * Math.max(1, Math.abs(value));
}

/** What one row of the table holds in a column: the value, or 'none' where there is none by nature. */
export function inRow(
  instance: Instance,
  row: TableRow,
  { of, where }: TableColumn<string>,
  by: TableReader,
): Value {
  const { name, cell } = instance;
  if (of === cell.table?.over) return row.value;
  // The row in hand says what the answers say, numbers typed for this one place among them.
  const at = isInHand(instance, row, by) ? name : `${name}.${row.id}`;
  return where !== undefined && by.value(`${at}.${where}`) === 0 ? 'none' : by.value(`${at}.${of}`);
}
