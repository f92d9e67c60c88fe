/** What the joints of a long timber are asked for: its boards, and the rules that its joints are held to. */
import type { Option } from '../../../boat';
import { stands } from '../../../boat/quantities/frame-stands';
import type { KindId } from '../../../measure';
import { choice, input, type InputSpec } from '../../form/define';
import { longPartOptions } from '../../common/wood/long-parts';

/** Joints that the table holds a side. */
export const LISTED = 6;

const jointOptions: readonly Option[] = (['port', 'starboard'] as const).flatMap((side) =>
  Array.from({ length: LISTED }, (_, i) => ({ id: `${side}${i + 1}`, label: `${side} ${i + 1}` })),
);

/** A number of the plan of pieces: what is typed here holds for all cells. */
const ofPlan = <K extends KindId>(
  kind: K,
  label: string,
  from: string,
  more: Pick<InputSpec, 'preset' | 'min' | 'max' | 'step' | 'note' | 'bound'>,
) => input(kind, label, { from, ofBoat: true, ...more });

export const jointInputs = {
  part: choice('Long timber', { options: longPartOptions, preset: 'sheerClamp' }),
  boardLength: ofPlan('length', 'Length of one board', '{part}.boardLength', {
    preset: '2.4 m',
    min: '300 mm',
    max: '12 m',
    step: '100 mm',
  }),
  portFirst: ofPlan('length', 'First board to port', '{part}.portFirst', {
    preset: '2.4 m',
    min: '10 mm',
    max: '100 m',
    step: '10 mm',
    note: 'from its after end, taper and trimming included; type another and see where the joints go',
  }),
  starboardFirst: ofPlan('length', 'First board to starboard', '{part}.starboardFirst', {
    preset: '1.8 m',
    min: '10 mm',
    max: '100 m',
    step: '10 mm',
    note: 'the same; not used where there is only one timber',
  }),
  joint: choice('Joint', { options: jointOptions, preset: 'port1', note: 'counted from aft' }),
  along: choice('Along', {
    options: 'longEdges',
    from: '{part}.edge',
    preset: 'sheer',
    note: 'of two chines, the one looked at: the logs on both begin with the same boards',
  }),
  thickness: ofPlan('length', 'Board thickness', '{part}.thickness', {
    preset: '19 mm',
    min: '1 mm',
    max: '150 mm',
    step: '1 mm',
  }),
  slope: ofPlan('slope', 'Slope', 'pieces.slope', {
    preset: '8',
    min: '4',
    max: '20',
    step: '1',
  }),
  trim: ofPlan('length', 'Left for trimming, both ends together', 'pieces.trim', {
    preset: '50 mm',
    min: '0 mm',
    max: '1 m',
    step: '10 mm',
  }),
  stagger: ofPlan('length', 'Least distance between joints of a pair', '{part}.stagger', {
    bound: 'least',
    preset: '600 mm',
    min: '0 mm',
    max: '6 m',
    step: '50 mm',
  }),
  more: ofPlan('count', 'Extra pieces allowed', 'pieces.more', {
    preset: '1',
    min: '0',
    max: '3',
    step: '1',
    note: 'on a side, where that keeps joints clear',
  }),
  hardShare: ofPlan('share', 'Share of the hardest bend that counts as hard', 'pieces.hardShare', {
    preset: '75 %',
    min: '10 %',
    max: '100 %',
    step: '5 %',
  }),
  easyBend: ofPlan('number', 'Radius from which a bend is easy, in thicknesses', 'bending.easyFrom', {
    preset: '200',
    min: '10',
    max: '2000',
    step: '10',
    note: 'there no stretch counts as hard',
  }),
  frameClearance: ofPlan('length', 'Clearance to a frame', 'pieces.frameClearance', {
    bound: 'least',
    preset: '25 mm',
    min: '0 mm',
    max: '500 mm',
    step: '10 mm',
  }),
  leastPiece: ofPlan('length', 'Shortest piece worth a scarf', 'pieces.least', {
    bound: 'least',
    preset: '600 mm',
    min: '50 mm',
    max: '3 m',
    step: '50 mm',
  }),
  siding: ofPlan('length', 'Frame thickness', 'frame.siding', {
    preset: '19 mm',
    min: '3 mm',
    max: '150 mm',
    step: '1 mm',
  }),
  stands: choice('Frames stand', {
    from: 'frame.stands',
    ofBoat: true,
    options: stands,
    preset: 'custom',
  }),
} as const;
