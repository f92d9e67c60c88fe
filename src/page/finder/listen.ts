/** The ways to the finder: its key in the head, `/` and Ctrl-K. The finder itself is fetched when one of them is taken. */
import type { Bench } from '../bench';

export function openFinder(bench: Bench): void {
  import('./open').then(
    ({ open }) => open(bench),
    () => {
      bench.notice.value = { says: 'The finder did not arrive. Load the page again when you are online.' };
    },
  );
}

/** A slash within a field is the stroke of a fraction. */
export function listenForFinder(bench: Bench): void {
  addEventListener('keydown', (event) => {
    const { key, target } = event;
    const withKey = event.ctrlKey || event.metaKey;
    const isAsked = withKey ? key.toLowerCase() === 'k' && !event.altKey && !event.shiftKey : key === '/';
    const inField = target instanceof Element && target.matches('input, select, textarea');
    if (!isAsked || (inField && !withKey)) return;
    event.preventDefault();
    openFinder(bench);
  });
}
