/** The boat as a file: saved to the device and opened from it. */
import type { TargetedEvent } from 'preact';
import { useRef } from 'preact/hooks';
import { writeBoatFile } from '../../boat';
import { boatOf } from '../../notebook/state/boat-state';
import { useBench } from '../bench';
import { bookletOpen } from '../booklet-open';
import { showPlace } from '../go-to';
import { html } from '../html';
import { linkOpen } from '../link-open';
import { offerFile } from '../offer-file';
import { openBoatFile } from './open-boat-file';

export function BoatKeeping() {
  const bench = useBench();
  const file = useRef<HTMLInputElement>(null);
  const save = () => {
    const boat = boatOf(bench.book.state.peek());
    offerFile(writeBoatFile(boat), fileName(boat.name), 'application/json');
  };
  /** What lies at the head of the notebook is opened, and the list of keys closed. */
  const lay =
    (open: () => void, title: string) =>
    ({ currentTarget }: TargetedEvent<HTMLButtonElement>) => {
      open();
      showPlace(title);
      currentTarget.closest('details')?.removeAttribute('open');
    };
  const link = lay(() => (linkOpen.value = 'make'), 'link-title');
  const booklet = lay(() => (bookletOpen.value = true), 'booklet-title');
  const open = async (event: TargetedEvent<HTMLInputElement>) => {
    const chosen = event.currentTarget.files?.[0];
    if (!chosen) return;
    await openBoatFile(bench, chosen);
    // The same file, mended, may be chosen again.
    if (file.current) file.current.value = '';
  };
  // What opens lies where the list of keys does on a phone.
  const openMine = ({ currentTarget }: TargetedEvent<HTMLButtonElement>) => {
    const keys = currentTarget.closest('details');
    if (keys) keys.open = false;
    bench.goTo('mine');
  };
  return html`<div class="file-keys">
    ${
      bench.boatless.value
        ? null
        : html`<button type="button" onClick=${() => bench.goTo('log')}>Log of the build</button>
      <button type="button" onClick=${save}>Save boat to a file</button>`
    }
    <button type="button" onClick=${openMine}>A formula of your own</button>
    <button type="button" onClick=${() => file.current?.click()}>Open boat from a file</button>
    <button type="button" onClick=${link}>Make a link</button>
    <button type="button" onClick=${booklet}>Print it as a booklet</button>
    <input ref=${file} class="unseen" type="file" accept=".json,application/json" tabindex="-1" aria-label="Boat file" onChange=${open} />
  </div>`;
}

function fileName(boat: string): string {
  const words = boat.toLowerCase().match(/[a-z0-9]+/g) ?? ['boat'];
  return `${words.join('-')}.boat.json`;
}
