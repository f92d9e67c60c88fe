/** Which batten stock bends through the stations of a line, how near to breaking, and with what force at each duck. */
import { tradeQuantities } from '../../boat/quantities/trade-quantities';
import type { Hull } from '../../boat';
import { bendingModuli, shareAsked } from '../../boat/quantities/bending-quantities';
import { lengthTo } from '../../kernel';
import { choice, defineCell, hullStep, input, step, type Values } from '../form/define';
import { bendShareTexts } from '../../trade/bend-grades';
import { overAllowed, overPicked } from '../common/wood/bend-limits';
import { woods } from '../common/wood/woods';
import { battenOffers } from './batten-offers';
import { drawForces, shareChart } from './batten-drawing';
import {
  type LineView,
  lineViews,
  type LongLine,
  longLine,
  nearestKnot,
  tightestAbout,
  tightestOf,
} from './long-line';

const BEAM = 'beam theory: strain is half the thickness over the radius';
const FREE =
  'A. Saxena and B. Sahay, Computer Aided Engineering Design, chapter 5: a batten between ducks is a cubic; its ends free beyond the last';
const PRESSED =
  'S. J. Record, The Mechanical Properties of Wood, 1914, stiffness of beams: F L³ / (48 EI) in the middle of two supports';
const GEOMETRY = 'geometry';
const TABLE = 'the table of offsets';
const lineKeys = ['edge', 'view'] as const;

