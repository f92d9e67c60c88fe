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
