/** Writes a notebook's text into the boat in hand, by a step that Undo takes back. */
import { type OwnNotebooks } from '../../boat';
import { writeNotebook } from '../../notebook';
import type { Bench } from '../bench';
import { amendBoat } from '../notebooks/amend';
import { noRoom } from '../notebooks/room';

/** The text as it stands; tracked. */
export const textOf = ({ ownNotebooks }: Bench, id: string): string | undefined =>
  ownIn(ownNotebooks.value, id);

const ownIn = (own: OwnNotebooks | null, id: string): string | undefined =>
  own && Object.hasOwn(own, id) ? own[id]?.text : undefined;

/**
 * @param run joins what is typed on into one step
 * @returns why it was not written, in a sentence; null where it was
 */
export function writeText(bench: Bench, id: string, text: string, run?: string): string | null {
  const { book, sheet, ownBoat, ownNotebooks } = bench;
  const full = noRoom({ ...ownNotebooks.peek(), [id]: { text, away: false } });
  if (full !== null) return `The last letters are not kept: ${full}.`;
  if (sheet.peek().key === ownBoat.peek()) book.writeNotebook(id, text, run);
  else amendBoat(bench, (state) => writeNotebook(state, id, text), run);
  return null;
}
