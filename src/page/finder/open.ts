/** Opens the finder over the page, and takes it away when it is closed; the focus goes back to where it was. */
import { render } from 'preact';
import { type Bench, BenchContext } from '../bench';
import { use } from '../html';
import { fetchTheRest } from '../library';
import { Finder } from './finder';

let host: HTMLElement | null = null;

export function open(bench: Bench): void {
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
  render(use(BenchContext.Provider, { value: bench }, use(Finder, { onClose: close })), place);
}
