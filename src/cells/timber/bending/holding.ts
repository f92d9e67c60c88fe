/** How hard a bent board pulls at each frame, how far it twists, and what the curve asks edgewise. */
import { tradeQuantities } from '../../../boat/quantities/trade-quantities';
import type { Hull } from '../../../boat';
import { type BoardEnds, type LaidBoard, laidBoard } from '../../../boat/joinery/laid-board';
import { torsionConstant } from '../../../kernel/torsion';
import { choice, defineCell, hullStep, input, step, type Values } from '../../form/define';
import { firstOf } from '../../form/in-words';
import { cornerStrain } from '../../../boat/joinery/piece-plan';
import { ONE_PERSON, overAllowed } from '../../common/wood/bend-limits';
import { bentStock } from './bent-stock';
import { drawHolding, sharesChart } from './holding-drawing';

const FREE =
  'A. Saxena and B. Sahay, Computer Aided Engineering Design, chapter 5: a batten between ducks is a cubic, and its duck pushes with the jump of the third derivative';
const STRIP =
  'M. P. do Carmo, Differential Geometry of Curves and Surfaces, section 3-2: normal and geodesic curvature and torsion of a strip on a surface';
const TWIST = 'from memory: Saint-Venant, as in Roark’s Formulas for Stress and Strain, Table 10.1';
const BEAM = 'beam theory';
const boardKeys = ['along'] as const;
const heldKeys = ['along', 'ends'] as const;

const STATE =
  'mean of clear wood at 12 %, Wood Handbook; for wood wetter or warmer write here what the cell on bending works out';

