/** The log as rows for a spreadsheet: plain numbers of hours and money, and what can't be read as it was written. */
import { type Issue, isIssue } from '../../measure';
import type { LogStage } from '../../notebook/log/by-stage';

export function logRows(
  stages: readonly LogStage[],
  titleOf: (cell: string) => string,
): readonly (readonly string[])[] {
  return [
    ['Stage', 'Cell', 'Day', 'Hours', 'Money', 'Measured', 'Note'],
    ...stages.flatMap(({ title, lines }) =>
      lines.map(({ entry, day, hours, money }) => [
        asText(title),
        entry.cell === '' ? '' : asText(titleOf(entry.cell)),
        typeof day === 'string' ? day : asText(entry.day),
        numberOr(hours, entry.hours),
        numberOr(money, entry.money),
        asText(entry.measured),
        asText(entry.note),
      ]),
    ),
  ];
}

const numberOr = (value: number | null | Issue, written: string): string =>
  value === null ? '' : isIssue(value) ? asText(written) : `${Math.round(value * 100) / 100}`;

/** What begins as a formula would be run by a spreadsheet: a mark before it says that it is text. */
function asText(text: string): string {
  const plain = text.replaceAll(/\r\n?/g, '\n');
  return /^[\s]*[=+\-@]/.test(plain) ? `'${plain}` : plain;
}
