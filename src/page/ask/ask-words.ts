/** Answers and guesses in words. */
import { type Issue, isIssue } from '../../measure';
import type { VNode } from 'preact';
import type { AskPlace, Block, Graph } from '../../notebook';
import type { Shown } from '../../measure';
import { directionWords } from '../../notebook/lesson/judge';
import type { Key } from '../../notebook/lesson/key';
import { sayOf, sayValue } from '../bench';
import { capital } from '../words';

export interface AskProps {
  readonly ask: AskPlace;
  /** What shows the text in it, and the id of its notebook. */
  readonly showing: { readonly notebook: string; readonly blocks: (inside: readonly Block[]) => VNode[] };
}

/** What it comes to: `144 mm`, `douglas fir`; of words there is none but the writer's own. */
export function keyWords(key: Key | Issue, graph: Graph, shown: Shown): string {
  if (isIssue(key)) return `(${key.issue})`;
  switch (key.is) {
    case 'words':
      return '';
    case 'direction':
      return directionWords[key.so].toLowerCase();
    case 'choice':
      return sayOf(graph, key.of, key.id, shown);
    case 'number':
      return key.of === undefined
        ? (key.text ?? sayValue(key.value, key.kind, shown))
        : sayOf(graph, key.of, key.value, shown);
  }
}

/** The same as a sentence: `It is 144 mm.`, `It rises.` */
export function answerWords(key: Key | Issue, graph: Graph, shown: Shown): string {
  if (isIssue(key)) return `${capital(key.issue)}.`;
  if (key.is === 'words') return '';
  return key.is === 'direction' ? `${directionWords[key.so]}.` : `It is ${keyWords(key, graph, shown)}.`;
}

/** A guess as it is told again: of a choice its words, else as it was typed. */
export function guessWords(text: string, key: Key | Issue, graph: Graph, shown: Shown): string {
  if (isIssue(key)) return text;
  if (key.is === 'choice') return sayOf(graph, key.of, text, shown);
  if (key.is !== 'direction') return text;
  const words = Object.entries(directionWords).find(([so]) => so === text)?.[1];
  return words ? words.toLowerCase() : text;
}
