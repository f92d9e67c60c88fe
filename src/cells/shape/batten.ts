/** Which batten stock bends through the stations of a line, how near to breaking, and with what force at each duck. */
import { bendingModuli } from '../../boat/quantities/bending-quantities';
import { tradeQuantities } from '../../boat/quantities/trade-quantities';
import { overAllowed, overPicked } from '../common/wood/bend-limits';
import { defineCell } from '../form/define';
import { tableOf } from '../form/row-quantities';
import { drawForces, shareChart } from './batten-drawing';
import { battenInputs } from './batten-inputs';
import { battenOffers } from './batten-offers';
import { battenSteps, FREE, PRESSED } from './batten-steps';

export const batten = defineCell({
  id: 'batten',
  stage: 'shape',
  title: 'The batten',
  question:
    'Which batten bends through these stations without breaking, and how hard does each duck hold it?',
  inputs: battenInputs,
  groups: {
    'The wood': ['modulus', 'rupture', 'density', 'allowed'],
    'The ducks': ['station', 'holds', 'grip', 'past'],
    'Pushed with a finger': ['push', 'gives'],
  },
  steps: battenSteps,
  answers: [
    { of: 'share', label: 'of breaking', from: 'in the outer face, where the batten bends hardest' },
    { of: 'greatest', label: 'hardest duck', from: 'square to the batten, at one station' },
    {
      of: 'thickest',
      label: 'thickest that bends',
      from: 'across the bend, of this wood, within the share allowed',
    },
  ],
  inWords:
    'Near {near} the batten bends hardest, to a radius of {radius}; {thickness} thick, it takes {share} of what breaks this wood. The duck at {hardest} holds it with {greatest}, all ducks together with {allDucks}. Buy {length}: the line is {curve} long, and the rest runs past its ends.',
  table: tableOf({
    caption: 'The batten at every station',
    over: 'station',
    columns: [
      { of: 'offset', label: 'offset' },
      { of: 'radiusHere', label: 'tightest radius nearby' },
      { of: 'duck', label: 'duck' },
      { of: 'shareHere', label: 'share of breaking' },
    ],
  }),
  warnings: [
    {
      ...overAllowed,
      says: 'The bend near {near} takes {share} of what breaks this wood, more than the {allowed} allowed: take a batten at most {thickest} thick across the bend.',
    },
    {
      ...overPicked,
      says: 'The bend near {near} takes {share} of what breaks this wood on average: take a batten at most {thickest} thick across the bend.',
    },
    {
      when: 'greatest > holds',
      says: 'The duck at {hardest} has to hold {greatest}; loose on the floor it would have to weigh {duckMass}. Ducks that hold {holds} each hold a batten at most {thickestHeld} thick across the bend.',
      limit: 'what one duck or nail holds, by your entry',
      weight: 'mind',
    },
    {
      when: 'thickness < thinnest',
      says: 'The batten is limp: a push of {push} in the middle of the longest bay moves it by up to {dent}. It follows every number, a wrong one too. Take {thinnest} or more across the bend.',
      limit: 'the push and the move entered above; common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'A bent batten is a spring: let go, or broken, it strikes. Take the ducks off from the middle outward with one hand on the batten, and keep your face out of its way.',
    'Moduli are means of small, clear, straight-grained wood: single battens vary by about a sixth in rupture and a fifth in stiffness (from memory: Wood Handbook, Table 5-6), and a knot or grain that runs out takes far more.',
    'Forces and radii are those of small slopes: good while the line runs at less than about 0.3, or 17°, to the base of its view (common practice); steeper, they are estimates.',
  ],
  sources: [
    { text: FREE, known: 'published' },
    {
      text: 'Wood Handbook, USDA FPL-GTR-190 (2010), Tables 5-3a and 5-5b: modulus and rupture of clear wood; a tenth on the modulus for bending alone, as it says there',
      known: 'published',
    },
    {
      text: `${PRESSED}, that is F L³ / (4 E b h³); as the cube of the thickness`,
      known: 'published',
    },
    {
      text: 'Small-strain beam theory, any text on strength of materials: strain t/(2R)',
      known: 'from memory',
    },
    {
      text: 'Batten 2 to 3 ft (600 to 900 mm) longer than the curve at each end, clear and straight-grained, scarfed at 1 in 12; share of rupture allowed; what ducks hold',
      known: 'common practice',
    },
  ],
  about: ['{edge}'],
  brings: () => [...tradeQuantities(), ...bendingModuli],
  draw: drawForces,
  chart: shareChart,
  offers: battenOffers,
});
