/** The parts of the boat as solids, each as large as it is built: what pushes water aside when she is full of it. */
import {
  add,
  bar,
  cross,
  distance,
  joined,
  loft,
  type Mesh,
  norm,
  scale,
  subtract,
  unit,
  type Vec3,
} from '../../kernel';
import { breadthAt } from './breadth';
import { endWith, type Hull, postLine } from './hull';
import type { Station } from './station';

/** The parts, each by the name that it has among the weights; frames with their gussets, clamps with their rails. */
export type SolidPart =
  | 'bottom'
  | 'bilge'
  | 'side'
  | 'transom'
  | 'bowTransom'
  | 'keelson'
  | 'stem'
  | 'chineLog'
  | 'sheerClamp'
  | 'frame'
  | 'thwart';

/** Points along a plank, and along a timber. */
const ALONG = 17;

const toStarboard = ([x, y, z]: Vec3): Vec3 => [x, -y, z];
const bothSides = (line: readonly Vec3[]) => [line, line.map(toStarboard)];

/**
 * A part, both sides of the boat, of so much volume: skin as plates on the inner face, timbers as square bars along their
 * edges; the middle of each lies where the weights have it, or within half its thickness.
 *
 * @param seat height of the thwarts above the keel at the widest station, m
 * @returns null for a part that she has not
 */
export function solidOf(hull: Hull, part: SolidPart, volume: number, seat: number): Mesh | null {
  if (volume <= 0) return null;
  const plates = (names: readonly string[]) => platesOf(hull, names, volume);
  switch (part) {
    case 'bottom':
    case 'side':
      return plates([part]);
    case 'bilge':
      return plates(hull.panels.map(({ name }) => name).filter((name) => name.startsWith('bilge')));
    case 'transom':
      return endPlate(endWith(hull, 'transom'), volume);
    case 'bowTransom':
      return endPlate(endWith(hull, 'bow transom'), volume);
    case 'keelson':
      return bars([hull.edges[0]!.polyline(ALONG)], volume); // every hull has a keel
    case 'stem':
      return bars(
        [endWith(hull, 'stem'), endWith(hull, 'sternpost')].flatMap((end) =>
          end ? pieces(postLine(end)) : [],
        ),
        volume,
      );
    case 'chineLog':
      return bars(
        hull.edges.slice(1, -1).flatMap((edge) => bothSides(edge.polyline(ALONG))),
        volume,
      );
    case 'sheerClamp':
      return bars(bothSides(hull.edges.at(-1)!.polyline(ALONG)), volume); // and a sheer
    case 'frame':
      return bars(
        hull.frames.flatMap(({ corners }) => bothSides(corners).flatMap(pieces)),
        volume,
      );
    case 'thwart':
      return bars([thwartLine(hull, seat)], volume);
  }
}

/** The straight pieces of a line, each by itself; those of no length left out. */
const pieces = (line: readonly Vec3[]): readonly (readonly Vec3[])[] =>
  line.slice(1).flatMap((to, i) => (distance(line[i]!, to) > 1e-6 ? [[line[i]!, to]] : [])); // shifted by one

const lengthOf = (line: readonly Vec3[]) =>
  line.slice(1).reduce((sum, point, i) => sum + distance(line[i]!, point), 0);

/** Bars of one section that come to the volume together. */
function bars(lines: readonly (readonly Vec3[])[], volume: number): Mesh | null {
  const total = lines.reduce((sum, line) => sum + lengthOf(line), 0);
  if (total === 0) return null;
  return joined(...lines.map((line) => bar(line, Math.sqrt(volume / total))));
}

/** Panels of one thickness, port and starboard. */
function platesOf(hull: Hull, names: readonly string[], volume: number): Mesh | null {
  const panels = hull.panels.filter(({ name }) => names.includes(name));
  const area = panels.reduce((sum, panel) => sum + 2 * panel.area, 0);
  if (area === 0) return null;
  return joined(
    ...panels.flatMap(({ inner, outer }) =>
      bothSides(inner.polyline(ALONG)).map((low, side) =>
        plate(low, bothSides(outer.polyline(ALONG))[side]!, volume / area),
      ),
    ),
  );
}

/** A plank that lies on two lines by its outer face; where it runs out to a point it lies as just before. */
function plate(low: readonly Vec3[], high: readonly Vec3[], thick: number): Mesh {
  // To starboard the same lines turn the other way.
  const side = low.concat(high).reduce((sum, [, y]) => sum + y, 0) < 0 ? -thick : thick;
  let inward: Vec3 = [0, 0, thick];
  return loft(
    low.map((a, i) => {
      const b = high[i]!; // as many as of the other
      const run = subtract(low[Math.min(i + 1, low.length - 1)]!, low[Math.max(i - 1, 0)]!); // both in the list
      const square = cross(run, subtract(b, a));
      if (norm(square) > 1e-9) inward = scale(unit(square), side);
      return [a, b, add(b, inward), add(a, inward)];
    }),
  );
}

function endPlate(end: Station | null, volume: number): Mesh | null {
  if (!end || end.area === 0) return null;
  const { corners } = end;
  const port = corners.filter((point, i) => i === 0 || distance(point, corners[i - 1]!) > 1e-9);
  const ring = [
    ...port,
    ...port
      .filter(([, y]) => y > 0)
      .map(toStarboard)
      .toReversed(),
  ];
  const [foot, top] = [corners[0]!, corners.at(-1)!]; // keel and sheer at least
  const up = unit([top[0] - foot[0], 0, top[2] - foot[2]]);
  const thick = (end.role === 'transom' ? 1 : -1) * (volume / end.area);
  const inner = ring.map(([x, y, z]): Vec3 => [x + thick * up[2], y, z - thick * up[0]]);
  return loft([ring, inner]);
}

function thwartLine({ widest: { section, corners } }: Hull, seat: number): readonly Vec3[] {
  const z = section[0]![1] + seat; // every station has a keel
  const half = breadthAt(section, z) ?? corners.at(-1)![1];
  const x = corners[0]![0];
  return [
    [x, half, z],
    [x, -half, z],
  ];
}
