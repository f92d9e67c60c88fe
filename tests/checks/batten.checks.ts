/** The batten: forces of its ducks and the stretch of its face, against closed forms. */
import { batten } from '../../src/cells/shape/batten';
import { onThreeSupports, round } from '../cells/shape/sheer-boats';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const RECORD =
  'S. J. Record, The Mechanical Properties of Wood, 1914, stiffness of beams: P = 4 E b h³ D / l³';
const onSupports = (thickness: string) =>
  tryCell(batten, { view: 'profile', thickness, modulus: '10.8 GPa' }, onThreeSupports);

export const rows: readonly Check[] = [
  {
    id: 'L27',
    cell: 'batten',
    what: 'ducks of a batten on three supports, the middle one 10 mm high: P there, half of it back at each end',
    input: 'b = h = 19 mm, E = 10.8 GPa, l = 4 m, D = 10 mm',
    expected: [-0.43983, 0.87967, -0.43983],
    unit: 'N',
    // Slopes of 1/200 leave some hundred-thousandths between chord and base.
    tolerance: 0.0001,
    source: `${RECORD}; reactions of half the load`,
    known: 'published',
    obtain: () => {
      const tried = onSupports('19 mm');
      return ['transom', 'frame1', 'bow'].map((station) => tried.number(`${station}.duck`));
    },
  },
  {
    id: 'L28',
    cell: 'batten',
    what: 'how many times harder the ducks hold a batten three times as thick',
    input: 'h = 57 mm over 19 mm',
    expected: [27],
    unit: '',
    tolerance: 1e-9,
    source: RECORD,
    known: 'published',
    obtain: () => [onSupports('57 mm').number('greatest') / onSupports('19 mm').number('greatest')],
  },
  {
    id: 'L29',
    cell: 'batten',
    what: 'stretch of the outer face on a circle, t / 2R, amidships of 21 stations',
    input: 't = 19 mm, R = 8 m',
    expected: [0.0011875],
    unit: '',
    tolerance: 1.2e-6,
    source: 'geometry of a bent bar, plane sections staying plane',
    known: 'closed form',
    obtain: () => {
      const tried = tryCell(batten, {}, round);
      return [(tried.number('frame10.shareHere') * tried.number('rupture')) / tried.number('modulus')];
    },
  },
  {
    id: 'L30',
    cell: 'batten',
    what: 'tightest radius over the circle’s own, at the second duck of a batten whose ends run on free',
    input: '21 points on a circle of 8 m, 300 mm apart along the base',
    expected: [0.7887],
    unit: '',
    // At the ends the points stand some 7 % wider along the circle than amidships.
    tolerance: 0.004,
    source:
      '1 / (3 − √3): parts from the circle’s bend by d with d(i−1) + 4 d(i) + d(i+1) = 0, d = −1 at the end',
    known: 'closed form',
    obtain: () => [tryCell(batten, {}, round).number('radius') / 8],
  },
];
