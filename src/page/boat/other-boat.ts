/** Puts another boat on the bench. Hers is a place of her own on the shelf: the one before stays as she is. */
import { demoBoat, nothingBuilt, type Starter, starters, writeTable } from '../../boat';
import { type Kept, takeInHand } from '../../notebook';
import { stateOf } from '../../notebook/state/boat-state';
import { keptAt } from '../../notebook/keeping/read-saved';
import { nameBeside, nextBoatKey, ownBoats, putAway, type Shelves } from '../../notebook/keeping/boats';
import type { Bench, NewBoat } from '../bench';
import { wayTo } from '../address';
import { notebooks, openHead } from '../library';

/** Begins a boat from a starter, a file or a link. */
export function beginBoat(bench: Bench, boat: NewBoat): void {
  begin(bench, { state: stateOf(boat), earlier: [], later: [] });
}

/** Begins a boat that is as another is, with all her steps. */
export function copyBoat(bench: Bench, key: string): void {
  const kept = key === bench.sheet.peek().key ? bench.book.kept() : keptAt(bench.shelf, key);
  if (kept) begin(bench, kept);
}

function begin(bench: Bench, kept: Kept): void {
  const { shelf } = bench;
  // So that names are compared as they stand.
  bench.keeping.save();
  const key = shelf ? nextBoatKey(shelf) : `${bench.ownBoat.peek()}+`;
  const name = nameBeside(shelf ? ownBoats(shelf).map((one) => one.name) : [], kept.state.name);
  bench.keeping.hold(key, { ...kept, state: { ...kept.state, name } });
  openBoat(bench, key, name);
}

/** Takes up a boat of the builder's own, and leads away from where no such boat can be worked on. */
export function openBoat(bench: Bench, key: string, name: string): void {
  const { ownBoat, book, sheet, shelf, notice, readWith } = bench;
  bench.keeping.save();
  const before = ownBoat.peek();
  const left = book.state.peek().name;
  const { kind, notebook } = sheet.peek();
  if (key === before && kind === 'boat') return;
  if (kind === 'lesson' && notebook !== null)
    readWith.value = new Map([...readWith.peek(), [notebook, null]]);
  takeInHand(key, bench.windowShelf, shelf);
  ownBoat.value = key;
  const head = notebooks.peek().find(({ boat }) => boat === null);
  if (kind === 'loose' && head && head !== openHead()) location.hash = wayTo(head.id);
  if (kind !== 'boat') return;
  const untouched = shelf && untouchedStarter(shelf, before);
  if (untouched) shelf.removeItem(before);
  notice.value = {
    says: `${name} is on the bench now.${untouched ? '' : ` ${left} is kept as you left her.`}`,
    key: {
      words: `Back to ${left}`,
      act: () => (untouched ? beginBoat(bench, untouched) : openBoat(bench, before, left)),
    },
  };
}

/** The starter that a boat on the shelf still is, in every number; she can be begun again at any time. */
function untouchedStarter(shelf: Shelves, key: string): Starter | null {
  const kept = keptAt(shelf, key);
  if (!kept || kept.earlier.length + kept.later.length > 0) return null;
  const text = (of: object) => JSON.stringify(of);
  const plan = text(writeTable(kept.state.table));
  const found = starters.find(({ table }) => text(writeTable(table)) === plan);
  const { table, entries, asBuilt, notebooks, log, lessons, sweeps, second } = kept.state;
  const plain =
    second === null &&
    [entries, notebooks, log, lessons, sweeps].every(isEmpty) &&
    text(asBuilt) === text(nothingBuilt);
  return found && plain && kept.state.name.startsWith(table.name) ? found : null;
}

const isEmpty = (all: object): boolean => Object.keys(all).length === 0;

/** Puts a boat away; where she is in hand, another comes to hand. */
export function putBoatAway(bench: Bench, key: string): void {
  const { shelf } = bench;
  if (!shelf) return;
  if (key === bench.ownBoat.peek()) {
    bench.keeping.save();
    const next = ownBoats(shelf).findLast((one) => !one.away && one.key !== key);
    if (next) openBoat(bench, next.key, next.name);
    else beginBoat(bench, { table: demoBoat });
  }
  if (ownBoats(shelf).some((one) => one.key === key)) putAway(shelf, key, true);
}
