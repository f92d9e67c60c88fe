/** Afloat: what she weighs and where, and how she floats, against the world outside. */
import { weights } from '../../src/cells/afloat/weights';
import { type Tried, tryCell } from '../cells/try-cell';
import type { Check } from './check';

/** The dory of nothing but a keelson of so many kilograms. */
const noWood = Object.fromEntries(
  ['bottom', 'side', 'transom', 'stem', 'log', 'clamp', 'rail', 'frame', 'gusset', 'thwart'].map((part) => [
    `${part}Mass`,
    '0 kg',
  ]),
);
const bare = {
  ...noWood,
  people: '0',
  gearAMass: '0 kg',
  gearBMass: '0 kg',
  gearCMass: '0 kg',
  sheathing: '0 kg',
  glueLines: '0 L',
  filletPaste: '0 L',
  fillerPaste: '0 L',
  screwsIn: '0',
  painted: '0 m^2',
  moisture: '12 %',
};
const numbers = (tried: Tried, ...keys: readonly string[]) => keys.map((key) => tried.number(key));

export const rows: readonly Check[] = [
  {
    id: 'A1',
    cell: 'weights',
    what: 'mass of three things and where their centre lies',
    input: '60 kg at 2.0 m, 25 kg at 4.4 m, 150 kg at 2.3 m',
    expected: [235, 2.4468],
    unit: 'kg, m',
    tolerance: 0.0001,
    source: 'Σ m x / Σ m = (120 + 110 + 345) / 235, by hand',
    known: 'closed form',
    obtain: () =>
      numbers(
        tryCell(weights, {
          ...bare,
          keelsonMass: '0.1 g',
          gearAMass: '60 kg',
          gearAForward: '2 m',
          gearBMass: '25 kg',
          gearBForward: '4.4 m',
          people: '2',
          person: '75 kg',
          peopleForward: '2.3 m',
        }),
        'loaded',
        'centreForward',
      ),
  },
  {
    id: 'A2',
    cell: 'weights',
    what: 'mass of a hull on two supports, and where its centre lies',
    input: '68 kg at 0.8 m, 52 kg at 3.8 m',
    expected: [120, 2.1],
    unit: 'kg, m',
    tolerance: 1e-9,
    source:
      'reactions of a body on two supports: 120 kg at 2.1 m gives 120 (3.8 - 2.1) / 3 and 120 (2.1 - 0.8) / 3',
    known: 'closed form',
    obtain: () =>
      numbers(
        tryCell(weights, {
          ...bare,
          weighed: 'scales',
          aftReads: '68 kg',
          foreReads: '52 kg',
          aftAt: '0.8 m',
          foreAt: '3.8 m',
        }),
        'hull',
        'hullForward',
      ),
  },
  {
    id: 'A3',
    cell: 'weights',
    what: 'what an end weighs that a lever holds',
    input: '25.714 kg on the scale, arms of 1.75 m and 0.25 m',
    expected: [180],
    unit: 'kg',
    tolerance: 0.01,
    source: 'the law of the lever, Archimedes: F = W a / b',
    known: 'closed form',
    obtain: () =>
      numbers(
        tryCell(weights, { ...bare, weighed: 'lever', leverage: '1.75 / 0.25', aftReads: '25.714 kg' }),
        'onAft',
      ),
  },
  {
    id: 'A4',
    cell: 'weights',
    what: 'weight of wood at 19 % moisture over that at 12 %',
    input:
      'specific gravity 0.5 oven-dry, on the volume at 12 %: 62.4 × 0.5 / (1 + 0.009 × 0.5 × 12) × (1 + M / 100)',
    expected: [33.1537, 35.2258],
    unit: 'lb/ft³',
    tolerance: 0.01,
    source: 'National Design Specification for Wood Construction, Supplement: density at a moisture',
    known: 'from memory',
    obtain: () =>
      ['12 %', '19 %'].map(
        (moisture) =>
          // Of a cubic foot of it, cut at 12 %.
          tryCell(weights, { ...bare, keelsonMass: '33.1537 lb', moisture }).number('wood') / 0.453_592_37,
      ),
  },
];
