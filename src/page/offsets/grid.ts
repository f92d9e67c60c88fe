/** The grid itself: a row a station, the columns shown, and under a row what is wrong in it. */
import { useComputed, useSignalEffect } from '@preact/signals';
import { Fragment } from 'preact';
import { type Named, offsetName, offsetsOf } from '../../boat';
import { notations, writeOffset } from '../../boat/table/offset-notation';
import type { GridColumn } from '../../boat/table/pasted-landing';
import { useBench } from '../bench';
import { html, use } from '../html';
import { capital } from '../words';
import { Box } from './box';
import { columnWords, type GridState, leadOf } from './grid-state';
import { HeldNote, HeldWord } from './held';

export type PasteAt = (text: string, row: number, column: number) => boolean;

export function Grid({ state, paste }: { state: GridState; paste: PasteAt }) {
  const { table } = useBench();
  const { edges, stations } = offsetsOf(table.value);
  const columns = state.columns.value;
  const over = headsOver(columns);
  return html`<div class="table-wrap offsets-wrap">
    <table class=${`offsets-grid ${state.notation.value}`} role="grid" aria-label="Table of offsets">
      <caption>To the ${table.value.offsetsTo}, in ${notations[state.notation.value]}${state.notation.value === 'eighths' ? '; shown to the nearest sixteenth, kept exactly' : ''}</caption>
      <thead>
        <tr>
          <th rowspan="2" scope="col">Station</th>
          ${over.map(({ edge, span }) => html`<th scope="colgroup" colspan=${span}>${capital(edge.label)}</th>`)}
        </tr>
        <tr>${columns.map(({ column }) => html`<th scope="col">${columnWords[column]}</th>`)}</tr>
      </thead>
      <tbody>
        ${stations.map((station, row) => {
          // Of two stations that can't be told apart only the first has numbers.
          const isOwn =
            station.name !== '' && stations.findIndex(({ name }) => name === station.name) === row;
          return use(Row, {
            key: `${row} ${station.name}`,
            state,
            station,
            edges,
            columns,
            row,
            isOwn,
            paste,
          });
        })}
      </tbody>
    </table>
  </div>`;
}

/** Neighbouring columns of one edge under one heading. */
function headsOver(
  columns: readonly GridColumn[],
): readonly { readonly edge: Named; readonly span: number }[] {
  const heads: { edge: Named; span: number }[] = [];
  for (const { edge } of columns) {
    const last = heads.at(-1);
    if (last?.edge.name === edge.name) last.span += 1;
    else heads.push({ edge, span: 1 });
  }
  return heads;
}

interface RowProps {
  readonly state: GridState;
  readonly station: Named;
  readonly edges: readonly Named[];
  readonly columns: readonly GridColumn[];
  readonly row: number;
  readonly isOwn: boolean;
  readonly paste: PasteAt;
}

function Row({ state, station, edges, columns, row, isOwn, paste }: RowProps) {
  const { table } = useBench();
  const isPlane = useComputed(() => state.isPlane(station.name)).value;
  // Once its edges stand apart a station stays open, so that no box goes from under the hand.
  useSignalEffect(() => {
    const { stations } = table.value;
    const isEnd = row === 0 || row >= stations.length - 1;
    const { opened } = state;
    if (isOwn && !isEnd && !state.isPlane(station.name) && !opened.value.has(station.name))
      opened.value = new Set([...opened.peek(), station.name]);
  });
  const lead = leadOf(state);
  return use(
    Fragment,
    {},
    html`<tr>
      <th scope="row">${station.label}</th>
      ${columns.map(({ edge, column }, c) => {
        const name = offsetName(station.name, edge.name, column);
        const shared = column === 'x' && isPlane;
        if (!isOwn) return html`<td>—</td>`;
        if (shared && c !== lead) return html`<td class="shared">${use(Shared, { state, name })}</td>`;
        const names = shared ? edges.map((one) => offsetName(station.name, one.name, 'x')) : [name];
        const label = shared
          ? `${station.label}: forward, all edges`
          : `${station.label}, ${edge.label}: ${columnWords[column]}`;
        return html`<td data-at=${`${row} ${c}`} data-quantity=${name}>
          ${use(Box, { key: name, state, name, names, label, row, column: c, paste: (text) => paste(text, row, c) })}${use(HeldWord, { state, name })}
        </td>`;
      })}
    </tr>`,
    isOwn ? use(RowFaults, { state, station }) : null,
    isOwn ? use(HeldNote, { state, station }) : null,
  );
}

/** The number that another box of the row holds for all edges. */
function Shared({ state, name }: { state: GridState; name: string }) {
  const value = useBench().book.inHand.value.designed(name);
  return html`<span>${typeof value === 'number' ? writeOffset(value, state.notation.value).text : ''}</span>`;
}

interface RowFaultsProps {
  readonly state: GridState;
  readonly station: Named;
}

/** What is wrong in the row's boxes, each sentence tied to its box. */
function RowFaults({ state, station }: RowFaultsProps) {
  const found = useComputed(() =>
    JSON.stringify(
      state.columns.value.flatMap(({ edge, column }, c): [string, string][] => {
        if (column === 'x' && c !== leadOf(state) && state.isPlane(station.name)) return [];
        const name = offsetName(station.name, edge.name, column);
        const says = state.faultOf(name);
        return says ? [[name, says]] : [];
      }),
    ),
  );
  const faults = JSON.parse(found.value) as [string, string][];
  if (faults.length === 0) return null;
  return html`<tr class="row-says">
    <td colspan=${state.columns.value.length + 1}>
      ${faults.map(([name, says]) => html`<p class="says" id=${`says-${name}`} role="status">${capital(says)}.</p>`)}
    </td>
  </tr>`;
}
