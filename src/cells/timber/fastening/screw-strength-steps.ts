/** The working of a fastener's strength. */
import { embedmentByEurocode, olderScrewConstant } from '../../../trade/embedment';
import { type CellFunction, step } from '../../form/define';
import { yieldSteps } from './yield-model';
import { speciesIsOneOf, hardwoods } from '../../../trade/fastening-woods';
import { CHARACTERISTIC } from './screw-rules';
import { NDS } from '../../../trade/sources';

export const HANDBOOK = 'Wood Handbook';

/** Up to here the formulas of the sideways push hold. */
export const THICKEST = '0.25 in';

export const strengthFunctions = {
  european: {
    takes: ['length', 'density'],
    gives: 'stress',
    how: '0.082 (1 - 0.01 d) x density, d in mm: in drilled holes',
    run: (d, density) => embedmentByEurocode(d, density, true),
  },
  olderK: {
    takes: ['ratio', 'count'],
    gives: 'stress',
    how: 'softwood 3,360, 4,320 or 5,280 psi, hardwood 3,360, 4,640 or 6,400 psi, by gravity',
    run: (gravity, hard) => olderScrewConstant(gravity, hard > 0).constant,
  },
  olderListed: {
    takes: ['ratio', 'count'],
    gives: 'count',
    how: '1 where the table has this gravity',
    run: (gravity, hard) => (olderScrewConstant(gravity, hard > 0).listed ? 1 : 0),
  },
} satisfies Readonly<Record<string, CellFunction>>;

export const strengthSteps = {
  usualYield: step(
    'stress',
    'diameter <= 0.142 in ? 100000 psi : diameter <= 0.177 in ? 90000 psi : diameter <= 0.236 in ? 80000 psi : 70000 psi',
    'bending yield of steel wood screws and nails of this diameter',
    `${NDS}, Appendix I and footnotes of its tables`,
  ),
  usualReduction: step(
    'ratio',
    'diameter <= 0.17 in ? 2.2 : 10 * diameter / 1 in + 0.5',
    'KD: 2.2 up to 0.17 in, 10 D + 0.5 to 1/4 in',
    `${NDS}, Table 12.3.1B`,
  ),
  durationFactor: step(
    'ratio',
    'lasting == "permanent" ? 0.9 : lasting == "tenYears" ? 1 : lasting == "twoMonths" ? 1.15 : lasting == "sevenDays" ? 1.25 : 1.6',
    'CD: what the load’s duration does',
    `${NDS}, Table 2.3.2`,
  ),
  wetPull: step(
    'ratio',
    'service == "dry" or fastener == "ringNail" ? 1 : fastener == "smoothNail" ? 0.25 : 0.7',
    'CM for a pull: wet wood that dries lets smooth nails go',
    `from memory: ${NDS}, Table 11.3.3`,
  ),
  wetPush: step(
    'ratio',
    'service == "dry" ? 1 : 0.7',
    'CM for a push sideways',
    `from memory: ${NDS}, Table 11.3.3`,
  ),
  perLength: step(
    'stiffness',
    'fastener == "ringNail" ? 1800 psi * mainGravity^2 * diameter : fastener == "smoothNail" ? 1380 psi * mainGravity^2.5 * diameter : fastener == "lag" ? 1800 lbf/in * mainGravity^1.5 * (diameter / 1 in)^0.75 : 2850 psi * mainGravity^2 * diameter',
    'pull allowed for each length of thread, normal duration, dry, side grain',
    `${NDS} 12.2: wood screws 2850 G² D, lag screws 1800 G^1.5 D^0.75, smooth nails 1380 G^2.5 D, lb for each inch; ring nails 1800 G² D from memory`,
  ),
  endGrain: step(
    'ratio',
    'grain == "side" ? 1 : fastener == "lag" ? 0.75 : 0',
    'share left in end grain',
    `${NDS}: lag screws 0.75; screws and nails are not to be pulled out of end grain`,
  ),
  pull: step('force', 'perLength * threadLength', 'pull on one, normal duration, dry, side grain', NDS),
  pullAllowed: step(
    'force',
    'pull * durationFactor * wetPull * endGrain',
    'pull on one allowed here: times duration, wet service and grain',
    NDS,
    'most',
  ),
  breaking: step(
    'force',
    '15700 psi * dryGravity^2 * diameter * threadLength',
    'pull that draws one wood screw out on average',
    `from memory: ${HANDBOOK}, ch. 8: 15,700 G² D L`,
  ),
  planes: step('count', 'shear == "double" ? 2 : 1', 'planes in which the screw is sheared', 'geometry'),
  ...yieldSteps,
  inDiameters: step('ratio', 'mainLength / diameter', 'depth in the main part, in diameters', 'geometry'),
  depthAsked: step(
    'length',
    '6 * diameter',
    'least depth in the main part for a push sideways',
    `${NDS}: penetration of at least 6 diameters`,
  ),
  thinEnough: step(
    'caliper',
    'mainLength / 6',
    'diameter for which this depth is enough',
    'geometry',
    'most',
  ),
  pushCounts: step(
    'count',
    `inDiameters >= 6 and diameter <= ${THICKEST} ? 1 : 0`,
    '1 where the code allows a push sideways: 6 diameters deep, and up to 1/4 in (6.3 mm) thick',
    `${NDS}: penetration of at least 6 diameters; thicker fastenings have other formulas`,
  ),
  pushAllowed: step(
    'force',
    'pushCounts * lateral * durationFactor * wetPush',
    'push sideways on one allowed here: times duration and wet service; none where the code allows none',
    NDS,
    'most',
  ),
  hardwood: step(
    'count',
    `${speciesIsOneOf(hardwoods)} ? 1 : 0`,
    '1 where the main part is of a hardwood',
    'botany: broad-leaved trees',
  ),
  olderLimit: step(
    'force',
    'olderK(dryGravity, hardwood) * diameter^2',
    'older rule, K D²: push at the proportional limit of one wood screw',
    `form from the ${HANDBOOK}, Table 8-4, before 1991; constants from memory`,
  ),
  inTable: step(
    'count',
    'olderListed(dryGravity, hardwood)',
    '1 where the older table has this gravity',
    `${HANDBOOK}, Table 8-4`,
  ),
  olderGroup: step(
    'count',
    'group == "one" ? 1 : group == "two" ? 2 : group == "three" ? 3 : group == "four" ? 4 : mainGravity >= 0.62 ? 1 : mainGravity >= 0.49 ? 2 : mainGravity >= 0.42 ? 3 : 4',
    'group of the older allowable loads',
    'from memory: National Design Specification (1986), Table 8.1A',
  ),
  olderAllowable: step(
    'force',
    'inDiameters < 7 ? 0 N : (olderGroup == 1 ? 4800 psi : olderGroup == 2 ? 3960 psi : olderGroup == 3 ? 3240 psi : 2520 psi) * diameter^2',
    'older allowable push, C D², from 7 diameters in the main part on; none under that',
    'a civil-engineering formula handbook, eq. 6.38; the 7 diameters from memory',
    'most',
  ),
  europeanEmbed: step(
    'stress',
    `european(diameter, ${CHARACTERISTIC})`,
    'the same pressure as the European code has it, characteristic, drilled; to compare',
    'EN 1995-1-1, eq. 8.16, as transcribed; normal spread of 10 %',
  ),
} as const;
