/** The working of the cure: the clock of the job looked at, of the cloth, and of the end. */
import { step } from '../form/define';
import { fact, tell } from '../form/fact';
import { coldTime, type CureAsked, here, howWords, nameOf, plan, saysTime } from './cure-facts';
import { isEpoxy, type Job } from './cure-plan';

const DOUBLING = 'epoxy makers’ sheets: twice as quick for each 10 K warmer';
const CLOCK = 'to the next quarter of an hour';

/** A time of the job looked at, in words. */
const clock = (meaning: string, part: (job: Job) => number, round: 'up' | 'down' = 'up') =>
  tell(
    fact(
      `of the plan, ${round === 'up' ? CLOCK : 'to the quarter of an hour before'}`,
      'as the plan runs',
      (_: CureAsked, { ask }) => saysTime(ask(plan))(part(ask(here)), round),
    ),
    'choice',
    meaning,
  );
/** A time of the whole plan, in words. */
const ofPlan = (meaning: string, pick: (jobs: readonly Job[]) => number | undefined) =>
  tell(plan, 'choice', meaning, (jobs) => {
    const time = pick(jobs);
    return time === undefined ? 'not in this plan' : saysTime(jobs)(time);
  });
const count = (meaning: string, counts: (job: Job) => boolean) =>
  tell(plan, 'count', meaning, (jobs) => jobs.filter(counts).length, { how: 'counted' });
export const cureSteps = {
  byNight: step(
    'ratio',
    'factor^((298.15 K - cold) / (10 K))',
    'times as long at the coldest as at 25 °C (77 °F)',
    DOUBLING,
  ),
  byDay: step(
    'ratio',
    'factor^((298.15 K - air) / (10 K))',
    'times as long at the warmest as at 25 °C (77 °F)',
    DOUBLING,
  ),
  coldHours: tell(coldTime, 'time', 'time of each day that is too cold to count'),
  jobs: count('jobs, the turning over included', () => true),
  missed: count('coats that come too late for the one below', ({ first }) => first === 'sand'),
  name: tell(here, 'choice', 'job looked at', nameOf),
  how: tell(here, 'choice', 'what it goes onto, or asks for first', howWords),
  begins: clock('work on it begins', ({ begins }) => begins),
  epoxied: tell(here, 'count', '1 where it lays epoxy', ({ kind }) => (isEpoxy(kind) ? 1 : 0)),
  coated: tell(here, 'count', '1 where it lays a coat', ({ kind }) =>
    kind === 'sand' || kind === 'turn' ? 0 : 1,
  ),
  recoatFrom: clock('the next coat may go on from', ({ tackFree }) => tackFree),
  recoatUntil: clock('and unsanded until', ({ until }) => until, 'down'),
  sandFrom: clock('sanded, or coated again once sanded, from', ({ ready }) => ready),
  tackTime: tell(here, 'time', 'from laid to tack-free', ({ laid, tackFree }) => tackFree - laid),
  sandTimeOff: tell(here, 'time', 'from laid until it can be sanded', ({ laid, ready }) => ready - laid),
  windowLasts: tell(here, 'time', 'how long it takes a coat unsanded', ({ tackFree, until }) =>
    Math.max(0, until - tackFree),
  ),
  trimFrom: ofPlan(
    'cloth is trimmed with a knife from',
    (jobs) => jobs.find(({ kind }) => kind === 'cloth')?.tackFree,
  ),
  paintFrom: ofPlan(
    'first primer or paint',
    (jobs) => jobs.find(({ kind }) => kind === 'primer' || kind === 'paint')?.begins,
  ),
  lastCoat: ofPlan(
    'last coat goes on',
    (jobs) => jobs.findLast(({ kind }) => kind !== 'turn' && kind !== 'sand')?.begins,
  ),
  turnFrom: ofPlan('turned over from', (jobs) => jobs.at(-1)?.begins),
  lasts: tell(
    plan,
    'time',
    'from the first job to the turning over',
    (jobs) => jobs.at(-1)!.begins - jobs[0]!.begins, // turning over is always there
  ),
} as const;
