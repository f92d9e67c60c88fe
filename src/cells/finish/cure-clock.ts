/** The clock of the coats: warmth through the day, how fast a coat gets on in it, and times as a builder says them. */
import { aged, type DailyRate } from '../../kernel';

export const HOUR = 3600;
export const DAY = 24 * HOUR;

/** At which the times of cure are told, K. */
export const TOLD_AT = 298.15;

/** Hours after the middle of the daylight at which it is warmest. Common practice, no source: about three o'clock. */
const WARMEST_AFTER = 2 * HOUR;

/** Days that are all alike; K, and s since midnight. */
export interface Days {
  /** By day and by night each steady, or swinging between warmest and coldest. */
  readonly told: 'steady' | 'swinging';
  readonly warm: number;
  readonly cold: number;
  readonly dayFrom: number;
  readonly dayTo: number;
}

/** Air at a time, K; s since any midnight. */
export function warmthAt({ told, warm, cold, dayFrom, dayTo }: Days, time: number): number {
  if (told === 'steady') {
    const sinceDawn = wrapped(time - dayFrom);
    return sinceDawn < wrapped(dayTo - dayFrom) ? warm : cold;
  }
  const turn = (2 * Math.PI * (time - warmestAt({ dayFrom, dayTo }))) / DAY;
  return (warm + cold) / 2 + ((warm - cold) / 2) * Math.cos(turn);
}

/** A time of the day, s since midnight; a day may run past it. */
const wrapped = (time: number) => ((time % DAY) + DAY) % DAY;

const warmestAt = ({ dayFrom, dayTo }: Pick<Days, 'dayFrom' | 'dayTo'>) =>
  dayFrom + wrapped(dayTo - dayFrom) / 2 + WARMEST_AFTER;

/** Times of day at which the air crosses a temperature, or steps from day to night. */
function cornersOf(days: Days, at: number): number[] {
  if (days.told === 'steady') return [days.dayFrom, days.dayTo];
  const share = (at - (days.warm + days.cold) / 2) / ((days.warm - days.cold) / 2);
  if (!(Math.abs(share) < 1)) return [];
  const off = (Math.acos(share) / (2 * Math.PI)) * DAY;
  return [-off, off].map((by) => wrapped(warmestAt(days) + by));
}

/**
 * How fast epoxy gets on: one at 25 °C, times `factor` for each 10 °C warmer, nought where it is colder than it cures.
 */
export const cureRate = (
  days: Days,
  { factor, stops }: { readonly factor: number; readonly stops: number },
): DailyRate => ({
  at: (time) => {
    const warmth = warmthAt(days, time);
    return warmth < stops ? 0 : factor ** ((warmth - TOLD_AT) / 10);
  },
  corners: cornersOf(days, stops),
});

/** Paint dries by its own clock: an hour counts or, where it is colder than the paint dries, doesn't. */
export const dryRate = (days: Days, least: number): DailyRate => ({
  at: (time) => (warmthAt(days, time) < least ? 0 : 1),
  corners: cornersOf(days, least),
});

/** Time of each day in which it is colder than this, s. */
export const colderThan = (days: Days, least: number): number => DAY - aged(dryRate(days, least), 0, DAY);

export const WEEKDAYS = [
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
] as const;

/**
 * `14:30 on Sat, day 1`, days counted from the first job's; to the quarter of an hour.
 * @param time s since the first Monday's midnight
 * @param first the first job's time, likewise
 */
export function clockWords(time: number, first: number, round: 'up' | 'down' = 'up'): string {
  const quarter = HOUR / 4;
  const near = round === 'up' ? Math.ceil(time / quarter - 1e-6) : Math.floor(time / quarter + 1e-6);
  const day = Math.floor((near * quarter) / DAY);
  const minutes = Math.round((near * quarter - day * DAY) / 60);
  const hour = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
  return `${hour} on ${shortDay(day)}, day ${day - Math.floor(first / DAY) + 1}`;
}

/** `Sat` of the sixth day, counted from Monday, 0. */
export const shortDay = (day: number): string => WEEKDAYS[day % 7]!.slice(0, 3);
