/** What follows from the boards laid along the edge: of each joint, and of all of them together. */
import { faultsOf, type Joint, verdictOf } from '../../../boat/joinery/joint-layout';
import { step, type ValuesOf } from '../../form/define';
import { fact, tell } from '../../form/fact';
import { edge, type JointsAsked, layout } from './joints-facts';
import type { jointInputs } from './joints-inputs';
import { GEOMETRY } from '../../../trade/sources';

/** A timber bent flatter than this counts as straight, m. */
const STRAIGHT = 1000;
const AS_STRAIGHT = 'flatter than 1 km (3280 ft) counts as straight and is given as that';

/** The joint in hand; none where the timber has no such joint. */
const here = fact('of the joints as laid', GEOMETRY, ({ joint }: JointsAsked, { ask }) => ({
  found: ask(layout).joints[joint - 1],
  length: ask(edge).length,
}));

/** Something of the joint in hand, or of a place beyond the timber's end. */
const ofJoint = (
  kind: 'length' | 'share' | 'count',
  how: string,
  meaning: string,
  part: (joint: Joint) => number,
  otherwise?: number,
) => tell(here, kind, meaning, ({ found, length }) => (found ? part(found) : (otherwise ?? length)), { how });

const counted = (meaning: string, counts: (joint: Joint) => boolean) =>
  tell(layout, 'count', meaning, ({ joints }) => joints.filter(counts).length, { how: 'counted' });

export const jointSteps = {
  sides: tell(
    edge,
    'choice',
    'whether there is one such timber or a pair',
    ({ index }) => (index === 0 ? 'one' : 'pair'),
    { how: 'one along the keel, else a pair', source: 'custom of the trade' },
  ),
  length: tell(edge, 'length', 'length of the edge, before trimming the ends', ({ length }) => length),
  taper: step('length', 'slope * thickness', 'length of one joint along the board', GEOMETRY),
  mostPieces: step(
    'count',
    '(boardLength > taper ? max(1, ceil((length + trim - taper) / (boardLength - taper) - 0.001)) : 1) + more',
    'pieces that a side may have in the best pattern',
    'geometry: n boards less n - 1 tapers, and as many more as asked; a thousandth of a board is forgiven',
  ),

  piecesPort: tell(layout, 'count', 'pieces to port', ({ port }) => port.pieces.length),
  piecesStarboard: tell(
    layout,
    'count',
    'pieces to starboard; none where there is one timber only',
    ({ starboard }) => starboard?.pieces.length ?? 0,
  ),
  piecesMost: step(
    'count',
    'max(piecesPort, piecesStarboard)',
    'pieces of a side, the side with more',
    GEOMETRY,
  ),

  shortest: tell(
    layout,
    'length',
    'shortest piece, its tapers included',
    ({ port, starboard }) => Math.min(port.shortest, starboard?.shortest ?? Infinity),
    { how: 'the least of all pieces' },
  ),
  jointsAll: counted('joints of this timber, both sides', () => true),
  inHardBend: counted('joints in the hard bend', (joint) => joint.inHardBend),
  onFrames: counted('joints on a frame, or nearer to it than asked', (joint) => joint.onFrame),
  tooNear: counted('joints nearer to one across than asked', (joint) => joint.tooNear),
  amiss: counted('joints that break a rule', (joint) => faultsOf(joint) > 0),
  worstShare: tell(
    layout,
    'share',
    'bend at the joint that bends hardest, as a share of the hardest bend of the edge',
    ({ joints }) => Math.max(0, ...joints.map(({ share }) => share)),
    { how: 'the largest of all joints' },
  ),
  leastClear: tell(
    layout,
    'length',
    'least distance from a joint to a frame; below zero it lies on the frame',
    ({ timber, joints }) => Math.min(timber.edge.length, ...joints.map(({ clear }) => clear)),
    { bound: 'most', how: 'the least of all joints; the whole length where there is none' },
  ),
  leastApart: tell(
    layout,
    'length',
    'least distance between joints of the two sides, middle to middle',
    ({ timber, joints }) => Math.min(timber.edge.length, ...joints.map(({ apart }) => apart)),
    { bound: 'most', how: 'the least of all joints; the whole length where there is none across' },
  ),
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
    `the tightest of the edge within the taper; ${AS_STRAIGHT}`,
    'radius of the edge at this joint',
    ({ bend }) => 1 / Math.max(bend, 1 / STRAIGHT),
    STRAIGHT,
  ),
  tightest: tell(
    edge,
    'length',
    'tightest radius of the edge',
    ({ leastRadius }) => Math.min(STRAIGHT, leastRadius?.radius ?? STRAIGHT),
    { how: `of the whole edge; ${AS_STRAIGHT}` },
  ),
  bendRatio: step('ratio', 'tightest / thickness', 'tightest radius over the thickness', GEOMETRY),

  share: ofJoint(
    'share',
    'tightest radius of the edge over the radius here',
    'bend at this joint as a share of the hardest bend of the edge',
    ({ share }) => share,
    0,
  ),
  frame: tell(here, 'choice', 'frame nearest to this joint', ({ found }) => found?.frame?.name ?? 'none', {
    options: 'frames',
    how: 'the nearest by the wood between',
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
  verdict: tell(
    here,
    'choice',
    'what speaks against this place',
    ({ found }) => (found ? verdictOf(found) : 'no such joint'),
    {
      how: 'in the hard bend: from the share given, where the bend is not easy; on or too near a frame; too near a joint across',
      source: 'common practice, no source',
    },
  ),
} as const;

/** All that the drawings and offers of the cell go by. */
export type JointsValues = ValuesOf<typeof jointInputs, typeof jointSteps>;
