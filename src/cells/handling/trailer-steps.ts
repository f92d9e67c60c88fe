/** Shares of ball, axle and bunks; how much of each rating is used; straps by the yardstick of the commercial rule. */
import { FOOT, OUNCE } from '../../measure/si';
import { type CellFunction, step } from '../form/define';
import { GEOMETRY } from '../../trade/sources';

const STATICS = 'statics: moments about the axle';
const BUNKS = 'statics: moments about a bunk';
const RATINGS = 'definition';
const SECUREMENT = '49 CFR 393';

export const trailerSteps = {
  total: step('mass', 'boat + empty', 'boat and trailer together', RATINGS),
  ahead: step('length', 'balance - behind', 'her balance ahead of the axle, − behind it', GEOMETRY),
  tongue: step('mass', 'emptyTongue + boat * ahead / ball', 'what hangs on the ball', STATICS),
  tongueShare: step('share', 'tongue / total', 'share of it on the ball', RATINGS),
  axleLoad: step('mass', 'total - tongue', 'what the axle bears', STATICS),
  shift: step(
    'length',
    '(aimShare * total - emptyTongue) * ball / boat - ahead',
    'how far she is moved forward for the share aimed at, − aft',
    STATICS,
  ),
  shiftBy: step('length', 'abs(shift)', 'the same either way', GEOMETRY),
  perTyre: step('mass', 'axleLoad / 2', 'what one tyre bears, of two', STATICS),
  fullest: step(
    'share',
    'max(total / grossRated, axleLoad / axleRated, perTyre / tyreRated, tongue / ballRated)',
    'share of its rating to which the fullest part is used',
    RATINGS,
  ),
  aftBears: step('mass', 'onBunk(boat, aftBunk, foreBunk, balance)', 'what the after bunk bears', BUNKS),
  foreBears: step('mass', 'boat - aftBears', 'what the forward bunk bears', BUNKS),
  byLength: step(
    'count',
    'bow == "stopped" ? max(1, ceil(long / (10 ft) - 0.000001)) : strapsFree(long, boat)',
    'straps by her length',
    `${SECUREMENT}.110`,
  ),
  byLoad: step(
    'count',
    'ceil(boat / strapLimit - 0.000001)',
    'straps by her weight: half of it in all, and each counts half',
    `${SECUREMENT}.106`,
  ),
  straps: step('count', 'max(byLength, byLoad)', 'straps that hold her', SECUREMENT),
  holdForward: step('mass', '0.435 * boat', 'hold forward, when the car brakes', `${SECUREMENT}.102`),
  holdAft: step('mass', '0.5 * boat', 'hold aft', `${SECUREMENT}.102`),
  holdSide: step('mass', '0.25 * boat', 'hold to each side', `${SECUREMENT}.102`),
  holdDown: step('mass', '0.2 * boat', 'hold down', `${SECUREMENT}.102`),
  winchPull: step(
    'mass',
    'boat * (sin(ramp) + drag * cos(ramp))',
    'pull of the winch up the ramp',
    'statics: weight along the slope, and drag',
  ),
} as const;

/** Bunks stand this far apart at least, m. */
const APART = 0.01;
/** Of a boat so light and short one strap holds, kg. */
const LIGHT = 1100 * 16 * OUNCE;

export const trailerFunctions: Readonly<Record<'onBunk' | 'strapsFree', CellFunction>> = {
  onBunk: {
    takes: ['mass', 'length', 'length', 'length'],
    gives: 'mass',
    how: 'boat × (forward bunk − balance) / (forward bunk − after bunk)',
    run: (boat: number, aft: number, fore: number, balance: number) => {
      if (fore - aft < APART) throw new Error('the forward bunk must stand forward of the after one');
      return (boat * (fore - balance)) / (fore - aft);
    },
  },
  strapsFree: {
    takes: ['length', 'mass'],
    gives: 'count',
    how: 'up to 1.5 m (5 ft) and 500 kg (1100 lb) one; up to 3 m (10 ft) two; and one for each 3 m (10 ft) more',
    run: (long: number, boat: number) => {
      const feet = long / FOOT - 1e-6;
      if (feet <= 5 && boat <= LIGHT) return 1;
      return 2 + Math.max(0, Math.ceil((feet - 10) / 10));
    },
  },
};
