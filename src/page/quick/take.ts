/** Takes what was typed in a question over to the builder's boat, and says what came of it. */
import type { VNode } from 'preact';
import type { Instance } from '../../cells';
import { write } from '../../notebook';
import { askedOf } from '../asked';
import { type Bench, sayOf } from '../bench';
import { wayTo } from '../address';
import { html } from '../html';
import { notebooks } from '../library';
import { amendBoat } from '../notebooks/amend';
import { carry, type Carried } from './carry';

/** Writes it in the boat's cell of the same kind, by one step of hers that can be undone. */
export function takeToBoat(bench: Bench, instance: Instance): VNode {
  const state = bench.book.state.peek();
  const graph = bench.book.inHand.peek();
  const asked = askedOf(instance, bench).map(([key]) => key);
  let carried: Carried | undefined;
  let boat = '';
  amendBoat(bench, (hers) => {
    boat = hers.name;
    carried = carry({ instance, state, graph }, hers, asked, bench.shown.peek());
    return write(hers, carried.changes);
  });
  return told(bench, instance, boat, carried!); // she was just changed
}

function told(
  bench: Bench,
  { cell, name }: Instance,
  boat: string,
  { taken, onlyHere, left }: Carried,
): VNode {
  const graph = bench.book.inHand.peek();
  const shown = bench.shown.peek();
  const label = (key: string) => cell.inputs[key]!.label; // it was typed in
  const value = (key: string) => {
    const full = `${name}.${key}`;
    return sayOf(graph, full, graph.value(full), shown);
  };
  const home = notebooks.peek().find((head) => head.boat === null && Object.hasOwn(head.cells, cell.id));
  return html`<div>
    ${
      taken.length > 0 &&
      html`<p>
        Taken to ${boat}, into “${cell.title}”: ${taken.map((key) => `${label(key)} ${value(key)}`).join('; ')}.
        ${onlyHere ? ' They hold only there: the numbers of the boat and the shop stay as they are.' : ''} Undo there takes them back.
      </p>`
    }
    ${left.length > 0 && html`<p>Not taken: ${left.map(({ key, why }) => `${label(key)}, ${why}`).join('; ')}.</p>`}
    ${home && taken.length > 0 && html`<p><a href=${wayTo(home.id, `cell-${cell.id}`)}>Go to “${cell.title}” on ${boat}</a></p>`}
  </div>`;
}
