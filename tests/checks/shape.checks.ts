/** Shape: what the cell that judges a line gives, against closed forms. Battens and differences themselves: geometry.checks.ts. */
import { starter } from '../../src/boat';
import { fair } from '../../src/cells/shape/fair';
import { boatWithSheer } from '../cells/shape/sheer-boats';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

function misread() {
  const table = starter('ferry-dory-misread');
  if (!table) throw new Error('the misread dory is gone');
  return tryCell(fair, {}, table);
}

/** A sheer that is one cubic in plan, but for its sixth half-breadth, which is `out` by so many mm. */
const cubicSheer = (out: number) =>
  boatWithSheer(
    Array.from({ length: 11 }, (_, i) => {
      const u = (i - 5) / 5;
      return [400 * i, 1000 - 300 * u ** 2 + 40 * u ** 3 + (i === 5 ? out : 0), 500 + 150 * u ** 2] as const;
    }),
  );

export const rows: readonly Check[] = [
  {
    id: 'L13',
    cell: 'fair',
    what: 'third differences over even steps, one number out by e = −50 mm: what e adds to them, +e, −3e, +3e, −e',
    input: 'sheer of the ferry dory in plan, frame 3 moved by −50 mm on trial',
    // Steps between frames are 800 mm, the mean step is 893.3: (893.3/800)^3 = 1.3924 times. The ends are raked.
    expected: [-3 * -50 * 1.3924, 3 * -50 * 1.3924],
    unit: 'mm',
    tolerance: 0.01 * 150,
    source: 'binomial signs of a single error in third differences; frames 1 to 4 and 2 to 5 stand evenly',
    known: 'closed form',
    obtain: () => {
      const runOf = (shift: string) => tryCell(fair, { shift, tried: 'frame3' }).chart!.lines[0]!.points;
      const [still, moved] = [runOf('0 mm'), runOf('-50 mm')];
      return [1, 2].map((j) => 1000 * (moved[j]![1] - still[j]![1]));
    },
  },
  {
    id: 'L14',
    cell: 'fair',
    what: 'thickness of wedge for each millimetre of half-breadth',
    input: 'frame side 258 mm out over 548 mm up',
    expected: [0.9047],
    unit: '',
    tolerance: 0.0001,
    source: 'cosine of the flare, 548 / √(258² + 548²)',
    known: 'closed form',
    obtain: () => {
      const tried = misread();
      return [tried.number('wedge') / tried.number('correction')];
    },
  },
  {
    id: 'L15',
    cell: 'fair',
    what: 'a half-breadth read 50 mm short, found',
    input: 'sheer of the misread dory, frame 2: 801 for 851 mm',
    expected: [50],
    unit: 'mm',
    tolerance: 8,
    source: 'the number before it was spoilt; 8 mm is the plan’s own shape',
    known: 'closed form',
    rough: { noticed: 0.25, finer: 'L15a' },
    obtain: () => [1000 * misread().number('correction')],
  },
  {
    id: 'L15a',
    cell: 'fair',
    what: 'a half-breadth read 50 mm short and one read 30 mm wide on a line that is one cubic, found',
    input: 'eleven stations 400 mm apart, the sixth out',
    expected: [50, -30],
    unit: 'mm',
    tolerance: 0.001,
    source: 'a cubic has no run of third differences but a single error’s own',
    known: 'closed form',
    obtain: () => [-50, 30].map((out) => 1000 * tryCell(fair, {}, cubicSheer(out)).number('correction')),
  },
];
