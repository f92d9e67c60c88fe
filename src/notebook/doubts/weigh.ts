/** What matters: by how much each number that an answer hangs on may move it, and how far out the answer may be. */
import { signal } from '@preact/signals-core';
import { columns, type Given } from '../../boat';
import { halfOf, isBent, nineteenOfTwenty, type Swing, together, trials } from '../../kernel';
import { type Issue, isIssue, issue, type Shown } from '../../measure';
import type { Graph } from '../graph/graph';
import { hangsOn, isOffset, type NumberBehind } from '../graph/hangs-on';
import { limitsOf } from '../graph/limits';
import { type Doubt, doubtOf } from './doubt-of';

export interface Weighed {
  readonly number: NumberBehind;
  /** Other numbers of the plan that say the same point once more, as where chine and keel meet at a stem: they go with it. */
  readonly alike: readonly string[];
  readonly doubt: Doubt;
  /** How the answer moves, in its own SI unit; null where the doubt can't be read, or where there is no answer at an end. */
  readonly swing: Swing | null;
}

export interface Weighing {
  /** SI. */
  readonly answer: number;
  /** What moves it most first; what can't be told comes last. */
  readonly rows: readonly Weighed[];
  /** Whether it goes straight with all that move it, so that their squares add up; else all were tried at once. */
  readonly isStraight: boolean;
  /** Between which nineteen of twenty lie. */
  readonly range: readonly [least: number, most: number];
  /** Trials that had no answer, of how many. */
  readonly silent: number;
  readonly tried: number;
}

/** Trials of all numbers at once, where the answer bends. */
const TRIALS = 200;
/** What moves an answer less than this share of what moves it most is left out of them. */
const SLIGHT = 0.01;

/**
 * Weighs one answer. Each step asks the graph once or twice; what is yielded between is how much is done, from 0 to 1.
 *
 * @param graph asked once: who calls is not woken by it if it does not look
 * @param written what the builder wrote of a number's doubt, by the number's name
 */
export function* weigh(
  graph: Graph,
  name: string,
  written: (of: string) => string | undefined,
  shown: Shown,
): Generator<number, Weighing | Issue> {
  const answer = graph.value(name);
  if (isIssue(answer)) return answer;
  if (typeof answer !== 'number') return issue('only a number can be weighed');
  const numbers = pointsOf(hangsOn(graph, name).filter((one) => !isOnCentreline(one)));
  // One graph for all that is tried: each trial works out only what differs from the last.
  const tries = signal<Readonly<Record<string, number>>>({});
  const other = graph.with(() => tries.value);
  const moved: Move = (changes) => {
    tries.value = changes;
    const value = other.peek(name);
    return typeof value === 'number' ? value - answer : null;
  };
  const rows: Weighed[] = [];
  for (const [at, { number, alike }] of numbers.entries()) {
    const { quantity, value } = number;
    const doubt = doubtOf(quantity, value, written(quantity.name), shown);
    rows.push({ number, alike, doubt, swing: swingOf({ number, alike }, doubt, moved) });
    yield (at + 1) / numbers.length / 2;
  }
  rows.sort((a, b) => sizeOf(b) - sizeOf(a));
  const most = Math.max(0, ...rows.map(sizeOf));
  const telling = rows.filter((row) => row.swing === null || sizeOf(row) > SLIGHT * most);
  const isStraight = telling.every(({ swing }) => swing !== null && !isBent(swing));
  if (isStraight) {
    const by = together(rows.map(sizeOf));
    return { answer, rows, isStraight, range: [answer - by, answer + by], silent: 0, tried: 0 };
  }
  const tried = telling.flatMap(({ number, alike, doubt: { by } }) =>
    isIssue(by) ? [] : [{ number, alike, by }],
  );
  const found: number[] = [];
  for (const [at, deviations] of trials(tried.length, TRIALS).entries()) {
    // A doubt is two standard deviations.
    const changes = tried.map(({ by, ...point }, i) => movedBy(point, (deviations[i]! * by) / 2)); // one for each tried
    const by = moved(Object.assign({}, ...changes) as Changes);
    if (by !== null) found.push(answer + by);
    yield 1 / 2 + (at + 1) / TRIALS / 2;
  }
  if (found.length === 0) return issue('within these doubts it has no answer at all');
  const range = nineteenOfTwenty(found);
  return { answer, rows, isStraight, range, silent: TRIALS - found.length, tried: TRIALS };
}

