/** What is said of what matters. */
import { isIssue, type KindId, type Shown, write } from '../../measure';
import type { Group } from '../../notebook/doubts/groups';
import type { Remedy } from '../../trade/doubts';
import { capital } from '../words';

/** How far something moves, without a sign: shares in points. */
export function sayMove(by: number, kind: KindId, shown: Shown): string {
  const size = Math.abs(by);
  if (kind === 'share') {
    const points = write(roundly(size * 100), 'number', shown).text;
    return `${points} ${points === '1' ? 'point' : 'points'}`;
  }
  const of = kind === 'temperature' ? 'warmth' : kind === 'slope' ? 'ratio' : kind;
  return write(roundly(size), of, shown).text;
}

/** To two figures: a doubt is known no better. */
const roundly = (size: number): number => (size === 0 ? 0 : Number(size.toPrecision(2)));

const OFFSETS = 'numbers of the plan';

/** What a group is called in the list. */
export function nameOfGroup({ rows, isOffsets }: Group): string {
  return isOffsets ? `${OFFSETS}, ${rows.length}` : rows[0]!.number.quantity.meaning; // a group has a number
}

/** What to do first, and what that is worth. */
export function advice(group: Group, answer: string, moves: string, others: string | null): string {
  const { usual } = group.rows[0]!.doubt; // a group has a number
  const name = group.isOffsets ? OFFSETS : group.rows[0]!.number.quantity.meaning;
  const rest = others === null ? '' : `, all else together by ${others}`;
  const it = group.isOffsets ? 'they move' : 'it moves';
  return `${first[usual.remedy](`the ${name}`)}: ${it} the ${answer} by ${moves}${rest}.`;
}

const first: Readonly<Record<Remedy, (what: string) => string>> = {
  measure: (what) => `Measure ${what} again`,
  weigh: (what) => `Weigh again for ${what}`,
  try: (what) => `Try a piece of this wood for ${what}`,
  learn: (what) => `Find out more of ${what}`,
};

/** What lies behind one doubt: how it is known, or what is wrong with what is typed. */
export function whyDoubt({ rows }: Group): string {
  const { doubt } = rows[0]!; // a group has a number
  if (isIssue(doubt.by)) return `${capital(doubt.by.issue)}.`;
  if (doubt.isWritten) return 'As you wrote it.';
  const { source, known } = doubt.usual;
  return known === 'common practice'
    ? `${capital(source)}; common practice, no source.`
    : `${capital(source)} (${known}).`;
}
