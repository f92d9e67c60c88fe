/** Beside what stops: a key for what the cell would turn to at once, and one to the changes that take room. */
import { useRef } from 'preact/hooks';
import type { Instance, Offer } from '../../cells';
import { putBefore } from '../../measure';
import { type Bench, useBench } from '../bench';
import { html, use } from '../html';
import { useLive } from '../picture/live';
import { offersOf, offersPlace } from './offers';

export function OfferKeys({ instance }: { instance: Instance }) {
  const host = useRef<HTMLDivElement>(null);
  const bench = useBench();
  const made = useLive(host, bench, () => keysOf(instance, bench), { atOnce: true });
  return html`<div class="offer-keys" ref=${host}>${made}</div>`;
}

function keysOf(instance: Instance, bench: Bench) {
  const offers = offersOf(instance, bench);
  const turning = offers.filter(({ turns }) => turns !== undefined);
  const others = offers.length - turning.length;
  return html`<div>
    ${turning.map(({ turns, label, changes }) => use(TurnKey, { words: turns!, what: label, changes }))}
    ${
      others > 0
        ? html`<button type="button" class="quiet" onClick=${() => show(instance)}>
            ${others === 1 ? 'A change to try' : `${others} changes to try`}…
          </button>`
        : null
    }
  </div>`;
}

/** Opens them where they stand, and goes there. */
function show({ name }: Instance): void {
  const place = document.getElementById(offersPlace(name));
  if (!(place instanceof HTMLDetailsElement)) return;
  place.open = true;
  place.querySelector('summary')?.focus();
}

interface TurnKeyProps {
  readonly words: string;
  readonly what: string;
  readonly changes: Offer['changes'];
}

/** Turns the cell to something else, at once. */
function TurnKey({ words, what, changes }: TurnKeyProps) {
  const { book } = useBench();
  const turn = () => {
    book.write(changes);
    book.settle();
  };
  return html`<p class="turn-to">${putBefore(what)} <button type="button" aria-label=${`${words}: ${what}`} onClick=${turn}>${words}</button></p>`;
}
