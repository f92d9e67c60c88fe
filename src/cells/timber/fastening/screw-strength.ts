/** How hard a screw or nail may be pulled along its length and pushed sideways, by the code and by older rules. */
import { fasteningGravity, screwedDensity } from '../../common/screws/screwed-wood';
import { callByNumber } from '../../../measure';
import { shankOf } from '../../../trade/screws';
import { choice, input, defineCell } from '../../form/define';
import { woods } from '../../common/wood/woods';
import { firstOf } from '../../form/in-words';
import { inModes } from './yield-model';
import { tradeQuantities } from '../../../boat/quantities/trade-quantities';
import { strengthPicture, strengthChart } from './screw-strength-drawing';
import { HANDBOOK, THICKEST, strengthFunctions, strengthSteps } from './screw-strength-steps';
import { NDS } from '../../../trade/sources';

callByNumber('screwDiameter', shankOf);

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
    mainGravity: fasteningGravity('Its specific gravity'),
    dryGravity: input('ratio', 'The same at 12 % moisture', {
      from: 'timber.{species}.gravity',
      preset: '0.48',
      min: '0.2',
      max: '1.2',
      step: '0.01',
      note: 'as the handbook’s older formulas count it',
    }),
    sideGravity: input('ratio', 'Specific gravity, part screwed on', {
      preset: '0.5',
      min: '0.2',
      max: '1.2',
      step: '0.01',
      note: 'plywood of marine grade 0.50, other sheathing 0.42: from memory, National Design Specification, Table 12.3.3B',
    }),
    density: screwedDensity('Density of the main part', 'for the European figure only'),
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
      // A board is bent for minutes; what it is screwed to has to hold for as long as the boat lasts.
      note: 'all the time together that it is loaded in service, not the hour of building; the code’s 2.0 for blows does not go for fastenings',
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
    group: choice('Group of older loads', {
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
  functions: strengthFunctions,
  groups: {
    'The fastening': ['rootDiameter', 'mainLength', 'yieldStress'],
    'The wood': ['mainGravity', 'dryGravity', 'sideGravity', 'density'],
    'How it is loaded': ['shear', 'grain', 'lasting', 'service'],
    'Older allowable loads': ['group', 'reduction'],
  },
  steps: strengthSteps,
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
