/**
 * The parts of the boat as the hull's lines give them: how many pieces, how long or how large, and where
 * their middle lies. Sections and woods come from scantlings.ts.
 *
 * Lengths follow the edges, on the face of the skin that the offsets are measured to, and leave out scarfs,
 * trimming and what a notch takes: they are what is built in, not what is bought.
 */
import { between, distance, type Vec3 } from '../../kernel';
import { breadthAt } from '../hull/breadth';
import { endWith, type Hull, postLine } from '../hull/hull';
import type { Edge } from '../hull/edge';
import type { Station } from '../hull/station';

/** Pieces of a long part: all of one section. */
export interface Sticks {
  readonly pieces: number;
  /** Of the longest piece, m. */
  readonly longest: number;
  /** Of all pieces, m. */
  readonly total: number;
  /** Middle of all pieces, both sides of the boat, m. */
  readonly centre: Vec3;
}

/** Pieces of a flat part. */
export interface Sheets {
  readonly pieces: number;
  /** Of all pieces, m2. */
  readonly area: number;
  readonly centre: Vec3;
}

/** A piece and where its middle lies. */
interface Weighed {
  readonly amount: number;
  readonly centre: Vec3;
}

/** Along the keel, one piece. */
export function keelson(hull: Hull): Sticks {
  return sticks([alongEdge(hull.edges[0]!)]); // every hull has a keel
}

/** Along each chine, port and starboard; none where the side meets the keel. */
export function chineLogs(hull: Hull): Sticks {
  return sticks(hull.edges.slice(1, -1).flatMap((edge) => bothSides(alongEdge(edge))));
}

/** Along the sheer, port and starboard: sheer clamps inside, rub rails outside. */
export function alongSheer(hull: Hull): Sticks {
  return sticks(bothSides(alongEdge(hull.edges.at(-1)!))); // every hull has a sheer
}

/** The stem (or sternpost), along its line from the keel to the sheer; none between two transoms. */
export function stems(hull: Hull): Sticks {
  const ends = [endWith(hull, 'stem'), endWith(hull, 'sternpost')].filter((end) => end !== null);
  return sticks(ends.map((end) => alongLine(postLine(end))));
}

/** Every frame: a member under the bottom from side to side, and one up each panel above it. */
export function frames(hull: Hull): Sticks {
  return sticks(hull.frames.flatMap((frame) => frameMembers(hull, frame)));
}

function frameMembers(hull: Hull, frame: Station): Weighed[] {
  return hull.panels.flatMap((panel) => {
    const inner = panel.inner.points[frame.index]!; // one point a station
    const outer = panel.outer.points[frame.index]!;
    const member = { amount: distance(inner, outer), centre: onCentreline(between(inner, outer, 0.5)) };
    const level = panel.index === 0 && inner[1] === 0 && inner[2] === outer[2];
    // A flat bottom takes one member right across.
    return level ? [{ amount: 2 * member.amount, centre: member.centre }] : [member, member];
  });
}

/** Seats across the widest station at a height above the keel there. */
export function thwarts(hull: Hull, number: number, height: number): Sticks {
  const { section, corners, label } = hull.widest;
  const z = section[0]![1] + height; // every station has a keel
  const half = breadthAt(section, z);
  if (half === null) throw new Error(`the thwarts lie above the sheer at ${label}`);
  const one: Weighed = { amount: 2 * half, centre: [corners[0]![0], 0, z] };
  return sticks(Array.from({ length: number }, () => one));
}

/** A plate on both faces of each frame in each corner at a chine, cut as a triangle with two legs. */
export function gussets(hull: Hull, leg: number): Sheets {
  const plates = hull.frames.flatMap((frame) =>
    hull.edges.slice(1, -1).flatMap((chine): Weighed[] => {
      const centre = onCentreline(chine.points[frame.index]!);
      return Array.from({ length: 4 }, () => ({ amount: (leg * leg) / 2, centre }));
    }),
  );
  return sheets(plates);
}

/** A transom in its true shape, up to the sheer; no cut-out taken off. */
export function transom(hull: Hull, role: 'transom' | 'bow transom'): Sheets {
  const end = endWith(hull, role);
  if (!end) throw new Error(`this hull has no ${role}`);
  return sheets([{ amount: end.area, centre: middleOf(end) }]);
}

/** One panel of the skin, port and starboard. */
export function skin(hull: Hull, panel: string): Sheets {
  const { area, centre } = hull.panel(panel);
  const one: Weighed = { amount: area, centre: onCentreline(centre) };
  return sheets([one, one]);
}

const alongEdge = (edge: Edge): Weighed => ({ amount: edge.length, centre: onCentreline(edge.centre) });

function alongLine(line: readonly Vec3[]): Weighed {
  const pieces = line.slice(1).map((point, i): Weighed => {
    const before = line[i]!; // the line without its first point is shifted by one
    return { amount: distance(before, point), centre: between(before, point, 0.5) };
  });
  return { amount: sum(pieces), centre: mean(pieces) };
}

/** Centre of a transom's area, found in slices between its edges. */
function middleOf(station: Station): Vec3 {
  const slices = station.corners.slice(1).flatMap((point, i): Weighed[] => {
    const [y0, u0] = station.outline[i]!; // outline and points are lists of one length
    const [y1, u1] = station.outline[i + 1]!;
    const before = station.corners[i]!;
    const share = y0 + y1 === 0 ? 0.5 : (y0 + 2 * y1) / (3 * (y0 + y1));
    return [{ amount: ((y0 + y1) / 2) * (u1 - u0), centre: onCentreline(between(before, point, share)) }];
  });
  return mean(slices);
}

const onCentreline = ([x, , z]: Vec3): Vec3 => [x, 0, z];
const bothSides = (piece: Weighed): Weighed[] => [piece, piece];
const sum = (pieces: readonly Weighed[]) => pieces.reduce((total, { amount }) => total + amount, 0);

function mean(pieces: readonly Weighed[]): Vec3 {
  const total = sum(pieces);
  if (total === 0) return [0, 0, 0];
  const along = (axis: 0 | 1 | 2) =>
    pieces.reduce((moment, { amount, centre }) => moment + amount * centre[axis], 0) / total;
  return [along(0), along(1), along(2)];
}

function sticks(pieces: readonly Weighed[]): Sticks {
  return {
    pieces: pieces.length,
    longest: Math.max(0, ...pieces.map(({ amount }) => amount)),
    total: sum(pieces),
    centre: mean(pieces),
  };
}

function sheets(pieces: readonly Weighed[]): Sheets {
  return { pieces: pieces.length, area: sum(pieces), centre: mean(pieces) };
}
