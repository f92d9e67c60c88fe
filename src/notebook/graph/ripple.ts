/**
 * The ripple: what moved after an edit, by how much, what fell silent or spoke again, and which
 * limits were crossed. Where the edit completes the hull, or takes from it what it needs to be drawn, that is the
 * news, and not the hundreds of numbers that come or go with it.
 */
import type { Quantity, Value } from '../../boat';
import { isIssue } from '../../measure';

/** Values and warnings at one moment; `W` is what a warning is told by. */
export interface Snapshot<W = string> {
  readonly values: ReadonlyMap<string, Value>;
  /** The warnings that apply, by a name that stays the same while the numbers in it change. */
  readonly warnings: ReadonlyMap<string, W>;
  /** Warnings that can't be weighed, because a number of theirs is missing. */
  readonly unweighed: ReadonlySet<string>;
  /** Whether there is a hull. */
  readonly hull: boolean;
}

export interface Moved {
  readonly quantity: Quantity;
  readonly before: Value;
  readonly after: Value;
  /** Size of the move for ordering: relative change of a number, infinite where a value came or went. */
  readonly size: number;
}

export interface Ripple<W = string> {
  /** Largest move first. */
  readonly moved: readonly Moved[];
  /** Limits that were kept before: what could not be weighed then was not within. */
  readonly nowWarned: readonly W[];
  readonly nowClear: readonly W[];
  /** What became of the hull; null where she is drawn, or not, as before. */
  readonly hull: 'drawn' | 'lost' | null;
}

/** Moves smaller than this share of the value are rounding, not news. */
const ROUNDING = 1e-9;

export function rippleBetween<W>(
  before: Snapshot<W>,
  after: Snapshot<W>,
  quantities: Iterable<Quantity>,
): Ripple<W> {
  const hull = before.hull === after.hull ? null : after.hull ? 'drawn' : 'lost';
  const moved: Moved[] = [];
  for (const quantity of quantities) {
    const was = before.values.get(quantity.name);
    const is = after.values.get(quantity.name);
    if (was === undefined || is === undefined) continue;
    // Before there is a hull, numbers come and go box by box.
    if ((hull !== null || !after.hull) && isIssue(was) !== isIssue(is)) continue;
    const size = sizeOfMove(was, is);
    if (size > ROUNDING) moved.push({ quantity, before: was, after: is, size });
  }
  moved.sort((a, b) => b.size - a.size || (a.quantity.name < b.quantity.name ? -1 : 1));
  return {
    moved,
    nowWarned: newIn(after.warnings, before, before.unweighed),
    nowClear: newIn(before.warnings, after, after.unweighed),
    hull,
  };
}

function newIn<W>(
  here: ReadonlyMap<string, W>,
  { warnings: there }: Snapshot<W>,
  unweighed: ReadonlySet<string>,
): W[] {
  return [...here].filter(([name]) => !there.has(name) && !unweighed.has(name)).map(([, says]) => says);
}

function sizeOfMove(was: Value, is: Value): number {
  if (typeof was === 'number' && typeof is === 'number') {
    if (was === is) return 0;
    return Math.abs(is - was) / Math.max(Math.abs(was), Math.abs(is));
  }
  if (isIssue(was) && isIssue(is)) return 0;
  return was === is ? 0 : Infinity;
}
