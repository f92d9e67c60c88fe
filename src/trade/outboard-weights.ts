/**
 * What an outboard motor and its gear weigh in the tests of US boats, by its rated power.
 *
 * Source: 33 CFR 183.75, in force since June 2018: ABYC S-30 (2015), Table 1A, as a builders' page reproduces it. Before
 * that: 33 CFR 183, Table 4 to Subpart H, edition of 2015; its 35 lb for 4 to 7 horsepower is a slip for 60 + 25.
 */
import { HORSEPOWER, POUND } from '../measure/si';

/** Masses in kg; what is absent weighs nothing. */
export interface OutboardWeights {
  readonly id: string;
  /** Greatest rated power of the row, W. */
  readonly upTo: number;
  readonly motor: number;
  /** Motor and controls held under water. */
  readonly swamped: number;
  readonly controls?: number;
  readonly battery?: number;
  readonly batterySwamped?: number;
  /** The portable tank, full. */
  readonly tank?: number;
}

type Row = readonly [
  upTo: number,
  motor: number,
  swamped: number,
  controls: number,
  battery: number,
  batterySwamped: number,
  tank: number,
];

/** Horsepower and pounds, as printed. */
const inSi = (rows: readonly Row[]): readonly OutboardWeights[] =>
  rows.map(([upTo, motor, swamped, controls, battery, batterySwamped, tank], at) => ({
    id: `row${at + 1}`,
    upTo: upTo * HORSEPOWER,
    motor: motor * POUND,
    swamped: swamped * POUND,
    ...(controls && { controls: controls * POUND }),
    ...(battery && { battery: battery * POUND }),
    ...(batterySwamped && { batterySwamped: batterySwamped * POUND }),
    ...(tank && { tank: tank * POUND }),
  }));

/** The motor as it runs, with oil and fuel in it; swamped without its controls, which are a column of their own. */
export const outboardsNow: readonly OutboardWeights[] = inSi([
  [2, 32, 27, 0, 0, 0, 0],
  [3.9, 44, 37, 0, 0, 0, 0],
  [6.9, 69, 59, 0, 0, 0, 25],
  [10.9, 110, 94, 5, 20, 11, 50],
  [22.9, 133, 113, 6, 45, 25, 50],
  [34.9, 196, 167, 9, 45, 25, 100],
  [64.9, 300, 255, 14, 45, 25, 100],
  [94.9, 461, 392, 22, 45, 25, 100],
  [104.9, 481, 409, 23, 45, 25, 100],
  [144.9, 552, 469, 26, 45, 25, 100],
  [194.9, 589, 501, 28, 45, 25, 100],
  [209.9, 685, 582, 33, 45, 25, 100],
  [300, 734, 624, 35, 45, 25, 100],
  [350, 928, 789, 44, 45, 25, 100],
]);

/** The motor dry, with its controls. */
export const outboardsBefore2018: readonly OutboardWeights[] = inSi([
  [2, 25, 20, 0, 0, 0, 0],
  [3.9, 40, 34, 0, 0, 0, 0],
  [7, 60, 52, 0, 0, 0, 25],
  [15, 90, 82, 0, 20, 11, 50],
  [25, 125, 105, 0, 45, 25, 50],
  [45, 170, 143, 0, 45, 25, 100],
  [60, 235, 195, 0, 45, 25, 100],
  [80, 280, 235, 0, 45, 25, 100],
  [145, 405, 352, 0, 45, 25, 100],
  [275, 430, 380, 0, 45, 25, 100],
  [350, 605, 538, 0, 45, 25, 100],
]);

/** A power typed in kilowatts may miss its horsepower by this share. */
const NEAR = 1e-6;

/** The row of a rated power, W; null for no motor. @throws past the end of the table */
export function outboardOf(rows: readonly OutboardWeights[], power: number): OutboardWeights | null {
  if (power <= 0) return null;
  const row = rows.find(({ upTo }) => power <= upTo * (1 + NEAR));
  if (!row) throw new Error('the table of motors ends at 350 horsepower');
  return row;
}

/** Motor, controls, battery and full portable tank, kg: what the rule takes off the boat's maximum weight. */
export const equipmentOf = (row: OutboardWeights | null): number =>
  row ? row.motor + (row.controls ?? 0) + (row.battery ?? 0) + (row.tank ?? 0) : 0;

/** What pulls her down at the stern when she is swamped, kg: motor, controls and battery under water. */
export const swampedMotor = (row: OutboardWeights | null): number =>
  row ? row.swamped + (row.controls ?? 0) + (row.batterySwamped ?? 0) : 0;
