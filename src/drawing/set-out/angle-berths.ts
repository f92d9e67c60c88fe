// Angle dimensions: an arc about the apex with arrows at its ends; a narrow angle has its
// arrows turned round and its text past one end.

import { berth, onPaper, slabAt, type Berth, type Arrowhead, type Paper, type Setting } from './berth';
import { onCircle, sweep } from '../flatten';
import type { AngleShape, Point } from '../shapes';
import type { Stroke } from './slab';

/** Radii tried on paper, px: near the apex first. */
const RADII = [32, 46, 64, 88, 120, 160];
/** What each step outward costs: a wide arc sweeps over much else. */
const STEP = 2.5;
const HOLDS_ARROWS = 24;
const TAIL = 16;
const GAP = 3;
/** Between a text and its arc or legs, px. */
const AIR = 5;

export function* angleBerths(
  shape: AngleShape,
  paper: Paper,
  settings: readonly Setting[],
): Generator<Berth> {
  const apex = onPaper(paper, shape.apex);
  const angle = sweep(shape.from, shape.to);
  // On paper y runs down, so directions are mirrored.
  const at = (direction: number, radius: number): Point => onCircle(apex, radius, -direction);

  for (const [rank, radius] of RADII.entries()) {
    const turnedRound = angle * radius < HOLDS_ARROWS;
    const tail = turnedRound ? TAIL / radius : 0;
    const strokes = bow(at, radius, shape.from - tail, shape.from + angle + tail);
    for (const direction of [shape.from, shape.to]) {
      const foot = shape.reach * paper.scale + GAP;
      if (foot < radius + 5) strokes.push([...at(direction, foot), ...at(direction, radius + 5)]);
    }
    const heads = ends(at, radius, shape.from, shape.from + angle, turnedRound);

    for (const setting of settings) {
      // Level, about a centre `distance` px from a point in the direction (ux, uy).
      const put = (from: Point, ux: number, uy: number, distance: number, cost: number): Berth =>
        berth({
          cost: STEP * rank + cost + setting.cost,
          floor: STEP * rank,
          setting,
          slab: slabAt(from[0] + distance * ux, from[1] + distance * uy, setting),
          strokes,
          heads,
        });
      const halfWidth = setting.width / 2;
      const halfHeight = setting.height / 2;
      // Outside the arc all of the text must be clear of the tangent ...
      const bisector = shape.from + angle / 2;
      const [cos, sin] = [Math.cos(bisector), -Math.sin(bisector)];
      const reach = AIR + Math.abs(cos) * halfWidth + Math.abs(sin) * halfHeight;
      yield put(at(bisector, radius), cos, sin, reach, 0);
      // ... inside it, where the legs stand far enough apart ...
      const aside = AIR + Math.abs(sin) * halfWidth + Math.abs(cos) * halfHeight;
      if ((radius - reach) * Math.sin(Math.min(angle, Math.PI) / 2) > aside) {
        yield put(at(bisector, radius), -cos, -sin, reach, 0.3);
      }
      // ... past an end only the arc itself is in the way.
      const past = (ux: number, uy: number): number =>
        AIR + Math.min(halfWidth / Math.abs(ux), halfHeight / Math.abs(uy));
      const left = shape.from + angle + tail;
      const [leftX, leftY] = [-Math.sin(left), -Math.cos(left)];
      yield put(at(left, radius), leftX, leftY, past(leftX, leftY), 0.6);
      const right = shape.from - tail;
      const [rightX, rightY] = [Math.sin(right), Math.cos(right)];
      yield put(at(right, radius), rightX, rightY, past(rightX, rightY), 0.7);
    }
  }
}

/** How far a chord may stray from its arc, px: less than can be seen. */
const SAGITTA = 0.15;

/** The arc as short strokes. */
function bow(
  at: (direction: number, radius: number) => Point,
  radius: number,
  from: number,
  to: number,
): Stroke[] {
  const chords = Math.max(2, Math.ceil((to - from) / Math.sqrt((8 * SAGITTA) / radius)));
  return Array.from({ length: chords }, (_, i): Stroke => [
    ...at(from + ((to - from) * i) / chords, radius),
    ...at(from + ((to - from) * (i + 1)) / chords, radius),
  ]);
}

/** Heads at both ends, along the chord that a head of their length makes. */
function ends(
  at: (direction: number, radius: number) => Point,
  radius: number,
  from: number,
  to: number,
  turnedRound: boolean,
): Arrowhead[] {
  const lean = (turnedRound ? -9 : 9) / radius;
  const head = (tip: number, tailAt: number): Arrowhead => {
    const [x, y] = at(tip, radius);
    const [tx, ty] = at(tailAt, radius);
    const length = Math.hypot(x - tx, y - ty);
    return [x, y, (x - tx) / length, (y - ty) / length];
  };
  return [head(from, from + lean), head(to, to - lean)];
}
