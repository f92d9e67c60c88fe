/** A cell's fields as they stand together: the deciding ones, in view, and the others in groups that open. */
import type { Cell } from './define';

export interface Grouped<T> {
  readonly deciding: readonly T[];
  /** In the order of the cell; a group none of whose fields is asked is left out. */
  readonly groups: readonly { readonly name: string; readonly fields: readonly T[] }[];
}

/** The name of the group that a field stands in; undefined for a deciding one. */
export const groupOf = ({ groups = {} }: Cell, key: string): string | undefined =>
  Object.keys(groups).find((name) => groups[name]?.includes(key));

/**
 * @param fields those that are asked, with their keys; in a group they stand as the group names them
 * @param isAlone whether the cell stands where there is no boat
 */
export function grouped<T>(
  cell: Cell,
  fields: readonly (readonly [key: string, field: T])[],
  isAlone = false,
): Grouped<T> {
  const { groups = {} } = cell;
  const alone = isAlone ? (cell.alone ?? []) : [];
  const byKey = new Map(fields);
  const some = (keys: readonly string[]) =>
    keys.flatMap((key) => (byKey.has(key) ? [byKey.get(key) as T] : [])); // it has it
  return {
    deciding: [
      ...some(alone),
      ...fields
        .filter(([key]) => groupOf(cell, key) === undefined && !alone.includes(key))
        .map(([, field]) => field),
    ],
    groups: Object.entries(groups)
      .map(([name, keys]) => ({ name, fields: some(keys.filter((key) => !alone.includes(key))) }))
      .filter(({ fields: inside }) => inside.length > 0),
  };
}
