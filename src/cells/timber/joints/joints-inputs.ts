/** What the joints of a long timber are asked for: its boards, and the rules that its joints are held to. */
import { choice, input } from '../../form/define';
import { fromBoat } from '../../form/from-boat';
import { chosenFromBoat, fromShop } from '../../form/from-shop';
import { longPartOptions } from '../../common/wood/long-parts';

export const jointInputs = {
  part: choice('Long timber', { options: longPartOptions, preset: 'sheerClamp' }),
  boardLength: fromBoat('{part}.boardLength'),
  portFirst: fromBoat('{part}.portFirst', { hint: 'type another and see where the joints go' }),
  starboardFirst: fromBoat('{part}.starboardFirst', { hint: 'not used where there is only one timber' }),
  joint: input('count', 'Joint looked at', {
    preset: '1',
    min: '1',
    max: '999',
    step: '1',
    note: 'counted from aft, port before starboard',
  }),
  along: choice('Along', {
    options: 'longEdges',
    from: '{part}.edge',
    preset: 'sheer',
    note: 'of two chines, the one looked at: the logs on both begin with the same boards',
  }),
  thickness: fromBoat('{part}.thickness'),
  slope: fromBoat('pieces.slope'),
  trim: fromBoat('pieces.trim'),
  stagger: fromBoat('{part}.stagger', { bound: 'least' }),
  more: fromBoat('pieces.more'),
  hardShare: fromBoat('pieces.hardShare'),
  easyBend: fromShop('easyFrom', { hint: 'there no stretch counts as hard' }),
  frameClearance: fromBoat('pieces.frameClearance', { bound: 'least' }),
  leastPiece: fromBoat('pieces.least', { bound: 'least' }),
  siding: fromBoat('frame.siding'),
  stands: chosenFromBoat('frame.stands'),
} as const;
