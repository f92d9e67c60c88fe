/**
 * A text from a spreadsheet as rows of cells. Tabs part cells wherever there is one; else semicolons; else
 * commas, but only where they can't be decimal commas: where some line as a whole is no length.
 */

/** @param isLength tells whether a text by itself is a length */
export function cellsOf(text: string, isLength: (text: string) => boolean): readonly (readonly string[])[] {
  const plain = text.replaceAll(/\r\n?/g, '\n').replace(/\n+$/, '');
  const rows = parted(plain, separatorOf(plain, isLength));
  return rows.map((row) => row.map((cell) => cell.trim()));
}

function separatorOf(text: string, isLength: (text: string) => boolean): string {
  if (text.includes('\t')) return '\t';
  if (text.includes(';')) return ';';
  const lines = text.split('\n').filter((line) => line.trim() !== '');
  const counts = new Set(parted(lines.join('\n'), ',').map((row) => row.length));
  const isParted = counts.size === 1 && !counts.has(1) && lines.some((line) => !isLength(line));
  return isParted ? ',' : '\t';
}

/** Cells in quotes may hold the separator, line ends, and quotes written twice; an inch mark at an end is none. */
function parted(text: string, separator: string): string[][] {
  const rows: string[][] = [[]];
  let at = 0;
  for (;;) {
    const quoted = /^ *"((?:[^"]|"")*)" */.exec(text.slice(at));
    const next = quoted ? text.charAt(at + quoted[0].length) : '?';
    let cell: string;
    if (quoted && (next === '' || next === '\n' || next === separator)) {
      cell = quoted[1]!.replaceAll('""', '"'); // the pattern has this group
      at += quoted[0].length;
    } else {
      const end = nextOf(text, at, separator);
      cell = text.slice(at, end);
      at = end;
    }
    rows.at(-1)!.push(cell);
    if (at >= text.length) return rows;
    if (text[at] === '\n') rows.push([]);
    at += 1;
  }
}

function nextOf(text: string, from: number, separator: string): number {
  const ends = [text.indexOf(separator, from), text.indexOf('\n', from)].filter((end) => end >= 0);
  return Math.min(text.length, ...ends);
}

/** Rows as a text for a spreadsheet: parted by tabs, or by commas with what needs it in quotes. */
export function textOfCells(rows: readonly (readonly string[])[], as: 'tabs' | 'commas'): string {
  const line = (row: readonly string[]) =>
    as === 'tabs'
      ? row.map((cell) => (cell.startsWith('"') ? quoted(cell) : cell)).join('\t')
      : row.map((cell) => (/[",;\r\n]/.test(cell) ? quoted(cell) : cell)).join(',');
  return `${rows.map(line).join('\n')}\n`;
}

const quoted = (cell: string) => `"${cell.replaceAll('"', '""')}"`;
