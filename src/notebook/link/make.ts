/** Makes a link, with as many of the builder's own notebooks as there is room for. */
import type { OwnNotebooks } from '../../boat';
import { type BoatLink, LONGEST_LINK, writeLink } from './link';
import { packed } from './pack';

/** Letters that nearly every way of sending a link leaves whole. Common practice, no source. */
export const EASY = 8000;

export interface MadeLink {
  readonly letters: string;
  /** Those of her notebooks that there was no room for, by their ids. */
  readonly left: readonly string[];
}

/** The link, its notebook's own text first; null where the boat alone is more than a link holds. */
export async function makeLink(link: BoatLink): Promise<MadeLink | null> {
  const { boat, notebook } = link;
  const lettersWith = (notebooks: OwnNotebooks) =>
    packed(writeLink({ ...link, boat: { ...boat, notebooks } }));
  let letters = await lettersWith({});
  if (letters.length > LONGEST_LINK) return null;
  let brought: OwnNotebooks = {};
  const left: string[] = [];
  const isOpen = ([id]: readonly [string, unknown]) => Number(id === notebook);
  for (const [id, own] of Object.entries(boat.notebooks ?? {}).sort((a, b) => isOpen(b) - isOpen(a))) {
    const more = { ...brought, [id]: own };
    // Each is weighed with those that go along already.
    // oxlint-disable-next-line no-await-in-loop
    const longer = await lettersWith(more);
    if (longer.length > EASY) left.push(id);
    else [letters, brought] = [longer, more];
  }
  return { letters, left };
}
