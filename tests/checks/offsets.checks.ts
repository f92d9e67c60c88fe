/** The table of offsets: what it makes of hulls whose form is known, and numbers in the plan's own notation. */
import { offsets } from '../../src/cells/shape/offsets';
import { box, veePrism } from '../boat/shapes';
import { tableThrough } from '../cells/shape/table-through';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const DEGREE = Math.PI / 180;

export const rows: readonly Check[] = [
  {
    id: 'L31',
    cell: 'offsets',
    what: 'length, breadth, depth and floor diagonal of a box',
    input: 'box 3 m long, 1 m broad, 0.4 m deep, a transom at both ends',
    // From the port corner aft to the starboard corner forward, in plan.
    expected: [3000, 1000, 400, 3162.278],
    unit: 'mm',
    tolerance: 0.001,
    source: 'Pythagoras in plan: √(3² + 1²)',
    known: 'closed form',
    obtain: () => {
      const tried = tryCell(offsets, {}, tableThrough(box(3, 1, 0.4)));
      return ['length', 'beam', 'depth', 'diagonal'].map((key) => 1000 * tried.number(key));
    },
  },
  {
    id: 'L32',
    cell: 'offsets',
    what: 'deadrise and flare of a vee-bottomed prism',
    input: 'keel (0, 0), chine (600, 160), sheer (800, 600) mm',
    expected: [14.9314, 24.444],
    unit: 'deg',
    tolerance: 0.001,
    source: 'atan(160/600) from level; atan(200/440) from plumb',
    known: 'closed form',
    obtain: () => {
      const vee = veePrism(4, 0.6, Math.atan2(0.16, 0.6), 0.44, Math.atan2(0.2, 0.44));
      const tried = tryCell(offsets, { station: 'frame2' }, tableThrough(vee));
      return ['deadrise', 'flare'].map((key) => tried.number(key) / DEGREE);
    },
  },
  {
    id: 'L33',
    cell: 'offsets',
    what: 'a half-breadth in feet, inches and eighths, and one a sixteenth more',
    input: '2-9-4 and 2-9-4+',
    expected: [850.9, 852.4875],
    unit: 'mm',
    tolerance: 0.0001,
    source: 'a foot of 304.8, an inch of 25.4 mm; + is a sixteenth: the usual notation of tables of offsets',
    known: 'common practice',
    obtain: () =>
      ['2-9-4', '2-9-4+'].map(
        (typed) =>
          1000 *
          tryCell(offsets, {
            station: 'frame2',
            edge: 'sheer',
            'frame2.sheer.halfBreadth': typed,
          }).number('halfBreadth'),
      ),
  },
];
