/** What matters: by how much each number that an answer hangs on may move it, and how far out the answer may be. */
import { signal } from '@preact/signals-core';
import { columns, type Given } from '../../boat';
import { along, halfOf, isBent, nineteenOfTwenty, type Swing, together, trials } from '../../kernel';
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
  /** Trials that were added up of what each number does by itself, where those tried came to the same; else 0. */
  readonly added: number;
}

/** Trials of all numbers at once, where the answer bends. */
const TRIALS = 200;
/** Trials after which they are held against what the numbers do by themselves; what these may be off, as a share. */
const HELD = 24;
const OFF = 0.05;
/** Trials that are added up. */
const ADDED = 1000;
/** What moves an answer less than this share of what moves it most is taken to do so alike to both sides. */
const STEADY = 0.005;
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
  const rows = yield* swings(
    numbers.map((point): Doubted => {
      const { quantity, value } = point.number;
      return { ...point, doubt: doubtOf(quantity, value, written(quantity.name), shown) };
    }),
    moved,
  );
  rows.sort((a, b) => sizeOf(b) - sizeOf(a));
  const most = Math.max(0, ...rows.map(sizeOf));
  const telling = rows.filter((row) => row.swing === null || sizeOf(row) > SLIGHT * most);
  const isStraight = telling.every(({ swing }) => swing !== null && !isBent(swing));
  if (isStraight) {
    const by = together(rows.map(sizeOf));
    return { answer, rows, isStraight, range: [answer - by, answer + by], silent: 0, tried: 0, added: 0 };
  }
  const { tried, silent, values } = yield* allAtOnce(telling, moved);
  if (values.length === 0) return issue('within these doubts it has no answer at all');
  const [low, high] = nineteenOfTwenty(values);
  const added = tried < TRIALS ? values.length : 0;
  return { answer, rows, isStraight, range: [answer + low, answer + high], silent, tried, added };
}

/** How the answer moves with each number by itself: what goes up with more goes down with less, where it moves but slightly. */
function* swings(points: readonly Doubted[], moved: Move): Generator<number, Weighed[]> {
  const more: (number | null)[] = [];
  for (const point of points) {
    const { by } = point.doubt;
    more.push(isIssue(by) || by === 0 ? null : moved(movedBy(point, by)));
    yield more.length / points.length / 4;
  }
  const most = Math.max(0, ...more.map((by) => Math.abs(by ?? 0)));
  const rows: Weighed[] = [];
  for (const [at, point] of points.entries()) {
    rows.push({ ...point, swing: swingOf(point, more[at]!, most, moved) });
    yield 1 / 4 + (at + 1) / points.length / 4;
  }
  return rows;
}

function swingOf(point: Doubted, more: number | null, most: number, moved: Move): Swing | null {
  const { by } = point.doubt;
  if (isIssue(by)) return null;
  if (by === 0) return { less: 0, more: 0 };
  if (more === null) return null;
  // What does not move at all with more may be at a limit, or at a corner.
  if (more !== 0 && Math.abs(more) < STEADY * most && !isHeld(point, by)) return { less: -more, more };
  const less = moved(movedBy(point, -by));
  return less === null ? null : { less, more };
}

interface Tried {
  /** How far the answer lies from where it stands. */
  readonly values: readonly number[];
  readonly tried: number;
  readonly silent: number;
}

/**
 * All numbers tried at once. Where the first of the trials come to what the numbers do by themselves, added up, the
 * others are added up too, which asks nothing.
 */
function* allAtOnce(telling: readonly Weighed[], moved: Move): Generator<number, Tried> {
  const all = telling.flatMap(({ number, alike, swing, doubt: { by } }) =>
    isIssue(by) ? [] : [{ number, alike, swing, by }],
  );
  const found: number[] = [];
  const off: number[] = [];
  for (const [at, deviations] of trials(all.length, TRIALS).entries()) {
    // A doubt is two standard deviations.
    const changes = all.map(({ by, ...point }, i) => movedBy(point, (deviations[i]! * by) / 2)); // one for each
    const by = moved(Object.assign({}, ...changes) as Changes);
    if (by !== null) found.push(by);
    const sum = added(all, deviations);
    off.push(by === null || sum === null ? Infinity : by - sum);
    if (at === HELD - 1 && together(off) < OFF * together(found)) {
      const values = trials(all.length, ADDED).flatMap((one) => added(all, one) ?? []);
      return { values, tried: HELD, silent: 0 };
    }
    yield 1 / 2 + (at + 1) / TRIALS / 2;
  }
  return { values: found, tried: TRIALS, silent: TRIALS - found.length };
}

/** What the numbers move the answer by, each by itself, added up; null where that can't be told of one. */
function added(all: readonly Pick<Weighed, 'swing'>[], deviations: readonly number[]): number | null {
  return all.reduce<number | null>(
    (sum, { swing }, i) => (sum === null || swing === null ? null : sum + along(swing, deviations[i]! / 2)),
    0,
  );
}

type Changes = Readonly<Record<string, number>>;
/** How far the answer goes from where it stands; null where there is none. */
type Move = (changes: Changes) => number | null;

type Point = Pick<Weighed, 'alike' | 'number'>;
type Doubted = Pick<Weighed, 'alike' | 'number' | 'doubt'>;

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

/** Whether it can't go so far to either side. */
const isHeld = ({ number: { quantity, value } }: Point, by: number): boolean =>
  [value - by, value + by].some((to) => withinLimits(quantity, to) !== to);

function movedBy({ number: { quantity, value }, alike }: Point, by: number): Changes {
  const to = withinLimits(quantity, value + by);
  return Object.fromEntries([quantity.name, ...alike].map((name) => [name, to]));
}

function withinLimits(given: Given, value: number): number {
  const { least, most } = limitsOf(given);
  const held = Math.min(Math.max(value, least), most);
  return given.kind === 'count' ? Math.round(held) : held;
}
