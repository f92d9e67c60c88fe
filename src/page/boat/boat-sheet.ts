/** The boat's own sheet: its lines, the offsets of one station at a time, flare, the scantlings, and what follows. */
import { useBench } from '../bench';
import { Disclosure } from '../disclosure';
import { html, use } from '../html';
import { later } from '../later';
import { capital } from '../words';
import { LinesFigure } from '../hull/lines-figure';
import { PartSheets } from './part-sheets';
import { StationSheet } from './station-sheet';

const NewTable = later(async () => (await import('../offsets/new-table')).NewTable, 'new-table');

export function BoatSheet({ onClose }: { onClose: () => void }) {
  const { name, table } = useBench();
  const { note, offsetsTo } = table.value;
  return html`<section class="boat-sheet" aria-labelledby="boat-sheet-title">
    <button type="button" class="close-sheet" aria-label="Close the boat’s sheet" onClick=${onClose}>Close</button>
    <h2 id="boat-sheet-title" tabindex="-1">${name.value}</h2>
    <p>${note ? `${capital(note)}. ` : ''}The table of offsets is given to the ${offsetsTo}.</p>
    ${use(LinesFigure, {})} ${use(StationSheet, {})} ${use(PartSheets, {})}
    ${use(Disclosure, { summary: 'A new table of offsets', className: 'new-boat', inside: () => use(NewTable, {}) })}
  </section>`;
}
