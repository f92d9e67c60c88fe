/**
 * The plan of pieces as quantities: rules that joints are held to, boards that the yard sells, and part by part the
 * board it is laid in, its first boards and the width to buy.
 */
import type { KindId } from '../../measure';
import { bendingModuli, bendingRules, partEdges } from './bending-quantities';
import { frameStands } from './frame-stands';
import type { Hull } from '../hull/hull';
import type { JointRules } from '../joinery/joint-layout';
import type { Layout } from './lists';
import { type LongPart, longParts } from '../joinery/long-parts';
import { fromBoth } from './make-derived';
import {
  bestOfPart,
  boardFor,
  edgesOf,
  type EdgewiseRules,
  timberPieces,
  widthToBuy,
} from '../joinery/piece-plan';
import { BOARDS_QUOTED, pricedOtherwise } from './price-ways';
import type { Derived, Given, Read } from './quantity';
import { roundPreset } from './round-preset';

const PRACTICE = 'common practice, no source';

type Limits = Pick<Given, 'preset' | 'presetFrom' | 'min' | 'max' | 'step' | 'otherwise'>;

const given = (name: string, kind: KindId, meaning: string, source: string, limits: Limits): Given => ({
  name,
  kind,
  meaning,
  source,
  ...limits,
  ...(limits.presetFrom ? {} : roundPreset(kind, limits.preset)),
});

/** Which the yard sells; as many as a builder asks about. */
export const soldKeys = ['A', 'B', 'C', 'D'] as const;
/** By three tenths of a metre, or by two feet, as the yard of the place sells: common practice, no source. */
export const soldLengths = {
  metric: { A: '2.4 m', B: '3 m', C: '3.6 m', D: '4.2 m' },
  inch: { A: '8 ft', B: '10 ft', C: '12 ft', D: '14 ft' },
} as const;

const yard: readonly Given[] = [
  ...soldKeys.flatMap((key, i) => [
    given(
      `lumber.length${key}`,
      'stockLength',
      `length of board sold, ${i + 1}`,
      '0 where it is not sold; sold by 0.3 m or by two feet: common practice',
      {
        preset: soldLengths.metric[key],
        presetFrom: (read) => soldLengths[read.inches() ? 'inch' : 'metric'][key],
        min: '0 mm',
        max: '12 m',
        step: '0.3 m',
      },
    ),
    given(
      `lumber.price${key}`,
      'timberPrice',
      `price of that board, ${i + 1}`,
      'made up: write what your yard asks',
      {
        preset: '1500 /m³',
        presetFrom: (read) => (read.inches() ? '3.50 /bd ft' : '1500 /m³'),
        otherwise: pricedOtherwise('timberPrice', BOARDS_QUOTED),
        min: '0 /m³',
        max: '100000 /m³',
        step: '50 /m³',
      },
    ),
  ]),
  given(
    'lumber.sheetLength',
    'length',
    'length of a sheet of plywood',
    'sold as 1220 by 2440 mm or 4 by 8 ft: common practice',
    {
      preset: '2440 mm',
      min: '500 mm',
      max: '4 m',
      step: '10 mm',
    },
  ),
  given(
    'lumber.sheetWidth',
    'length',
    'width of a sheet of plywood',
    'sold as 1220 by 2440 mm or 4 by 8 ft: common practice',
    {
      preset: '1220 mm',
      min: '300 mm',
      max: '3 m',
      step: '10 mm',
    },
  ),
];

const rules: readonly Given[] = [
  given(
    'pieces.slope',
    'slope',
    'slope of the scarfs in long timbers',
    '1 in 8 to 12 for keel, chine and rail: common practice',
    { preset: '8', min: '4', max: '20', step: '1' },
  ),
  given(
    'pieces.panelSlope',
    'slope',
    'slope of the scarfs in plywood',
    'Wood Handbook, USDA FPL-GTR-190 (2010), ch. 10: typically 1 in 8',
    { preset: '8', min: '4', max: '20', step: '1' },
  ),
  given('pieces.sparSlope', 'slope', 'slope of the scarfs in spars', '1 in 12 for spars: common practice', {
    preset: '12',
    min: '4',
    max: '20',
    step: '1',
  }),
  given(
    'pieces.trim',
    'length',
    'length left on each long timber for trimming',
    'common practice: a thumb’s length at each end',
    { preset: '50 mm', min: '0 mm', max: '1 m', step: '10 mm' },
  ),
  given(
    'pieces.least',
    'length',
    'shortest piece worth a scarf',
    'common practice: a joint in every bay is one too many',
    { preset: '600 mm', min: '50 mm', max: '3 m', step: '50 mm' },
  ),
  given('pieces.more', 'count', 'pieces beyond the fewest that a side may have', PRACTICE, {
    preset: '1',
    min: '0',
    max: '3',
    step: '1',
  }),
  given(
    'pieces.hardShare',
    'share',
    'share of the hardest bend from which a stretch bends hard',
    `three quarters: ${PRACTICE}`,
    { preset: '75 %', min: '10 %', max: '100 %', step: '5 %' },
  ),
  given('pieces.frameClearance', 'length', 'joints clear of a frame by', `room for a clamp; ${PRACTICE}`, {
    preset: '25 mm',
    min: '0 mm',
    max: '500 mm',
    step: '10 mm',
  }),
];

/** Of a part that the hull lacks, asked all the same: as the scantlings have it to begin with. */
const usual = { thickness: 0.019, width: 0.038 } as const;

const sizeOf = (hull: Hull, read: Read, part: LongPart, size: keyof typeof usual) =>
  edgesOf(hull, part).length > 0 ? read.number(`${part}.${size}`) : usual[size];

