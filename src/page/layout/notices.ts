/** What the builder must be told at the head of the notebook: about saving, another window, a newer build. */
import { useBench } from '../bench';
import { bookletOpen } from '../booklet-open';
import { html, use } from '../html';
import { later } from '../later';
import { mineOpen } from '../mine-open';
import { linkOpen } from '../link-open';
import { logOpen } from '../log-open';

const WhoseBoat = later(async () => (await import('../boat/whose-boat')).WhoseBoat, 'whose-boat');
const OwnBoats = later(async () => (await import('../boat/own-boats')).OwnBoats, 'boat-sheet');
const BookletSheet = later(async () => (await import('../booklet/booklet-sheet')).BookletSheet, 'boat-sheet');
const LinkSheet = later(async () => (await import('../link/link-sheet')).LinkSheet, 'boat-sheet');
const LogSheet = later(async () => (await import('../log/log-sheet')).LogSheet, 'boat-sheet');

const MineSheet = later(async () => (await import('../formulas/mine-sheet')).MineSheet, 'boat-sheet');

export function Notices() {
  const { boatsOpen, boatless, sheet } = useBench();
  return html`<div class="notices">
    ${use(Said, {})} ${use(TwoBoats, {})} ${bookletOpen.value ? use(BookletSheet, {}) : null} ${linkOpen.value ? use(LinkSheet, {}) : null} ${boatsOpen.value ? use(OwnBoats, {}) : null} ${logOpen.value && !boatless.value ? use(LogSheet, {}) : null} ${mineOpen.value ? use(MineSheet, {}) : null} ${sheet.value.boat === null ? null : use(WhoseBoat, { boat: sheet.value.boat })}
  </div>`;
}

function Said() {
  const bench = useBench();
  const notice = bench.notice.value;
  const close = () => {
    bench.notice.value = null;
  };
  const act = () => {
    close();
    notice?.key?.act();
  };
  return html`<div role="status">
    ${
      notice &&
      html`<div class="notice">
        <p>${notice.says}</p>
        <div class="keys">
          ${notice.key && html`<button type="button" onClick=${act}>${notice.key.words}</button>`}
          <button type="button" onClick=${close}>Understood</button>
        </div>
      </div>`
    }
  </div>`;
}

function TwoBoats() {
  const conflict = useBench().conflict.value;
  return html`<div role="alert">
    ${
      conflict &&
      html`<div class="notice">
        <p>${conflict.says}</p>
        <div class="keys">
          <button type="button" onClick=${conflict.keepMine}>Keep this window’s</button>
          <button type="button" onClick=${conflict.takeTheirs}>Take the other window’s</button>
        </div>
      </div>`
    }
  </div>`;
}
