/** The key that puts a set of changes beside the version kept, and puts them away again. */
import { type Bench, useBench } from './bench';
import { html } from './html';

type Changes = Readonly<Record<string, string>>;

/** Whether the version tried has these changes; tracked. */
export function isTried({ book }: Bench, changes: Changes): boolean {
  const { second } = book.state.value;
  return second !== null && Object.entries(changes).every(([name, text]) => second[name] === text);
}

export function TryKey({ changes, what }: { changes: Changes; what: string }) {
  const bench = useBench();
  const { book } = bench;
  return isTried(bench, changes)
    ? html`<button type="button" aria-label=${`Put it away again: ${what}`} onClick=${() => book.keepOnly('first')}>Put it away again</button>`
    : html`<button type="button" aria-label=${`Look at it beside the first: ${what}`} onClick=${() => book.tryAnother(changes)}>Look at it beside the first</button>`;
}
