/** How far off is still good work, written in the builder's units. */
import { ROUND } from '../measure/figures';
import { INCH } from '../measure/si';
import { isIssue, type KindId, marksWithin, read, type Shown, write } from '../measure';

/**
 * `1/32 in` reads `0.8 mm` where millimetres are shown, `1 mm` reads `1/32 in` on a tape in fractions: the largest
 * inch, half, quarter, eighth and so on that is no looser.
 */
export function within(entry: string, kind: KindId, shown: Shown): string {
  const reading = read(entry, { kind, shown, field: 'tolerance' });
  const value = isIssue(reading) || kind !== 'length' ? null : reading.evaluate(() => Number.NaN);
  if (value === null || isIssue(value)) return entry.replace(/ deg$/, '°').replaceAll(' ', '\u00a0');
  const inches = Math.floor((value / INCH) * ROUND);
  const onTape = inches > 0 ? `${inches} in` : `1/${marksWithin(value)} in`;
  const text = shown.length === 'feet' ? onTape : write(value, kind, shown).text;
  return text.replaceAll(' ', '\u00a0');
}
