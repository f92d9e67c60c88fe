/** One thick board or several thin ones: stress, force, spring-back, stiffness, glue, clamps, wood and money. */
import { tradeQuantities } from '../../../boat/quantities/trade-quantities';
import { defineCell } from '../../form/define';
import { firstOf } from '../../form/in-words';
import { tableOf } from '../../form/row-quantities';
import { bendingModuli } from '../../../boat/quantities/bending-quantities';
import { riseQuantities } from '../../../boat/quantities/rise-quantities';
import { chanceCaution, chanceInputs, chanceSources } from './bend-chance';
import { ONE_PERSON, overAllowed, overPicked } from '../../common/wood/bend-limits';
import { bentCautions, bentSources } from './bent-stock';
import { bendingSteps } from './laminate-bending';
import { layerChanceFunctions, layerChanceSteps } from './laminate-chance';
import { besideSteps, costInputs, costSteps } from './laminate-cost';
import { glueFunctions, glueInputs, glueSteps, screwsPress } from './laminate-glue';
import { layerFunctions, layerInputs } from './laminate-layers';
import { chartStack, drawStack } from './laminate-drawing';

export const laminate = defineCell({
  id: 'laminate',
  stage: 'timber',
  title: 'Laminating',
  question:
    'One thick board or several thin ones: how many layers, how hard do they pull, how far do they spring back?',
  inputs: { ...layerInputs, ...chanceInputs, ...glueInputs, ...costInputs },
  functions: { ...layerFunctions, ...layerChanceFunctions, ...glueFunctions },
  groups: {
    'The curve': ['along', 'bay', 'length', 'wholeRise'],
    'The layers': ['held', 'layup', 'layer1', 'layer2', 'layer3', 'layer4', 'beside'],
    'The wood': ['width', 'modulus', 'rupture', 'layerRatio', 'allowed'],
    'Spread and chance': ['ruptureSpread', 'modulusSpread', 'together'],
    'The glue': [
      'glue',
      'line',
      'spread',
      'waste',
      'primer',
      'fillerShare',
      'density',
      'epoxyDensity',
      'fillerDensity',
    ],
    'Clamps and hands': [
      'measures',
      'pressure',
      'clampForce',
      'pitch',
      'tightness',
      'caul',
      'holds',
      'screwHolds',
    ],
    'Sawing and planing': ['kerf', 'planing'],
    Prices: [
      'quoted',
      'price',
      'perLength',
      'each',
      'boardThickness',
      'boardWidth',
      'boardSold',
      'gluePrice',
    ],
  },
  steps: { ...bendingSteps, ...layerChanceSteps, ...glueSteps, ...costSteps, ...besideSteps },
  answers: [
    {
      of: 'share',
      label: 'of breaking, each layer',
      from: 'in the outer face of a layer, where the curve is tightest',
    },
    {
      of: 'springBack',
      label: 'spring-back',
      from: 'part of the rise lost, if glued on a form and taken off',
    },
    {
      of: 'force',
      label: 'pull to hold the layers',
      from: 'square to the stack, one frame beyond the curve, before gluing',
    },
  ],
  inWords: [
    'Each layer takes {share} of what breaks it, where one solid board takes {solidShare}; together the {layers} pull with {force}, where the board pulls with {solidForce}.',
    {
      when: 'held == "frames"',
      says: 'Glued and fastened on the frames they stay as they lie, held by {fastenings} fastenings at each frame.',
      otherwise:
        'To come off at a radius of {radius} they want a form of {formRadius}: {moreRise} more rise over the whole length.',
    },
    firstOf(
      [
        { when: 'oneIn >= 100000', says: 'Fewer than 1 such stack in {oneIn}' },
        { when: 'chanceAny >= 0.5', says: 'Many such stacks' },
      ],
      'At most about 1 such stack in {oneIn}',
    ),
    'would lose a layer;',
    firstOf(
      [
        { when: 'solidOneIn >= 100000', says: 'of solid boards fewer than 1 in {solidOneIn} would break.' },
        { when: 'solidChance >= 0.5', says: 'of solid boards more would break than hold.' },
      ],
      'of solid boards about 1 in {solidOneIn} would break.',
    ),
    'Put on {clamps} clamps',
    {
      when: 'clampsByForce > clampsByPitch',
      says: 'for the pressure; one every {clampPitch} would be enough to press it evenly.',
      otherwise: ', one every {clampPitch}, to press it evenly.',
    },
    'It takes {glueMass} of glue: buy {toBuy}. Wood and glue cost {cost}, one solid board {solidCost}.',
  ],
  table: tableOf({
    caption: 'The same thickness in layers all alike',
    over: 'beside',
    columns: [
      { of: 'besidePly', label: 'each' },
      { of: 'besideShare', label: 'of breaking' },
      { of: 'besideForce', label: 'pull' },
      { of: 'besideSpring', label: 'spring-back' },
      { of: 'besideGlue', label: 'glue' },
      { of: 'besideClamps', label: 'clamps' },
      { of: 'besideCost', label: 'money' },
    ],
  }),
  warnings: [
    {
      ...overAllowed,
      says: 'Each layer takes {share} of what breaks it, over the {allowed} allowed: {pliesNeeded} layers {pliesNeeded?keeps:keep} within it.',
    },
    {
      ...overPicked,
      says: 'Each layer takes {share} of what breaks this wood on average. Use {pliesNeeded} layers or more.',
    },
    {
      when: 'ownShare > 1.05 * share',
      says: 'The inner layers lie on a tighter curve than the middle of the stack: the worst takes {ownShare} of breaking.',
      limit: 'geometry; told from a twentieth more on, common practice',
      weight: 'mind',
    },
    {
      when: 'ply > thickestCustom',
      says: 'Layers of {ply} are thicker than the rule for glued laminated timber has them in this wood: at most {thickestCustom} at this radius.',
      limit:
        'glued laminated timber: 1/100 of the radius for hardwood and southern pine, 1/125 for other softwood; from memory: National Design Specification 5.3.8',
      weight: 'mind',
    },
    {
      when: 'force > holds',
      says: 'The loose layers pull with {force}, and one person holds {holds}. Clamp from the middle outward.',
      limit: ONE_PERSON,
      weight: 'mind',
    },
    {
      when: 'whole >= radius',
      says: 'A stack {whole} thick does not fit round a radius of {radius}.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'held == "form" and layers < 3',
      says: 'Two layers lose {springBack} of the rise off a form, and how much it will be is hard to foretell: take three or more.',
      limit: 'at least 3 layers on a form: common practice, no source',
      weight: 'mind',
    },
    {
      when: `held == "frames" and pressure > ${screwsPress.most}`,
      says: 'This glue wants {pressure}, and screws do not press so hard: clamp between the frames as well, or take a glue that fills gaps.',
      limit: `screws and staples press with 0.1 to 0.2 MPa (15 to 30 psi): ${screwsPress.source}`,
      weight: 'mind',
    },
    {
      when: 'inLines > laid',
      says: 'Lines of {line} hold more than the {spread} that is spread: the joint would starve.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'layup == "listed" and abs(whole - thickness) > 0.5 mm',
      says: 'The listed layers come to {whole}, not to the {thickness} wanted.',
      limit: 'geometry',
      weight: 'mind',
    },
  ],
  cautions: [
    ...bentCautions,
    chanceCaution,
    'Layers glued in place on the frames and fastened there have nowhere to spring to; the frames feel the pull of the loose layers, no more. The spring-back counts for a stack glued on a form. Wood and glue creep on the form, so expect 80 to 100 % of it: common practice.',
    'Joints in the layers must not lie over each other, nor the fastenings of one layer under those of the next.',
    "Glue: follow the maker's sheet for spread, open time, pressure, temperature, gloves and fresh air. Try the whole stack dry first, with every clamp, and count them.",
    'Resawing thin layers: guard, riving knife, featherboard and push stick as the saw’s maker says; stop at the least width that the maker lets you saw, and mind the dust.',
  ],
  sources: [
    ...bentSources,
    ...chanceSources,
    {
      text: 'Spring-back 1/n² of the rise, as printed in boat-trade usage; M. Sanne and others, Forests 11(7):725 (2020): depends on the number of layers, hardly on the radius',
      known: 'published',
    },
    { text: 'EN 1995-1-1, eq. 6.49: strength of curved laminated timber', known: 'published' },
    { text: 'National Design Specification: curvature factor, layer over radius', known: 'from memory' },
    {
      text: 'Wood Handbook, USDA FPL-GTR-190 (2010), ch. 10: stiff structural glues are strongest in lines of 0.08 to 0.15 mm (0.003 to 0.006 in); pressures of 0.7 to 1.7 MPa (100 to 250 psi) from memory',
      known: 'published',
    },
    {
      text: 'C. R. Frihart, Forest Products Laboratory, on epoxy-wood bonds: low pressure, gaps filled',
      known: 'published',
    },
    {
      text: 'Spread, thickness of an epoxy line, force of a clamp, its 45° spread and pitch, kerf and planing; prices are made up',
      known: 'common practice',
    },
  ],
  about: ['{along}'],
  brings: (layout) => [...tradeQuantities(), ...riseQuantities(layout), ...bendingModuli],
  draw: drawStack,
  chart: chartStack,
});
