/** Will this board bend to this curve, cold, and how often does one of its wood break in it? */
import { tradeQuantities } from '../../../boat/quantities/trade-quantities';
import { bendingModuli } from '../../../boat/quantities/bending-quantities';
import { steamed, strappedRadius } from '../../../trade/steam';
import { citation } from '../../../trade/table';
import { bendingRaise } from '../../../trade/timber';
import { defineCell, step } from '../../form/define';
import { firstOf } from '../../form/in-words';
import { fromBoat } from '../../form/from-boat';
import { chanceCaution, chanceFunctions, chanceInputs, chanceSources, chanceSteps } from './bend-chance';
import { curveInputs, curveSteps } from './bend-curve';
import { drawBoard, shareChart } from './bend-drawing';
import { pullFunctions, pullInputs, pullSources, pullSteps } from './bend-pull';
import { woodFunctions, woodInputs, woodSources, woodStateQuantities, woodSteps } from './bend-wood';
import { ONE_PERSON, overAllowed, overPicked } from '../../common/wood/bend-limits';
import { BEAM, bentSources, bentStock, SPRINGS_BACK } from './bent-stock';

const { part, along: _, radius: __, species, allowed, ...stock } = bentStock;

export const bend = defineCell({
  id: 'bend',
  stage: 'timber',
  title: 'Bending a board',
  question: 'Will this board bend to this curve, and how hard does it push back?',
  inputs: {
    part,
    thickness: fromBoat('{part}.thickness', { hint: 'across the bend', slider: true }),
    ...curveInputs,
    species,
    ...woodInputs,
    allowed,
    ...stock,
    ...chanceInputs,
    ...pullInputs,
  },
  functions: {
    ...woodFunctions,
    ...chanceFunctions,
    ...pullFunctions,
    strappedRadius: {
      takes: ['share'],
      gives: 'ratio',
      how: 'one over the share, less one: inner radius over thickness',
      run: strappedRadius,
    },
  },
  groups: {
    'The curve': ['along', 'chord', 'chordRise', 'standOff'],
    'The wood': ['modulus', 'rupture', 'modulusGain', 'ruptureGain', 'fibrePoint'],
    'Moisture and load': ['moisture', 'warmth', 'duration', 'lasts', 'codeFactor', 'allowed'],
    'Spread and chance': ['ruptureSpread', 'modulusSpread', 'together'],
    'Hands and frames': ['width', 'bay', 'holds', 'loose'],
  },
  steps: {
    ...curveSteps,
    ...woodSteps,
    strain: step('ratio', 'thickness / (2 * radius)', 'stretch of the outer face', BEAM),
    stress: step('stress', 'modulusNow * strain', 'stress in the outer face', 'beam theory, elastic'),
    share: step(
      'share',
      'stress / ruptureNow',
      'stress as a share of what breaks this wood',
      'Wood Handbook, modulus of rupture',
    ),
    sharePrinted: step(
      'share',
      `share / ${bendingRaise.value}`,
      'the same by the modulus as it is printed',
      `${citation(bendingRaise)}; a long board bends with next to no shear, so the raised one holds`,
    ),
    leastRadius: step(
      'length',
      'modulusNow * thickness / (2 * allowed * ruptureNow)',
      'least radius that this board takes within the share allowed',
      BEAM,
      'least',
    ),
    thickest: step(
      'length',
      '2 * allowed * ruptureNow * radius / modulusNow',
      'thickest board that takes this curve within the share allowed',
      BEAM,
      'most',
    ),
    plies: step(
      'count',
      'max(1, ceil(thickness / thickest - 0.001))',
      'equal layers that would make up the thickness within the share allowed',
      'beam theory; a thousandth of a layer is forgiven',
    ),
    radiusToThickness: step('ratio', 'radius / thickness', 'radius over thickness', 'geometry'),
    ...chanceSteps,
    secondMoment: step(
      'secondMoment',
      'width * thickness^3 / 12',
      'second moment of the section',
      'geometry',
    ),
    moment: step(
      'moment',
      'modulusNow * secondMoment / radius',
      'moment that holds the board to the curve',
      'beam theory: M = EI/R',
    ),
    force: step(
      'force',
      'moment / bay',
      'pull that brings the board down to the frame one bay beyond the curve',
      'statics: that pull over one bay makes up the moment',
    ),
    rise: step(
      'length',
      'radius * (1 - sqrt(max(0, 1 - (bay / (2 * radius))^2)))',
      'rise of the curve in the middle of one bay',
      'geometry: sagitta of the chord',
    ),
    ...pullSteps,
    steamedRadius: step(
      'length',
      `thickness / (2 * ${steamed.stretch.value})`,
      'least radius if it is steamed and bent without a strap: its outer face stretches no further',
      citation(steamed.stretch),
      'least',
    ),
    strapRadius: step(
      'length',
      `thickness * strappedRadius(${steamed.shortening.value})`,
      'least inner radius if it is steamed and bent in a strap: its inner face shortens no further; the best hardwood only',
      citation(steamed.shortening),
      'least',
    ),
  },
  answers: [
    { of: 'share', label: 'of breaking', from: 'in the outer face, where the curve is tightest' },
    {
      of: 'leastRadius',
      label: 'least radius',
      from: 'to the middle of the board, within the share allowed',
    },
    { of: 'force', label: 'pull to hold it', from: 'square to the board, one frame beyond the curve' },
  ],
  inWords: [
    'Bent to a radius of {radius}, the outer face of a {thickness} board takes {share} of what breaks this wood; within {allowed} it goes no tighter than {leastRadius}.',
    firstOf(
      [
        { when: 'chance >= 0.5', says: 'More boards break than hold.' },
        {
          when: 'oneIn >= 100000',
          says: 'Of clear, straight boards fewer than 1 in {oneIn} would break.',
        },
      ],
      'Of clear, straight boards about 1 in {oneIn} would break.',
    ),
  ],
  warnings: [
    {
      ...overAllowed,
      says: 'The bend takes {share} of what breaks this wood, over the {allowed} allowed: take a board at most {thickest} thick, or {plies} layers.',
    },
    {
      ...overPicked,
      says: 'The bend takes {share} of what breaks this wood on average. Take a board at most {thickest} thick, or {plies} layers, or steam it.',
    },
    {
      when: 'force > holds',
      says: 'It pulls with {force}, and one person holds {holds}. Use clamps or a twisted rope, not hands.',
      limit: ONE_PERSON,
      weight: 'mind',
    },
    {
      when: 'bay > 2 * radius',
      says: 'The bay of {bay} is wider than the circle of this radius: measure the bay along a straight line between the frames.',
      limit: 'geometry',
      weight: 'mind',
    },
    {
      when: 'ruptureGain <= 1 and (moisture < 11.9 % or moisture > 12.1 %)',
      says: 'The table has no green value of this wood: stiffness and strength stay as at 12 %, though the wood is at {moisture}.',
      limit: 'the table of woods',
      weight: 'mind',
    },
    {
      when: 'amiss > 10 %',
      says: 'Drawing the end in by {drawnIn} over {loose} takes {endPull}; reckoned for gentle slopes it would be {gentlePull}, {amiss} too little.',
      limit: 'small-slope beam theory, a tenth off; the elastica beside it holds for any slope',
      weight: 'mind',
    },
    {
      when: 'standOff > 0.9 * loose',
      says: 'The end can’t come in by {standOff}: the board is free over {loose} only. Free more of it.',
      limit: 'geometry',
      weight: 'stop',
    },
  ],
  cautions: [
    SPRINGS_BACK,
    chanceCaution,
    'The radius of an edge counts its bend in plan and in profile together. A board bends only across its thickness: what the curve asks edgewise has to be cut from a wider board.',
    'Wet wood pulls less, but its share of breaking is no less: what it gains is that it yields, and these formulas leave that out. Steamed wood goes by another rule, the two radii in the working: try an offcut, and follow the local rules on boilers.',
  ],
  sources: [
    ...bentSources,
    ...woodSources,
    ...chanceSources,
    ...pullSources,
    {
      text: 'Grades of R/t: over 200 easy, 150 to 200 ordinary, 100 to 150 picked wood, under 100 laminate or steam',
      known: 'common practice',
    },
    {
      text: 'National Design Specification 5.3.8: glued laminated timber, for comparison; R/t at least 100 in hardwood and southern pine, 125 in other softwood',
      known: 'from memory',
    },
    { text: citation(steamed.stretch).replace('from memory: ', ''), known: 'from memory' },
    {
      text: `${steamed.southernPineStrapped.source}: southern pine steamed and strapped, three pieces in four near perfect at R/t ${steamed.southernPineStrapped.value}`,
      known: 'published',
    },
  ],
  about: ['{along}'],
  draw: drawBoard,
  chart: shareChart,
  brings: () => [...tradeQuantities(), ...woodStateQuantities(), ...bendingModuli],
});
