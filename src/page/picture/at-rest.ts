/** What can wait is done in idle moments, in its turn, as much in one as there is time for. */

/** What an idle moment must still have left for another job, ms. */
const LEAST = 4;

/** @param left how many jobs wait besides it */
type Job = (left: number) => void;

const waiting: Job[] = [];
let asked = false;

export function atRest(job: Job): void {
  waiting.push(job);
  if (!asked) wait();
}

function wait(): void {
  asked = true;
  requestIdleCallback((idle) => void work(idle), { timeout: 2000 });
}

async function work(idle: IdleDeadline): Promise<void> {
  try {
    do {
      waiting.shift()?.(waiting.length);
      // What the job has asked to be drawn anew is drawn in the next turn, and counts too.
      await Promise.resolve();
    } while (waiting.length > 0 && idle.timeRemaining() > LEAST);
  } finally {
    asked = false;
    if (waiting.length > 0) wait();
  }
}
