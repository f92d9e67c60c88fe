/** Screws of a whole skin, counted on a box. */
import { screwCount } from '../../src/cells/timber/fastening/screw-count';
import { box } from '../boat/shapes';
import { tableThrough } from '../cells/shape/table-through';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

/** 3 m long, 1.2 m wide and 0.5 m deep, with a frame every 600 mm and a transom at each end. */
const barge = tableThrough(box(3, 1.2, 0.5, 6));

export const rows: readonly Check[] = [
  {
    id: 'W113',
    cell: 'screwCount',
    what: 'screws along all edges and on the frames of a box, and boxes of 100 with a tenth to spare',
    input:
      '3 m x 1.2 m x 0.5 m, four frames between the ends; 50 mm from an end, then at most 75 mm on edges, 125 mm on frames',
    // A line of 2.9 m takes 39 spaces: 40 screws. Keel: the bottom of both sides; chine: bottom and side; sheer: side.
    // Half a bottom of 600 mm takes 4 spaces of 125 mm, a side of 500 mm takes 4 of 100: 5 screws each.
    expected: [8 * 40, 4 * 2 * (5 + 5), 5],
    unit: '',
    tolerance: 0,
    source: 'counting by hand',
    known: 'closed form',
    obtain: () => {
      const tried = tryCell(
        screwCount,
        { pitch: '75 mm', end: '50 mm', framePitch: '125 mm', rows: '1', spare: '10 %', box: '100' },
        barge,
      );
      return ['onEdges', 'onFrames', 'boxes'].map((key) => tried.number(key));
    },
  },
];
