/** What follows from the cloth as it is planned. */
import { look, citation } from '../../trade/table';
import { rounding } from '../../trade/glass';
import { type ListRow, step, type ValuesOf } from '../form/define';
import { fact, tell } from '../form/fact';
import type { clothInputs } from './cloth-inputs';
import { planCloth } from './cloth-plan';
import type { ClothPiece } from './cloth-rules';
import { GEOMETRY } from '../../trade/sources';

/** The inputs as facts read them. */
export type ClothAsked = ValuesOf<typeof clothInputs>;

const HOW =
  'the panels laid flat, drawn out by what is turned round each edge, cut into runs of one width that lap, and laid on the roll, the longest first';
const SOURCE =
  'geometry; runs = (height - lap) / (width of roll - lap), rounded up. Laid on the roll by Coffman, Garey, Johnson and Tarjan, SIAM Journal on Computing 9 (1980)';

export const plan = fact(HOW, SOURCE, (asked: ClothAsked, at) => planCloth(asked, () => at.hull));

/** In the order of laying. */
export const pieceList = fact(HOW, SOURCE, (_: ClothAsked, { ask }) =>
  ask(plan).pieces.map(({ name }, i): ListRow => ({
    id: `piece${i + 1}`,
    label: `${i + 1}: ${name}`,
    value: i + 1,
  })),
);

const NO_PIECE = 'no such piece';

/** A piece and where it begins on the roll. */
interface LaidPiece extends ClothPiece {
  readonly along: number;
  readonly across: number;
}

const here = fact(
  'of the pieces in their order',
  GEOMETRY,
  ({ pieceInHand }: ClothAsked, { ask }): LaidPiece | null => {
    const { pieces, places } = ask(plan);
    const [found, place] = [pieces[pieceInHand - 1], places[pieceInHand - 1]];
    return found && place ? { ...found, ...place } : null;
  },
);

const ofPiece = (kind: 'length' | 'area' | 'count', meaning: string, part: (piece: LaidPiece) => number) =>
  tell(here, kind, meaning, (found) => (found ? part(found) : 0));

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

/** `weight <= 203 g/m^2 ? 6 mm : …` from the table, the last row for the rest. */
const leastRound = rounding.rows.slice(0, -1).reduceRight(
  (rest, { id }) =>
    `weight <= ${look(rounding, id, 'upTo')!.value + 1e-9} kg/m^2 ? ${look(rounding, id, 'radius')!.value} m : ${rest}`, // rows of the table itself
  `${rounding.rows.at(-1)!.cells.radius!.value} m`,
);

export const clothSteps = {
  pieces: tell(plan, 'count', 'pieces of cloth, strips with them', ({ pieces }) => pieces.length),
  cut: tell(plan, 'length', 'length of the roll that they take as they lie', ({ cut }) => cut),
  leastCut: tell(plan, 'length', 'no way of laying them on the roll takes less', ({ least }) => least, {
    how: 'the most of three: their area over the width of the roll, the longest, and one after another all that are wider than half the roll',
    source: GEOMETRY,
  }),
  length: step(
    'length',
    'max(0, ceil(cut * (1 + beyond) / soldBy - 0.000001)) * soldBy',
    'length of the roll to buy',
    'the plan and what is bought beyond it, rounded up to what the shop cuts',
  ),
  cost: step('money', 'length * price', 'price of the cloth', GEOMETRY),
  covered: tell(plan, 'area', 'wood under cloth, each face once', ({ faces }) =>
    sum(faces.map(({ face, sides }) => face.area * sides)),
  ),
  layered: tell(plan, 'area', 'the same, as often as there are layers', ({ faces }) =>
    sum(faces.map(({ face, sides, layers }) => face.area * sides * layers)),
  ),
  area: tell(plan, 'area', 'cloth laid: all layers, laps, turned edges and strips', ({ pieces }) =>
    sum(pieces.map(({ laid }) => laid)),
  ),
  lapShare: step(
    'share',
    'layered > 0 m^2 ? area / layered - 1 : 0',
    'laps, turned edges and strips, beyond the bare layers',
    GEOMETRY,
  ),
  stripLength: tell(plan, 'length', 'length of all strips', ({ stripLength }) => stripLength),
  stripArea: step('area', 'stripLength * stripWidth', 'cloth laid as strips', GEOMETRY),
  lapped: step('area', 'area - layered - stripArea', 'cloth laid in laps and round edges', GEOMETRY),
  mass: step('mass', 'area * weight', 'dry weight of the cloth laid', GEOMETRY),
  offcuts: step('area', 'length * width - area', 'cloth bought and not laid', GEOMETRY),
  seams: tell(
    plan,
    'count',
    'seams between runs, counted on one side of the boat',
    ({ seams }) => seams.length,
  ),
  seamsApart: tell(
    fact(HOW, SOURCE, (v: ClothAsked, { ask }) => ask(plan).seamsApart ?? v.seamShift),
    'length',
    'least between a seam and one of the layer under it; the shift asked for where no two lie so',
    (apart) => apart,
  ),
  isAcross: tell(plan, 'count', 'whether runs go across', ({ across }) => (across ? 1 : 0)),
  inOne: tell(plan, 'count', 'whether the bottom’s cloth goes over both sides', ({ dart }) => (dart ? 1 : 0)),
  dartFrom: tell(
    plan,
    'length',
    'along the centreline from aft to where the cloth is cut open; 0 where it is not',
    ({ dart }) => (dart && dart.length > 0 ? dart.from : 0),
    { how: 'the keel of the flat bottom, as far as it keeps to a straight thread' },
  ),
  dartLength: tell(plan, 'length', 'length of that cut', ({ dart }) => dart?.length ?? 0),
  dartGap: tell(
    plan,
    'length',
    'between the two halves of the flat bottom at the bow: + they part, and the cloth laps there; - they gape',
    ({ dart }) => dart?.gap ?? 0,
  ),
  leastRound: step(
    'length',
    leastRound,
    'least radius to which an edge is rounded under this cloth',
    citation(look(rounding, 'light', 'radius')!), // a row of that table
    'least',
  ),
  name: tell(here, 'choice', 'what this piece covers', (found) => found?.name ?? NO_PIECE),
  layer: ofPiece('count', 'layer that it is in', ({ layer }) => layer),
  long: ofPiece('length', 'length to cut, along the roll', ({ long }) => long),
  wide: ofPiece('length', 'width to cut, across the roll', ({ wide }) => wide),
  laid: ofPiece('area', 'what of it lies on the boat', ({ laid }) => laid),
  along: ofPiece('length', 'where it begins, from the end of the roll', ({ along }) => along),
  inward: ofPiece('length', 'where it begins, from the edge of the roll', ({ across }) => across),
} as const;

export type ClothValues = ValuesOf<typeof clothInputs, typeof clothSteps>;
