/** The head of the page: name, boat, and the few keys that act on everything. */
import type { TargetedEvent } from 'preact';
import { starters } from '../boat';
import type { Shown } from '../measure';
import { BoatKeeping } from './boat-keeping';
import { type Dress, useBench } from './bench';
import { html, use } from './html';

const lengths: Readonly<Record<string, Pick<Shown, 'length' | 'fraction' | 'mass'>>> = {
  'mm, kg': { length: 'mm', fraction: 16, mass: 'kg' },
  'ft-in 1/8, lb': { length: 'feet', fraction: 8, mass: 'lb' },
  'ft-in 1/16, lb': { length: 'feet', fraction: 16, mass: 'lb' },
  'ft-in 1/32, lb': { length: 'feet', fraction: 32, mass: 'lb' },
  'decimal in, lb': { length: 'inches', fraction: 16, mass: 'lb' },
  'ft-in 1/16, kg': { length: 'feet', fraction: 16, mass: 'kg' },
};
const dresses: readonly Dress[] = ['by the light', 'paper', 'slate', 'sun'];

export function Masthead() {
  const bench = useBench();
  const { book, shown, dress } = bench;
  const { name } = book.state.value.table;
  const now = Object.entries(lengths).find(
    ([, units]) =>
      units.length === shown.value.length &&
      units.mass === shown.value.mass &&
      (units.length !== 'feet' || units.fraction === shown.value.fraction),
  );
  const pickUnits = (event: TargetedEvent<HTMLSelectElement>) => {
    const units = lengths[event.currentTarget.value];
    if (units) shown.value = { ...shown.value, ...units };
  };
  return html`<header class="masthead">
    <a class="name" href="#/">Battenbook</a>
    <label class="boat"><span class="unseen">Boat</span>
      <select class="boat-pick" value="" aria-label="Boat" onChange=${(event: TargetedEvent<HTMLSelectElement>) => pickBoat(event)}>
        <option value="" selected>${name}</option>
        ${starters.map(({ id, table }) => html`<option value=${id}>Start from: ${table.name}</option>`)}
      </select>
    </label>
    <div class="keys plain">
      <button type="button" disabled=${!book.canUndo.value} onClick=${() => book.undo()}>Undo</button>
      <button type="button" disabled=${!book.canRedo.value} onClick=${() => book.redo()}>Redo</button>
      <label><span class="unseen">Units</span>
        <select aria-label="Units" value=${now?.[0] ?? 'mm, kg'} onChange=${pickUnits}>
          ${Object.keys(lengths).map((words) => html`<option value=${words} selected=${words === now?.[0]}>${words}</option>`)}
        </select>
      </label>
      <details class="desk">
        <summary>Colours, boat file</summary>
        <div><label><span>Page colours </span>
        <select aria-label="Page colours" value=${dress.value} onChange=${(event: TargetedEvent<HTMLSelectElement>) => (dress.value = event.currentTarget.value as Dress)}>
          ${dresses.map((one) => html`<option value=${one} selected=${one === dress.value}>${one}</option>`)}
        </select>
      </label>
        ${use(BoatKeeping, {})}</div>
      </details>
    </div>
  </header>`;

  function pickBoat(event: TargetedEvent<HTMLSelectElement>) {
    const starter = starters.find((one) => one.id === event.currentTarget.value);
    event.currentTarget.value = '';
    if (starter) bench.openBoat(starter.table);
  }
}
