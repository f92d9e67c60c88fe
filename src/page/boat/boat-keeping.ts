/** The boat as a file: saved to the device and opened from it. */
import type { TargetedEvent } from 'preact';
import { useRef } from 'preact/hooks';
import { readBoatFile, writeBoatFile } from '../../boat';
import { keepOnly } from '../../notebook';
import { useBench } from '../bench';
import { html } from '../html';

/** Bytes, up to three a letter; a larger file is no boat and is not even read. */
const LARGEST = 9_000_000;
/** Faults told of a file that can't be opened; more than these help nobody. */
const TOLD = 3;

export function BoatKeeping() {
  const bench = useBench();
  const file = useRef<HTMLInputElement>(null);
  const save = () => {
    const state = bench.book.state.peek();
    const { name, table, entries, asBuilt, notebooks } = keepOnly(state, state.inHand);
    offer(writeBoatFile({ name, table, entries, asBuilt, notebooks }), fileName(name));
  };
  const open = async (event: TargetedEvent<HTMLInputElement>) => {
    const chosen = event.currentTarget.files?.[0];
    if (!chosen) return;
    const refuse = (why: string) => {
      bench.notice.value = { says: `${chosen.name} was not opened: ${why}.` };
    };
    if (chosen.size > LARGEST) refuse('it is too large for a boat file');
    else {
      const boat = readBoatFile(await chosen.text());
      if ('faults' in boat) refuse(boat.faults.slice(0, TOLD).join('; '));
      else await bench.openBoat(boat.table, boat.entries, boat.asBuilt, boat.name, boat.notebooks);
    }
    // The same file, mended, may be chosen again.
    if (file.current) file.current.value = '';
  };
  return html`<div class="file-keys">
    ${bench.boatless.value ? null : html`<button type="button" onClick=${save}>Save boat to a file</button>`}
    <button type="button" onClick=${() => file.current?.click()}>Open boat from a file</button>
    <input ref=${file} class="unseen" type="file" accept=".json,application/json" tabindex="-1" aria-label="Boat file" onChange=${open} />
  </div>`;
}

function offer(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 1000);
}

function fileName(boat: string): string {
  const words = boat.toLowerCase().match(/[a-z0-9]+/g) ?? ['boat'];
  return `${words.join('-')}.boat.json`;
}
