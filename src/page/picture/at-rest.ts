/** What can wait is done in idle moments, in its turn, as much in one as there is time for. */

/** What an idle moment must still have left for another job, and how long it is held at the most: a key waits no longer; ms. */
const LEAST = 4;
const MOST = 16;

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
  const end = performance.now() + MOST;
  try {
    do {
      waiting.shift()?.(waiting.length);
      // What the job has asked to be drawn anew is drawn in the next turn, and counts too.
      await Promise.resolve();
    } while (waiting.length > 0 && Math.min(idle.timeRemaining(), end - performance.now()) > LEAST);
  } finally {
    asked = false;
    if (waiting.length > 0) wait();
  }
}
