/** What the cell of the clamps asks for. */
import { choice, input } from '../../form/define';
import { woodAlong, joinedAlong } from './glued-joints';
import { singleJoints } from './joint-list';

import { FILLS, ofGlue } from '../../common/glue/glues';
import { chosenFromBoat, chosenFromShop, fromShop } from '../../form/from-shop';
import { spreadTime, clampTime } from '../../../trade/adhesives';
import { citation } from '../../../trade/table';
import { measures } from '../../common/sizes/custom-sizes';

/** From the glue cell, which knows the boat's joints. */
const ofJoint = (
  key: string,
  label: string,
  preset: string,
  [min, max]: readonly [string, string],
  note?: string,
) =>
  input('length', label, {
    from: `glue.{joint}.${key}`,
    preset,
    min,
    max,
    step: key === 'pieceLength' ? '100 mm' : '1 mm',
    ...(note === undefined ? {} : { note }),
  });

const radiusOf = (part: string, label: string) =>
  input('length', `${label}: tightest radius`, {
    when: `(${joinedAlong(part)}) and places <= 1 and radius == jointRadius`,
    ofBoat: true,
    from: `${part}.edgeRadius`,
    preset: '1 km',
    min: '20 mm',
    max: '1 km',
    step: '50 mm',
    note: '1 km (3280 ft) where it is straight',
  });

/** What a glue asks of clamps: one that fills gaps to be closed, a rigid one an even pressure by the wood. */
const FILLING = `mostGap >= ${FILLS}`;

const RIGID = `mostGap < ${FILLS}`;

/** Where it bends, clamps on a run stand closer. */
const ONE_RUN = 'places <= 1';

export const clampInputs = {
  joint: choice('What is glued to what', { options: singleJoints, preset: 'logFrames' }),
  length: ofJoint(
    'pieceLength',
    'Length of the joint, one piece',
    '4.2 m',
    ['0 m', '400 m'],
    'all its places together',
  ),
  places: input('count', 'Places where it is glued', {
    from: 'glue.{joint}.places',
    preset: '1',
    min: '1',
    max: '100',
    step: '1',
    note: 'a solid timber: the frames and the ends; 1 for a run all along',
  }),
  pieces: input('count', 'Pieces, one glued after the other', {
    from: 'glue.{joint}.pieces',
    preset: '1',
    min: '1',
    max: '40',
    step: '1',
    note: 'the clamps are counted for one of them',
  }),
  width: ofJoint('jointWidth', 'Width of the glue face', '38 mm', ['0 mm', '1 m']),
  ply: ofJoint(
    'above',
    'Thickness above the glue',
    '19 mm',
    ['0 mm', '500 mm'],
    'of a stack, its outer layer',
  ),
  radius: input('length', 'Radius, tightest', {
    when: ONE_RUN,
    from: '{self}.jointRadius',
    preset: '5 m',
    min: '20 mm',
    max: '1 km',
    step: '50 mm',
  }),
  caul: fromShop('caul'),
  glue: chosenFromShop('glue'),
  species: chosenFromBoat('keelson.timber', {
    when: RIGID,
    fromBy: { choice: 'joint', links: woodAlong },
    label: 'Wood',
    hint: 'of the denser piece',
  }),
  gravity: input('ratio', 'Specific gravity at 12 %', {
    when: RIGID,
    from: 'timber.{species}.gravity',
    preset: '0.48',
    min: '0.1',
    max: '1.1',
    step: '0.01',
    note: 'oven-dry weight over the volume at 12 %, Wood Handbook',
  }),
  pressure: input('pressure', 'Pressure on the glue', {
    from: '{self}.usualPressure',
    preset: '60 kPa',
    min: '1 kPa',
    max: '2000 kPa',
    step: '10 kPa',
    note: 'from the sheet of the glue in hand',
  }),
  capacity: fromShop('clampForce'),
  inHand: input('count', 'Clamps in hand', {
    preset: '20',
    min: '0',
    max: '500',
    step: '1',
  }),
  order: choice('Clamps are set', {
    options: [
      { id: 'middle', label: 'from the middle outward' },
      { id: 'end', label: 'from one end' },
    ],
    preset: 'middle',
    note: 'from the end where that is fixed first, as at a stem; never from both ends inward',
  }),
  shop: fromShop('air', { hint: 'where the wood is colder, its own temperature, and only here' }),
  spreading: input('minutes', 'Time to spread a metre (3 ft 3 in)', {
    preset: `${spreadTime.value} s`,
    min: '0 s',
    max: '1 h',
    step: '5 s',
    note: citation(spreadTime),
  }),
  each: input('minutes', 'Time to set one clamp', {
    preset: `${clampTime.value} s`,
    min: '1 s',
    max: '30 min',
    step: '5 s',
    note: `${citation(clampTime)}; try it dry, with a watch`,
  }),
  tightness: fromShop('easyFrom', { when: ONE_RUN, hint: 'where it is tighter, clamps stand closer' }),
  measures,
  screwPitch: fromShop('screwPitch', { when: FILLING, bound: 'most', hint: 'where screws press' }),
  mostGap: ofGlue('length', 'Gap the glue bridges', 'mostGap', ['0 mm', '20 mm']),
  leastPressure: ofGlue('pressure', 'Least pressure for it', 'leastPressure', ['0 kPa', '2000 kPa']),
  mostPressure: ofGlue('pressure', 'Greatest pressure for it', 'mostPressure', ['0 kPa', '3000 kPa']),
  openAt20: ofGlue('minutes', 'Open time at 20 °C (68 °F)', 'shortestOpen', ['1 min', '4 h']),
  clampedAt20: ofGlue('time', 'In the clamps, at 20 °C (68 °F)', 'longestClamped', ['0 h', '7 d']),
  coldest: ofGlue('temperature', 'Coldest it cures', 'leastTemperature', ['0 °C', '40 °C']),
  keelsonRadius: radiusOf('keelson', 'Keelson'),
  logRadius: radiusOf('chineLog', 'Chine logs'),
  clampRadius: radiusOf('sheerClamp', 'Sheer clamps'),
  railRadius: radiusOf('rubRail', 'Rub rails'),
};
