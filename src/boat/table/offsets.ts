/** The offsets in metres, as the hull is drawn from them. */
import type { Vec3 } from '../../kernel';
import type { Named } from './named';
import { quantityName } from './names';
import { type Face, type Table, tableUnits } from './table';

/** x, half-breadth and height in metres; null where the number is missing. */
export type OffsetPoint = readonly [x: number | null, y: number | null, z: number | null];

export interface Offsets {
  /** Name of the boat, for the head of a sheet. */
  readonly boat?: string;
  readonly offsetsTo: Face;
  /** From the keel outward. */
  readonly edges: readonly Named[];
  /** From aft forward. */
  readonly stations: readonly Named[];
  /** By edge, then by station. */
  readonly points: readonly (readonly OffsetPoint[])[];
  /** Why a number that is written can't be used, as a sentence without its full stop; null where none is written. */
  readonly whyMissing?: (station: string, edge: string, column: Column) => string | null;
}

export type Column = 'x' | 'halfBreadth' | 'height';
export const columns: readonly Column[] = ['x', 'halfBreadth', 'height'];

/** An offset as a quantity: `frame3.sheer.x`. */
export function offsetName(station: string, edge: string, column: Column): string {
  return `${station}.${edge}.${column}`;
}

export function offsetsOf(table: Table): Offsets {
  const metres = tableUnits[table.unit];
  const inMetres = (value: number | null) => (value === null ? null : value * metres);
  return {
    boat: table.name,
    offsetsTo: table.offsetsTo,
    edges: table.edges.map((label) => ({ name: quantityName(label, 'edge'), label })),
    stations: table.stations.map(({ name }) => ({ name: quantityName(name, 'station'), label: name })),
    points: table.edges.map((_, edge) =>
      table.stations.map(({ points }): OffsetPoint => {
        const point = points[edge];
        return point ? [inMetres(point.x), inMetres(point.y), inMetres(point.z)] : [null, null, null];
      }),
    ),
  };
}

/** The point with all its numbers, or null. */
export function complete(point: OffsetPoint | undefined): Vec3 | null {
  if (!point) return null;
  const [x, y, z] = point;
  if (x === null || y === null || z === null) return null;
  return Number.isFinite(x) && Number.isFinite(y) && Number.isFinite(z) ? [x, y, z] : null;
}
