/** Where a value comes from, with a jump to it and a way back to the link. */
import { useState } from 'preact/hooks';
import type { VNode } from 'preact';
import { useBench } from '../bench';
import { html, use } from '../html';
import { inShortWithin } from '../words';

export function Provenance({ name, usual }: { name: string; usual?: string }) {
  const bench = useBench();
  const { book } = bench;
  const graph = book.inHand.value;
  const entry = graph.entry(name);
  if (!entry) return null;
  const [cell = ''] = name.split('.');
  const jumps = entry.names.map((from, index) => [
    index > 0 ? ' and ' : '',
    html`<button type="button" class="jump" onClick=${() => bench.goTo(from)}>${inShortWithin(bench, from, cell)}</button>`,
  ]);
  if (entry.written) {
    const restore = (event: Event) => {
      // The key goes with the entry; the focus stays with the field.
      const row = (event.currentTarget as HTMLElement).closest('.input');
      row?.querySelector<HTMLElement>('input, select')?.focus();
      book.write({ [name]: null });
      book.settle();
    };
    return html`<p class="from">
      ${entry.names.length > 0 ? ['written here, from ', jumps] : 'written here'} ·
      <button type="button" class="jump" onClick=${restore}>clear</button>
    </p>`;
  }
  if (entry.names.length > 0) return html`<p class="from">from ${jumps}</p>`;
  if (usual !== undefined) return html`<p class="from">${usual}</p>`;
  return use(UsualValue, { note: graph.quantity(name)?.source ?? '' });
}

/** A longer note than this shows its beginning only, until the rest is asked for. */
const LONGEST = 44;

function UsualValue({ note }: { note: string }): VNode {
  const [whole, setWhole] = useState(false);
  const head = beginning(note);
  if (note === '') return html`<p class="from">usual value</p>`;
  if (head === note) return html`<p class="from">usual value · ${note}</p>`;
  return html`<p class="from">
    usual value · ${whole ? note : `${head} … `}
    <button type="button" class="jump" aria-expanded=${whole} onClick=${() => setWhole(!whole)}>${whole ? 'less' : 'more'}</button>
  </p>`;
}

/** The first clause of a note that is too long for a line or two, else as many whole words as fit. */
export function beginning(note: string): string {
  if (note.length <= LONGEST) return note;
  const [clause] = /^.{20,}?(?=[.;:] )/.exec(note.slice(0, LONGEST + 2)) ?? [];
  return clause ?? note.slice(0, LONGEST).replace(/[\s,.;:(]+\S*$/, '');
}
