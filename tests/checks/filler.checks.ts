/** Filler: recesses over screw heads as cones cut off, mixes by weight, pot life by temperature. */
import { filler } from '../../src/cells/finish/filler';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const of = (key: string, entries: Record<string, string>) => tryCell(filler, entries).number(key);

const CONE = 'volume of a cone cut off, π h (R² + R r + r²) / 3';
const hole = (id: string, input: string, entries: Record<string, string>, expected: number): Check => ({
  id,
  cell: 'filler',
  what: 'filler over one head',
  input,
  expected: [expected],
  unit: 'mm³',
  tolerance: 0.05,
  source: CONE,
  known: 'closed form',
  obtain: () => [of('hole', entries) * 1e9],
});

const mix = (id: string, input: string, entries: Record<string, string>, expected: number): Check => ({
  id,
  cell: 'filler',
  what: 'paste from one volume of epoxy',
  input,
  expected: [expected],
  unit: '',
  tolerance: 0.001,
  source: 'volumes of what is mixed by weight add up',
  known: 'closed form',
  obtain: () => [of('pasteYield', { epoxyDensity: '1.1 kg/L', ...entries })],
});

const pot = (id: string, air: string, expected: number): Check => ({
  id,
  cell: 'filler',
  what: 'pot life in another air',
  input: `20 min at 25 °C, in ${air}`,
  expected: [expected],
  unit: 'min',
  tolerance: 0.01,
  source: "epoxy makers' sheets: doubled for each 10 °C colder, halved for each 10 °C warmer",
  known: 'published',
  obtain: () => [of('pot', { potLife: '20 min', air }) / 60],
});

export const rows: readonly Check[] = [
  hole(
    'C52',
    'head 6 mm, 3 mm deep, 10 mm wide at the face',
    { head: '6 mm', recess: '3 mm', angle: '67.380135 deg' },
    153.94,
  ),
  hole(
    'C53',
    'head 9 mm sunk 2 mm, countersink of 82°',
    { head: '9 mm', recess: '2 mm', angle: '82 deg' },
    182.72,
  ),
  mix(
    'C45',
    '100 g of epoxy at 1.1 g/mL, 25 g of wood flour at 1.5',
    { fillerShare: '25 %', fillerDensity: '1.5 kg/L' },
    1.1833,
  ),
  mix(
    'C46',
    '100 g of epoxy at 1.1 g/mL, 20 g of hollow spheres at 0.25',
    { fillerShare: '20 %', fillerDensity: '0.25 kg/L' },
    1.88,
  ),
  pot('C28', '15 °C', 40),
  pot('C29', '32 °C', 12.31),
];
