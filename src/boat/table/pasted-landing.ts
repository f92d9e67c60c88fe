/** Where a pasted block lands in the table of offsets. */
import type { Named } from './named';
import type { Notation } from './offset-notation';
import type { Column } from './offsets';

export interface GridColumn {
  readonly edge: Named;
  readonly column: Column;
}

/** Where a block lands. */
export interface Landing {
  readonly stations: readonly Named[];
  readonly edges: readonly Named[];
  /** Columns as they stand in the grid, from left to right. */
  readonly columns: readonly GridColumn[];
  /** The box in hand. */
  readonly row: number;
  readonly column: number;
  readonly notation: Notation;
  /** Whether a station stands as one plane: a place forward given of one edge is then that of all. */
  readonly isPlane: (station: string) => boolean;
  /** A name for a station to be added, by its number among those added. */
  readonly newName: (number: number) => string;
}

/** A station that the block has and the table has not: put in before the one that is at `at` by then. */
export interface NewStation {
  readonly at: number;
  readonly name: string;
}

/** A cell as it is told of. */
export const short = (text: string): string => (text.length > 30 ? `${text.slice(0, 29)}…` : text);
