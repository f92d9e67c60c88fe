/** What a glued scarf keeps of the strength of the unbroken board. */

/** What end grain glued to end grain keeps in tension: *Wood Handbook*, USDA FPL-GTR-190 (2010), ch. 10. */
export const buttKept = 0.25;

/**
 * A planning curve through what is printed about plain scarfs in tension, slope 1 in s.
 *
 * A butt joint in end grain, 0.25, is from the *Wood Handbook*, ch. 10. Slopes 5 to 12 are remembered
 * from its older chapter on glued members, whose editions differ by about 0.05. The flat end, 0.95 at
 * 1 in 20, is quoted from R. Birmingham, *Boat Building Techniques*, who gives 0.65 at 1 in 4. Between
 * the points the curve is straight: common practice, not a test result.
 */
const planned: readonly (readonly [slope: number, kept: number])[] = [
  [0, buttKept],
  [5, 0.65],
  [8, 0.8],
  [10, 0.85],
  [12, 0.9],
  [20, 0.95],
];

/** How far the printed values stand apart, to either side. */
export const scarfSpread = 0.05;

/** Part of the strength kept by a scarf in solid wood of slope 1 in `slope`; 0.25 to 0.95, held level beyond the ends. */
export const scarfStrength = (slope: number): number => along(planned, slope);

/**
 * The same in plywood: *Plywood Design Specification* (APA), 0.75 at 1 in 5 and all at 1 in 8, in tension; from memory. Steeper
 * ones are drawn straight to the butt.
 */
const plywoodPlanned: typeof planned = [
  [0, buttKept],
  [5, 0.75],
  [8, 1],
];

export const panelScarfStrength = (slope: number): number => along(plywoodPlanned, slope);

function along(curve: typeof planned, slope: number): number {
  let [low, keptLow] = curve[0]!; // neither list is empty
  for (const [high, keptHigh] of curve) {
    if (slope <= low) break;
    if (slope <= high) return keptLow + ((slope - low) / (high - low)) * (keptHigh - keptLow);
    [low, keptLow] = [high, keptHigh];
  }
  return keptLow;
}

/** A strength that somebody prints for a scarf of slope 1 in `slope`. */
export interface PrintedScarf {
  readonly slope: number;
  readonly kept: number;
}

/** What is printed for one sort of joint, to lay beside the planning curve. */
export interface PrintedScarfs {
  readonly name: string;
  readonly source: string;
  readonly points: readonly PrintedScarf[];
}

/** Figures that don't lie on the planning curve: the books don't agree. */
export const otherPrinted: readonly PrintedScarfs[] = [
  {
    name: 'solid wood, as quoted',
    source: 'R. Birmingham, Boat Building Techniques, seen only as others quote it',
    points: [
      { slope: 4, kept: 0.65 },
      { slope: 20, kept: 0.95 },
    ],
  },
  {
    name: 'plywood',
    source: 'APA, Plywood Design Specification, scarfs in tension: from memory',
    points: [
      { slope: 5, kept: 0.75 },
      { slope: 8, kept: 1 },
    ],
  },
];
