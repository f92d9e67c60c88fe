// What it costs to lie in a berth: how much of others and of the drawing it disturbs.

import type { Berth } from './berth';
import type { Ground } from './ground';
import { slabsMeet, strokesCross, strokesCrowd, within, type Slab, type Stroke } from './slab';

/** Least clear paper round a text, px. */
const CLEAR = 2;
/** Two dimension lines side by side keep this far apart, px. */
const ROWS_APART = 7;
/** Length of an arrowhead, and half its width with some air, px. */
const HEAD = 9;
const HEAD_CLEAR = 4;

/** All in the coin of a berth's own cost, in which one step of a dimension outward is 2. */
const COST = {
  /** A text on a text, on a foreign thin line, or off the sheet when margins can't grow: not to be left so. */
  collision: 1000,
  /** Two dimension lines nearly upon each other. */
  crowd: 300,
  mainCrossesMain: 7,
  mainCrossesThin: 5,
  thinCrossesThin: 1,
  textOnStroke: 5,
  strokeCell: 0.6,
  hatchedCell: 0.025,
  lineOnStrokeCell: 0.2,
  leaderOnStrokeCell: 0.25,
  /** Off the sheet while margins may still grow. */
  overEdge: 2,
  edgePx: 0.05,
} as const;

/** Where texts must stay, px across the sheet; `firm` when the margins can't grow any more. */
export interface Edges {
  readonly left: number;
  readonly right: number;
  readonly firm: boolean;
}

/** Disturbance of other texts and their lines, and of the sheet's edges; stops counting at `enough`. */
export function disturbsOthers(
  berth: Berth,
  others: Iterable<{ readonly berth: Berth }>,
  edges: Edges,
  enough = Infinity,
): number {
  let cost = 0;
  const over = Math.max(0, edges.left - berth.left) + Math.max(0, berth.right - edges.right);
  if (over > 0) cost += edges.firm ? COST.collision + over : COST.overEdge + COST.edgePx * over;
  for (const { berth: other } of others) {
    if (cost >= enough) return cost;
    if (other === berth || apart(berth, other)) continue;
    cost += COST.collision * collide(berth, other) + cross(berth, other);
  }
  return cost;
}

/** Disturbance of what is drawn below. */
export function disturbsGround(berth: Berth, ground: Ground): number {
  let cost = 0;
  if (berth.slab) {
    const { strokes, hatched } = ground.under(berth.slab);
    cost += COST.collision * ground.struck(berth.slab);
    cost += (strokes > 0 ? COST.textOnStroke + COST.strokeCell * strokes : 0) + COST.hatchedCell * hatched;
  }
  const [leader] = berth.strokes;
  if (berth.main) cost += COST.lineOnStrokeCell * ground.along(berth.main);
  else if (leader) cost += COST.leaderOnStrokeCell * ground.along(leader);
  return cost;
}

/** How many collisions a berth's own text is in: those that must not be left. */
export function collisionsOf(
  { slab, ...berth }: Berth,
  others: Iterable<{ readonly berth: Berth }>,
  edges: Edges,
  ground: Ground,
): number {
  if (!slab) return 0;
  let count = ground.struck(slab);
  count += slab.x - slab.reachX < edges.left || slab.x + slab.reachX > edges.right ? 1 : 0;
  for (const { berth: other } of others) {
    if (other.slab === slab || apart(berth, other)) continue;
    count += (other.slab && slabsMeet(slab, other.slab, CLEAR) ? 1 : 0) + linesUnder(slab, other);
  }
  return count;
}

type Bounds = Pick<Berth, 'left' | 'right' | 'top' | 'bottom'>;

const apart = (a: Bounds, b: Bounds): boolean =>
  a.left > b.right + ROWS_APART ||
  b.left > a.right + ROWS_APART ||
  a.top > b.bottom + ROWS_APART ||
  b.top > a.bottom + ROWS_APART;

/** How often a text of one lies on the text, or on a line, of the other. */
const collide = (a: Berth, b: Berth): number =>
  (a.slab && b.slab && slabsMeet(a.slab, b.slab, CLEAR) ? 1 : 0) +
  (a.slab ? linesUnder(a.slab, b) : 0) +
  (b.slab ? linesUnder(b.slab, a) : 0);

/** How many lines and heads of a berth pass under a text. */
function linesUnder(slab: Slab, b: Berth): number {
  if (slab.x - slab.reachX > b.right + HEAD_CLEAR || slab.x + slab.reachX < b.left - HEAD_CLEAR) return 0;
  if (slab.y - slab.reachY > b.bottom + HEAD_CLEAR || slab.y + slab.reachY < b.top - HEAD_CLEAR) return 0;
  let count = 0;
  for (const stroke of b.strokes) if (within(slab, stroke, CLEAR)) count++;
  for (const [x, y, ux, uy] of b.heads) {
    if (within(slab, [x, y, x - HEAD * ux, y - HEAD * uy], HEAD_CLEAR)) count++;
  }
  return count;
}

/** Does a stroke lie wholly to one side of a berth? */
const beside = ([x1, y1, x2, y2]: Stroke, b: Berth): boolean =>
  (x1 < b.left && x2 < b.left) ||
  (x1 > b.right && x2 > b.right) ||
  (y1 < b.top && y2 < b.top) ||
  (y1 > b.bottom && y2 > b.bottom);

/** Arcs are made of many short strokes; who crosses them crosses but once and is not reckoned. */
const ARC = 8;

function cross(a: Berth, b: Berth): number {
  let cost = a.main && b.main && strokesCrowd(a.main, b.main, ROWS_APART) ? COST.crowd : 0;
  if (a.strokes.length > ARC || b.strokes.length > ARC) return cost;
  for (const p of a.strokes) {
    if (beside(p, b)) continue;
    for (const q of b.strokes) {
      if (!strokesCross(p, q)) continue;
      const mains = (p === a.main ? 1 : 0) + (q === b.main ? 1 : 0);
      cost += [COST.thinCrossesThin, COST.mainCrossesThin, COST.mainCrossesMain][mains] ?? 0;
    }
  }
  return cost;
}
