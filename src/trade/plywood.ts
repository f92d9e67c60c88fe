/**
 * Plywood: density, stiffness by its plies, and the tightest curve a dry panel takes.
 */
import type { Cited, TradeTable } from './table';
import { look } from './table';
import { timber } from './timber';

export type PlywoodColumn = 'density' | 'faceModulus';

const PRACTICE = 'common practice, no source';
const inch = 0.0254;
const foot = 0.3048;

const practice = (value: number, source: string): Cited => ({ value, source, known: 'common practice' });

/** Bending modulus of the wood the plies are of, where the timber table has it. */
function veneer(wood: string): { faceModulus?: Cited } {
  const modulus = look(timber, wood, 'modulus');
  return modulus ? { faceModulus: modulus } : {};
}

export const plywood: TradeTable<PlywoodColumn> = {
  id: 'plywood',
  columns: {
    density: { kind: 'density', meaning: 'density' },
    faceModulus: { kind: 'stress', meaning: 'bending modulus of the veneers, along their grain,' },
  },
  rows: [
    {
      id: 'okoume',
      label: 'Okoume, marine',
      cells: {
        density: {
          value: 450,
          source: 'a plywood trade sheet: 4 mm weighs 1.8 kg/m2, 18 mm 8.1',
          known: 'published',
        },
        ...veneer('okoume'),
      },
    },
    {
      id: 'meranti',
      label: 'Meranti, marine',
      cells: {
        density: practice(570, `${PRACTICE}: the middle of 540 to 600 kg/m3`),
        ...veneer('lightRedMeranti'),
      },
    },
    {
      id: 'khaya',
      label: 'Khaya or sapele, marine',
      cells: {
        density: practice(625, `${PRACTICE}: the middle of 600 to 650 kg/m3`),
        ...veneer('africanMahogany'),
      },
    },
    { id: 'birch', label: 'Birch', cells: { density: practice(680, PRACTICE) } },
    {
      id: 'douglasFir',
      label: 'Douglas-fir, exterior or marine',
      cells: {
        density: practice(540, `${PRACTICE}: the middle of 520 to 560 kg/m3`),
        ...veneer('douglasFirCoast'),
      },
    },
  ],
};

/**
 * Bending modulus of a panel of equal plies laid crosswise, as shares of the veneer's own modulus.
 *
 * @param plies odd count of plies, 3 or more
 * @returns along and across the face grain; 3 plies: 0.965 and 0.085
 * @throws if `plies` is not an odd count of 3 or more
 * Source: parallel-ply theory, Wood Handbook ch. 12 (from memory), with a modulus across the grain of
 * 0.05 of that along it (Table 5-1, Douglas-fir). Plies of unequal thickness differ.
 */
export function plyShares(plies: number): { readonly along: number; readonly across: number } {
  if (!Number.isInteger(plies) || plies < 3 || plies % 2 === 0) {
    throw new Error(`plywood has an odd number of plies, 3 or more; ${plies} is not one`);
  }
  const acrossGrain = 0.05;
  // Second moment of the plies that run with the face, out of plies^3: whole blocks of 1, 3, 5 ... plies.
  let faceCubes = 0;
  for (let block = plies, sign = 1; block >= 1; block -= 2, sign = -sign) faceCubes += sign * block ** 3;
  const face = faceCubes / plies ** 3;
  return { along: face + acrossGrain * (1 - face), across: 1 - face + acrossGrain * face };
}

/** Whether the face grain runs along the curve or lies across it, parallel to the axis of the bend. */
export type Grain = 'along' | 'across';

type RadiusRow = readonly [thickness: number, across: number, along: number];

/** Non-overlaid Douglas-fir concrete-form panels, dry: inches, feet. */
const FORM_PANELS: readonly RadiusRow[] = [
  [1 / 4, 2, 5],
  [5 / 16, 2, 6],
  [3 / 8, 3, 8],
  [1 / 2, 6, 12],
  [5 / 8, 8, 16],
  [3 / 4, 12, 20],
];
const FORM_SOURCE = 'APA concrete-form panel table, Douglas-fir, dry';

