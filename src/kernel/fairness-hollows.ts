import { viewCurvature } from './batten';
import type { Batten, View } from './batten';
import { splineAt } from './spline';
import type { Vec2 } from './vec';

/** A stretch of a line that bends the wrong way. */
export interface Hollow {
  /** Parameters of the batten where it begins and ends. */
  readonly from: number;
  readonly to: number;
  /** How deep it lies under a straightedge laid across it, m. */
  readonly depth: number;
}

const axesOf = { plan: ['x', 'y'], profile: ['x', 'z'], body: ['y', 'z'] } as const;

/** Where a batten is in a view, m. */
export function placeInView(batten: Batten, view: View, t: number): Vec2 {
  const [a, b] = axesOf[view];
  return [splineAt(batten[a], t), splineAt(batten[b], t)];
}

/**
 * Which way the line bends on the whole in a view: +1 where it turns from the first axis to the second (a
 * sheer with spring), -1 the other way (a side in plan), by the angle between its two ends.
 */
export function turnOfLine(batten: Batten, view: View): 1 | -1 {
  const [a, b] = axesOf[view];
  const heading = (t: number) => Math.atan2(splineAt(batten[b], t, 1), splineAt(batten[a], t, 1));
  return heading(batten.knots.at(-1)!) - heading(batten.knots[0]!) >= 0 ? 1 : -1;
}

/** Looks a bay: a hollow shorter than that share of it may be missed, and is too shallow to see. */
const LOOKS = 12;

/**
 * The stretches of a line that bend against its turn, from the first end to the last.
 *
 * @param turn the right way, as `turnOfLine` has it
 * @param deeper only those deeper than this, m
 */
export function hollows(batten: Batten, view: View, turn: 1 | -1, deeper = 0): readonly Hollow[] {
  const places: number[] = [];
  for (let i = 0; i < batten.knots.length - 1; i++) {
    const from = batten.knots[i]!;
    const step = (batten.knots[i + 1]! - from) / LOOKS;
    for (let k = 0; k < LOOKS; k++) places.push(from + k * step);
  }
  places.push(batten.knots.at(-1)!);
  const bends = places.map((t) => turn * viewCurvature(batten, t, view));
  const found: Hollow[] = [];
  let from: number | null = bends[0]! < 0 ? places[0]! : null;
  for (let i = 1; i < places.length; i++) {
    const [before, here] = [bends[i - 1]!, bends[i]!];
    const crossing = places[i - 1]! + ((places[i]! - places[i - 1]!) * before) / (before - here);
    if (from === null && here < 0) from = before > 0 ? crossing : places[i - 1]!;
    else if (from !== null && here >= 0) {
      found.push({ from, to: crossing, depth: depthOf(batten, view, from, crossing) });
      from = null;
    }
  }
  if (from !== null) {
    const to = places.at(-1)!;
    found.push({ from, to, depth: depthOf(batten, view, from, to) });
  }
  return found.filter(({ depth }) => depth > deeper);
}

/** The most that the line lies off the straight one between two of its places, m. */
function depthOf(batten: Batten, view: View, from: number, to: number): number {
  const [x0, y0] = placeInView(batten, view, from);
  const [x1, y1] = placeInView(batten, view, to);
  const chord = Math.hypot(x1 - x0, y1 - y0);
  if (chord === 0) return 0;
  let most = 0;
  for (let k = 1; k < 2 * LOOKS; k++) {
    const [x, y] = placeInView(batten, view, from + ((to - from) * k) / (2 * LOOKS));
    most = Math.max(most, Math.abs((x - x0) * (y1 - y0) - (y - y0) * (x1 - x0)) / chord);
  }
  return most;
}
