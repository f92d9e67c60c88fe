/** Leads from words of the trade to what they mean, once that is there. */
import { signal } from '@preact/signals';
import type { NotebookPage } from '../notebook';

/** A notebook's page with its links put in; the page as it is, until they have come. */
export const wordLinks = signal((page: NotebookPage) => page);
