/** Entries to read, to add to and to change: of one cell, or of all by stage with what each comes to. */
import { useComputed } from '@preact/signals';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { MOST_IN_LOG } from '../../boat/file/log';
import { type LogLine, linesOf, sumOf } from '../../notebook/log/by-stage';
import { dayOf } from '../../notebook/log/read-day';
import { nextEntry, writeEntry } from '../../notebook/log/write-entry';
import { type Bench, useBench } from '../bench';
import { html, use } from '../html';
import { EntryFields } from './entry-fields';
import { LogLines } from './log-lines';
import { reportOf } from './report';
import { stagesOfLog } from './stages';
import { sumWords } from './words';
import './log.css';

/** @param cell whose entries they are; null for all of the boat */
export function LogBook({ cell }: { cell: string | null }) {
  const bench = useBench();
  const { book, shown } = bench;
  const log = useComputed(() => book.state.value.log).value;
  const host = useRef<HTMLDivElement>(null);
  const [open, setOpen] = useState<string | null>(null);
  /** The entry whose fields were left: the focus goes back to its key, or to the key that adds one. */
  const left = useRef<string | null>(null);
  const entry = open === null ? undefined : log[open];
  useLayoutEffect(() => {
    if (entry || left.current === null) return;
    const keys = host.current;
    const back =
      keys?.querySelector<HTMLElement>(`[data-entry="${left.current}"]`) ??
      keys?.querySelector<HTMLElement>('.log-add');
    back?.focus();
    left.current = null;
  }, [entry]);
  const add = () => {
    const id = nextEntry(log);
    const day = dayOf(new Date());
    book.open(
      writeEntry(book.state.peek(), id, {
        day,
        cell: cell ?? '',
        hours: '',
        money: '',
        measured: '',
        note: '',
      }),
    );
    setOpen(id);
  };
  const done = () => {
    left.current = open;
    book.settle();
    setOpen(null);
  };
  const isFull = Object.keys(log).length >= MOST_IN_LOG;
  return html`<div class="log-book" ref=${host}>
    ${
      open !== null && entry
        ? use(EntryFields, {
            key: open,
            id: open,
            entry,
            stages: cell === null ? stagesOfLog(bench) : null,
            onDone: done,
          })
        : html`<p class="keys"><button type="button" class="log-add" disabled=${isFull} onClick=${add}>Add an entry</button>${isFull ? ` The log is full: it holds ${MOST_IN_LOG} entries.` : ''}</p>`
    }
    ${cell === null ? ofAll(bench, setOpen) : ofCell(linesOf(log, cell), bench, setOpen)}
  </div>`;

  function ofCell(lines: readonly LogLine[], { goTo }: Bench, change: (id: string) => void) {
    return html`<p class="log-title">Log</p>
      ${use(LogLines, { lines, withCell: false, onChange: change })}
      ${lines.length > 1 ? html`<p class="log-sum">Together ${sumWords(sumOf(lines), shown.value)}.</p>` : null}
      <p class="keys"><button type="button" class="jump" onClick=${() => goTo('log')}>The whole log</button></p>`;
  }
}

function ofAll(bench: Bench, change: (id: string) => void) {
  const { stages, all } = reportOf(bench);
  const { shown } = bench;
  if (stages.length === 0)
    return html`<p>Nothing is written yet. An entry can be added here, and at each cell under <i>Log</i>.</p>`;
  return html`${stages.map(
    (stage) => html`<section key=${stage.title}>
        <h3>${stage.title}</h3>
        ${use(LogLines, { lines: stage.lines, withCell: true, onChange: change })}
        <p class="log-sum">Together ${sumWords(stage, shown.value)}.</p>
      </section>`,
  )}
    <p class="log-sum">In all ${sumWords(all, shown.value)}.</p>`;
}
