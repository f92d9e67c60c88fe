/** The units that numbers are shown in, kept in this browser for all boats. */
import { plainShown, type Shown } from '../../measure';
import type { Shelf } from './shelf';

const KEY = 'battenbook units';

/** Read by hand: a library for it would weigh more than all else that the first page reads. */
const choices: { readonly [K in keyof Shown]: readonly Shown[K][] } = {
  length: ['feet', 'inches', 'mm'],
  fraction: [8, 16, 32],
  mass: ['lb', 'kg'],
  money: ['', '$', '€', '£'],
};
const areUnits = (
  read: Readonly<Record<string, unknown>>,
): read is Readonly<Record<string, unknown>> & Shown =>
  Object.entries(choices).every(([key, all]) => all.some((one) => one === read[key]));

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
    const read = within(JSON.parse(text ?? '{}') as Record<string, unknown>) as Record<string, unknown>;
    if (!areUnits(read)) return null;
    const { length, fraction, mass, money } = read;
    return { length, fraction, mass, money };
  } catch {
    return null;
  }
}
