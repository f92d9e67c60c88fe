/** The jig, square, frame and stem as they are taped, and the transom's motor: closed forms and the custom of the trade. */
import { starter } from '../../src/boat';
import { settingUp } from '../../src/cells/frames/setting-up';
import { squareCheck } from '../../src/cells/frames/square-check';
import { stemCheck } from '../../src/cells/frames/stem-check';
import { strongback } from '../../src/cells/frames/strongback';
import { transomCut } from '../../src/cells/frames/transom-cut';
import { plainShown } from '../../src/measure';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const millimetres = (metres: number) => metres * 1000;
const inches = (metres: number) => metres / 0.0254;
const PYTHAGORAS = 'Pythagoras';
const RACKED = 'sin φ = (d1² − d2²) / (4ab) for a rectangle a × b racked by φ';

const sheet = { first: '2400 mm', second: '2400 mm', apart: '1200 mm' };
const taped = { diagonalAC: '2690 mm', diagonalBD: '2676 mm' };
const onJig = (key: string) =>
  millimetres(tryCell(strongback, { levelLine: '1200 mm' }, starter('ferry-dory')!).number(key));

export const rows: readonly Check[] = [
  {
    id: 'PW4',
    cell: 'squareCheck',
    what: 'out of square of a sheet of plywood whose diagonals differ by what the standard allows',
    input: '2440 by 1220 mm, diagonals 1/8 in apart',
    expected: [0.0834],
    unit: 'deg',
    tolerance: 0.0005,
    source: `${RACKED}; the diagonals by PS 1, squareness of 1/64 in per foot of the longer edge`,
    known: 'closed form',
    obtain: () => {
      const mean = Math.hypot(2440, 1220);
      const off = 25.4 / 16;
      const sheet = { first: '2440 mm', second: '2440 mm', apart: '1220 mm' };
      const diagonals = { diagonalAC: `${mean + off} mm`, diagonalBD: `${mean - off} mm` };
      return [(tryCell(squareCheck, { ...sheet, ...diagonals }).number('outOfSquare') * 180) / Math.PI];
    },
  },
  {
    id: 'L9',
    cell: 'squareCheck',
    what: 'diagonal of a rectangle',
    input: '2400 × 1200 mm',
    expected: [2683.28],
    unit: 'mm',
    tolerance: 0.01,
    source: PYTHAGORAS,
    known: 'closed form',
    obtain: () => [millimetres(tryCell(squareCheck, sheet).number('trueDiagonal'))],
  },
  {
    id: 'L10',
    cell: 'squareCheck',
    what: 'out of square by two diagonals',
    input: '2400 × 1200 mm, diagonals 2690 and 2676 mm',
    expected: [0.3736],
    unit: 'deg',
    tolerance: 0.0005,
    source: RACKED,
    known: 'closed form',
    obtain: () => [(tryCell(squareCheck, { ...sheet, ...taped }).number('outOfSquare') * 180) / Math.PI],
  },
  {
    id: 'L19',
    cell: 'squareCheck',
    what: 'the same as a slide of the shorter side, over the longer',
    input: '2400 × 1200 mm, diagonals 2690 and 2676 mm',
    expected: [15.65],
    unit: 'mm',
    tolerance: 0.01,
    source: RACKED,
    known: 'closed form',
    obtain: () => [
      millimetres(
        tryCell(squareCheck, { first: '1200 mm', second: '1200 mm', apart: '2400 mm', ...taped }).number(
          'slide',
        ),
      ),
    ],
  },
  {
    id: 'L20',
    cell: 'squareCheck',
    what: 'square by 6, 8 and 10',
    input: 'sides of 8 ft, 6 ft apart',
    expected: [120],
    unit: 'in',
    tolerance: 1e-9,
    source: '3-4-5 and its multiples, Pythagoras',
    known: 'closed form',
    obtain: () => [
      inches(tryCell(squareCheck, { first: '8 ft', second: '8 ft', apart: '6 ft' }).number('trueDiagonal')),
    ],
  },
  {
    id: 'L21',
    cell: 'settingUp',
    what: 'swing of a frame from two lengths to one nail: port side forward, middle forward',
    input: 'half-breadth 800 mm, nail 600 mm ahead and 100 mm under the marks, lengths √1.01 m both',
    expected: [0, 0],
    unit: 'mm',
    tolerance: 1e-6,
    source: '600² + 800² = 1000², and 100 mm of height',
    known: 'closed form',
    obtain: () => {
      const tried = tryCell(settingUp, {
        out: '800 mm',
        ahead: '600 mm',
        height: '100 mm',
        portHeight: '100 mm',
        starboardHeight: '100 mm',
        portLength: 'sqrt((1 m)^2 + (100 mm)^2)',
        starboardLength: 'sqrt((1 m)^2 + (100 mm)^2)',
      });
      return [millimetres(tried.number('portAhead')), millimetres(tried.number('centreAhead'))];
    },
  },
  {
    id: 'L22',
    cell: 'settingUp',
    what: 'swing of a frame from two lengths to one nail: port side forward, middle forward',
    input: 'half-breadth 500 mm, nail 2000 mm ahead, marks 500 mm up, turned by the angle of sine 1/50',
    expected: [10, 0],
    unit: 'mm',
    tolerance: 1e-6,
    source: 'a² = D² + b² + h² − 2Db sin φ to port, + to starboard: 4.46 and 4.54 m²',
    known: 'closed form',
    obtain: () => {
      const tried = tryCell(settingUp, {
        out: '500 mm',
        ahead: '2 m',
        height: '500 mm',
        portHeight: '500 mm',
        starboardHeight: '500 mm',
        portLength: 'sqrt(4.46 m^2)',
        starboardLength: 'sqrt(4.54 m^2)',
      });
      return [millimetres(tried.number('portAhead')), millimetres(tried.number('centreAhead'))];
    },
  },
  {
    id: 'L23',
    cell: 'stemCheck',
    what: 'stem off the centreline, and forward of the corners',
    input: 'corners 500 mm out; stem 4000 mm ahead and 100 mm to port: lengths √16.16 and √16.36 m',
    expected: [100, 4000],
    unit: 'mm',
    tolerance: 1e-6,
    source: 'offset = (c² − a²) / (4b): 0.2 / 2',
    known: 'closed form',
    obtain: () => {
      const tried = tryCell(stemCheck, {
        cornerOut: '500 mm',
        ahead: '4 m',
        rise: '0 mm',
        portLength: 'sqrt(16.16 m^2)',
        starboardLength: 'sqrt(16.36 m^2)',
      });
      return [millimetres(tried.number('off')), millimetres(tried.number('found'))];
    },
  },
  {
    id: 'L24',
    cell: 'stemCheck',
    what: 'lengths from the transom’s corners to the stem that are accepted as true differ by at most',
    input: 'no entry typed, in feet and inches',
    expected: [0.125],
    unit: 'in',
    tolerance: 1e-9,
    source: 'common practice, no source',
    known: 'common practice',
    obtain: () => [
      inches(
        tryCell(stemCheck, {}, starter('ferry-dory')!, { ...plainShown, length: 'feet' }).number('accepted'),
      ),
    ],
  },
  {
    id: 'L25',
    cell: 'strongback',
    what: 'upside down, the bottom of a frame above the jig’s top',
    input: 'ferry dory, level line 1200 mm above the base; frame 2: bottom at 83 mm, 9 mm thick',
    expected: [1108],
    unit: 'mm',
    tolerance: 0.05,
    source: 'set-up height = height of the level line − height above the base, from the offsets',
    known: 'closed form',
    obtain: () => [onJig('frame2.footAboveJig')],
  },
  {
    id: 'L26',
    cell: 'strongback',
    what: 'running distance from frame 1 to frames 2, 3, 4 and 5',
    input: 'ferry dory, stations at 800, 1600, 2400, 3200 and 4000 mm',
    expected: [800, 1600, 2400, 3200],
    unit: 'mm',
    tolerance: 1e-6,
    source: 'the table of offsets',
    known: 'closed form',
    obtain: () => [2, 3, 4, 5].map((frame) => onJig(`frame${frame}.running`) - onJig('frame1.running')),
  },
  {
    id: 'T8',
    cell: 'transomCut',
    what: 'long shaft with its plate 1 in above the bottom, up the slope',
    input: '20 in and 1 in plumb, rake 13°',
    expected: [21.55],
    unit: 'in',
    tolerance: 0.01,
    source: 'cosine of the rake',
    known: 'closed form',
    obtain: () => [
      inches(tryCell(transomCut, { shaft: 'long', plateAbove: '1 in', rake: '13 deg' }).number('alongFace')),
    ],
  },
  {
    id: 'T9',
    cell: 'transomCut',
    what: 'wedge under a bracket: angle, thick end',
    input: 'transom raked 20°, bracket made for 13° and 200 mm high',
    expected: [7, 24.56],
    unit: 'deg, mm',
    tolerance: 0.01,
    source: 'height × tangent of the angle',
    known: 'closed form',
    obtain: () => {
      const tried = tryCell(transomCut, { rake: '20 deg', motorRake: '13 deg', bracketHeight: '200 mm' });
      return [(tried.number('motorTilt') * 180) / Math.PI, millimetres(tried.number('wedge'))];
    },
  },
  {
    id: 'T10',
    cell: 'transomCut',
    what: 'height classes of outboard shafts, plumb',
    input: 'short, long, extra long, longest',
    expected: [15, 20, 25, 30],
    unit: 'in',
    tolerance: 1e-9,
    source: 'motor makers’ guides; common practice, no source',
    known: 'common practice',
    obtain: () =>
      ['short', 'long', 'extraLong', 'longest'].map((shaft) =>
        inches(tryCell(transomCut, { shaft }).number('cutHeight')),
      ),
  },
];
