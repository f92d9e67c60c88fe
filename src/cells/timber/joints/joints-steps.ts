/** What follows from the boards laid along the edge: of each joint, and of all of them together. */
import type { Hull } from '../../../boat';
import { faultsOf, type Joint, verdictOf } from '../../../boat/joinery/joint-layout';
import { hullStep, step, type Values } from '../../form/define';
import { layoutKeys, layoutOf } from './joints-in-hand';

const GEOMETRY = 'geometry';
const EDGE = 'the batten of the edge, measured along its bend';
const PRACTICE = 'common practice, no source';

/** A timber bent flatter than this counts as straight, m. */
const STRAIGHT = 1000;

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

export const jointSteps = {
  sides: hullStep('choice', {
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
  mostPieces: step(
    'count',
    '(boardLength > taper ? max(1, ceil((length + trim - taper) / (boardLength - taper) - 0.001)) : 1) + more',
    'pieces that a side may have in the best pattern',
    'geometry: n boards less n - 1 tapers, and as many more as asked; a thousandth of a board is forgiven',
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
  piecesMost: step(
    'count',
    'max(piecesPort, piecesStarboard)',
    'pieces of a side, the side with more',
    GEOMETRY,
  ),
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
  leastClear: {
    ...ofAll(
      'length',
      'the least of all joints; the whole length where there is none',
      'least distance from a joint to a frame; below zero it lies on the frame',
      (all, hull, v) => Math.min(hull.edge(String(v['along'])).length, ...all.map(({ clear }) => clear)),
    ),
    bound: 'most',
  },
  leastApart: {
    ...ofAll(
      'length',
      'the least of all joints; the whole length where there is none across',
      'least distance between joints of the two sides, middle to middle',
      (all, hull, v) => Math.min(hull.edge(String(v['along'])).length, ...all.map(({ apart }) => apart)),
    ),
    bound: 'most',
  },
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
    'the tightest of the edge within the taper; flatter than 1 km (3280 ft) counts as straight and is given as that',
    'radius of the edge at this joint',
    ({ bend }) => 1 / Math.max(bend, 1 / STRAIGHT),
    () => STRAIGHT,
  ),
  tightest: hullStep('length', {
    says: 'of the whole edge; flatter than 1 km (3280 ft) counts as straight and is given as that',
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
} as const;
