/** What is known of a notebook before it is opened: enough for the list of contents and for finding a cell. */
import { type CellPlace, type FrontMatter, instancesOf, type NotebookPage, wordsOf } from './page-text';

export interface NotebookHead extends FrontMatter {
  readonly id: string;
  /** Headings of the second level. */
  readonly headings: readonly { readonly id: string; readonly text: string }[];
  readonly instances: readonly CellPlace[];
}

export function headOf(page: NotebookPage): NotebookHead {
  const { id, title, summary, stage, order, blocks } = page;
  const headings = blocks.flatMap((block) =>
    block.type === 'heading' && block.level === 2 ? [{ id: block.id, text: wordsOf(block.inside) }] : [],
  );
  return { id, title, summary, stage, order, headings, instances: instancesOf(page) };
}
