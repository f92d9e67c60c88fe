/**
 * Plywood: density, stiffness by its plies, and the tightest curve a dry panel takes.
 */
import { FOOT, INCH } from '../measure/si';
import type { Cited, TradeTable } from './table';
import { look } from './table';
import { timber } from './timber';

export type PlywoodColumn = 'density' | 'faceModulus';

const PRACTICE = 'common practice, no source';

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
          source:
            'a plywood trade sheet: 4 mm (5/32 in) weighs 1.8 kg/m² (0.37 lb/ft²), 18 mm (11/16 in) 8.1 kg/m² (1.66 lb/ft²)',
          known: 'published',
        },
        ...veneer('okoume'),
      },
    },
    {
      id: 'meranti',
      label: 'Meranti, marine',
      cells: {
        density: practice(570, `${PRACTICE}: the middle of 540 to 600 kg/m³ (34 to 37 lb/ft³)`),
        ...veneer('lightRedMeranti'),
      },
    },
    {
      id: 'khaya',
      label: 'Khaya or sapele, marine',
      cells: {
        density: practice(625, `${PRACTICE}: the middle of 600 to 650 kg/m³ (37 to 41 lb/ft³)`),
        ...veneer('africanMahogany'),
      },
    },
    { id: 'birch', label: 'Birch', cells: { density: practice(680, PRACTICE) } },
    {
      id: 'douglasFir',
      label: 'Douglas-fir, exterior or marine',
      cells: {
        density: practice(540, `${PRACTICE}: the middle of 520 to 560 kg/m³ (32 to 35 lb/ft³)`),
        ...veneer('douglasFirCoast'),
      },
    },
  ],
};

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
  const thinnest = FORM_PANELS[0]![0] * INCH;
  const radius = radiusIn(FORM_PANELS, thickness, grain, FOOT);
  if (radius !== null) return { value: radius, source: FORM_SOURCE, known: 'published' };
  if (!(thickness >= 0.003 && thickness <= thinnest)) return null;
  const first = radiusIn(FORM_PANELS, thinnest, grain, FOOT)!;
  return {
    value: (first / thinnest) * thickness,
    source: `${FORM_SOURCE}; thinner than its 1/4 in (6.3 mm) row, whose radius over thickness is kept`,
    known: 'calculated',
  };
}

/** Linear between the rows of a table; null before the first and after the last. */
function radiusIn(rows: readonly RadiusRow[], thickness: number, grain: Grain, unit: number): number | null {
  const column = grain === 'across' ? 1 : 2;
  // A thickness written in mm may miss the printed row by a rounding.
  const slack = 1e-9;
  for (let i = 1; i < rows.length; i++) {
    const low = rows[i - 1]!;
    const high = rows[i]!;
    const share = (thickness / INCH - low[0]) / (high[0] - low[0]);
    if (share >= -slack && share <= 1 + slack)
      return (low[column] + share * (high[column] - low[column])) * unit;
  }
  return null;
}
