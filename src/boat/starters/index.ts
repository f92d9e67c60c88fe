/** Invented boats to begin with: three flat bottoms, one misread table, one vee bottom. */
import type { Table } from '../table/table';
import classSkiff from './class-skiff.json';
import creekPunt from './creek-punt.json';
import { demoBoat, known } from './demo';
import ferryDoryMisread from './ferry-dory-misread.json';
import veeLaunch from './vee-launch.json';

export interface Starter {
  readonly id: string;
  readonly table: Table;
}

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
