/** What to buy for the long parts: which boards, and how the plan of pieces is cut from them. */
import type { Found, Hull } from '../../../boat';
import { costAtLeast, costOf } from '../../../kernel/cutting';
import { defineCell, hullStep, step, type Values } from '../../form/define';
import { boardsInputs, LISTED, planUses, priceSteps } from './boards-inputs';
import { drawBoards } from './boards-drawing';
import {
  bestOf,
  type BoughtSection,
  cutList,
  type CutHere,
  jointsIn,
  problemText,
  sectionsOf,
  shopOf,
} from './boards-plan';

const GEOMETRY = 'geometry';
const RULE = 'long pieces first, each on the first board with room: common practice, no source';
const PLAN = 'the plan of pieces, as the cell on the joints shows it';

const sum = (sections: readonly BoughtSection[], of: (section: BoughtSection) => number): number =>
  sections.reduce((total, section) => total + of(section), 0);
const lengthBought = ({ plan, problem }: BoughtSection) =>
  plan.boards.reduce((total, { stock }) => total + problem.stocks[stock]!.length, 0);
const jointMoney = (sections: readonly BoughtSection[], v: Values) =>
  jointsIn(sections) * Number(v['jointPrice']);
const money = (sections: readonly BoughtSection[], v: Values) =>
  sum(sections, ({ plan, problem }) => costOf(plan, problem)) + jointMoney(sections, v);

/** Something of the piece in hand; `otherwise` where the list is shorter. */
const ofPiece = <K extends 'count' | 'length' | 'choice'>(
  kind: K,
  says: string,
  meaning: string,
  find: (cut: CutHere) => K extends 'choice' ? string : number,
  otherwise: K extends 'choice' ? string : number,
) =>
  hullStep(kind, {
    says,
    uses: [...planUses, 'piece'],
    find: (hull, v, found) => {
      const at = Number(String(v['piece']).replace('cut', '')) - 1;
      const cut = cutList(bestOf(hull, v, found))[at];
      return cut ? find(cut) : otherwise;
    },
    meaning,
    source: PLAN,
  });

const ends = ({ scarfed: { aft, fore } }: CutHere) =>
  aft && fore ? 'both ends' : aft ? 'its after end' : fore ? 'its fore end' : 'neither end';

const found = (of: (sections: BoughtSection[], v: Values) => number) => (hull: Hull, v: Values, by: Found) =>
  of(bestOf(hull, v, by), v);

