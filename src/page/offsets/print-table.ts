/** The table on paper: a table for each kind of number, whatever columns stand in the grid. Made only while printing. */
import { type Column, offsetName, offsetsOf } from '../../boat';
import { type Notation, notations, writeOffset } from '../../boat/table/offset-notation';
import { useBench } from '../bench';
import { html, use } from '../html';
import { printing } from '../printing';
import { capital } from '../words';
import type { GridState } from './grid-state';
import { heldBy, heldWords } from './held';

const kinds: readonly (readonly [Column, string])[] = [
  ['halfBreadth', 'Half-breadths from the centreline'],
  ['height', 'Heights above the base line'],
  ['x', 'Forward of the after end of the bottom'],
];

export function PrintTable({ state }: { state: GridState }) {
  const bench = useBench();
  if (!printing.value) return null;
  const held = (name: string) => (heldBy(bench, name) === null ? '' : ` (${heldWords(bench, state, name)})`);
  return use(TableOnPaper, { notation: state.notation.value, held });
}

interface TableOnPaperProps {
  readonly notation: Notation;
  /** What is said of a number beside it. */
  readonly held?: (name: string) => string;
}

export function TableOnPaper({ notation, held }: TableOnPaperProps) {
  const { book, table } = useBench();
  const graph = book.inHand.value;
  const { edges, stations } = offsetsOf(table.value);
  const text = (name: string) => {
    const value = graph.designed(name);
    const text =
      typeof value === 'number' ? writeOffset(value, notation).text : (graph.entry(name)?.text ?? '');
    return `${text}${held?.(name) ?? ''}`;
  };
  return html`<div class="offsets-print">
    ${kinds.map(
      ([column, caption]) => html`<table>
        <caption>${caption}, to the ${table.value.offsetsTo}, in ${notations[notation]}</caption>
        <thead><tr><th scope="col">Station</th>${edges.map(({ label }) => html`<th scope="col">${capital(label)}</th>`)}</tr></thead>
        <tbody>
          ${stations.map(
            ({ name, label }) => html`<tr>
              <th scope="row">${label}</th>
              ${edges.map((edge) => html`<td>${text(offsetName(name, edge.name, column))}</td>`)}
            </tr>`,
          )}
        </tbody>
      </table>`,
    )}
  </div>`;
}
