/** By how much a screw's head comes too near to later cuts: what the laid-out screws are measured by. */
import type { KeepOut } from '../../src/boat/joinery/keep-outs';
import { clearOf, type Vec2 } from '../../src/kernel';

/** A head that just touches the clearance, but for rounding, m. */
const ROUNDING = 1e-9;

/**
 * The worst first; none where it stands clear of all.
 * @param at middle of the head: from the centreline, to port or starboard, and above the base, m
 * @param head diameter, m
 */
export const clashes = (keepOuts: readonly KeepOut[], [y, z]: Vec2, head: number) =>
  keepOuts
    .map(({ what, outline, clearance }) => ({
      what,
      by: clearance + head / 2 - clearOf(outline, [Math.abs(y), z]),
    }))
    .filter(({ by }) => by > ROUNDING)
    .toSorted((a, b) => b.by - a.by);
