/** What a cell's table is made of. */
import type { Fact } from './fact';

/** A table of the same steps for each answer of one choice, or for each thing in a list: a bevel at every frame, every screw. */
export interface TableSpec<C extends string, K extends string> {
  readonly caption: string;
  /** The choice that is run through; with `rows`, the input of which each row gives a value. */
  readonly over: C;
  /** A list that a fact finds. */
  readonly rows?: Fact<never, readonly ListRow[]>;
  /** A step that is 0 in rows that are to be left out: marks beyond the end of a log. */
  readonly only?: K;
  readonly columns: readonly TableColumn<K | C>[];
}

/** A thing in a list, as a row of a table. */
export interface ListRow {
  /** A word and its number, unique in the list: `mark3`. */
  readonly id: string;
  /** As the builder reads it: `mark 3`. */
  readonly label: string;
  /** What the input that the table runs over is in this row. */
  readonly value: number;
}

export interface TableColumn<K extends string> {
  readonly of: K;
  readonly label: string;
  /** A step that is 0 in rows where there is none: deadrise where the bottom comes to a point. */
  readonly where?: K;
}
