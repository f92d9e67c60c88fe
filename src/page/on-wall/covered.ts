/** Which parts of which cells are covered: all of them, or none, but for those that were turned over since. */
import { signal } from '@preact/signals';

/** What a cell's numbers lie under that are no answers of its. */
export const WORKING = 'working';

export interface Covered {
  readonly isShown: (instance: string, part: string) => boolean;
  readonly turn: (instance: string, part: string) => void;
  readonly areAllShown: () => boolean;
  readonly showAll: (shown: boolean) => void;
  /** Whether a quantity is covered, by its dotted name. */
  readonly hides: (name: string) => boolean;
}

/** Of a cell that stands in a notebook: what is typed into it, and what it answers. */
export interface CoveredCell {
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly answers: readonly { readonly of: string }[];
}

/** @param cellOf the cell of that name; undefined for a part of the boat, which no plate covers. All is tracked. */
export function covering(cellOf: (instance: string) => CoveredCell | undefined): Covered {
  const all = signal(false);
  const turned = signal<ReadonlySet<string>>(new Set());
  const keyOf = (instance: string, part: string) => `${instance} ${part}`;
  const isShown: Covered['isShown'] = (instance, part) =>
    all.value !== turned.value.has(keyOf(instance, part));
  return {
    isShown,
    turn: (instance, part) => {
      const key = keyOf(instance, part);
      const next = new Set(turned.value);
      if (!next.delete(key)) next.add(key);
      turned.value = next;
    },
    areAllShown: () => all.value,
    showAll: (shown) => {
      all.value = shown;
      turned.value = new Set();
    },
    hides: (name) => {
      const [instance = '', key = ''] = name.split('.');
      const cell = cellOf(instance);
      if (!cell || key in cell.inputs) return false;
      return !isShown(instance, cell.answers.some(({ of }) => of === key) ? key : WORKING);
    },
  };
}
