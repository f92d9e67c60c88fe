/** Puts another boat on the bench. Hers is a place of her own on the shelf: the one before stays as she is. */
import type { AsBuilt, Table } from '../../boat';
import { freshState, nextBoatKey, takeInHand } from '../../notebook';
import type { Bench } from '../bench';
import { openHead, shelf as notebooks } from '../library';
import { wayTo } from '../frame/way';

/** Begins a boat from a table, a starter's or a file's. */
export function beginBoat(
  bench: Bench,
  table: Table,
  entries?: Readonly<Record<string, string>>,
  asBuilt?: AsBuilt,
  name?: string,
): void {
  const key = bench.shelf ? nextBoatKey(bench.shelf) : `${bench.ownBoat.peek()}+`;
  const state = freshState(table, entries, asBuilt, name);
  bench.keeping.hold(key, { state, earlier: [], later: [] });
  openBoat(bench, key, state.name);
}

/** Takes up a boat of the builder's own, and leads away from where no such boat can be worked on. */
export function openBoat(bench: Bench, key: string, name: string): void {
  const before = bench.ownBoat.peek();
  const left = bench.book.state.peek().name;
  const { kind, notebook } = bench.sheet.peek();
  if (kind === 'lesson' && notebook !== null)
    bench.readOwn.value = new Set([...bench.readOwn.peek(), notebook]);
  takeInHand(key, bench.windowShelf, bench.shelf);
  bench.ownBoat.value = key;
  if (kind === 'loose') {
    const head = notebooks.find(({ boat }) => boat === null);
    if (head && head !== openHead()) location.hash = wayTo(head.id);
  }
  if (kind === 'boat' && key !== before)
    bench.notice.value = {
      says: `${name} is on the bench now. ${left} is kept as you left her.`,
      key: { words: `Back to ${left}`, act: () => openBoat(bench, before, left) },
    };
}
