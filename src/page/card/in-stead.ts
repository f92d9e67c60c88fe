/** What goes on paper in the page's stead, while the print dialog is open. The page itself is not touched. */
import '../style/card.css';
import { render } from 'preact';

/** Takes what was printed last away; none while there is none. */
let away: (() => void) | null = null;

/** When printing is over; a browser that does not say so is seen to be done at the next thing that is done. */
const OVER = ['afterprint', 'pointerdown', 'keydown'] as const;
const putAway = () => away?.();

/** Clears the place, and lays an empty one beside the page, out of sight. */
export function clearPlace(className: string): HTMLElement {
  putAway();
  const place = document.createElement('div');
  place.className = className;
  place.ariaHidden = 'true';
  document.body.append(place);
  return place;
}

/**
 * Opens the print dialog on what stands in the place.
 * @param what the root is marked with while it stands
 * @param fileName a name to print to a file under
 */
export function printInStead(place: HTMLElement, what: string, fileName: string): void {
  const root = document.documentElement;
  const title = document.title;
  const focused = document.activeElement;
  root.dataset['card'] = what;
  document.title = fileName;
  away = () => {
    for (const event of OVER) removeEventListener(event, putAway, true);
    away = null;
    if (document.title === fileName) document.title = title;
    delete root.dataset['card'];
    render(null, place);
    place.remove();
    // What is hidden while printing may lose the focus by it.
    if (focused instanceof HTMLElement && document.activeElement === document.body)
      focused.focus({ preventScroll: true });
  };
  for (const event of OVER) addEventListener(event, putAway, true);
  print();
}
