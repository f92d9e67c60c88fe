/** A size of custom, said in millimetres and in inches: each round in its own system. */
import { INCH, MM_PER_INCH } from './si';

/** Custom goes by finer marks the smaller a thing is: up to so many millimetres by so many marks an inch. */
const MARKS = [
  [0.8, 64],
  [1.5, 32],
  [6, 16],
  [50, 8],
  [100, 4],
  [300, 2],
  [900, 1],
  [1e5, 1 / 6],
] as const;

/**
 * The inches of who says so many round millimetres or metres: `19 mm` is 3/4 in, `600 mm` 24 in, `2.4 m` 8 ft.
 * Undefined for what is not round, as a length that was worked out.
 */
export function inchTwin(metric: string): string | undefined {
  const [, figure, unit] = /^(\d{1,3}0*|\d+\.\d) (m?m)$/.exec(metric) ?? [];
  const size = Number(figure) * (unit === 'm' ? 1000 : 1);
  const marks = MARKS.find(([most]) => size <= most)?.[1];
  return marks && size ? `${Math.max(1, Math.round((size / MM_PER_INCH) * marks)) / marks} in` : undefined;
}

/** The inches of so many metres as a text: what a table counts by inches comes back without the last bits of a sum. */
export const inchText = (metres: number): string => `${Number((metres / INCH).toFixed(9))} in`;
