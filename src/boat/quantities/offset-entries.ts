/**
 * The offsets as entries: three a point, `frame3.sheer.x`, `.halfBreadth`, `.height`, each with the plan's
 * number as its preset.
 */
import type { Given, Read } from './quantity';
import { type Column, columns, offsetName, offsetsOf, type Offsets } from '../table/offsets';
import type { Table } from '../table/table';
import { layoutOf } from './lists';

export function offsetEntries(table: Table): Given[] {
  const step = table.unit === 'in' || table.unit === 'ft' ? '1/8 in' : '1 mm';
  const { edges, stations } = layoutOf(table);
  const { edges: allEdges, stations: allStations } = offsetsOf(table);
  return stations.flatMap((station) => {
    const row = table.stations[allStations.findIndex(({ name }) => name === station.name)];
    return edges.flatMap((edge) => {
      const point = row?.points[allEdges.findIndex(({ name }) => name === edge.name)];
      const presets: Record<Column, string> = {
        x: inUnit(point?.x ?? null, table),
        halfBreadth: inUnit(point?.y ?? null, table),
        height: inUnit(point?.z ?? null, table),
      };
      return columns.map((column): Given => ({
        name: offsetName(station.name, edge.name, column),
        kind: 'length',
        meaning: `${columnMeanings[column]} of the ${edge.label} at ${station.label}`,
        source: `the plan's table of offsets, to the ${table.offsetsTo}`,
        preset: presets[column],
        // A half-breadth below nothing is a fault of the table, with words of its own.
        min: '-50 m',
        max: '50 m',
        step,
      }));
    });
  });
}

const columnMeanings: Readonly<Record<Column, string>> = {
  x: 'position along the boat',
  halfBreadth: 'half-breadth',
  height: 'height',
};

/** A number with its unit, without an exponent, which reads back as the same number; empty where it is missing. */
function inUnit(value: number | null, { unit }: Table): string {
  if (value === null) return '';
  const plain = String(value);
  if (!plain.includes('e')) return `${plain} ${unit}`;
  // So large a number is whole, and keeps its noughts: what is said of it is that it is too large.
  const long = Math.abs(value) >= 1 ? String(BigInt(value)) : value.toFixed(20).replace(/\.?0+$/, '');
  return `${long} ${unit}`;
}

/** The offsets as the entries have them now; one that can't be read is missing, and costs only what runs through it. */
export function offsetsAsWritten(table: Table, read: Read): Offsets {
  const offsets = offsetsOf(table);
  return {
    ...offsets,
    whyMissing: (station, edge, column) => read.why?.(offsetName(station, edge, column)) ?? null,
    points: offsets.edges.map((edge) =>
      offsets.stations.map((station) => {
        const number = (column: Column) => read.maybe(offsetName(station.name, edge.name, column));
        return [number('x'), number('halfBreadth'), number('height')];
      }),
    ),
  };
}
