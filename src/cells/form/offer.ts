/** What a cell proposes. */
import type { KindId } from '../../measure';

/** A change that the cell proposes; the page shows it as a button that starts a second version with it. */
export interface Offer {
  /** Words for a button that only turns this cell to something else: done at once, and no second version. */
  readonly turns?: string;
  /** What the second version is: `Frame 2, sheer 50 mm wider`. */
  readonly label: string;
  /** Entries by the quantity's full name; `{self}` stands for the cell itself. */
  readonly changes: Readonly<Record<string, string>>;
  /** What it does to numbers that a builder weighs it by, shown before it is tried. */
  readonly effects?: readonly Effect[];
}

/** One number as it stands and as an offer would make it, SI. */
export interface Effect {
  readonly label: string;
  readonly kind: KindId;
  readonly before: number;
  readonly after: number;
}
