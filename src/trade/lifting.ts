/** How often somebody lifts, and what that leaves of a lift: the published lifting equation's table. */
import type { Cited } from './table';

const EQUATION = 'DHHS (NIOSH) 94-110, rev. 9/2021';

const row = (rate: number, left: number): { readonly rate: number; readonly left: Cited } => ({
  rate,
  left: {
    value: left,
    source: `${EQUATION}, frequency multiplier, work of up to an hour`,
    known: 'published',
  },
});

/** Lifts a minute, work of up to an hour; the same for high and low hands up to twelve a minute. */
export const rates = [
  row(0.2, 1),
  row(0.5, 0.97),
  row(1, 0.94),
  row(2, 0.91),
  row(3, 0.88),
  row(4, 0.84),
  row(5, 0.8),
  row(6, 0.75),
  row(7, 0.7),
  row(8, 0.6),
  row(9, 0.52),
  row(10, 0.45),
  row(11, 0.41),
  row(12, 0.37),
] as const;

/** Share of a lift that is left at so many lifts a minute, straight between the rows. */
export function leftAtRate(perMinute: number): number {
  const above = rates.findIndex(({ rate }) => perMinute <= rate);
  const to = rates[above] ?? rates.at(-1)!;
  const from = rates[above - 1];
  if (!from) return to.left.value;
  return (
    from.left.value + ((perMinute - from.rate) / (to.rate - from.rate)) * (to.left.value - from.left.value)
  );
}

/** What each of several people lifts of what one lifts alone: HSE, from two thirds of the sum for two to half for three. */
const ofSum = (people: number): number => (people <= 1 ? 1 : people === 2 ? 2 / 3 : 1 / 2);

/** What people lift together, kg, of whom each lifts so much alone. */
export const liftedBy = (people: number, each: number): number => people * ofSum(people) * each;

/** Fewest people for a load, kg. */
export function peopleFor(load: number, each: number): number {
  const many = [1, 2, 3].find((people) => liftedBy(people, each) >= load * (1 - 1e-9));
  return many ?? Math.ceil((load * (1 - 1e-9)) / (liftedBy(3, each) / 3));
}
