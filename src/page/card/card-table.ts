/** A cell's table for paper: every row in both versions, the row in hand marked by a word and not by a colour. */
import type { Instance } from '../../cells';
import { offsetName, offsetsOf } from '../../boat';
import { inRow, isInHand, rowsOf, type TableRow } from '../../cells/form/rows';
import { isIssue } from '../../measure';
import type { Graph } from '../../notebook';
import { type Bench, optionsFor } from '../bench';
import { graphsOf, inEach, type Said, tiedValue } from './versions';

export interface CardTable {
  readonly caption: string;
  readonly over: string;
  readonly columns: readonly string[];
  readonly rows: readonly CardRow[];
}

export interface CardRow {
  readonly id: string;
  readonly head: string;
  readonly inHand: boolean;
  readonly cells: readonly (readonly Said[])[];
}

/** @returns null where the cell has no table, or where every row would say the same */
export function cardTable(instance: Instance, bench: Bench): CardTable | null {
  const { cell, name } = instance;
  const { table } = cell;
  if (cell.view === 'offsets') return offsetsTable(instance, bench);
  if (!table) return null;
  const choiceName = `${name}.${table.over}`;
  const spec = cell.inputs[table.over];
  const graph = bench.book.inHand.value;
  const say = (of: Graph, row: TableRow, column: (typeof table.columns)[number]) => {
    const value = inRow(instance, row, column, of);
    if (isIssue(value)) return 'no value yet';
    return tiedValue(value, `${name}.${column.of}`, of, bench);
  };
  const rows = rowsOf(instance, optionsFor(graph, choiceName), graph).map((row) => ({
    id: row.id,
    head: row.label,
    inHand: isInHand(instance, row, graph),
    cells: table.columns.map((column) => inEach(graphsOf(bench), (of) => say(of, row, column))),
  }));
  const [head, ...rest] = rows.map(({ cells }) => JSON.stringify(cells));
  if (head === undefined || (rest.length > 0 && rest.every((row) => row === head))) return null;
  return {
    caption: table.caption,
    over: spec?.label ?? '',
    columns: table.columns.map(({ label }) => label),
    rows,
  };
}

/** The whole table of offsets, as it is typed on the page. */
function offsetsTable({ name }: Instance, bench: Bench): CardTable {
  const { offsetsTo } = bench.table.value;
  const { edges, stations } = offsetsOf(bench.table.value);
  const kinds = [
    ['halfBreadth', 'out'],
    ['height', 'up'],
    ['x', 'forward'],
  ] as const;
  const columns = kinds.flatMap(([column, word]) =>
    edges.map((edge) => ({ edge: edge.name, column, label: `${edge.label} ${word}` })),
  );
  const inHand = bench.book.inHand.value.value(`${name}.station`);
  return {
    caption: `The table, to the ${offsetsTo}`,
    over: 'Station',
    columns: columns.map(({ label }) => label),
    rows: stations.map((station) => ({
      id: station.name,
      head: station.label,
      inHand: station.name === inHand,
      cells: columns.map(({ edge, column }) => {
        const of = offsetName(station.name, edge, column);
        return inEach(graphsOf(bench), (graph) => tiedValue(graph.value(of), of, graph, bench));
      }),
    })),
  };
}
