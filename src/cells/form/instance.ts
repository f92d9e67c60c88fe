/** One placing of a cell in a notebook, under a name. */
import type { Cell, ChoiceSpec, InputSpec, Instance } from './define';

export type { Instance } from './define';

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
