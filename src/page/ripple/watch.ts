/** Compares the moment after an edit with the moment before its step began, once the page has drawn what is in view. */
import { effect } from '@preact/signals';
import { type BookState, type Catalogue, type Graph, rippleBetween } from '../../notebook';
import type { Shown } from '../../measure';
import type { Bench } from '../bench';
import type { BenchSheet } from '../keeping/sheets';
import { toldRipple } from './lines';
import { type RippleSnapshot, snapshotOf, toldOf } from './snapshot';

/** A pause in typing, ms, after which the page is taken to be at rest. */
const PAUSE = 60;

interface Latest {
  readonly sheet: BenchSheet;
  readonly state: BookState;
  readonly step: number;
  readonly graph: Graph;
  readonly catalogue: Catalogue;
  readonly snapshot: RippleSnapshot;
  readonly shown: Shown;
}

export function watchRipple(bench: Bench): void {
  const { book } = bench;
  let latest: Latest | null = null;
  let before: RippleSnapshot | null = null;
  let timer = 0;
  const look = () => {
    const state = book.state.peek();
    const step = book.step.peek();
    const graph = book.inHand.peek();
    const catalogue = book.catalogue.peek();
    const sheet = bench.sheet.peek();
    const shown = bench.shown.peek();
    if (latest?.state === state && latest.graph === graph && latest.catalogue === catalogue) {
      // What has a size of its own in the other units moves, but nobody has edited it.
      if (latest.shown !== shown) latest = { ...latest, shown, snapshot: snapshotOf(bench, graph, before) };
      return;
    }
    const isNewStep = latest !== null && latest.step !== step;
    if (isNewStep) before = latest?.snapshot ?? null;
    // Another boat, or another version taken in hand, moves everything and tells nothing.
    if (latest && (latest.sheet !== sheet || !isEdit(latest.state, state))) before = null;
    const snapshot = snapshotOf(bench, graph, before);
    latest = { sheet, state, step, graph, catalogue, snapshot, shown };
    bench.ripple.value = before && toldRipple(rippleBetween(before, snapshot, toldOf(catalogue)), bench);
  };
  effect(() => {
    void book.state.value;
    void book.inHand.value;
    void book.catalogue.value;
    void bench.shown.value;
    clearTimeout(timer);
    timer = window.setTimeout(() => requestIdleCallback(look, { timeout: 500 }), PAUSE);
  });
}

function isEdit(was: BookState, is: BookState): boolean {
  return was.table === is.table && (was.inHand === is.inHand || was.second === null || is.second === null);
}
