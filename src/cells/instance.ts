/** One placing of a cell in a notebook, under a name. */
import type { Cell, ChoiceSpec, InputSpec } from './define';

/** One placing of a cell: which cell, under which name, with which presets of its own. */
export interface Instance {
  readonly cell: Cell;
  readonly name: string;
  /** Entries that replace the cell's own links and presets, by input. */
  readonly presets: Readonly<Record<string, string>>;
}

/** The cell under its own name with its own links. */
export function plainInstance(cell: Cell): Instance {
  return { cell, name: cell.id, presets: {} };
}

export function isChoice(spec: InputSpec | ChoiceSpec): spec is ChoiceSpec {
  return spec.kind === 'choice';
}
