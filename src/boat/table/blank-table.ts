/** A table with names and no numbers yet, to be filled from a plan. */
import { emptyPoint } from './table-edits';
import { type Face, LONGEST_NAME, MOST_EDGES, MOST_STATIONS, type Table, type TableUnit } from './table';

export const FEWEST_STATIONS = 3;
export const FEWEST_EDGES = 2;

export interface Wanted {
  readonly name: string;
  readonly stations: number;
  readonly edges: number;
  readonly unit: TableUnit;
  readonly offsetsTo: Face;
}

/** @throws a sentence on what is asked too little or too much */
export function blankTable({ name, stations, edges, unit, offsetsTo }: Wanted): Table {
  const label = name.trim();
  if (label === '') throw new Error('the boat needs a name');
  if (label.length > LONGEST_NAME)
    throw new Error(`the name of the boat has at most ${LONGEST_NAME} letters`);
  within('stations', stations, FEWEST_STATIONS, MOST_STATIONS);
  within('edges', edges, FEWEST_EDGES, MOST_EDGES);
  const edgeNames = ['keel', ...chines(edges - 2), 'sheer'];
  const frames = Array.from({ length: stations - 2 }, (_, i) => `frame ${i + 1}`);
  return {
    name: label,
    note: '',
    unit,
    offsetsTo,
    edges: edgeNames,
    stations: ['transom', ...frames, 'stem'].map((station) => ({
      name: station,
      points: edgeNames.map((_, edge) => emptyPoint(edge)),
    })),
  };
}

function chines(count: number): readonly string[] {
  if (count < 2) return ['chine'].slice(0, count);
  return count === 2
    ? ['lower chine', 'upper chine']
    : Array.from({ length: count }, (_, i) => `chine ${i + 1}`);
}

function within(what: string, count: number, least: number, most: number): void {
  if (!Number.isInteger(count) || count < least || count > most)
    throw new Error(`a table takes ${least} to ${most} ${what}`);
}
