/** A block without headings: what it may be, and what it would become, before any of it is taken. */
import type { TargetedEvent } from 'preact';
import { useId, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { offsetName, offsetsOf } from '../../boat';
import { writeOffset } from '../../boat/table/offset-notation';
import { isAsking, isRefused } from '../../boat/table/pasted-table';
import type { PastedWay } from '../../boat/table/pasted-ways';
import { useBench } from '../bench';
import { html, use } from '../html';
import { capital } from '../words';
import { columnWords, type GridState, type PasteAsked } from './grid-state';
import { pastedOn, putIn, valueOf } from './paste';

export function PasteAsk({ state }: { state: GridState }) {
  const asked = state.asked.value;
  return asked && use(Ask, { key: asked.text, state, asked });
}

function Ask({ state, asked }: { state: GridState; asked: PasteAsked }) {
  const bench = useBench();
  const id = useId();
  const [at, setAt] = useState(0);
  const take = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => take.current?.focus(), []);
  const way = asked.ways[at] ?? asked.ways[0];
  if (!way) return null;
  const pasted = pastedOn(bench, state, { ...asked, way });
  const done = () => {
    state.asked.value = null;
    document.querySelector<HTMLInputElement>('.offsets-grid .box[tabindex="0"]')?.focus();
  };
  const put = () => {
    putIn(bench, state, { ...asked, way });
    done();
  };
  const key = (event: KeyboardEvent) => {
    if (event.key === 'Escape') done();
  };
  return html`<div class="notice offsets-paste" role="group" aria-labelledby=${`${id}-title`} onKeyDown=${key}>
    <p id=${`${id}-title`}><b>What is this block?</b> It has no headings.</p>
    <p class="offsets-way">
      <label for=${id}>It is</label>
      <select id=${id} value=${String(at)} onChange=${(event: TargetedEvent<HTMLSelectElement>) => setAt(Number(event.currentTarget.value))}>
        ${asked.ways.map(({ says }, i) => html`<option value=${String(i)} selected=${i === at}>${says}</option>`)}
      </select>
    </p>
    ${
      isRefused(pasted)
        ? html`<ul>${pasted.faults.map((fault) => html`<li>${capital(fault)}.</li>`)}</ul>`
        : isAsking(pasted)
          ? null
          : use(Preview, { state, way, writes: pasted.writes })
    }
    <div class="keys">
      <button type="button" ref=${take} onClick=${put}>${isRefused(pasted) ? 'Go on with this' : 'Put it in'}</button>
      <button type="button" onClick=${done}>Leave it</button>
    </div>
  </div>`;
}

interface PreviewProps {
  readonly state: GridState;
  readonly way: PastedWay;
  readonly writes: Readonly<Record<string, string>>;
}

/** The rows of the table as they would stand. */
function Preview({ state, way, writes }: PreviewProps) {
  const { table } = useBench();
  const { stations } = offsetsOf(table.value);
  const rows = stations.flatMap(({ name, label }) => {
    const cells = way.columns.map(({ edge, column }) => {
      const value = valueOf(writes[offsetName(name, edge.name, column)] ?? '');
      return value === null ? '' : writeOffset(value, state.notation.value).text;
    });
    return cells.every((cell) => cell === '') ? [] : [{ label, cells }];
  });
  return html`<div class="table-wrap">
    <table>
      <caption>The table would then read</caption>
      <thead>
        <tr>
          <th scope="col">Station</th>
          ${way.columns.map(({ edge, column }) => html`<th scope="col">${capital(edge.label)}, ${columnWords[column]}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(({ label, cells }) => html`<tr><th scope="row">${label}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`)}
      </tbody>
    </table>
  </div>`;
}
