/** Pieces as the search lays them: outlines in whole ticks, each way they may lie, with half the gap round them. */
import { EndType, inflatePaths, JoinType } from 'clipper2-ts';
import { type NestPiece, type NestProblem, type Quarter, turnedOutline } from '../../kernel/nest';
import { outlineBox } from '../../kernel/lying-outlines';
import { outlineArea } from '../../kernel/outline';
import type { Vec2 } from '../../kernel/vec';

/** Ticks in a metre: hundredths of a millimetre, so that places are whole numbers and sums of them exact. */
export const TICKS = 1e5;

/** An outline as x, y, x, y … in ticks. */
export type Ring = Float64Array;

/** One outline as it may lie on a sheet. Pieces that lie alike share it. */
export interface NestShape {
  readonly id: number;
  /** Sides of the box round the piece, ticks. */
  readonly width: number;
  readonly height: number;
  /** The piece with half the gap round it, from the lower left corner of that box. */
  readonly grown: Ring;
  readonly isRect: boolean;
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

export function kindsOf({ pieces, gap }: Pick<NestProblem, 'pieces' | 'gap'>): readonly PieceKind[] {
  const half = Math.ceil((gap * TICKS) / 2 - 1e-6);
  const shapes = new Map<string, NestShape>();
  const kinds = new Map<string, { lyings: readonly Lying[]; area: number; pieces: number[] }>();
  pieces.forEach((piece, at) => {
    const lyings = lyingsOf(piece, half, shapes);
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

function lyingsOf(piece: NestPiece, half: number, shapes: Map<string, NestShape>): readonly Lying[] {
  const found = new Map<NestShape, Lying>();
  for (const mirrored of piece.mirror ? [false, true] : [false]) {
    for (const quarter of piece.turns) {
      const outline = inTicks(turnedOutline(piece.outline, quarter, mirrored));
      const key = outline.join(' ');
      const shape = shapes.get(key) ?? shapeOf(shapes.size, outline, half);
      shapes.set(key, shape);
      if (!found.has(shape)) found.set(shape, { shape, quarter, mirrored });
    }
  }
  return [...found.values()];
}

/** Whole ticks, beginning at the corner that lies lowest of those farthest to the left, without repeated corners. */
function inTicks(outline: readonly Vec2[]): Vec2[] {
  const rounded = outline.map(([x, y]): Vec2 => [Math.round(x * TICKS), Math.round(y * TICKS)]);
  const ring = rounded.filter(([x, y], i) => {
    const [px, py] = rounded.at(i - 1)!;
    return x !== px || y !== py;
  });
  let first = 0;
  ring.forEach(([x, y], i) => {
    const [bx, by] = ring[first]!;
    if (x < bx || (x === bx && y < by)) first = i;
  });
  return [...ring.slice(first), ...ring.slice(0, first)];
}

function shapeOf(id: number, outline: readonly Vec2[], half: number): NestShape {
  const { to } = outlineBox(outline);
  const isRect = outline.length === 4 && outlineArea(outline) === to[0] * to[1];
  const grown = isRect ? rectRing(-half, -half, to[0] + half, to[1] + half) : grownRing(outline, half);
  return { id, width: to[0], height: to[1], grown, isRect };
}

export const rectRing = (left: number, low: number, right: number, high: number): Ring =>
  Float64Array.of(left, low, right, low, right, high, left, high);

function grownRing(outline: readonly Vec2[], half: number): Ring {
  const path = outline.map(([x, y]) => ({ x, y }));
  const [grown] = half > 0 ? inflatePaths([path], half, JoinType.Miter, EndType.Polygon, MITRE) : [path];
  return Float64Array.from((grown ?? path).flatMap(({ x, y }) => [x, y]));
}
