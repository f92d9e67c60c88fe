/** What the joints of a long timber are asked for: its boards, and the rules that its joints are held to. */
import type { Option } from '../../boat';
import { choice, input } from '../define';

const PRACTICE = 'common practice, no source';

/** Joints that the table holds a side. */
export const LISTED = 6;

const jointOptions: readonly Option[] = (['port', 'starboard'] as const).flatMap((side) =>
  Array.from({ length: LISTED }, (_, i) => ({ id: `${side}${i + 1}`, label: `${side} ${i + 1}` })),
);

const rules = (label: string, preset: string, min: string, max: string, more: string) =>
  input('length', label, { seldom: true, preset, min, max, step: '10 mm', note: more });

export const jointInputs = {
  part: choice('Long timber', {
    options: [
      { id: 'keelson', label: 'keelson' },
      { id: 'chineLog', label: 'chine log' },
      { id: 'sheerClamp', label: 'sheer clamp' },
      { id: 'rubRail', label: 'rub rail' },
    ],
    preset: 'sheerClamp',
  }),
  laid: choice('Boards laid', {
    options: [
      { id: 'best', label: 'by the best pattern found' },
      { id: 'plain', label: 'whole boards from aft to port, the first cut short to starboard' },
    ],
    preset: 'best',
  }),
  boardLength: input('length', 'Length of one board', {
    from: 'scarf.boardLength',
    preset: '8 ft',
    min: '300 mm',
    max: '12 m',
    step: '100 mm',
  }),
  portFirst: input('length', 'First board to port', {
    from: '{self}.proposedPort',
    preset: '8 ft',
    min: '10 mm',
    max: '12 m',
    step: '10 mm',
    note: 'from the after end, its taper included; type another and see where the joints go',
  }),
  starboardFirst: input('length', 'First board to starboard', {
    from: '{self}.proposedStarboard',
    preset: '6 ft',
    min: '10 mm',
    max: '12 m',
    step: '10 mm',
    note: 'the same; of no account where there is one timber only',
  }),
  joint: choice('Joint', { options: jointOptions, preset: 'port1', note: 'counted from aft' }),
  pieces: choice('A piece more', {
    options: [
      { id: 'may', label: 'where that keeps joints clear' },
      { id: 'fewest', label: 'never: as few pieces as reach' },
    ],
    preset: 'may',
    seldom: true,
  }),
  along: choice('Along', {
    options: 'longEdges',
    from: '{self}.usualEdge',
    preset: 'sheer',
    seldom: true,
  }),
  sides: choice('Timbers', {
    options: [
      { id: 'pair', label: 'a pair, port and starboard' },
      { id: 'one', label: 'one, on the centreline' },
    ],
    from: '{self}.usualSides',
    preset: 'pair',
    seldom: true,
    note: 'two layers of one timber are a pair too',
  }),
  thickness: input('length', 'Board thickness', {
    from: '{part}.thickness',
    preset: '19 mm',
    min: '1 mm',
    max: '150 mm',
    step: '1 mm',
    seldom: true,
  }),
  slope: input('slope', 'Slope', {
    from: 'scarf.slope',
    preset: '8',
    min: '4',
    max: '20',
    step: '1',
    seldom: true,
  }),
  stagger: input('length', 'Joints of a pair at least apart', {
    bound: 'least',
    from: '{self}.usualStagger',
    preset: '600 mm',
    min: '0 mm',
    max: '6 m',
    step: '50 mm',
    seldom: true,
  }),
  hardShare: input('share', 'Hard bend: from this share of the hardest', {
    preset: '75 %',
    min: '10 %',
    max: '100 %',
    step: '5 %',
    seldom: true,
    note: PRACTICE,
  }),
  easyBend: input('ratio', 'A bend is easy from a radius over thickness of', {
    preset: '200',
    min: '10',
    max: '2000',
    step: '10',
    seldom: true,
    note: 'over 200 bends easily: common practice, no source; there no stretch counts as hard',
  }),
  frameClearance: {
    ...rules('Clear of a frame by', '25 mm', '0 mm', '500 mm', `room for a clamp; ${PRACTICE}`),
    bound: 'least',
  },
  leastPiece: input('length', 'Shortest piece worth a scarf', {
    bound: 'least',
    from: 'boards.leastPiece',
    preset: '600 mm',
    min: '50 mm',
    max: '3 m',
    step: '50 mm',
    seldom: true,
  }),
  siding: input('length', 'Frame thickness', {
    from: 'frame.siding',
    preset: '19 mm',
    min: '3 mm',
    max: '150 mm',
    step: '1 mm',
    seldom: true,
  }),
  stands: choice('Frames stand', {
    from: 'framePattern.side',
    options: [
      { id: 'custom', label: 'as is the custom' },
      { id: 'forward', label: 'forward of their lines' },
      { id: 'aft', label: 'aft of their lines' },
    ],
    preset: 'custom',
    seldom: true,
  }),
} as const;
