/** Changes that the cell proposes, each to be looked at as a second version. */
import { attempt } from '../../boat';
import { type Instance, type Offer, onHand, valuesOf } from '../../cells';
import { isIssue } from '../../measure';
import { sayWith, useBench } from '../bench';
import { html, use } from '../html';
import { TryKey } from './try-key';

export function Offers({ instance }: { instance: Instance }) {
  const bench = useBench();
  const { cell } = instance;
  // They are made from the version kept, or each look at one would offer the next.
  const graph = bench.book.first.value;
  const values = graph.work((read) => valuesOf(instance, read));
  if (isIssue(values)) return null;
  const hull = graph.hull();
  const on = onHand(cell, values, isIssue(hull) ? null : hull, sayWith(bench), bench.findings.found);
  const offers = attempt(() => cell.offers?.(values, on) ?? []);
  if (isIssue(offers) || offers.length === 0) return null;
  return html`<div class="offers">
    ${offers.map(({ label, changes }) => html`<div class="try-this"><p>${label}</p>${use(TryKey, { changes: ofThis(instance, changes), what: label })}</div>`)}
  </div>`;
}

/** The cell's own inputs under the name it stands by here. */
function ofThis({ name }: Instance, changes: Offer['changes']): Offer['changes'] {
  return Object.fromEntries(
    Object.entries(changes).map(([of, entry]) => [of.replace('{self}', name), entry]),
  );
}
