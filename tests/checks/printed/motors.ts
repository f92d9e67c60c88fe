/** Outboards and their gear, lb by rated hp, typed once more. */
import { type Printed, tableOf } from './units';

const LB = 0.45359237;
const HP = 550 * 0.3048 * LB * 9.80665;
const columns = [
  ['upTo', HP],
  ['motor', LB],
  ['swamped', LB],
  ['controls', LB],
  ['battery', LB],
  ['batterySwamped', LB],
  ['tank', LB],
] as const;

/** 33 CFR 183.75 since June 2018, as ABYC S-30 Table 1A is reproduced: running, swamped, controls, battery dry and submerged, tank. */
const now = `
row1  | 2     | 32  | 27  |    |    |    |
row2  | 3.9   | 44  | 37  |    |    |    |
row3  | 6.9   | 69  | 59  |    |    |    | 25
row4  | 10.9  | 110 | 94  | 5  | 20 | 11 | 50
row5  | 22.9  | 133 | 113 | 6  | 45 | 25 | 50
row6  | 34.9  | 196 | 167 | 9  | 45 | 25 | 100
row7  | 64.9  | 300 | 255 | 14 | 45 | 25 | 100
row8  | 94.9  | 461 | 392 | 22 | 45 | 25 | 100
row9  | 104.9 | 481 | 409 | 23 | 45 | 25 | 100
row10 | 144.9 | 552 | 469 | 26 | 45 | 25 | 100
row11 | 194.9 | 589 | 501 | 28 | 45 | 25 | 100
row12 | 209.9 | 685 | 582 | 33 | 45 | 25 | 100
row13 | 300   | 734 | 624 | 35 | 45 | 25 | 100
row14 | 350   | 928 | 789 | 44 | 45 | 25 | 100
`;

/** 33 CFR 183, Table 4 to Subpart H, 2015: dry and swamped with controls, battery dry and submerged, tank; its last row has no end. */
const before = `
row1  | 2   | 25  | 20  | | | |
row2  | 3.9 | 40  | 34  | | | |
row3  | 7   | 60  | 52  | | | | 25
row4  | 15  | 90  | 82  | | 20 | 11 | 50
row5  | 25  | 125 | 105 | | 45 | 25 | 50
row6  | 45  | 170 | 143 | | 45 | 25 | 100
row7  | 60  | 235 | 195 | | 45 | 25 | 100
row8  | 80  | 280 | 235 | | 45 | 25 | 100
row9  | 145 | 405 | 352 | | 45 | 25 | 100
row10 | 275 | 430 | 380 | | 45 | 25 | 100
row11 | 350 | 605 | 538 | | 45 | 25 | 100
`;

export const motors: Printed = {
  ...tableOf('outboard-weights.outboardsNow', columns, now),
  ...tableOf('outboard-weights.outboardsBefore2018', columns, before),
};
