/**
 * What searches have found: the best answer so far to each problem, by the problem's own text. So an answer
 * stands as long as its problem does, comes back when an edit is undone, and never passes for that of another.
 */
import { type ReadonlySignal, signal } from '@preact/signals-core';
import type { Found } from '../../boat';

export interface Findings {
  /** Tracked: whoever asks is woken when a better answer comes. */
  readonly found: Found;
  /** Goes up with each answer that is kept. */
  readonly count: ReadonlySignal<number>;
  keep(problem: string, answer: unknown): void;
}

export function createFindings(): Findings {
  const answers = new Map<string, unknown>();
  const count = signal(0);
  return {
    found: (problem) => {
      void count.value;
      return answers.get(problem) ?? null;
    },
    count,
    keep: (problem, answer) => {
      answers.set(problem, answer);
      count.value += 1;
    },
  };
}
