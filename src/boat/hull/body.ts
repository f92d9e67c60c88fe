/**
 * The hull as a closed body for weighing and floating: both sides of the skin, the transoms, and a lid
 * across the sheer.
 */
import {
  bridge,
  joined,
  type Mesh,
  meshOfStrips,
  mirrored,
  polygonMesh,
  reversed,
  type Vec3,
} from '../../kernel';
import type { Panel } from './panel';
import { isPost, type Station } from './station';

/** Closed, outward: the body's volume is that of the hull up to the sheer. */
export function closedBody(panels: readonly Panel[], aft: Station, fore: Station): Mesh {
  const { mesh: port, edges } = meshOfStrips(panels.map((panel) => panel.strip));
  const sheer = edges.at(-1)!; // a hull has two edges or more
  const lid = bridge(sheer, sheer.map(toStarboard));
  return joined(port, mirrored(port), lid, ...capOf(aft), ...capOf(fore));
}

const toStarboard = ([x, y, z]: Vec3): Vec3 => [x, -y, z];

/** The transom that closes an end; nothing at a stem. */
function capOf(station: Station): readonly Mesh[] {
  if (isPost(station.role)) return [];
  const port = station.corners.filter((point, i, all) => i === 0 || !samePlace(point, all[i - 1]!));
  const starboard = port.filter(([, y]) => y > 0).map(toStarboard);
  // From the keel out to port and up, then down to starboard: counter-clockwise seen from ahead.
  const cap = polygonMesh([...port, ...starboard.toReversed()]);
  return [station.role === 'transom' ? reversed(cap) : cap];
}

function samePlace(a: Vec3, b: Vec3): boolean {
  return a.every((value, axis) => value === b[axis]);
}
