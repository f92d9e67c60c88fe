/** What to buy for the long parts: which boards, cut how, with scarfs where they pay. */
import { costAtLeast, costOf, jointsOf } from '../../kernel/cutting';
import { choice, defineCell, hullStep, input, type InputSpec, step } from '../define';
import { drawBoards } from './boards-picture';
import {
  bestOf,
  type BoughtSection,
  longParts,
  problemText,
  sectionsOf,
  shopOf,
  stockKeys,
} from './boards-plan';

const GEOMETRY = 'geometry';
const RULE = 'long parts first, each on the first board with room: common practice, no source';

/** What is asked of each part, linked to the boat where it has such a part. */
const asked = longParts.flatMap(({ key, label, name }) => {
  const from = (of: string) => (name === null ? {} : { from: `${name}.${of}` });
  const sort = name === 'keelson' || name === null ? {} : { seldom: true };
  const one = `${label.charAt(0).toUpperCase()}${label.slice(1)}`;
  const plural = label === 'keelson' ? one : `${one}s`;
  return [
    [
      `${key}Pieces`,
      input('count', `${plural}: pieces`, {
        ...from('pieces'),
        preset: name === null ? '0' : '2',
        min: '0',
        max: '12',
        step: '1',
      }),
    ],
    [
      `${key}Length`,
      input('length', `${plural}: length of each`, {
        ...from('length'),
        preset: '4.2 m',
        min: '100 mm',
        max: '40 m',
        step: '10 mm',
        ...sort,
        note: 'the longest, where they differ',
      }),
    ],
    [
      `${key}Thickness`,
      input('length', `${one} thickness`, {
        ...from('thickness'),
        preset: '19 mm',
        min: '1 mm',
        max: '150 mm',
        step: '1 mm',
        seldom: true,
      }),
    ],
    [
      `${key}Width`,
      input('length', `${one} width`, {
        ...from('width'),
        preset: '38 mm',
        min: '3 mm',
        max: '400 mm',
        step: '1 mm',
        seldom: true,
      }),
    ],
  ] as const;
});

const soldLengths = { A: '8 ft', B: '10 ft', C: '12 ft', D: '16 ft' } as const;
const sold = stockKeys.flatMap(
  (key, at) =>
    [
      [
        `stock${key}`,
        input('length', `Board length sold, ${at + 1}`, {
          preset: soldLengths[key],
          min: '0 mm',
          max: '12 m',
          step: '100 mm',
          note: '0 where it is not sold; sold by two feet: common practice',
        }),
      ],
      [
        `price${key}`,
        input('timberPrice', `Price of it, ${at + 1}`, {
          preset: '1500 /m³',
          min: '0 /m³',
          max: '100000 /m³',
          step: '50 /m³',
          note: 'made up: write what your yard asks',
        }),
      ],
    ] as const,
);

const partKeys = asked.map(([key]) => key);
const stockInputs = sold.map(([key]) => key);
const uses = [
  ...partKeys,
  ...stockInputs,
  'trim',
  'kerf',
  'scarfs',
  'slope',
  'leastPiece',
  'mostPieces',
  'jointPrice',
];

const sum = (sections: readonly BoughtSection[], of: (section: BoughtSection) => number): number =>
  sections.reduce((total, section) => total + of(section), 0);
const lengthBought = ({ plan, problem }: BoughtSection) =>
  plan.boards.reduce((total, { stock }) => total + problem.stocks[stock]!.length, 0);
const money = ({ plan, problem }: BoughtSection) => costOf(plan, problem);

