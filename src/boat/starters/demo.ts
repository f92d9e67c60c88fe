/** The boat that the notebook opens on. */
import { readTable } from '../table/read-table';
import { isUnread, type Table } from '../table/table';
import ferryDory from './ferry-dory.json';

export const demoBoat: Table = known(ferryDory);

export function known(json: unknown): Table {
  const table = readTable(json);
  // A starter is part of the program: a fault in it is a fault of ours.
  if (isUnread(table)) throw new Error(`a starter boat can not be read: ${table.faults.join('; ')}`);
  return table;
}
