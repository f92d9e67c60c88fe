/** The key that prints a cell by itself; what it needs is fetched when it is pressed. */
import { useState } from 'preact/hooks';
import type { Instance } from '../../cells';
import { wordsOf } from '../../measure';
import { useBench } from '../bench';
import { html } from '../html';

export function CardKey({ instance }: { instance: Instance }) {
  const bench = useBench();
  const [told, tell] = useState('');
  const print = () => {
    tell('');
    import('./print-card')
      .then(({ printCard }) => printCard(instance, bench))
      .catch(() => tell('The card could not be made ready. Load the page again when you are online.'));
  };
  return html`<button type="button" class="quiet" aria-label=${`Shop card: ${wordsOf(instance.name)}`} onClick=${print}>Shop card</button>
    <p role="status">${told}</p>`;
}
