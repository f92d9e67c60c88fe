/** The working of the cell `holding`, over the board laid along the edge. */
import { laidBoard } from '../../../boat/joinery/laid-board';
import { cornerStrain } from '../../../boat/joinery/piece-plan';
import { step, type ValuesOf } from '../../form/define';
import { fact, tell } from '../../form/fact';
import type { holdingInputs } from './holding-inputs';
import { GEOMETRY } from '../../../trade/sources';

export const FREE =
  'A. Saxena and B. Sahay, Computer Aided Engineering Design, chapter 5: a batten between ducks is a cubic, and its duck pushes with the jump of the third derivative';
export const STRIP =
  'M. P. do Carmo, Differential Geometry of Curves and Surfaces, section 3-2: normal and geodesic curvature and torsion of a strip on a surface';
const TWIST = 'from memory: Saint-Venant, as in Roark’s Formulas for Stress and Strain, Table 10.1';
const BEAM = 'beam theory';

type Asked = ValuesOf<typeof holdingInputs>;
type Stiff = Asked & { readonly stiffness: number; readonly edgeStiffness: number };

export const board = fact(
  'the middle of the face laid out flat: how far it stands off the straight line between its ends',
  STRIP,
  ({ along }: Asked, { hull }) => laidBoard(hull, along),
);

/** What each station holds the board with, N: + out of the hull. */
export const pulls = fact(
  'stiffness across the thickness times the jump of the third derivative through the face, at each station',
  FREE,
  ({ ends, stiffness }: Stiff, { ask }) =>
    ask(board)
      .pushes(ends)
      .map(({ flat }) => stiffness * flat),
);

const hardest = fact(
  'stiffness across the thickness times the greatest jump of the third derivative through the face',
  FREE,
  ({ ends }: Stiff, { hull, ask }) => {
    const sizes = ask(board)
      .pushes(ends)
      .map(({ flat }) => Math.abs(flat));
    const jump = Math.max(...sizes);
    return { jump, station: hull.stations[sizes.indexOf(jump)]! }; // a push a station
  },
);

const bends = fact(
  'the most of the bend through the face and of that within it, looked at in sixteen places a bay',
  STRIP,
  (_: Asked, { ask }) => {
    const all = ask(board).places.map(({ bend }) => bend);
    return {
      flat: mostOf(all.map(({ flat }) => flat)),
      edgewise: mostOf(all.map(({ edgewise }) => edgewise)),
    };
  },
);

/** Twist from each station to the next, rad, and the length it takes, m. */
const turns = fact(
  'the turn of the face about the edge from one station to the next',
  STRIP,
  (_: Asked, { ask }) => {
    const { stations } = ask(board);
    return stations.slice(1).map((place, i) => {
      const before = stations[i]!; // one before each
      return { turn: place.turn - before.turn, over: place.along - before.along };
    });
  },
);

const corner = fact(
  'half the thickness times the bend across it and half the width times the bend edgewise, in the same places',
  BEAM,
  ({ along, thickness, width }: Asked, { hull }) => cornerStrain(hull, along, { thickness, width }),
);

const whole = fact(
  'one over the tightest radius of the edge; none where it is straight',
  GEOMETRY,
  ({ along }: Asked, { hull }) => 1 / (hull.edge(along).leastRadius?.radius ?? Infinity),
);

const here = fact(
  'the station looked at',
  GEOMETRY,
  ({ station }: Asked, { hull }) => hull.station(station).index,
);
const placeHere = fact('along the edge', GEOMETRY, (_: Asked, { ask }) => ask(board).stations[ask(here)]!); // one a station

const mostOf = (values: readonly number[]) => Math.max(...values.map(Math.abs));

