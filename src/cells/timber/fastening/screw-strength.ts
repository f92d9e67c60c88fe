/** How hard a screw or nail may be pulled along its length and pushed sideways, by the code and by older rules. */
import { tradeQuantities } from '../../../boat/quantities/trade-quantities';
import { embedmentByEurocode, olderScrewConstant } from '../../../trade/embedment';
import { callByNumber } from '../../../measure';
import { hardwoods, speciesIsOneOf } from '../../../trade/fastening-woods';
import { shankOf } from '../../../trade/screws';
import { choice, defineCell, input, step } from '../../form/define';
import { firstOf } from '../../form/in-words';
import { CHARACTERISTIC } from './screw-rules';
import { strengthChart, strengthPicture } from './screw-strength-drawing';
import { woods } from '../../common/wood/woods';
import { inModes, yieldSteps } from './yield-model';

callByNumber('screwDiameter', shankOf);

const NDS = 'National Design Specification for Wood Construction (2018)';
const HANDBOOK = 'Wood Handbook';
/** Up to here the formulas of the sideways push hold. */
const THICKEST = '0.25 in';

export const screwStrength = defineCell({
  id: 'screwStrength',
  stage: 'timber',
  title: 'Strength of a screw',
  question: 'How hard may this screw be pulled along its length, and pushed sideways, and how does it give?',
  inputs: {
    fastener: choice('Fastening', {
      options: [
        { id: 'screw', label: 'wood screw' },
        { id: 'ringNail', label: 'ring nail' },
        { id: 'smoothNail', label: 'smooth nail' },
        { id: 'lag', label: 'lag screw' },
      ],
      preset: 'screw',
      note: 'ring nails of 2 to 2.7 mm by 20 to 32 mm (14 to 12 gauge by 3/4 to 1 1/4 in), 50 to 75 mm (2 to 3 in) apart, hold thin skins too: common practice',
    }),
    diameter: input('screwDiameter', 'Diameter', {
      from: 'fasten.diameter',
      preset: '4.17 mm',
      presetInch: '0.164 in',
      min: '1.5 mm',
      max: '16 mm',
      step: '0.1 mm',
      note: 'of the shank, or the number of a wood screw, as No. 8',
    }),
    rootDiameter: input('caliper', 'Root of the thread', {
      from: 'fasten.root',
      preset: '3.33 mm',
      presetInch: '0.131 in',
      min: '1 mm',
      max: '14 mm',
      step: '0.1 mm',
      note: 'of a wood screw; nails bear on their whole diameter',
    }),
    threadLength: input('length', 'Thread or nail in the timber', {
      from: 'fasten.thread',
      preset: '19 mm',
      min: '0 mm',
      max: '300 mm',
      step: '1 mm',
      note: 'what is pulled on; of a nail all that is in the timber',
    }),
    mainLength: input('length', 'Depth in the main part', {
      from: 'fasten.hold',
      preset: '19 mm',
      min: '3 mm',
      max: '300 mm',
      step: '1 mm',
      note: 'point included; in double shear the thickness of the part in the middle',
    }),
    sideLength: input('length', 'Thickness screwed on', {
      from: 'fasten.topThickness',
      preset: '6 mm',
      min: '1 mm',
      max: '300 mm',
      step: '1 mm',
      slider: true,
    }),
    species: choice('Wood of the main part', {
      options: woods,
      from: 'fasten.species',
      preset: 'douglasFirCoast',
    }),
    mainGravity: input('ratio', 'Its specific gravity', {
      from: 'timber.{species}.fasteningGravity',
      preset: '0.5',
      min: '0.2',
      max: '1.2',
      step: '0.01',
      note: 'oven-dry, as the code counts it',
    }),
    dryGravity: input('ratio', 'The same at 12 % moisture', {
      from: 'timber.{species}.gravity',
      preset: '0.48',
      min: '0.2',
      max: '1.2',
      step: '0.01',
      note: 'as the handbook’s older formulas count it',
    }),
    sideGravity: input('ratio', 'Specific gravity of the part screwed on', {
      preset: '0.5',
      min: '0.2',
      max: '1.2',
      step: '0.01',
      note: 'plywood of marine grade 0.50, other sheathing 0.42: from memory, National Design Specification, Table 12.3.3B',
    }),
    density: input('density', 'Density of the main part', {
      from: 'timber.{species}.density',
      preset: '538 kg/m3',
      min: '150 kg/m3',
      max: '1300 kg/m3',
      step: '10 kg/m3',
      note: 'mean, at 12 % moisture; for the European figure only',
    }),
    shear: choice('Parts', {
      options: [
        { id: 'single', label: 'two: single shear' },
        { id: 'double', label: 'three: double shear' },
      ],
      preset: 'single',
    }),
    lasting: choice('The load lasts', {
      options: [
        { id: 'permanent', label: 'for good' },
        { id: 'tenYears', label: 'ten years in all' },
        { id: 'twoMonths', label: 'two months in all' },
        { id: 'sevenDays', label: 'seven days in all' },
        { id: 'tenMinutes', label: 'ten minutes in all' },
      ],
      preset: 'tenYears',
      note: 'the code’s 2.0 for blows does not go for fastenings',
    }),
    service: choice('The wood in service is', {
      options: [
        { id: 'dry', label: 'dry: at most 19 %' },
        { id: 'wet', label: 'wet at times' },
      ],
      preset: 'wet',
      note: 'a boat’s is, inside her paint, at times',
    }),
    grain: choice('Goes into', {
      options: [
        { id: 'side', label: 'side grain' },
        { id: 'end', label: 'end grain' },
      ],
      preset: 'side',
    }),
    group: choice('Group of the older allowable loads', {
      options: [
        { id: 'gravity', label: 'by its specific gravity' },
        { id: 'one', label: 'I: ash, beech, maple, oak' },
        { id: 'two', label: 'II: Douglas-fir, southern pine' },
        { id: 'three', label: 'III: western hemlock' },
        { id: 'four', label: 'IV: spruce' },
      ],
      preset: 'gravity',
      note: 'I from a gravity of 0.62 on, II from 0.49, III from 0.42; the bounds and the woods of group I from memory: National Design Specification (1986), Table 8.1A',
    }),
    yieldStress: input('stress', 'Bending yield of the steel', {
      from: '{self}.usualYield',
      preset: '90000 psi',
      min: '20000 psi',
      max: '200000 psi',
      step: '5000 psi',
      note: 'steel; bronze and brass are softer: the maker’s figure',
    }),
    reduction: input('ratio', 'KD, to allowable loads', {
      from: '{self}.usualReduction',
      preset: '2.2',
      min: '1',
      max: '6',
      step: '0.1',
      note: 'by the shank’s diameter, as the code’s worked example has it; by the root it is smaller',
    }),
  },
  functions: {
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
  },
  groups: {
    'The fastening': ['rootDiameter', 'mainLength', 'yieldStress'],
    'The wood': ['mainGravity', 'dryGravity', 'sideGravity', 'density'],
    'How it is loaded': ['shear', 'grain', 'lasting', 'service'],
    'Older allowable loads': ['group', 'reduction'],
  },
  steps: {
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
  },
  answers: [
    { of: 'pullAllowed', label: 'pull on one', from: 'along its length, by the American code' },
    {
      of: 'pushAllowed',
      label: 'push on one',
      from: 'sideways, by the American code',
      when: 'pushCounts > 0',
    },
    {
      of: 'depthAsked',
      label: 'push sideways: none by this code',
      from: 'in the main part would earn one',
      when: 'inDiameters < 6',
    },
  ],
  inWords: [
    firstOf(
      [
        {
          when: `diameter > ${THICKEST}`,
          says: 'Allowed is {pullAllowed} along its length. For a push sideways no figure stands here: the formulas end at 1/4 in (6.3 mm).',
        },
        {
          when: 'inDiameters < 6',
          says: 'Allowed is {pullAllowed} along its length, and nothing sideways: by this code a fastening that is pushed stands 6 diameters in the main part, {depthAsked}, and this one stands {mainLength}, {inDiameters} diameters. A longer one would earn a push, or one no thicker than {thinEnough}; until then the glue has to take it.',
        },
      ],
      ['Allowed are {pullAllowed} along its length and {pushAllowed} sideways. Pushed harder,', inModes, '.'],
    ),
    'It draws out at {breaking} on average.',
  ],
  warnings: [
    {
      when: `diameter > ${THICKEST}`,
      says: 'The sideways figures hold up to 1/4 in (6.3 mm); this is {diameter}.',
      limit: `${NDS}: thicker fastenings have other formulas`,
      weight: 'stop',
    },
    {
      when: 'grain == "end" and fastener != "lag"',
      says: 'Nothing is allowed on screws or nails pulled out of end grain. Turn the joint, or let the screw into a cross piece.',
      limit: `${NDS} 12.2`,
      weight: 'stop',
    },
    {
      when: 'rootDiameter > diameter',
      says: 'The root, {rootDiameter}, is thicker than the shank, {diameter}.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'threadLength > mainLength',
      says: 'More thread, {threadLength}, than there is screw in the main part, {mainLength}.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'service == "wet" and fastener == "smoothNail"',
      says: 'A smooth nail in wood that is wet and dries again keeps a quarter of its pull.',
      limit: `from memory: ${NDS}, Table 11.3.3`,
      weight: 'mind',
    },
    {
      when: 'inTable < 1',
      says: 'The older table has no wood of gravity {dryGravity}; the nearest row serves.',
      limit: `${HANDBOOK}, Table 8-4`,
      weight: 'mind',
    },
  ],
  cautions: [
    'An estimate for comparing screws. For anything that people stand on, hang from or are towed by, the code in force, read whole, and a licensed engineer outrank it.',
    'In a glued joint the glue carries the load first; screw and glue do not add up.',
    'The figures are for steel in sound, straight-grained wood, edge, end and spacing kept. Bronze and brass bend sooner; a thin skin lets the head pull through first.',
  ],
  sources: [
    {
      text: `${NDS}: withdrawal 12.2, yield limits Table 12.3.1A, dowel bearing 12.3.3, duration 2.3.2`,
      known: 'published',
    },
    {
      text: `${NDS}: wet service, ring nails, gravity of plywood; ${HANDBOOK}, ch. 8: average withdrawal and the constants of K D²`,
      known: 'from memory',
    },
    {
      text: 'Older allowable loads C D²: a civil-engineering formula handbook, eq. 6.38',
      known: 'published',
    },
    { text: 'EN 1995-1-1, eq. 8.16, as transcribed', known: 'published' },
  ],
  about: ['chineLog', 'side'],
  brings: tradeQuantities,
  draw: strengthPicture,
  chart: strengthChart,
});