/** Aircraft plywood bent cold at 10 % moisture: inches, inches. Along: bend axis square to the face grain. */
const AIRCRAFT_PANELS: readonly RadiusRow[] = [
  [0.07, 3.2, 5.2],
  [0.125, 7.1, 12],
  [0.16, 11, 17],
  [0.19, 14, 21],
  [0.25, 20, 31],
  [0.315, 28, 43],
  [0.375, 36, 54],
];
const AIRCRAFT_SOURCE = 'FAA AC 43.13-1B, minimum bend radii of aircraft plywood, 10 % moisture, cold form';

/**
 * Least radius of a dry panel bent cold by common sheathing plywood's measure.
 *
 * @param thickness of the panel, m; 0 < thickness <= 3/4 in
 * @returns radius in m, linear between the rows of the table; below 1/4 in (down to 3 mm) the first row's
 *   radius over thickness is kept and the answer says so; null outside
 * Source: APA concrete-form panel table (radii for mill-run panels: now and then one cracks; selected,
 * wetted or steamed panels go tighter, APA TT-003).
 */
export function leastBendRadius(thickness: number, grain: Grain): Cited | null {
  const thinnest = FORM_PANELS[0]![0] * inch;
  const radius = radiusIn(FORM_PANELS, thickness, grain, foot);
  if (radius !== null) return { value: radius, source: FORM_SOURCE, known: 'published' };
  if (!(thickness >= 0.003 && thickness <= thinnest)) return null;
  const first = radiusIn(FORM_PANELS, thinnest, grain, foot)!;
  return {
    value: (first / thinnest) * thickness,
    source: `${FORM_SOURCE}; thinner than its 1/4 in row, whose radius over thickness is kept`,
    known: 'calculated',
  };
}

/**
 * Least radius of selected, thin, many-ply panels by the aircraft trade's measure.
 *
 * @param thickness of the panel, m, from 0.070 to 0.375 in; null outside
 * Source: FAA AC 43.13-1B, table reproduced; which column is which grain is inferred from the larger radius.
 */
export function leastAircraftRadius(thickness: number, grain: Grain): Cited | null {
  const radius = radiusIn(AIRCRAFT_PANELS, thickness, grain, inch);
  return radius === null ? null : { value: radius, source: AIRCRAFT_SOURCE, known: 'published' };
}

/**
 * Least radius to plan with for marine plywood: between the two tables, their geometric mean; null where
 * either has no value. Common practice, no source.
 */
export function leastMarineRadius(thickness: number, grain: Grain): Cited | null {
  const form = leastBendRadius(thickness, grain);
  const aircraft = leastAircraftRadius(thickness, grain);
  if (!form || !aircraft) return null;
  return practice(
    Math.sqrt(form.value * aircraft.value),
    `${PRACTICE}: geometric mean of ${FORM_SOURCE}, and ${AIRCRAFT_SOURCE}`,
  );
}

/** Linear between the rows of a table; null before the first and after the last. */
function radiusIn(rows: readonly RadiusRow[], thickness: number, grain: Grain, unit: number): number | null {
  const column = grain === 'across' ? 1 : 2;
  // A thickness written in mm may miss the printed row by a rounding.
  const slack = 1e-9;
  for (let i = 1; i < rows.length; i++) {
    const low = rows[i - 1]!;
    const high = rows[i]!;
    const share = (thickness / inch - low[0]) / (high[0] - low[0]);
    if (share >= -slack && share <= 1 + slack)
      return (low[column] + share * (high[column] - low[column])) * unit;
  }
  return null;
}

/** Sheets commonly sold, m: length along the face grain by width. */
export const commonSheets: readonly {
  readonly length: number;
  readonly width: number;
  readonly source: string;
}[] = [
  { length: 2.44, width: 1.22, source: PRACTICE },
  { length: 2.5, width: 1.22, source: 'a plywood trade sheet (okoume)' },
  { length: 3.1, width: 1.53, source: 'a plywood trade sheet (okoume)' },
];
