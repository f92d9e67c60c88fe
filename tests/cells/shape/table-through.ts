/** An invented hull of plain geometry as a plan's table, in metres. */
import type { Table } from '../../../src/boat';
import type { Lines } from '../../boat/shapes';

export function tableThrough(lines: Lines): Table {
  const edges = Object.keys(lines);
  const count = Object.values(lines)[0]?.length ?? 0;
  return {
    name: 'a hull of plain geometry',
    note: '',
    unit: 'm',
    offsetsTo: 'outside of skin',
    edges,
    stations: Array.from({ length: count }, (_, i) => ({
      name: `frame ${i}`,
      points: edges.map((edge) => {
        const [x, y, z] = lines[edge]![i]!; // each edge has a point a station
        return { x, y, z };
      }),
    })),
  };
}
