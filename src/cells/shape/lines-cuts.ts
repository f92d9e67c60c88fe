/** The skin of the hull cut by level, upright and transverse planes: what a lines plan is drawn from. */
import type { Hull, Station } from '../../boat';
import { type Mesh, meshOfStrips, meshSection, thinned, type Vec3 } from '../../kernel';

/** Across which axis the plane stands: 0 a station, 1 a buttock, 2 a waterline. */
export type Axis = 0 | 1 | 2;

export type Cut = readonly (readonly Vec3[])[];

/** Thinned to this share of the hull's length: under half a pixel on a sheet of a thousand. */
const FINENESS = 1 / 4000;
/** Cuts kept a hull: those of two settings of the sliders. */
const KEPT = 80;

const skins = new WeakMap<Hull, Mesh>();
const cuts = new WeakMap<Hull, Map<string, Cut>>();

/** The port side of the skin, without transoms and lid. */
export function portSkin(hull: Hull): Mesh {
  const known = skins.get(hull) ?? meshOfStrips(hull.panels.map(({ strip }) => strip)).mesh;
  skins.set(hull, known);
  return known;
}

/** The lines in which the plane at this place of an axis, m, cuts the port skin; on its rulings they are exact. */
export function skinCut(hull: Hull, axis: Axis, at: number): Cut {
  const known = cuts.get(hull) ?? new Map<string, Cut>();
  cuts.set(hull, known);
  const key = `${axis} ${at}`;
  const found = known.get(key) ?? cutAnew(hull, axis, at);
  if (known.size >= KEPT) known.clear();
  known.set(key, found);
  return found;
}

function cutAnew(hull: Hull, axis: Axis, at: number): Cut {
  const normal: Vec3 = [axis === 0 ? 1 : 0, axis === 1 ? 1 : 0, axis === 2 ? 1 : 0];
  const lines = meshSection(portSkin(hull), { normal, height: at });
  return lines.map((line) => thinned(line, hull.length * FINENESS));
}

/**
 * The section at a station, port side, keel up: of a frame the skin's own, crown and all, which is what a waterline
 * meets there; of an end, whose face may rake, the line through its corners.
 */
export function stationSection(hull: Hull, station: Station): readonly Vec3[] {
  if (station.role !== 'frame') return station.corners;
  const pieces = skinCut(hull, 0, station.x);
  const longest = pieces.reduce<readonly Vec3[]>(
    (best, line) => (line.length > best.length ? line : best),
    [],
  );
  if (longest.length < 2) return station.corners;
  return longest[0]![2] <= longest.at(-1)![2] ? longest : longest.toReversed();
}
