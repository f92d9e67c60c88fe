/**
 * Sheets as they fill, each state worked out once: the same pieces laid on in the same order stand where they stood
 * before, so that trying another order costs only what is new in it.
 */
import type { NoFits } from './no-fit';
import { bestPlace, type Score } from './places';
import { type Lying, type PieceKind, TICKS } from './shapes';

/** Where a piece is drawn to: the sheet's end, its lower edge, or the corner. */
export const pulls = ['end', 'edge', 'corner'] as const;
export type Pull = (typeof pulls)[number];

export interface Laid {
  readonly kind: PieceKind;
  readonly lying: Lying;
  /** Lower left corner of the piece's box from that of the room, ticks. */
  readonly x: number;
  readonly y: number;
}

export interface SheetState {
  readonly stock: number;
  readonly laid: readonly Laid[];
  /** Area of the pieces, m2. */
  readonly area: number;
  /** How far they reach along and across the room, ticks. */
  readonly along: number;
  readonly across: number;
  /** What it becomes with one more piece; null where there is no room. By kind and pull. */
  readonly next: Map<number, SheetState | null>;
}

/** The room of a sheet within its edges, ticks. */
export interface Room {
  readonly length: number;
  readonly width: number;
}

/** Rounding of entries in inches, ticks: half of what a plan is held to. */
const FORGIVEN = 5;

export interface SheetStates {
  readonly rooms: readonly Room[];
  /** An empty sheet of a stock. */
  readonly empty: (stock: number) => SheetState;
  readonly add: (state: SheetState, kind: PieceKind, pull: Pull) => SheetState | null;
  /** States worked out so far: what a search counts its effort by. */
  readonly made: () => number;
}

export function makeSheetStates(rooms: readonly Room[], noFit: NoFits): SheetStates {
  const empties = rooms.map((_, stock): SheetState => ({
    stock,
    laid: [],
    area: 0,
    along: 0,
    across: 0,
    next: new Map(),
  }));
  let made = 0;

  const layOn = (state: SheetState, kind: PieceKind, pull: Pull): SheetState | null => {
    const room = rooms[state.stock]!; // a state is of a stock
    let best: { lying: Lying; x: number; y: number; score: readonly [number, number] } | null = null;
    for (const lying of kind.lyings) {
      const { shape } = lying;
      const score = scoreFor(pull, state, shape);
      const place = bestPlace(
        room.length - shape.width,
        room.width - shape.height,
        state.laid.map(({ lying: there, x, y }) => ({ noFit: noFit(there.shape, shape), x, y })),
        score,
      );
      if (!place) continue;
      const is = score(...place);
      if (!best || is[0] < best.score[0] || (is[0] === best.score[0] && is[1] < best.score[1]))
        best = { lying, x: place[0], y: place[1], score: is };
    }
    if (!best) return null;
    const { lying, x, y } = best;
    return {
      stock: state.stock,
      laid: [...state.laid, { kind, lying, x, y }],
      area: state.area + kind.area,
      along: Math.max(state.along, x + lying.shape.width),
      across: Math.max(state.across, y + lying.shape.height),
      next: new Map(),
    };
  };

  return {
    rooms,
    empty: (stock) => empties[stock]!,
    add: (state, kind, pull) => {
      const room = rooms[state.stock]!;
      if ((state.area + kind.area) * TICKS * TICKS > room.length * room.width) return null;
      const key = kind.id * pulls.length + pulls.indexOf(pull);
      const known = state.next.get(key);
      if (known !== undefined) return known;
      made += 1 + state.laid.length * kind.lyings.length;
      const next = layOn(state, kind, pull);
      state.next.set(key, next);
      return next;
    },
    made: () => made,
  };
}

export const roomOf = (
  { length, width }: { readonly length: number; readonly width: number },
  edge: number,
): Room => ({
  length: Math.floor((length - 2 * edge) * TICKS + FORGIVEN),
  width: Math.floor((width - 2 * edge) * TICKS + FORGIVEN),
});

function scoreFor(
  pull: Pull,
  { along, across }: SheetState,
  { width, height }: { readonly width: number; readonly height: number },
): Score {
  if (pull === 'end') return (x, y) => [x + width, y + height];
  if (pull === 'edge') return (x, y) => [y + height, x + width];
  return (x, y) => [Math.max(along, x + width) * Math.max(across, y + height), x + y];
}
