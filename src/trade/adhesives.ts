/**
 * Glues by their kind, as a builder meets them: the gap they bridge, the pressure they want, the time they
 * leave, the warmth and the moisture they ask for. The sheet of the glue in hand outranks every figure here.
 */
import { plainShown, write } from '../measure';
import { INCH } from '../measure/si';
import type { Cited, TradeRow, TradeTable } from './table';
import { CUSTOM } from './sources';

export type AdhesiveColumn =
  | 'mostGap'
  | 'leastPressure'
  | 'mostPressure'
  | 'shortestOpen'
  | 'longestOpen'
  | 'shortestClamped'
  | 'longestClamped'
  | 'leastTemperature'
  | 'driest'
  | 'wettest'
  | 'leastSpread'
  | 'mostSpread';

export interface Adhesive extends TradeRow<AdhesiveColumn> {
  /** What it bears of water, as a phrase that follows "is for": `damp places`. */
  readonly immersion: string;
}

const practice = (value: number, said?: string): Cited => ({
  value,
  source: said === undefined ? CUSTOM : `${CUSTOM}: ${said}`,
  known: 'common practice',
});

/** A row in the units of the trade; `own` holds what is better known than by custom. */
function row(
  id: string,
  label: string,
  immersion: string,
  [gap, pressure, open, clamped, celsius, moisture, spread]: readonly [
    mm: number,
    MPa: readonly [number, number],
    minutes: readonly [number, number],
    hours: readonly [number, number],
    celsius: number,
    percent: readonly [number, number],
    gramsPerSquareMetre: readonly [number, number] | null,
  ],
  own: Adhesive['cells'] = {},
): Adhesive {
  return {
    id,
    label,
    immersion,
    cells: {
      mostGap: practice(gap / 1000),
      leastPressure: practice(pressure[0] * 1e6),
      mostPressure: practice(pressure[1] * 1e6),
      shortestOpen: practice(open[0] * 60),
      longestOpen: practice(open[1] * 60),
      shortestClamped: practice(clamped[0] * 3600, 'at 20 °C (68 °F)'),
      longestClamped: practice(clamped[1] * 3600, 'at 20 °C (68 °F)'),
      leastTemperature: practice(celsius + 273.15),
      driest: practice(moisture[0] / 100),
      wettest: practice(moisture[1] / 100),
      ...(spread ? { leastSpread: practice(spread[0] / 1000), mostSpread: practice(spread[1] / 1000) } : {}),
      ...own,
    },
  };
}

const HANDBOOK = 'Wood Handbook, USDA FPL-GTR-190 (2010), ch. 10';
const remembered = (value: number, source: string): Cited => ({ value, source, known: 'from memory' });

/** Rigid glues: lightest wood near 0.7 MPa, densest up to 1.7. */
const PRESSURE = `${HANDBOOK}: near 0.7 MPa (100 psi) on light wood, up to 1.7 MPa (250 psi) on the densest`;

export interface Glues extends TradeTable<AdhesiveColumn> {
  readonly rows: readonly Adhesive[];
}

