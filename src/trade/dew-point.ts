/** When a surface sweats, and how much warmer than that it must be to be coated. The sheet of the coating outranks it. */
import type { Cited } from './table';

const MAGNUS = 'WMO-No. 8, Annex 4.B, over water, as a maker of weather stations transcribes it';

/** Pressure of saturated vapour: `atFreezing exp(steepness t / (offset + t))`, Pa, t in °C. */
export const magnus = {
  atFreezing: { value: 611.2, source: MAGNUS, known: 'published' },
  steepness: { value: 17.62, source: MAGNUS, known: 'published' },
  offset: { value: 243.12, source: MAGNUS, known: 'published' },
} as const satisfies Record<string, Cited>;

/** Surface above the dew point, K; by degrees Fahrenheit it is 5 °F. */
export const leastMargin: Cited = {
  value: 3,
  source:
    'coating guides, which cite ISO 8502-4: 3 °C, in America 5 °F; the standard itself tells how likely dew is and gives no one number',
  known: 'published',
};
