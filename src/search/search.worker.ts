/** Runs in the worker: takes one problem, tells each better answer as it is found, and how the search ended. */
import type { SearchAsked, SearchTold } from './messages';
import { searchers } from './searchers';

// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker talks to the page that made it
const tell = (told: SearchTold) => postMessage(told);

addEventListener('message', ({ data: { by, problem } }: MessageEvent<SearchAsked>) => {
  void answer(by, problem);
});

async function answer(by: string, problem: string): Promise<void> {
  try {
    const search = await searchers[by]?.();
    if (!search) throw new Error(`nothing here can search for ${by}`);
    tell({ over: await search(problem, (found) => tell({ found })) });
  } catch (fault) {
    const why = fault instanceof Error ? fault.message : String(fault);
    tell({ over: `The search broke off: ${why}. What was found before stands.` });
  }
}
