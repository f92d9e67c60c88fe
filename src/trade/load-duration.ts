/**
 * How strong wood stays under a stress that lasts, and how warmth changes it: by the published curve and factors.
 *
 * Strength is taken over that in the usual bending test, which lasts some five minutes at room temperature.
 */
import type { Cited } from './table';

const CODE = 'National Design Specification for Wood Construction (2018), Table 2.3.2';

/** One answer to how long a board stays under its stress. */
export interface Lasting {
  readonly id: string;
  readonly label: string;
  /** Seconds that the curve is read at. */
  readonly seconds: number;
  /** Load duration factor of the American code: 1 for ten years. */
  readonly codeFactor: Cited;
}

const DAY = 86_400;
const YEAR = 365.25 * DAY;
const factor = (value: number): Cited => ({ value, source: CODE, known: 'published' });

/** The factor of a load of ten minutes, nearest to that of a test: strength over it is as in the test. */
export const testFactor = factor(1.6);

export const lastings: readonly Lasting[] = [
  { id: 'minutes', label: 'some minutes: while it is bent on', seconds: 300, codeFactor: testFactor },
  { id: 'week', label: 'a week', seconds: 7 * DAY, codeFactor: factor(1.25) },
  { id: 'months', label: 'two months', seconds: YEAR / 6, codeFactor: factor(1.15) },
  { id: 'years', label: 'ten years', seconds: 10 * YEAR, codeFactor: factor(1) },
  { id: 'ever', label: 'for good', seconds: 50 * YEAR, codeFactor: factor(0.9) },
];

/**
 * Share of the test's strength that wood keeps under a stress for so many seconds, at most 1.
 *
 * Source, from memory: L. W. Wood, Relation of strength of wood to duration of load, Forest Products Laboratory Report
 * 1916 (1951), the curve named after Madison; 108.4 t^-0.04635 + 18.3 per cent.
 */
export function keptAfter(seconds: number): number {
  if (!(seconds > 0)) throw new Error('a stress lasts longer than no time at all');
  return Math.min(1, (108.4 * seconds ** -0.04635 + 18.3) / 100);
}

const WARMTH = 'Wood Handbook, USDA FPL-GTR-190 (2010), ch. 5, change of properties with temperature';
/** Changes from 20 °C, as ratios, at 50 °C below and 50 °C above nought. */
export const warmthChanges = {
  modulus: { cold: 0.17, hot: -0.07, source: WARMTH, known: 'from memory' },
  /** At 11 to 15 % moisture, and at 18 to 20 %. */
  rupture: { cold: 0.35, hot: -0.2, source: WARMTH, known: 'from memory' },
  ruptureDamp: { cold: 0.6, hot: -0.25, source: WARMTH, known: 'from memory' },
} as const;

const ROOM = 293.15;
const COLD = 223.15;
const HOT = 323.15;

/** Stiffness over that at 20 °C, for wood of about 12 % moisture, by straight lines between the printed changes. */
export function stiffnessAt(kelvin: number): number {
  return between(warmthChanges.modulus, kelvin);
}

/**
 * Strength in bending over that at 20 °C: up to 15 % moisture as printed for 11 to 15 %, from 18 % on as for 18 to 20 %,
 * between the two by a straight line.
 */
export function strengthAt(kelvin: number, moisture: number): number {
  const damp = Math.min(1, Math.max(0, (moisture - 0.15) / 0.03));
  return (
    (1 - damp) * between(warmthChanges.rupture, kelvin) + damp * between(warmthChanges.ruptureDamp, kelvin)
  );
}

function between({ cold, hot }: { readonly cold: number; readonly hot: number }, kelvin: number): number {
  // A hair beyond is what rounding of a bound leaves.
  if (!(kelvin > COLD - 0.01 && kelvin < HOT + 0.01))
    throw new Error('the change with temperature is printed from -50 to 50 °C (-58 to 122 °F)');
  return kelvin < ROOM
    ? 1 + (cold * (ROOM - kelvin)) / (ROOM - COLD)
    : 1 + (hot * (kelvin - ROOM)) / (HOT - ROOM);
}
