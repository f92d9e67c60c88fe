/** Days as a builder writes them: `2026-11-28`, `28 Nov 2026`, `November 28, 2026`. Of 3/4 nobody knows which is the month. */
import { type Issue, issue } from '../../measure';

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;
const whole = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** As `2026-11-28`, which sorts by itself; null for an empty text. */
export function readDay(text: string): string | null | Issue {
  const plain = text.trim();
  if (plain === '') return null;
  const found = partsOf(plain);
  if (!found) return issue('the day can’t be read; write it as 2026-11-28 or 28 Nov 2026');
  const { year, month, day } = found;
  if (month < 1 || month > 12) return issue(`there is no month ${month}; write the day as 2026-11-28`);
  // Day 0 of the next month is the last of this one.
  const last = new Date(Date.UTC(year, month, 0)).getUTCDate();
  if (day < 1 || day > last) return issue(`there is no ${day} ${months[month - 1]} ${year}`);
  return `${year}-${twoDigits(month)}-${twoDigits(day)}`;
}

interface Parts {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

function partsOf(text: string): Parts | null {
  const [, year, month, day] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text) ?? [];
  if (year) return { year: Number(year), month: Number(month), day: Number(day) };
  const [, dayFirst, word, yearLast] = /^(\d{1,2})\.? +([a-z]{3,9})\.?,? +(\d{4})$/i.exec(text) ?? [];
  if (word) return withMonth(yearLast, word, dayFirst);
  const [, wordFirst, second, third] = /^([a-z]{3,9})\.? +(\d{1,2}),? +(\d{4})$/i.exec(text) ?? [];
  return wordFirst ? withMonth(third, wordFirst, second) : null;
}

function withMonth(year: string | undefined, word: string, day: string | undefined): Parts | null {
  const at = whole.findIndex((name) => name.toLowerCase().startsWith(word.toLowerCase()));
  return at < 0 ? null : { year: Number(year), month: at + 1, day: Number(day) };
}

const twoDigits = (number: number) => String(number).padStart(2, '0');

/** `28 Nov 2026`, of a day as it is read. */
export function sayDay(day: string): string {
  const [year, month, date] = day.split('-');
  return `${Number(date)} ${months[Number(month) - 1]} ${year}`;
}

/** Today where the builder is, as a day is read. */
export function dayOf(now: Date): string {
  return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;
}
