/** Notches: depth and slopes against the geometry of planes, passes against the custom of the trade. */
import { limber } from '../../src/cells/frames/limber';
import { notch } from '../../src/cells/frames/notch';
import { keepOutsOf } from '../../src/boat/joinery/keep-outs';
import { clearOf } from '../../src/kernel';
import { box, hullThrough } from '../boat/shapes';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const deg = (radians: number) => (radians * 180) / Math.PI;
const mm = (metres: number) => metres * 1000;
const PRACTICE = 'common practice, no source';

/** A frame with plumb sides and level, parallel lines, but for what is written; no play. */
const plainFrame = {
  thickness: '19 mm',
  width: '38 mm',
  siding: '19 mm',
  moulded: '90 mm',
  fit: '0 mm',
  flare: '0 deg',
  deadrise: '0 deg',
  chinePlan: '0',
  chineProfile: '0',
  sheerFlare: '0 deg',
  sheerPlan: '0',
  sheerProfile: '0',
};
const cut = (entries: Record<string, string>) => tryCell(notch, { ...plainFrame, ...entries });

/** The usual sheer clamp, 3/4 by 1 1/2 in, sawn with a common blade. */
const usualClamp = () =>
  cut({ timber: 'sheerClamp', thickness: '3/4 in', width: '1 1/2 in', siding: '3/4 in', fit: '0.3 mm' });

const scantlings: Readonly<Record<string, number>> = {
  'frame.siding': 0.019,
  'frame.moulded': 0.07,
  'frame.aboveSheer': 0,
  'frame.limberWidth': 0.0127,
  'frame.limberDrill': 0.0127,
  'frame.screwClearance': 3 * 0.164 * 0.0254,
  'keelson.width': 5.5 * 0.0254,
  'keelson.thickness': 1.5 * 0.0254,
  'chineLog.thickness': 0.019,
  'chineLog.width': 0.038,
  'sheerClamp.thickness': 0.019,
  'sheerClamp.width': 0.038,
  'bottom.thickness': 0,
  'side.thickness': 0,
};

/** Two limbers of 10 by 20 mm, each with its corner of radius 1.6 mm made good in the width. */
const level = {
  keelsonThickness: '20 mm',
  limberWidth: '10 mm + (1 - pi / 4) * (1/16 in)^2 / 20 mm',
  holeDiameter: '1/8 in',
  head: '20 mm',
  bucket: '10 L',
  deadrise: '0 deg',
  keelSlope: '0',
};

