/** How a cell's numbers are written wherever they stand: a limit on its own side, an answer as finely as its tolerance. */
import type { Manner } from '../../measure';
import type { Cell } from './define';
import { isChoice } from './instance';
import { ownNumber } from './own-text';

const manners = new WeakMap<Cell, Map<string, Manner | undefined>>();

/** Undefined for a number that is written as all others are. */
export function mannerOf(cell: Cell, key: string): Manner | undefined {
  const ofCell = manners.get(cell) ?? new Map<string, Manner | undefined>();
  manners.set(cell, ofCell);
  if (!ofCell.has(key)) ofCell.set(key, manner(cell, key));
  return ofCell.get(key);
}

function manner(cell: Cell, key: string): Manner | undefined {
  const input = cell.inputs[key];
  const spec = input && isChoice(input) ? undefined : (input ?? cell.steps[key]);
  if (!spec) return undefined;
  // How far, either way: written as what it is the size of.
  const [, signed] = 'formula' in spec ? (/^abs\((\w+)\)$/.exec(spec.formula) ?? []) : [];
  if (signed !== undefined && spec.bound === undefined) return mannerOf(cell, signed);
  const tolerance = cell.answers.find(({ of }) => of === key)?.tolerance;
  const within = tolerance === undefined ? undefined : ownNumber(tolerance, spec.kind);
  return spec.bound === undefined && within === undefined ? undefined : { bound: spec.bound, within };
}
