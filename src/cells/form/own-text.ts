/** A number as it stands in a text of ours: to the last figure what a builder's entry of it is. */
import { isIssue, type KindId, plainShown, read } from '../../measure';

/** SI. @throws TypeError where it can't be read, which is a slip of ours */
export function ownNumber(text: string, kind: KindId): number {
  const reading = read(text, { kind, shown: plainShown, field: 'text' });
  const value = isIssue(reading) ? reading : reading.evaluate(() => Number.NaN);
  if (isIssue(value)) throw new TypeError(`"${text}" can't be read: ${value.issue}`);
  return value;
}
