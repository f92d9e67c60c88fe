// Finding room for all texts of a drawing: each takes its best free berth in turn, those
// that disturb others look again, and a text that still collides gives way to a number,
// its wording going to the key under the drawing.

import { angleBerths } from './angle-berths';
import { berth, numbered, settings, type Berth, type Paper, type Setting } from './berth';
import { dimensionBerths } from './dimension-berths';
import { collisionsOf, disturbsGround, disturbsOthers, type Edges } from './disturbance';
import type { Ground } from './ground';
import { labelBerths, noteBerths, radiusBerths } from './label-berths';
import { isFootNote, isText, type Shape, type TextShape } from '../shapes';
import { makeSlab } from './slab';
import { tiedBerths } from './tied-berths';

/** A text in full, as a number that refers to the key, or in the key alone. */
export type LabelForm = 'full' | 'numbered' | 'silent';

export interface Seat {
  readonly shape: TextShape;
  /** Rank of the shape in the drawing. */
  readonly of: number;
  /** How its text may be set. */
  readonly ways: readonly Setting[];
  manner: LabelForm;
  /** The berth taken, and its rank among those offered. */
  berth: Berth;
  choice: number;
}

export interface Seating {
  readonly paper: Paper;
  /** What is drawn on that paper: `mapGround` of the same shapes. */
  readonly ground: Ground;
  readonly edges: Edges;
  /** Choices to begin from, by rank of the shape: those of the last setting out or of the last margins. */
  readonly before?: ReadonlyMap<number, number>;
  /** By how much another berth must be better to be worth a move from there. */
  readonly loyalty: number;
  /** Shapes, by rank, whose text is in the key from the beginning. */
  readonly keyed?: ReadonlySet<number>;
}

/** Who chooses first: those with the fewest berths. Of dimensions the small ones, which stand nearest to the part. */
const TURN: { readonly [shape in TextShape['shape']]: number } = {
  note: 0,
  radius: 1,
  angle: 2,
  dim: 3,
  label: 4,
};
/** Widest text on the drawing itself, as a multiple of its size; longer ones are broken into lines. */
const WIDEST = 16;
/** Less disturbance than this is let stand: a few thin lines that cross. */
const TOLERABLE = 2;
const ROUNDS = 3;

/** Gives each text shape that lies on the drawing the best berth it can get; some may still collide: see `giveWay`. */
export function seatAll(shapes: readonly Shape[], seating: Seating): Seat[] {
  const { ground } = seating;
  const { size } = seating.paper;
  const waiting = shapes.flatMap((shape, of) =>
    isText(shape) && !isFootNote(shape) ? [{ shape, of, turn: TURN[shape.shape], span: span(shape) }] : [],
  );
  waiting.sort((a, b) => a.turn - b.turn || a.span - b.span);

  const seats: Seat[] = [];
  for (const { shape, of } of waiting) {
    if (isAgain(shape)) continue;
    const keyed = seating.keyed?.has(of) ?? false;
    const ways = keyed ? [numbered(0)] : settings(shape.text, size, WIDEST * size);
    const kept = nth(shape, ways, seating, seating.before?.get(of));
    seats.push({
      shape,
      of,
      ways,
      manner: keyed ? 'numbered' : 'full',
      ...(kept ?? best(shape, ways, seats, seating, null)),
    });
  }
  // Second thoughts: of all when they sit where they sat before, of those that lie badly when not.
  let settled = false;
  for (let round = 0; round < ROUNDS && !settled; round++) {
    settled = true;
    for (const seat of seats) {
      const trouble = disturbsOthers(seat.berth, seats, seating.edges) + disturbsGround(seat.berth, ground);
      if (!seating.before && trouble < TOLERABLE) continue;
      const { choice } = seat;
      const others = seats.filter((s) => s !== seat);
      Object.assign(seat, best(seat.shape, seat.ways, others, seating, seat));
      if (seat.choice !== choice) settled = false;
    }
  }
  for (const { shape, of } of waiting) if (isAgain(shape)) seats.push(spare(shape, of, seats, seating));
  return seats.sort((a, b) => a.of - b.of);
}

/** Whether a text only says again what another says: it asks for no margin, and stands in no key. */
export const isAgain = (shape: TextShape): boolean => shape.shape === 'label' && shape.again === true;
/** What such a text may disturb, its leader's length included: more, and it is left out. */
const WORTH = 4;

/** The seat of a name that stands elsewhere too, silent where there is no room close by. */
function spare(shape: TextShape, of: number, others: readonly Seat[], seating: Seating): Seat {
  const ways = settings(shape.text, seating.paper.size, WIDEST * seating.paper.size);
  const within = { ...seating, edges: { ...seating.edges, firm: true } };
  const taken = best(shape, ways, others, within, null);
  const trouble =
    taken.berth.cost +
    disturbsOthers(taken.berth, others, within.edges) +
    disturbsGround(taken.berth, seating.ground);
  if (trouble <= WORTH) return { shape, of, ways, manner: 'full', ...taken };
  return { shape, of, ways, manner: 'silent', ...taken, berth: muted(taken.berth) };
}

