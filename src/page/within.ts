/** How far off is still good work, written in the builder's units. */
import { isIssue, type KindId, read, type Shown, write } from '../measure';

const INCH = 0.0254;
/** What a preset in tenths of a millimetre may exceed the fraction of an inch that stands for it: 3 mm is 1/8 in. */
const ROUND = 1.1;

/**
 * `1/32 in` reads `0.8 mm` where millimetres are shown, `1 mm` reads `1/32 in` on a tape in fractions: the largest
 * half, quarter, eighth and so on that is no looser.
 */
export function within(entry: string, kind: KindId, shown: Shown): string {
  const reading = read(entry, { kind, shown, field: 'tolerance' });
  const value = isIssue(reading) || kind !== 'length' ? null : reading.evaluate(() => Number.NaN);
  if (value === null || isIssue(value)) return entry.replace(/ deg$/, '°').replaceAll(' ', '\u00a0');
  const text =
    shown.length === 'feet' && value < INCH
      ? `1/${2 ** Math.ceil(Math.log2(INCH / (value * ROUND)))} in`
      : write(value, kind, shown).text;
  return text.replaceAll(' ', '\u00a0');
}
