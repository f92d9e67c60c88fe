/** What is there to be found at this moment. */
import type { Bench } from '../bench';
import { formulasIn } from '../../notebook/formulas/formulas-in';
import { allOnShelf, openHead } from '../library';
import { eachOnce, type Index, indexOf } from './search';
import { lastFound } from './kept';
import { onSheet } from './on-sheet';
import { type Thing, thingsIn } from './things';
import { tradeWords } from './trade-words';

let made: { readonly of: readonly unknown[]; readonly index: Index<Thing> } | null = null;

/** Tracked; made anew only when something came or went. */
export function indexNow(bench: Bench): Index<Thing> {
  const { pages, cells } = allOnShelf();
  const catalogue = bench.book.catalogue.value;
  const of = [...pages, cells, catalogue];
  if (made?.of.length === of.length && of.every((one, at) => one === made?.of[at])) return made.index;
  // Where the open notebook knows no boat, there is no sheet of hers.
  const sheet = bench.boatless.value ? [] : onSheet(catalogue, bench.instances.value);
  const index = indexOf(thingsIn(pages, cells, sheet, formulasIn(catalogue)), tradeWords);
  made = { of, index };
  return index;
}

/** What is offered while nothing is typed: what was found last, then the notebooks. */
export function firstOffered({ things }: Index<Thing>, bench: Bench): readonly Thing[] {
  const open = openHead()?.id ?? null;
  const last = lastFound(bench.shelf);
  const before = eachOnce(
    things.filter(({ same }) => last.includes(same)),
    open,
  ).toSorted((a, b) => last.indexOf(a.same) - last.indexOf(b.same));
  return [...before, ...things.filter((thing) => thing.kind === 'notebook' && !before.includes(thing))];
}
