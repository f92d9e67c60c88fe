/** Cloth from the roll: runs that lap, strips on the bias, what a face takes. */
import { cloth } from '../../src/cells/finish/cloth';
import { tryCell } from '../cells/try-cell';
import { biasStrips } from '../../src/kernel/on-roll';
import type { Check } from './check';

/** Runs along a face, nothing turned round its edges. */
const runs = (flatWidth: string, width: string, lap: string) =>
  tryCell(cloth, {
    over: 'flat',
    flatLength: '3 m',
    flatWidth,
    width,
    lap,
    turn: '0 mm',
    trim: '0 mm',
    runs: 'along',
  });
const LAPPED = 'geometry: n runs of width w lapped by o cover n w - (n - 1) o';

export const rows: readonly Check[] = [
  {
    id: 'C54',
    cell: 'cloth',
    what: 'runs that cover a face 108 in wide from a roll of 38 in, butted',
    input: 'lap 0',
    expected: [3],
    unit: '',
    tolerance: 1e-9,
    source: 'a glass dealer’s page on how much cloth to buy: three pieces',
    known: 'published',
    obtain: () => [runs('108 in', '38 in', '0 in').number('pieces')],
  },
  {
    id: 'C54a',
    cell: 'cloth',
    what: 'the same, lapped',
    input: 'lap 2 in and 4 in',
    expected: [3, 4],
    unit: '',
    tolerance: 1e-9,
    source: LAPPED,
    known: 'closed form',
    obtain: () => ['2 in', '4 in'].map((lap) => runs('108 in', '38 in', lap).number('pieces')),
  },
  {
    id: 'C55',
    cell: 'cloth',
    what: 'runs that cover 1.60 m from a roll of 1.27 m',
    input: 'lap 60 mm',
    expected: [2],
    unit: '',
    tolerance: 1e-9,
    source: LAPPED,
    known: 'closed form',
    obtain: () => [runs('1.6 m', '1.27 m', '60 mm').number('pieces')],
  },
  {
    id: 'C55a',
    cell: 'cloth',
    what: 'width of each of those runs, laid so that their seam is midway',
    input: '(1600 + 60) / 2',
    expected: [830],
    unit: 'mm',
    tolerance: 0.01,
    source: LAPPED,
    known: 'closed form',
    obtain: () => [runs('1.6 m', '1.27 m', '60 mm').number('wide') * 1000],
  },
  {
    id: 'C56',
    cell: 'kernel',
    what: 'most strips of 0.10 m at 45° from 3.0 m of a roll of 1.27 m, and how long each is',
    input: '(3.0 - 1.27) / (0.10 √2), rounded down; 1.27 √2',
    expected: [12, 1.796],
    unit: '',
    tolerance: 0.001,
    source: 'geometry of strips across a roll, two half squares left',
    known: 'closed form',
    obtain: () => {
      const most = Array.from({ length: 99 }, (_, i) => i).findLast(
        (n) => biasStrips(1.27, 0.1, n).roll <= 3,
      );
      return [most ?? 0, biasStrips(1.27, 0.1, 1).each];
    },
  },
];
