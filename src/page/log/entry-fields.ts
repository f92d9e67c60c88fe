/** The fields of one entry. What can't be read stays as it is typed, with the reason below it. */
import { useId, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { LogEntry } from '../../boat';
import { tooMuch } from '../../boat';
import { type Issue, isIssue } from '../../measure';
import { lineOf } from '../../notebook/log/by-stage';
import { writeEntry } from '../../notebook/log/write-entry';
import { useBench } from '../bench';
import { html, use } from '../html';
import { capital } from '../words';
import type { StageOfLog } from './stages';

export interface EntryFieldsProps {
  readonly id: string;
  readonly entry: LogEntry;
  /** The cells to choose from; null where it belongs to the cell that it stands in. */
  readonly stages: readonly StageOfLog[] | null;
  readonly onDone: () => void;
}

export function EntryFields({ id, entry, stages, onDone }: EntryFieldsProps) {
  const { book } = useBench();
  const host = useRef<HTMLDivElement>(null);
  const [full, setFull] = useState('');
  const line = lineOf(id, entry);
  // The day is today's as a rule: what one comes to write are the hours.
  useLayoutEffect(() => host.current?.querySelector<HTMLElement>('[data-log="hours"]')?.focus(), [id]);
  const put = (key: keyof LogEntry, text: string) => {
    const state = book.state.peek();
    // As it is now: what is typed quickly comes before what was typed last is drawn.
    const next = writeEntry(state, id, { ...(state.log[id] ?? entry), [key]: text });
    const why = tooMuch(next.log);
    setFull(why === null ? '' : `The last letters are not kept: a log ${why}.`);
    if (why === null) book.open(next, `log ${id} ${key}`);
  };
  const takeOut = () => {
    book.open(writeEntry(book.state.peek(), id, null));
    onDone();
  };
  const field = (key: 'day' | 'hours' | 'money' | 'measured' | 'note', label: string, value?: unknown) =>
    use(LogField, {
      name: key,
      label,
      text: entry[key],
      says: isIssue(value) ? sentence(value) : '',
      onText: (text: string) => put(key, text),
      onLeave: () => book.settle(),
    });
  return html`<div class="log-entry" role="group" aria-label="Entry in the log" ref=${host}>
    ${field('day', 'Day', line.day)} ${field('hours', 'Hours', line.hours)} ${field('money', 'Money', line.money)}
    ${stages ? use(CellField, { cell: entry.cell, stages, onCell: (cell: string) => put('cell', cell) }) : null}
    ${field('measured', 'Measured')} ${field('note', 'Note')}
    <p class="says" role="alert">${full}</p>
    <p class="keys">
      <button type="button" onClick=${onDone}>Done</button>
      <button type="button" class="quiet" onClick=${takeOut}>Take this entry out</button>
    </p>
  </div>`;
}

const sentence = ({ issue }: Issue) => `${capital(issue)}.`;

interface LogFieldProps {
  readonly name: string;
  readonly label: string;
  readonly text: string;
  readonly says: string;
  readonly onText: (text: string) => void;
  readonly onLeave: () => void;
}

/** Told when it is left: half a day is no day yet. */
function LogField({ name, label, text, says, onText, onLeave }: LogFieldProps) {
  const id = useId();
  const [isTyped, setTyped] = useState(false);
  const told = isTyped ? '' : says;
  const leave = () => {
    setTyped(false);
    onLeave();
  };
  const type = (event: Event) => {
    setTyped(true);
    onText((event.currentTarget as HTMLInputElement | HTMLTextAreaElement).value);
  };
  const common = {
    id,
    'data-log': name,
    value: text,
    autocomplete: 'off',
    'aria-invalid': told === '' ? undefined : 'true',
    'aria-describedby': `${id}-says`,
    onInput: type,
    onBlur: leave,
  };
  const key = (event: KeyboardEvent) => {
    if (event.key === 'Enter') leave();
  };
  return html`<p class=${`log-field ${name}`}>
    <label for=${id}>${label}</label>
    ${name === 'note' ? html`<textarea rows="3" ...${common}></textarea>` : html`<input type="text" onKeyDown=${key} ...${common} />`}
    <span class="says" id=${`${id}-says`} role="alert">${told}</span>
  </p>`;
}

interface CellFieldProps {
  readonly cell: string;
  readonly stages: readonly StageOfLog[];
  readonly onCell: (cell: string) => void;
}

function CellField({ cell, stages, onCell }: CellFieldProps) {
  const id = useId();
  const isKnown = cell === '' || stages.some(({ cells }) => cells.some(({ name }) => name === cell));
  const option = (name: string, title: string) =>
    html`<option key=${name} value=${name} selected=${name === cell}>${title}</option>`;
  return html`<p class="log-field cell-field">
    <label for=${id}>Cell</label>
    <select id=${id} value=${cell} onChange=${(event: Event) => onCell((event.currentTarget as HTMLSelectElement).value)}>
      ${option('', 'none')} ${isKnown ? null : option(cell, cell)}
      ${stages.map(({ title, cells }) => html`<optgroup key=${title} label=${title}>${cells.map((one) => option(one.name, one.title))}</optgroup>`)}
    </select>
  </p>`;
}
