/** All stations of the floating hull seen from astern along the water: one line is the water for all of them. */
import type { Hull } from '../../boat/hull/hull';
import { line, mm, type Point, type Shape } from '../../drawing';
import { type Balance, cross, dot, scale, subtract, unit, type Vec3 } from '../../kernel';

/** Where a point of the hull is drawn: port to the left, and the water at height 0. */
export type FromAstern = (point: Vec3) => Point;

export function fromAstern({ plane: { normal, height } }: Balance): FromAstern {
  const forward = unit(subtract([1, 0, 0], scale(normal, normal[0])));
  const port = cross(normal, forward);
  return (point) => [-mm(dot(point, port)), mm(dot(point, normal) - height)];
}

/** The sections of all stations, both sides, the widest drawn strong. */
export function stationsAfloat(hull: Hull, place: FromAstern): readonly Shape[] {
  return hull.stations.map((station) => {
    const { corners } = station;
    const round = [...corners.toReversed(), ...corners.map(([x, y, z]): Vec3 => [x, -y, z])];
    return line(round.map(place), { pen: station === hull.widest ? 'outline' : 'visible' });
  });
}
