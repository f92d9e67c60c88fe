/** The boat as a file: saved to the device and opened from it. */
import type { TargetedEvent } from 'preact';
import { useRef } from 'preact/hooks';
import { readBoatFile, writeBoatFile } from '../boat';
import { useBench } from './bench';
import { html } from './html';

export function BoatKeeping() {
  const bench = useBench();
  const file = useRef<HTMLInputElement>(null);
  const save = () => {
    const { table, entries, second } = bench.book.state.peek();
    const kept =
      bench.book.state.peek().inHand === 'second' && second ? withChanges(entries, second) : entries;
    const text = writeBoatFile({ name: table.name, table, entries: kept });
    const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
    const link = document.createElement('a');
    link.href = address;
    link.download = `${table.name.toLowerCase().replace(/[^a-z0-9]+/g, '-')}.boat.json`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(address), 1000);
  };
  const open = async (event: TargetedEvent<HTMLInputElement>) => {
    const chosen = event.currentTarget.files?.[0];
    if (!chosen) return;
    const boat = readBoatFile(await chosen.text());
    if (file.current) file.current.value = '';
    if ('faults' in boat)
      bench.notice.value = `${chosen.name} was not opened: ${boat.faults.slice(0, 3).join('; ')}.`;
    else bench.openBoat(boat.table, boat.entries);
  };
  return html`<button type="button" onClick=${save}>Save boat</button>
    <button type="button" onClick=${() => file.current?.click()}>Open boat</button>
    <input ref=${file} class="unseen" type="file" accept=".json,application/json" tabindex="-1" aria-label="Boat file" onChange=${open} />`;
}

function withChanges(
  entries: Readonly<Record<string, string>>,
  changes: Readonly<Record<string, string | null>>,
) {
  const all: Record<string, string> = { ...entries };
  for (const [name, text] of Object.entries(changes)) {
    if (text === null) delete all[name];
    else all[name] = text;
  }
  return all;
}
