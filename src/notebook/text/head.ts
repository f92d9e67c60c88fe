/** What is known of a notebook before it is opened: enough for the list of contents and for finding a cell. */
import type { FrontMatter, NotebookPage } from './page-text';

export interface NotebookHead extends Omit<FrontMatter, 'summary'> {
  readonly id: string;
  /** Which cell each of its instances is, in their order; what is typed over in them comes with the text. */
  readonly cells: Readonly<Record<string, string>>;
}

export function headOf({ id, title, stage, order, boat, form, places }: NotebookPage): NotebookHead {
  const cells = Object.fromEntries(places.map(({ cell, instance }) => [instance, cell]));
  return { id, title, stage, order, boat, ...(form && { form }), cells };
}

/**
 * A head as it goes into the first file: without what it says nothing of, its cells in one line, and the name of an
 * instance only where it is another than the cell's.
 */
export interface PackedHead
  extends Omit<NotebookHead, 'boat' | 'cells' | 'stage'>, Partial<Pick<NotebookHead, 'boat' | 'stage'>> {
  /** `scarf quickBend=bend` */
  readonly cells: string;
}

export function packHead({ cells, stage, boat, ...head }: NotebookHead): PackedHead {
  const words = Object.entries(cells).map(([name, cell]) => (name === cell ? cell : `${name}=${cell}`));
  return {
    ...head,
    ...(stage !== null && { stage }),
    ...(boat !== null && { boat }),
    cells: words.join(' '),
  };
}

export function unpackHead({ cells, ...head }: PackedHead): NotebookHead {
  const pairs = (cells.match(/\S+/g) ?? []).map((word) => word.split('='));
  return {
    stage: null,
    boat: null,
    ...head,
    cells: Object.fromEntries(pairs.map(([name = '', cell = name]) => [name, cell])),
  };
}
