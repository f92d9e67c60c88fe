/** The log of the boat in hand at the head of the notebook: all entries by stage, on paper and for a spreadsheet too. */
import { useState } from 'preact/hooks';
import { textOfCells } from '../../boat/table/pasted-cells';
import { useBench } from '../bench';
import { html, use } from '../html';
import { offerFile } from '../offer-file';
import { LogBook } from './log-book';
import { logRows } from './log-rows';
import { logOpen } from '../log-open';
import { reportOf } from './report';
import { cellTitle } from './stages';

export function LogSheet() {
  const bench = useBench();
  const [told, tell] = useState('');
  const close = () => {
    logOpen.value = false;
    document.getElementById('notebook-title')?.focus();
  };
  const save = () => {
    const rows = logRows(reportOf(bench).stages, (cell) => cellTitle(cell, bench));
    const words = bench.name
      .peek()
      .toLowerCase()
      .match(/[a-z0-9]+/g) ?? ['boat']; // a name may have no such letter
    offerFile(textOfCells(rows, 'commas'), `${words.join('-')}.log.csv`, 'text/csv');
  };
  const print = () => {
    tell('');
    import('./print-log')
      .then(({ printLog }) => printLog(bench))
      .catch(() => tell('The log could not be made ready. Load the page again when you are online.'));
  };
  return html`<section class="boat-sheet own-boats log-sheet" aria-labelledby="log-title">
    <button type="button" class="close-sheet" aria-label="Close the log" onClick=${close}>Close</button>
    <h2 id="log-title" tabindex="-1">Log of ${bench.name.value}</h2>
    <p>What was done when, the hours and the money. It is kept with the boat, and moves none of her numbers.</p>
    ${use(LogBook, { cell: null })}
    <p class="keys">
      <button type="button" onClick=${print}>Print the log</button>
      <button type="button" onClick=${save}>Save the log as CSV</button>
    </p>
    <p role="status">${told}</p>
  </section>`;
}
