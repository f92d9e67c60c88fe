/** What to buy for the long parts: which boards, and how the plan of pieces is cut from them. */
import { soldKeys } from '../../../boat/quantities/shop-lumber';
import { defineCell } from '../../form/define';
import { tableOf } from '../../form/row-quantities';
import { drawBoards } from './boards-drawing';
import { asksHull, cutRows, problem } from './boards-facts';
import { boardsInputs, otherKeys } from './boards-inputs';
import { boardsSteps } from './boards-steps';

export const boards = defineCell({
  id: 'boards',
  stage: 'timber',
  title: 'Boards to buy',
  question: 'Which boards do I buy, and how do I cut the pieces from them?',
  inputs: boardsInputs,
  groups: {
    Prices: [
      'quoted',
      'boardThickness',
      'boardWidth',
      'priceA',
      'perLengthA',
      'eachA',
      'priceB',
      'perLengthB',
      'eachB',
      'priceC',
      'perLengthC',
      'eachC',
      'priceD',
      'perLengthD',
      'eachD',
      'jointPrice',
    ],
    'Scarfs and sawing': ['slope', 'trim', 'kerf'],
    'The keelson': ['keelsonPieces', 'keelsonBoard', 'keelsonPort', 'keelsonThickness', 'keelsonWidth'],
    'The chine log': ['logPieces', 'logBoard', 'logPort', 'logStarboard', 'logThickness', 'logWidth'],
    'The sheer clamp': [
      'clampPieces',
      'clampBoard',
      'clampPort',
      'clampStarboard',
      'clampThickness',
      'clampWidth',
    ],
    'The rub rail': ['railPieces', 'railBoard', 'railPort', 'railStarboard', 'railThickness', 'railWidth'],
    'Other parts': [
      ...otherKeys.flatMap((key) => [`${key}Pieces`, `${key}Length`] as const),
      'otherThickness',
      'otherWidth',
    ],
  },
  alone: [
    ...otherKeys.flatMap((key) => [`${key}Pieces`, `${key}Length`] as const),
    ...soldKeys.flatMap((key) => [`stock${key}`, `each${key}`] as const),
  ],
  steps: boardsSteps,
  answers: [
    { of: 'boards', label: 'boards', from: 'of the sections in the cut list, in the lengths sold' },
    { of: 'cost', label: 'cost', from: 'boards at your yard’s prices, and the joints' },
    {
      of: 'joints',
      label: 'scarfs',
      from: 'in all parts together',
      when: 'keelsonPieces + logPieces + clampPieces + railPieces > 0',
    },
  ],
  inWords: [
    'Buy {boards} boards for {cost} and cut {pieces} pieces from them',
    {
      when: 'keelsonPieces + logPieces + clampPieces + railPieces > 0',
      says: ', with {joints} scarfs to make',
    },
    '; {wasted} of the wood is left over.',
    {
      when: 'proved == "yes"',
      says: 'No way to cut these pieces costs less with these boards and prices.',
      otherwise: 'There may be a cheaper way to cut them: search for it.',
    },
  ],
  table: tableOf({
    caption: 'The cut list: board by board, in the order of the cuts',
    over: 'piece',
    rows: cutRows,
    columns: [
      { of: 'board', label: 'board' },
      { of: 'name', label: 'the piece is' },
      { of: 'length', label: 'cut to' },
      { of: 'scarfed', label: 'taper' },
      { of: 'sectionThickness', label: 'thick' },
      { of: 'sectionWidth', label: 'wide' },
    ],
  }),
  warnings: [
    {
      when: 'wasted > 0.3',
      says: '{wasted} of the wood is left over: try other board lengths, or make a part of other boards.',
      limit: 'three tenths wasted; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'piece > pieces',
      says: 'The cut list has fewer pieces than that: {pieces} in all.',
      limit: 'the plan of pieces',
      weight: 'mind',
    },
  ],
  cautions: [
    'A long board on a saw wants support at both ends and a second person, who guides and never pulls; guard, riving knife and push stick as the saw’s maker says.',
    'The list counts on sound wood from end to end. Lay the boards out before the first cut: knots, splits and wane move the cuts, and a board to spare is common practice.',
    'Boards are counted in the sections of the list. Where the yard sells only wider ones, count how many strips one gives, less a kerf for each.',
  ],
  sources: [
    {
      text: 'P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock problem, Operations Research 9 (1961)',
      known: 'from memory',
    },
    { text: 'Long pieces first; trimming, kerf, shortest piece, board lengths', known: 'common practice' },
    { text: 'Lengths of the pieces, from the edges of the hull and the plan of pieces', known: 'geometry' },
  ],
  about: ['keelson', 'chineLog', 'sheerClamp', 'rubRail'],
  wide: true,
  tall: true,
  draw: drawBoards,
  search: {
    by: 'boards',
    seeks: 'the cheapest way to cut',
    problem: (v, { hull, ask }) => (hull || !asksHull(v) ? ask(problem) : ''),
  },
});
