/** The ways in which what is drawn against what may change: pure functions on the state. */
import type { SweepAsk } from '../../boat';
import type { BookState } from '../state/state';

/** What is drawn in a cell; null where nothing is. */
export const sweepIn = ({ sweeps }: BookState, cell: string): SweepAsk | null =>
  Object.hasOwn(sweeps, cell) ? (sweeps[cell] ?? null) : null;

/** Draws something in a cell, or with null nothing any more. What stands there already is no change. */
export function writeSweep(state: BookState, cell: string, ask: SweepAsk | null): BookState {
  const { [cell]: was, ...others } = state.sweeps;
  if (JSON.stringify(was ?? null) === JSON.stringify(ask)) return state;
  return { ...state, sweeps: ask ? { ...others, [cell]: ask } : others };
}
