/** Butts, and the plywood they join, against handbooks, tables of the trade and closed forms. */
import { demoBoat } from '../../src/boat';
import { butt } from '../../src/cells/timber/joints/butt';
import { joints } from '../../src/cells/timber/joints/joints';
import { scarf } from '../../src/cells/timber/joints/scarf';
import { isIssue, plainShown, read } from '../../src/measure';
import { type Grain, leastBendRadius } from '../../src/trade/plywood-bend';
import { deriveBoat } from '../boat/derive';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const MM = 1e-3;
const INCH = 0.0254;
const FOOT = 0.3048;
const MPA = 1e6;

const FORM = 'APA concrete-form panel table, non-overlaid Douglas-fir';
const PLATES = 'APA, Plywood Design Specification, plywood splice plates';

const ofButt = (key: string, unit: number, entries: Readonly<Record<string, string>>) => () => [
  tryCell(butt, entries).number(key) / unit,
];

/** Least radius over thickness of a panel, by the two grains. */
const radii = (
  table: (thickness: number, grain: Grain) => { readonly radius: number },
  thickness: number,
  unit: number,
  grains: readonly Grain[] = ['across', 'along'],
) => grains.map((grain) => table(thickness, grain).radius / unit);

/** Mass of one square metre of a panel as the boat weighs it, both sides of the boat. */
function massPerArea(written: Readonly<Record<string, string>>): number {
  const boat = deriveBoat(demoBoat, written);
  return boat.number('side.mass') / (2 * boat.number('side.area'));
}

/** An entry of a mass, read as the page reads it. */
function massRead(text: string): number {
  const reading = read(text, { kind: 'mass', shown: plainShown, field: 'mass' });
  const value = isIssue(reading) ? reading : reading.evaluate(() => Number.NaN);
  return isIssue(value) ? Number.NaN : value;
}

/** Boards of 8 ft in 3/4 in at 1 in 8, as they come, on the clamp of the ferry dory. */
const eightFoot = {
  part: 'sheerClamp',
  portFirst: '8 ft',
  thickness: '3/4 in',
  slope: '8',
  boardLength: '8 ft',
  trim: '0 mm',
};

