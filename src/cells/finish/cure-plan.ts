/** The coats one after another: each as soon as the one below and the builder's own hours allow. */
import { type DailyRate, ripeAt } from '../../kernel';
import { DAY } from './cure-clock';

export type JobKind = 'seal' | 'cloth' | 'fill' | 'sand' | 'primer' | 'paint' | 'turn';

export const JOBS: readonly JobKind[] = ['seal', 'cloth', 'fill', 'sand', 'primer', 'paint', 'turn'];

/** What comes before a coat may go on. */
export type First = 'nothing' | 'tacky' | 'sand' | 'scuff';

export interface Job {
  readonly kind: JobKind;
  /** Of its kind, from 1. */
  readonly number: number;
  /** Times in s since the first Monday's midnight: work on it begins, and it has been laid. */
  readonly begins: number;
  readonly laid: number;
  readonly first: First;
  /** Tack-free; the last that takes another coat unsanded; may be sanded, or coated again when sanded. */
  readonly tackFree: number;
  readonly until: number;
  readonly ready: number;
}

/** Ages in s; epoxy's at 25 °C. */
export interface PlanOf {
  readonly start: number;
  readonly next: JobKind;
  readonly counts: Readonly<Record<JobKind, number>>;
  readonly slips: Readonly<Record<JobKind, number>>;
  /** Which coat of a kind it is that slips, from 1; the last of those that are fewer. Else the first. */
  readonly slipCoats: Readonly<Partial<Record<JobKind, number>>>;
  readonly cure: DailyRate;
  readonly dry: DailyRate;
  readonly epoxy: {
    readonly tackFree: number;
    readonly window: number;
    readonly sandable: number;
    readonly cured: number;
  };
  readonly paint: {
    readonly after: number;
    readonly primer: number;
    readonly recoat: number;
    readonly hard: number;
  };
  readonly hours: {
    readonly from: number;
    readonly lasts: number;
    readonly weekends: boolean;
    readonly coat: number;
    readonly sand: number;
  };
}

const NEVER = 'In this air it never gets so far: say warmer days, or a coating that takes the cold.';

export const isEpoxy = (kind: JobKind): boolean => kind === 'seal' || kind === 'cloth' || kind === 'fill';
const isPaint = (kind: JobKind): boolean => kind === 'primer' || kind === 'paint';

/**
 * All jobs from the next one on, in order.
 * @throws where the air never lets a coat get on
 */
export function planOf(of: PlanOf): readonly Job[] {
  const { counts, cure, dry, epoxy, hours, next, paint, slips } = of;
  const ripe = (rate: DailyRate, from: number, age: number): number => {
    const time = ripeAt(rate, from, age);
    if (time === null) throw new Error(NEVER);
    return time;
  };
  const jobs: Job[] = [];
  const kinds = JOBS.slice(JOBS.indexOf(next));
  let below: Job | null = null;
  let lastEpoxy: Job | null = null;

  for (const kind of kinds) {
    for (let number = 1; number <= counts[kind]; number += 1) {
      const slip = number === Math.min(of.slipCoats[kind] ?? 1, counts[kind]) ? slips[kind] : 0;
      const when = (free: number, lasts: number) => {
        const own = slot(free, lasts, hours);
        return slip > 0 ? slot(own + slip, lasts, hours) : own;
      };
      const job: Job = begun(kind, number, when);
      jobs.push(job);
      below = job;
      if (isEpoxy(kind)) lastEpoxy = job;
    }
  }
  return jobs;

  function begun(kind: JobKind, number: number, when: (free: number, lasts: number) => number): Job {
    if (kind === 'sand') {
      const begins = when(below?.ready ?? of.start, hours.sand);
      return plain(kind, number, begins, begins + hours.sand, 'nothing');
    }
    if (kind === 'turn') {
      const begins = when(below ? hardAfter(below) : of.start, 0);
      return plain(kind, number, begins, begins, 'nothing');
    }
    const { begins, first } = coatBegins(kind, when);
    const laid = begins + hours.coat + (first === 'sand' ? hours.sand : 0);
    if (isPaint(kind)) {
      const ready = ripe(dry, laid, kind === 'primer' ? paint.primer : paint.recoat);
      return { ...plain(kind, number, begins, laid, first), ready, until: ready, tackFree: ready };
    }
    return {
      ...plain(kind, number, begins, laid, first),
      tackFree: ripe(cure, laid, epoxy.tackFree),
      until: ripe(cure, laid, epoxy.window),
      ready: ripe(cure, laid, epoxy.sandable),
    };
  }

  /** When a coat can begin on what lies below, and what that asks for first. */
  function coatBegins(
    kind: JobKind,
    when: (free: number, lasts: number) => number,
  ): { readonly begins: number; readonly first: First } {
    if (!below) return { begins: when(of.start, hours.coat), first: 'nothing' };
    if (isPaint(kind)) {
      const cured = lastEpoxy ? ripe(cure, lastEpoxy.laid, paint.after) : of.start;
      const begins = when(Math.max(below.ready, cured), hours.coat);
      return { begins, first: isPaint(below.kind) ? 'scuff' : 'nothing' };
    }
    const soon = when(below.tackFree, hours.coat);
    return soon <= below.until
      ? { begins: soon, first: 'tacky' }
      : { begins: when(below.ready, hours.sand + hours.coat), first: 'sand' };
  }

  function hardAfter(job: Job): number {
    if (isPaint(job.kind)) return ripe(dry, job.laid, paint.hard);
    return lastEpoxy ? ripe(cure, lastEpoxy.laid, epoxy.cured) : job.ready;
  }
}

const plain = (kind: JobKind, number: number, begins: number, laid: number, first: First): Job => ({
  kind,
  number,
  begins,
  laid,
  first,
  tackFree: laid,
  until: laid,
  ready: laid,
});

/**
 * The first time from then on at which so much work fits into the builder's hours; what is longer than those begins
 * with them. They may run past midnight.
 */
function slot(free: number, work: number, { from, lasts, weekends }: PlanOf['hours']): number {
  for (let day = Math.floor(free / DAY) - 1; ; day += 1) {
    if (weekends && ((day % 7) + 7) % 7 < 5) continue;
    const opens = day * DAY + from;
    const begins = Math.max(free, opens);
    if (begins + Math.min(work, lasts) <= opens + lasts) return begins;
  }
}
