/** Entries one under the other, each in a line or two of words. */
import { isIssue } from '../../measure';
import type { LogLine } from '../../notebook/log/by-stage';
import { useBench } from '../bench';
import { goTo } from '../finder/go';
import { html } from '../html';
import { notebookWith } from '../library';
import { capital } from '../words';
import { cellTitle } from './stages';
import { dayWords, hourWords, moneyWords, numberWords } from './words';

export interface LogLinesProps {
  readonly lines: readonly LogLine[];
  /** Whether each says which cell it belongs to. */
  readonly withCell: boolean;
  readonly onChange: (id: string) => void;
}

export function LogLines({ lines, withCell, onChange }: LogLinesProps) {
  const bench = useBench();
  const { shown } = bench;
  const lineOf = ({ id, entry, day, hours, money }: LogLine) => {
    const when = dayWords(day, entry.day) || 'no day';
    const told = [
      numberWords(hours, entry.hours, hourWords),
      numberWords(money, entry.money, (amount) => moneyWords(amount, shown.value)),
    ].filter((words) => words !== '');
    const of = withCell && entry.cell !== '' ? cellTitle(entry.cell, bench) : '';
    return html`<li key=${id}>
      <div>
        <p class="log-when"><b>${when}</b>${told.map((words) => html`<span>${words}</span>`)}</p>
        ${of === '' ? null : html`<p>${wayTo(entry.cell, of)}</p>`}
        ${entry.measured === '' ? null : html`<p>Measured: ${entry.measured}</p>`}
        ${entry.note === '' ? null : html`<p class="log-note">${entry.note}</p>`}
        ${[day, hours, money].flatMap((value) => (isIssue(value) ? html`<p class="says">${capital(value.issue)}.</p>` : []))}
      </div>
      <button type="button" class="quiet" data-entry=${id} aria-label=${`Change the entry of ${when}`} onClick=${() => onChange(id)}>Change</button>
    </li>`;
  };
  const wayTo = (cell: string, title: string) => {
    const head = notebookWith(cell);
    // A cell of another edition is named, and leads nowhere.
    return head
      ? html`<button type="button" class="jump" onClick=${() => goTo({ notebook: head.id, place: `cell-${cell}` }, bench)}>${title}</button>`
      : title;
  };
  return html`<ul class="log-lines">${lines.map(lineOf)}</ul>`;
}
