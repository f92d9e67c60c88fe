/** Pieces as the search lays them: outlines in whole ticks, each way they may lie, with half the gap round them. */
import { EndType, inflatePaths, JoinType } from 'clipper2-ts';
import type { NestPiece, NestProblem, Quarter } from '../../kernel/nest';
import { outlineBox } from '../../kernel/lying-outlines';
import { outlineArea } from '../../kernel/outline';
import type { Vec2 } from '../../kernel/vec';
import { isMirrored, inTurn, type Turn, turnedPoint, turnOf, turns, undone } from './turn';

/** Ticks in a metre: hundredths of a millimetre, so that places are whole numbers and sums of them exact. */
export const TICKS = 1e5;

/** An outline as x, y, x, y … in ticks. */
export type Ring = Float64Array;

/** An outline, whichever way it is turned: pieces that are turns of each other are of one. */
interface Pattern {
  readonly id: number;
  readonly width: number;
  readonly height: number;
  /** With half the gap round it. */
  readonly grown: Ring;
  readonly isRect: boolean;
}

/** One outline as it may lie on a sheet. Pieces that lie alike share it. */
export interface NestShape {
  readonly id: number;
  /** Sides of the box round the piece, ticks. */
  readonly width: number;
  readonly height: number;
  /** The piece with half the gap round it, from the lower left corner of that box. */
  readonly grown: Ring;
  readonly isRect: boolean;
  readonly pattern: Pattern;
  /** How the pattern is turned. */
  readonly turn: Turn;
}

/** The shapes met so far: one for all packings of a search, which lay the same pieces again and again. */
export interface Shapes {
  readonly ways: (outline: readonly Vec2[], gap: number) => (turn: Turn) => NestShape;
}

/** A way in which a piece may lie. */
export interface Lying {
  readonly shape: NestShape;
  readonly quarter: Quarter;
  readonly mirrored: boolean;
}

/** Pieces that are the same to the search: they may lie in the same ways. */
export interface PieceKind {
  readonly id: number;
  readonly lyings: readonly Lying[];
  /** Of one piece, m2. */
  readonly area: number;
  /** By their places in the problem. */
  readonly pieces: readonly number[];
}

/** Beyond this many halves of the gap a sharp corner's surroundings are cut off square. */
const MITRE = 2;

export function kindsOf(
  { pieces, gap }: Pick<NestProblem, 'pieces' | 'gap'>,
  shapes: Shapes,
): readonly PieceKind[] {
  const kinds = new Map<string, { lyings: readonly Lying[]; area: number; pieces: number[] }>();
  pieces.forEach((piece, at) => {
    const lyings = lyingsOf(piece, shapes.ways(piece.outline, gap));
    const key = lyings
      .map(({ shape }) => shape.id)
      .toSorted((a, b) => a - b)
      .join(' ');
    const known = kinds.get(key);
    // What lies alike may still be turned otherwise to get there, so a kind goes by its first piece's turns.
    if (known && sameTurns(known.lyings, lyings)) known.pieces.push(at);
    else
      kinds.set(known ? `${key} ${at}` : key, {
        lyings,
        area: Math.abs(outlineArea(piece.outline)),
        pieces: [at],
      });
  });
  return [...kinds.values()].map((kind, id) => ({ id, ...kind }));
}

const sameTurns = (one: readonly Lying[], other: readonly Lying[]) =>
  one.length === other.length &&
  one.every(
    ({ shape, quarter, mirrored }, i) =>
      shape === other[i]!.shape && quarter === other[i]!.quarter && mirrored === other[i]!.mirrored,
  );

function lyingsOf(piece: NestPiece, way: (turn: Turn) => NestShape): readonly Lying[] {
  const found = new Map<NestShape, Lying>();
  for (const mirrored of piece.mirror ? [false, true] : [false]) {
    for (const quarter of piece.turns) {
      const shape = way(turnOf(quarter, mirrored));
      if (!found.has(shape)) found.set(shape, { shape, quarter, mirrored });
    }
  }
  return [...found.values()];
}

