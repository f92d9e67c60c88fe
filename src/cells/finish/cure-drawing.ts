/** The plan of the coats as bars over days: wet, open to the next coat, hardening; the nights shaded. */
import { attempt } from '../../boat';
import { barsOverDays, type DayBar, type Drawing, drawing, note } from '../../drawing';
import { isIssue } from '../../measure';
import type { OnHand } from '../form/define';
import { DAY, HOUR, shortDay } from './cure-clock';
import { nameOf, plan, saysTime } from './cure-facts';
import { isEpoxy, type Job } from './cure-plan';

/** More days than these are not shown: they could not be told apart. */
const MOST_DAYS = 60;
/** How long is shown after the last coat is laid: it hardens on for days. */
const SHOWN_AFTER = 1.5 * DAY;

const hours = (seconds: number) => seconds / HOUR;

export function coatsOverDays(
  { dayFrom, dayTo }: { readonly dayFrom: number; readonly dayTo: number },
  { ask }: Pick<OnHand, 'ask'>,
): Drawing {
  const title = 'The coats over the days';
  const jobs = attempt(() => ask(plan));
  if (isIssue(jobs)) return drawing({ title, says: jobs.issue, shapes: [note(jobs.issue)], toScale: false });
  const work = jobs.filter(({ kind }) => kind !== 'turn');
  const turn = jobs.at(-1)!; // turning over is always the last
  const first = jobs[0]!;
  const from = Math.floor(first.begins / DAY) * DAY;
  const end = Math.min(
    Math.ceil(((work.at(-1) ?? turn).laid + SHOWN_AFTER) / DAY) * DAY,
    from + MOST_DAYS * DAY,
  );
  const shown = jobs.filter(({ begins }) => begins < end);
  const span = {
    from: hours(from),
    to: hours(end),
    dawn: hours(dayFrom),
    dusk: hours(dayTo),
  };
  return drawing({
    title,
    toScale: false,
    says: saysOf(jobs),
    shapes: [
      barsOverDays(
        shown.map((job) => barOf(job, end)),
        span,
        shortDay,
      ),
      note(
        'Broken hatching: wet or tacky. Hatched: takes the next coat unsanded. Plain: hardening. Shaded: night.',
      ),
      shown.length < work.length ? note(`The first ${MOST_DAYS} days are shown.`) : [],
    ],
  });
}

function barOf(job: Job, end: number): DayBar {
  const { begins, laid, tackFree, until, ready, kind } = job;
  const stretch = (from: number, to: number, fill: 'resin' | 'ply' | 'void') => ({
    from: hours(from),
    to: hours(to),
    fill,
  });
  if (kind === 'turn') return { name: nameOf(job), stretches: [stretch(begins, begins + 2 * HOUR, 'ply')] };
  if (kind === 'sand') return { name: nameOf(job), stretches: [stretch(begins, laid, 'ply')] };
  if (!isEpoxy(kind))
    return { name: nameOf(job), stretches: [stretch(begins, laid, 'resin'), stretch(laid, ready, 'void')] };
  return {
    name: nameOf(job),
    stretches: [
      stretch(begins, tackFree, 'resin'),
      stretch(tackFree, until, 'ply'),
      stretch(Math.max(until, tackFree), Math.min(ready, end), 'void'),
    ],
  };
}

/** Beginning and end of the plan; the table has every job. */
function saysOf(jobs: readonly Job[]): string {
  const at = saysTime(jobs);
  const first = jobs[0]!; // turning over is always there
  const last = jobs.findLast(({ kind }) => kind !== 'turn');
  const begins = `${nameOf(first)} at ${at(first.begins)}`;
  return `From ${begins}${last ? ` to ${nameOf(last)} at ${at(last.begins)}` : ''}, each as soon as the one below and your hours allow.`;
}
