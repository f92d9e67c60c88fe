/** What the builder must be told at the head of the notebook: about saving, another window, a newer build. */
import { starter } from '../../boat';
import { createStore } from '../../notebook';
import { useBench } from '../bench';
import { html, use } from '../html';
import { later } from '../later';
import { openHead } from '../library';

const OwnBoats = later(async () => (await import('../boat/own-boats')).OwnBoats, 'boat-sheet');

export function Notices() {
  const { boatsOpen } = useBench();
  return html`<div class="notices">
    ${use(Said, {})} ${use(TwoBoats, {})} ${boatsOpen.value ? use(OwnBoats, {}) : null} ${use(WhoseBoat, {})}
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

/** In a notebook that brings a boat along: whose boat is read of, and the way to the other. */
function WhoseBoat() {
  const { ownBoat, readOwn, sheet, shelf } = useBench();
  const head = openHead();
  const brought = starter(head?.boat ?? '');
  if (!head || !brought) return null;
  const { kept } = createStore(shelf, ownBoat.value).look();
  const own = kept ? `, ${kept.state.name},` : '';
  const isOwn = sheet.value.kind === 'boat';
  const turn = () => {
    const others = [...readOwn.value].filter((id) => id !== head.id);
    readOwn.value = new Set(isOwn ? others : [...others, head.id]);
  };
  return html`<div class="whose-boat">
    <p>
      ${
        isOwn
          ? `This notebook brings along a boat of its own, ${brought.name}. You are reading it with yours${own} and what you change here is changed on her.`
          : `This notebook brings along a boat of its own, ${brought.name}. What you change here stays here. Your boat${own} lies untouched.`
      }
    </p>
    <div class="keys">
      <button type="button" onClick=${turn}>${isOwn ? 'Read it with its own boat' : 'Read it with your boat'}</button>
    </div>
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
