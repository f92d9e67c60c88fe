/** The working of the clamps. */
import { step } from '../../form/define';
import { byPart } from './glued-joints';
import { FILLS, DOUBLING } from '../../common/glue/glues';
import { customPitch } from '../../common/glue/clamp-pitch';
import { citation } from '../../../trade/table';
import { clampPitch, screwPressure } from '../../../trade/adhesives';
import { saidAtMost } from '../../common/sizes/custom-sizes';
import { CUSTOM, GEOMETRY } from '../../../trade/sources';

/** From this specific gravity on a wood counts as dense. */
const DENSE = 0.55;

export const clampSteps = {
  jointRadius: step(
    'length',
    byPart({ keelson: 'keelsonRadius', log: 'logRadius', clamp: 'clampRadius', rail: 'railRadius' }),
    'tightest radius of the line along which it runs',
    GEOMETRY,
  ),
  usualPressure: step(
    'pressure',
    `mostGap >= ${FILLS} ? (leastPressure + mostPressure) / 2 : gravity >= ${DENSE} ? mostPressure : leastPressure`,
    'pressure usual for this glue and wood',
    `glues that fill gaps: the middle of their range; rigid ones: the low end on light wood, the high end on dense wood, as the handbook and a maker have it; dense from a specific gravity of ${DENSE}: ${CUSTOM}`,
  ),
  force: step('force', 'pressure * width * length', 'force on one piece', 'pressure times area'),
  byForce: step(
    'count',
    'places * ceil(force / places / capacity)',
    'clamps for that force, the same at each place',
    GEOMETRY,
  ),
  spread: step(
    'length',
    '2 * (caul + ply)',
    'length of glue line that one clamp presses',
    `pressure spreads at 45° through caul and layer: ${CUSTOM}`,
  ),
  usualPitch: step(
    'length',
    `places <= 1 and radius < tightness * ply ? ${customPitch('tight')} : ${customPitch('straight')}`,
    'clamp to clamp, usual on such a run',
    `${citation(clampPitch.straight)}; ${citation(clampPitch.tight)}`,
    'most',
  ),
  pitch: step(
    'length',
    `mostGap >= ${FILLS} ? usualPitch : max(1 mm, min(usualPitch, spread))`,
    'clamp to clamp, at most',
    'a rigid glue wants even pressure, one that fills gaps only to be closed',
    'most',
  ),
  byPitch: step(
    'count',
    'places * ceil(length / places / pitch)',
    'clamps for that spacing, one at least at each place',
    GEOMETRY,
  ),
  clamps: step('count', 'max(byForce, byPitch)', 'clamps for one piece', 'the larger of the two'),
  allClamps: step('count', 'pieces * clamps', 'clamps to glue all pieces at one time', GEOMETRY),
  atPlace: step('count', 'clamps / places', 'clamps at each place', GEOMETRY),
  evenPitch: step(
    'length',
    'clamps > 0 ? length / clamps : pitch',
    'clamp to clamp, even; half of it to each end',
    GEOMETRY,
  ),
  saidPitch: step(
    'length',
    saidAtMost('evenPitch'),
    'the same as it is said',
    'common practice: no clamp is set to the millimetre',
    'most',
  ),
  forceEach: step('force', 'clamps > 0 ? force / clamps : 0 N', 'force of each clamp', GEOMETRY),
  wanting: step('count', 'max(0, clamps - inHand)', 'clamps that are missing', GEOMETRY),
  slower: step('ratio', '2^((293.15 K - shop) / (10 K))', 'times as long as at 20 °C (68 °F)', DOUBLING),
  open: step('minutes', 'openAt20 * slower', 'time from spreading until all must be closed', DOUBLING),
  pace: step(
    'minutes',
    'spreading + each * (1 m) / evenPitch',
    'time to spread and close a metre (39 in), one person',
    'a metre (39 in) of glue, and the clamps that stand on it',
  ),
  setting: step(
    'minutes',
    'pace * length / (1 m)',
    'time to spread and close one piece, one person',
    GEOMETRY,
  ),
  goesByClamps: step(
    'count',
    'ceil(clamps / max(1, inHand))',
    'goes that the clamps in hand ask for',
    GEOMETRY,
  ),
  goesByTime: step('count', 'ceil(setting / open)', 'goes that the glue’s open time asks for', GEOMETRY),
  goes: step(
    'count',
    'max(1, goesByClamps, goesByTime)',
    'goes, if the joint is closed a stretch at a time',
    'the larger of the two',
  ),
  goLength: step('length', 'length / goes', 'stretch closed each time', GEOMETRY),
  screws: step(
    'count',
    `mostGap >= ${FILLS} ? ceil(wanting * evenPitch / screwPitch) : 0`,
    'screws that press in place of the missing clamps; none with a glue that wants pressure',
    `screws press with ${citation(screwPressure)}: enough only for a glue that fills gaps`,
  ),
  clamped: step('time', 'clampedAt20 * slower', 'time in the clamps at this temperature', DOUBLING),
} as const;