export const rows: readonly Check[] = [
  {
    id: 'F4',
    cell: 'notch',
    what: 'notch for a 3/4 in sheer clamp: height of the blade',
    input: 'clamp 3/4 × 1 1/2 in, plumb and parallel',
    expected: [0.75],
    unit: 'in',
    tolerance: 1e-9,
    source: `${PRACTICE}: sawn to 3/4 in`,
    known: 'common practice',
    obtain: () => [usualClamp().number('bladeHeight') / 0.0254],
  },
  {
    id: 'F11',
    cell: 'notch',
    what: 'passes of the saw for the same notch, before it is chiselled out',
    input: 'kerf 1/8 in, lands of at most 3/16 in, play 0.3 mm',
    expected: [6],
    unit: '',
    tolerance: 0,
    source: `${PRACTICE}: about six passes`,
    known: 'common practice',
    obtain: () => [usualClamp().number('passes')],
  },
  {
    id: 'F5',
    cell: 'notch',
    what: 'one face of a notch deeper than the other',
    input: 'frame 19 mm, floor sloping 12°',
    expected: [4.04],
    unit: 'mm',
    tolerance: 0.005,
    source: 'thickness × tan(slope)',
    known: 'closed form',
    obtain: () => {
      const sloping = cut({ chinePlan: 'tan(12 deg)' });
      return [mm(sloping.number('farDepth') - sloping.number('nearDepth'))];
    },
  },
  {
    id: 'F6',
    cell: 'notch',
    what: 'depth square to the section of a thickness square to the skin',
    input: '9 mm under a bevel of 20°',
    expected: [9.58],
    unit: 'mm',
    tolerance: 0.005,
    source: 'thickness / cos(bevel)',
    known: 'closed form',
    obtain: () => [mm(cut({ thickness: '9 mm', chinePlan: 'tan(20 deg)' }).number('nearDepth'))],
  },
  {
    id: 'F7',
    cell: 'notch',
    what: 'slope of the notch’s floor, level and rising line',
    input: 'flare 20°, plan 10°; the same, profile 3°',
    expected: [9.408, 8.406],
    unit: 'deg',
    tolerance: 0.001,
    source: 'plane geometry of the two normals',
    known: 'closed form',
    obtain: () =>
      ['0', 'tan(3 deg)'].map((chineProfile) =>
        deg(cut({ flare: '20 deg', chinePlan: 'tan(10 deg)', chineProfile }).number('bevel')),
      ),
  },
  {
    id: 'F8',
    cell: 'notch',
    what: 'strength and stiffness left behind a notch',
    input: '20 mm out of 90 mm',
    expected: [0.605, 0.4705],
    unit: '',
    tolerance: 0.0005,
    source: 'rectangle: (1 - n/d)², (1 - n/d)³',
    known: 'closed form',
    obtain: () => {
      const deep = cut({ thickness: '20 mm' });
      return [deep.number('modulusLeft'), deep.number('stiffnessLeft')];
    },
  },
  {
    id: 'F9',
    cell: 'boat',
    what: 'where the slot and its limbers, with three screw diameters round them, keep screws out: from the centreline, and above the bottom',
    input: 'keelson 5 1/2 × 1 1/2 in, limbers and holes 1/2 in; No. 8 screws, 0.164 in',
    expected: [3.25 + 0.492, 1.5 + 0.492],
    unit: 'in',
    tolerance: 1e-9,
    source: `${PRACTICE}: slot 6 1/2 in wide, three diameters`,
    known: 'common practice',
    obtain: () => {
      const [slot] = keepOutsOf(hullThrough(box(3, 1, 0.4)), 'station2', (name) => scantlings[name]!);
      return slot ? [slot.box.outboard / 0.0254, slot.box.upper / 0.0254] : [];
    },
  },
  {
    id: 'F10',
    cell: 'boat',
    what: 'how far a screw stands from what is kept free',
    input: 'its middle 0.5 in outboard of the slot of F9, at half its height',
    expected: [0.5],
    unit: 'in',
    tolerance: 1e-9,
    source: 'distance of a point from a rectangle beside it',
    known: 'closed form',
    obtain: () => {
      const [slot] = keepOutsOf(hullThrough(box(3, 1, 0.4)), 'station2', (name) => scantlings[name]!);
      return slot ? [clearOf(slot.outline, [3.75 * 0.0254, 0.75 * 0.0254]) / 0.0254] : [];
    },
  },
  {
    id: 'F12',
    cell: 'limber',
    what: 'share of the clear area’s ideal flow, A √(2 g h), that a sharp-edged opening passes',
    input: 'the coefficient as the cell has it',
    expected: [0.62],
    unit: '',
    tolerance: 0.001,
    source:
      'W. C. Unwin, Hydraulics, in Encyclopaedia Britannica, 11th edition (1910), § 17: 0.97 × 0.64 = 0.62',
    known: 'published',
    obtain: () => {
      const tried = tryCell(limber, level);
      const ideal = tried.number('clearArea') * Math.sqrt(2 * 9.80665 * tried.number('head'));
      return [tried.number('flow') / ideal];
    },
  },
  {
    id: 'F13',
    cell: 'limber',
    what: 'a puddle on a level bottom runs out',
    input: '10 L, 20 mm deep, so 0.5 m² wide; 400 mm² clear, coefficient 0.6',
    expected: [133.06],
    unit: 's',
    tolerance: 0.01,
    source: 'Torricelli’s law for an upright-sided tank: A / (c a) × √(2 h / g)',
    known: 'closed form',
    obtain: () => [tryCell(limber, { ...level, coefficient: '0.6' }).number('drainTime')],
  },
];