export const boards = defineCell({
  id: 'boards',
  stage: 'timber',
  title: 'Boards to buy',
  question: 'Which boards do I buy for the long parts, and how do I cut them?',
  inputs: {
    scarfs: choice('Scarfs', {
      options: [
        { id: 'yes', label: 'where they pay' },
        { id: 'no', label: 'none: each part in one piece' },
      ],
      preset: 'yes',
    }),
    ...Object.fromEntries<InputSpec>(asked),
    ...Object.fromEntries<InputSpec>(sold),
    trim: input('length', 'Left on each part for trimming', {
      preset: '50 mm',
      min: '0 mm',
      max: '1 m',
      step: '10 mm',
      seldom: true,
      note: 'common practice: a thumb’s length at each end',
    }),
    kerf: input('length', 'Saw kerf', {
      preset: '3 mm',
      min: '0 mm',
      max: '10 mm',
      step: '0.5 mm',
      seldom: true,
      note: 'common practice: 3 mm on a table saw',
    }),
    slope: input('slope', 'Slope of the scarfs', {
      from: 'scarf.slope',
      preset: '8',
      min: '4',
      max: '20',
      step: '1',
      seldom: true,
    }),
    leastPiece: input('length', 'Shortest piece worth a scarf', {
      bound: 'least',
      preset: '600 mm',
      min: '50 mm',
      max: '3 m',
      step: '50 mm',
      seldom: true,
      note: 'common practice: a joint in every bay is one too many',
    }),
    mostPieces: input('count', 'Most pieces in one part', {
      preset: '3',
      min: '1',
      max: '8',
      step: '1',
      seldom: true,
      note: 'common practice',
    }),
    jointPrice: input('money', 'What a joint is worth to you', {
      preset: '2',
      min: '0',
      max: '1000',
      step: '1',
      seldom: true,
      note: 'made up: glue and an hour with the plane',
    }),
  },
  steps: {
    boards: hullStep('count', {
      says: 'boards of the cheaper of two plans: the one by the rule of the shop, and the best that the search has found',
      uses,
      find: (_hull, v, found) => sum(bestOf(v, found), ({ plan }) => plan.boards.length),
      meaning: 'boards to buy',
      source:
        'P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock problem, 1961',
    }),
    cost: hullStep('money', {
      says: 'their prices, and what each joint is worth',
      uses,
      find: (_hull, v, found) => sum(bestOf(v, found), money),
      meaning: 'cost of boards and joints',
      source: GEOMETRY,
    }),
    shopCost: hullStep('money', {
      says: 'the same of the plan by the rule of the shop',
      uses,
      find: (_hull, v) => sum(shopOf(v), money),
      meaning: 'cost by the rule of the shop',
      source: RULE,
    }),
    leastCost: hullStep('money', {
      says: 'all the length wanted, at the lowest price, without waste and without a joint',
      uses,
      find: (_hull, v) => sum(shopOf(v), ({ problem }) => costAtLeast(problem)),
      meaning: 'no plan can cost less',
      source: GEOMETRY,
    }),
    proved: hullStep('choice', {
      says: 'the search has tried or ruled out every other plan, or the cost has come down to the least there can be',
      uses,
      find: (_hull, v, found) => (bestOf(v, found).every(({ proved }) => proved) ? 'yes' : 'not yet'),
      meaning: 'whether it is proved that no plan costs less',
      source: GEOMETRY,
    }),
    joints: hullStep('count', {
      says: 'pieces less parts',
      uses,
      find: (_hull, v, found) => sum(bestOf(v, found), ({ plan, problem }) => jointsOf(plan, problem)),
      meaning: 'scarfs to make',
      source: GEOMETRY,
    }),
    bought: hullStep('lumber', {
      says: 'sections times lengths of the boards',
      uses,
      find: (_hull, v, found) =>
        sum(bestOf(v, found), (section) => section.thickness * section.width * lengthBought(section)),
      meaning: 'wood bought',
      source: GEOMETRY,
    }),
    needed: hullStep('lumber', {
      says: 'sections times lengths of the parts as built in, trimming included',
      uses,
      find: (_hull, v) =>
        sum(shopOf(v), ({ thickness, width, problem }) => {
          const long = problem.parts.reduce((total, { length }) => total + length, 0);
          return thickness * width * long;
        }),
      meaning: 'wood in the parts',
      source: GEOMETRY,
    }),
    wasted: step(
      'share',
      '1 - needed / bought',
      'part of the wood that is left over, tapers and kerfs included',
      GEOMETRY,
    ),
  },
  answers: [
    { of: 'boards', label: 'boards', from: 'of the parts’ own sections, lengths as drawn' },
    { of: 'cost', label: 'cost', from: 'boards at your yard’s prices, and the joints' },
    { of: 'joints', label: 'scarfs', from: 'in all parts together' },
  ],
  inWords: [
    {
      when: 'proved == "yes"',
      says: 'Buy {boards} boards for {cost}, with {joints} scarfs; {wasted} of the wood is left over. No plan costs less with these boards and prices.',
    },
    {
      says: 'Buy {boards} boards for {cost}, with {joints} scarfs; {wasted} of the wood is left over. It is not proved yet that no plan costs less: search for it.',
    },
  ],
  warnings: [
    {
      when: 'wasted > 0.3',
      says: '{wasted} of the wood is left over: look for other board lengths, or let scarfs in.',
      limit: 'a third wasted; common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'A plan counts on sound wood from end to end. Lay the boards out before the first cut: knots, splits and wane move the cuts, and a board to spare is common practice.',
    'Sections are the parts’ own: where a yard sells only wider boards, count how many strips one gives, less a kerf each.',
    'A long board on a saw wants support at both ends and a second pair of hands who guides and never pulls; guard, riving knife and push stick as the saw’s maker says.',
  ],
  sources: [
    {
      text: 'P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock problem, Operations Research 9 (1961)',
      known: 'from memory',
    },
    { text: 'Long parts first; trimming, kerf, shortest piece, board lengths', known: 'common practice' },
    { text: 'Lengths of the parts, from the edges of the hull', known: 'geometry' },
  ],
  lights: ['keelson', 'chineLog', 'sheerClamp', 'rubRail'],
  wide: true,
  draw: drawBoards,
  search: {
    by: 'boards',
    seeks: 'the cheapest way to cut',
    problem: (v) => problemText(sectionsOf(v)),
  },
});
