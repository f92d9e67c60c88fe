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

/** A version's word before its text, where there are two. */
export const headed = ({ word, text }: Said): string | readonly (VNode | string)[] =>
  word ? [html`<em>${word}: </em>`, text] : text;

/** A value as it stands in a running line or a narrow column: a number does not part from its unit. */
export function tiedValue(value: Value, name: string, graph: Graph, bench: Bench): string {
  const text = sayOf(graph, name, value, bench.shown.value);
  return typeof value === 'number' ? text.replaceAll(' ', '\u00a0') : text;
}
