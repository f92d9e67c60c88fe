/** The key that puts a set of changes beside the version kept, and puts them away again. */
import { useBench } from '../bench';
import { html } from '../html';

export function TryKey({ changes, what }: { changes: Readonly<Record<string, string>>; what: string }) {
  const { book } = useBench();
  const { second } = book.state.value;
  const looking = second !== null && Object.entries(changes).every(([name, text]) => second[name] === text);
  return looking
    ? html`<button type="button" aria-label=${`Put it away again: ${what}`} onClick=${() => book.keepOnly('first')}>Put it away again</button>`
    : html`<button type="button" aria-label=${`Look at it beside the first: ${what}`} onClick=${() => book.tryAnother(changes)}>Look at it beside the first</button>`;
}
