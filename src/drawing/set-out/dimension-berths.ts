// Linear dimensions, as drafted: extension lines from the part, the dimension line outside
// it, the text above the line so that it reads from below or from the right. Where it
// won't fit between the arrows, the arrows turn round and the text stands past one end.

import { berth, onPaper, slabAt, type Berth, type Arrowhead, type Paper, type Setting } from './berth';
import { beside, REACHES } from './label-berths';
import type { DimShape, Point, SheetSide } from '../shapes';
import type { Stroke } from './slab';

/** From the part to the start of an extension line, and from the dimension line to its end, px. */
const GAP = 3;
const PAST = 5;
/** Between a text and its dimension line, px. */
const ABOVE = 3;
/** Between a level text and the upright line that it stands beside, arrowheads and all, px. */
const BESIDE = 6;
/** Length of a dimension line beyond arrows that are turned round, px. */
const TAIL = 15;
/** The least length that holds two arrows, px. */
const HOLDS_ARROWS = 24;

const OUTWARD: { readonly [side in SheetSide]: Point } = {
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

interface Distance {
  readonly out: number;
  readonly cost: number;
}

/** Rows tried, near the part and outside of everything. */
const ROWS = 7;

/** How far out a dimension line may lie along the outward normal, the likeliest first. */
function distances(
  { level }: DimShape,
  paper: Paper,
  normal: Point,
  near: number,
  first: number,
): readonly Distance[] {
  const step = paper.size + 9;
  const outer =
    Math.max(normal[0] * paper.left, normal[0] * paper.right) +
    Math.max(normal[1] * paper.top, normal[1] * paper.bottom);
  const rows = (base: number, cost: number): Distance[] =>
    Array.from({ length: ROWS }, (_, row) => ({
      out: base + first + (level + row) * step,
      cost: cost + 2 * row,
    }));
  // Dimensions that could stand in one row do.
  if (outer - near <= 1.2 * step) return rows(outer, 0);
  const inside = rows(near, 0).filter(({ out }) => out < outer + 0.5 * first);
  return [...inside, ...rows(outer, 3)].sort((a, b) => a.cost - b.cost);
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
  const tail = b - a < HOLDS_ARROWS ? TAIL : 0;
  const lines = (out: number, before: number, after: number): Lines => {
    const main: Stroke = [...at(a - Math.max(tail, before), out), ...at(b + Math.max(tail, after), out)];
    const strokes: Stroke[] = [main];
    for (const [foot, along] of [
      [dot(start, normal) + GAP, a],
      [dot(end, normal) + GAP, b],
    ] as const) {
      if (out > foot) strokes.push([...at(along, foot), ...at(along, out + PAST)]);
    }
    const sign = tail > 0 ? -1 : 1;
    const heads: Arrowhead[] = [
      [...at(a, out), -sign * u[0], -sign * u[1]],
      [...at(b, out), sign * u[0], sign * u[1]],
    ];
    return { main, strokes, heads };
  };

  const rows = distances(shape, paper, normal, near, first);
  const spots = spotsAlong(b - a, tail, Math.abs(u[1]) > 0.7, settings, outward);
  for (const { out, cost } of rows) {
    for (const spot of spots) {
      const [x, y] = at(a + spot.along, out + spot.out);
      yield berth({
        cost: cost + spot.cost,
        floor: cost,
        setting: spot.setting,
        slab: spot.level ? slabAt(x, y, spot.setting) : slabAt(x, y, spot.setting, u[0], u[1]),
        ...lines(out, spot.before, spot.after),
      });
    }
  }

  // Last of all a key number may stand off at the end of a leader.
  const [number] = settings;
  if (!number?.ringed) return;
  const far = (rows.at(-1)?.cost ?? 0) + 2;
  for (const { veer, length, cost } of REACHES) {
    for (const { out } of rows.slice(0, 4)) {
      const middle = at((a + b) / 2, out);
      const direction = (veer * Math.PI) / 4;
      const [ux, uy] = [Math.cos(direction), -Math.sin(direction)];
      const tip: Point = [middle[0] + length * ux, middle[1] + length * uy];
      const { main, strokes, heads } = lines(out, 0, 0);
      yield berth({
        cost: far + cost,
        floor: far + cost,
        setting: number,
        ...beside(tip, ux, uy, number),
        main,
        strokes: [...strokes, [...middle, ...tip]],
        heads,
      });
    }
  }
}

type Lines = Pick<Berth, 'main' | 'strokes' | 'heads'>;

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

function spotsAlong(
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
      put(length / 2, outward * clear, false, fits ? 0 : steep ? 6 : 0.5);
    }
    if (steep) {
      if (length + 2 * tail > height) put(length / 2, BESIDE + width / 2, true, fits ? 1.2 : 0.4);
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
