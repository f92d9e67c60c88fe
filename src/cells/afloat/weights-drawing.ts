/** Her profile and her plan with what she is made of and what is aboard, each where its middle lies and can be moved by hand. */
import {
  type Drawing,
  drawing,
  type Grip,
  label,
  line,
  mark,
  mm,
  note,
  type Point,
  type Shape,
} from '../../drawing';
import type { OnHand } from '../form/define';
import { gearOptions } from './weights-fields';
import type { WeightsValues } from './weights-steps';

const TITLE = 'Where the weight lies';
const ALONG = 49;
/** Between the sums written under her, as a share of the drawing. */
const ROW = 0.09;

/** One thing aboard: the numbers of its place, by their keys, and the mass that says whether it is there. */
interface Thing {
  readonly name: string;
  readonly mass: number;
  readonly forward: WeightKey;
  readonly height: WeightKey;
  readonly side?: WeightKey;
}
type WeightKey = keyof WeightsValues;

export function drawWeights(
  v: WeightsValues,
  { hull, say }: Pick<OnHand<WeightsValues>, 'hull' | 'say'>,
): Drawing {
  const at = (x: number, z: number): Point => [mm(x), mm(z)];
  const number = (key: WeightKey | undefined) => (key === undefined ? 0 : Number(v[key]));
  const aboard = thingsOf(v).filter(({ mass }) => mass > 0);
  const sums: readonly (readonly [name: string, mass: number, x: number, z: number])[] = [
    ['hull', v.hull, v.hullForward, v.hullHeight],
    ['loaded', v.loaded, v.centreForward, v.centreHeight],
  ];
  const placeOf = ({ forward, height }: Thing) => at(number(forward), number(height));
  const drawn = [
    ...(hull?.edges ?? []).flatMap((edge) => edge.points.map(([x, , z]) => at(x, z))),
    ...aboard.map(placeOf),
    ...sums.map(([, , x, z]) => at(x, z)),
    at(v.partX, v.partZ),
  ];
  const across = Math.max(...drawn.map(([x]) => x)) - Math.min(...drawn.map(([x]) => x));
  const row = ROW * across;
  const below = Math.min(...drawn.map(([, y]) => y)) - row;
  const edges: readonly Shape[] = (hull?.edges ?? []).map((edge) =>
    line(
      edge.polyline(ALONG).map(([x, , z]) => at(x, z)),
      { pen: 'outline', part: edge.name },
    ),
  );
  // Under the sums, seen from above.
  const breadths = [
    ...(hull?.edges ?? []).flatMap((edge) => edge.points.map(([, y]) => Math.abs(y))),
    ...aboard.map(({ side }) => Math.abs(number(side))),
  ];
  const middle = below - sums.length * row - mm(Math.max(...breadths, 0));
  const above = (x: number, y: number): Point => [mm(x), middle + mm(y)];
  const inPlan = ({ forward, side }: Thing) => above(number(forward), number(side));
  return drawing({
    title: TITLE,
    says: `Hull ${say(v.hull, 'mass')}, ${say(v.hullForward, 'length')} forward; loaded ${say(v.loaded, 'mass')}, ${say(v.centreForward, 'length')} forward and ${say(v.centreHeight, 'length')} up.`,
    shapes: [
      edges,
      ...(hull ? ends(hull).map((points) => line(points, { pen: 'outline' })) : []),
      ...aboard.flatMap((thing) => [
        mark(placeOf(thing), { form: 'dot' }),
        label(placeOf(thing), thing.name),
      ]),
      mark(at(v.partX, v.partZ), { form: 'dot', part: v.part }),
      ...sums.flatMap(([name, mass, x, z], place) => [
        mark(at(x, z), { form: 'cross' }),
        // Plumb down to clear paper.
        line([at(x, z), [mm(x), below - place * row]], { pen: 'thin' }),
        label([mm(x), below - place * row], `${name} ${say(mass, 'mass')}`, { toward: 's' }),
      ]),
      ...(hull ? planOf(hull, above) : []),
      ...aboard.map((thing) => mark(inPlan(thing), { form: 'dot' })),
      mark(above(v.centreForward, v.centreSide), { form: 'cross' }),
      note('From the side and from above, bow to the right. Crosses: centres of weight.'),
    ],
    grips: aboard.flatMap((thing): Grip[] => {
      const right = { key: thing.forward, zero: 0 };
      return [
        { name: thing.name, at: placeOf(thing), right, up: { key: thing.height, zero: 0 } },
        ...(thing.side === undefined
          ? []
          : [{ name: thing.name, at: inPlan(thing), right, up: { key: thing.side, zero: middle } }]),
      ];
    }),
  });
}

function thingsOf(v: WeightsValues): readonly Thing[] {
  const gear = (id: 'gearA' | 'gearB' | 'gearC' | 'gearD'): Thing => ({
    name: gearName(v[id]),
    mass: v[`${id}Mass`],
    forward: `${id}Forward`,
    height: `${id}Height`,
    side: `${id}Side`,
  });
  return [
    { name: 'motor', mass: v.motor, forward: 'motorForward', height: 'motorHeight' },
    { name: 'fuel', mass: v.fuel, forward: 'fuelForward', height: 'fuelHeight' },
    gear('gearA'),
    gear('gearB'),
    gear('gearC'),
    gear('gearD'),
    {
      name: 'people',
      mass: v.crew,
      forward: 'peopleForward',
      height: 'peopleHeight',
      side: 'peopleSide',
    },
  ];
}

/** Her outline from above: edges of both sides, and her ends across. */
function planOf(
  { edges, aft, fore }: NonNullable<OnHand['hull']>,
  above: (x: number, y: number) => Point,
): readonly Shape[] {
  return [1, -1].flatMap((side) => [
    ...edges.map((edge) =>
      line(
        edge.polyline(ALONG).map(([x, y]) => above(x, side * y)),
        { pen: 'outline', part: edge.name },
      ),
    ),
    ...[aft, fore].map(({ corners }) =>
      line(
        corners.map(([x, y]) => above(x, side * y)),
        { pen: 'outline' },
      ),
    ),
  ]);
}

const gearName = (id: string) => gearOptions.find((one) => one.id === id)!.label; // ids of the list itself

/** The outlines of both ends, seen from the side. */
const ends = ({ aft, fore }: NonNullable<OnHand['hull']>): readonly (readonly Point[])[] =>
  [aft, fore].map(({ corners }) => corners.map(([x, , z]): Point => [mm(x), mm(z)]));
