/** What stops the work or wants minding, each with the limit that it meets and whose. */
import { type Instance, warningsOf } from '../../cells';
import { tiedWith, useBench } from '../bench';
import { html } from '../html';
import { capital } from '../words';

export function Warnings({ instance }: { instance: Instance }) {
  const bench = useBench();
  const graph = bench.book.inHand.value;
  const applies = warningsOf(instance, (by) => graph.workOut(by), tiedWith(bench));
  return html`<div class="warnings" role="status">
    ${applies.map(
      ({ warning, says }) => html`<p class=${`warning ${warning.weight}`}>
        <b>${warning.weight === 'stop' ? 'Stop: ' : 'Mind: '}</b>${says} <span class="limit">${capital(warning.limit)}</span>
      </p>`,
    )}
  </div>`;
}
