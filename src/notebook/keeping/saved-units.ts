/** The units that numbers are shown in, kept in this browser for all boats. */
import * as v from 'valibot';
import { plainShown, type Shown } from '../../measure';
import type { Shelf } from './store';

const KEY = 'battenbook units';

const shownSchema = v.object({
  length: v.picklist(['feet', 'inches', 'mm']),
  fraction: v.picklist([8, 16, 32]),
  mass: v.picklist(['lb', 'kg']),
  money: v.picklist(['', '$', '€', '£']),
});

/** @param boat key of a boat; before units had a place of their own, they were kept with the only boat there was */
export function keptUnits(shelf: Shelf | null, boat: string): Shown {
  return (
    readUnits(shelf?.getItem(KEY), (json) => json) ??
    readUnits(shelf?.getItem(boat), ({ shown }) => shown) ??
    plainShown
  );
}

export function keepUnits(shelf: Shelf | null, shown: Shown): void {
  try {
    shelf?.setItem(KEY, JSON.stringify(shown));
  } catch {
    // The choice holds for this window; the boat's own keeping says why nothing is saved.
  }
}

function readUnits(
  text: string | null | undefined,
  within: (json: Record<string, unknown>) => unknown,
): Shown | null {
  try {
    const read = v.safeParse(shownSchema, within(JSON.parse(text ?? '{}') as Record<string, unknown>));
    return read.success ? read.output : null;
  } catch {
    return null;
  }
}
