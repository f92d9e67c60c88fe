/** The working of the cell `batten`, over the line that it is bent to. */
import { lengthTo } from '../../kernel';
import { step, type ValuesOf } from '../form/define';
import { fact, tell } from '../form/fact';
import type { battenInputs } from './batten-inputs';
import { longLine, nearestKnot, tightestAbout, tightestOf } from './long-line';
import { GEOMETRY } from '../../trade/sources';

export const FREE =
  'A. Saxena and B. Sahay, Computer Aided Engineering Design, chapter 5: a batten between ducks is a cubic; its ends free beyond the last';
export const PRESSED =
  'S. J. Record, The Mechanical Properties of Wood, 1914, stiffness of beams: F L³ / (48 EI) in the middle of two supports';
const BEAM = 'beam theory: strain is half the thickness over the radius';
const TABLE = 'the table of offsets';

type Asked = ValuesOf<typeof battenInputs> & { readonly stiffness: number };

/** The line in hand, with the batten bent to it. */
export const line = fact(
  'along the batten, in this view, its ends running on free',
  GEOMETRY,
  ({ edge, view }: Asked, { hull }) => longLine(hull, hull.edge(edge), view),
);

/** Where the batten bends hardest. */
export const worst = fact(
  'the least radius of the batten in this view, its ends running on free',
  FREE,
  (_: Asked, { hull, ask }) => {
    const { freeBatten } = ask(line);
    const { parameter, point, radius } = tightestOf(ask(line));
    const near = hull.stations[nearestKnot(freeBatten, parameter)]!; // a knot a station
    return { point, radius, near, along: lengthTo(freeBatten, parameter) };
  },
);

/** Force of each duck, N: + outboard or up. */
export const ducks = fact(
  'stiffness of the batten times the jump of its third derivative at each station, its ends running on free',
  FREE,
  ({ stiffness }: Asked, { ask }) => ask(line).ducks.map((duck) => stiffness * duck),
);

const hardest = fact(
  'stiffness of the batten times the greatest jump of its third derivative at a station, its ends running on free',
  FREE,
  (_: Asked, { hull, ask }) => {
    const sizes = ask(line).ducks.map(Math.abs);
    const jump = Math.max(...sizes);
    return { jump, station: hull.stations[sizes.indexOf(jump)]! }; // a duck a station
  },
);

const here = fact(
  'the station looked at',
  TABLE,
  ({ station }: Asked, { hull }) => hull.station(station).index,
);

export const battenSteps = {
  radius: tell(worst, 'length', 'tightest radius of the batten in this view', ({ radius }) => radius),
  near: tell(worst, 'choice', 'station where the batten bends hardest', ({ near }) => near.name, {
    how: 'the station nearest to that place',
  }),
  along: tell(
    worst,
    'length',
    'that place, along the batten from the after end of the line',
    ({ along }) => along,
    { how: 'measured along the batten' },
  ),
  secondMoment: step('secondMoment', 'width * thickness^3 / 12', 'second moment of the section', GEOMETRY),
  stiffness: step('bendingStiffness', 'modulus * secondMoment', 'stiffness of the batten', 'beam theory: EI'),
  strain: step('ratio', 'thickness / (2 * radius)', 'stretch of the outer face at the tightest place', BEAM),
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
  hardest: tell(hardest, 'choice', 'station whose duck holds hardest', ({ station }) => station.name),
  greatest: tell(
    hardest,
    'force',
    'force of the hardest duck',
    ({ jump }, { stiffness }) => stiffness * jump,
  ),
  allDucks: tell(ducks, 'force', 'all ducks together, whichever way they push', (all) =>
    all.reduce((sum, force) => sum + Math.abs(force), 0),
  ),
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
  bay: tell(
    line,
    'length',
    'longest bay',
    ({ freeBatten: { knots } }) => Math.max(...Array.from(knots.subarray(1), (knot, i) => knot - knots[i]!)),
    { how: 'the longest of the straight distances from duck to duck in this view', source: TABLE },
  ),
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
  curve: tell(line, 'length', 'length of the line in this view', ({ freeBatten }) => freeBatten.length),
  length: step('length', 'curve + 2 * past', 'length of the batten, with what runs past both ends', GEOMETRY),
  mass: step('mass', 'density * width * thickness * length', 'weight of the batten', GEOMETRY),
  offset: tell(
    fact('from the table', TABLE, (_: Asked, { ask }) => ask(line).values[ask(here)]!), // one a station
    'length',
    'half-breadth or height of the station looked at',
  ),
  radiusHere: tell(
    fact(
      'the least radius of the batten from half a bay aft of the station to half a bay forward of it',
      FREE,
      (_: Asked, { ask }) => tightestAbout(ask(line), ask(here)).radius,
    ),
    'length',
    'tightest radius about that station',
  ),
  duck: tell(
    fact('of all ducks the one at that station', FREE, (_: Asked, { ask }) => ask(ducks)[ask(here)]!), // one a station
    'force',
    'force of the duck on the batten there; + outboard or up',
  ),
  shareHere: step(
    'share',
    'modulus * thickness / (2 * radiusHere * rupture)',
    'share of what breaks this wood, about that station',
    BEAM,
  ),
} as const;

/** All that the drawings and offers of the cell go by. */
export type BattenValues = ValuesOf<typeof battenInputs, typeof battenSteps>;