type Changes = Readonly<Record<string, number>>;
/** How far the answer goes from where it stands; null where there is none. */
type Move = (changes: Changes) => number | null;

type Point = Pick<Weighed, 'alike' | 'number'>;

/** Numbers of the plan that say one point twice, taken as one. */
function pointsOf(numbers: readonly NumberBehind[]): readonly Point[] {
  const valueOf = new Map(numbers.map(({ quantity, value }) => [quantity.name, value]));
  const taken = new Set<string>();
  return numbers.flatMap((number): Point[] => {
    const { name } = number.quantity;
    if (taken.has(name)) return [];
    const alike = isOffset(name)
      ? numbers.map((one) => one.quantity.name).filter((one) => one !== name && isAlike(one, name))
      : [];
    for (const one of alike) taken.add(one);
    return [{ number, alike }];
  });

  /** The same column of the same station, where the other columns agree too. */
  function isAlike(one: string, other: string): boolean {
    if (!isOffset(one)) return false;
    const [station, edge, column] = one.split('.') as [string, string, string];
    const [otherStation, otherEdge, otherColumn] = other.split('.') as [string, string, string];
    return (
      station === otherStation &&
      column === otherColumn &&
      columns.every(
        (of) => valueOf.get(`${station}.${edge}.${of}`) === valueOf.get(`${station}.${otherEdge}.${of}`),
      )
    );
  }
}

/** Half-breadths of the keel are nothing by what a centreline is. */
const isOnCentreline = ({ quantity, value }: NumberBehind) =>
  value === 0 && isOffset(quantity.name) && quantity.name.endsWith('.halfBreadth');

/** How far a number moves the answer, on the mean of both sides; nothing where that can't be told. */
export const sizeOf = ({ swing }: Weighed): number => (swing ? halfOf(swing) : 0);

function swingOf(point: Point, { by }: Doubt, moved: Move): Swing | null {
  if (isIssue(by)) return null;
  if (by === 0) return { less: 0, more: 0 };
  const less = moved(movedBy(point, -by));
  const more = moved(movedBy(point, by));
  return less === null || more === null ? null : { less, more };
}

function movedBy({ number: { quantity, value }, alike }: Point, by: number): Changes {
  const to = withinLimits(quantity, value + by);
  return Object.fromEntries([quantity.name, ...alike].map((name) => [name, to]));
}

function withinLimits(given: Given, value: number): number {
  const { least, most } = limitsOf(given);
  const held = Math.min(Math.max(value, least), most);
  return given.kind === 'count' ? Math.round(held) : held;
}

/** Numbers that are doubted alike and known anew in one go: the plan's offsets are one such, each other number another. */
export interface Group {
  /** What moves most first. */
  readonly rows: readonly Weighed[];
  readonly isOffsets: boolean;
  /** How far they move the answer together. */
  readonly moves: number;
}

/** The groups, what moves most first. */
export function groupsOf({ rows }: Weighing): readonly Group[] {
  const group = (of: readonly Weighed[], isOffsets: boolean): Group => ({
    rows: of,
    isOffsets,
    moves: together(of.map(sizeOf)),
  });
  const offsets = rows.filter(({ number }) => isOffset(number.quantity.name));
  const others = rows.filter(({ number }) => !isOffset(number.quantity.name));
  return [
    ...(offsets.length > 0 ? [group(offsets, true)] : []),
    ...others.map((row) => group([row], false)),
  ].toSorted((a, b) => b.moves - a.moves);
}

/** How far all but the first move the answer together. */
export const othersOf = (groups: readonly Group[]): number =>
  together(groups.slice(1).map(({ moves }) => moves));
