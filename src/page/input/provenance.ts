/** Where a value comes from, with a jump to it and a way back to the link. */
import { useState } from 'preact/hooks';
import type { VNode } from 'preact';
import type { Given } from '../../boat';
import { sayOf, useBench } from '../bench';
import { html, use } from '../html';
import { inShortWithin } from '../words';
import { departure, giverOf } from './owner';

export interface ProvenanceProps {
  /** What the field writes. */
  readonly name: string;
  /** The input that it stands for, in a cell that shows a number of the boat's. */
  readonly place: string;
  readonly hint?: string;
  /** Asks for a field of what is measured; left out where there is one already, or nothing to measure. */
  readonly measure?: () => void;
}

export function Provenance({ measure, hint, name, place }: ProvenanceProps) {
  const bench = useBench();
  const { book } = bench;
  const graph = book.inHand.value;
  const quantity = graph.quantity(name) as Given;
  const words = quantity.kind === 'choice' ? 'used another' : 'measured';
  const depart = (event: Event) => {
    keepFocus(event);
    book.write({ [place]: departure(graph, quantity, bench) });
    book.settle();
  };
  return html`<p class="from">
    ${use(Origin, { name, place })}
    ${hint === undefined ? null : html` <span class="hint">· ${hint}</span>`}
    ${measure ? rowKey(words, `${words}: ${quantity.meaning}`, measure) : null}
    ${place === name ? null : rowKey('only here', `only here: ${quantity.meaning}`, depart)}
  </p>`;
}

const rowKey = (words: string, label: string, act: (event: Event) => void) =>
  html` <span class="row-key">· <button type="button" tabindex="-1" data-row-key class=${words === 'only here' ? 'depart-key' : 'measure-key'} aria-label=${label} onClick=${act}>${words}</button></span>`;

/** A key that goes away leaves the focus with the row's field. */
function keepFocus(event: Event): void {
  const row = (event.currentTarget as HTMLElement).closest('.input');
  row?.querySelector<HTMLElement>('input, select')?.focus();
}

function Origin({ name, place }: Pick<ProvenanceProps, 'name' | 'place'>): VNode | null {
  const bench = useBench();
  const { book } = bench;
  const graph = book.inHand.value;
  const entry = graph.entry(name);
  if (!entry) return null;
  const [cell = ''] = place.split('.');
  const jump = (to: string, words = inShortWithin(bench, to, cell)) =>
    html`<button type="button" tabindex="-1" data-row-key class="jump" onClick=${() => bench.goTo(to)}>${words}</button>`;
  const jumps = entry.names.map((from, index) => [index > 0 ? ' and ' : '', jump(from)]);
  const restore = (words: string) => {
    const act = (event: Event) => {
      keepFocus(event);
      book.write({ [name]: null });
      book.settle();
    };
    return html`<button type="button" tabindex="-1" data-row-key class="jump" onClick=${act}>${words}</button>`;
  };
  const written = entry.names.length > 0 ? ['written, from ', jumps] : 'written';
  if (place !== name) {
    // The boat's own field, wherever it is shown.
    // What it is of the shop's, the field's own label says.
    const whose = name.startsWith('shop.') ? jump(name, 'the shop’s') : ['the boat’s ', jump(name)];
    if (entry.written) return html`<span>${whose}, ${written} · ${restore('clear')}</span>`;
    return html`<span>${whose}${entry.names.length > 0 ? [', from ', jumps] : null}</span>`;
  }
  const giver = giverOf(graph, name);
  if (entry.written && giver !== undefined) {
    const value = sayOf(graph, giver, graph.value(giver), bench.shown.value);
    return html`<span>
      only here${entry.names.length > 0 ? [', from ', jumps] : null} · ${jump(giver)} is ${value} · ${restore('back to it')}
    </span>`;
  }
  if (entry.written) return html`<span>${written} here · ${restore('clear')}</span>`;
  if (entry.names.length > 0) return html`<span>from ${jumps}</span>`;
  const { kind, source: note = '' } = graph.quantity(name) ?? {};
  // Of an answer to a choice it goes without saying.
  return use(UsualValue, { note, word: kind === 'choice' ? '' : 'usual value' });
}

/** A longer note than this shows its beginning only, until the rest is asked for. */
const LONGEST = 44;

function UsualValue({ note, word }: { note: string; word: string }): VNode | null {
  const [whole, setWhole] = useState(false);
  const head = beginning(note);
  if (note === '') return word ? html`<span>${word}</span>` : null;
  const before = word ? `${word} · ` : '';
  if (head === note) return html`<span>${before}${note}</span>`;
  return html`<span>
    ${before}${whole ? note : `${head} … `}
    <button type="button" tabindex="-1" data-row-key class="jump" aria-expanded=${whole} onClick=${() => setWhole(!whole)}>${whole ? 'less' : 'more'}</button>
  </span>`;
}

/** The first clause of a note that is too long for a line or two, else as many whole words as fit. */
export function beginning(note: string): string {
  if (note.length <= LONGEST) return note;
  const [clause] = /^.{20,}?(?<!\bNo)(?=[.;:] )/.exec(note.slice(0, LONGEST + 2)) ?? [];
  return clause ?? note.slice(0, LONGEST).replace(/[\s,.;:(]+\S*$/, '');
}
