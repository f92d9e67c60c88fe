/** What is known of a notebook before it is opened: enough for the list of contents and for finding a cell. */
import { type CellPlace, type FrontMatter, type Inline, instancesOf, type NotebookPage } from './page-text';

export interface NotebookHead extends FrontMatter {
  readonly id: string;
  /** Headings of the second level. */
  readonly headings: readonly { readonly id: string; readonly text: string }[];
  readonly instances: readonly CellPlace[];
}

export function headOf(page: NotebookPage): NotebookHead {
  const { id, title, summary, stage, order, blocks } = page;
  const headings = blocks.flatMap((block) =>
    block.type === 'heading' && block.level === 2 ? [{ id: block.id, text: plainText(block.inside) }] : [],
  );
  return { id, title, summary, stage, order, headings, instances: instancesOf(page) };
}

function plainText(inlines: readonly Inline[]): string {
  return inlines
    .map((inline) => {
      if ('inside' in inline) return plainText(inline.inside);
      return 'text' in inline ? inline.text : '';
    })
    .join('');
}
