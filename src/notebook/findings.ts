/**
 * What searches have found: the best answer so far to each problem, by the problem's own text. So an answer
 * stands as long as its problem does, comes back when an edit is undone, and never passes for that of another.
 */
import { signal, type Signal } from '@preact/signals-core';
import type { Found } from '../boat';

export interface Findings {
  /** Tracked: whoever asks is woken when a better answer comes. */
  readonly found: Found;
  keep(problem: string, answer: unknown): void;
}

export function createFindings(): Findings {
  const answers = new Map<string, Signal<unknown>>();
  const answerTo = (problem: string): Signal<unknown> => {
    const known = answers.get(problem);
    if (known) return known;
    const made = signal<unknown>(null);
    answers.set(problem, made);
    return made;
  };
  return {
    found: (problem) => answerTo(problem).value,
    keep: (problem, answer) => {
      answerTo(problem).value = answer;
    },
  };
}
