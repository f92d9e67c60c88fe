/** Where a value comes from, with a jump to it and a way back to the link. */
import { useState } from 'preact/hooks';
import type { VNode } from 'preact';
import { useBench } from '../bench';
import { html, use } from '../html';
import { inShortWithin } from '../words';

export interface ProvenanceProps {
  readonly name: string;
  readonly usual?: string;
  /** Asks for a field of what is measured; left out where there is one already, or nothing to measure. */
  readonly measure?: () => void;
}

export function Provenance({ measure, ...of }: ProvenanceProps) {
  const { book } = useBench();
  const quantity = book.inHand.value.quantity(of.name);
  const words = quantity?.kind === 'choice' ? 'used another' : 'measured';
  return html`<p class="from">
    ${use(Origin, of)}
    ${
      measure
        ? html` <span class="measure-place">· <button type="button" tabindex="-1" data-row-key class="measure-key" aria-label=${`${words}: ${quantity?.meaning ?? of.name}`} onClick=${measure}>${words}</button></span>`
        : null
    }
  </p>`;
}

function Origin({ name, usual }: Omit<ProvenanceProps, 'measure'>): VNode | null {
  const bench = useBench();
  const { book } = bench;
  const graph = book.inHand.value;
  const entry = graph.entry(name);
  if (!entry) return null;
  const [cell = ''] = name.split('.');
  const jumps = entry.names.map((from, index) => [
    index > 0 ? ' and ' : '',
    html`<button type="button" tabindex="-1" data-row-key class="jump" onClick=${() => bench.goTo(from)}>${inShortWithin(bench, from, cell)}</button>`,
  ]);
  if (entry.written) {
    const restore = (event: Event) => {
      // The key goes with the entry; the focus stays with the field.
      const row = (event.currentTarget as HTMLElement).closest('.input');
      row?.querySelector<HTMLElement>('input, select')?.focus();
      book.write({ [name]: null });
      book.settle();
    };
    return html`<span>
      ${entry.names.length > 0 ? ['written here, from ', jumps] : 'written here'} ·
      <button type="button" tabindex="-1" data-row-key class="jump" onClick=${restore}>clear</button>
    </span>`;
  }
  if (entry.names.length > 0) return html`<span>from ${jumps}</span>`;
  if (usual !== undefined) return html`<span>${usual}</span>`;
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
