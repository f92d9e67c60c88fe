/** Shares of the two ends, the lever about its block, and bite after bite. */
import { step } from '../form/define';
import { GEOMETRY } from '../../trade/sources';

const STATICS = 'statics: moments about the other end';
const LEVER = 'statics: moments about the block';

export const liftSteps = {
  halfway: step('length', 'span / 2', 'halfway between the lifting places', GEOMETRY),
  loadShare: step('share', 'shareHere(centre, span)', 'share of her weight on this end', STATICS),
  load: step('mass', 'loadShare * mass', 'what this end bears', STATICS),
  stays: step('mass', 'mass - load', 'what the other end keeps', STATICS),
  longArm: step('length', 'longerArm(lever, short)', 'long arm: from the block to the hands', GEOMETRY),
  push: step(
    'mass',
    'load * short / longArm',
    'push at the long end; the lever’s own weight, which helps, is left out',
    LEVER,
  ),
  people: step('count', 'ceil(push / onePush - 0.000001)', 'people for that push', GEOMETRY),
  rise: step('length', 'drop * short / longArm', 'lifted by one push', 'geometry: similar triangles'),
  packed: step(
    'length',
    'fitsUnder(rise - room, packing)',
    'packing that goes in at each push',
    GEOMETRY,
    'most',
  ),
  bitesEnd: step('count', 'ceil(rises / packed - 0.000001)', 'pushes at each end', GEOMETRY),
  bites: step('count', '2 * bitesEnd', 'pushes in all', GEOMETRY),
  gained: step('length', 'bitesEnd * packed', 'how far up that brings her', GEOMETRY),
  stack: step('length', 'stands + gained', 'height of the stack at last', GEOMETRY),
  handLow: step(
    'length',
    'stands + (rise - drop) / 2',
    'the long end above the floor when it is down, − below it',
    'geometry: the lever lies level halfway through its push',
  ),
  moment: step('moment', 'load * g * short', 'bending moment of the lever over its block', LEVER),
  stress: step(
    'stress',
    'moment / (breadth * depth^2 / 6)',
    'stress at the lever’s edge there',
    'beam of rectangular section',
  ),
  strength: step('stress', 'leverShare * rupture', 'stress allowed', 'definition', 'most'),
} as const;

/** Least that is worth calling packing, m. */
const THIN = 1e-3;

export const liftFunctions = {
  shareHere: {
    takes: ['length', 'length'],
    gives: 'share',
    how: 'from the other end to her balance / between the lifting places',
    run: (centre: number, span: number) => {
      if (centre > span) throw new Error('her balance lies beyond this lifting place: she would tip over it');
      return centre / span;
    },
  },
  longerArm: {
    takes: ['length', 'length'],
    gives: 'length',
    how: 'lever − short arm',
    run: (lever: number, short: number) => {
      if (short >= lever) throw new Error('the short arm leaves nothing of the lever to push on');
      return lever - short;
    },
  },
  fitsUnder: {
    takes: ['length', 'length'],
    gives: 'length',
    how: 'the thinner of the room and the packing',
    run: (free: number, packing: number) => {
      if (free < THIN) throw new Error('one push lifts her no further than it takes to slip anything in');
      return Math.min(free, packing);
    },
  },
} as const;
