/** How hard a bent board pulls at each frame, how far it twists, and what the curve asks edgewise. */
import { tradeQuantities } from '../../../boat/quantities/trade-quantities';
import { torsionConstant } from '../../../kernel/torsion';
import { ONE_PERSON, overAllowed } from '../../common/wood/bend-limits';
import { defineCell } from '../../form/define';
import { tableOf } from '../../form/row-quantities';
import { drawHolding, sharesChart } from './holding-drawing';
import { holdingInputs } from './holding-inputs';
import { FREE, holdingSteps, STRIP } from './holding-steps';

export const holding = defineCell({
  id: 'holding',
  stage: 'timber',
  title: 'Holding it to the frames',
  question:
    'How hard does the bent board pull at each frame, how far does it twist, and what does the curve ask edgewise?',
  inputs: holdingInputs,
  functions: {
    torsionConstant: {
      takes: ['length', 'length'],
      gives: 'secondMoment',
      how: 'a b³ (1/3 - 0.21 b/a (1 - b⁴/12a⁴)) of a bar a by b, a the longer side',
      run: torsionConstant,
    },
  },
  groups: {
    'The wood': ['modulus', 'rupture', 'allowed', 'shear', 'rigidity'],
    'Where it is held': ['along', 'station', 'holds', 'buys'],
  },
  steps: holdingSteps,
  answers: [
    { of: 'greatest', label: 'hardest pull', from: 'square to the face, at one station' },
    { of: 'mostTurn', label: 'most twist', from: 'from one station to the next' },
    { of: 'crook', label: 'asked edgewise', from: 'off a straight line from end to end, on its face' },
  ],
  inWords: [
    'At {hardest} the board is held with {greatest}; all stations together hold {allPulls}.',
    {
      when: 'mostTurn < 0.05°',
      says: 'It lies without twist.',
      otherwise: 'It twists by up to {mostTurn} from one station to the next.',
    },
    'Bent across its thickness it takes {flatShare} of what breaks it; the whole bend of the edge would take {wholeShare}.',
    {
      when: 'crook <= 5 mm',
      says: 'Edgewise the curve asks next to nothing.',
      otherwise: [
        'Laid on its face it is {crook} hollow or round',
        {
          when: 'cornerShare > allowed',
          says: ', too much to spring edgewise as well: cut its pieces from boards {buys} wide, or the whole of it from one {wideBoard} wide.',
          otherwise: '; sprung to that as it is bent, its corner takes {cornerShare}.',
        },
      ],
    },
  ],
  table: tableOf({
    caption: 'The board at every station',
    over: 'station',
    columns: [
      { of: 'at', label: 'along the edge' },
      { of: 'pull', label: 'pull' },
      { of: 'shareHere', label: 'of breaking' },
      { of: 'edgePull', label: 'if forced edgewise' },
      { of: 'turnOn', label: 'twist to the next' },
    ],
  }),
  warnings: [
    {
      when: 'greatest > holds',
      says: 'At {hardest} it pulls with {greatest}: {people} people, or better a clamp or a twisted rope.',
      limit: ONE_PERSON,
      weight: 'mind',
    },
    {
      when: 'cornerShare > allowed',
      says: 'Sprung to this curve both ways, its corner would take {cornerShare} of what breaks it, over the {allowed} allowed. Where that comes of bending edgewise, cut its pieces to shape from boards {buys} wide or laminate it from narrow strips; where not, take a thinner board or layers.',
      limit: overAllowed.limit,
      weight: 'mind',
    },
    {
      when: 'shearShare > 50 %',
      says: 'The twist between two stations takes {shearShare} of its shear strength: twist it in slowly, from the end that turns least, or plane the twist into a thicker board.',
      limit: 'half the mean shear strength of clear wood: common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'A bent and twisted board is a spring: when a clamp slips it strikes and turns. Stand out of its line, let nobody lean over it, and bend port and starboard together, or one alone pulls the frames askew.',
    'The pulls are those of gentle slopes and of wood of mean stiffness; one board in three is a fifth stiffer or limper than that. Where the edge runs steeply, as in a swept-up bow, take them for estimates.',
    'A frame that a few screws hold to the jig is moved by less than these pulls: brace it before the board goes on.',
  ],
  sources: [
    { text: FREE, known: 'published' },
    { text: STRIP, known: 'published' },
    {
      text: 'Saint-Venant’s torsion of a rectangular bar, as in Roark’s Formulas for Stress and Strain, Table 10.1',
      known: 'from memory',
    },
    {
      text: 'Elastic constant ratio of 16 to 1 of the Wood Handbook, as quoted in D. Hindman and others, Wood and Fiber Science (2006)',
      known: 'from memory',
    },
    {
      text: 'Wood Handbook, USDA FPL-GTR-190 (2010), Tables 5-3a and 5-5b: shear strength of clear wood',
      known: 'published',
    },
    {
      text: 'One person holds 200 to 300 N (45 to 65 lbf); edge-set is planned away',
      known: 'common practice',
    },
  ],
  about: ['{along}'],
  brings: tradeQuantities,
  draw: drawHolding,
  chart: sharesChart,
});
