/** How long a plywood plate behind a butt in plywood must be to carry what the panel carries. */
import { INCH } from '../measure/si';

/** The faces of the panels joined: sanded ones are thinner for the same name, and the plate is shorter. */
export type Faces = 'sanded' | 'unsanded';

/**
 * Length of the plate across the joint, in inches of panel and of plate: full strength in tension or bending
 * along the face grain.
 *
 * APA, Plywood Design Specification, table of plywood splices: from memory.
 */
const printed: readonly { readonly thickness: number; readonly sanded: number; readonly unsanded: number }[] =
  [
    { thickness: 1 / 4, sanded: 6, unsanded: 6 },
    { thickness: 5 / 16, sanded: 8, unsanded: 8 },
    { thickness: 3 / 8, sanded: 10, unsanded: 12 },
    { thickness: 1 / 2, sanded: 14, unsanded: 14 },
    { thickness: 5 / 8, sanded: 16, unsanded: 16 },
    { thickness: 3 / 4, sanded: 16, unsanded: 16 },
  ];

/** The same as a rule: the plate reaches this many panel thicknesses to either side of the joint. */
export const plateEachSide = 12;

/** Rows stand no farther apart than an eighth of an inch, so half of that is the nearest row's reach, m. */
const REACH = INCH / 16;

/**
 * Length of the plate across the joint by the printed row nearest to the panel's thickness, m.
 *
 * @param thickness of the panel, m
 * @returns null where no row is near: thinner than about 5 mm, thicker than about 20 mm
 */
export function printedPlate(thickness: number, faces: Faces): number | null {
  const [nearest] = printed
    .map((row) => ({ row, away: Math.abs(row.thickness * INCH - thickness) }))
    // Midway between two rows the thicker one counts.
    .toSorted((a, b) =>
      Math.abs(a.away - b.away) < 1e-9 ? b.row.thickness - a.row.thickness : a.away - b.away,
    );
  return nearest && nearest.away <= REACH + 1e-9 ? nearest.row[faces] * INCH : null;
}

/**
 * Strength of sheathing plywood as a data sheet gives it, repeating the Wood Handbook: lowest and highest
 * figure, Pa.
 */
export const sheathing = {
  /** Tension along the face grain. */
  tension: [27.6e6, 34.5e6],
  /** Rolling shear: one ply rolling over the fibres of the next. */
  rollingShear: [1.72e6, 2.07e6],
  source: 'a data sheet on sheathing plywood that repeats the Wood Handbook',
} as const;
