/** One placing of a cell in a notebook, under a name. */
import type { Cell, ChoiceSpec, InputSpec } from './define';

/** One placing of a cell: which cell, under which name, with which presets of its own. */
export interface Instance {
  readonly cell: Cell;
  readonly name: string;
  /** Entries that replace the cell's own links and presets, by input; after a bar that of who works in inches. */
  readonly presets: Readonly<Record<string, string>>;
}

/** A placing's entry for who works in millimetres and for who works in feet and inches: `18 mm | 3/4 in`. */
export function bySystem(
  entry: string | undefined,
): readonly [metric: string | undefined, inch: string | undefined] {
  const [metric, inch] = entry?.split('|').map((text) => text.trim()) ?? [];
  return [metric, inch];
}

/** The cell under its own name with its own links. */
export function plainInstance(cell: Cell): Instance {
  return { cell, name: cell.id, presets: {} };
}

export function isChoice(spec: InputSpec | ChoiceSpec): spec is ChoiceSpec {
  return spec.kind === 'choice';
}
