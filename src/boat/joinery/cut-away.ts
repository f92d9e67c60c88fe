/** Wood taken out of a flat piece: one outline less another. */
import type { Vec2 } from '../../kernel';

type Outline = readonly Vec2[];

/** A place where the two outlines cross; `piece` and `notch` are an edge's number and how far along it. */
interface Crossing {
  readonly at: Vec2;
  readonly piece: number;
  readonly notch: number;
  /** Whether the piece's outline, anticlockwise, goes into the notch here. */
  readonly enters: boolean;
}

/**
 * What is left of a piece when a notch is cut out of it: one outline, several where the notch cuts it
 * through, none where it takes all. Anticlockwise. Both outlines are simple polygons; a notch that is meant
 * to be open at an edge of the piece must reach out beyond it. A notch wholly inside the piece is left in it.
 */
export function cutAway(given: Outline, cut: Outline): readonly Outline[] {
  const piece = anticlockwise(given);
  const notch = anticlockwise(cut);
  const crossings = crossingsOf(piece, notch).toSorted((a, b) => a.piece - b.piece);
  if (crossings.length === 0) return isInside(notch, piece[0]!) ? [] : [piece];
  const alternate = crossings.every(({ enters }, i) => enters !== crossings.at(i - 1)!.enters);
  // A corner of one upon an edge of the other: moved by a hair it is on one side.
  if (!alternate) {
    return cutAway(
      piece,
      notch.map(([y, z]): Vec2 => [y + 1.3e-9, z + 0.7e-9]),
    );
  }
  return around(piece, notch, crossings);
}

/** Follows the piece outside the notch, then the notch backward inside the piece, until round. */
function around(piece: Outline, notch: Outline, crossings: readonly Crossing[]): readonly Outline[] {
  const onNotch = crossings.toSorted((a, b) => a.notch - b.notch);
  const waiting = new Set(crossings.filter(({ enters }) => !enters));
  const left: Vec2[][] = [];
  for (const first of waiting) {
    const outline: Vec2[] = [];
    let leaving = first;
    do {
      waiting.delete(leaving);
      const entering = crossings[(crossings.indexOf(leaving) + 1) % crossings.length]!; // a list of at least two
      outline.push(leaving.at, ...corners(piece, leaving.piece, entering.piece), entering.at);
      leaving = onNotch.at(onNotch.indexOf(entering) - 1)!;
      outline.push(...corners(notch, leaving.notch, entering.notch).toReversed());
    } while (leaving !== first && waiting.has(leaving));
    left.push(outline);
  }
  return left;
}

/** The corners passed from one place along an outline to the next. */
function corners(outline: Outline, from: number, to: number): Vec2[] {
  const end = to > from ? to : to + outline.length;
  const passed: Vec2[] = [];
  for (let i = Math.floor(from) + 1; i <= end; i++) passed.push(outline[i % outline.length]!);
  return passed;
}

function crossingsOf(piece: Outline, notch: Outline): Crossing[] {
  return piece.flatMap((a, i) => {
    const along = less(piece[(i + 1) % piece.length]!, a);
    return notch.flatMap((b, k): Crossing[] => {
      const across = less(notch[(k + 1) % notch.length]!, b);
      const turn = cross(across, along);
      if (turn === 0) return [];
      const between = less(b, a);
      const t = cross(across, between) / turn;
      const u = cross(along, between) / turn;
      if (t < 0 || t >= 1 || u < 0 || u >= 1) return [];
      return [
        { at: [a[0] + t * along[0], a[1] + t * along[1]], piece: i + t, notch: k + u, enters: turn > 0 },
      ];
    });
  });
}

const less = (a: Vec2, b: Vec2): Vec2 => [a[0] - b[0], a[1] - b[1]];
const cross = (a: Vec2, b: Vec2): number => a[0] * b[1] - a[1] * b[0];

/** Area of an outline, + anticlockwise, in the square of its unit. */
export function outlineArea(outline: Outline): number {
  return outline.reduce((sum, a, i) => sum + cross(a, outline[(i + 1) % outline.length]!) / 2, 0);
}

function anticlockwise(outline: Outline): Outline {
  return outlineArea(outline) < 0 ? outline.toReversed() : outline;
}

function isInside(outline: Outline, [y, z]: Vec2): boolean {
  let inside = false;
  outline.forEach(([y0, z0], i) => {
    const [y1, z1] = outline[(i + 1) % outline.length]!;
    if (z0 > z !== z1 > z && y < y0 + ((y1 - y0) * (z - z0)) / (z1 - z0)) inside = !inside;
  });
  return inside;
}
