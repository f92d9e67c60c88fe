/** The best first boards: where all joints that follow from them stand clear, as far as that can be. */
import type { Hull } from '../../boat';
import type { Values } from '../define';
import { laidSide, type LaidSide, type LongTimber, timberKeys, timberOf } from './joints-plan';

export interface FirstBoards {
  readonly port: number;
  readonly starboard: number;
}

export const searchKeys = [...timberKeys, 'pieces'] as const;

/** First boards are tried by this step, m: a joint moved by less stands no better. */
const STEP = 0.01;
/** Lengths tried a side; a longer range is walked in wider steps. */
const MOST = 160;

const known = new WeakMap<Hull, { readonly key: string; readonly best: FirstBoards }>();

/** @throws a sentence where no board can be laid */
export function bestFirstBoards(hull: Hull, v: Values): FirstBoards {
  const key = searchKeys.map((name) => v[name]).join(' ');
  const before = known.get(hull);
  if (before?.key === key) return before.best;
  const best = searched(timberOf(hull, v), v['pieces'] === 'fewest');
  known.set(hull, { key, best });
  return best;
}

function searched(timber: LongTimber, fewestOnly: boolean): FirstBoards {
  const all = firstLengths(timber).map((first) => gradeOf(timber, laidSide(timber, first)));
  const fewest = Math.min(...all.map(({ side }) => side.pieces.length));
  const within = all.filter(({ side }) => !fewestOnly || side.pieces.length === fewest);
  // A stub at an end is no pattern, unless there is no other.
  const whole = within.filter(({ side }) => side.pieces.length === 1 || side.shortest >= timber.least - 1e-9);
  const tried = whole.length > 0 ? whole : within;
  let best: { readonly rank: readonly number[]; readonly boards: FirstBoards } | null = null;
  tried.forEach((port, i) => {
    // Port and starboard may change places: only one of the two is looked at, the longer board to port.
    for (const starboard of timber.pair ? tried.slice(i) : [port]) {
      const rank = rankOf(timber, port, starboard);
      if (best === null || isBefore(rank, best.rank))
        best = { rank, boards: { port: port.side.first, starboard: starboard.side.first } };
    }
  });
  return best!.boards; // a whole board is always tried
}

/** From a whole board down to the least piece that is worth a joint. */
function firstLengths({ edge, board, least, taper }: LongTimber): readonly number[] {
  const longest = Math.min(board, edge.length);
  const shortest = Math.min(longest, Math.max(least, taper + STEP));
  const step = STEP * Math.max(1, Math.ceil((longest - shortest) / STEP / MOST));
  const lengths = [longest];
  // A board that reaches leaves nothing to try.
  if (longest === edge.length) return lengths;
  for (let k = Math.ceil(longest / step) - 1; k * step >= shortest; k--) lengths.push(k * step);
  return lengths;
}

/** A side by itself, as far as it can be judged without the other. */
interface Grade {
  readonly side: LaidSide;
  readonly faults: number;
  readonly worst: number;
  readonly clear: number;
}

function gradeOf({ edge }: LongTimber, side: LaidSide): Grade {
  const { laps } = side;
  return {
    side,
    faults: laps.filter((lap) => lap.inHardBend).length + laps.filter((lap) => lap.onFrame).length,
    worst: Math.max(0, ...laps.map((lap) => lap.share)),
    clear: Math.min(edge.length, ...laps.map((lap) => lap.clear)),
  };
}

/**
 * What is compared, the weightiest first: rules broken, pieces, the hardest bend of a joint by steps of 5 %
 * where the edge bends hard at all, the
 * least clearance of a frame and of each other by steps of 1 cm, wood cut from the first boards. Less is better.
 */
function rankOf(
  { edge, stagger, pair, hardFrom }: LongTimber,
  port: Grade,
  starboard: Grade,
): readonly number[] {
  const { near, apart } = pair ? acrossOf(port.side, starboard.side, stagger) : { near: 0, apart: Infinity };
  return [
    port.faults + starboard.faults + near,
    port.side.pieces.length + starboard.side.pieces.length,
    // Where no stretch is hard, a harder bend of an easy edge is no drawback.
    Number.isFinite(hardFrom) ? Math.round(Math.max(port.worst, starboard.worst) * 20) : 0,
    -Math.round(Math.min(port.clear, starboard.clear) / STEP),
    -Math.round(Math.min(edge.length, apart) / STEP),
    -(port.side.first + starboard.side.first),
  ];
}

/** Joints that stand too near one across, on both sides, and the least distance. */
function acrossOf(port: LaidSide, starboard: LaidSide, stagger: number) {
  let apart = Infinity;
  let near = 0;
  for (const a of port.laps) {
    for (const b of starboard.laps) {
      const gap = Math.abs(a.at - b.at);
      apart = Math.min(apart, gap);
      if (gap < stagger - 1e-6) near += 2;
    }
  }
  return { near, apart };
}

function isBefore(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at >= 0 && a[at]! < b[at]!;
}
