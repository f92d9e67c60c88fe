/** The head of the page: name, boat, and the few keys that act on everything. */
import type { TargetedEvent } from 'preact';
import { type Colours, useBench } from '../bench';
import { openFinder } from '../finder/listen';
import { html, use } from '../html';
import { later } from '../later';
import { openHead } from '../library';
import { unitChoices, unitWords } from '../units';

const BoatPick = later(async () => (await import('../boat/boat-pick')).BoatPick, 'boat-pick');
const BoatKeeping = later(async () => (await import('../boat/boat-keeping')).BoatKeeping, 'file-keys');

const WallKey = later(async () => (await import('../on-wall/wall-key')).WallKey, 'wall-key');

const choices: Readonly<Record<Colours, string>> = {
  'by the light': 'as this device is set',
  paper: 'paper',
  slate: 'slate',
  sun: 'full sun',
};

export function Masthead() {
  const bench = useBench();
  return html`<header class="masthead plain">
    <a class="name" href="#/">Battenbook</a>
${openHead()?.form ? null : use(BoatPick, {})}
    <button type="button" class="find" aria-haspopup="dialog" onClick=${() => openFinder(bench)}>Find<kbd aria-hidden="true">/</kbd></button>
    <div class="keys">${use(UndoKeys, {})} ${use(UnitPick, {})} ${use(Desk, {})}</div>
  </header>`;
}

function UndoKeys() {
  const { book } = useBench();
  return html`<button type="button" disabled=${!book.canUndo.value} onClick=${() => book.undo()}>Undo</button>
    <button type="button" disabled=${!book.canRedo.value} onClick=${() => book.redo()}>Redo</button>`;
}

function UnitPick() {
  const { shown } = useBench();
  const now = unitWords(shown.value);
  const pick = (event: TargetedEvent<HTMLSelectElement>) => {
    const units = unitChoices[event.currentTarget.value];
    if (units) shown.value = { ...shown.value, ...units };
  };
  return html`<select class="unit-pick" aria-label="Units" value=${now} onChange=${pick}>
    ${Object.keys(unitChoices).map((words) => html`<option value=${words} selected=${words === now}>${words}</option>`)}
  </select>`;
}

/** What is reached for seldom. */
function Desk() {
  const { colours } = useBench();
  const pick = (event: TargetedEvent<HTMLSelectElement>) => {
    colours.value = event.currentTarget.value as Colours;
  };
  return html`<details class="desk">
    <summary>More</summary>
    <div>
      <label>
        <span>Page colours</span>
        <select value=${colours.value} onChange=${pick}>
          ${Object.entries(choices).map(([one, words]) => html`<option value=${one} selected=${one === colours.value}>${words}</option>`)}
        </select>
      </label>
      ${use(BoatKeeping, {})}
      ${use(WallKey, {})}
      <button type="button" onClick=${() => print()}>Print this notebook</button>
    </div>
  </details>`;
}
