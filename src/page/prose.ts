/** A notebook's text laid out: plain JSON in, vnodes out. Nothing is ever set as HTML. */
import { signal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import type { Block, NotebookPage } from '../notebook';
import { useBench } from './bench';
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
  const asked = useBench().asked.value;
  if (isWritten(page.id)) return use(written.value!.View, { page });
  const blocks = (inside: readonly Block[]) => blockViews(inside, page.id);
  return html`<article class="prose">${blocks(wordLinks.value(page).blocks)}${asked && use(asked.Foot, { page, blocks })}</article>`;
}
