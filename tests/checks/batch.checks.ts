/** Batches: pot life by warmth and by energy, how thick resin is, the cap and the pace that set a batch. */
import { batch } from '../../src/cells/finish/batch';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const of = (key: string, entries: Record<string, string>) => tryCell(batch, entries).number(key);

const DOUBLING = "epoxy makers' sheets: doubled for each 10 °C colder, halved for each 10 °C warmer";
const KIT = "an aircraft-kit maker's manual: 10 °C warmer halves the working time";
const life = (
  id: string,
  label: string,
  at: string,
  air: string,
  expected: number,
  source: string,
): Check => ({
  id,
  cell: 'batch',
  what: 'pot life in another warmth',
  input: `${label} at ${at}, in ${air}`,
  expected: [expected],
  unit: 'min',
  tolerance: 0.05,
  source,
  known: 'published',
  obtain: () => [of('potLife', { labelLife: label, labelAt: at, air }) / 60],
});

const arrhenius = (id: string, energy: string, expected: number): Check => ({
  id,
  cell: 'batch',
  what: 'pot life at 15 °C against 25 °C, by the energy of the reaction',
  input: `${energy} kJ/mol`,
  expected: [expected],
  unit: '',
  tolerance: 0.001,
  source:
    'Arrhenius, R = 8.314463 J/(mol·K); energies of Thermochimica Acta 447 (2006) 167–177, read in its abstract',
  known: 'published',
  obtain: () => [of('byEnergy', { energy, labelLife: '20 min', labelAt: '25 °C', air: '15 °C' }) / 1200],
});

export const rows: readonly Check[] = [
  arrhenius('C30', '55', 2.1597),
  arrhenius('C31', '60', 2.3163),
  {
    id: 'C32',
    cell: 'batch',
    what: 'energy at which pot life just doubles from 30 °C to 20 °C',
    input: '51.22 kJ/mol',
    expected: [2],
    unit: '',
    tolerance: 0.0005,
    source: 'ln 2 R / (1/T − 1/T′)',
    known: 'closed form',
    obtain: () => [
      of('byEnergy', { energy: '51.22', labelLife: '20 min', labelAt: '30 °C', air: '20 °C' }) / 1200,
    ],
  },
  {
    id: 'C34',
    cell: 'batch',
    what: 'batches, and how much goes into each',
    input: '4200 g, 450 g in a pot, six tenths of 20 min, 0.15 m² a minute, 300 g/m²',
    expected: [10, 420],
    unit: 'g',
    tolerance: 1e-6,
    source: 'the least of the pot and of what is spread in time, 540 g, by hand',
    known: 'closed form',
    obtain: () => {
      const tried = tryCell(batch, {
        work: 'wet',
        mass: '4200 g',
        most: '450 g',
        goodFor: '60 %',
        labelLife: '20 min',
        labelAt: '25 °C',
        air: '25 °C',
        pace: '400 s',
        takes: '300 g/m^2',
      });
      return [tried.number('batches'), tried.number('batch') * 1000];
    },
  },
  {
    id: 'EP1',
    cell: 'batch',
    what: 'viscosity at 30 °C against 20 °C',
    input: '20 °C; 30 °C',
    expected: [0.25],
    unit: '',
    tolerance: 1e-9,
    source: "an aircraft-kit maker's manual: 5 °C warmer nearly halves the viscosity",
    known: 'published',
    obtain: () => [of('viscosity', { air: '30 °C' }) / of('viscosity', { air: '20 °C' })],
  },
  life('EP2', '30 min', '20 °C', '30 °C', 15, KIT),
  life('EP2b', '30 min', '20 °C', '15 °C', 42.4, KIT),
  life('C28b', '20 min', '25 °C', '15 °C', 40, DOUBLING),
  life('C29b', '20 min', '25 °C', '32 °C', 12.31, DOUBLING),
];
