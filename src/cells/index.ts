/** The registry: every calculator cell, in the order of a build. A new cell is a file and a line here. */
import type { Cell } from './define';

export * from './define';
export * from './instance';
export * from './quantities';
export * from './steps';
export * from './warnings';

export const cells: readonly Cell[] = [];

/** The cell of this id, or undefined. */
export function cellOf(id: string): Cell | undefined {
  return cells.find((cell) => cell.id === id);
}
