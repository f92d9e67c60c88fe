/**
 * The table of offsets as a plan or a boat file gives it: numbers in the plan's unit, names in the
 * builder's words. A number that is still missing is null. The axes are those of hull.ts.
 */
import { FOOT, INCH } from '../../measure/si';

/** Units a table may be written in, in metres. */
export const tableUnits = { mm: 0.001, cm: 0.01, m: 1, in: INCH, ft: FOOT } as const;
export type TableUnit = keyof typeof tableUnits;

/** The face of the skin that offsets are measured to. */
export type Face = 'outside of skin' | 'inside of skin';

export const AXES = 'x forward from the after end of the bottom, y half-breadth, z height above base';

export const MOST_STATIONS = 40;
export const MOST_EDGES = 8;
export const LONGEST_NAME = 40;
export const LONGEST_NOTE = 2000;

export interface TablePoint {
  readonly x: number | null;
  readonly y: number | null;
  readonly z: number | null;
}

export interface TableStation {
  readonly name: string;
  /** One point an edge, in the order of the table's edges. */
  readonly points: readonly TablePoint[];
}

export interface Table {
  readonly name: string;
  readonly note: string;
  readonly unit: TableUnit;
  readonly offsetsTo: Face;
  /** From the keel outward and up to the sheer. */
  readonly edges: readonly string[];
  /** From aft forward. */
  readonly stations: readonly TableStation[];
}

/** What could not be read, as sentences that say where. */
export interface Unread {
  readonly faults: readonly string[];
}

export function isUnread(read: object): read is Unread {
  return 'faults' in read;
}

/** The table as it stands in a file; reading it again gives the same table. */
export function writeTable(table: Table): Record<string, unknown> {
  return {
    name: table.name,
    ...(table.note === '' ? {} : { note: table.note }),
    unit: table.unit,
    axes: AXES,
    offsetsTo: table.offsetsTo,
    edges: [...table.edges],
    stations: table.stations.map((station) => ({
      name: station.name,
      ...Object.fromEntries(table.edges.map((edge, i) => [edge, { ...station.points[i] }])),
    })),
  };
}
