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
    // What was typed while this was fetched is told too.
    const began = latest ? null : book.beforeStep();
    if (began && isEntry(began, state)) before = snapshotOf(bench, asIn(began, state, graph), null);
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

/** Whether nothing but entries of the only version has changed. */
const isEntry = (was: BookState, is: BookState): boolean =>
  was.table === is.table && was.asBuilt === is.asBuilt && was.second === null && is.second === null;

/** The graph with the entries of an earlier state. */
const asIn = (was: BookState, is: BookState, graph: Graph): Graph => {
  const names = [...Object.keys(was.entries), ...Object.keys(is.entries)];
  const entries = Object.fromEntries(names.map((name) => [name, was.entries[name] ?? null]));
  return graph.with(() => entries);
};

function isEdit(was: BookState, is: BookState): boolean {
  return was.table === is.table && (was.inHand === is.inHand || was.second === null || is.second === null);
}
