/** How she lies when she is full of water, and the three tests of the US rule. */
import { step } from '../form/define';
import { fact, tell } from '../form/fact';
import { dry, middle, none, type Pose, round, side, swamped, triedIn } from './swamped-facts';

const TESTS = '33 CFR 183.225 to 183.235 and 183.325 to 183.335';

const STABLE = '33 CFR 183.230 and 183.330';

const heelOf = ({ at }: Pose) => (at ? Math.abs(at.heel) : Math.PI);
const triedOf = (of: typeof none) =>
  fact('the foremost and the aftmost of her sheer, in the water', TESTS, (_: {}, { hull, ask }) =>
    triedIn(ask(of), hull),
  );
const tried = { none: triedOf(none), middle: triedOf(middle), side: triedOf(side) };

export const swampedSteps = {
  fromSide: step('length', '6 in', 'from the side in to the people along it, by the test', STABLE),
  overSeat: step('length', '4 in', 'from the seat up to the middle of their weight, by the test', STABLE),
  endReach: step('length', '2 ft', 'what the tests look at of each end', TESTS),
  hang: step(
    'count',
    'min(hanging, hands)',
    'people in the water who hold on to her',
    'no more than she holds up',
  ),
  swampedLies: tell(
    swamped,
    'count',
    'full of water, under what is looked at: 1 where she floats, 2 where she stands on one end, 0 where she goes down',
    ({ lies }) => (lies === 'floats' ? 1 : lies === 'on end' ? 2 : 0),
  ),
  swampedHeel: tell(swamped, 'angle', 'her heel then; half a turn where she finds no rest', heelOf),
  swampedTrim: tell(swamped, 'angle', 'her trim then, + by the bow', ({ at }) => at?.trim ?? 0),
  swampedTilt: step('angle', 'abs(swampedTrim)', 'the same, whichever way', 'nothing but its size'),
  swampedLow: tell(
    swamped,
    'length',
    'her sheer over the water then, where it is lowest; − under it',
    ({ low }) => low,
  ),
  swampedBy: step('length', 'abs(swampedLow)', 'the same, whichever way', 'nothing but its size'),
  swampedStiff: tell(
    swamped,
    'length',
    'her metacentric height then, held upright: below 0 she rolls over',
    ({ stiffness }) => stiffness,
  ),
  hangHeel: tell(round, 'angle', 'her heel with people in the water all round her', heelOf),
  hangTrim: tell(round, 'angle', 'her trim with them, + by the bow', ({ at }) => at?.trim ?? 0),
  dryHands: tell(
    dry,
    'count',
    'people in the water, all round, who leave all of her sheer out, her wood counted; up to 24',
  ),

  noneHeel: tell(tried.none, 'angle', 'heel with nobody aboard', ({ heel }) => heel),
  noneUnder: tell(tried.none, 'length', 'her lower end under then; − out', ({ under }) => under),
  noneOut: tell(tried.none, 'length', 'her other end out then', ({ out }) => out),
  middleHeel: tell(tried.middle, 'angle', 'heel with people and gear in the middle', ({ heel }) => heel),
  middleUnder: tell(tried.middle, 'length', 'her lower end under then; − out', ({ under }) => under),
  middleOut: tell(tried.middle, 'length', 'her other end out then', ({ out }) => out),
  sideHeel: tell(tried.side, 'angle', 'heel with half of the people on one side', ({ heel }) => heel),
  sideUnder: tell(tried.side, 'length', 'her lower end under then; − out', ({ under }) => under),
  sideOut: tell(tried.side, 'length', 'her other end out then', ({ out }) => out),
  noneMeets: step(
    'count',
    'noneHeel <= 10° and noneUnder <= 6 in and noneOut > 0 mm ? 1 : 0',
    '1 where that meets the rule: 10°, one end out and the other 6 in (152 mm) under',
    TESTS,
  ),
  middleMeets: step(
    'count',
    'middleHeel <= 10° and middleUnder <= 6 in and middleOut > 0 mm ? 1 : 0',
    '1 where that meets the rule: 10°, one end out and the other 6 in (152 mm) under',
    TESTS,
  ),
  sideMeets: step(
    'count',
    'sideHeel <= 30° and sideUnder <= 12 in and sideOut > 0 mm ? 1 : 0',
    '1 where that meets the rule: 30°, one end out and the other 12 in (305 mm) under',
    TESTS,
  ),
} as const;
