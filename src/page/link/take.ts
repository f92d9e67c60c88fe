/** Takes what a link brings: a boat as a new one on the shelf, numbers without a boat as a step on their notebook's sheet. */
import { noBoat, writeNotebook } from '../../notebook';
import { type BoatLink, writeLink } from '../../notebook/link/link';
import { type OwnBoat, ownBoats } from '../../notebook/keeping/boats';
import { keptAt } from '../../notebook/keeping/read-saved';
import { boatOf } from '../../notebook/state/boat-state';
import type { BookState } from '../../notebook/state/state';
import { wayTo } from '../address';
import type { Bench } from '../bench';
import { beginBoat, openBoat } from '../boat/other-boat';
import { freshSheet, sheetFor } from '../keeping/sheets';
import { notebooks } from '../library';
import { linkOpen } from '../link-open';
import { amendBoat } from '../notebooks/amend';
import { takeOutOfAddress } from './arrive';

/** The boat on the shelf that is in every number and text what the link brings, whatever she is called. */
export function sameBoat({ shelf }: Bench, link: BoatLink): OwnBoat | undefined {
  if (!shelf || link.isBoatless) return undefined;
  const plain = (boat: BoatLink['boat']) => writeLink({ ...link, boat: { ...boat, name: '' } });
  const brought = plain(link.boat);
  return ownBoats(shelf).find(({ key }) => {
    const kept = keptAt(shelf, key);
    return kept && plain(boatOf(kept.state)) === brought;
  });
}

/** @param same the boat that is the same already, to be opened in place of a new one */
export function takeLink(bench: Bench, link: BoatLink, same: OwnBoat | undefined): void {
  takeOutOfAddress();
  linkOpen.value = null;
  const { notebook, place } = link;
  if (link.isBoatless) {
    takeNumbers(bench, link);
    return;
  }
  if (same) openBoat(bench, same.key, same.name);
  else beginBoat(bench, link.boat);
  if (notebook === null) return;
  // It is read with her, and not with the boat that it may bring along itself.
  bench.readWith.value = new Map([...bench.readWith.peek(), [notebook, null]]);
  location.replace(wayTo(notebook, place ?? undefined));
}

function takeNumbers(bench: Bench, { boat, notebook, place }: BoatLink): void {
  const { book, keeping, notice, ownBoat, readWith, shelf } = bench;
  const wanted = notebook ?? '';
  const text = boat.notebooks?.[wanted]?.text;
  const id = text === undefined ? wanted : laid(bench, wanted, text);
  const head = text === undefined ? notebooks.peek().find((one) => one.id === id) : undefined;
  const sheet = sheetFor({ id, boat: 'none' }, ownBoat.peek(), readWith.peek(), text !== undefined);
  const { entries, second, inHand } = boat;
  const change = (state: BookState): BookState => ({
    ...state,
    entries,
    second: second ?? null,
    inHand: inHand ?? 'first',
  });
  if (bench.sheet.peek().key === sheet.key) {
    book.settle();
    book.open(change(book.state.peek()));
  } else {
    keeping.amend(sheet.key, change, () =>
      freshSheet(sheet, head, noBoat, () => keptAt(shelf, ownBoat.peek())?.state ?? null),
    );
  }
  notice.value = { says: 'The numbers of the link stand here now. Undo brings back what stood here before.' };
  location.replace(wayTo(id, place ?? undefined));
}

/** Lays a notebook among the builder's own beside those that are there; its name, which is another where that is taken. */
function laid(bench: Bench, wanted: string, text: string): string {
  const own = bench.ownNotebooks.peek() ?? {};
  const isTaken = (id: string) =>
    Object.hasOwn(own, id) ? own[id]!.text !== text : notebooks.peek().some((head) => head.id === id);
  let id = wanted;
  for (let n = 2; isTaken(id); n += 1) id = `${wanted}-${n}`;
  amendBoat(bench, (state) => writeNotebook(state, id, text));
  return id;
}
