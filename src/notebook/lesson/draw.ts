/** A boat for each: numbers drawn by a word, the same each time, within what keeps the questions good. */
import { signal } from '@preact/signals-core';
import { generator, numberOfWord } from '../../kernel';
import {
  type Issue,
  isIssue,
  issue,
  type KindId,
  plainShown,
  read,
  type Shown,
  writeExact,
} from '../../measure';
import type { Graph } from '../graph/graph';
import type { AskPlace, SeedChange, SeedPlace } from '../text/page-text';
import { holds } from '../text/holds';
import { keyTo } from './key';

/** Draws that are tried before it is said that none keeps the questions good. */
const MOST_DRAWS = 500;
/** Numbers that one line may run through. */
const MOST_STEPS = 10_000;

/** The same word however it is typed: `Anna `, `anna`. */
export const plainWord = (word: string): string =>
  word.normalize('NFKC').trim().replaceAll(/\s+/g, ' ').toLowerCase();

/**
 * Entries by their names. What is drawn keeps the limits of its fields and the conditions of the block, and every
 * question has an answer. One word gives the same numbers on every boat that lets them pass.
 * @param graph the notebook as it comes
 */
export function draw(
  word: string,
  { may, keep }: SeedPlace,
  asks: readonly AskPlace[],
  graph: Graph,
): Readonly<Record<string, string>> | Issue {
  const lists = may.map((change) => [change.of, entriesOf(change, graph)] as const);
  for (const [, list] of lists) if (isIssue(list)) return list;
  const supposed = signal<Readonly<Record<string, string>>>({});
  const under = graph.with(() => supposed.value);
  const next = generator(numberOfWord(plainWord(word)));
  for (let count = 0; count < MOST_DRAWS; count += 1) {
    const drawn = lists.map(([of, list]): [string, string] => {
      const all = isIssue(list) ? [] : list;
      return [of, all[Math.floor(next() * all.length)]!]; // none is empty
    });
    supposed.value = Object.fromEntries(drawn);
    const isOdd = (name: string) => isIssue(under.value(name));
    if (may.some(({ of }) => isOdd(of)) || asks.some(({ answer }) => isIssue(keyTo(answer, under)))) continue;
    const so = holds(keep, under);
    if (isIssue(so)) return so;
    if (so) return supposed.value;
  }
  return issue('no numbers were found that keep the questions good; let more change, or ask for less');
}

/** All that one line may come to, as entries. */
function entriesOf(change: SeedChange, graph: Graph): readonly string[] | Issue {
  const { of } = change;
  const kind = graph.quantity(of)?.kind;
  if (kind === undefined || !graph.entry(of)) return issue(`there is nothing to write under "${of}"`);
  if ('among' in change) return change.among;
  const ends = [change.first, change.last, change.by].map((text) => valueOf(text, of, kind));
  const odd = ends.find(isIssue);
  if (odd) return odd;
  const [from = 0, to = 0, by = 0] = ends.filter((end) => typeof end === 'number');
  // A step of temperature lies from zero as any other number does; what counts is how far.
  const step = kind === 'temperature' ? by - 273.15 : by;
  const count = Math.floor((to - from) / step + 1e-9);
  if (!(step > 0) || count < 0 || count >= MOST_STEPS)
    return issue(`${of} goes from the smaller number to the larger by steps, ${MOST_STEPS} at most`);
  const shown: Shown = /["']|\b(in|ft|inch|inches|feet)\b/.test(change.by) ? INCHES : plainShown;
  return Array.from({ length: count + 1 }, (_, at) =>
    writeExact(Number((from + at * step).toPrecision(12)), kind, shown),
  );
}

const INCHES: Shown = { ...plainShown, length: 'feet', mass: 'lb' };

function valueOf(text: string, of: string, kind: KindId): number | Issue {
  const reading = read(text, { kind, shown: plainShown, field: of });
  return isIssue(reading) ? reading : reading.evaluate(() => issue(`${of} goes between plain numbers`));
}
