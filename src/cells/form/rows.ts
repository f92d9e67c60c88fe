/** Which rows a cell's table has at the moment. */
import type { Option, Value } from '../../boat';
import type { TableColumn } from './define';
import type { Instance } from './instance';

/**
 * Those of a choice's options that have a row in the cell's table: all, but where the table leaves out rows by a
 * step that is 0 in them.
 * @param valueOf the value of a quantity by its full name
 */
export function rowsOf(
  { cell: { table }, name }: Instance,
  options: readonly Option[],
  valueOf: (name: string) => Value,
): readonly Option[] {
  const only = table?.only;
  return only === undefined ? options : options.filter(({ id }) => valueOf(`${name}.${id}.${only}`) !== 0);
}

/**
 * What one row of the table holds in a column: the value, or 'none' where there is none by nature.
 * @param valueOf the value of a quantity by its full name
 */
export function inRow(
  { name, cell: { table } }: Instance,
  row: string,
  { of, where }: TableColumn<string>,
  valueOf: (name: string) => Value,
): Value {
  // The row in hand says what the answers say, numbers typed for this one place among them.
  const at = row === valueOf(`${name}.${table?.over}`) ? name : `${name}.${row}`;
  return where !== undefined && valueOf(`${at}.${where}`) === 0 ? 'none' : valueOf(`${at}.${of}`);
}