export const boards = defineCell({
  id: 'boards',
  stage: 'timber',
  title: 'Boards to buy',
  question: 'Which boards do I buy for the long parts, and how do I cut them?',
  inputs: boardsInputs,
  groups: {
    Prices: [
      'quoted',
      'pricedFor',
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
    'Other parts': ['otherPieces', 'otherLength', 'otherThickness', 'otherWidth'],
  },
  steps: {
    ...priceSteps,
    boards: hullStep('count', {
      says: 'boards of the cheaper of two plans: the one by the rule of the shop, and the best that the search has found',
      uses: planUses,
      find: found((sections) => sum(sections, ({ plan }) => plan.boards.length)),
      meaning: 'boards to buy',
      source:
        'P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock problem, 1961',
    }),
    cost: hullStep('money', {
      says: 'their prices, and what each joint is worth',
      uses: planUses,
      find: found(money),
      meaning: 'cost of boards and joints',
      source: GEOMETRY,
    }),
    shopCost: hullStep('money', {
      says: 'the same of the plan by the rule of the shop',
      uses: planUses,
      find: (hull, v) => money(shopOf(hull, v), v),
      meaning: 'cost by the rule of the shop',
      source: RULE,
    }),
    leastCost: hullStep('money', {
      says: 'all the length wanted, at the lowest price and without waste, and the joints',
      uses: planUses,
      find: (hull, v) => {
        const sections = shopOf(hull, v);
        return sum(sections, ({ problem }) => costAtLeast(problem)) + jointMoney(sections, v);
      },
      meaning: 'no plan can cost less',
      source: GEOMETRY,
    }),
    proved: hullStep('choice', {
      says: 'the search has tried or ruled out every other plan, or the cost has come down to the least there can be',
      uses: planUses,
      find: (hull, v, by) => (bestOf(hull, v, by).every(({ proved }) => proved) ? 'yes' : 'not yet'),
      meaning: 'whether it is proved that no plan costs less',
      source: GEOMETRY,
    }),
    joints: hullStep('count', {
      says: 'pieces less timbers',
      uses: planUses,
      find: (hull, v) => jointsIn(sectionsOf(hull, v)),
      meaning: 'scarfs to make',
      source: PLAN,
    }),
    pieces: hullStep('count', {
      says: 'counted',
      uses: planUses,
      find: (hull, v) => sectionsOf(hull, v).reduce((total, { cuts }) => total + cuts.length, 0),
      meaning: 'pieces to cut',
      source: PLAN,
    }),
    bought: hullStep('lumber', {
      says: 'sections times lengths of the boards',
      uses: planUses,
      find: found((sections) =>
        sum(sections, (section) => section.thickness * section.width * lengthBought(section)),
      ),
      meaning: 'wood bought',
      source: GEOMETRY,
    }),
    needed: hullStep('lumber', {
      says: 'sections times lengths of the pieces, tapers and trimming included',
      uses: planUses,
      find: (hull, v) =>
        sectionsOf(hull, v).reduce((total, { thickness, width, cuts }) => {
          const long = cuts.reduce((all, { length }) => all + length, 0);
          return total + thickness * width * long;
        }, 0),
      meaning: 'wood in the pieces',
      source: GEOMETRY,
    }),
    wasted: step(
      'share',
      '1 - needed / bought',
      'part of the wood that is left over, kerfs included',
      GEOMETRY,
    ),
    onList: ofPiece('count', 'whether the cut list has it', '1 where there is such a piece', () => 1, 0),
    board: ofPiece(
      'count',
      'boards counted through all sections',
      'board it is cut from',
      ({ board }) => board,
      0,
    ),
    name: ofPiece(
      'choice',
      'part, side, and place from aft',
      'what the piece is',
      ({ name }) => name,
      'none',
    ),
    length: ofPiece(
      'length',
      'as laid: tapers, and what is left for trimming, included',
      'length to cut',
      ({ length }) => length,
      0,
    ),
    scarfed: ofPiece(
      'choice',
      'where the next piece of its timber laps it',
      'ends to be tapered',
      ends,
      'neither end',
    ),
    sectionThickness: ofPiece(
      'length',
      'of the section bought for its part',
      'thickness of its board',
      ({ section }) => section.thickness,
      0,
    ),
    sectionWidth: ofPiece(
      'length',
      'of the section bought for its part',
      'width of its board',
      ({ section }) => section.width,
      0,
    ),
  },
  answers: [
    { of: 'boards', label: 'boards', from: 'of the sections in the cut list, in the lengths sold' },
    { of: 'cost', label: 'cost', from: 'boards at your yard’s prices, and the joints' },
    { of: 'joints', label: 'scarfs', from: 'in all parts together' },
  ],
  inWords: [
    'Buy {boards} boards for {cost} and cut {pieces} pieces from them, with {joints} scarfs to make; {wasted} of the wood is left over.',
    {
      when: 'proved == "yes"',
      says: 'No way to cut these pieces costs less with these boards and prices.',
      otherwise: 'There may be a cheaper way to cut them: search for it.',
    },
  ],
  table: {
    caption: 'The cut list: board by board, in the order of the cuts',
    over: 'piece',
    only: 'onList',
    columns: [
      { of: 'board', label: 'board' },
      { of: 'name', label: 'the piece is' },
      { of: 'length', label: 'cut to' },
      { of: 'scarfed', label: 'taper' },
      { of: 'sectionThickness', label: 'thick' },
      { of: 'sectionWidth', label: 'wide' },
    ],
  },
  warnings: [
    {
      when: 'wasted > 0.3',
      says: '{wasted} of the wood is left over: try other board lengths, or make a part of other boards.',
      limit: 'three tenths wasted; common practice, no source',
      weight: 'mind',
    },
    {
      when: `pieces > ${LISTED}`,
      says: 'There are {pieces} pieces; the cut list holds the first forty.',
      limit: 'the length of the list',
      weight: 'mind',
    },
  ],
  cautions: [
    'The list counts on sound wood from end to end. Lay the boards out before the first cut: knots, splits and wane move the cuts, and a board to spare is common practice.',
    'Boards are counted in the sections of the list. Where the yard sells only wider ones, count how many strips one gives, less a kerf for each.',
    'A long board on a saw wants support at both ends and a second person, who guides and never pulls; guard, riving knife and push stick as the saw’s maker says.',
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
  wide: 'tall',
  draw: drawBoards,
  search: {
    by: 'boards',
    seeks: 'the cheapest way to cut',
    problem: (v, { hull }) => (hull ? problemText(sectionsOf(hull, v)) : ''),
  },
});
