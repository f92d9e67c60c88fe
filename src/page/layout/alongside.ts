/** What stands by the notebook: the hull in small, the way to its sheet, the versions, and what moves. */
import { useState } from 'preact/hooks';
import { useBench } from '../bench';
import { html, use } from '../html';
import { later } from '../later';
import { openHead } from '../library';

const HullInSight = later(async () => (await import('../boat/hull-in-sight')).HullInSight, 'hull-in-sight');
const VersionsView = later(async () => (await import('../versions-view')).VersionsView, 'versions');
const RippleView = later(async () => (await import('../ripple/ripple-view')).RippleView, 'ripple');
const MisfitsView = later(async () => (await import('../as-built/misfits-view')).MisfitsView, 'misfits');

export function Alongside() {
  const bench = useBench();
  const [open, setOpen] = useState(false);
  // There is no room for a rail, and what moved would give the answers away.
  if (bench.wall.value) return use(bench.wall.value.Bar, {});
  // A question that is open alone has the page to itself.
  if (openHead()?.form) return null;
  // Where no boat is known, nothing of one stands alongside.
  if (bench.boatless.value)
    return html`<aside class="alongside without-boat" aria-label="Versions and what moves">${use(VersionsView, {})} ${use(RippleView, {})}</aside>`;
  return html`<aside class=${open ? 'alongside open' : 'alongside'} aria-label="The hull and what moves">
    ${use(HullInSight, { open, onOpen: () => setOpen(!open) })}
    ${use(RippleView, {})}
    ${use(MisfitsView, {})}
    <p class="sheet-key">
      <button type="button" aria-pressed=${bench.boatOpen.value} onClick=${() => openSheet()}>The boat’s own sheet</button>
    </p>
    ${use(VersionsView, {})}
  </aside>`;

  function openSheet() {
    // On a phone what stands alongside lies over the sheet.
    setOpen(false);
    bench.goTo('boat');
  }
}
