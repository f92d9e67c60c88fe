/** The same steps for each answer of one choice, as a table, both versions; the row in hand is marked. A table of many columns stands in parts, one under the other. */
import { useRef } from 'preact/hooks';
import type { Cell, Instance } from '../../cells';
import { inRow, isInHand, rowsOf, type TableRow } from '../../cells/form/rows';
import { isIssue } from '../../measure';
import type { Graph } from '../../notebook';
import { type Bench, optionsFor, sayOf, useBench, versionWords } from '../bench';
import { html } from '../html';
import { entryOf } from '../input/entry-text';
import { useLive } from '../picture/live';

type Table = NonNullable<Cell['table']>;

export function CellTable({ instance, table }: { instance: Instance; table: Table }) {
  const host = useRef<HTMLDivElement>(null);
  const bench = useBench();
  const made = useLive(host, bench, () => tableOf(instance, table, bench), { atOnce: true });
  return html`<div ref=${host}>${made}</div>`;
}

function tableOf(instance: Instance, table: Table, bench: Bench) {
  const { book } = bench;
  const graph = book.inHand.value;
  const beside = bench.other.value;
  const { cell, name } = instance;
  const choiceName = `${name}.${table.over}`;
  const spec = cell.inputs[table.over];
  const rows = rowsOf(instance, optionsFor(graph, choiceName), graph).map((row) => ({
    row,
    present: isInHand(instance, row, graph),
    texts: table.columns.map((column) => {
      const here = textIn(graph, row, column);
      const there = beside && textIn(beside.graph, row, column);
      return { ...here, other: there && there.text !== here.text ? there.text : null };
    }),
  }));
  // Typed numbers that hang on no hull give every row the same, as one row does: the answers above say it already.
  const [head, ...rest] = rows.map(({ texts }) => texts.map(({ text }) => text).join('\n'));
  if (head === undefined || rest.every((row) => row === head)) return null;
  const choose = ({ value }: TableRow) => {
    book.write({
      [choiceName]:
        typeof value === 'string'
          ? value
          : entryOf(value, graph.quantity(choiceName)?.kind ?? 'number', bench.shown.peek()),
    });
    book.settle();
  };
  const most = bench.shown.value.length === 'mm' ? MOST_COLUMNS : MOST_IN_INCHES;
  const parts = partsOf(table.columns.length, most);
  const close = table.columns.length >= Math.min(most, CLOSE_FROM);
  return html`<div class="table-wrap cell-table" tabindex="0" role="group" aria-label=${table.caption}>
    ${parts.map(
      ([from, to]) => html`<table class=${close ? 'close' : ''}>
        <caption>${from === 0 ? table.caption : html`<span class="unseen">${table.caption}, further columns</span>`}</caption>
        <thead>
          <tr>
            <th scope="col">${spec?.label ?? ''}</th>
            ${table.columns.slice(from, to).map((column) => html`<th scope="col">${column.label}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            ({ row, present, texts }) => html`<tr class=${present ? 'present' : ''}>
              <th scope="row">${from === 0 ? rowKey(row, present) : row.label}</th>
              ${texts.slice(from, to).map(
                ({ text, isNumber, other }) => html`<td class=${isNumber ? 'number' : ''}>
                  ${text}
                  ${other !== null && beside ? html`<span class=${`other ${beside.version}`}><span class="unseen">${versionWords[beside.version]}: </span>${other}</span>` : null}
                </td>`,
              )}
            </tr>`,
          )}
        </tbody>
      </table>`,
    )}
    ${beside && rows.some(({ texts }) => texts.some(({ other }) => other !== null)) ? html`<p class=${`other ${beside.version}`}>Below a figure, where it differs: ${versionWords[beside.version].toLowerCase()}.</p>` : null}
  </div>`;

  function rowKey(row: TableRow, present: boolean) {
    return html`<button type="button" class="quiet" aria-pressed=${present} onClick=${() => choose(row)}>
      ${row.label}
    </button>`;
  }

  function textIn(of: Graph, row: TableRow, column: Table['columns'][number]) {
    const value = inRow(instance, row, column, of);
    const text = isIssue(value)
      ? 'no value yet'
      : sayOf(of, `${name}.${column.of}`, value, bench.shown.value);
    return { text, isNumber: typeof value === 'number' };
  }
}

/** So many columns beside the rows' names can be read in the width of a cell. */
const MOST_COLUMNS = 8;
/** `2 ft 7 5/16 in scant` is wider than its millimetres. */
const MOST_IN_INCHES = 5;
/** From so many columns on, each is set closer. */
const CLOSE_FROM = 7;

/** From which column to which each part goes: as few parts as can be, all about as wide. */
function partsOf(columns: number, most: number): readonly (readonly [from: number, to: number])[] {
  const each = Math.ceil(columns / Math.ceil(columns / most));
  return Array.from({ length: Math.ceil(columns / each) }, (_, part) => [part * each, (part + 1) * each]);
}
