/** What moved after the last edit: limits crossed first, then the largest moves. */
import { effect } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { warningsOf } from '../cells';
import { isIssue, writeDifference } from '../measure';
import { type Graph, type Ripple, rippleBetween, type Snapshot } from '../notebook';
import { type Bench, say, sayValue, useBench } from './bench';
import { html } from './html';
import { readable } from './provenance';

/** How many moves are listed before "and so many more". */
const LISTED = 8;

export function RippleView() {
  const bench = useBench();
  const ripple = useRipple(bench);
  const [all, setAll] = useState(false);
  if (
    !ripple ||
    (ripple.moved.length === 0 && ripple.nowWarned.length === 0 && ripple.nowClear.length === 0)
  ) {
    return html`<section class="ripple plain"><h2>What moves</h2><p class="moved-from">Change a number: what follows from it is listed here.</p></section>`;
  }
  const { moved, nowWarned, nowClear } = ripple;
  const listed = all ? moved : moved.slice(0, LISTED);
  const shown = bench.shown.value;
  return html`<section class="ripple plain" aria-live="polite">
    <h2>${moved.length === 1 ? 'One number moved' : `${moved.length} numbers moved`}</h2>
    <ol>
      ${nowWarned.map((says) => html`<li class="crossed"><b>Now past a limit: </b>${says}</li>`)}
      ${nowClear.map((says) => html`<li><b>No longer so: </b>${says}</li>`)}
      ${listed.map(({ quantity, before, after }) => {
        const difference =
          typeof before === 'number' && typeof after === 'number'
            ? writeDifference(after - before, quantity.kind, shown)
            : '';
        return html`<li>
          <button type="button" class="jump" onClick=${() => bench.goTo(quantity.name)}>${readable(quantity.name)}</button>
          <span> ${sayValue(after, quantity.kind, shown)}</span>
          <span class="moved-from"> was ${isIssue(before) ? 'without a value' : sayValue(before, quantity.kind, shown)}${difference ? ` (${difference})` : ''}</span>
        </li>`;
      })}
    </ol>
    ${moved.length > LISTED ? html`<button type="button" class="quiet" onClick=${() => setAll(!all)}>${all ? 'Only the largest' : `and ${moved.length - LISTED} more`}</button>` : null}
  </section>`;
}

/**
 * Compares the moment after an edit with the moment before its step began. Taking a snapshot works
 * out every quantity, so it waits until the page has drawn what is in view.
 */
function useRipple(bench: Bench): Ripple | null {
  const [ripple, setRipple] = useState<Ripple | null>(null);
  useEffect(() => {
    let latest: { step: number; graph: Graph; snapshot: Snapshot } | null = null;
    let before: Snapshot | null = null;
    let timer = 0;
    const dispose = effect(() => {
      const { book } = bench;
      void book.state.value;
      const step = book.step.value;
      const graph = book.inHand.value;
      clearTimeout(timer);
      timer = window.setTimeout(() => {
        const snapshot = snapshotOf(bench, graph);
        if (latest && latest.step !== step) before = latest.snapshot;
        latest = { step, graph, snapshot };
        if (before)
          setRipple(rippleBetween(before, snapshot, book.catalogue.peek().derived.filter(speaksForItself)));
      }, 60);
    });
    return () => {
      clearTimeout(timer);
      dispose();
    };
  }, [bench]);
  return ripple;
}

/** Rows of tables and coordinates would drown the rest: they say again what their heads say. */
function speaksForItself({ name }: { name: string }): boolean {
  return name.split('.').length <= 2;
}

function snapshotOf(bench: Bench, graph: Graph): Snapshot {
  const shown = bench.shown.peek();
  const values = new Map(
    bench.book.catalogue
      .peek()
      .derived.filter(speaksForItself)
      .map(({ name }) => [name, graph.value(name)]),
  );
  const warnings = new Map<string, string>();
  for (const instance of bench.instances.peek().values()) {
    for (const { name, says } of warningsOf(instance, graph.work, (value, kind) => say(value, kind, shown)))
      warnings.set(name, says);
  }
  return { values, warnings };
}
