/** What no plan of given pieces can cost less than: by area, by pieces of which no two share a sheet, by exhaustion. */
import { fewestSheets } from './fewest';
import type { NoFits } from './no-fit';
import type { Packed, Packer } from './pack';
import { bestPlace } from './places';
import type { PlacedRect, RectWays } from './rects';
import type { PieceKind, NestShape } from './shapes';
import type { Room, SheetState } from './sheet-states';

export interface Least {
  readonly cost: number;
  /** A packing that was met on the way; it is better than the one known. */
  readonly packed: Packed | null;
}

/** Steps after which it is left open whether fewer sheets would do. */
const MOST_STEPS = 400_000;

export function leastOf(packer: Packer, known: Packed): Least {
  const { leastCost, problem, kinds, states, templates } = packer;
  if (known.cost <= leastCost) return { cost: leastCost, packed: null };
  const prices = problem.stocks.map(({ price }) => price);
  const strangers = Math.min(...prices) * countStrangers(kinds, states.rooms, templates.noFit);
  const cost = Math.max(leastCost, strangers);
  if (known.cost <= cost || problem.stocks.length !== 1 || !kinds.every(allRect))
    return { cost, packed: null };
  const price = prices[0]!; // there is one stock
  const [room] = states.rooms;
  const gap = 2 * halfGap(kinds[0]!.lyings[0]!.shape); // a kind lies some way
  const ways = kinds.map(({ lyings }): RectWays =>
    lyings.map(({ shape }) => [shape.width + gap, shape.height + gap]),
  );
  const counts = kinds.map(({ pieces }) => pieces.length);
  const found = fewestSheets(
    ways,
    counts,
    { length: room!.length + gap, width: room!.width + gap },
    {
      known: known.sheets.length,
      least: Math.max(1, Math.round(cost / price)),
      effort: { left: MOST_STEPS },
    },
  );
  return {
    cost: Math.max(cost, found.least * price),
    packed: found.sheets && packedOf(found.sheets, packer, known),
  };
}

const allRect = ({ lyings }: PieceKind) => lyings.every(({ shape }) => shape.isRect);

/** What was let out round a rectangle: its box begins so far outside of it. */
const halfGap = ({ grown }: NestShape) => -grown[0]!;

function packedOf(
  sheets: readonly (readonly PlacedRect[])[],
  { kinds, problem }: Packer,
  { recipe }: Packed,
): Packed {
  return {
    recipe,
    cost: sheets.length * problem.stocks[0]!.price,
    offcut: 0,
    uneven: 0,
    sheets: sheets.map((placed): SheetState => ({
      stock: 0,
      area: 0,
      along: 0,
      across: 0,
      next: new Map(),
      laid: placed.map(({ kind, way, x, y }) => ({
        kind: kinds[kind]!,
        lying: kinds[kind]!.lyings[way]!,
        x,
        y,
      })),
    })),
  };
}

/** Pieces of which no two can lie on one sheet, whichever is bought: each wants a sheet of its own. */
function countStrangers(kinds: readonly PieceKind[], rooms: readonly Room[], noFit: NoFits): number {
  const canShare = (one: PieceKind, other: PieceKind) =>
    rooms.some((room) =>
      one.lyings.some(({ shape: a }) => other.lyings.some(({ shape: b }) => liesBeside(a, b, room))),
    );
  const liesBeside = (a: NestShape, b: NestShape, { length, width }: Room): boolean => {
    const [ax, ay] = [length - a.width, width - a.height];
    const [bx, by] = [length - b.width, width - b.height];
    if (Math.min(ax, ay, bx, by) < 0) return false;
    // Both move: all that counts is where the one lies to the other, from -a's room to b's.
    return bestPlace(ax + bx, ay + by, [{ noFit: noFit(a, b), x: ax, y: ay }], () => [0, 0]) !== null;
  };
  let count = 0;
  const chosen: PieceKind[] = [];
  for (const kind of kinds.toSorted((a, b) => b.area - a.area)) {
    if (chosen.some((other) => canShare(kind, other))) continue;
    chosen.push(kind);
    count += kind.pieces.length > 1 && !canShare(kind, kind) ? kind.pieces.length : 1;
  }
  return count;
}
