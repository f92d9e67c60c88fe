/**
 * Prints one cell by itself: the card is composed beside the page, out of sight, and stands in the
 * page's stead on paper while the print dialog is open. The page itself is not touched.
 */
import '../style/card.css';
import { render } from 'preact';
import type { Instance } from '../../cells';
import type { Bench } from '../bench';
import { fetchTheRest } from '../library';
import { cardOf } from './card';
import { cardPictures } from './card-picture';
import { fitCard } from './fit-card';
import { leavesOf } from './leaf';

/** Takes the last card away; none while there is none. */
let away: (() => void) | null = null;

/** The cuts that a card and its pictures are set in. */
const LETTERS = ["400 14pt 'Source Sans 3'", "600 14pt 'Source Sans 3'", "600 18pt 'Source Serif 4'"];

/** Resolves once the print dialog has been asked for. */
export async function printCard(instance: Instance, bench: Bench): Promise<void> {
  away?.();
  // Links lead to cells of other notebooks too; without a network what has come must do.
  await fetchTheRest().catch(() => undefined);
  const pictures = await cardPictures(instance, bench);
  const all = cardOf(instance, bench);
  const leaves = leavesOf(instance, bench, all.table);
  // What has a page of its own has its rows there.
  const card = leaves.length > 0 ? { ...all, table: null } : all;
  const { cell } = instance;
  const noPicture =
    pictures.length === 0 && (cell.draw || cell.chart) ? 'The drawing waits for the numbers it needs.' : '';

  const place = document.createElement('div');
  place.className = 'card';
  place.ariaHidden = 'true';
  document.body.append(place);
  // With its own letters the card is measured as it will be printed; without a network with those there are.
  await Promise.allSettled(LETTERS.map((cut) => document.fonts.load(cut)));
  fitCard(card, pictures, noPicture, place, leaves);

  const root = document.documentElement;
  const title = document.title;
  const focused = document.activeElement;
  root.dataset['card'] = instance.name;
  document.title = card.fileName;
  away = () => {
    for (const event of OVER) removeEventListener(event, putAway, true);
    away = null;
    if (document.title === card.fileName) document.title = title;
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

/** When printing is over; a browser that does not say so is seen to be done at the next thing that is done. */
const OVER = ['afterprint', 'pointerdown', 'keydown'] as const;
const putAway = () => away?.();