export const batten = defineCell({
  id: 'batten',
  stage: 'shape',
  title: 'The batten',
  question:
    'Which batten bends through these stations without breaking, and how hard does each duck hold it?',
  inputs: {
    edge: choice('Line', { options: 'edges', preset: 'sheer' }),
    view: choice('Bent in', { options: lineViews, preset: 'plan' }),
    species: choice('Wood', { options: woods, preset: 'sitkaSpruce', note: 'dry, 12 % moisture' }),
    thickness: input('length', 'Across the bend', {
      preset: '19 mm',
      presetInch: '3/4 in',
      min: '1 mm',
      max: '100 mm',
      step: '1 mm',
      slider: true,
      note: 'the side that is bent. A square batten of 3/4 in (19 mm) is common practice',
    }),
    width: input('length', 'The other way', {
      preset: '19 mm',
      presetInch: '3/4 in',
      min: '2 mm',
      max: '300 mm',
      step: '1 mm',
    }),
    allowed: input('share', 'Share of rupture allowed', {
      ...shareAsked,
      bound: 'most',
      note: bendShareTexts.source,
    }),
    holds: input('force', 'What a duck or a nail holds', {
      preset: '50 N',
      presetInch: '10 lbf',
      min: '1 N',
      max: '2000 N',
      step: '5 N',
      note: 'common practice, no source: a small nail on each side of the batten, in a plywood floor. Pull on yours with a spring balance',
    }),
    past: input('length', 'Batten past each end', {
      preset: '750 mm',
      presetInch: '30 in',
      min: '0 mm',
      max: '3 m',
      step: '50 mm',
      note: 'common practice: 2 to 3 ft (600 to 900 mm) longer than the curve at each end',
    }),
    push: input('force', 'Push of a finger', {
      preset: '5 N',
      presetInch: '1 lbf',
      min: '0.1 N',
      max: '500 N',
      step: '1 N',
      note: 'common practice, no source: what a hand laid on the batten does without meaning to',
    }),
    gives: input('length', 'That may move it by', {
      preset: '3 mm',
      presetInch: '1/8 in',
      min: '0.1 mm',
      max: '50 mm',
      step: '1 mm',
      note: 'common practice: 1/8 in (3 mm) is faired away in silence',
    }),
    grip: input('ratio', 'Friction of a loose duck on the floor', {
      preset: '0.3',
      min: '0.05',
      max: '1.5',
      step: '0.05',
      note: 'common practice, no source: 0.2 to 0.5',
    }),
    modulus: input('stress', 'Bending modulus', {
      from: 'timber.{species}.bendingModulus',
      preset: '11.9 GPa',
      min: '1 GPa',
      max: '40 GPa',
      step: '0.1 GPa',
      note: 'mean of clear wood, Wood Handbook, and a tenth more: the printed value has the shear of a short test beam in it',
    }),
    rupture: input('stress', 'Modulus of rupture', {
      from: 'timber.{species}.rupture',
      preset: '70 MPa',
      min: '5 MPa',
      max: '300 MPa',
      step: '1 MPa',
      note: 'mean of clear wood, Wood Handbook',
    }),
    density: input('density', 'Density', {
      from: 'timber.{species}.density',
      preset: '450 kg/m³',
      min: '100 kg/m³',
      max: '1500 kg/m³',
      step: '10 kg/m³',
    }),
    station: choice('Station looked at', { options: 'stations', preset: 'frame2' }),
  },
  groups: {
    'The wood': ['modulus', 'rupture', 'density', 'allowed'],
    'The ducks': ['station', 'holds', 'grip', 'past'],
    'Pushed with a finger': ['push', 'gives'],
  },
  steps: {
    radius: hullStep('length', {
      says: 'the least radius of the batten in this view, its ends running on free',
      uses: lineKeys,
      find: (hull, v) => tightestOf(lineOf(hull, v)).radius,
      meaning: 'tightest radius of the batten in this view',
      source: FREE,
    }),
    near: hullStep('choice', {
      says: 'the station nearest to that place',
      uses: lineKeys,
      find: (hull, v) => {
        const line = lineOf(hull, v);
        return hull.stations[nearestKnot(line.freeBatten, tightestOf(line).parameter)]!.name; // a knot a station
      },
      meaning: 'station where the batten bends hardest',
      source: GEOMETRY,
    }),
    along: hullStep('length', {
      says: 'measured along the batten',
      uses: lineKeys,
      find: (hull, v) => {
        const line = lineOf(hull, v);
        return lengthTo(line.freeBatten, tightestOf(line).parameter);
      },
      meaning: 'that place, along the batten from the after end of the line',
      source: GEOMETRY,
    }),
    secondMoment: step('secondMoment', 'width * thickness^3 / 12', 'second moment of the section', GEOMETRY),
    stiffness: step(
      'bendingStiffness',
      'modulus * secondMoment',
      'stiffness of the batten',
      'beam theory: EI',
    ),
    strain: step(
      'ratio',
      'thickness / (2 * radius)',
      'stretch of the outer face at the tightest place',
      BEAM,
    ),
    stress: step('stress', 'modulus * strain', 'stress in the outer face there', 'beam theory, elastic'),
    share: step(
      'share',
      'stress / rupture',
      'stress as a share of what breaks this wood',
      'Wood Handbook, modulus of rupture',
    ),
    margin: step('ratio', 'rupture / stress', 'how many times harder it would have to bend to break', BEAM),
    leastRadius: step(
      'length',
      'modulus * thickness / (2 * allowed * rupture)',
      'least radius that this batten takes within the share allowed',
      BEAM,
      'least',
    ),
    thickest: step(
      'length',
      '2 * allowed * rupture * radius / modulus',
      'thickest batten of this wood that bends there within the share allowed',
      BEAM,
      'most',
    ),
    hardest: hullStep('choice', {
      says: 'the station with the greatest jump of the batten’s third derivative, its ends running on free',
      uses: lineKeys,
      find: (hull, v) => hull.stations[hardestOf(lineOf(hull, v))]!.name, // a duck a station
      meaning: 'station whose duck holds hardest',
      source: FREE,
    }),
    greatest: hullStep('force', {
      says: 'stiffness of the batten times that jump',
      uses: [...lineKeys, 'stiffness'],
      find: (hull, v) => {
        const { ducks } = lineOf(hull, v);
        return stiffnessOf(v) * Math.max(...ducks.map(Math.abs));
      },
      meaning: 'force of the hardest duck',
      source: FREE,
    }),
    allDucks: hullStep('force', {
      says: 'the same at every station, either way, added up',
      uses: [...lineKeys, 'stiffness'],
      find: (hull, v) =>
        stiffnessOf(v) * lineOf(hull, v).ducks.reduce((sum, duck) => sum + Math.abs(duck), 0),
      meaning: 'all ducks together, whichever way they push',
      source: FREE,
    }),
    duckMass: step(
      'mass',
      'greatest / (grip * g)',
      'what a loose duck would have to weigh at the hardest station',
      'statics: friction holds a share of the weight',
    ),
    thickestHeld: step(
      'length',
      'thickness * (holds / greatest)^(1/3)',
      'thickest batten of this width that the hardest duck holds',
      'S. J. Record, The Mechanical Properties of Wood, 1914: stiffness goes as the cube of the depth',
      'most',
    ),
    bay: hullStep('length', {
      says: 'the longest of the straight distances from duck to duck in this view',
      uses: lineKeys,
      find: (hull, v) => {
        const { knots } = lineOf(hull, v).freeBatten;
        return Math.max(...Array.from(knots.subarray(1), (knot, i) => knot - knots[i]!));
      },
      meaning: 'longest bay',
      source: TABLE,
    }),
    dent: step(
      'length',
      'push * bay^3 / (48 * stiffness)',
      'most that the push moves it, in the middle of the longest bay: less where it runs on over its ducks',
      PRESSED,
    ),
    thinnest: step(
      'length',
      '(push * bay^3 / (4 * modulus * width * gives))^(1/3)',
      'thinnest batten of this width that the push moves no further: a thinner one follows the hand instead of averaging',
      PRESSED,
      'least',
    ),
    curve: hullStep('length', {
      says: 'along the batten, in this view',
      uses: lineKeys,
      find: (hull, v) => lineOf(hull, v).freeBatten.length,
      meaning: 'length of the line in this view',
      source: GEOMETRY,
    }),
    length: step(
      'length',
      'curve + 2 * past',
      'length of the batten, with what runs past both ends',
      GEOMETRY,
    ),
    mass: step('mass', 'density * width * thickness * length', 'weight of the batten', GEOMETRY),
    offset: hullStep('length', {
      says: 'from the table',
      uses: [...lineKeys, 'station'],
      find: (hull, v) => lineOf(hull, v).values[indexHere(hull, v)]!,
      meaning: 'half-breadth or height of the station looked at',
      source: TABLE,
    }),
    radiusHere: hullStep('length', {
      says: 'the least radius of the batten from half a bay aft of the station to half a bay forward of it',
      uses: [...lineKeys, 'station'],
      find: (hull, v) => tightestAbout(lineOf(hull, v), indexHere(hull, v)).radius,
      meaning: 'tightest radius about that station',
      source: FREE,
    }),
    duck: hullStep('force', {
      says: 'stiffness of the batten times the jump of its third derivative there',
      uses: [...lineKeys, 'station', 'stiffness'],
      find: (hull, v) => stiffnessOf(v) * lineOf(hull, v).ducks[indexHere(hull, v)]!,
      meaning: 'force of the duck on the batten there; + outboard or up',
      source: FREE,
    }),
    shareHere: step(
      'share',
      'modulus * thickness / (2 * radiusHere * rupture)',
      'share of what breaks this wood, about that station',
      BEAM,
    ),
  },
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
  table: {
    caption: 'The batten at every station',
    over: 'station',
    columns: [
      { of: 'offset', label: 'offset' },
      { of: 'radiusHere', label: 'tightest radius nearby' },
      { of: 'duck', label: 'duck' },
      { of: 'shareHere', label: 'share of breaking' },
    ],
  },
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
  lights: ['{edge}'],
  brings: () => [...tradeQuantities(), ...bendingModuli],
  draw: drawForces,
  chart: shareChart,
  offers: battenOffers,
});

function lineOf(hull: Hull, v: Values): LongLine {
  const view: LineView = v['view'] === 'profile' ? 'profile' : 'plan';
  return longLine(hull, hull.edge(String(v['edge'])), view);
}

const indexHere = (hull: Hull, v: Values) => hull.station(String(v['station'])).index;
const stiffnessOf = (v: Values) => Number(v['stiffness']);

function hardestOf({ ducks }: LongLine): number {
  const sizes = ducks.map(Math.abs);
  return sizes.indexOf(Math.max(...sizes));
}
