/** Patterns: transoms expanded up their slope, the motor's height plumb and up the slope, deductions, full size. */
import { framePattern } from '../../src/cells/frames/frame-pattern';
import { transomCut } from '../../src/cells/frames/transom-cut';
import { inked } from '../../src/drawing/export/full-size-ink';
import { drawing, line } from '../../src/drawing';
import { starter } from '../../src/boat';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const inches = (metres: number) => metres / 0.0254;
const COSINE = 'cosine of the rake';
const FORUM = 'worked arithmetic in a boatbuilding forum';

const cut = (entries: Record<string, string>, key: string) => [
  inches(tryCell(transomCut, entries).number(key)),
];

export const rows: readonly Check[] = [
  {
    id: 'T3',
    cell: 'transomCut',
    what: 'motor height up the slope',
    input: '25 in plumb, rake 14°',
    expected: [25.77],
    unit: 'in',
    tolerance: 0.01,
    source: FORUM,
    known: 'published',
    obtain: () => cut({ shaft: 'extraLong', rake: '14 deg' }, 'alongFace'),
  },
  {
    id: 'T4',
    cell: 'transomCut',
    what: 'plumb height of what was laid off up the slope',
    input: '17 in up the slope, rake 13°',
    expected: [16.56],
    unit: 'in',
    tolerance: 0.01,
    source: FORUM,
    known: 'published',
    obtain: () => cut({ motorHeight: '17 in', rake: '13 deg' }, 'ifAlong'),
  },
  {
    id: 'T5',
    cell: 'transomCut',
    what: 'short shaft up the slope',
    input: '15 in plumb, rake 12°',
    expected: [15.34],
    unit: 'in',
    tolerance: 0.01,
    source: COSINE,
    known: 'closed form',
    obtain: () => cut({ shaft: 'short', rake: '12 deg' }, 'alongFace'),
  },
  {
    id: 'T6',
    cell: 'transomCut',
    what: 'long shaft up the slope',
    input: '20 in plumb, rake 13°',
    expected: [20.53],
    unit: 'in',
    tolerance: 0.01,
    source: COSINE,
    known: 'closed form',
    obtain: () => cut({ shaft: 'long', rake: '13 deg' }, 'alongFace'),
  },
  {
    id: 'T7',
    cell: 'transomCut',
    what: 'raked transom expanded',
    input: '380 mm plumb, rake 13°',
    expected: [389.996],
    unit: 'mm',
    tolerance: 0.01,
    source: COSINE,
    known: 'closed form',
    obtain: () => [tryCell(transomCut, { rise: '380 mm', rake: '13 deg' }).number('upFace') * 1000],
  },
  {
    id: 'F3',
    cell: 'framePattern',
    what: 'flat-bottomed frame: mitre of bottom and side members, off square',
    input: 'ferry dory, frame 1: side from 442, 115 to 727, 668 mm, inside the skin within 0.3°',
    expected: [31.4],
    unit: 'deg',
    tolerance: 0.15,
    source: 'half of what the angle between the members lacks of 180°, from the offsets',
    known: 'closed form',
    obtain: () => [
      (tryCell(framePattern, { frame: 'frame1' }, starter('ferry-dory')!).number('footCut') * 180) / Math.PI,
    ],
  },
  {
    id: 'P1',
    cell: 'drawing',
    what: 'a full-size line on paper',
    input: '1000 mm',
    expected: [1000],
    unit: 'mm',
    tolerance: 0.1,
    source:
      'the length itself; the printed sheets are read back by pdf.js in tests/drawing/export/full-size.test.ts',
    known: 'closed form',
    obtain: () => {
      const shapes = [
        line([
          [0, 0],
          [1000, 0],
        ]),
      ];
      const [one] = inked(drawing({ title: 'Line', says: 'A line.', shapes })).ink;
      if (one?.ink !== 'line') return [];
      const xs = one.points.map(([x]) => x);
      return [Math.max(...xs) - Math.min(...xs)];
    },
  },
];
