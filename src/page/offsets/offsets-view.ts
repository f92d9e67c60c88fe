/** The grid of offsets with what belongs to it: notation, face, columns shown, paste, faults, stations and edges, a new table. */
import './offsets.css';
import type { TargetedEvent } from 'preact';
import { useId, useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { type Column, type Face, offsetsOf } from '../../boat';
import { type Notation, notations } from '../../boat/table/offset-notation';
import { toFace } from '../../boat/table/table-edits';
import { useBench } from '../bench';
import { Disclosure } from '../disclosure';
import { html, use } from '../html';
import { capital } from '../words';
import { FaultList } from './fault-list';
import { Grid } from './grid';
import { createGridState, type GridState, isShown, type ColumnsShown } from './grid-state';
import { keepNotation } from './kept-notation';
import { LineTools } from './line-tools';
import { NewTable } from './new-table';
import { pasteBlock } from './paste';
import { PasteAsk } from './paste-ask';
import { PrintTable } from './print-table';
import { TakeOut } from './take-out';

export function OffsetsView() {
  const bench = useBench();
  const id = useId();
  const { value: table } = bench.table;
  const state = useMemo(() => createGridState(bench), [bench, table.name]);
  const place = () => document.getElementById(id);
  const goTo = (box: string) => {
    const [, edge = '', column] = box.split('.');
    const all = offsetsOf(bench.table.peek()).edges;
    const named = all.find((one) => one.name === edge);
    if (named && !isShown(state.shown.peek(), { edge: named, column: column as Column }))
      state.shown.value = `edge ${edge}`;
    state.here.value = box;
    // The columns it stands in may only now be drawn.
    requestAnimationFrame(() => {
      const input = place()?.querySelector<HTMLInputElement>(`[data-quantity="${CSS.escape(box)}"] input`);
      input?.scrollIntoView({ block: 'center', inline: 'nearest' });
      input?.focus({ preventScroll: true });
    });
  };
  /** Puts away the form that a new table was asked for with, until that table is drawn. */
  const closeForm = useRef<(() => void) | null>(null);
  useLayoutEffect(() => {
    if (!closeForm.current) return;
    // The first box is there now; the key pressed in the form would take the focus along.
    place()?.querySelector<HTMLInputElement>('.offsets-grid input')?.focus();
    closeForm.current();
    closeForm.current = null;
  }, [table]);
  const hint = `${id}-hint`;
  return html`<div class="offsets" id=${id}>
    ${use(Choices, { state })}
    <p class="offsets-hint" id=${hint}>Arrow keys and Enter move from box to box. Tab moves on after you type, otherwise out of the table. Esc takes back what you typed. Paste a table from a spreadsheet into any box. Empty a box to go back to the plan’s number.</p>
    ${use(Grid, { state, paste: (text, row, column) => pasteBlock(bench, state, text, row, column) })}
    ${use(PasteTold, { state })}
    ${use(PasteAsk, { state })}
    <p class="offsets-told" role="status">${state.told.value}</p>
    ${use(FaultList, { state, goTo })}
    ${use(TakeOut, { state })}
    ${use(Disclosure, { summary: 'Stations and edges', className: 'offsets-tools', inside: () => use(LineTools, { state }) })}
    ${use(Disclosure, { summary: 'A new table', className: 'offsets-tools', inside: (close) => use(NewTable, { begun: () => (closeForm.current = close) }) })}
    ${use(PrintTable, { state })}
  </div>`;
}

function Choices({ state }: { state: GridState }) {
  const { book, table } = useBench();
  const { edges } = offsetsOf(table.value);
  const shown: readonly (readonly [ColumnsShown, string])[] = [
    ['all', 'all'],
    ['halfBreadth', 'half-breadths'],
    ['height', 'heights'],
    ['x', 'forward'],
    ...edges.map(({ name, label }): [ColumnsShown, string] => [`edge ${name}`, `the ${label}`]),
  ];
  const known = shown.some(([one]) => one === state.shown.value);
  const pick = (act: (value: string) => void) => (event: TargetedEvent<HTMLSelectElement>) =>
    act(event.currentTarget.value);
  const select = (
    label: string,
    value: string,
    options: readonly (readonly [string, string])[],
    act: (value: string) => void,
  ) => html`<label>
    <span>${label}</span>
    <select value=${value} onChange=${pick(act)}>
      ${options.map(([one, words]) => html`<option value=${one} selected=${one === value}>${capital(words)}</option>`)}
    </select>
  </label>`;
  return html`<div class="offsets-choices">
    ${select('Written in', state.notation.value, Object.entries(notations), (value) => {
      keepNotation(table.peek().name, value as Notation);
    })}
    ${select('Columns shown', known ? state.shown.value : 'all', shown, (value) => {
      state.shown.value = value as ColumnsShown;
    })}
    ${select(
      'Numbers are to the',
      table.value.offsetsTo,
      (['outside of skin', 'inside of skin'] as const).map((face) => [face, face]),
      (value) => {
        book.reshape(toFace(table.peek(), value as Face));
        state.told.value = `The numbers are now read as to the ${value}. They stay as they are; the frames follow.`;
      },
    )}
  </div>`;
}

/** A block that was not taken: why, and where it only lacks stations, the offer to add them. */
function PasteTold({ state }: { state: GridState }) {
  const left = state.paste.value;
  const close = () => {
    state.paste.value = null;
  };
  const more = left?.grow?.length ?? 0;
  return html`<div role="alert">
    ${
      left &&
      html`<div class="notice offsets-paste">
        <p><b>Nothing was pasted.</b></p>
        <ul>${left.faults.slice(0, MOST).map((fault) => html`<li>${capital(fault)}.</li>`)}</ul>
        ${left.faults.length > MOST ? html`<p>And ${left.faults.length - MOST} more.</p>` : null}
        <div class="keys">
          ${more > 0 ? html`<button type="button" onClick=${left.again}>${more === 1 ? 'Add a station and paste' : `Add ${more} stations and paste`}</button>` : null}
          <button type="button" onClick=${close}>Leave it</button>
        </div>
      </div>`
    }
  </div>`;
}

/** Faults of a paste that are told at once. */
const MOST = 8;
