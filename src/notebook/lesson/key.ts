/** The key to a question: what its answer is on the boat in hand. */
import {
  type Issue,
  isIssue,
  issue,
  type KindId,
  plainShown,
  read,
  type Shown,
  wrongSort,
} from '../../measure';
import type { Graph } from '../graph/graph';
import type { AskAnswer, Direction } from '../text/page-text';

export type Key =
  | {
      readonly is: 'number';
      readonly value: number;
      readonly kind: KindId;
      /** The quantity's name; undefined where the writer gave the number, whose text then stands beside it. */
      readonly of?: string;
      readonly text?: string;
    }
  /** One of the answers to a choice, by its short name. */
  | { readonly is: 'choice'; readonly id: string; readonly of: string }
  | { readonly is: 'direction'; readonly so: Direction }
  | { readonly is: 'words' };

/** Two values nearer than this share of the first are one: sums of numbers come out so far apart. */
const SAME = 1e-6;

/** What is asked in inches is answered in inches, whatever units the learner has chosen; a quantity goes by the learner's. */
export function unitsOf(key: Key, shown: Shown): Shown {
  if (key.is !== 'number' || key.text === undefined) return shown;
  if (/["']|\b(in|ft|inch|inches|feet|lb|lbs|oz|°F)\b/.test(key.text))
    return { ...shown, length: 'feet', mass: 'lb' };
  return { ...shown, length: 'mm', mass: 'kg' };
}

/** The unit that the writer gave a number, which a bare guess takes; undefined for the learner's own. */
export const unitOf = (key: Key): string | undefined =>
  key.is === 'number'
    ? /(?:^|[\d\s])(mm|cm|m|in|ft|kg|g|lb|oz|min|h|°C|°F|%)$/.exec(key.text ?? '')?.[1]
    : undefined;

/** @param graph tracked */
export function keyTo(answer: AskAnswer, graph: Graph): Key | Issue {
  switch (answer.is) {
    case 'words':
      return { is: 'words' };
    case 'direction':
      return { is: 'direction', so: answer.so };
    case 'literal':
      return literal(answer.text, answer.kind);
    case 'quantity':
      return quantity(answer.of, graph);
    case 'moves':
      return direction(answer.of, answer.changes, graph);
  }
}

function literal(text: string, kind: KindId): Key | Issue {
  const reading = read(text, { kind, shown: plainShown, field: 'the answer' });
  if (isIssue(reading)) return reading;
  const value = reading.evaluate(() => issue('the answer stands by itself'));
  return isIssue(value) ? value : { is: 'number', value, kind, text };
}

function quantity(of: string, graph: Graph): Key | Issue {
  const found = graph.quantity(of);
  if (!found) return issue(`there is no quantity "${of}"`);
  const value = graph.value(of);
  if (isIssue(value)) return value;
  return typeof value === 'number'
    ? { is: 'number', value, kind: found.kind, of }
    : { is: 'choice', id: value, of };
}

function direction(of: string, changes: Readonly<Record<string, string>>, graph: Graph): Key | Issue {
  const found = graph.quantity(of);
  if (!found) return issue(`there is no quantity "${of}"`);
  const lost = Object.keys(changes).find((name) => !graph.entry(name));
  if (lost !== undefined) return issue(`there is nothing to write under "${lost}"`);
  const before = graph.value(of);
  const after = graph.with(() => changes).value(of);
  if (isIssue(before)) return before;
  if (isIssue(after)) return after;
  if (typeof before === 'string' || typeof after === 'string')
    return issue(wrongSort(of, 'choice', found.meaning));
  const apart = after - before;
  const least = SAME * Math.max(Math.abs(before), Math.abs(after));
  return { is: 'direction', so: Math.abs(apart) <= least ? 'stays' : apart > 0 ? 'rises' : 'falls' };
}
