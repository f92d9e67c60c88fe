/** Opens a finder over the page, and takes it away when it is closed; the focus goes back to where it was. */
import { render } from 'preact';
import { type Bench, BenchContext } from '../bench';
import { use } from '../html';
import { fetchTheRest } from '../library';
import { type FinderFor, Finder } from './finder';
import { goTo } from './go';
import { keepFound } from './kept';
import { firstOffered, indexNow } from './on-hand';
import type { Listed } from './search';
import type { Thing } from './things';

let host: HTMLElement | null = null;

export function openAsking<T extends Listed>(bench: Bench, asking: FinderFor<T>): void {
  if (host) return;
  // What is not there yet is found as soon as it comes.
  void fetchTheRest();
  const place = document.createElement('div');
  host = place;
  document.body.append(place);
  const close = () => {
    render(null, place);
    place.remove();
    host = null;
  };
  render(use(BenchContext.Provider, { value: bench }, use(Finder<T>, { asking, onClose: close })), place);
}

/** Everything that has a place in the page. */
const everything: FinderFor<Thing> = {
  called: 'Find',
  field: 'A word of the trade, a question, a field',
  atFirst: 'Found last, and the notebooks',
  example: 'scarf, glue, radius …',
  index: indexNow,
  first: firstOffered,
  take: (thing, bench) => {
    keepFound(bench.shelf, thing);
    goTo(thing, bench);
  },
};

export const open = (bench: Bench): void => openAsking(bench, everything);
