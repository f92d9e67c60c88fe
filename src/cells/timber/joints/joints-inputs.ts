/** What the joints of a long timber are asked for: its boards, and the rules that its joints are held to. */
import type { Option } from '../../../boat';
import { choice } from '../../form/define';
import { chosenFromBoat, fromBoat, fromShop, type OfBoat } from '../../form/from-boat';
import { longPartOptions } from '../../common/wood/long-parts';

/** Joints that the table holds a side. */
export const LISTED = 6;

const jointOptions: readonly Option[] = (['port', 'starboard'] as const).flatMap((side) =>
  Array.from({ length: LISTED }, (_, i) => ({ id: `${side}${i + 1}`, label: `${side} ${i + 1}` })),
);

/** A number of the plan of pieces. */
const ofPlan = (link: string, more: OfBoat = {}) => fromBoat(link, { ...more });

export const jointInputs = {
  part: choice('Long timber', { options: longPartOptions, preset: 'sheerClamp' }),
  boardLength: fromBoat('{part}.boardLength'),
  portFirst: fromBoat('{part}.portFirst', { hint: 'type another and see where the joints go' }),
  starboardFirst: fromBoat('{part}.starboardFirst', { hint: 'not used where there is only one timber' }),
  joint: choice('Joint', { options: jointOptions, preset: 'port1', note: 'counted from aft' }),
  along: choice('Along', {
    options: 'longEdges',
    from: '{part}.edge',
    preset: 'sheer',
    note: 'of two chines, the one looked at: the logs on both begin with the same boards',
  }),
  thickness: ofPlan('{part}.thickness'),
  slope: ofPlan('pieces.slope'),
  trim: ofPlan('pieces.trim'),
  stagger: ofPlan('{part}.stagger', { bound: 'least' }),
  more: ofPlan('pieces.more'),
  hardShare: ofPlan('pieces.hardShare'),
  easyBend: fromShop('easyFrom', { hint: 'there no stretch counts as hard' }),
  frameClearance: ofPlan('pieces.frameClearance', { bound: 'least' }),
  leastPiece: ofPlan('pieces.least', { bound: 'least' }),
  siding: ofPlan('frame.siding'),
  stands: chosenFromBoat('frame.stands'),
} as const;
