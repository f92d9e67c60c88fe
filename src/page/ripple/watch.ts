/** Compares the moment after an edit with the moment before its step began, once the page has drawn what is in view. */
import { builtEntries } from '../../boat';
import { type BookState, type Catalogue, type Graph, type Ripple, rippleBetween } from '../../notebook';
import type { Shown } from '../../measure';
import type { Bench } from '../bench';
import type { BenchSheet } from '../keeping/sheets';
import type { Limit } from '../told/told';
import { type RippleSnapshot, snapshotOf, toldOf } from './snapshot';

interface Moment {
  readonly sheet: BenchSheet;
  readonly state: BookState;
  readonly step: number;
  readonly graph: Graph;
  readonly catalogue: Catalogue;
  readonly shown: Shown;
}
/** A moment, and what was taken of it; null where nothing has been asked of it yet. */
interface Taken extends Moment {
  readonly snapshot: RippleSnapshot | null;
}

/**
 * @param tell takes what moved; null where there is nothing to compare with
 * @returns looks what moved, to be called when the page is at rest after an edit, in steps that may be given up for
 * a newer edit. Whoever only reads pays nothing: how the boat stood is worked out at the first edit.
 */
export function rippleOf(bench: Bench, tell: (ripple: Ripple<Limit> | null) => void): () => Generator<void> {
  let latest: Taken | null = null;
  let before: RippleSnapshot | null = null;
  return function* look() {
    const now = momentOf(bench);
    const was = latest ?? beforeThis(bench, now);
    if (was.state === now.state && was.graph === now.graph && was.catalogue === now.catalogue) {
      // What has a size of its own in the other units moves, but nobody has edited it.
      const isStale = was.snapshot && was.shown !== now.shown;
      latest = { ...now, snapshot: isStale ? yield* snapshotOf(bench, now.graph, before) : was.snapshot };
      return;
    }
    const isNewStep = was.step !== now.step;
    // Another boat, or another version taken in hand, moves everything and tells nothing.
    const isTold = was.sheet === now.sheet && isEdit(was.state, now.state);
    const from = !isTold
      ? null
      : isNewStep
        ? (was.snapshot ?? (yield* snapshotOf(bench, asItWas(was, now), null)))
        : before;
    const snapshot = from && (yield* snapshotOf(bench, now.graph, from));
    before = from;
    latest = { ...now, snapshot };
    tell(from && snapshot && rippleBetween(from, snapshot, toldOf(now.catalogue)));
  };
}

const momentOf = ({ book, sheet, shown }: Bench): Moment => ({
  sheet: sheet.peek(),
  state: book.state.peek(),
  step: book.step.peek(),
  graph: book.inHand.peek(),
  catalogue: book.catalogue.peek(),
  shown: shown.peek(),
});

/** The moment to compare the first one with: what was typed while this was fetched is told too. */
function beforeThis({ book }: Bench, now: Moment): Taken {
  const began = book.beforeStep();
  return { ...now, snapshot: null, ...(began && { state: began, step: now.step - 1 }) };
}

/** The graph with all that was written and built at an earlier moment in place of what is now. */
function asItWas({ graph, state: was }: Moment, { state: is }: Moment): Graph {
  const entries = { ...was.entries, ...(was.inHand === 'second' && was.second) };
  const built = builtEntries(was.asBuilt);
  const names = [was.entries, was.second, is.entries, is.second, built, builtEntries(is.asBuilt)].flatMap(
    (of) => Object.keys(of ?? {}),
  );
  const changes = Object.fromEntries(names.map((name) => [name, entries[name] ?? null]));
  return graph.with(() => changes).asBuilt(() => built);
}

function isEdit(was: BookState, is: BookState): boolean {
  return was.table === is.table && (was.inHand === is.inHand || was.second === null || is.second === null);
}