const span = (shape: TextShape): number =>
  shape.shape === 'dim' ? Math.hypot(shape.to[0] - shape.from[0], shape.to[1] - shape.from[1]) : 0;

function berths(shape: TextShape, paper: Paper, ways: readonly Setting[]): Generator<Berth> {
  switch (shape.shape) {
    case 'dim':
      return dimensionBerths(shape, paper, ways);
    case 'angle':
      return angleBerths(shape, paper, ways);
    case 'radius':
      return radiusBerths(shape, paper, ways);
    case 'label':
      return labelBerths(shape, paper, ways);
    case 'note':
      return noteBerths(shape, paper, ways);
  }
}

interface Taken {
  readonly berth: Berth;
  readonly choice: number;
}

/** The berth of a rank, when there is one. */
function nth(
  shape: TextShape,
  ways: readonly Setting[],
  { paper }: Seating,
  rank: number | undefined,
): Taken | null {
  if (rank === undefined) return null;
  let choice = 0;
  for (const berth of berths(shape, paper, ways)) if (choice++ === rank) return { berth, choice: rank };
  return null;
}

const best = (
  shape: TextShape,
  ways: readonly Setting[],
  others: readonly Seat[],
  seating: Seating,
  taken: Taken | null,
): Taken => cheapest(berths(shape, seating.paper, ways), others, seating, taken);

/** The berth of least cost, disturbance included; one already taken is left only for one that is clearly better. */
function cheapest(
  offers: Iterable<Berth>,
  others: readonly Seat[],
  { ground, edges, loyalty }: Seating,
  taken: Taken | null,
): Taken {
  let found = taken;
  let least = Infinity;
  if (taken) {
    const { berth } = taken;
    least = berth.cost + disturbsOthers(berth, others, edges) + disturbsGround(berth, ground) - loyalty;
  }
  let choice = 0;
  for (const offer of offers) {
    if (offer.floor >= least) break;
    let { cost } = offer;
    if (cost < least) cost += disturbsOthers(offer, others, edges, least - cost);
    if (cost < least) cost += disturbsGround(offer, ground);
    if (cost < least) {
      least = cost;
      found = { berth: offer, choice };
    }
    choice++;
  }
  if (!found) throw new Error('no berth offered for a text');
  return { berth: found.berth, choice: found.choice };
}

/**
 * Turns texts into numbers, moves numbers that still collide away on a leader, and leaves out what even so has no room,
 * until no text lies on another, on a foreign line or off the sheet.
 */
export function giveWay(seats: readonly Seat[], seating: Seating): void {
  const next = () => worst(seats, seating);
  const tied = new Set<Seat>();
  for (let loser = next(); loser; loser = next()) {
    const seat = loser;
    const others = seats.filter((s) => s !== seat);
    if (isAgain(seat.shape) || tied.has(seat)) {
      seat.manner = 'silent';
      seat.berth = muted(seat.berth);
    } else if (seat.manner === 'full') {
      seat.manner = 'numbered';
      Object.assign(seat, best(seat.shape, [numbered(0)], others, seating, null));
    } else {
      tied.add(seat);
      Object.assign(seat, cheapest(tiedBerths(seat.shape, seat.berth, seating.paper), others, seating, null));
    }
  }
}

/** Of the seats in collision the one that should give way: the most entangled, a label before a dimension, a long text before a short one. */
function worst(seats: readonly Seat[], { edges, ground }: Seating): Seat | null {
  let found: Seat | null = null;
  let most = 0;
  for (const seat of seats) {
    if (seat.manner === 'silent') continue;
    const count = collisionsOf(seat.berth, seats, edges, ground);
    const weight = 10 * count + TURN[seat.shape.shape] + 0.01 * seat.shape.text.length;
    if (count > 0 && weight > most) {
      most = weight;
      found = seat;
    }
  }
  return found;
}

/** A berth without its text. A dimension keeps its lines; a leader without a text would point at nothing. */
function muted(full: Berth): Berth {
  const { main, strokes, heads, slab } = full;
  if (!slab) return full;
  const lines = main ? { strokes, heads } : { strokes: [], heads: [] };
  // What is left of it takes no room: where it points, if it points anywhere.
  const [x, y] = full.dot ?? [slab.x, slab.y];
  const nowhere = makeSlab(x, y, 0, 0);
  return { ...berth({ ...full, ...lines, slab: nowhere, dot: null }), slab: null };
}
