/** Where along the real edge the scarfs of a long timber fall, and the pattern that keeps them clear. */
import type { Hull, Option } from '../../boat';
import { choice, defineCell, hullStep, input, step, type Values } from '../define';
import { bendChart, drawJoints } from './joints-picture';
import { faultsOf, type Joint, layoutKeys, layoutOf, verdictOf } from './joints-plan';
import { bestFirstBoards, searchKeys } from './joints-search';

const GEOMETRY = 'geometry';
const EDGE = 'the batten of the edge, measured along its bend';
const PRACTICE = 'common practice, no source';

const BEGIN_ONE =
  'Begin aft with {portFirst}, then whole boards: {piecesPort} pieces for {length} of the {along}.';
const BEGIN_PAIR =
  'Begin aft with {portFirst} to port and {starboardFirst} to starboard, then whole boards: {piecesPort} and {piecesStarboard} pieces for {length} of the {along}.';
const BEND =
  'At the joint bent hardest the edge takes {worstShare} of its hardest bend, which is one of {bendRatio} thicknesses in radius.';
const AMISS = 'Amiss are {amiss} of {jointsAll} joints: in the hard bend {inHardBend}, at a frame {onFrames}';

/** Joints that the table holds a side. */
const LISTED = 6;
/** A timber bent flatter than this counts as straight, m. */
const STRAIGHT = 1000;

const jointOptions: readonly Option[] = (['port', 'starboard'] as const).flatMap((side) =>
  Array.from({ length: LISTED }, (_, i) => ({ id: `${side}${i + 1}`, label: `${side} ${i + 1}` })),
);

const rules = (label: string, preset: string, min: string, max: string, more: string) =>
  input('length', label, { seldom: true, preset, min, max, step: '10 mm', note: more });

const jointsIn = (hull: Hull, v: Values) => layoutOf(hull, v).joints;

/** The joint in hand; null where the timber has no such joint. */
function jointHere(hull: Hull, v: Values): Joint | null {
  return jointsIn(hull, v).find(({ side, number }) => `${side}${number}` === v['joint']) ?? null;
}

/** Something of the joint in hand, or of a place beyond the timber's end. */
const ofJoint = (
  kind: 'length' | 'share' | 'count',
  says: string,
  meaning: string,
  find: (joint: Joint) => number,
  otherwise: (hull: Hull, v: Values) => number = (hull, v) => hull.edge(String(v['along'])).length,
) =>
  hullStep(kind, {
    says,
    uses: [...layoutKeys, 'joint'],
    find: (hull, v) => {
      const joint = jointHere(hull, v);
      return joint ? find(joint) : otherwise(hull, v);
    },
    meaning,
    source: GEOMETRY,
  });

const none = () => 0;

/** Something of all joints together. */
const ofAll = (
  kind: 'length' | 'share' | 'count',
  says: string,
  meaning: string,
  find: (joints: readonly Joint[], hull: Hull, v: Values) => number,
) =>
  hullStep(kind, {
    says,
    uses: layoutKeys,
    find: (hull, v) => find(jointsIn(hull, v), hull, v),
    meaning,
    source: GEOMETRY,
  });

const counted = (meaning: string, counts: (joint: Joint) => boolean) =>
  ofAll('count', 'counted', meaning, (joints) => joints.filter(counts).length);

