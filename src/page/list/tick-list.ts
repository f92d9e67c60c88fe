/** The buying list to walk the shops with: ticks, the way to the cell that counts a line, and the list as a file. */
import { textOfCells } from '../../boat/table/pasted-cells';
import type { Instance } from '../../cells';
import { isIssue } from '../../measure';
import { type Bench, sayOf, useBench } from '../bench';
import { html } from '../html';
import { offerFile } from '../offer-file';
import { capital } from '../words';
import { linesByShop, type ListedLine, listRows, type SayKey } from './list-lines';
import './tick-list.css';

export function TickList({ instance }: { instance: Instance }) {
  const bench = useBench();
  const graph = bench.book.inHand.value;
  const say = sayIn(instance, bench);
  const save = () => {
    const words = bench.table
      .peek()
      .name.toLowerCase()
      .match(/[a-z0-9]+/g) ?? ['boat'];
    offerFile(
      textOfCells(listRows(instance, graph, say), 'commas'),
      `${words.join('-')}.list.csv`,
      'text/csv',
    );
  };
  return html`<div class="tick-list">
    ${linesByShop(instance, graph, say).map(
      ({ shop, sum, lines }) => html`<section key=${shop}>
        <h4>${capital(shop)} <span class="sum">${sum}</span></h4>
        <ul>
          ${lines.map((line) => lineOf(line, instance, bench))}
        </ul>
      </section>`,
    )}
    <p class="sum">Planned ${say('planned')}, set aside ${say('setAside')}, in all ${say('cost')}; paid ${say('spent')}.</p>
    <p class="keys"><button type="button" onClick=${save}>Save the list as CSV</button></p>
  </div>`;
}

function lineOf(line: ListedLine, { name }: Instance, { book, goTo }: Bench) {
  const turn = (event: Event) => {
    book.write({
      [`${name}.${line.id}Got`]: (event.currentTarget as HTMLInputElement).checked ? 'yes' : 'no',
    });
    book.settle();
  };
  const says = line.bought
    ? `${line.many}, paid ${line.paid}`
    : line.wanted
      ? `${line.many}, ${line.planned}`
      : 'nothing to buy';
  return html`<li key=${line.id} class=${line.wanted ? '' : 'none'}>
    <label><input type="checkbox" class="tick" checked=${line.bought} onChange=${turn} /> ${line.label}: ${says}</label>
    <button type="button" class="jump" aria-label=${`where counted: ${line.label}`} onClick=${() => goTo(line.counted)}>where counted</button>
  </li>`;
}

/** Writes a number of the cell in the units in use. */
const sayIn =
  ({ name }: Instance, bench: Bench): SayKey =>
  (key) => {
    const graph = bench.book.inHand.value;
    const value = graph.value(`${name}.${key}`);
    return isIssue(value) ? 'no value yet' : sayOf(graph, `${name}.${key}`, value, bench.shown.value);
  };
