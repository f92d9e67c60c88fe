/** A cell by its id. */
import type { Cell } from '../../src/cells';
import { cells } from '../../src/cells/all';

export const cellOf = (id: string): Cell | undefined => cells.find((cell) => cell.id === id);
