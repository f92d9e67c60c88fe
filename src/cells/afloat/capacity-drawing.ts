/** The hull sunk as deep as the rule counts, and the three figures as a plate would have them. */
import { levelTrim } from '../../boat/hull/float-plane';
import { type Drawing, drawing, line, mm, note, type Point, rect, type Shape } from '../../drawing';
import { FOOT, POUND } from '../../measure/si';
import { levelFor, upOf, type Vec3 } from '../../kernel';
import type { OnHand } from '../form/define';
import type { CapacityValues } from './capacity-steps';

const ALONG = 49;
/** Fresh water as the rule has it, kg/m3. */
const WATER = (62.4 * POUND) / FOOT ** 3;
/** Height of a line on the plate, and its breadth, over its length. */
const ROW = 0.085;
const BROAD = 0.8;
/** Without a hull the plate stands alone, this long, m. */
const ALONE = 1;
/** More than this of her is not drawn under water. */
const NEARLY_ALL = 0.999;

type On = Pick<OnHand<CapacityValues>, 'hull' | 'say'>;

export function drawCapacity(v: CapacityValues, { hull, say }: On): Drawing {
  const lines = plateLines(v, say);
  const long = hull ? hull.length : ALONE;
  const above = hull ? profile(hull, v.displacement / WATER) : { shapes: [], aft: 0, low: 0 };
  const row = mm(ROW * long);
  const broad = mm(BROAD * long);
  const left = mm(above.aft) + (mm(long) - broad) / 2;
  const top = mm(above.low) - (hull ? row : 0);
  const high = (lines.length + 1) * row;
  return drawing({
    title: 'A yardstick, no certificate',
    says: `The plate reads: ${lines.join('; ')}.`,
    shapes: [
      ...above.shapes,
      rect(left, top - high, broad, high),
      ...lines.map((text, at) => note(text, { at: [left + broad / 2, top - (at + 1) * row] })),
      ...(hull ? [note('From the side, bow to the right. Thin: the water before any comes in.')] : []),
    ],
  });
}

function plateLines(v: CapacityValues, say: On['say']): readonly string[] {
  const mass = (value: number) => say(value, 'mass', { bound: 'most' });
  const people = v.persons === 1 ? '1 person' : `${v.persons} persons`;
  const first = `${people} or ${mass(v.personsWeight)}`;
  if (v.drive === 'hand') return [first, `${mass(v.weight)}: persons, gear`, 'not rated for a motor'];
  return [
    first,
    `${mass(v.weight)}: persons, motor, gear`,
    v.power > 0 ? `${say(v.power, 'power', { bound: 'most' })}: motor` : 'not rated for a motor',
  ];
}

function profile(hull: NonNullable<On['hull']>, displaced: number) {
  const { body, length } = hull;
  const side = ([x, , z]: Vec3): Point => [mm(x), mm(z)];
  const up = upOf({ heel: 0, trim: levelTrim(hull) });
  const { height } = levelFor(body, up, Math.min(displaced, NEARLY_ALL * hull.volume)).plane;
  const edges = hull.edges.map((edge) => ({ name: edge.name, points: edge.polyline(ALONG) }));
  const all = edges.flatMap(({ points }) => points);
  const aft = Math.min(...all.map(([x]) => x));
  const low = Math.min(...all.map(([, , z]) => z));
  const waterAt = (x: number): Point => [mm(x), mm((height - up[0] * x) / up[2])];
  const shapes: readonly Shape[] = [
    ...edges.map(({ name, points }) => line(points.map(side), { pen: 'outline', part: name })),
    ...[hull.aft, hull.fore].map(({ corners }) => line(corners.map(side), { pen: 'outline' })),
    line([waterAt(aft - 0.05 * length), waterAt(aft + 1.05 * length)], { pen: 'thin' }),
  ];
  return { shapes, aft, low };
}
