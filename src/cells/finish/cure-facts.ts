/** What the cell of the cure works out of its days and its coats, once for all that speak of them. */
import { fact } from '../form/fact';
import type { ListRow, ValuesOf } from '../form/define';
import { clockWords, colderThan, cureRate, DAY, type Days, dryRate, WEEKDAYS } from './cure-clock';
import type { cureInputs } from './cure-inputs';
import { type First, type Job, type JobKind, planOf } from './cure-plan';

export type CureAsked = ValuesOf<typeof cureInputs>;

const DOUBLING = 'epoxy makers’ sheets: twice as quick for each 10 K warmer; hours added up through the day';

export const days = fact('as typed', 'typed', (v: CureAsked): Days => ({
  told: v.told,
  warm: v.air,
  cold: v.cold,
  dayFrom: v.dayFrom,
  dayTo: v.dayTo,
}));

export const plan = fact(
  'each coat as soon as the one below and your hours allow; ages of epoxy summed by the doubling rule, hours of paint counted',
  DOUBLING,
  (v: CureAsked, { ask }): readonly Job[] =>
    planOf({
      start: WEEKDAYS.findIndex((day) => day.toLowerCase() === v.startDay) * DAY + v.startHour,
      next: v.next,
      counts: {
        seal: 1,
        cloth: 1,
        fill: v.fillCoats,
        sand: 1,
        primer: v.primerCoats,
        paint: v.paintCoats,
        turn: 1,
      },
      slips: {
        seal: v.sealSlip,
        cloth: v.clothSlip,
        fill: v.fillSlip,
        sand: v.sandSlip,
        primer: v.primerSlip,
        paint: v.paintSlip,
        turn: 0,
      },
      slipCoats: { fill: v.fillSlipCoat, primer: v.primerSlipCoat, paint: v.paintSlipCoat },
      cure: cureRate(ask(days), v),
      dry: dryRate(ask(days), v.leastDry),
      epoxy: { tackFree: v.tackFree, window: v.window, sandable: v.sandable, cured: v.cured },
      paint: { after: v.paintAfter, primer: v.primerRecoat, recoat: v.recoat, hard: v.hard },
      hours: {
        from: v.workFrom,
        lasts: v.workLasts,
        weekends: v.when === 'weekends',
        coat: v.coatTime,
        sand: v.sandTime,
      },
    }),
);

/** Colder than this hardener takes, s a day. */
export const coldTime = fact(
  'hours of the day in which it is colder, added up',
  'as the day is told',
  ({ stops }: CureAsked, { ask }) => colderThan(ask(days), stops),
);

const NAMES: Readonly<Record<JobKind, string>> = {
  seal: 'sealing',
  cloth: 'cloth',
  fill: 'fill coat',
  sand: 'wash and sand',
  primer: 'primer',
  paint: 'paint',
  turn: 'turn over',
};

/** `fill coat 2`, `cloth`: numbered where there may be several. */
export const nameOf = ({ kind, number }: Job): string =>
  kind === 'fill' || kind === 'primer' || kind === 'paint' ? `${NAMES[kind]} ${number}` : NAMES[kind];

const ASKS: Readonly<Record<Exclude<First, 'nothing'>, string>> = {
  tacky: 'onto the tacky coat',
  sand: 'wash and sand first',
  scuff: 'scuff first',
};
const AS_IT_STANDS: Readonly<Record<JobKind, string>> = {
  seal: 'onto bare wood',
  cloth: 'onto sealed wood',
  fill: 'as it stands',
  sand: 'once hard enough',
  primer: 'onto sanded epoxy',
  paint: 'onto sanded epoxy',
  turn: 'once hard',
};
/** What the job goes onto, or asks for first. */
export const howWords = ({ first, kind }: Job): string =>
  first === 'nothing' ? AS_IT_STANDS[kind] : ASKS[first];

export const jobList = fact(plan.how, 'as the plan runs', (_: CureAsked, { ask }) =>
  ask(plan).map((job, i): ListRow => ({ id: `${job.kind}${job.number}`, label: nameOf(job), value: i + 1 })),
);

/** The job looked at; beyond the last, the last. */
export const here = fact('of the jobs as planned', 'as the plan runs', ({ job }: CureAsked, { ask }): Job => {
  const jobs = ask(plan);
  return jobs[job - 1] ?? jobs.at(-1)!; // turning over is always the last
});

/** Times of the plan as words, days counted from its first job. */
export const saysTime =
  (jobs: readonly Job[]) =>
  (time: number, round: 'up' | 'down' = 'up'): string =>
    clockWords(time, jobs[0]!.begins, round); // turning over is always there
