/** Which rows a cell's table has at the moment. */
import type { Option, Value } from '../boat';
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
