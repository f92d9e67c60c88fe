/** The log as it goes on paper. */
import { isIssue, type Issue } from '../../measure';
import { dayOf, sayDay } from '../../notebook/log/read-day';
import type { LogLine } from '../../notebook/log/by-stage';
import { useBench } from '../bench';
import { html } from '../html';
import { reportOf } from './report';
import { cellTitle } from './stages';
import { dayWords, hourWords, moneyWords, numberWords, sumWords } from './words';

export function LogPaper({ today }: { today: Date }) {
  const bench = useBench();
  const shown = bench.shown.value;
  const { stages, all } = reportOf(bench);
  const money = (amount: number) => moneyWords(amount, shown);
  const row = ({ id, entry, day, hours, money: paid }: LogLine) => html`<tr key=${id}>
    <td>${dayWords(day, entry.day)}</td>
    <td>${entry.cell === '' ? '' : cellTitle(entry.cell, bench)}</td>
    <td class="number">${counted(hours, entry.hours, hourWords)}</td>
    <td class="number">${counted(paid, entry.money, money)}</td>
    <td>${entry.measured === '' ? null : html`<p>Measured: ${entry.measured}</p>`}${entry.note === '' ? null : html`<p class="log-note">${entry.note}</p>`}</td>
  </tr>`;
  return html`<h1>Log of ${bench.name.value}</h1>
    <p>Printed ${sayDay(dayOf(today))}. In all ${sumWords(all, shown)}.</p>
    ${stages.map(
      (stage) => html`<section key=${stage.title}>
        <h2>${stage.title}</h2>
        <p>${sumWords(stage, shown)}</p>
        <table>
          <thead>
            <tr><th>Day</th><th>Cell</th><th class="number">Hours</th><th class="number">Money</th><th>Measured and noted</th></tr>
          </thead>
          <tbody>${stage.lines.map(row)}</tbody>
        </table>
      </section>`,
    )}`;
}

const counted = (value: number | null | Issue, written: string, say: (value: number) => string) =>
  `${numberWords(value, written, say)}${isIssue(value) ? ' (not counted)' : ''}`;
