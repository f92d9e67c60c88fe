/** Takes a notebook of the builder's own in hand, and lays it down again. */
import { written } from '../prose';
import { inHand } from './in-hand';
import { Writing } from './writing';

/** @param beside whether its text is shown beside the page */
export function startWriting(id: string, beside = false): void {
  written.value = { id, View: Writing, beside };
}

export function stopWriting(): void {
  inHand.value = null;
  written.value = null;
}
