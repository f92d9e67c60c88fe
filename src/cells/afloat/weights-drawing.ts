/** Her profile with what she is made of and what is aboard, each where its middle lies. */
import { type Drawing, drawing, label, line, mark, mm, note, type Point, type Shape } from '../../drawing';
import type { OnHand } from '../form/define';
import { gearOptions } from './weights-fields';
import type { WeightsValues } from './weights-steps';

const TITLE = 'Where the weight lies';
const ALONG = 49;
/** Between the sums written under her, as a share of the drawing. */
const ROW = 0.09;

export function drawWeights(
  v: WeightsValues,
  { hull, say }: Pick<OnHand<WeightsValues>, 'hull' | 'say'>,
): Drawing {
  const at = (x: number, z: number): Point => [mm(x), mm(z)];
  const things: readonly (readonly [name: string, mass: number, x: number, z: number])[] = [
    ['motor', v.motor, v.motorForward, v.motorHeight],
    ['fuel', v.fuel, v.fuelForward, v.fuelHeight],
    [gearName(v.gearA), v.gearAMass, v.gearAForward, v.gearAHeight],
    [gearName(v.gearB), v.gearBMass, v.gearBForward, v.gearBHeight],
    [gearName(v.gearC), v.gearCMass, v.gearCForward, v.gearCHeight],
    [gearName(v.gearD), v.gearDMass, v.gearDForward, v.gearDHeight],
    ['people', v.crew, v.peopleForward, v.peopleHeight],
  ];
  const aboard = things.filter(([, mass]) => mass > 0);
  const sums: readonly (readonly [name: string, mass: number, x: number, z: number])[] = [
    ['hull', v.hull, v.hullForward, v.hullHeight],
    ['loaded', v.loaded, v.centreForward, v.centreHeight],
  ];
  const drawn = [
    ...(hull?.edges ?? []).flatMap((edge) => edge.points.map(([x, , z]) => at(x, z))),
    ...[...aboard, ...sums].map(([, , x, z]) => at(x, z)),
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
  return drawing({
    title: TITLE,
    says: `Hull ${say(v.hull, 'mass')}, ${say(v.hullForward, 'length')} forward; loaded ${say(v.loaded, 'mass')}, ${say(v.centreForward, 'length')} forward and ${say(v.centreHeight, 'length')} up.`,
    shapes: [
      edges,
      ...(hull ? ends(hull).map((points) => line(points, { pen: 'outline' })) : []),
      ...aboard.flatMap(([name, , x, z]) => [mark(at(x, z), { form: 'dot' }), label(at(x, z), name)]),
      mark(at(v.partX, v.partZ), { form: 'dot', part: v.part }),
      ...sums.flatMap(([name, mass, x, z], place) => [
        mark(at(x, z), { form: 'cross' }),
        // Plumb down to clear paper.
        line([at(x, z), [mm(x), below - place * row]], { pen: 'thin' }),
        label([mm(x), below - place * row], `${name} ${say(mass, 'mass')}`, { toward: 's' }),
      ]),
      note('From the side, bow to the right. Crosses: centres of weight.'),
    ],
  });
}

const gearName = (id: string) => gearOptions.find((one) => one.id === id)!.label; // ids of the list itself

/** The outlines of both ends, seen from the side. */
const ends = ({ aft, fore }: NonNullable<OnHand['hull']>): readonly (readonly Point[])[] =>
  [aft, fore].map(({ corners }) => corners.map(([x, , z]): Point => [mm(x), mm(z)]));
