/** A notebook's text laid out: plain JSON in, vnodes out. Nothing is ever set as HTML. */
import { signal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import type { NotebookPage } from '../notebook';
import { blockViews } from './blocks/kinds';
import { html, use } from './html';
import { wordLinks } from './word-links';

export interface ProseProps {
  readonly page: NotebookPage;
}

/** The notebook that is being written in, and what shows it then. */
export interface BeingWritten {
  readonly id: string;
  readonly View: FunctionComponent<ProseProps>;
  /** Whether its text stands beside it. */
  readonly beside: boolean;
}
export const written = signal<BeingWritten | null>(null);
export const isWritten = (id: string): boolean => written.value?.id === id;

export function Prose({ page }: ProseProps) {
  if (isWritten(page.id)) return use(written.value!.View, { page });
  return html`<article class="prose">${blockViews(wordLinks.value(page).blocks, page.id)}</article>`;
}
