/** Speed by the rules of thumb, against figures reckoned by hand from the published formulas. */
import { power } from '../../src/cells/afloat/power';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const KNOT = 1852 / 3600;
const HP = 745.699_871_582_27;
const GERR = 'Dave Gerr, Propeller Handbook (1989)';
const knots = (entries: Readonly<Record<string, string>>, key: string) =>
  tryCell(power, entries).number(key) / KNOT;

export const rows: readonly Check[] = [
  {
    id: 'S1',
    cell: 'power',
    what: 'hull speed',
    input: '12, 16 and 25 ft on the waterline',
    expected: [4.642, 5.36, 6.7],
    unit: 'kn',
    tolerance: 0.001,
    source: '1.34 times the root of the length in feet: no source',
    known: 'common practice',
    obtain: () => ['12 ft', '16 ft', '25 ft'].map((waterLong) => knots({ waterLong }, 'hullSpeed')),
  },
  {
    id: 'S2',
    cell: 'power',
    what: 'Froude number by length',
    input: '5 kn, 4.5 m',
    expected: [0.3872],
    unit: '',
    tolerance: 1e-4,
    source: 'W. Froude: V over the root of g L',
    known: 'closed form',
    obtain: () => {
      // The power that drives so long a boat of a tonne at 5 knots, by the displacement formula.
      const pushed = (5 / (10.665 * Math.sqrt(4.5 / 0.3048))) ** 3 * (1000 / 0.453_592_37);
      const entries = { waterLong: '4.5 m', laden: '1 t', motorPower: `${pushed} hp` };
      return [tryCell(power, entries).number('froudeLength')];
    },
  },
  {
    id: 'S3',
    cell: 'power',
    what: 'Froude number by volume',
    input: '20 kn, 0.6 m³',
    expected: [3.5775],
    unit: '',
    tolerance: 1e-3,
    source: 'V over the root of g times the cube root of the volume',
    known: 'closed form',
    obtain: () => {
      const entries = { laden: '600 kg', motorPower: `${(20 / 150) ** 2 * (600 / 0.453_592_37)} hp` };
      return [tryCell(power, entries).number('froude')];
    },
  },
  {
    id: 'S4',
    cell: 'power',
    what: 'planing speed: average runabout; fast runabout',
    input: '1200 lb, 25 hp, C 150; 1000 lb, 40 hp, C 190',
    expected: [21.65, 38],
    unit: 'kn',
    tolerance: 0.01,
    source: `${GERR}, Crouch’s formula: C over the root of pounds a horsepower`,
    known: 'from memory',
    obtain: () => [
      knots({ laden: '1200 lb', motorPower: '25 hp' }, 'planingLeast'),
      knots({ laden: '1000 lb', motorPower: '40 hp' }, 'planingMost'),
    ],
  },
  {
    id: 'S5',
    cell: 'power',
    what: 'speed over root length pushing water, and power for 1.34',
    input: '1500 lb, 5 hp, 16 ft',
    expected: [1.5931, 2.98],
    unit: 'kn/√ft, hp',
    tolerance: 0.006,
    source: `${GERR}: 10.665 over the cube root of pounds a horsepower`,
    known: 'from memory',
    obtain: () => [
      knots({ laden: '1500 lb', motorPower: '5 hp', waterLong: '16 ft' }, 'pushing') / 4,
      tryCell(power, { laden: '1500 lb' }).number('enough') / HP,
    ],
  },
  {
    id: 'S9',
    cell: 'power',
    what: 'transom that a 20 hp motor of short shaft is made for',
    input: 'transom of about 15 in, plumb',
    expected: [15],
    unit: 'in',
    tolerance: 1e-6,
    source: 'height classes of motor makers’ guides: no source',
    known: 'common practice',
    obtain: () => [tryCell(power, { transom: '14.5 in' }).number('shaft') / 0.0254],
  },
];
