/** Runs one cell as the notebook would, from typed entries and, if given, a boat. */
import { once } from '../../src/boat/once';
import { demoBoat, type Table, type Value } from '../../src/boat';
import {
  answerInWords,
  type Applies,
  type Cell,
  type Chart,
  onHand,
  plainInstance,
  type Say,
  scopeOf,
  underName,
  type Values,
  valuesOf,
  warningsOf,
} from '../../src/cells';
import { inRow, rowsOf, type TableRow } from '../../src/cells/form/rows';
import type { Drawing } from '../../src/drawing';
import { isIssue, plainShown, type Shown, write, writeInPicture } from '../../src/measure';
import { catalogueOf } from '../../src/notebook/graph/catalogue';
import type { Graph } from '../../src/notebook/graph/graph';
import { standing } from '../../src/notebook/graph/standing';

export interface Tried {
  /** All values by key; numbers are SI. Keys of table rows are `<option>.<step>`. */
  readonly all: Readonly<Record<string, Value>>;
  /** The number under a key; throws where it is an issue, with its sentence. */
  number(key: string): number;
  /** The rows of the cell's table, and what stands in one of them under a column. */
  readonly rows: readonly TableRow[];
  inRow(id: string, column: string): Value;
  readonly issues: Readonly<Record<string, string>>;
  readonly warnings: readonly Applies[];
  /** The answer in a sentence, or what it waits for. */
  readonly words: string;
  readonly drawing: Drawing | undefined;
  readonly chart: Chart | undefined;
}

type Stands = ReturnType<typeof standing>;
const known = new WeakMap<Table, WeakMap<Cell, Map<string, Stands>>>();

/** How a cell stands on a boat before anything is written: once for all tries, so that her hull is drawn once. */
function stands(cell: Cell, table: Table, shown: Shown, beside: readonly Cell[]): Stands {
  const onBoat = known.get(table) ?? new WeakMap<Cell, Map<string, Stands>>();
  known.set(table, onBoat);
  const ofCell = onBoat.get(cell) ?? new Map<string, Stands>();
  onBoat.set(cell, ofCell);
  const units = JSON.stringify([shown, beside.map(({ id }) => id)]);
  const before = ofCell.get(units);
  if (before) return before;
  const now = standing(
    () => table,
    (of, ends) => catalogueOf(of, [cell, ...beside].map(plainInstance), ends),
    { entries: () => nothing, shown },
  );
  ofCell.set(units, now);
  return now;
}
const nothing = {};

/** The graph of a boat on which one cell stands, with these written, by full name. */
export const graphWith = (
  cell: Cell,
  entries: Readonly<Record<string, string>>,
  table: Table = demoBoat,
  shown: Shown = plainShown,
  beside: readonly Cell[] = [],
): Graph => stands(cell, table, shown, beside)((design) => design.with(() => entries)).value.graph;

/**
 * @param entries by the cell's own keys (`thickness`) or by full name (`keelson.thickness`)
 * @param beside other cells that stand on the boat too
 * @param table the boat; without one the cell stands on the ferry dory, and every input can be typed over
 */
export function tryCell(
  cell: Cell,
  entries: Readonly<Record<string, string>> = {},
  table: Table = demoBoat,
  shown: Shown = plainShown,
  beside: readonly Cell[] = [],
): Tried {
  const instance = plainInstance(cell);
  const written = Object.fromEntries(
    Object.entries(entries).map(([key, text]) => [key.includes('.') ? key : `${cell.id}.${key}`, text]),
  );
  const graph = graphWith(cell, written, table, shown, beside);
  for (const name of Object.keys(written))
    if (!graph.has(name)) throw new Error(`no quantity ${name} to write`);
  const keys = [...Object.keys(cell.inputs), ...Object.keys(cell.steps)];
  const valueOf = (key: string) => graph.value(`${cell.id}.${key}`);
  const say: Say = (value, kind, options) => write(value, kind, shown, options);

  // Each worked out when it is asked for: most tests look at a number or two of a whole boat and a table.
  const all = once((): Readonly<Record<string, Value>> => {
    const own = graph.names.filter((name) => name.startsWith(`${cell.id}.`));
    return Object.fromEntries(own.map((name) => [name.slice(cell.id.length + 1), graph.value(name)]));
  });
  const picture = once(() => {
    const values = Object.fromEntries(keys.map((key) => [key, valueOf(key)]));
    if (Object.values(values).some(isIssue)) return null;
    const hull = graph.hull();
    const suppose = graph.supposing((read) => valuesOf(instance, read));
    const on = onHand(cell, values as Values, {
      say: (value, kind, options) => writeInPicture(value, kind, shown, options),
      hull: isIssue(hull) ? null : hull,
      found: () => null,
      ask: (fact) => {
        const found = graph.workOut((read) => scopeOf(instance, read).ask(fact));
        if (isIssue(found)) throw new Error(found.issue);
        return found;
      },
      with: (changes) => suppose(underName(instance, changes)),
    });
    return { values: values as Values, on };
  });
  const issues = once(() =>
    Object.fromEntries(
      Object.entries(all()).flatMap(([key, value]) => (isIssue(value) ? [[key, value.issue]] : [])),
    ),
  );
  const rows = once(() => {
    const over = graph.quantity(`${cell.id}.${cell.table?.over}`);
    return rowsOf(instance, (over && 'options' in over && over.options) || [], graph);
  });
  const warnings = once(() => warningsOf(instance, graph.workOut, say));
  const words = once(() => {
    const told = graph.workOut((by) => answerInWords(instance, by, say));
    return isIssue(told) ? told.issue : told;
  });
  const drawing = once(() => {
    const of = picture();
    return of ? cell.draw?.(of.values, of.on) : undefined;
  });
  const chart = once(() => {
    const of = picture();
    return of ? cell.chart?.(of.values, of.on) : undefined;
  });
  return {
    get all() {
      return all();
    },
    number: (key) => {
      const value = valueOf(key);
      if (typeof value !== 'number')
        throw new Error(`${cell.id}.${key}: ${isIssue(value) ? value.issue : value}`);
      return value;
    },
    get rows() {
      return rows();
    },
    inRow: (id, of) => {
      const row = rows().find((one) => one.id === id);
      const column = cell.table?.columns.find((one) => one.of === of);
      if (!row || !column) throw new Error(`${cell.id} has no ${of} in a row ${id}`);
      return inRow(instance, row, column, graph);
    },
    get issues() {
      return issues();
    },
    get warnings() {
      return warnings();
    },
    get words() {
      return words();
    },
    get drawing() {
      return drawing();
    },
    get chart() {
      return chart();
    },
  };
}
