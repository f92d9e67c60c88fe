/** Puts a boat on the bench from a file. */
import { readBoatFile } from '../../boat';
import type { Bench } from '../bench';

/** Bytes, up to three a letter; a larger file is no boat and is not even read. */
const LARGEST = 9_000_000;
/** Faults told of a file that can't be opened; more than these help nobody. */
const TOLD = 3;

export async function openBoatFile(bench: Bench, file: File): Promise<void> {
  const refuse = (why: string) => {
    bench.notice.value = { says: `${file.name} was not opened: ${why}.` };
  };
  if (file.size > LARGEST) {
    refuse('it is too large for a boat file');
    return;
  }
  const boat = readBoatFile(await file.text());
  if ('faults' in boat) refuse(boat.faults.slice(0, TOLD).join('; '));
  else await bench.openBoat(boat);
}
