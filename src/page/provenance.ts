/** Where a value comes from, with a jump to it and a way back to the link. */
import { wordsOf } from '../measure';
import { useBench } from './bench';
import { html } from './html';

export function Provenance({ name, note }: { name: string; note: string }) {
  const { book, goTo } = useBench();
  const entry = book.inHand.value.entry(name);
  if (!entry) return null;
  const jumps = entry.names.map((from, index) => [
    index > 0 ? ' and ' : '',
    html`<button type="button" class="jump" onClick=${() => goTo(from)}>${readable(from)}</button>`,
  ]);
  const restore = () => {
    book.write({ [name]: null });
    book.settle();
  };
  const back = html`<button type="button" class="jump" onClick=${restore}>clear</button>`;
  if (entry.written) {
    return html`<p class="from">
      ${entry.names.length > 0 ? ['written here, from ', jumps] : 'written here'} · ${back}
    </p>`;
  }
  if (entry.names.length > 0) return html`<p class="from">from ${jumps}</p>`;
  return html`<p class="from">${note ? `usual value: ${note}` : 'usual value'}</p>`;
}

/** A dotted name as words: `frame3.chine.planSlope` reads "frame 3, chine: plan slope". */
export function readable(name: string): string {
  const words = name.split('.').map((part) => wordsOf(part));
  const last = words.pop() ?? '';
  return words.length > 0 ? `${words.join(', ')}: ${last}` : last;
}
