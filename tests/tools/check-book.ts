/**
 * The check book: every check against the world outside with the value obtained, as a page to read and
 * as data for the notebook to show beside each cell.
 */
import type { Check } from '../checks/check';
import { leftOut } from '../checks/left-out';

/** A check as data: everything but the way it is obtained. */
export interface CheckRow extends Omit<Check, 'obtain'> {
  readonly obtained: readonly number[];
}

/** Runs the checks. Obtained values are rounded to six figures, so that the last bits of a machine don't show. */
export function checkRows(checks: readonly Check[]): readonly CheckRow[] {
  return checks.map(({ obtain, ...rest }) => ({
    ...rest,
    obtained: obtain().map((value) => Number(value.toPrecision(6))),
  }));
}

/** `docs/check-book.json`: rows one a line, so that a change shows as one line. */
export function checkBookData(rows: readonly CheckRow[]): string {
  return `[\n${rows.map((row) => JSON.stringify(row)).join(',\n')}\n]\n`;
}

/** `docs/check-book.md`: a table for each cell and room, in the order of their names. */
export function checkBookPage(rows: readonly CheckRow[]): string {
  const cells = [...new Set(rows.map((row) => row.cell))].sort();
  return [
    '# Check book',
    '',
    'Every check of Battenbook against the world outside: what went in, what the source gives, what Battenbook',
    'gives, and how far off would still pass. *Published*: seen in the source named. *From memory*: recalled from',
    'the source named, not opened. *Common practice*: custom of the trade, no source. *Closed form*: follows by',
    'algebra or geometry.',
    '',
    `Made from the rows in \`tests/checks/\` by \`npm run docs\`; do not edit. ${rows.length} checks.`,
    ...cells.flatMap((cell) =>
      section(
        cell,
        rows.filter((row) => row.cell === cell),
      ),
    ),
    '',
    '## What no row checks',
    '',
    ...leftOut.map((reason) => `- ${reason}`),
    '',
  ].join('\n');
}

function section(cell: string, rows: readonly CheckRow[]): string[] {
  return [
    '',
    `## ${cell}`,
    '',
    '| id | what | input | expected | obtained | within | source | known |',
    '|---|---|---|---|---|---|---|---|',
    ...rows.map(
      (row) =>
        `| ${[
          row.id,
          row.what,
          row.input,
          withUnit(row.expected, row.unit),
          withUnit(row.obtained, row.unit),
          String(row.tolerance),
          row.source,
          row.known,
        ]
          .map(cellText)
          .join(' | ')} |`,
    ),
  ];
}

const withUnit = (values: readonly number[], unit: string) => `${values.join('; ')}${unit ? ` ${unit}` : ''}`;

/** Text that stays in its table cell. */
const cellText = (text: string) => text.replaceAll('|', '\\|').replaceAll('\n', ' ');
