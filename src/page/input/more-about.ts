/** What a field's own key opens under its line: where the number comes from, what may be done about it, steps and slider. */
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Given } from '../../boat';
import { useBench } from '../bench';
import { html, use } from '../html';
import { capital } from '../words';
import { departure } from './owner';
import { focusField } from './row-keys';
import { Steps } from './steps';
import type { Piece, Whence } from './whence';

export interface MoreAboutProps {
  /** What the field writes. */
  readonly name: string;
  /** The input that it stands for, in a cell that shows a number of the boat's. */
  readonly place: string;
  readonly from: Whence;
  /** Offers a slider between the quantity's limits. */
  readonly slider: boolean;
  /** What to measure where, for this work. */
  readonly hint?: string;
  /** Asks for a field of what is measured; left out where there is one already, or nothing to measure. */
  readonly measure?: () => void;
  /** Whether it takes the focus when it comes. */
  readonly enter: boolean;
  readonly close: () => void;
}

export function MoreAbout({ name, place, from, slider, hint, measure, enter, close }: MoreAboutProps) {
  const bench = useBench();
  const { book } = bench;
  const part = useRef<HTMLDivElement>(null);
  const quantity = book.inHand.value.quantity(name) as Given;
  const { kind, source = '', meaning } = quantity;
  useLayoutEffect(() => {
    if (enter) part.current?.querySelector<HTMLElement>('button')?.focus();
  }, []);
  const depart = () => book.write({ [place]: departure(book.inHand.peek(), quantity, bench) });
  const words = kind === 'choice' ? 'Used another' : 'Measured';
  return html`<div class="more-about" ref=${part}>
    ${from.pieces.length > 0 ? html`<p>${from.pieces.map(said)}.</p>` : null}
    ${source === '' ? null : html`<p>${capital(source)}.</p>`}
    ${hint === undefined ? null : html`<p class="hint">${capital(hint)}.</p>`}
    <div class="row-keys">
      ${from.back === undefined ? null : key(from.back, 'back-key', () => book.write({ [name]: null }))}
      ${measure ? key(words, 'measure-key', measure) : null}
      ${place === name ? null : key('Only here', 'depart-key', depart)}
      ${kind === 'choice' ? null : use(Steps, { quantity, slider })}
    </div>
  </div>`;

  function key(label: string, className: string, write: () => void) {
    const act = (event: Event) => {
      focusField(event);
      write();
      book.settle();
      close();
    };
    return html`<button type="button" data-row-key class=${className} aria-label=${`${label}: ${meaning}`} onClick=${act}>${label}</button>`;
  }

  function said(piece: Piece, index: number) {
    if (typeof piece === 'string') return index === 0 ? capital(piece) : piece;
    const words = index === 0 ? capital(piece.words) : piece.words;
    return html`<button type="button" data-row-key class="jump" onClick=${() => bench.goTo(piece.to)}>${words}</button>`;
  }
}
