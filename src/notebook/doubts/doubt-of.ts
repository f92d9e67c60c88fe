/** The doubt of a number: what the builder wrote of it, or what is usual for a number of its kind. */
import type { Given } from '../../boat';
import { type Issue, isIssue, issue, type KindId, read, type Shown } from '../../measure';
import { offsetDoubt, type UsualDoubt, usualDoubt } from '../../trade/doubts';
import { isOffset } from '../graph/hangs-on';

export interface Doubt {
  /** As it is written, or usual. */
  readonly text: string;
  /** To give or to take, SI, 0 or more; why there is none, where what is written can't be read. */
  readonly by: number | Issue;
  readonly usual: UsualDoubt;
  readonly isWritten: boolean;
}

/** Under this name a doubt is kept among the entries: with its version, in the boat's file, and undone like any other. */
export const doubtName = (name: string): string => `doubtOf.${isOffset(name) ? 'offsets' : name}`;

/**
 * @param value the number itself, SI
 * @param written what the builder wrote of its doubt
 */
export function doubtOf(given: Given, value: number, written: string | undefined, shown: Shown): Doubt {
  const usual = isOffset(given.name)
    ? offsetDoubt
    : usualDoubt(`${given.name} ${given.meaning}`, given.kind, value, given.doubted);
  const isInches = shown.length !== 'mm';
  const text = written ?? (isInches ? (usual.entryInch ?? usual.entry) : usual.entry);
  return { text, by: readDoubt(text, given, value, shown), usual, isWritten: written !== undefined };
}

/** A difference of temperatures has no zero, one of slopes is no slope. */
const DIFFERS: Readonly<Partial<Record<KindId, KindId>>> = { temperature: 'warmth', slope: 'ratio' };

/** `2 mm`, or with `%` a share of the number itself. */
function readDoubt(text: string, { kind, meaning }: Given, value: number, shown: Shown): number | Issue {
  const isPart = text.trim().endsWith('%');
  const reading = read(text, {
    kind: isPart ? 'share' : (DIFFERS[kind] ?? kind),
    shown,
    field: `doubt of the ${meaning}`,
  });
  const by = isIssue(reading) ? reading : reading.evaluate(() => issue('a doubt is a number by itself'));
  if (isIssue(by)) return by;
  if (by < 0) return issue('a doubt is given and taken: write it without a sign');
  return isPart ? by * Math.abs(value) : by;
}
