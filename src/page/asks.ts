/** The questions of a notebook, and where they stand on the page. */
import type { AskPlace, NotebookPage } from '../notebook';

/** The questions of a notebook, in their order. */
export const asksOf = (page: NotebookPage | undefined): readonly AskPlace[] =>
  page?.blocks.filter((block) => block.type === 'ask') ?? [];

/** The element of a question. */
export const askPlace = (name: string): string => `ask-${name}`;
