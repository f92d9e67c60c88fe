/** Beads of paste from cartridges, what a bead closes to, and the weight of a line of glue. */
import { glue } from '../../src/cells/timber/gluing/glue';
import { FOOT } from '../../src/measure/si';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const paste = { glue: 'polyurethane', joint: 'rubRails' };
const of = (key: string, entries: Record<string, string>) =>
  tryCell(glue, { ...paste, ...entries }).number(key);

const bead = (
  id: string,
  pack: string,
  thick: string,
  expected: number,
  [unit, per]: readonly [string, number],
  tolerance: number,
): Check => ({
  id,
  cell: 'glue',
  what: 'bead from one cartridge, nothing lost',
  input: `${pack}, round bead of ${thick}`,
  expected: [expected],
  unit,
  tolerance,
  source: 'length of a cylinder, V / (π d² / 4)',
  known: 'closed form',
  obtain: () => [of('fromPack', { pack, bead: thick }) / per],
});

export const rows: readonly Check[] = [
  bead('C47', '10 fl oz', '1/4 in', 30.64, ['ft', FOOT], 0.01),
  bead('C48', '28 fl oz', '3/8 in', 38.13, ['ft', FOOT], 0.01),
  bead('C49', '310 mL', '6 mm', 10.964, ['m', 1], 0.005),
  {
    id: 'C50',
    cell: 'glue',
    what: 'what a bead closes to',
    input: 'one bead of 6 mm, squeezed to 19 mm wide',
    expected: [1.488],
    unit: 'mm',
    tolerance: 0.005,
    source: 'section of the bead over the width, π d² / (4 b)',
    known: 'closed form',
    obtain: () => [of('filmLaid', { bead: '6 mm', beads: '1', width: '19 mm', length: '1 m' }) * 1000],
  },
  {
    id: 'C51',
    cell: 'glue',
    what: 'weight of a line of glue',
    input: '1 m² of 0.25 mm at 1.15 g/mL',
    expected: [287.5],
    unit: 'g',
    tolerance: 0.1,
    source: 'thickness times density',
    known: 'closed form',
    obtain: () => [
      of('glueMass', {
        film: '0.25 mm',
        length: '1 m',
        width: '1 m',
        density: '1150 kg/m^3',
        waste: '0 %',
      }) * 1000,
    ],
  },
];
