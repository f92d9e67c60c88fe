/** Boards bought: board feet by the rule of the trade, and cutting plans whose optimum is known. */
import { buildHull, offsetsOf } from '../../src/boat';
import { type Values } from '../../src/cells';
import { boards } from '../../src/cells/timber/wood/boards';
import { problem } from '../../src/cells/timber/wood/boards-facts';
import { isIssue } from '../../src/measure';
import { searchBoards } from '../../src/search/boards';
import { box } from '../boat/shapes';
import { tableThrough } from '../cells/shape/table-through';
import { askFact } from '../cells/alone';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';
import { runSteps } from '../cells/alone';

type Entries = Readonly<Record<string, string>>;

/** A board foot, a foot square and an inch thick, m3. */
const BOARD_FOOT = 0.3048 ** 2 * 0.0254;

/** Nothing but pieces of the builder's own, cut from boards of one length. */
const alone: Entries = {
  keelsonPieces: '0',
  logPieces: '0',
  clampPieces: '0',
  railPieces: '0',
  trim: '0 mm',
  kerf: '0 mm',
  stockB: '0 mm',
  stockC: '0 mm',
  stockD: '0 mm',
};
const piece = (thick: string, wide: string, long: string): Entries => ({
  otherThickness: thick,
  otherWidth: wide,
  otherLength: long,
});
const each =
  (key: string, unit: number, ...lists: readonly Entries[]) =>
  () =>
    lists.map((list) => tryCell(boards, { ...alone, ...list }).number(key) / unit);

/**
 * A flat barge 4 m long: two chine logs of 4 m, and four pieces of 3 m of the same section, from boards of 10 m. Long
 * pieces first, a board holds both logs, a second three of the others, a third the last; a log and two others fill a
 * board to its end.
 */
const barge = tableThrough(box(4, 1.2, 0.4, 5));
const fills: Entries = {
  ...alone,
  logPieces: '2',
  logBoard: '10 m',
  logPort: '10 m',
  logStarboard: '10 m',
  logThickness: '19 mm',
  logWidth: '38 mm',
  ...piece('19 mm', '38 mm', '3 m'),
  otherPieces: '4',
  stockA: '10 m',
};
const laid = tryCell(boards, fills, barge).all as Values;
const bargeHull = buildHull(offsetsOf(barge));
const asked = askFact(problem, laid, bargeHull);
/** The best that the search comes to, as the page keeps it. */
let best: unknown = null;
await searchBoards(asked, (answer) => {
  best = answer;
});

export const rows: readonly Check[] = [
  {
    id: 'W114',
    cell: 'boards',
    what: 'board feet of boards bought whole',
    input:
      'six of 2 in x 4 in x 8 ft; five of 1 in x 6 in x 10 ft; three of 2 in x 6 in x 12 ft; one of 1 in x 12 in x 16 ft',
    expected: [32, 25, 36, 16],
    unit: 'board feet',
    tolerance: 1e-9,
    source:
      'American Softwood Lumber Standard, PS 20, board measure: thickness by width in inches by length in feet, over 12',
    known: 'from memory',
    obtain: each(
      'bought',
      BOARD_FOOT,
      { ...piece('2 in', '4 in', '8 ft'), otherPieces: '6', stockA: '8 ft' },
      { ...piece('1 in', '6 in', '10 ft'), otherPieces: '5', stockA: '10 ft' },
      { ...piece('2 in', '6 in', '12 ft'), otherPieces: '3', stockA: '12 ft' },
      { ...piece('1 in', '12 in', '16 ft'), otherPieces: '1', stockA: '16 ft' },
    ),
  },
  {
    id: 'W115',
    cell: 'boards',
    what: 'what boards cost by the board foot, no joints to make',
    input: 'six of 2 in x 4 in x 8 ft at 1.50 a board foot; five of 1 in x 6 in x 10 ft at 4.20',
    expected: [48, 105],
    unit: '',
    tolerance: 1e-9,
    source: 'board measure as above: 32 and 25 board feet, by the price of one',
    known: 'closed form',
    obtain: each(
      'cost',
      1,
      { ...piece('2 in', '4 in', '8 ft'), otherPieces: '6', stockA: '8 ft', priceA: '1.5 per bd ft' },
      { ...piece('1 in', '6 in', '10 ft'), otherPieces: '5', stockA: '10 ft', priceA: '4.2 per bd ft' },
    ),
  },
  {
    id: 'W116',
    cell: 'boards',
    what: 'boards for twelve pieces alike, with a kerf between each two of a board',
    input:
      '2 ft from 8 ft without a kerf, with one of 1/8 in; 23 7/8 in from 8 ft with one of 1/8 in; 30 in from 16 ft with one of 1/8 in',
    // Four of 24 in are 96 in, and three kerfs more than that; four of 23 7/8 in with three kerfs are 95 7/8 in.
    expected: [3, 4, 3, 2],
    unit: '',
    tolerance: 0,
    source:
      'counting: a board gives the whole number of pieces with their kerfs that it holds, the last without one',
    known: 'closed form',
    obtain: each(
      'boards',
      1,
      ...[
        ['24 in', '8 ft', '0 mm'],
        ['24 in', '8 ft', '1/8 in'],
        ['23 7/8 in', '8 ft', '1/8 in'],
        ['30 in', '16 ft', '1/8 in'],
      ].map(([long, stockA, kerf]) => ({
        ...piece('3/4 in', '1 1/2 in', long!),
        otherPieces: '12',
        stockA: stockA!,
        kerf: kerf!,
      })),
    ),
  },
  {
    id: 'W117',
    cell: 'boards',
    what: 'boards by the rule of the shop, and by the search',
    input: 'two pieces of 4 m and four of 3 m from boards of 10 m, no kerf',
    expected: [3, 2],
    unit: '',
    tolerance: 0,
    source:
      'long pieces first, on the first board with room: 4 + 4, 3 + 3 + 3, 3; the least is 20 m over 10 m, and 4 + 3 + 3 twice is that',
    known: 'closed form',
    obtain: () => {
      const searched = runSteps(boards, laid, bargeHull, (text) => (text === asked ? best : null));
      if (isIssue(searched)) throw new Error(searched.issue);
      return [Number(laid['boards']), Number(searched['boards'])];
    },
  },
];
