/**
 * The door to the worker: one search, one worker, so that a search can be stopped at any moment
 * by ending its worker, and what it had found by then stands.
 */
import type { SearchAsked, SearchTold } from './messages';

/** How a search ended, as a sentence. */
export type Ended = string;

/**
 * @param by which searcher of searchers.ts
 * @param problem all that bears on the answer, as text
 * @returns ends the search where it stands; `over` is not called then
 */
export function startSearch(
  by: string,
  problem: string,
  tell: { readonly found: (answer: unknown) => void; readonly over: (how: Ended) => void },
): () => void {
  const worker = new Worker(new URL('./search.worker.ts', import.meta.url), { type: 'module' });
  const end = (how: Ended) => {
    worker.terminate();
    tell.over(how);
  };
  worker.addEventListener('message', ({ data }: MessageEvent<SearchTold>) => {
    if ('found' in data) tell.found(data.found);
    else end(data.over);
  });
  worker.addEventListener('error', () =>
    end('The search broke off. What was found before stands; without a network it may not have arrived yet.'),
  );
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- so does the page with its worker
  worker.postMessage({ by, problem } satisfies SearchAsked);
  return () => worker.terminate();
}