const rulesOf = (hull: Hull, read: Read, part: LongPart): Omit<JointRules, 'board'> => ({
  thickness: sizeOf(hull, read, part, 'thickness'),
  slope: read.number('pieces.slope'),
  trim: read.number('pieces.trim'),
  siding: read.number('frame.siding'),
  stands: read.choice('frame.stands'),
  hardShare: read.number('pieces.hardShare'),
  easyBend: read.number('bending.easyFrom'),
  frameClearance: read.number('pieces.frameClearance'),
  stagger: read.number(`${part}.stagger`),
  least: read.number('pieces.least'),
});

const bestIn = (hull: Hull, read: Read, part: LongPart) =>
  bestOfPart(
    hull,
    part,
    { ...rulesOf(hull, read, part), board: read.number(`${part}.boardLength`) },
    read.number('pieces.more'),
  );

const laidAs = (hull: Hull, read: Read, part: LongPart) => ({
  board: read.number(`${part}.boardLength`),
  taper: read.number('pieces.slope') * sizeOf(hull, read, part, 'thickness'),
  trim: read.number('pieces.trim'),
  first: { port: read.number(`${part}.portFirst`), starboard: read.number(`${part}.starboardFirst`) },
});

const edgewiseRules = (hull: Hull, read: Read, part: LongPart): EdgewiseRules => {
  const wood = read.choice(`${part}.timber`);
  return {
    ...laidAs(hull, read, part),
    thickness: sizeOf(hull, read, part, 'thickness'),
    width: sizeOf(hull, read, part, 'width'),
    modulus: read.number(`timber.${wood}.bendingModulus`),
    rupture: read.number(`timber.${wood}.rupture`),
    allowed: read.number('bending.allowed'),
  };
};

function ofPart({ id: part, label }: (typeof longParts)[number]): readonly (Derived | Given)[] {
  const derived = (
    key: string,
    kind: KindId,
    meaning: string,
    source: string,
    of: (hull: Hull, read: Read) => number,
  ) => fromBoth(`${part}.${key}`, kind, `${meaning}, ${label}`, source, of);
  const first = (side: 'port' | 'starboard') => [
    derived(
      `${side}Best`,
      'length',
      `first board to ${side} by the best pattern found`,
      'search through all tried',
      (hull, read) => bestIn(hull, read, part).boards[side],
    ),
    given(`${part}.${side}First`, 'length', `first board to ${side}, ${label}`, 'the best pattern found', {
      preset: `${part}.${side}Best`,
      min: '10 mm',
      max: '100 m',
      step: '10 mm',
    }),
  ];
  return [
    derived(
      'usualStagger',
      'length',
      'least distance along the boat from a joint in the timber across',
      `600 mm (24 in) or 24 thicknesses: ${PRACTICE}`,
      (hull, read) => Math.max(0.6, 24 * sizeOf(hull, read, part, 'thickness')),
    ),
    given(
      `${part}.stagger`,
      'length',
      `joints of a pair at least apart, ${label}`,
      `600 mm (24 in) or 24 thicknesses: ${PRACTICE}`,
      { preset: `${part}.usualStagger`, min: '0 mm', max: '6 m', step: '50 mm' },
    ),
    derived(
      'boardBest',
      'length',
      'length of board to lay it in, of those sold',
      'by it the fewest rules for joints are broken; then it makes the fewest pieces; then it is the shortest',
      (hull, read) =>
        boardFor(hull, part, rulesOf(hull, read, part), {
          more: read.number('pieces.more'),
          sold: soldKeys.map((key) => read.number(`lumber.length${key}`)),
        }),
    ),
    given(
      `${part}.boardLength`,
      'length',
      `length of one board, ${label}`,
      'the shortest sold by which the joints stand clear in the fewest pieces',
      { preset: `${part}.boardBest`, min: '300 mm', max: '12 m', step: '100 mm' },
    ),
    ...first('port'),
    ...first('starboard'),
    derived(
      'roughLength',
      'length',
      'length to join, the longest timber, trimming included',
      'geometry',
      (hull, read) => {
        const edges = edgesOf(hull, part);
        if (edges.length === 0) throw new Error(`the boat has no ${label}`);
        return Math.max(...edges.map(({ length }) => length)) + read.number('pieces.trim');
      },
    ),
    derived(
      'boardsMore',
      'count',
      'boards a side beyond the fewest that reach, taken to keep joints clear',
      'geometry: n boards less n - 1 tapers; a thousandth of a board is forgiven',
      (hull, read) => {
        const as = laidAs(hull, read, part);
        const timbers = timberPieces(hull, part, as);
        const fewest = timbers.map((pieces) => {
          const rough = pieces.reduce((sum, { length }) => sum + length, 0) - (pieces.length - 1) * as.taper;
          return Math.max(1, Math.ceil((rough - as.taper) / (as.board - as.taper) - 0.001));
        });
        // Of what the boat lacks nothing is joined.
        return Math.max(0, ...timbers.map(({ length }, i) => length - fewest[i]!));
      },
    ),
    derived(
      'boardWidth',
      'length',
      'width of board to buy for its pieces',
      'its own where it may be sprung edgewise within the share allowed, else what the pieces are hollow or round on top',
      (hull, read) =>
        edgesOf(hull, part).length > 0
          ? widthToBuy(hull, part, edgewiseRules(hull, read, part))
          : usual.width,
    ),
  ];
}

const all: readonly (Derived | Given)[] = [
  ...yard,
  ...rules,
  ...frameStands,
  ...bendingRules,
  ...bendingModuli,
  ...longParts.flatMap(ofPart),
];

export function piecePlanQuantities(layout: Layout): readonly (Derived | Given)[] {
  return [...all, ...partEdges(layout)];
}
