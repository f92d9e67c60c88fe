import { outlineArea } from './outline';
import type { RulingEnd } from './ruling';
import { unroll } from './unroll';
import type { Flat } from './unroll';
import { distance, distance2 } from './vec';
import type { Vec2 } from './vec';

/** A strip laid flat, with what the corners alone don't tell of its edges. */
export interface LaidStrip {
  /** Both edges, m, one point a ruling; the chord of the first runs along +x from 0, 0. */
  readonly flat: Flat;
  /** Curvature of each edge within the sheet at each ruling, 1/m; + turns from the first edge to the second. */
  readonly turn: { readonly first: Float64Array; readonly second: Float64Array };
  /** Area between the curved edges, m2. */
  readonly area: number;
}

/** Lays a strip flat from the ends of its rulings: two lists of the same length. */
export function layFlat(starts: readonly RulingEnd[], stops: readonly RulingEnd[]): LaidStrip {
  // Indices run inside lists of one entry a ruling, here and below.
  const last = starts.length - 1;
  const flat = unroll({
    across: Float64Array.from(starts, (start, k) => distance(start.point, stops[k]!.point)),
    first: chordsOnSheet(starts),
    second: chordsOnSheet(stops),
    rising: Float64Array.from({ length: last }, (_, k) => distance(starts[k]!.point, stops[k + 1]!.point)),
    falling: Float64Array.from({ length: last }, (_, k) => distance(stops[k]!.point, starts[k + 1]!.point)),
  });
  const turn = { first: turns(starts), second: turns(stops) };
  const outline = [...flat.first, ...flat.second.toReversed()];
  return {
    flat,
    turn,
    area: outlineArea(outline) + bows(flat.first, turn.first) - bows(flat.second, turn.second),
  };
}

/**
 * Chords of an edge on the sheet. Rolled out, an edge loses its curvature out of the sheet and keeps that
 * within it; an arc s is longer than its chord by s^3 (curvature)^2 / 24, so the chord on the sheet is longer
 * than the chord in space by the outward part of that.
 */
function chordsOnSheet(ends: readonly RulingEnd[]): Float64Array {
  const chords = new Float64Array(ends.length - 1);
  for (let k = 0; k < chords.length; k++) {
    const chord = distance(ends[k]!.point, ends[k + 1]!.point);
    const bend2 = (outwardAt(ends, k) ** 2 + outwardAt(ends, k + 1) ** 2) / 2;
    chords[k] = chord * (1 + (chord * chord * bend2) / 24);
  }
  return chords;
}

/** Where the edges meet the surface shows no normal, so the next ruling's bend is taken. */
function outwardAt(ends: readonly RulingEnd[], k: number): number {
  const end = ends[k]!;
  return (end.normal ? end : (ends[k + 1] ?? ends[k - 1] ?? end)).outward;
}

function turns(ends: readonly RulingEnd[]): Float64Array {
  return Float64Array.from(ends, (end) => end.turn);
}

/** Area between a flat edge and its chords: s^3 (curvature) / 12 a piece, + where it bows to the right. */
function bows(points: readonly Vec2[], turn: Float64Array): number {
  let sum = 0;
  for (let k = 0; k + 1 < points.length; k++) {
    sum += (distance2(points[k]!, points[k + 1]!) ** 3 * (turn[k]! + turn[k + 1]!)) / 24;
  }
  return sum;
}