/** All the generic glues; spread is for the paste itself, on both faces together. */
export const adhesives: Glues = {
  id: 'adhesive',
  columns: {
    mostGap: { kind: 'length', meaning: 'widest gap bridged' },
    leastPressure: { kind: 'pressure', meaning: 'least clamp pressure' },
    mostPressure: { kind: 'pressure', meaning: 'greatest clamp pressure' },
    shortestOpen: { kind: 'minutes', meaning: 'shortest time from spreading to closing' },
    longestOpen: { kind: 'minutes', meaning: 'longest time from spreading to closing' },
    shortestClamped: { kind: 'time', meaning: 'shortest time in the clamps at 20 °C (68 °F)' },
    longestClamped: { kind: 'time', meaning: 'longest time in the clamps at 20 °C (68 °F)' },
    leastTemperature: { kind: 'temperature', meaning: 'least temperature' },
    driest: { kind: 'share', meaning: 'driest wood' },
    wettest: { kind: 'share', meaning: 'wettest wood' },
    leastSpread: { kind: 'areaDensity', meaning: 'least spread' },
    mostSpread: { kind: 'areaDensity', meaning: 'greatest spread' },
  },
  rows: [
    row(
      'epoxy',
      'thickened epoxy',
      'joints under water, if they are coated',
      [3, [0.02, 0.1], [20, 40], [8, 24], 10, [6, 16], [250, 400]],
      {
        leastPressure: practice(
          0.02e6,
          'contact, so that the joint closes; C. R. Frihart, on epoxy bonds of wood, has low pressure too',
        ),
        leastTemperature: practice(283.15, 'makers sell slow ones that cure from 5 °C (41 °F)'),
      },
    ),
    row(
      'resorcinol',
      'resorcinol',
      'joints under water, weather and boiling',
      [0.15, [0.7, 1.7], [10, 20], [10, 16], 21, [8, 12], [300, 350]],
      {
        mostGap: practice(
          0.00015,
          `strongest with 0.08 to 0.15 mm (0.003 to 0.006 in) in the line, ${HANDBOOK}`,
        ),
        leastPressure: remembered(0.7e6, PRESSURE),
        mostPressure: remembered(1.7e6, PRESSURE),
      },
    ),
    row(
      'polyurethane',
      'gap-filling polyurethane or paste',
      'damp places, not a joint on which the hull hangs under water',
      [3, [0.05, 0.2], [10, 20], [4, 24], 5, [8, 18], null],
      { mostGap: practice(0.002, '2 to 3 mm (1/16 to 1/8 in), of which the surer') },
    ),
    row(
      'pva',
      'cross-linked PVA',
      'weather, not water: it creeps under load and is no glue for a hull under water',
      [0.15, [0.7, 1.4], [5, 10], [1, 24], 10, [6, 12], [150, 250]],
      {
        mostGap: {
          value: 0.00015,
          source: "a glue maker's sheet: a gap of about 0.05 to 0.15 mm (0.002 to 0.006 in)",
          known: 'published',
        },
      },
    ),
  ],
};

/** No gap wider than this, m, as a tape has it; a hair of one as a feeler gauge has it. */
const mostInInches = (gap: number): string =>
  write(
    gap,
    gap < 0.001 ? 'caliper' : 'length',
    { ...plainShown, length: 'feet', fraction: 32 },
    { bound: 'most' },
  ).text;

/** The widest gap of each kind, in words: `thickened epoxy 3 mm (3/32 in), …`. */
export const gapsBridged: string = adhesives.rows
  .map(({ label, cells }) => [label, cells.mostGap?.value ?? 0] as const)
  .map(([label, gap]) => `${label} ${gap * 1000} mm (${mostInInches(gap)})`)
  .join(', ');

/** Neat epoxy that primes one face before the paste, kg/m2. */
export const primer: Cited = practice(0.125, 'the middle of 100 to 150 g/m² (3 to 4.5 oz/yd²) on each face');

/** Thickness of a line of thickened epoxy, m. */
export const epoxyLine: Cited = practice(
  0.0005,
  '0.3 to 0.5 mm (0.012 to 0.02 in), of which the thicker; staples left in serve as spacers',
);

/** Glue spread on both faces, s for each metre; and one clamp set and tightened, s. One person. */
export const spreadTime: Cited = practice(30, 'half a minute a metre or a yard');
export const clampTime: Cited = practice(30, 'half a minute a clamp');

/** A hand-tightened bar or C-clamp, N. */
export const clampForce: Cited = practice(3000, '2 to 4 kN (450 to 900 lbf), tightened by hand');

/** What screws or staples press with, Pa. */
export const screwPressure: Cited = practice(0.15e6, 'the middle of 0.1 to 0.2 MPa (15 to 30 psi)');

/** Clamp to clamp, m: straight runs and tight curves. */
export const clampPitch = {
  straight: practice(0.175, 'the middle of 150 to 200 mm (6 to 8 in)'),
  tight: practice(0.085, 'near the middle of 75 to 100 mm (3 to 4 in) on tight curves'),
} as const satisfies Record<string, Cited>;

/** The same as it is said by inches, m. */
export const clampPitchInch = {
  straight: practice(7 * INCH, 'the middle of 6 to 8 in (150 to 200 mm)'),
  tight: practice(3.5 * INCH, 'the middle of 3 to 4 in (75 to 100 mm) on tight curves'),
} as const satisfies Record<string, Cited>;

/** What is asked about until another is chosen: of the common kinds the one that forgives gaps and bears water. */
export const usualGlue = 'epoxy';