export const joints = defineCell({
  id: 'joints',
  stage: 'timber',
  title: 'Where the joints fall',
  question:
    'Where along the boat do the scarfs fall, and do they stand clear of the hard bend, of the frames and of each other?',
  inputs: {
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
    frameClearance: rules('Clear of a frame by', '25 mm', '0 mm', '500 mm', `room for a clamp; ${PRACTICE}`),
    leastPiece: input('length', 'Shortest piece worth a scarf', {
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
  },
  steps: {
    usualEdge: hullStep('choice', {
      says: 'a keelson lies along the keel, a chine log along the lowest chine, clamp and rail along the sheer; without a chine all but the keelson along the sheer',
      uses: ['part'],
      options: 'longEdges',
      find: ({ edges }, { part }) => {
        if (part === 'keelson') return edges[0]!.name; // every hull has a keel
        return (part === 'chineLog' && edges.length > 2 ? edges[1]! : edges.at(-1)!).name;
      },
      meaning: 'edge along which this timber lies',
      source: 'custom of the trade',
    }),
    usualSides: hullStep('choice', {
      says: 'one along the keel, else a pair',
      uses: ['along'],
      find: (hull, { along }) => (hull.edge(String(along)).index === 0 ? 'one' : 'pair'),
      meaning: 'whether there is one such timber or a pair',
      source: 'custom of the trade',
    }),
    length: hullStep('length', {
      says: EDGE,
      uses: ['along'],
      find: (hull, { along }) => hull.edge(String(along)).length,
      meaning: 'length of the edge, before trimming the ends',
      source: GEOMETRY,
    }),
    taper: step('length', 'slope * thickness', 'length of one joint along the board', GEOMETRY),
    usualStagger: step(
      'length',
      'max(600 mm, 24 * thickness)',
      'least distance along the boat from a joint in the timber across',
      PRACTICE,
    ),
    plainPort: step('length', 'min(boardLength, length)', 'first board to port by the plain rule', PRACTICE),
    plainStarboard: step(
      'length',
      'boardLength >= length ? length : max(leastPiece, boardLength - max(0 mm, min(stagger, (boardLength - taper) / 2)))',
      'first board to starboard by the plain rule: short of a whole one by the distance asked, or by half of what one board adds',
      PRACTICE,
    ),
    bestPort: hullStep('length', {
      says: 'first boards are tried on both sides by the centimetre, at most 160 a side; the pair taken breaks the fewest rules; then has the fewest pieces, the easiest bend at its joints where the edge bends hard, the most room to the frames and to each other, the longest first boards',
      uses: searchKeys,
      find: (hull, v) => bestFirstBoards(hull, v).port,
      meaning: 'first board to port by the best pattern found',
      source: 'search through all tried',
    }),
    bestStarboard: hullStep('length', {
      says: 'the same search',
      uses: searchKeys,
      find: (hull, v) => bestFirstBoards(hull, v).starboard,
      meaning: 'first board to starboard by the best pattern found',
      source: 'search through all tried',
    }),
    proposedPort: step(
      'length',
      'laid == "best" ? bestPort : plainPort',
      'first board to port, proposed',
      'choice',
    ),
    proposedStarboard: step(
      'length',
      'laid == "best" ? bestStarboard : plainStarboard',
      'first board to starboard, proposed',
      'choice',
    ),
    piecesPort: hullStep('count', {
      says: 'counted, the last cut off at the end of the edge',
      uses: layoutKeys,
      find: (hull, v) => layoutOf(hull, v).port.pieces.length,
      meaning: 'pieces to port',
      source: GEOMETRY,
    }),
    piecesStarboard: hullStep('count', {
      says: 'counted; none where there is one timber only',
      uses: layoutKeys,
      find: (hull, v) => layoutOf(hull, v).starboard?.pieces.length ?? 0,
      meaning: 'pieces to starboard',
      source: GEOMETRY,
    }),
    shortest: hullStep('length', {
      says: 'the least of all pieces',
      uses: layoutKeys,
      find: (hull, v) => {
        const { port, starboard } = layoutOf(hull, v);
        return Math.min(port.shortest, starboard?.shortest ?? Infinity);
      },
      meaning: 'shortest piece, its tapers included',
      source: GEOMETRY,
    }),
    jointsAll: counted('joints of this timber, both sides', () => true),
    inHardBend: counted('joints in the hard bend', (joint) => joint.inHardBend),
    onFrames: counted('joints on a frame, or nearer to it than asked', (joint) => joint.onFrame),
    tooNear: counted('joints nearer to one across than asked', (joint) => joint.tooNear),
    amiss: counted('joints that break a rule', (joint) => faultsOf(joint) > 0),
    mostListed: ofAll('count', 'the larger of both sides', 'joints of one side', (all) =>
      Math.max(0, ...all.map(({ number }) => number)),
    ),
    worstShare: ofAll(
      'share',
      'the largest of all joints',
      'bend at the joint that bends hardest, as a share of the hardest bend of the edge',
      (all) => Math.max(0, ...all.map(({ share }) => share)),
    ),
    leastClear: ofAll(
      'length',
      'the least of all joints; the whole length where there is none',
      'least distance from a joint to a frame; below zero it lies on the frame',
      (all, hull, v) => Math.min(hull.edge(String(v['along'])).length, ...all.map(({ clear }) => clear)),
    ),
    leastApart: ofAll(
      'length',
      'the least of all joints; the whole length where there is none across',
      'least distance between joints of the two sides, middle to middle',
      (all, hull, v) => Math.min(hull.edge(String(v['along'])).length, ...all.map(({ apart }) => apart)),
    ),
    onTimber: ofJoint('count', 'whether the timber has it', '1 where there is such a joint', () => 1, none),
    at: ofJoint(
      'length',
      'half a taper short of the end of the board before it',
      'middle of this joint, from the after end along the edge',
      ({ at }) => at,
    ),
    starts: ofJoint(
      'length',
      'where the next board begins',
      'after end of its taper, from the after end of the edge',
      ({ from }) => from,
    ),
    radius: ofJoint(
      'length',
      'the tightest of the edge within the taper; flatter than 1 km counts as straight and is given as that',
      'radius of the edge at this joint',
      ({ bend }) => 1 / Math.max(bend, 1 / STRAIGHT),
      () => STRAIGHT,
    ),
    tightest: hullStep('length', {
      says: 'of the whole edge; flatter than 1 km counts as straight and is given as that',
      uses: ['along'],
      find: (hull, { along }) => Math.min(STRAIGHT, hull.edge(String(along)).leastRadius?.radius ?? STRAIGHT),
      meaning: 'tightest radius of the edge',
      source: GEOMETRY,
    }),
    bendRatio: step('ratio', 'tightest / thickness', 'tightest radius over the thickness', GEOMETRY),
    share: ofJoint(
      'share',
      'tightest radius of the edge over the radius here',
      'bend at this joint as a share of the hardest bend of the edge',
      ({ share }) => share,
      none,
    ),
    frame: hullStep('choice', {
      says: 'the nearest by the wood between',
      uses: [...layoutKeys, 'joint'],
      options: 'frames',
      find: (hull, v) => jointHere(hull, v)?.frame?.name ?? 'none',
      meaning: 'frame nearest to this joint',
      source: GEOMETRY,
    }),
    clear: ofJoint(
      'length',
      'from the end of the taper to the face of that frame, along the edge',
      'distance from this joint to that frame; below zero it lies on the frame',
      ({ clear }) => clear,
    ),
    apart: ofJoint(
      'length',
      'middle to middle; the whole length where there is none across',
      'distance to the nearest joint across',
      ({ apart }) => apart,
    ),
    verdict: hullStep('choice', {
      says: 'in the hard bend: from the share given, where the bend is not easy; on or too near a frame; too near a joint across',
      uses: [...layoutKeys, 'joint'],
      find: (hull, v) => {
        const joint = jointHere(hull, v);
        return joint ? verdictOf(joint) : 'no such joint';
      },
      meaning: 'what speaks against this place',
      source: PRACTICE,
    }),
  },
  answers: [
    {
      of: 'portFirst',
      label: 'first board to port',
      from: 'from the after end, along the outer face, its taper included',
      tolerance: '5 mm',
    },
    {
      of: 'starboardFirst',
      label: 'first board to starboard',
      from: 'from the after end, along the outer face, its taper included',
      tolerance: '5 mm',
    },
    { of: 'amiss', label: 'joints amiss', from: 'in the hard bend, on a frame or too near one across' },
  ],
  inWords: [
    {
      when: 'jointsAll == 0',
      says: 'A board of {boardLength} reaches the whole {length} of the {along}: no joint.',
    },
    {
      when: 'sides == "one" and amiss == 0',
      says: `${BEGIN_ONE} Every joint stands {leastClear} or more from a frame. ${BEND}`,
    },
    { when: 'sides == "one"', says: `${BEGIN_ONE} ${AMISS}.` },
    {
      when: 'amiss == 0',
      says: `${BEGIN_PAIR} Every joint stands {leastClear} or more from a frame and {leastApart} or more from one across. ${BEND}`,
    },
    { says: `${BEGIN_PAIR} ${AMISS}, too near one across {tooNear}.` },
  ],
  table: {
    caption: 'The joints: running distances from the after end',
    over: 'joint',
    only: 'onTimber',
    columns: [
      { of: 'starts', label: 'taper begins' },
      { of: 'at', label: 'middle' },
      { of: 'radius', label: 'radius there' },
      { of: 'share', label: 'of the hardest bend' },
      { of: 'frame', label: 'nearest frame' },
      { of: 'clear', label: 'clear of it' },
      { of: 'verdict', label: 'the place is' },
    ],
  },
  warnings: [
    {
      when: 'boardLength < length and boardLength < 2 * taper',
      says: 'A board of {boardLength} is too short for a taper of {taper} at both ends.',
      limit: GEOMETRY,
      weight: 'stop',
    },
    {
      when: 'onFrames > 0',
      says: 'Joints on a frame or within {frameClearance} of it: {onFrames}. A notch cut there opens the glue line.',
      limit: `no joint at a frame notch: ${PRACTICE}`,
      weight: 'mind',
    },
    {
      when: 'inHardBend > 0',
      says: 'Joints in the hard bend: {inHardBend}, the worst at {worstShare} of the hardest. The tightest radius is {tightest}.',
      limit: `no joint at the peak of the bend: ${PRACTICE}`,
      weight: 'mind',
    },
    {
      when: 'tooNear > 0',
      says: 'Joints of the two sides stand {leastApart} apart; {stagger} is wanted.',
      limit: `600 mm or 24 thicknesses: ${PRACTICE}`,
      weight: 'mind',
    },
    {
      when: 'jointsAll > 0 and shortest < leastPiece',
      says: 'One piece is only {shortest} long, under {leastPiece}: too little to bend with the rest.',
      limit: PRACTICE,
      weight: 'mind',
    },
    {
      when: `mostListed > ${LISTED}`,
      says: 'A side has {mostListed} joints; the table lists six. Longer boards make fewer.',
      limit: 'the table holds six joints a side',
      weight: 'mind',
    },
  ],
  cautions: [
    'Old rules for planked boats ask for more: scarfs of neighbouring planks 1.2 m apart or more, and three whole planks between two in one section.',
    'Let the feather edge on the outside of a skin or a rail point aft, so that nothing catches it.',
    'A joined board does not bend like a whole one: the joint is stiffer and weaker. Bend it slowly, clamp the joint itself, and stand out of its line.',
    'The edge is measured on the lines; check on the jig with a tape along the bend before you cut, and cut the end of the last board last.',
  ],
  sources: [
    {
      text: 'Length, bend and frames of the edge from the hull; boards lapped by a taper',
      known: 'geometry',
    },
    {
      text: 'Joints 600 mm or 24 thicknesses apart, none at the peak of the bend or at a frame notch; hard from three quarters of the hardest bend; easy from 200 thicknesses',
      known: 'common practice',
    },
    {
      text: 'Lloyd’s rules for yachts, as quoted: plank scarfs 1.2 m apart, three strakes between',
      known: 'published',
    },
  ],
  lights: ['{part}', '{along}'],
  draw: drawJoints,
  chart: bendChart,
  offers: ({ laid }) =>
    laid === 'best'
      ? [{ label: 'Whole boards from aft, as they come', changes: { '{self}.laid': 'plain' } }]
      : [{ label: 'The best pattern found', changes: { '{self}.laid': 'best' } }],
});
