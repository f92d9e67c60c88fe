/** The working of the turn: over the edge, by hands and by rope; in the cradles; through the room. */
import { leftAtRate, liftedBy, peopleFor } from '../../trade/lifting';
import { manilaByGirth, timesManila } from '../../trade/ropes';
import { type CellFunction, step } from '../form/define';
import { fact, tell } from '../form/fact';
import { CAPSTAN, legs, ropePlaces, running, slipping, turning } from './roll-cradles';
import { rolledTo, ROLLING, room, sizes, theTurn, throughDoor } from './roll-facts';
import { CUSTOM, GEOMETRY } from '../../trade/sources';

const ENERGY = 'mechanics: what the centre falls goes into the swing';
export const LIFTING = 'DHHS (NIOSH) 94-110, rev. 9/2021, the revised lifting equation';
const TEAMS = 'HSE: two lift two thirds of what both lift alone, three half of it';
const LOOPS = 'statics: moments about the middle of the loops';

type Rope = keyof typeof timesManila;

/** What the rope breaks at. */
const breaking = fact(
  'by the square of its girth',
  manilaByGirth.source,
  ({ rope, ropeSize }: { readonly rope: Rope; readonly ropeSize: number }) =>
    manilaByGirth.value * (Math.PI * ropeSize) ** 2 * timesManila[rope].value,
);

