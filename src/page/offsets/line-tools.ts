/** Stations and edges of the table: renamed, added, moved, taken out. They follow the box in hand. */
import { useEffect, useId, useState } from 'preact/hooks';
import type { TargetedEvent } from 'preact';
import {
  attempt,
  columns,
  type Hull,
  MOST_EDGES,
  MOST_STATIONS,
  offsetName,
  offsetsOf,
  type Table,
} from '../../boat';
import { carriedName, namesGone } from '../../boat/table/carry';
import {
  addEdge,
  addStation,
  type Line,
  move,
  nameFault,
  nextName,
  remove,
  rename,
  type TableEdit,
} from '../../boat/table/table-edits';
import { isIssue } from '../../measure';
import { type Bench, useBench } from '../bench';
import { html, use } from '../html';
import { capital, readable } from '../words';
import { follow, type GridState } from './grid-state';

/** References told of what is taken out; more help nobody. */
const TOLD = 4;

const words = {
  station: {
    title: 'Station',
    back: 'Move aft',
    on: 'Move forward',
    before: 'Add one abaft it',
    after: 'Add one forward of it',
  },
  edge: { title: 'Edge', back: 'Move inward', on: 'Move outward', before: '', after: 'Add one outside it' },
} as const;

export function LineTools({ state }: { state: GridState }) {
  return html`<div class="line-tools">${use(Tools, { state, line: 'station' })} ${use(Tools, { state, line: 'edge' })}</div>`;
}

function Tools({ state, line }: { state: GridState; line: Line }) {
  const bench = useBench();
  const table = bench.table.value;
  const { stations, edges } = offsetsOf(table);
  const all = line === 'station' ? stations : edges;
  const [part = '', edgePart = ''] = (state.here.value ?? '').split('.');
  const inHand = all.findIndex(({ name }) => name === (line === 'station' ? part : edgePart));
  const [picked, setPicked] = useState<{ of: string | null; label: string }>({ of: null, label: '' });
  // A choice made here holds until another box is taken in hand, or what was chosen is gone.
  const chosen = picked.of === state.here.value ? all.findIndex(({ label }) => label === picked.label) : -1;
  const at = Math.min(all.length - 1, Math.max(0, chosen >= 0 ? chosen : inHand));
  const pick = (label: string) => setPicked({ of: state.here.peek(), label });
  const id = useId();
  const one = all[at];
  const say = words[line];
  const most = line === 'station' ? MOST_STATIONS : MOST_EDGES;
  const act = (edit: TableEdit, told: string) => {
    bench.book.reshape(edit);
    follow(state, edit.words);
    state.told.value = told;
  };
  const step = (to: number, label: string) => {
    act(move(table, line, at, to), '');
    pick(label);
  };
  const take = (name: string) => {
    if (!one) return;
    act(rename(table, line, at, name), `${capital(one.label)} is ${name} now; entries that name it follow.`);
    pick(name);
  };
  const add = (place: number) => {
    const name = nextName(table, line);
    const hull = hullOf(bench);
    const made = attempt(() => (line === 'station' ? addStation : addEdge)(table, place, name, hull));
    if (isIssue(made)) {
      state.told.value = `${capital(made.issue)}.`;
      return;
    }
    act(made, `${capital(name)} added${beginning(made.table, line, place)}. Rename it here.`);
    pick(name);
  };
  const takeOut = () => {
    if (!one) return;
    const edit = remove(table, line, at);
    const named = namedBy(bench, edit);
    act(
      edit,
      `${capital(one.label)} is taken out, with what was written for it. ${named.length === 0 ? '' : `It is still named by: ${named.join('; ')}. `}Undo brings it back.`,
    );
  };
  return html`<fieldset>
    <legend>${say.title}</legend>
    ${
      one
        ? html`<label class="pick">
              <span>${say.title} in hand</span>
              <select value=${String(at)} onChange=${(event: TargetedEvent<HTMLSelectElement>) => pick(all[Number(event.currentTarget.value)]?.label ?? '')}>
                ${all.map(({ label }, i) => html`<option value=${String(i)} selected=${i === at}>${label}</option>`)}
              </select>
            </label>
            ${use(NameField, { key: at, id, table, line, at, label: one.label, take })}`
        : null
    }
    <div class="keys">
      ${line === 'station' && one ? html`<button type="button" disabled=${all.length >= most} onClick=${() => add(at)}>${say.before}</button>` : null}
      <button type="button" disabled=${all.length >= most} onClick=${() => add(one ? at + 1 : 0)}>${one ? say.after : `Add a ${line}`}</button>
      ${
        one
          ? html`<button type="button" disabled=${at === 0} onClick=${() => step(at - 1, one.label)}>${say.back}</button>
            <button type="button" disabled=${at === all.length - 1} onClick=${() => step(at + 1, one.label)}>${say.on}</button>
            <button type="button" onClick=${takeOut}>Take it out</button>`
          : null
      }
      ${line === 'station' && one && at > 0 && at < all.length - 1 ? use(Plane, { state, station: one.name }) : null}
    </div>
  </fieldset>`;
}

