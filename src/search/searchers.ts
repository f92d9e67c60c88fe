/** Who can search, by name. */
import type { Searcher } from './searcher';

export const searchers: Readonly<Record<string, () => Promise<Searcher>>> = {
  boards: async () => (await import('./boards')).searchBoards,
  sheets: async () => (await import('./sheets')).searchSheets,
};