export function makeShapes(): Shapes {
  const shapes = new Map<string, NestShape>();
  const patterns = new Map<string, Pattern>();
  return {
    ways: (outline, gap) => {
      const half = Math.ceil((gap * TICKS) / 2 - 1e-6);
      const drawn = inTicks(outline);
      const [width, height] = outlineBox(drawn).to;
      const all = turns.map((turn) => turnedRing(drawn, turn, { width, height }));
      const keys = all.map((ring) => `${half}|${ring.join(' ')}`);
      // Of all its turns the one that reads first stands for all.
      const least = keys.reduce((a, b) => (b < a ? b : a));
      const first = turns[keys.indexOf(least)]!; // one of them
      const pattern = patterns.get(least) ?? patternOf(patterns.size, all[first]!, half);
      patterns.set(least, pattern);
      return (turn) => {
        const key = keys[turn]!;
        const shape = shapes.get(key) ?? shapeOf(shapes.size, pattern, inTurn(undone(first), turn));
        shapes.set(key, shape);
        return shape;
      };
    },
  };
}

/** Whole ticks from the lower left corner of the box, without repeated corners. */
function inTicks(outline: readonly Vec2[]): readonly Vec2[] {
  const [left, low] = outlineBox(outline).from;
  const rounded = outline.map(([x, y]): Vec2 => [
    Math.round((x - left) * TICKS),
    Math.round((y - low) * TICKS),
  ]);
  return rounded.filter(([x, y], i) => {
    const [px, py] = rounded.at(i - 1)!;
    return x !== px || y !== py;
  });
}

/** Anticlockwise again, beginning at the corner that lies lowest of those farthest to the left. */
function turnedRing(
  outline: readonly Vec2[],
  turn: Turn,
  box: { readonly width: number; readonly height: number },
): readonly Vec2[] {
  const turned = outline.map(([x, y]): Vec2 => turnedPoint(turn, box, x, y));
  const ring = isMirrored(turn) ? turned.toReversed() : turned;
  let first = 0;
  ring.forEach(([x, y], i) => {
    const [bx, by] = ring[first]!;
    if (x < bx || (x === bx && y < by)) first = i;
  });
  return [...ring.slice(first), ...ring.slice(0, first)];
}

function patternOf(id: number, outline: readonly Vec2[], half: number): Pattern {
  const [width, height] = outlineBox(outline).to;
  const isRect = outline.length === 4 && outlineArea(outline) === width * height;
  const grown = isRect ? rectRing(-half, -half, width + half, height + half) : grownRing(outline, half);
  return { id, width, height, grown, isRect };
}

function shapeOf(id: number, pattern: Pattern, turn: Turn): NestShape {
  const { grown, isRect } = pattern;
  const [width, height] = turn % 2 === 0 ? [pattern.width, pattern.height] : [pattern.height, pattern.width];
  const half = grown[0]!; // of a rectangle: so far outside its corner it begins
  const ring = isRect ? rectRing(half, half, width - half, height - half) : turnedGrown(pattern, turn);
  return { id, width, height, grown: ring, isRect, pattern, turn };
}

/** A pattern and half the gap round it as they are turned, the pattern's box back at the origin. */
export function turnedGrown(pattern: Pattern, turn: Turn): Ring {
  const { grown } = pattern;
  const points = Array.from({ length: grown.length / 2 }, (_, i) =>
    turnedPoint(turn, pattern, grown[2 * i]!, grown[2 * i + 1]!),
  );
  return Float64Array.from((isMirrored(turn) ? points.toReversed() : points).flat());
}

export const rectRing = (left: number, low: number, right: number, high: number): Ring =>
  Float64Array.of(left, low, right, low, right, high, left, high);

function grownRing(outline: readonly Vec2[], half: number): Ring {
  const path = outline.map(([x, y]) => ({ x, y }));
  const [grown] = half > 0 ? inflatePaths([path], half, JoinType.Miter, EndType.Polygon, MITRE) : [path];
  return Float64Array.from((grown ?? path).flatMap(({ x, y }) => [x, y]));
}
