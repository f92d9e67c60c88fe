/** What is known of a notebook before it is opened: enough for the list of contents and for finding a cell. */
import type { CellPlace, FrontMatter, NotebookPage } from './page-text';

export interface NotebookHead extends FrontMatter {
  readonly id: string;
  /** Which cells stand in it; what is typed over in them comes with the text. */
  readonly places: readonly Pick<CellPlace, 'cell' | 'instance'>[];
}

export function headOf({ id, title, summary, stage, order, boat, form, places }: NotebookPage): NotebookHead {
  const named = places.map(({ cell, instance }) => ({ cell, instance }));
  return { id, title, summary, stage, order, boat, ...(form && { form }), places: named };
}
