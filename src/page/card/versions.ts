/** The versions on the bench, and a text of each: one text where they say the same. */
import type { VNode } from 'preact';
import type { Graph, Version } from '../../notebook';
import type { Value } from '../../boat';
import { type Bench, sayOf, versionWords } from '../bench';
import { html } from '../html';

/** A text, and whose it is: the word is empty where it holds for both versions, or for the only one. */
export interface Said {
  readonly version: Version;
  readonly word: string;
  readonly text: string;
}

export type Versions = readonly (readonly [Version, Graph])[];

export function graphsOf({ book }: Bench): Versions {
  const second = book.second.value;
  return [['first', book.first.value] as const, ...(second ? [['second', second] as const] : [])];
}

export function inEach(versions: Versions, say: (graph: Graph) => string): Said[] {
  const said = versions.map(([version, graph]) => ({
    version,
    word: versionWords[version],
    text: say(graph),
  }));
  const [first, second] = said;
  return first && (!second || second.text === first.text) ? [{ ...first, word: '' }] : said;
}

/** Sentences of each version; those that end both alike are said once, after them. */
export function sentencesInEach(versions: Versions, say: (graph: Graph) => string): Said[] {
  const said = inEach(versions, say);
  const [first, second] = said.map(({ text }) => text.split(END_OF_SENTENCE));
  if (!first || !second) return said;
  const alike = alikeFromTheEnd(first, second);
  if (alike === 0) return said;
  return [
    ...said.map((one) => ({ ...one, text: one.text.split(END_OF_SENTENCE).slice(0, -alike).join(' ') })),
    { version: 'first' as const, word: '', text: first.slice(-alike).join(' ') },
  ].filter(({ text }) => text !== '');
}

const END_OF_SENTENCE = /(?<=[.?!]) (?=\p{Lu})/u;

function alikeFromTheEnd(first: readonly string[], second: readonly string[]): number {
  const most = Math.min(first.length, second.length);
  for (let count = 0; count < most; count += 1)
    if (first.at(-1 - count) !== second.at(-1 - count)) return count;
  return most;
}

/** A version's word before its text, where there are two. */
export const headed = ({ word, text }: Said): string | readonly (VNode | string)[] =>
  word ? [html`<em>${word}: </em>`, text] : text;

/** A value as it stands in a running line or a narrow column: a number does not part from its unit. */
export function tiedValue(value: Value, name: string, graph: Graph, bench: Bench): string {
  const text = sayOf(graph, name, value, bench.shown.value);
  return typeof value === 'number' ? text.replaceAll(' ', '\u00a0') : text;
}
