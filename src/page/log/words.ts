/** The log in words: a day, hours, an amount, and what they come to. */
import type { LogSum } from '../../notebook/log/by-stage';
import { sayDay } from '../../notebook/log/read-day';
import { type Issue, isIssue, type Shown, write } from '../../measure';

/** As written where it can't be read: nothing of it is lost. */
export const dayWords = (day: string | null | Issue, written: string): string =>
  day === null ? '' : isIssue(day) ? written : sayDay(day);

/** `3.5 h`; not in days, which are as long as one's evenings. */
export const hourWords = (hours: number): string => `${Math.round(hours * 100) / 100} h`;

export const moneyWords = (money: number, shown: Shown): string => write(money, 'money', shown).told;

/** What can't be read stands as it was written. */
export function numberWords(
  value: number | null | Issue,
  written: string,
  say: (value: number) => string,
): string {
  return value === null ? '' : isIssue(value) ? written : say(value);
}

/** What hours and money come to, and what is not in the sum: `12.5 h, 340.00; 1 can’t be read and is not counted`. */
export function sumWords({ hours, money, unread }: LogSum, shown: Shown): string {
  const left = unread === 0 ? '' : `; ${unread} can’t be read and ${unread === 1 ? 'is' : 'are'} not counted`;
  return `${hourWords(hours)}, ${moneyWords(money, shown)}${left}`;
}
