/** The best first boards: where all joints that follow from them stand clear, as far as that can be. */
import { type FirstBoards, laidSide, type LaidSide, type LongTimber } from './joint-layout';

/** First boards are tried by this step, m: a joint moved by less stands no better. */
const STEP = 0.01;
/** Lengths tried a side; a longer range is walked in wider steps. */
const MOST = 160;

export interface BestJoints {
  readonly boards: FirstBoards;
  /** Rules broken, pieces too short to be worth a scarf among them. */
  readonly broken: number;
  /** Of all timbers, both sides. */
  readonly pieces: number;
}

/**
 * @param timbers timbers of one part that begin with the same boards: two chine logs a side are laid out alike
 * @param more pieces that a side may have beyond the fewest that reach, where that keeps joints clear
 * @throws a sentence where no board can be laid
 */
export function bestJoints(timbers: readonly LongTimber[], more: number): BestJoints {
  const all = firstLengths(timbers).map((first) =>
    gradeOf(
      timbers,
      timbers.map((timber) => laidSide(timber, first)),
    ),
  );
  const fewest = Math.min(...all.map(({ pieces }) => pieces));
  const within = all.filter(({ pieces }) => pieces <= fewest + more * timbers.length);
  // A stub at an end is no pattern, unless there is no other.
  const whole = within.filter(({ stubs }) => stubs === 0);
  const tried = whole.length > 0 ? whole : within;
  const pair = timbers.some((timber) => timber.pair);
  const run: Run = {
    length: lengthOf(timbers),
    isHard: timbers.some(({ hardFrom }) => Number.isFinite(hardFrom)),
  };
  const ideal = idealOf(tried);
  let best: Best | null = null as Best | null;
  tried.forEach((port, i) => {
    // No better though all that is good lay across from it.
    if (best && !isBefore(best, run, port, ideal, unrelated)) return;
    // Port and starboard may change places: only one of the two is looked at, the longer board to port.
    for (const starboard of pair ? tried.slice(i) : [port]) {
      // No better though their joints stood as far apart as may be: the two together are not looked at.
      if (best && !isBefore(best, run, port, starboard, unrelated)) continue;
      const across = acrossOf(timbers, port, starboard);
      if (best === null || isBefore(best, run, port, starboard, across))
        best = { rank: ranks.map((rank) => rank(port, starboard, across, run)), port, starboard };
    }
  });
  const { rank, port, starboard } = best!; // a whole board is always tried
  const stubs = port.stubs + (pair ? starboard.stubs : 0);
  return {
    boards: { port: port.first, starboard: starboard.first },
    broken: rank[0]! + stubs,
    pieces: port.pieces + (pair ? starboard.pieces : 0),
  };
}

/** The timbers' greatest length, m, and whether any has a hard bend. */
interface Run {
  readonly length: number;
  readonly isHard: boolean;
}

interface Best {
  readonly rank: readonly number[];
  readonly port: Grade;
  readonly starboard: Grade;
}

/** From a whole board down to the least piece that is worth a joint. */
function firstLengths(timbers: readonly LongTimber[]): readonly number[] {
  const { board, least, taper } = timbers[0]!; // a part has one timber or more
  const whole = Math.max(...timbers.map(({ rough }) => rough.to - rough.from));
  const longest = Math.min(board, whole);
  const shortest = Math.min(longest, Math.max(least, taper + STEP));
  const step = STEP * Math.max(1, Math.ceil((longest - shortest) / STEP / MOST));
  const lengths = [longest];
  // A board that reaches leaves nothing to try.
  if (longest === whole) return lengths;
  for (let k = Math.ceil(longest / step) - 1; k * step >= shortest; k--) lengths.push(k * step);
  return lengths;
}

/** A side by itself, as far as it can be judged without the other. */
interface Grade {
  readonly first: number;
  /** One a timber. */
  readonly sides: readonly LaidSide[];
  readonly pieces: number;
  readonly stubs: number;
  readonly faults: number;
  readonly worst: number;
  readonly clear: number;
}

function gradeOf(timbers: readonly LongTimber[], sides: readonly LaidSide[]): Grade {
  const laps = sides.flatMap((side) => side.laps);
  return {
    first: sides[0]!.first, // a side a timber
    sides,
    pieces: sides.reduce((sum, { pieces }) => sum + pieces.length, 0),
    stubs: sides.filter(({ pieces, shortest }, i) => pieces.length > 1 && shortest < timbers[i]!.least - 1e-9)
      .length,
    faults: laps.filter((lap) => lap.inHardBend).length + laps.filter((lap) => lap.onFrame).length,
    worst: Math.max(0, ...laps.map((lap) => lap.share)),
    clear: Math.min(lengthOf(timbers), ...laps.map((lap) => lap.clear)),
  };
}

/** All that is best in any of several sides, as no one of them may have it together. */
function idealOf(grades: readonly Grade[]): Grade {
  const least = (of: (grade: Grade) => number) => Math.min(...grades.map(of));
  return {
    first: -least(({ first }) => -first),
    sides: [],
    pieces: least(({ pieces }) => pieces),
    stubs: 0,
    faults: least(({ faults }) => faults),
    worst: least(({ worst }) => worst),
    clear: -least(({ clear }) => -clear),
  };
}

const lengthOf = (timbers: readonly LongTimber[]) => Math.max(...timbers.map(({ edge }) => edge.length));

/**
 * What is compared, the weightiest first: rules broken, pieces, the hardest bend of a joint by steps of 5 %
 * where the edge bends hard at all, the
 * least clearance of a frame and of each other by steps of 1 cm, the bend where it is easy, wood cut from the first
 * boards. Less is better.
 */
const ranks: readonly ((port: Grade, starboard: Grade, across: Across, run: Run) => number)[] = [
  (port, starboard, across) => port.faults + starboard.faults + across.near,
  (port, starboard) => port.pieces + starboard.pieces,
  (port, starboard, _, { isHard }) => (isHard ? bendOf(port, starboard) : 0),
  (port, starboard) => -Math.round(Math.min(port.clear, starboard.clear) / STEP),
  (_port, _starboard, { apart }, { length }) => -Math.round(Math.min(length, apart) / STEP),
  // Where no stretch is hard, a harder bend is a drawback only if all else is the same.
  bendOf,
  (port, starboard) => -(port.first + starboard.first),
];

function bendOf(port: Grade, starboard: Grade): number {
  return Math.round(Math.max(port.worst, starboard.worst) * 20);
}

/** Most pairs are told from the best so far by the first rank or two; they are many, so no list is made for one. */
function isBefore({ rank: best }: Best, run: Run, port: Grade, starboard: Grade, across: Across): boolean {
  for (let i = 0; i < ranks.length; i += 1) {
    const value = ranks[i]!(port, starboard, across, run); // in range by the loop
    if (value !== best[i]) return value < best[i]!;
  }
  return false;
}

/** How the joints of one side stand to those of the other. */
interface Across {
  /** Two for each pair that stands too near. */
  readonly near: number;
  /** Least distance, m. */
  readonly apart: number;
}

const unrelated: Across = { near: 0, apart: Infinity };

function acrossOf(timbers: readonly LongTimber[], port: Grade, starboard: Grade): Across {
  let apart = Infinity;
  let near = 0;
  timbers.forEach(({ pair, stagger }, i) => {
    if (!pair) return;
    for (const a of port.sides[i]!.laps) {
      for (const b of starboard.sides[i]!.laps) {
        const gap = Math.abs(a.at - b.at);
        apart = Math.min(apart, gap);
        if (gap < stagger - 1e-6) near += 2;
      }
    }
  });
  return { near, apart };
}
