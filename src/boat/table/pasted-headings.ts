/** Which number each column of a pasted block is, by the one or two rows of headings over it. */
import { isDiagonal } from './pasted-bands';
import { type Counted, type PastedHeading, headingOf } from './pasted-layout';
import { type GridColumn, type Landing, short } from './pasted-landing';

export interface PastedColumn extends GridColumn {
  readonly unit?: string;
}
/** A diagonal is left out; a column without a heading has no place. */
export type Columns =
  | { readonly at: readonly (PastedColumn | 'left out' | undefined)[] }
  | { readonly faults: readonly string[] };

export function headed(
  heads: readonly (readonly string[])[],
  named: boolean,
  landing: Landing,
  told: Counted,
): Columns {
  const width = Math.max(...heads.map((row) => row.length));
  const at: (PastedColumn | 'left out' | undefined)[] = [];
  const faults: string[] = [];
  // In the upper of two rows a heading stands over all columns up to the next.
  let over: PastedHeading = {};
  for (let c = 0; c < width; c++) {
    if (named && c === 0) {
      at.push(undefined);
      continue;
    }
    const cells = heads.map((row) => row[c] ?? '');
    if (cells.some(isDiagonal)) {
      at.push('left out');
      continue;
    }
    const read = cells.map((cell) => (cell === '' ? {} : headingOf(cell, landing.edges)));
    const unknown = read.indexOf(null);
    if (unknown >= 0) {
      faults.push(
        `${told.cell(unknown, c)}: "${short(cells[unknown]!)}" is no edge of this table (${landing.edges.map(({ label }) => label).join(', ')}) with forward, half-breadth or height`,
      );
      continue;
    }
    if (heads.length === 2 && cells[0] !== '') over = read[0]!;
    const heading: PastedHeading = heads.length === 2 ? { ...over, ...read[1] } : read[0]!;
    if (cells.every((cell) => cell === '') && heads.length === 1) {
      at.push(undefined);
      continue;
    }
    const { column = onlyOne(landing, 'column'), unit } = heading;
    // A column of stations' places forward often stands alone, before all edges.
    const edge = heading.edge ?? onlyOne(landing, 'edge') ?? (column === 'x' ? landing.edges[0] : undefined);
    if (!edge || !column) {
      faults.push(
        edge
          ? `${told.column(c)}: is it the forward, the half-breadth or the height of the ${edge.label}? The heading must say`
          : `${told.column(c)}: the heading must name an edge of this table`,
      );
    } else if (
      at.some(
        (other) => typeof other === 'object' && other.edge.name === edge.name && other.column === column,
      )
    ) {
      faults.push(`${told.column(c)}: the ${edge.label} is given one kind of number twice`);
    } else at.push({ edge, column, ...(unit === undefined ? {} : { unit }) });
  }
  return faults.length > 0 ? { faults } : { at };
}

/** What all columns of the grid have in common, if they have. */
function onlyOne<K extends keyof GridColumn>({ columns }: Landing, key: K): GridColumn[K] | undefined {
  const first = columns[0]?.[key];
  return columns.every((one) => one[key] === first) ? first : undefined;
}
