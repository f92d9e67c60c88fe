/** A function of one number looked at between two bounds: closely where it bends or jumps, and with its gaps told. */

export type Course = (x: number) => number | null;

/** One place looked at; y is null where the function has no value. */
export interface Sample {
  readonly x: number;
  readonly y: number | null;
}

export interface Bounds {
  readonly low: number;
  readonly high: number;
  /** Only whole numbers are looked at: a count has no halves. */
  readonly whole?: boolean;
}

/** Stretches of the first look; a table of ten stretches falls on its places. */
export const FIRST_LOOK = 40;
/** Halvings after it: a jump is followed down to a 2560th of the range. */
const HALVINGS = 6;
/** Places at the most, however much it bends. */
const MOST = 700;
/** How far a place may lie off the chord of its neighbours, as a share of all that the values span. */
const OFF = 0.002;

/**
 * Looks at a function, place by place, so that whoever waits may stop between two.
 * @param at further places to be looked at
 * @yields how much is done, 0 to 1, after each place
 * @returns the places in order
 */
export function* sampled(f: Course, bounds: Bounds, at: readonly number[] = []): Generator<number, Sample[]> {
  const xs = firstPlaces(bounds, at);
  let samples: Sample[] = [];
  for (const x of xs) {
    samples.push({ x, y: f(x) });
    yield (0.6 * samples.length) / xs.length;
  }
  if (bounds.whole) return samples;
  for (let round = 0; round < HALVINGS; round += 1) {
    const split = toSplit(samples, (bounds.high - bounds.low) / FIRST_LOOK / 2 ** HALVINGS);
    if (split.size === 0 || samples.length + split.size > MOST) break;
    const next: Sample[] = [];
    for (const [index, sample] of samples.entries()) {
      next.push(sample);
      const after = samples[index + 1];
      if (!after || !split.has(index)) continue;
      const x = (sample.x + after.x) / 2;
      next.push({ x, y: f(x) });
      yield 0.6 + (0.4 * (round + next.length / (2 * samples.length))) / HALVINGS;
    }
    samples = next;
  }
  return samples;
}

function firstPlaces({ low, high, whole = false }: Bounds, at: readonly number[]): number[] {
  const inside = at.filter((x) => x > low && x < high);
  if (!whole) {
    const even = Array.from({ length: FIRST_LOOK + 1 }, (_, i) => low + ((high - low) * i) / FIRST_LOOK);
    return unique([...even, ...inside]);
  }
  const [first, last] = [Math.ceil(low - 1e-9), Math.floor(high + 1e-9)];
  const step = Math.max(1, Math.ceil((last - first) / MOST));
  const all = Array.from(
    { length: Math.max(0, Math.floor((last - first) / step) + 1) },
    (_, i) => first + i * step,
  );
  return unique([...all, ...inside.filter((x) => Number.isInteger(x))]);
}

const unique = (xs: readonly number[]) => [...new Set(xs)].toSorted((a, b) => a - b);

/** Stretches, by the place they begin at, that are worth a look in their middle. */
function toSplit(samples: readonly Sample[], least: number): Set<number> {
  const split = new Set<number>();
  const bend = OFF * spanOf(samples);
  const add = (index: number) => {
    if (samples[index + 1]!.x - samples[index]!.x > 1.5 * least) split.add(index);
  };
  samples.forEach(({ x, y }, index) => {
    const after = samples[index + 1];
    if (after && (y === null) !== (after.y === null)) add(index);
    const before = samples[index - 1];
    if (!before || !after || y === null || before.y === null || after.y === null) return;
    const chord = before.y + ((after.y - before.y) * (x - before.x)) / (after.x - before.x);
    if (Math.abs(y - chord) <= bend || bend === 0) return;
    add(index - 1);
    add(index);
  });
  return split;
}

/** How far apart the greatest and the least value lie; 0 where there are none. */
export function spanOf(samples: readonly Sample[]): number {
  const ys = samples.flatMap(({ y }) => (y === null ? [] : [y]));
  return ys.length === 0 ? 0 : Math.max(...ys) - Math.min(...ys);
}

/** A jump is told from a steep rise by what lies beside it, this many times less steep. */
const STEEPER = 6;
/** Less than this share of all that the values span is drawn as a rise. */
const SMALL = 0.004;

/** The samples in runs through which a line can be drawn: it breaks off at gaps and at jumps. */
export function runsOf(samples: readonly Sample[], { low, high, whole = false }: Bounds): Sample[][] {
  const finest = ((high - low) / FIRST_LOOK / 2 ** HALVINGS) * 1.5;
  const span = spanOf(samples);
  const slope = (index: number): number => {
    const [a, b] = [samples[index], samples[index + 1]];
    return a && b && a.y !== null && b.y !== null ? Math.abs(b.y - a.y) / (b.x - a.x) : 0;
  };
  const jumps = (index: number): boolean => {
    const [a, b] = [samples[index]!, samples[index + 1]!];
    if (whole || a.y === null || b.y === null || b.x - a.x > finest) return false;
    const beside = Math.max(slope(index - 1), slope(index + 1));
    return Math.abs(b.y - a.y) > SMALL * span && slope(index) > STEEPER * beside;
  };
  const runs: Sample[][] = [];
  let run: Sample[] = [];
  samples.forEach((sample, index) => {
    if (sample.y !== null) run.push(sample);
    const ends = sample.y === null || index === samples.length - 1 || jumps(index);
    if (!ends || run.length === 0) return;
    runs.push(run);
    run = [];
  });
  return runs;
}
