/** What a class handed in, as rows: name, numbers, and for each question the guesses, what the last is worth, and the sentence. */
import { signal } from '@preact/signals-core';
import { type Issue, isIssue, type Shown } from '../../measure';
import { nothingSaid } from '../../boat';
import type { Graph } from '../graph/graph';
import type { AskPlace, SeedPlace } from '../text/page-text';
import { draw } from './draw';
import type { HandedIn } from './hand-in';
import { directionWords, judge, type Worth } from './judge';
import { type Key, keyTo } from './key';

export interface ClassCell {
  readonly guesses: readonly string[];
  readonly final: string;
  /** `right`, `too high` and so on; empty where nothing was guessed or nobody but a reader judges. */
  readonly worth: string;
  readonly sentence: string;
}
export interface ClassRow {
  readonly name: string;
  readonly seed: string;
  readonly cells: readonly ClassCell[];
}

const worthWords: Readonly<Record<Worth['is'], string>> = {
  right: 'right',
  high: 'too high',
  low: 'too low',
  other: 'not so',
  open: '',
  unread: '',
};

/** The notebook as it comes, under the numbers that a word draws; with no word, its own. */
export function underWord(
  word: string,
  seed: SeedPlace | undefined,
  asks: readonly AskPlace[],
  graph: Graph,
): Graph | Issue {
  if (!seed) return graph;
  const changes =
    word === '' ? Object.fromEntries(seed.may.map(({ of }) => [of, null])) : draw(word, seed, asks, graph);
  if (isIssue(changes)) return changes;
  const fixed = signal(changes);
  return graph.with(() => fixed.value);
}

export function classRow(
  { name, lesson }: HandedIn,
  asks: readonly AskPlace[],
  seed: SeedPlace | undefined,
  graph: Graph,
  shown: Shown,
): ClassRow {
  const under = underWord(lesson.seed, seed, asks, graph);
  return {
    name,
    seed: lesson.seed,
    cells: asks.map((ask) => {
      const said = (Object.hasOwn(lesson.said, ask.name) ? lesson.said[ask.name] : undefined) ?? nothingSaid;
      const key = isIssue(under) ? under : keyTo(ask.answer, under);
      const final = said.guesses.at(-1) ?? '';
      const { is } = final === '' || isIssue(key) ? NOT : judge(final, key, ask.within, shown);
      return {
        guesses: said.guesses.map((text) => wordsOf(text, key)),
        final: wordsOf(final, key),
        worth: worthWords[is],
        sentence: said.sentence,
      };
    }),
  };
}

const NOT: Pick<Worth, 'is'> = { is: 'unread' };

function wordsOf(text: string, key: Key | Issue): string {
  if (isIssue(key) || key.is !== 'direction') return text;
  return (
    Object.entries(directionWords)
      .find(([so]) => so === text)?.[1]
      .toLowerCase() ?? text
  );
}

/** For a spreadsheet, head first. What a spreadsheet would work out as a formula is kept as text. */
export function classRows(rows: readonly ClassRow[], asks: readonly AskPlace[]): readonly string[][] {
  return [
    [
      'name',
      'numbers',
      ...asks.flatMap(({ name }) => [
        `${name}: guesses`,
        `${name}: final`,
        `${name}: worth`,
        `${name}: sentence`,
      ]),
    ],
    ...rows.map(({ name, seed, cells }) => [
      plain(name),
      plain(seed),
      ...cells.flatMap(({ guesses, final, worth, sentence }) =>
        [guesses.join(', then '), final, worth, sentence].map(plain),
      ),
    ]),
  ];
}

const plain = (text: string): string =>
  /^\s*[=+@\-\t\r]/.test(text) && !BELOW_ZERO.test(text) ? `'${text}` : text;

/** A number below zero with its unit, and no more: `-3`, `-50 mm`, `-1/4 in`. */
const BELOW_ZERO = /^-[\d.,/ ]+[\p{Letter}°%"'/²³·]*$/u;
