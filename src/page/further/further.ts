/** What can be asked further of a cell, each by one key; what is open stands below the keys. */
import { useState } from 'preact/hooks';
import type { Instance } from '../../cells';
import { sweepIn } from '../../notebook/sweep/write-sweep';
import { useBench } from '../bench';
import { html, use } from '../html';
import { later } from '../later';
import { firstAsked } from './asked-of';
import { BackwardsAsked } from './backwards-asked';
import { draw, SweepAsked } from './sweep-asked';
import './further.css';

const Matters = later(async () => (await import('../matters/matters')).Matters, 'matters');

export function Further({ instance }: { instance: Instance }) {
  const bench = useBench();
  const { book } = bench;
  const [isBackwards, turnBack] = useState(false);
  const [isWeighed, weigh] = useState(false);
  const isDrawn = sweepIn(book.state.value, instance.name) !== null;
  const first = firstAsked(instance, book.first.value);
  if (!first && !isDrawn)
    return html`<p>No number of this cell can be asked further: none has a value, or none hangs on a number that can be changed.</p>`;
  const begin = () =>
    first &&
    draw(bench, instance, { result: first.result, against: first.on, from: '', to: '', lines: '', at: '' });
  return html`<div class="further-asked">
    <div class="further-keys">
      <button type="button" aria-expanded=${isDrawn} onClick=${() => (isDrawn ? draw(bench, instance, null) : begin())}>
        Draw it against a number
      </button>
      <button type="button" aria-expanded=${isBackwards} onClick=${() => turnBack(!isBackwards)}>Work backwards</button>
      <button type="button" aria-expanded=${isWeighed} onClick=${() => weigh(!isWeighed)}>What matters</button>
    </div>
    ${isDrawn ? use(SweepAsked, { instance }) : null}
    ${isBackwards ? use(BackwardsAsked, { instance }) : null}
    ${isWeighed ? use(Matters, { instance }) : null}
  </div>`;
}
