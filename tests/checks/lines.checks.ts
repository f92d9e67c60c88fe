/** Lines: what the cell gives of hulls whose form is known. The kernel's own volumes: geometry.checks.ts. */
import { lines } from '../../src/cells/shape/lines';
import { box, veePrism } from '../boat/shapes';
import { tableThrough } from '../cells/shape/table-through';
import { type Tried, tryCell } from '../cells/try-cell';
import type { Check } from './check';

const boxAfloat = (): Tried =>
  tryCell(lines, { by: 'draught', draught: '0.25 m' }, tableThrough(box(6, 2, 1)));
const veeAfloat = (): Tried => {
  const vee = veePrism(4, 0.6, Math.atan2(0.16, 0.6), 0.44, Math.atan2(0.2, 0.44));
  return tryCell(lines, { by: 'draught', draught: '0.25 m', station: 'frame2' }, tableThrough(vee));
};
const numbers = (tried: Tried, ...keys: readonly string[]) => keys.map((key) => tried.number(key));

export const rows: readonly Check[] = [
  {
    id: 'L16',
    cell: 'lines',
    what: 'weight of a box-shaped vessel, and what sinks it by a centimetre',
    input: 'box 6 m by 2 m floating 0.25 m deep in fresh water of 1000 kg/m³',
    expected: [3000, 120],
    unit: 'kg',
    tolerance: 0.001,
    source: 'length × beam × draught × density; waterplane × density / 100',
    known: 'closed form',
    obtain: () => numbers(boxAfloat(), 'mass', 'sinkage'),
  },
  {
    id: 'L17',
    cell: 'lines',
    what: 'block and prismatic coefficients of a box and of a vee-bottomed prism',
    input: 'the box; keel (0, 0), chine (0.6, 0.16), sheer (0.8, 0.6) m, waterline 0.25 m up',
    // Area 0.2076818 over 2 x 0.6409091 x 0.25.
    expected: [1, 1, 0.648085, 1],
    unit: '',
    tolerance: 1e-5,
    source:
      'both are 1 for a box; a prism has the prismatic coefficient 1 and the block coefficient of its section',
    known: 'closed form',
    obtain: () => [
      ...numbers(boxAfloat(), 'block', 'prismatic'),
      ...numbers(veeAfloat(), 'block', 'prismatic'),
    ],
  },
  {
    id: 'L18',
    cell: 'lines',
    what: 'section of a vee bottom under water, both sides',
    input: 'keel (0, 0), chine (0.6, 0.16), sheer (0.8, 0.6) m, waterline 0.25 m up',
    expected: [0.207682],
    unit: 'm²',
    tolerance: 1e-6,
    source: 'polygon by its corners (0, 0), (0.6, 0.16), (0.640909, 0.25)',
    known: 'closed form',
    obtain: () => numbers(veeAfloat(), 'sectionArea'),
  },
];
