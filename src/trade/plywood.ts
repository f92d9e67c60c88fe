/**
 * Plywood: its density, and the stiffness of its veneers. How tight it bends: plywood-bend.ts.
 */
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
