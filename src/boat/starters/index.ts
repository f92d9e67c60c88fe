/** Invented boats to begin with: three flat bottoms, one misread table, one vee bottom. */
import { isUnread, readTable, type Table } from '../table';
import classSkiff from './class-skiff.json';
import creekPunt from './creek-punt.json';
import ferryDoryMisread from './ferry-dory-misread.json';
import ferryDory from './ferry-dory.json';
import veeLaunch from './vee-launch.json';

export interface Starter {
  readonly id: string;
  readonly table: Table;
}

/** The boat that the notebook opens on. */
export const demoBoat: Table = known(ferryDory);

export const starters: readonly Starter[] = [
  { id: 'ferry-dory', table: demoBoat },
  { id: 'ferry-dory-misread', table: known(ferryDoryMisread) },
  { id: 'class-skiff', table: known(classSkiff) },
  { id: 'creek-punt', table: known(creekPunt) },
  { id: 'vee-launch', table: known(veeLaunch) },
];

/** The table of a starter, or null. */
export function starter(id: string): Table | null {
  return starters.find((one) => one.id === id)?.table ?? null;
}

function known(json: unknown): Table {
  const table = readTable(json);
  // A starter is part of the program: a fault in it is a fault of ours.
  if (isUnread(table)) throw new Error(`a starter boat can not be read: ${table.faults.join('; ')}`);
  return table;
}
