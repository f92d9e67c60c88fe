/** Laminating: the printed example of spring-back, unequal layers, clamps; closed forms of beam theory and statics. */
import { laminate } from '../../src/cells/timber/bending/laminate';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const INCH = 0.0254;
const MM = 1e-3;

const of = (key: string, entries: Readonly<Record<string, string>>, unit = 1): number =>
  tryCell(laminate, entries).number(key) / unit;

const listed = { layup: 'listed', layer1: '6 mm', layer2: '6 mm', layer3: '12 mm', thickness: '24 mm' };
const clamped = { width: '40 mm', length: '1 m', pressure: '0.7 MPa', clampForce: '4 kN' };

export const rows: readonly Check[] = [
  {
    id: 'W24a',
    cell: 'laminate',
    what: 'rise lost off a form by a beam of 3 in camber, and more rise for its form',
    input: '4 layers, rise 3 in; lost, then 3 in / (1 − 1/16) − 3 in',
    expected: [3 / 16, 0.2],
    unit: 'in',
    tolerance: 1e-9,
    source: 'boat-trade worked example, 3/16 in; the form by the same rule turned round',
    known: 'published',
    obtain: () =>
      ['lostRise', 'moreRise'].map((key) => of(key, { wholeRise: '3 in', plies: '4', held: 'form' }, INCH)),
  },
  {
    id: 'W27',
    cell: 'laminate',
    what: 'curvature that an unequal stack keeps off its form',
    input: 'layers of 6, 6 and 12 mm',
    expected: [0.84375],
    unit: '',
    tolerance: 1e-6,
    source: 'beam theory, 1 − Σt³/(Σt)³',
    known: 'closed form',
    obtain: () => [1 - of('springBack', listed)],
  },
  {
    id: 'W27a',
    cell: 'laminate',
    what: 'radius to which that stack opens off a form',
    input: 'layers of 6, 6 and 12 mm; form 2000 mm',
    expected: [2370.37],
    unit: 'mm',
    tolerance: 0.01,
    source: 'beam theory, R / (1 − Σt³/(Σt)³)',
    known: 'closed form',
    obtain: () => [of('releasedRadius', { ...listed, radius: '2 m' }, MM)],
  },
  {
    id: 'W27b',
    cell: 'laminate',
    what: 'stretch of the inner layer on its own radius',
    input: '2 layers of 20 mm, 500 mm to the middle of the stack',
    expected: [20 / 980],
    unit: '',
    tolerance: 1e-9,
    source: 'geometry and beam theory, t/(2 (R − T/2 + t/2))',
    known: 'closed form',
    obtain: () => [of('ownStrain', { thickness: '40 mm', plies: '2', radius: '500 mm' })],
  },
  {
    id: 'W27c',
    cell: 'laminate',
    what: 'chance that one breaks, and that all break, of layers bent to their mean strength',
    input: '2; 3 layers of 20 mm, E 13.4 GPa, MOR 85 MPa, R 1576.47 mm; both vary by 20 %',
    expected: [0.75, 0.875, 0.25, 0.125],
    unit: '',
    tolerance: 1e-6,
    source: 'chance of independent boards, each breaking in 1/2 where both spreads are alike',
    known: 'closed form',
    obtain: () =>
      ['chanceAny', 'chanceAll'].flatMap((key) =>
        [2, 3].map((plies) =>
          of(key, {
            plies: `${plies}`,
            thickness: `${20 * plies} mm`,
            radius: `${(13.4e9 * 20) / (2 * 85e6)} mm`,
            modulus: '13.4 GPa',
            rupture: '85 MPa',
            ruptureSpread: '20 %',
            modulusSpread: '20 %',
          }),
        ),
      ),
  },
  {
    id: 'W29',
    cell: 'laminate',
    what: 'force of all clamps together',
    input: '40 × 1000 mm at 0.7 MPa',
    expected: [28],
    unit: 'kN',
    tolerance: 1e-9,
    source: 'statics, pressure over area; 0.7 MPa from memory: Wood Handbook, ch. 10',
    known: 'closed form',
    obtain: () => [of('pressForce', clamped, 1000)],
  },
  {
    id: 'W29a',
    cell: 'laminate',
    what: 'clamps of 4 kN that the pressure asks for',
    input: '40 × 1000 mm at 0.7 MPa',
    expected: [7],
    unit: 'clamps',
    tolerance: 0,
    source: 'statics, 28 kN over 4 kN; the force of a clamp is common practice',
    known: 'closed form',
    obtain: () => [of('clampsByForce', clamped)],
  },
];