export const holding = defineCell({
  id: 'holding',
  stage: 'timber',
  title: 'Holding it to the frames',
  question:
    'How hard does the bent board pull at each frame, how far does it twist, and what does the curve ask edgewise?',
  inputs: {
    part: { ...bentStock.part, preset: 'chineLog' },
    along: { ...bentStock.along, preset: 'chine' },
    ends: choice('Its ends', {
      options: [
        { id: 'free', label: 'held, but free to turn' },
        { id: 'fast', label: 'held fast, turned as the curve leads on' },
      ],
      preset: 'free',
      note: 'free while it goes on with a clamp at each end; fast once it is let into stem and transom, which spares the frame next to them. The shares go by the edge’s own curve in both cases',
    }),
    thickness: input('length', 'Board thickness', {
      from: '{part}.thickness',
      preset: '19 mm',
      min: '1 mm',
      max: '150 mm',
      step: '1 mm',
      slider: true,
      note: 'square to its face, which lies on the skin',
    }),
    width: { ...bentStock.width, note: 'of its face' },
    species: bentStock.species,
    holds: bentStock.holds,
    modulus: { ...bentStock.modulus, note: STATE },
    rupture: { ...bentStock.rupture, note: STATE },
    allowed: { ...bentStock.allowed, slider: false },
    shear: input('stress', 'Shear strength along the grain', {
      from: 'timber.{species}.shear',
      preset: '7.8 MPa',
      min: '1 MPa',
      max: '40 MPa',
      step: '0.1 MPa',
      note: 'mean of clear wood at 12 % moisture, Wood Handbook',
    }),
    rigidity: input('ratio', 'Stiffness in bending over that in shear', {
      preset: '16',
      min: '5',
      max: '40',
      step: '1',
      note: 'the Wood Handbook’s usual 16, as quoted in papers on it; single woods lie from about 10 to 20',
    }),
    buys: input('length', 'Width of board that its pieces are cut from', {
      from: '{part}.boardWidth',
      preset: '38 mm',
      min: '3 mm',
      max: '2 m',
      step: '1 mm',
      note: 'by the plan of pieces',
    }),
    station: choice('Station looked at', { options: 'stations', preset: 'frame2' }),
  },
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
  steps: {
    stiffness: step(
      'bendingStiffness',
      'modulus * width * thickness^3 / 12',
      'stiffness across the thickness',
      'beam theory: EI',
    ),
    edgeStiffness: step(
      'bendingStiffness',
      'modulus * thickness * width^3 / 12',
      'stiffness edgewise',
      'beam theory: EI',
    ),
    hardest: hullStep('choice', {
      options: 'stations',
      says: 'the station with the greatest jump of the third derivative through the face',
      uses: heldKeys,
      find: (hull, v) => hull.stations[hardestOf(pushesOf(hull, v))]!.name, // a push a station
      meaning: 'station that holds hardest',
      source: FREE,
    }),
    greatest: hullStep('force', {
      says: 'stiffness across the thickness times that jump',
      uses: [...heldKeys, 'stiffness'],
      find: (hull, v) => Number(v['stiffness']) * Math.max(...pushesOf(hull, v).map(Math.abs)),
      meaning: 'pull at that station, square to the face',
      source: FREE,
    }),
    allPulls: hullStep('force', {
      says: 'the same at every station, either way, added up',
      uses: [...heldKeys, 'stiffness'],
      find: (hull, v) =>
        Number(v['stiffness']) * pushesOf(hull, v).reduce((sum, push) => sum + Math.abs(push), 0),
      meaning: 'all stations together, whichever way they hold',
      source: FREE,
    }),
    people: step(
      'count',
      'max(1, ceil(greatest / holds))',
      'hands to hold it there until it is fastened',
      'what one person holds, by your entry',
    ),
    mostBend: hullStep('curvature', {
      says: 'the most of the bend through the face, looked at in sixteen places a bay',
      uses: boardKeys,
      find: (hull, v) => mostOf(boardOf(hull, v).places.map(({ bend }) => bend.flat)),
      meaning: 'hardest bend across the thickness',
      source: STRIP,
    }),
    flatShare: step(
      'share',
      'modulus * thickness * mostBend / (2 * rupture)',
      'share of breaking in that bend',
      BEAM,
    ),
    mostEdge: hullStep('curvature', {
      says: 'the most of the bend within the face, in the same places',
      uses: boardKeys,
      find: (hull, v) => mostOf(boardOf(hull, v).places.map(({ bend }) => bend.edgewise)),
      meaning: 'hardest bend edgewise',
      source: STRIP,
    }),
    edgeShare: step(
      'share',
      'modulus * width * mostEdge / (2 * rupture)',
      'share of breaking, were it forced edgewise and not cut to shape',
      BEAM,
    ),
    crook: hullStep('length', {
      says: 'the middle of the face laid out flat: how far it stands off the straight line between its ends',
      uses: boardKeys,
      find: (hull, v) => boardOf(hull, v).crook,
      meaning: 'what the curve asks edgewise over the whole length',
      source: STRIP,
    }),
    spare: hullStep('length', {
      says: 'the same line: from its farthest place on one side of that straight line to its farthest on the other',
      uses: boardKeys,
      find: (hull, v) => {
        const board = boardOf(hull, v);
        return board.spareFor({ from: 0, to: board.edge.length });
      },
      meaning: 'what it takes up edgewise over the whole length',
      source: STRIP,
    }),
    wideBoard: step('length', 'width + spare', 'width of the board to cut it from in one length', 'geometry'),
    cornerStrain: hullStep('ratio', {
      says: 'half the thickness times the bend across it and half the width times the bend edgewise, in the same places',
      uses: [...boardKeys, 'thickness', 'width'],
      find: (hull, v) =>
        cornerStrain(hull, String(v['along']), {
          thickness: Number(v['thickness']),
          width: Number(v['width']),
        }),
      meaning: 'stretch at the corner of the section, were it sprung both ways at once',
      source: BEAM,
    }),
    cornerShare: step(
      'share',
      'modulus * cornerStrain / rupture',
      'share of breaking there, were it sprung edgewise and not cut to shape',
      BEAM,
    ),
    wholeBend: hullStep('curvature', {
      says: 'one over the tightest radius of the edge; none where it is straight',
      uses: boardKeys,
      find: (hull, v) => 1 / (hull.edge(String(v['along'])).leastRadius?.radius ?? Infinity),
      meaning: 'hardest bend of the edge, whichever way',
      source: 'geometry',
    }),
    wholeShare: step(
      'share',
      'modulus * thickness * wholeBend / (2 * rupture)',
      'share of breaking if all of that bend lay across the thickness, as the cell on bending a board takes it',
      BEAM,
    ),
    mostTurn: hullStep('angle', {
      says: 'the most of the turn of the face about the edge from one station to the next',
      uses: boardKeys,
      find: (hull, v) => mostOf(turnsOf(boardOf(hull, v)).map(({ turn }) => turn)),
      meaning: 'most twist between two stations',
      source: STRIP,
    }),
    twistRate: hullStep('perLength', {
      says: 'the most of that turn, rad, over the length from station to station',
      uses: boardKeys,
      find: (hull, v) => mostOf(turnsOf(boardOf(hull, v)).map(({ turn, over }) => turn / over)),
      meaning: 'hardest twist for each length',
      source: STRIP,
    }),
    torque: step(
      'moment',
      'modulus / rigidity * torsionConstant(width, thickness) * twistRate',
      'turning moment that twists it so',
      TWIST,
    ),
    shearStress: step(
      'stress',
      'modulus / rigidity * min(width, thickness) * twistRate',
      'shear in the middle of its wide face, at most',
      `${TWIST}: shear modulus times thickness times twist`,
    ),
    shearShare: step(
      'share',
      'shearStress / shear',
      'share of its shear strength',
      'Wood Handbook, shear along the grain',
    ),
    at: hullStep('length', {
      says: 'along the edge',
      uses: [...boardKeys, 'station'],
      find: (hull, v) => boardOf(hull, v).stations[indexHere(hull, v)]!.along,
      meaning: 'the station looked at, from the after end of the edge',
      source: 'geometry',
    }),
    pull: hullStep('force', {
      says: 'stiffness across the thickness times the jump of the third derivative through the face',
      uses: [...heldKeys, 'station', 'stiffness'],
      find: (hull, v) => Number(v['stiffness']) * pushesOf(hull, v)[indexHere(hull, v)]!,
      meaning: 'what holds the board there, square to its face; + out of the hull',
      source: FREE,
    }),
    bendHere: hullStep('curvature', {
      says: 'curvature of the edge through the face',
      uses: [...boardKeys, 'station'],
      find: (hull, v) => Math.abs(boardOf(hull, v).stations[indexHere(hull, v)]!.bend.flat),
      meaning: 'bend across the thickness there',
      source: STRIP,
    }),
    shareHere: step(
      'share',
      'modulus * thickness * bendHere / (2 * rupture)',
      'share of breaking there, across the thickness',
      BEAM,
    ),
    edgePull: hullStep('force', {
      says: 'stiffness edgewise times the jump of the third derivative within the face',
      uses: [...heldKeys, 'station', 'edgeStiffness'],
      find: (hull, v) =>
        Number(v['edgeStiffness']) * boardOf(hull, v).pushes(endsOf(v))[indexHere(hull, v)]!.edgewise,
      meaning: 'what would force it edgewise there, were it not cut to shape; + away from the keel',
      source: FREE,
    }),
    turnOn: hullStep('angle', {
      says: 'turn of the face about the edge to the next station; none beyond the last',
      uses: [...boardKeys, 'station'],
      find: (hull, v) => turnsOf(boardOf(hull, v))[indexHere(hull, v)]?.turn ?? 0,
      meaning: 'twist from there to the next station forward; + as a right-hand screw',
      source: STRIP,
    }),
  },
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
    firstOf(
      [
        { when: 'crook <= 5 mm', says: 'Edgewise the curve asks next to nothing.' },
        {
          when: 'cornerShare > allowed',
          says: 'Laid on its face it is {crook} hollow or round, too much to spring edgewise as well: cut its pieces from boards {buys} wide, or the whole of it from one {wideBoard} wide.',
        },
      ],
      'Laid on its face it is {crook} hollow or round; sprung to that as it is bent, its corner takes {cornerShare}.',
    ),
  ],
  table: {
    caption: 'The board at every station',
    over: 'station',
    columns: [
      { of: 'at', label: 'along the edge' },
      { of: 'pull', label: 'pull' },
      { of: 'shareHere', label: 'of breaking' },
      { of: 'edgePull', label: 'if forced edgewise' },
      { of: 'turnOn', label: 'twist to the next' },
    ],
  },
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
  lights: ['{along}'],
  brings: tradeQuantities,
  draw: drawHolding,
  chart: sharesChart,
});

const boardOf = (hull: Hull, v: Values): LaidBoard => laidBoard(hull, String(v['along']));
const endsOf = (v: Values): BoardEnds => (v['ends'] === 'fast' ? 'fast' : 'free');
const pushesOf = (hull: Hull, v: Values) =>
  boardOf(hull, v)
    .pushes(endsOf(v))
    .map(({ flat }) => flat);
const indexHere = (hull: Hull, v: Values) => hull.station(String(v['station'])).index;
const mostOf = (values: readonly number[]) => Math.max(...values.map(Math.abs));

function hardestOf(pushes: readonly number[]): number {
  const sizes = pushes.map(Math.abs);
  return sizes.indexOf(Math.max(...sizes));
}

/** Twist from each station to the next, rad, and the length it takes, m. */
function turnsOf({ stations }: LaidBoard): readonly { readonly turn: number; readonly over: number }[] {
  return stations.slice(1).map((place, i) => {
    const before = stations[i]!;
    return { turn: place.turn - before.turn, over: place.along - before.along };
  });
}
