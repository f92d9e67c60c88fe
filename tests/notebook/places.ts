/** What stands in a notebook's page, in order. */
import { blocksOf, inlinesOf, type LiveValue, type NotebookPage } from '../../src/notebook/page-text';

/** Second versions that it offers. */
export const triesOf = (page: NotebookPage) => blocksOf(page.blocks, 'try');

/** Live values in its prose. */
export const liveValuesOf = (page: NotebookPage): LiveValue[] =>
  inlinesOf(page.blocks).filter((inline) => inline.type === 'value');
