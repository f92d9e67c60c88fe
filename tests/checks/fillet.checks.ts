/** Fillets: closed forms of the section between two planes and the tool, and of a mix by weight. */
import { fillet } from '../../src/cells/finish/fillet';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

/** One seam of a metre, nothing scraped off. */
const seam = (entries: Record<string, string>) =>
  tryCell(fillet, { length: '1 m', sides: '1', waste: '0 %', ...entries });

const KITE = 'area of the kite less that of the sector, r² (cot(θ/2) − (π − θ)/2)';

const section = (id: string, angle: number, expected: number): Check => ({
  id,
  cell: 'fillet',
  what: 'section of a fillet, in squares of its radius',
  input: `inside angle ${angle}°`,
  expected: [expected],
  unit: '',
  tolerance: 1e-6,
  source: KITE,
  known: 'closed form',
  obtain: () => [seam({ radius: '10 mm', angle: `${angle} deg` }).number('section') * 1e4],
});

export const rows: readonly Check[] = [
  section('C37', 90, 0.214602),
  section('C38', 120, 0.053751),
  section('C39', 60, 0.684853),
  section('C40', 135, 0.021514),
  {
    id: 'C41',
    cell: 'fillet',
    what: 'paste in a metre of fillet',
    input: 'radius 9.525 mm, 90°',
    expected: [19.47],
    unit: 'mL/m',
    tolerance: 0.005,
    source: KITE,
    known: 'closed form',
    obtain: () => [seam({ radius: '9.525 mm', angle: '90 deg' }).number('paste') * 1e6],
  },
  {
    id: 'C42',
    cell: 'fillet',
    what: 'paste along a seam',
    input: '20 m, radius 12 mm, 90°',
    expected: [0.6181],
    unit: 'L',
    tolerance: 0.001,
    source: KITE,
    known: 'closed form',
    obtain: () => [seam({ length: '20 m', radius: '12 mm', angle: '90 deg' }).number('paste') * 1000],
  },
  {
    id: 'C43',
    cell: 'fillet',
    what: 'throat of a fillet',
    input: 'radius 12 mm, 90°',
    expected: [4.971],
    unit: 'mm',
    tolerance: 0.005,
    source: 'centre to corner less the radius, r (1/sin(θ/2) − 1)',
    known: 'closed form',
    obtain: () => [seam({ radius: '12 mm', angle: '90 deg' }).number('throat') * 1000],
  },
  {
    id: 'C44',
    cell: 'fillet',
    what: 'gap outside, between square edges',
    input: 'panels of 6 mm, 120° inside',
    expected: [15.588],
    unit: 'mm²',
    tolerance: 0.005,
    source: 'triangle of two thicknesses and the angle between the edges, T² sin θ / 2',
    known: 'closed form',
    obtain: () => [
      seam({ angle: '120 deg', lowerThickness: '6 mm', upperThickness: '6 mm' }).number('wedge') * 1e6,
    ],
  },
  {
    id: 'C98',
    cell: 'fillet',
    what: 'density of a paste, and its volume to one of epoxy',
    input: '100 g of epoxy at 1.10 g/mL, 25 g of wood flour at 1.5 g/mL',
    expected: [1.162, 1.1833],
    unit: '',
    tolerance: 0.001,
    source: 'weights over the sum of volumes',
    known: 'closed form',
    obtain: () => {
      const mix = seam({ fillerShare: '25 %', epoxyDensity: '1.10 kg/L', fillerDensity: '1.5 kg/L' });
      return [mix.number('pasteDensity') / 1000, mix.number('pasteYield')];
    },
  },
  {
    id: 'C99',
    cell: 'fillet',
    what: 'radius for the throat that a square corner gets from 12.0711 mm',
    input: '5 mm of throat, inside angle 120°',
    expected: [32.3],
    unit: 'mm',
    tolerance: 0.05,
    source: 'throat over 1/sin(θ/2) − 1',
    known: 'closed form',
    obtain: () => [seam({ radius: '12.0711 mm', angle: '120 deg' }).number('evenRadius') * 1000],
  },
];
