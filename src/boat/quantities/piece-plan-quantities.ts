/**
 * The plan of pieces as quantities: rules that joints are held to, boards that the yard sells, and part by part the
 * board it is laid in, its first boards and the width to buy.
 */
import type { KindId } from '../../measure';
import { bendingModuli, partEdges } from './bending-quantities';
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
import { pieceEntries, pieceRules } from './piece-rules';
import type { Derived, Given, Read } from './quantity';
import { soldKeys } from './shop-lumber';

const PRACTICE = 'common practice, no source';

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
  easyBend: read.number('shop.easyFrom'),
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
    allowed: read.number('shop.breakingShare'),
  };
};

function ofPart({ id: part, label }: (typeof longParts)[number]): readonly Derived[] {
  const derived = (
    key: string,
    kind: KindId,
    meaning: string,
    source: string,
    of: (hull: Hull, read: Read) => number,
  ) => fromBoth(`${part}.${key}`, kind, `${meaning}, ${label}`, source, of);
  const first = (side: 'port' | 'starboard') =>
    derived(
      `${side}Best`,
      'length',
      `first board to ${side} by the best pattern found`,
      'search through all tried',
      (hull, read) => bestIn(hull, read, part).boards[side],
    );
  return [
    derived(
      'usualStagger',
      'length',
      'least distance along the boat from a joint in the timber across',
      `600 mm (24 in) or 24 thicknesses: ${PRACTICE}`,
      (hull, read) => Math.max(0.6, 24 * sizeOf(hull, read, part, 'thickness')),
    ),
    derived(
      'boardBest',
      'length',
      'length of board to lay it in, of those sold',
      'by it the fewest rules for joints are broken; then it makes the fewest pieces; then it is the shortest',
      (hull, read) =>
        boardFor(hull, part, rulesOf(hull, read, part), {
          more: read.number('pieces.more'),
          sold: soldKeys.map((key) => read.number(`shop.length${key}`)),
        }),
    ),
    first('port'),
    first('starboard'),
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
  ...pieceRules,
  ...pieceEntries,
  ...frameStands,
  ...bendingModuli,
  ...longParts.flatMap(ofPart),
];

export function piecePlanQuantities(layout: Layout): readonly (Derived | Given)[] {
  return [...all, ...partEdges(layout)];
}