export const rollSteps = {
  lies: step('angle', '180 deg - angle', 'how far she lies over, from right side up', GEOMETRY),
  // Over her edge.
  broad: tell(sizes, 'length', 'her greatest breadth', ({ broad }) => broad),
  deep: tell(sizes, 'length', 'her depth at the widest station, keel to sheer', ({ deep }) => deep),
  lever: tell(
    rolledTo,
    'length',
    'from her centre, level, to over what bears; − when past it',
    ({ lever }) => lever,
  ),
  arm: tell(rolledTo, 'length', 'from what bears to her far sheer', ({ arm }) => arm),
  turningMoment: step('massMoment', 'mass * lever', 'her weight times that lever', ROLLING),
  balanceAngle: tell(theTurn, 'angle', 'turned so far, she stands in balance', ({ balance }) => balance),
  landingAngle: tell(
    theTurn,
    'angle',
    'turned so far, her next side meets the floor',
    ({ landing }) => landing,
  ),
  restAngle: tell(theTurn, 'angle', 'turned so far, she rests again by herself', ({ rest }) => rest),
  heaviest: tell(
    theTurn,
    'mass',
    'most at her far sheer on the way to the balance, as a weight hung there',
    ({ heaviest }, { mass }: { readonly mass: number }) => heaviest * mass,
  ),
  rise: tell(theTurn, 'length', 'her centre goes up by, to the balance', ({ rise }) => rise),
  work: step('moment', 'mass * g * rise', 'work of lifting it', 'mechanics: weight times height'),
  fall: tell(theTurn, 'length', 'and down again by, till her side meets the floor', ({ fall }) => fall),
  radius: tell(theTurn, 'length', 'her centre from what she turns over then', ({ radius }) => radius),
  farthest: tell(theTurn, 'length', 'her farthest point from it', ({ farthest }) => farthest),
  gyration: step(
    'length',
    'sqrt((broad^2 + deep^2) / 12)',
    'her radius of gyration, taken as of a full box: a shell falls slower',
    ENERGY,
  ),
  fallSpeed: step(
    'windSpeed',
    'farthest * sqrt(2 * g * fall / (radius^2 + gyration^2))',
    'speed of that point when she lands, unheld',
    ENERGY,
  ),
  likeDrop: step('length', 'fallSpeed^2 / (2 * g)', 'a drop that would make it as fast', ENERGY),
  held: tell(
    theTurn,
    'mass',
    'most that must be held back at her far sheer, from the balance until she rests',
    ({ held }, { mass }: { readonly mass: number }) => held * mass,
  ),
  checkLoad: step(
    'mass',
    'held / cos(askew)',
    'in the rope that holds her back',
    'statics: only the part square to the arm counts',
  ),
  tailShare: step('share', 'exp(-grips * 2 * pi * turns)', 'share of it left behind the turns', CAPSTAN),
  tail: step('mass', 'checkLoad * tailShare', 'what the hand holds behind them', CAPSTAN),

  // The hands.
  outward: step('ratio', 'min(1, 250 mm / handsOut)', 'for the reach', LIFTING),
  lowness: step('ratio', '1 - 0.003 * abs(handsHigh - 750 mm) / (10 mm)', 'for the height', LIFTING),
  going: step('ratio', 'min(1, 0.82 + 45 mm / max(travel, 250 mm))', 'for the way up', LIFTING),
  aside: step('ratio', '1 - 0.0032 * turnAside / (pi * rad / 180)', 'for turning aside', LIFTING),
  often: step('ratio', 'leftAtRate(rate)', 'for how often', LIFTING),
  gripped: step(
    'ratio',
    'hold == "poor" ? 0.9 : hold == "fair" and handsHigh < 750 mm ? 0.95 : 1',
    'for the hold',
    LIFTING,
  ),
  each: step(
    'mass',
    '23 kg * outward * lowness * going * aside * often * gripped',
    'what the guide allows one person',
    LIFTING,
    'most',
  ),
  people: step('count', 'peopleFor(heaviest, each)', 'people to begin the turn', TEAMS),
  together: step('mass', 'liftedBy(people, each)', 'what so many lift together by it', TEAMS),

  // In the cradles.
  aftPlace: tell(ropePlaces, 'length', 'the after rope, forward', ({ aft }) => aft),
  forePlace: tell(ropePlaces, 'length', 'the forward rope, forward', ({ fore }) => fore),
  usualPosts: step('length', 'broad + 600 mm', 'her breadth and 300 mm (12 in) on each side', CUSTOM),
  usualHigh: step(
    'length',
    'sqrt(broad^2 + deep^2) + 600 mm',
    'high enough for her to turn over below',
    CUSTOM,
  ),
  beside: step('length', '(posts - broad) / 2', 'between her widest place and a post', GEOMETRY),
  legsLong: step('length', 'postHigh - clear', 'from the ropes’ ends down to her lowest', GEOMETRY),
  foreShare: tell(legs, 'share', 'share of her weight in the forward rope', ({ foreShare }) => foreShare),
  foreBears: step(
    'mass',
    'mass * foreShare',
    'the forward rope bears',
    'statics: moments about the after rope',
  ),
  aftBears: step(
    'mass',
    'way == "ropes" ? mass - foreBears : 0 kg',
    'the after rope bears',
    'statics: moments about the forward rope',
  ),
  legPull: tell(
    legs,
    'mass',
    'pull in the hardest pulled leg',
    ({ pull }, { mass }: { readonly mass: number }) => pull * mass,
  ),
  legLean: tell(legs, 'angle', 'the leg that leans most, out of plumb', ({ lean }) => lean),
  postPull: tell(
    legs,
    'mass',
    'pull on a post’s head, inward',
    ({ postPull }, { mass }: { readonly mass: number }) => postPull * mass,
  ),
  off: tell(turning, 'length', 'her centre ahead of the middle of the loops; − behind', ({ off }) => off),
  heldOff: tell(
    turning,
    'length',
    'so far off the middle friction holds her',
    ({ held }, { grips }: { readonly grips: number }) => held(grips),
    { bound: 'most' },
  ),
  draggedOff: tell(
    turning,
    'length',
    'so far it drags on her when she is turned',
    ({ held }, { drags }: { readonly drags: number }) => held(drags),
  ),
  cradleArm: tell(turning, 'length', 'from her centre to her far sheer', ({ arm }) => arm),
  turnPull: step('mass', 'mass * (draggedOff - off) / cradleArm', 'pull that turns her on', LOOPS),
  slipAngle: tell(slipping, 'angle', 'turned so far, she may go on by herself', (angle) => angle),
  runs: tell(running, 'ratio', 'friction it takes to keep the forward rope in place', ({ slope }) => slope),
  stay: tell(
    running,
    'mass',
    'the line that keeps it from running forward bears, without friction',
    ({ drawn }, { mass }: { readonly mass: number }) => drawn * mass,
  ),

  // At her sheer, and in the rope.
  atSheer: step(
    'mass',
    'way == "edge" ? turningMoment / arm : turnPull',
    'at her far sheer at this angle, as a weight hung there; − held back',
    ROLLING,
  ),
  atSheerSize: step('mass', 'abs(atSheer)', 'the same either way', ROLLING),
  handForce: step(
    'force',
    'atSheer * g',
    'force at her far sheer at this angle, square to her arm; − held back',
    ROLLING,
  ),
  ropeBreaks: tell(breaking, 'mass', 'what breaks the rope, new', (load) => load),
  ropeBears: step(
    'mass',
    'ropeBreaks * (1 - knotTakes) / ropeFactor',
    'what is hung on it, knotted',
    'a guideline of rope makers',
    'most',
  ),
  ropeLoad: step('mass', 'way == "edge" ? checkLoad : legPull', 'the hardest pulled rope', ROLLING),

  // The room.
  roomHigh: tell(room, 'length', 'her greatest height on the way over', ({ high }) => high),
  roomUp: step('length', 'roomHigh + (way == "ropes" ? clear : 0 mm)', 'height that she needs', GEOMETRY),
  roomAcross: tell(room, 'length', 'floor that she takes, rolled right over', ({ across }) => across),
  doorSpare: tell(
    throughDoor,
    'length',
    'left over in the doorway; − where she does not pass',
    ({ spare }) => spare,
  ),
  doorLean: tell(throughDoor, 'angle', 'leaned so far from level there', ({ lean }) => lean),
} as const;

export const rollFunctions: Readonly<Record<'leftAtRate' | 'peopleFor' | 'liftedBy', CellFunction>> = {
  leftAtRate: {
    takes: ['number'],
    gives: 'ratio',
    how: 'the table of lifts a minute, straight between its rows',
    run: (rate = 0) => leftAtRate(rate),
  },
  peopleFor: {
    takes: ['mass', 'mass'],
    gives: 'count',
    how: 'fewest of whom two lift two thirds of the sum, three or more half of it',
    run: (load = 0, each = 1) => peopleFor(load, each),
  },
  liftedBy: {
    takes: ['count', 'mass'],
    gives: 'mass',
    how: 'one alone all of it, two two thirds of the sum, three or more half of it',
    run: (people = 1, each = 0) => liftedBy(people, each),
  },
};
