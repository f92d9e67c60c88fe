/** A cell's search: a key to start it, one to stop it, and a sentence on where it stands. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { attempt } from '../../boat';
import type { Instance } from '../../cells';
import { isIssue, type Issue } from '../../measure';
import { startSearch } from '../../search';
import { type Bench, useBench } from '../bench';
import { atHand } from '../on-hand';
import { html } from '../html';

interface Run {
  readonly problem: string;
  readonly stop: () => void;
}

export function SearchRow({ instance }: { instance: Instance }) {
  const bench = useBench();
  const { search } = instance.cell;
  const run = useRef<Run | null>(null);
  const [told, tell] = useState<{
    readonly of: string;
    readonly says: string;
    readonly goesOn: boolean;
  } | null>(null);
  const problem = problemOf(instance, bench);
  const stop = () => {
    run.current?.stop();
    run.current = null;
  };
  useEffect(() => stop, []);
  // An answer to numbers that stand no longer is of no use to anybody.
  if (run.current && run.current.problem !== problem) stop();
  if (!search) return null;
  const start = () => {
    if (isIssue(problem)) return;
    stop();
    let better = 0;
    const say = (says: string, goesOn: boolean) => tell({ of: problem, says, goesOn });
    say('Searching…', true);
    const end = startSearch(search.by, problem, {
      found: (answer) => {
        better += 1;
        bench.findings.keep(problem, answer);
        say(`Searching… The plan shown is the best of ${better} so far.`, true);
      },
      over: (how) => {
        run.current = null;
        say(how, false);
      },
    });
    run.current = { problem, stop: end };
  };
  const halt = () => {
    stop();
    if (!isIssue(problem))
      tell({ of: problem, says: 'Stopped. The plan shown is the best found so far.', goesOn: false });
  };
  const now = told && told.of === problem ? told : null;
  return html`<div class="search-row">
    ${
      now?.goesOn
        ? html`<button type="button" onClick=${halt}>Stop the search</button>`
        : html`<button type="button" onClick=${start} disabled=${isIssue(problem)}>Search for ${search.seeks}</button>`
    }
    <p role="status">${now ? now.says : told ? 'The numbers have changed since the last search.' : ''}</p>
  </div>`;
}

/** The problem of the version in hand, as text. */
function problemOf(instance: Instance, bench: Bench): string | Issue {
  const graph = bench.book.inHand.value;
  const at = atHand(instance, graph, bench);
  if (isIssue(at)) return at;
  const { values, on } = at;
  return attempt(() => instance.cell.search!.problem(values, on));
}
