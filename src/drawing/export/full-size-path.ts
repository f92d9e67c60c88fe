// SVG path data as the sheet writes it (M, L, A of circles, Z) back to polylines, for writers that know no paths.

import { sweep } from '../flatten';
import type { Point } from '../shapes';

/** Farthest that a chord may stand off its arc, px at 96 to the inch: 0.01 mm. */
const STANDS_OFF = 0.04;

/** The strokes of a path; closed ones end where they began. Arcs are cut into chords. */
export function flattenPath(d: string): (readonly Point[])[] {
  const strokes: Point[][] = [];
  for (const [, letter, rest = ''] of d.matchAll(/([MLAZ])([^MLAZ]*)/g)) {
    const numbers = rest.trim().split(/\s+/).map(Number);
    const current = strokes.at(-1) ?? [];
    const to = numbers.slice(-2) as unknown as Point; // each letter but Z ends in a place
    if (letter === 'M') strokes.push([to]);
    else if (letter === 'Z') current.push(current[0]!); // nothing is closed that was not begun
    else if (letter === 'L') current.push(to);
    else current.push(...arcTo(current.at(-1)!, to, numbers[0]!, numbers[3] === 1, numbers[4] === 1));
  }
  return strokes;
}

/**
 * Points along a circle's arc after `from` up to `to`, by the rules of SVG 1.1, appendix F.6.5: y runs down,
 * so a positive sweep is clockwise on paper.
 */
function arcTo(from: Point, to: Point, radius: number, large: boolean, clockwise: boolean): Point[] {
  const half: Point = [(from[0] - to[0]) / 2, (from[1] - to[1]) / 2];
  const chord = Math.hypot(...half);
  if (chord === 0 || radius <= 0) return [to];
  const r = Math.max(radius, chord);
  const off = (Math.sqrt(r * r - chord * chord) / chord) * (large === clockwise ? -1 : 1);
  const centre: Point = [(from[0] + to[0]) / 2 + off * half[1], (from[1] + to[1]) / 2 - off * half[0]];
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  const end = Math.atan2(to[1] - centre[1], to[0] - centre[0]);
  const turn = clockwise ? sweep(start, end) : -sweep(end, start);
  const chords = Math.max(1, Math.ceil(Math.abs(turn) / Math.sqrt((8 * STANDS_OFF) / r)));
  return Array.from({ length: chords }, (_, i): Point => {
    if (i + 1 === chords) return to;
    const angle = start + (turn * (i + 1)) / chords;
    return [centre[0] + r * Math.cos(angle), centre[1] + r * Math.sin(angle)];
  });
}
