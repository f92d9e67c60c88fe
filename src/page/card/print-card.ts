/**
 * Prints one cell by itself: the card is composed beside the page, out of sight, and stands in the
 * page's stead on paper while the print dialog is open. The page itself is not touched.
 */
import type { Instance } from '../../cells';
import type { Bench } from '../bench';
import { fetchTheRest } from '../library';
import { cardOf } from './card';
import { cardPictures } from './card-picture';
import { fitCard } from './fit-card';
import { clearPlace, printInStead } from './in-stead';
import { leavesOf } from './leaf';

/** The cuts that a card and its pictures are set in. */
const LETTERS = ["400 14pt 'Source Sans 3'", "600 14pt 'Source Sans 3'", "600 18pt 'Source Serif 4'"];

/** Resolves once the print dialog has been asked for. */
export async function printCard(instance: Instance, bench: Bench): Promise<void> {
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

  const place = clearPlace('card');
  // With its own letters the card is measured as it will be printed; without a network with those there are.
  await Promise.allSettled(LETTERS.map((cut) => document.fonts.load(cut)));
  fitCard(card, pictures, noPicture, place, leaves);
  printInStead(place, instance.name, card.fileName);
}
