/** Between which numbers an entry is taken. */
import type { Given } from '../../boat';
import { isIssue, issue, plainShown, read } from '../../measure';

export interface Limits {
  /** SI; -Infinity where there is none. */
  readonly least: number;
  /** SI; Infinity where there is none. */
  readonly most: number;
}

/** @throws where a limit, which is our own text, can't be read */
export function limitsOf(given: Given): Limits {
  return {
    least: limit(given, given.min) ?? Number.NEGATIVE_INFINITY,
    most: limit(given, given.max) ?? Number.POSITIVE_INFINITY,
  };
}

function limit({ name, kind, meaning }: Given, text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const reading = read(text, { kind, shown: plainShown, field: meaning });
  const value = isIssue(reading) ? reading : reading.evaluate(() => issue('it names no quantity'));
  if (isIssue(value)) throw new TypeError(`${name}: the limit "${text}" can't be read: ${value.issue}`);
  return value;
}