export const holdingSteps = {
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
  hardest: tell(hardest, 'choice', 'station that holds hardest', ({ station }) => station.name, {
    options: 'stations',
  }),
  greatest: tell(
    hardest,
    'force',
    'pull at that station, square to the face',
    ({ jump }, { stiffness }) => stiffness * jump,
  ),
  allPulls: tell(pulls, 'force', 'all stations together, whichever way they hold', (all) =>
    all.reduce((sum, pull) => sum + Math.abs(pull), 0),
  ),
  people: step(
    'count',
    'max(1, ceil(greatest / holds))',
    'hands to hold it there until it is fastened',
    'what one person holds, by your entry',
  ),
  mostBend: tell(bends, 'curvature', 'hardest bend across the thickness', ({ flat }) => flat),
  flatShare: step(
    'share',
    'modulus * thickness * mostBend / (2 * rupture)',
    'share of breaking in that bend',
    BEAM,
  ),
  mostEdge: tell(bends, 'curvature', 'hardest bend edgewise', ({ edgewise }) => edgewise),
  edgeShare: step(
    'share',
    'modulus * width * mostEdge / (2 * rupture)',
    'share of breaking, were it forced edgewise and not cut to shape',
    BEAM,
  ),
  crook: tell(board, 'length', 'what the curve asks edgewise over the whole length', ({ crook }) => crook),
  spare: tell(
    board,
    'length',
    'what it takes up edgewise over the whole length',
    (laid) => laid.spareFor({ from: 0, to: laid.edge.length }),
    {
      how: 'the same line: from its farthest place on one side of that straight line to its farthest on the other',
    },
  ),
  wideBoard: step('length', 'width + spare', 'width of the board to cut it from in one length', GEOMETRY),
  cornerStrain: tell(
    corner,
    'ratio',
    'stretch at the corner of the section, were it sprung both ways at once',
  ),
  cornerShare: step(
    'share',
    'modulus * cornerStrain / rupture',
    'share of breaking there, were it sprung edgewise and not cut to shape',
    BEAM,
  ),
  wholeBend: tell(whole, 'curvature', 'hardest bend of the edge, whichever way'),
  wholeShare: step(
    'share',
    'modulus * thickness * wholeBend / (2 * rupture)',
    'share of breaking if all of that bend lay across the thickness, as the cell on bending a board takes it',
    BEAM,
  ),
  mostTurn: tell(turns, 'angle', 'most twist between two stations', (all) =>
    mostOf(all.map(({ turn }) => turn)),
  ),
  twistRate: tell(
    turns,
    'perLength',
    'hardest twist for each length',
    (all) => mostOf(all.map(({ turn, over }) => turn / over)),
    { how: 'the most of that turn, rad, over the length from station to station' },
  ),
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
  at: tell(
    placeHere,
    'length',
    'the station looked at, from the after end of the edge',
    ({ along }) => along,
  ),
  pull: tell(
    fact('of these pulls the one at that station', FREE, (_: Stiff, { ask }) => ask(pulls)[ask(here)]!),
    'force',
    'what holds the board there, square to its face; + out of the hull',
  ),
  bendHere: tell(
    placeHere,
    'curvature',
    'bend across the thickness there',
    ({ bend }) => Math.abs(bend.flat),
    { how: 'curvature of the edge through the face', source: STRIP },
  ),
  shareHere: step(
    'share',
    'modulus * thickness * bendHere / (2 * rupture)',
    'share of breaking there, across the thickness',
    BEAM,
  ),
  edgePull: tell(
    fact(
      'stiffness edgewise times the jump of the third derivative within the face',
      FREE,
      ({ ends, edgeStiffness }: Stiff, { ask }) =>
        edgeStiffness * ask(board).pushes(ends)[ask(here)]!.edgewise,
    ),
    'force',
    'what would force it edgewise there, were it not cut to shape; + away from the keel',
  ),
  turnOn: tell(
    fact(
      'turn of the face about the edge to the next station; none beyond the last',
      STRIP,
      (_: Asked, { ask }) => ask(turns)[ask(here)]?.turn ?? 0,
    ),
    'angle',
    'twist from there to the next station forward; + as a right-hand screw',
  ),
} as const;

/** All that the drawings of the cell go by. */
export type HoldingValues = ValuesOf<typeof holdingInputs, typeof holdingSteps>;
