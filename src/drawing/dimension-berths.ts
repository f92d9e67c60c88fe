// Linear dimensions, as drafted: extension lines from the part, the dimension line outside
// it, the text above the line so that it reads from below or from the right. Where it
// won't fit between the arrows, the arrows turn round and the text stands past one end.

import { berth, onPaper, slabAt, type Berth, type Head, type Paper, type Setting } from './berth';
import type { DimShape, Point, Side } from './shapes';
import type { Stroke } from './slab';

/** From the part to the start of an extension line, and from the dimension line to its end, px. */
const GAP = 3;
const PAST = 5;
/** Between a text and its dimension line, px. */
const ABOVE = 3;
/** Length of a dimension line beyond arrows that are turned round, px. */
const TAIL = 15;
/** The least length that holds two arrows, px. */
const HOLDS_ARROWS = 24;

const OUTWARD: { readonly [side in Side]: Point } = {
  above: [0, -1],
  below: [0, 1],
  left: [-1, 0],
  right: [1, 0],
};

const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1];

/** The direction in which a dimension reads: to the right, or upward when it stands. */
function reading(shape: DimShape, from: Point, to: Point): Point {
  if (shape.run === 'horizontal') return [1, 0];
  if (shape.run === 'vertical') return [0, -1];
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length < 1e-9) return OUTWARD[shape.side][0] === 0 ? [1, 0] : [0, -1];
  const x = (to[0] - from[0]) / length;
  const y = (to[1] - from[1]) / length;
  return x > 1e-9 || (Math.abs(x) <= 1e-9 && y < 0) ? [x, y] : [-x, -y];
}

/** How far out a dimension line may lie, measured along the outward normal: near the part first, then outside everything. */
function* distances(
  shape: DimShape,
  paper: Paper,
  normal: Point,
  near: number,
  first: number,
): Generator<readonly [distance: number, cost: number]> {
  const step = paper.size + 9;
  const outer =
    Math.max(normal[0] * paper.left, normal[0] * paper.right) +
    Math.max(normal[1] * paper.top, normal[1] * paper.bottom);
  // Dimensions that could stand in one row do.
  const apart = outer - near > 1.2 * step;
  if (apart) {
    for (let level = shape.level; level < shape.level + 3; level++) {
      const distance = near + first + level * step;
      if (distance < outer + 0.5 * first) yield [distance, 2 * (level - shape.level)];
    }
  }
  for (let level = shape.level; level < shape.level + 7; level++) {
    yield [outer + first + level * step, (apart ? 3 : 0) + 2 * (level - shape.level)];
  }
}

export function* dimensionBerths(
  shape: DimShape,
  paper: Paper,
  settings: readonly Setting[],
): Generator<Berth> {
  const from = onPaper(paper, shape.from);
  const to = onPaper(paper, shape.to);
  const u = reading(shape, from, to);
  const up: Point = [u[1], -u[0]];
  const outward = dot(up, OUTWARD[shape.side]) >= -1e-9 ? 1 : -1;
  const normal: Point = [outward * up[0], outward * up[1]];

  const [start, end] = dot(from, u) <= dot(to, u) ? [from, to] : [to, from];
  const a = dot(start, u);
  const b = dot(end, u);
  const near = Math.max(dot(start, normal), dot(end, normal));
  const first = outward === 1 ? 15 : paper.size + 9;
  const at = (along: number, out: number): Point => [
    u[0] * along + normal[0] * out,
    u[1] * along + normal[1] * out,
  ];
  const stroke = (p: Point, q: Point): Stroke => [p[0], p[1], q[0], q[1]];

  for (const [out, cost] of distances(shape, paper, normal, near, first)) {
    const extensions: Stroke[] = [];
    for (const [point, along] of [
      [start, a],
      [end, b],
    ] as const) {
      const foot = dot(point, normal) + GAP;
      if (out > foot) extensions.push(stroke(at(along, foot), at(along, out + PAST)));
    }
    const turnedRound = b - a < HOLDS_ARROWS;
    const sign = turnedRound ? -1 : 1;
    const [x1, y1] = at(a, out);
    const [x2, y2] = at(b, out);
    const heads: Head[] = [
      [x1, y1, -sign * u[0], -sign * u[1]],
      [x2, y2, sign * u[0], sign * u[1]],
    ];
    const tail = turnedRound ? TAIL : 0;
    for (const spot of spots(b - a, tail, Math.abs(u[1]) > 0.7, settings, outward)) {
      const main = stroke(at(a - Math.max(tail, spot.before), out), at(b + Math.max(tail, spot.after), out));
      const [x, y] = at(a + spot.along, out + spot.out);
      yield berth({
        cost: cost + spot.cost,
        floor: cost,
        setting: spot.setting,
        slab: spot.level ? slabAt(x, y, spot.setting) : slabAt(x, y, spot.setting, u[0], u[1]),
        main,
        strokes: [main, ...extensions],
        heads,
      });
    }
  }
}

/** Where a text lies about its dimension line: from the line's start, and outward from it. */
interface Spot {
  readonly setting: Setting;
  readonly along: number;
  readonly out: number;
  /** How far the line runs on before its start and past its end, to underline or reach the text. */
  readonly before: number;
  readonly after: number;
  /** Set level although the line is not. */
  readonly level: boolean;
  readonly cost: number;
}

function spots(
  length: number,
  tail: number,
  steep: boolean,
  settings: readonly Setting[],
  outward: number,
): Spot[] {
  const found: Spot[] = [];
  for (const setting of settings) {
    const { width, height } = setting;
    const fits = length >= width + 6;
    const put = (along: number, out: number, level: boolean, cost: number, before = 0, after = 0): void => {
      found.push({ setting, along, out, before, after, level, cost: cost + setting.cost });
    };
    // A text wider than its line stands clear of the ends of the extension lines too.
    const clear = (fits ? ABOVE : PAST + 2) + height / 2;
    if (fits || width < length + 2 * tail + 24) {
      put(length / 2, outward * clear, false, fits ? 0 : steep ? 3 : 0.5);
    }
    if (steep) {
      if (length + 2 * tail > height) put(length / 2, ABOVE + 1 + width / 2, true, fits ? 1.2 : 0.4);
      const past = Math.max(tail, 4) + ABOVE + height / 2;
      put(length + past, 0, true, 1, 0, tail);
      put(-past, 0, true, 1.1, tail, 0);
    } else {
      const past = (tail > 0 ? tail : 6) + ABOVE + width / 2;
      const cost = fits ? 1.9 : 0.9;
      put(length + past, 0, false, cost, 0, past - ABOVE - width / 2);
      put(-past, 0, false, cost + 0.1, past - ABOVE - width / 2, 0);
    }
  }
  return found.sort((p, q) => p.cost - q.cost);
}
