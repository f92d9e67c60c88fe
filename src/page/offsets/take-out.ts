/** The table taken out: to the clipboard for a spreadsheet, or as a file of comma-separated values. */
import { useState } from 'preact/hooks';
import { type Column, columns, offsetName, offsetsOf } from '../../boat';
import { type Notation, writeOffsetInFull } from '../../boat/table/offset-notation';
import { textOfCells } from '../../boat/table/pasted-cells';
import { type Bench, useBench } from '../bench';
import { html } from '../html';
import { columnWords, type GridState } from './grid-state';

export function TakeOut({ state }: { state: GridState }) {
  const bench = useBench();
  const [left, setLeft] = useState<string | null>(null);
  const copy = async () => {
    const text = textOfCells(cellsIn(bench, state.notation.peek()), 'tabs');
    try {
      await navigator.clipboard.writeText(text);
      setLeft(null);
      state.told.value = 'The whole table is on the clipboard; paste it into a spreadsheet.';
    } catch {
      // The browser may keep the clipboard shut: then the text is shown, to be copied by hand.
      setLeft(text);
      state.told.value =
        'This browser keeps its clipboard shut. The table stands below as text, to be copied by hand.';
    }
  };
  const save = () => {
    const text = textOfCells(cellsIn(bench, state.notation.peek()), 'commas');
    const words = bench.table
      .peek()
      .name.toLowerCase()
      .match(/[a-z0-9]+/g) ?? ['boat'];
    const name = `${words.join('-')}.offsets.csv`;
    const address = URL.createObjectURL(new Blob([text], { type: 'text/csv' }));
    const link = document.createElement('a');
    link.href = address;
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(address), 10_000);
    state.told.value = `Saved as ${name}.`;
  };
  return html`<div class="keys offsets-out">
    <button type="button" onClick=${() => void copy()}>Copy the table</button>
    <button type="button" onClick=${save}>Save the table as CSV</button>
    ${
      left === null
        ? null
        : html`<textarea readonly rows="6" aria-label="The table as text" onFocus=${(event: Event) => (event.currentTarget as HTMLTextAreaElement).select()}>${left}</textarea>`
    }
  </div>`;
}

/** Every number of the design with headings, each as a text that reads back as exactly itself in this notation. */
function cellsIn({ book, table }: Bench, notation: Notation): string[][] {
  const graph = book.inHand.peek();
  const { edges, stations } = offsetsOf(table.peek());
  const cell = (station: string, edge: string, column: Column) => {
    const name = offsetName(station, edge, column);
    const value = graph.designed(name);
    return typeof value === 'number' ? writeOffsetInFull(value, notation) : (graph.entry(name)?.text ?? '');
  };
  return [
    ['Station', ...edges.flatMap(({ label }) => columns.map((column) => `${label} ${columnWords[column]}`))],
    ...stations.map(({ name, label }) => [
      label,
      ...edges.flatMap((edge) => columns.map((column) => cell(name, edge.name, column))),
    ]),
  ];
}