export const rows: readonly Check[] = [
  {
    id: 'W38',
    cell: 'butt',
    what: 'plywood plate across a butt by the rule, 12 thicknesses to each side',
    input: '9 mm panel',
    expected: [216],
    unit: 'mm',
    tolerance: 1e-6,
    source: `${PLATES}: its lengths as a rule`,
    known: 'from memory',
    obtain: ofButt('byRule', MM, { thickness: '9 mm' }),
  },
  {
    id: 'W38a',
    cell: 'butt',
    what: 'plywood plate across a butt, full strength, sanded panels',
    input: '1/4 in; 5/16; 3/8; 1/2; 5/8; 3/4',
    expected: [6, 8, 10, 14, 16, 16],
    unit: 'in',
    tolerance: 1e-6,
    source: PLATES,
    known: 'from memory',
    obtain: () =>
      ['1/4', '5/16', '3/8', '1/2', '5/8', '3/4'].map(
        (inches) => tryCell(butt, { thickness: `${inches} in` }).number('printedLength') / INCH,
      ),
  },
  {
    id: 'W38b',
    cell: 'butt',
    what: 'strength of a butt in end grain with nothing behind it',
    input: 'glued end to end',
    expected: [0.25],
    unit: '',
    tolerance: 0,
    source: 'Wood Handbook, USDA FPL-GTR-190 (2010), ch. 10: about 25 % of tension strength',
    known: 'published',
    obtain: ofButt('strengthKept', 1, { kind: 'bare' }),
  },
  {
    id: 'W39',
    cell: 'butt',
    what: 'thickness of one ply of glass, cured',
    input: '300 g/m², 50 % and 30 % glass by weight, glass 2560 kg/m³',
    // 0.3 / 3.072 x (2.56 / 0.5 - 1.36), and the same with 0.3
    expected: [0.367, 0.701],
    unit: 'mm',
    tolerance: 0.001,
    source: 'ISO 12215-5, Annex C: thickness in mm = (w / 3.072) (2.56 / share - 1.36), w in kg/m²',
    known: 'from memory',
    obtain: () =>
      ['50 %', '30 %'].map(
        (glassShare) =>
          tryCell(butt, { kind: 'strap', fabric: '300 g/m²', glassShare, glassDensity: '2560 kg/m³' }).number(
            'plyThickness',
          ) / MM,
      ),
  },
  {
    id: 'W40',
    cell: 'butt',
    what: 'plies of glass on each face that part where the panel parts: exactly; laid',
    input: '6 mm panel of 30 MPa, glass of 150 MPa, 300 g/m², 50 % glass by weight',
    expected: [1.63, 2],
    unit: 'plies',
    tolerance: 0.01,
    source: 'statics, σ t/(2 t σ) over both faces',
    known: 'closed form',
    obtain: () => {
      const tried = tryCell(butt, { kind: 'strap', thickness: '6 mm' });
      return [tried.number('pliesExact'), tried.number('plies')];
    },
  },
  {
    id: 'W44',
    cell: 'trade',
    what: 'mass of a sheet of okoume plywood, from the mass of a boat’s sides',
    input: '6 mm, 2440 × 1220 mm',
    expected: [8.04],
    unit: 'kg',
    tolerance: 0.01,
    source: 'a plywood trade sheet: 450 kg/m³, 6 mm weighs 2.7 kg/m²',
    known: 'published',
    obtain: () => [
      massPerArea({ 'side.thickness': '6 mm', 'side.plywood': 'okoume' }) * 2.44 * 1.22, // m2 of the sheet
    ],
  },
  {
    id: 'W45',
    cell: 'measure',
    what: 'mass of a sheet of softwood plywood, 1/4 in, typed as area times mass per area',
    input: '32 ft² of 0.8 lb/ft²',
    expected: [11.61],
    unit: 'kg',
    tolerance: 0.01,
    source: 'APA mass of 1/4 in panels, 0.8 psf',
    known: 'from memory',
    obtain: () => [massRead('32 ft² * 0.8 lb/ft²')],
  },
  {
    id: 'W46',
    cell: 'trade',
    what: 'least radius of plywood bent dry, across its face grain; along it',
    input: '3/8 in',
    expected: [0.914, 2.438],
    unit: 'm',
    tolerance: 0.002,
    source: FORM,
    known: 'published',
    obtain: () => radii(leastBendRadius, 0.375 * INCH, 1),
  },
  {
    id: 'W47',
    cell: 'trade',
    what: 'the same over the thickness',
    input: '3/4 in',
    expected: [192, 320],
    unit: '',
    tolerance: 1e-9,
    source: FORM,
    known: 'published',
    obtain: () => radii(leastBendRadius, 0.75 * INCH, 0.75 * INCH),
  },
  {
    id: 'W87',
    cell: 'butt',
    what: 'reach of a butt plate to each side, by rolling shear of the glue line',
    input: 'pull 10 MPa, 9 mm panel, rolling shear 0.6 MPa',
    expected: [150],
    unit: 'mm',
    tolerance: 1e-6,
    source: 'statics, σ t/τ',
    known: 'closed form',
    obtain: ofButt('bondHalf', MM, { thickness: '9 mm', pull: '10 MPa', rollingShear: '0.6 MPa' }),
  },
  {
    id: 'W87a',
    cell: 'butt',
    what: 'pull that a plate of twelve thicknesses a side carries, by rolling shear',
    input: '12 × 0.6 MPa, whatever the panel',
    expected: [7.2],
    unit: 'MPa',
    tolerance: 1e-9,
    source: 'statics, τ a/t',
    known: 'closed form',
    obtain: ofButt('bondHolds', MPA, {
      kind: 'block',
      thickness: '9 mm',
      plateLength: '216 mm',
      rollingShear: '0.6 MPa',
    }),
  },
  {
    id: 'S03',
    cell: 'joints',
    what: 'middles of the scarfs in boards laid as they come, from the after end',
    input: '8 ft boards of 3/4 in at 1 in 8: each but the first adds 7 ft 6 in',
    expected: [7.75, 15.25],
    unit: 'ft',
    tolerance: 1e-6,
    source: 'geometry: the end of the board less half the taper',
    known: 'closed form',
    obtain: () => {
      const tried = tryCell(joints, eightFoot);
      return ['port1.at', 'port2.at'].map((key) => tried.number(key) / FOOT);
    },
  },
  {
    id: 'S04',
    cell: 'joints',
    what: 'distance between joints of a pair of timbers, by the rule: thin; thick',
    input: '600 mm or 24 thicknesses; 19 mm; 50 mm',
    expected: [600, 1200],
    unit: 'mm',
    tolerance: 1e-6,
    source: 'common practice, no source',
    known: 'common practice',
    obtain: () =>
      ['19 mm', '50 mm'].map(
        (thickness) => tryCell(joints, { 'sheerClamp.thickness': thickness }).number('stagger') / MM,
      ),
  },
  {
    id: 'S05',
    cell: 'scarf',
    what: 'strength kept by a very flat scarf',
    input: '1 in 20',
    expected: [0.95],
    unit: '',
    tolerance: 1e-9,
    source: 'R. Birmingham, Boat Building Techniques, as quoted',
    known: 'from memory',
    obtain: () => [tryCell(scarf, { slope: '20' }).number('strengthKept')],
  },
];