interface NameFieldProps {
  readonly id: string;
  readonly table: Table;
  readonly line: Line;
  readonly at: number;
  readonly label: string;
  readonly take: (name: string) => void;
}

/** A name is taken when the field is left or Enter pressed; one that can't be stays, with the reason. */
function NameField({ id, table, line, at, label, take }: NameFieldProps) {
  const [draft, setDraft] = useState(label);
  useEffect(() => setDraft(label), [label]);
  const fault = draft.trim() === label ? null : nameFault(table, line, at, draft);
  const leave = () => {
    if (fault === null && draft.trim() !== label) take(draft.trim());
  };
  const key = (event: KeyboardEvent) => {
    if (event.key === 'Enter') leave();
    if (event.key === 'Escape') setDraft(label);
  };
  return html`<div class=${fault === null ? 'input' : 'input wrong'}>
    <label for=${id}>Name of the ${line}</label>
    <div class="entry-line">
      <input
        id=${id}
        type="text"
        autocomplete="off"
        value=${draft}
        aria-invalid=${fault === null ? undefined : 'true'}
        aria-describedby=${fault === null ? undefined : `${id}-says`}
        onInput=${(event: TargetedEvent<HTMLInputElement>) => setDraft(event.currentTarget.value)}
        onBlur=${leave}
        onKeyDown=${key}
      />
    </div>
    ${fault === null ? null : html`<p class="says" id=${`${id}-says`} role="status">${capital(fault)}.</p>`}
  </div>`;
}

/** Whether all edges stand equally far forward at a station, or each has a number of its own. */
function Plane({ state, station }: { state: GridState; station: string }) {
  const { book, table } = useBench();
  if (state.isPlane(station)) {
    const open = () => {
      state.opened.value = new Set([...state.opened.peek(), station]);
    };
    return html`<button type="button" onClick=${open}>Each edge its own forward</button>`;
  }
  const close = () => {
    const names = offsetsOf(table.peek()).edges.map(({ name }) => offsetName(station, name, columns[0]!)); // x
    const lead = book.inHand.peek().entry(names[0] ?? '');
    if (lead && lead.text !== '') book.write(Object.fromEntries(names.map((name) => [name, lead.text])));
    book.settle();
    state.opened.value = new Set([...state.opened.peek()].filter((one) => one !== station));
  };
  return html`<button type="button" onClick=${close}>One forward for all edges</button>`;
}

function hullOf({ book }: Bench): Hull | null {
  const hull = book.inHand.peek().hull();
  return isIssue(hull) ? null : hull;
}

function beginning({ stations }: Table, line: Line, at: number): string {
  if (line === 'edge') return '; between two others it begins midway between them';
  const known = stations[at]?.points.every(({ y, z }) => y !== null && z !== null);
  return known
    ? '; its numbers are read off the battens there, so the boat is the same'
    : '; its boxes are empty yet';
}

/** Entries, in words, that name what an edit takes out. */
function namedBy({ book }: Bench, { words: gone }: TableEdit): readonly string[] {
  const { entries, second } = book.state.peek();
  const graph = book.inHand.peek();
  const written = [...Object.entries(entries), ...Object.entries(second ?? {})];
  const names = written.flatMap(([name, text]) =>
    text !== null &&
    carriedName(name, gone) !== null &&
    namesGone(text, gone, graph.quantity(name)?.kind === 'choice')
      ? [readable(name)]
      : [],
  );
  const unique = [...new Set(names)];
  return unique.length > TOLD ? [...unique.slice(0, TOLD), `${unique.length - TOLD} more`] : unique;
}
