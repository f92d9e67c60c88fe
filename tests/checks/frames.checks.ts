/** Frames: bevels, the chine log, limbers and what a notch leaves, through the cells that give them. */
import { bevels } from '../../src/cells/frames/bevels';
import { limber } from '../../src/cells/frames/limber';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const deg = (radians: number) => (radians * 180) / Math.PI;
const inches = (metres: number) => metres / 0.0254;

/** A plumb-sided, flat-bottomed frame with level, parallel lines, but for what is written. */
const plainFrame = {
  flare: '0 deg',
  sheerFlare: '0 deg',
  deadrise: '0 deg',
  chinePlan: '0',
  chineProfile: '0',
  sheerPlan: '0',
  sheerProfile: '0',
};
const bevel = (entries: Record<string, string>) => tryCell(bevels, { ...plainFrame, ...entries });

/** Keelson 5 1/2 by 1 1/2 in, limbers and holes of 1/2 in. */
const commonSlot = () =>
  tryCell(limber, {
    keelsonWidth: '5 1/2 in',
    keelsonThickness: '1 1/2 in',
    limberWidth: '1/2 in',
    holeDiameter: '1/2 in',
    frameDepth: '5 1/2 in',
    deadrise: '0 deg',
    keelSlope: '0',
  });
const COMMON = 'common practice, no source';
const NORMALS = 'plane geometry of the two normals';

export const rows: readonly Check[] = [
  {
    id: 'B1',
    cell: 'bevels',
    what: 'bevel, level profile',
    input: 'flare 20°, plan 10°',
    expected: [9.408],
    unit: 'deg',
    tolerance: 0.001,
    source: NORMALS,
    known: 'closed form',
    obtain: () => [deg(bevel({ flare: '20 deg', chinePlan: 'tan(10 deg)' }).number('chineBevel'))],
  },
  {
    id: 'B2',
    cell: 'bevels',
    what: 'bevel, rising profile',
    input: 'flare 20°, plan 10°, profile 3°',
    expected: [8.406],
    unit: 'deg',
    tolerance: 0.001,
    source: NORMALS,
    known: 'closed form',
    obtain: () => [
      deg(
        bevel({ sheerFlare: '20 deg', sheerPlan: 'tan(10 deg)', sheerProfile: 'tan(3 deg)' }).number(
          'sheerBevel',
        ),
      ),
    ],
  },
  {
    id: 'B13',
    cell: 'bevels',
    what: 'one face of a notch or edge deeper than the other',
    input: 'frame 19 mm, slope 12°',
    expected: [4.039],
    unit: 'mm',
    tolerance: 0.001,
    source: 'thickness × tan(slope)',
    known: 'closed form',
    obtain: () => [bevel({ siding: '19 mm', chinePlan: 'tan(12 deg)' }).number('chineRemoval') * 1000],
  },
  {
    id: 'B14',
    cell: 'bevels',
    what: 'angle at the chine of parallel lines',
    input: 'flare 25°, deadrise 15°',
    expected: [130],
    unit: 'deg',
    tolerance: 1e-6,
    source: '90° + flare + deadrise in a section square to the log',
    known: 'closed form',
    obtain: () => [deg(bevel({ flare: '25 deg', deadrise: '15 deg' }).number('chineAngle'))],
  },
  {
    id: 'B17',
    cell: 'bevels',
    what: 'bevel of a plumb side is its angle in plan',
    input: 'flare 0°, plan 12°',
    expected: [12],
    unit: 'deg',
    tolerance: 1e-6,
    source: NORMALS,
    known: 'closed form',
    obtain: () => [deg(bevel({ chinePlan: 'tan(12 deg)' }).number('chineBevel'))],
  },
  {
    id: 'W86',
    cell: 'bevels',
    what: 'planed off a frame',
    input: 'siding 19 mm, bevel 20°',
    expected: [6.92],
    unit: 'mm',
    tolerance: 0.01,
    source: 'thickness × tan(bevel)',
    known: 'closed form',
    obtain: () => [bevel({ siding: '19 mm', sheerPlan: 'tan(20 deg)' }).number('sheerRemoval') * 1000],
  },
  {
    id: 'F1',
    cell: 'limber',
    what: 'limber hole from the centreline, and above the bottom',
    input: 'keelson 5 1/2 × 1 1/2 in, limbers 1/2 in, holes 1/2 in',
    expected: [3, 1.25],
    unit: 'in',
    tolerance: 1e-9,
    source: COMMON,
    known: 'common practice',
    obtain: () => [
      inches(commonSlot().number('holeFromCentre')),
      inches(commonSlot().number('holeAboveBottom')),
    ],
  },
  {
    id: 'F2',
    cell: 'limber',
    what: 'slot: width, and depth the saw is set to',
    input: 'keelson 5 1/2 × 1 1/2 in, limbers 1/2 in, holes 1/2 in',
    expected: [6.5, 1.5],
    unit: 'in',
    tolerance: 1e-9,
    source: COMMON,
    known: 'common practice',
    obtain: () => [inches(commonSlot().number('slotWidth')), inches(commonSlot().number('cutDepth'))],
  },
  {
    id: 'W69',
    cell: 'limber',
    what: 'strength and stiffness left over a notch',
    input: '20 mm out of 90 mm',
    expected: [0.605, 0.4705],
    unit: '',
    tolerance: 0.0005,
    source: 'rectangle: (1 - n/d)², (1 - n/d)³',
    known: 'closed form',
    obtain: () => {
      const tried = tryCell(limber, {
        keelsonThickness: '20 mm',
        frameDepth: '90 mm',
        deadrise: '0 deg',
        keelSlope: '0',
      });
      return [tried.number('modulusLeft'), tried.number('stiffnessLeft')];
    },
  },
  {
    id: 'W72',
    cell: 'limber',
    what: 'water through limbers',
    input: '400 mm² clear, 20 mm of water standing before them',
    expected: [9.02],
    unit: 'L/min',
    tolerance: 0.02,
    source: 'Q = 0.6 A √(2 g h)',
    known: 'closed form',
    // Two limbers of 10 by 20 mm, each with its corner of radius 1.6 mm made good in the width.
    obtain: () => [
      tryCell(limber, {
        keelsonThickness: '20 mm',
        limberWidth: '10 mm + (1 - pi / 4) * (1/16 in)^2 / 20 mm',
        holeDiameter: '1/8 in',
        head: '20 mm',
        coefficient: '0.6',
        deadrise: '0 deg',
        keelSlope: '0',
      }).number('flow') * 60000,
    ],
  },
];
