/** The log as it is read: each entry's day, hours and money, and what they come to, stage by stage. */
import type { Log, LogEntry } from '../../boat';
import { type Issue, isIssue, issue, type KindId, plainShown, read } from '../../measure';
import { readDay } from './read-day';

export interface LogLine {
  readonly id: string;
  readonly entry: LogEntry;
  /** Null where nothing is written, here and below. */
  readonly day: string | null | Issue;
  /** h. */
  readonly hours: number | null | Issue;
  readonly money: number | null | Issue;
}

export interface LogSum {
  /** h. */
  readonly hours: number;
  readonly money: number;
  /** How many hours and amounts can't be read, and so are not in the sums. */
  readonly unread: number;
}

export interface LogStage extends LogSum {
  readonly title: string;
  /** In the order of their days; those without one come last. */
  readonly lines: readonly LogLine[];
}

/** More than this in one entry is a slip of the pen, h. */
const MOST_HOURS = 1000;

export function lineOf(id: string, entry: LogEntry): LogLine {
  return {
    id,
    entry,
    day: readDay(entry.day),
    hours: readHours(entry.hours),
    money: readMoney(entry.money),
  };
}

/** Hours of work, h: `3`, `2.5`, `90 min`, `1 h 20 min`. */
function readHours(text: string): number | null | Issue {
  const seconds = readNumber(text, 'time');
  if (seconds === null) return null;
  if (isIssue(seconds)) return issue('the hours can’t be read; write 3, 2.5 or 1 h 20 min');
  const hours = seconds / 3600;
  if (hours < 0) return issue('the hours can’t be less than none');
  return hours > MOST_HOURS ? issue(`the hours are too many; one entry takes at most ${MOST_HOURS}`) : hours;
}

/** An amount; what came back is less than none. */
function readMoney(text: string): number | null | Issue {
  const amount = readNumber(text, 'money');
  return isIssue(amount) ? issue('the amount can’t be read; write 12 or 12.50') : amount;
}

function readNumber(text: string, kind: KindId): number | null | Issue {
  if (text.trim() === '') return null;
  const reading = read(text, { kind, shown: plainShown, field: 'it' });
  // A log moves with no number of the boat.
  return isIssue(reading) ? reading : reading.evaluate(() => issue('it names a number of the boat'));
}

/** Entries of one cell, or of all, in the order of their days. */
export function linesOf(log: Log, cell: string | null = null): readonly LogLine[] {
  return Object.entries(log)
    .filter(([, entry]) => cell === null || entry.cell === cell)
    .map(([id, entry]) => lineOf(id, entry))
    .sort((a, b) => (orderOf(a) < orderOf(b) ? -1 : orderOf(a) > orderOf(b) ? 1 : numberOf(a) - numberOf(b)));
}

/** A day begins with a digit, and so comes before what has none. */
const orderOf = ({ day }: LogLine) => (typeof day === 'string' ? day : 'no day');
const numberOf = ({ id }: LogLine) => Number(id.slice(1));

/**
 * @param stageOf title of the stage that a cell stands in; null for what stands in none
 * @param stages titles in the order of a build
 * @param rest title for what belongs to none of them
 */
export function byStage(
  log: Log,
  stageOf: (cell: string) => string | null,
  stages: readonly string[],
  rest: string,
): readonly LogStage[] {
  const all = linesOf(log);
  const known = new Set(stages);
  const titleOf = ({ entry }: LogLine) => {
    const stage = stageOf(entry.cell);
    return stage !== null && known.has(stage) ? stage : rest;
  };
  return [...stages, rest].flatMap((title): LogStage[] => {
    const lines = all.filter((line) => titleOf(line) === title);
    return lines.length === 0 ? [] : [{ title, lines, ...sumOf(lines) }];
  });
}

export function sumOf(lines: readonly LogLine[]): LogSum {
  const sum = (numbers: readonly (number | null | Issue)[]) =>
    numbers.reduce<number>((before, number) => before + (typeof number === 'number' ? number : 0), 0);
  const hours = lines.map((line) => line.hours);
  const money = lines.map((line) => line.money);
  const unread = [...hours, ...money].filter((number) => number !== null && isIssue(number)).length;
  return { hours: sum(hours), money: sum(money), unread };
}
