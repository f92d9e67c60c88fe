/** Which number of the table is likeliest to be wrong: all lines of the hull against each other. */
import type { Edge, Hull, Station } from '../../boat';
import { distance2, fairRun, FEWEST_POINTS, oddOneOut, type Vec2 } from '../../kernel';
import { type LongLine, longLines } from './long-line';

export interface Suspect {
  readonly line: LongLine;
  readonly station: Station;
  /** What would set the run right, m: + outboard in plan, + up in profile. */
  readonly correction: number;
  /** The least error there that stands out, m. */
  readonly shows: number;
  /** The correction over that: above 1 it stands out. */
  readonly proof: number;
  /** By which suspects of different lines are ranked. */
  readonly weight: number;
}

/** How closely the table is read and how small an error is worth a thought, both m. */
export interface TableCloseness {
  /** The offsets are written to the nearest this. */
  readonly nearest: number;
  readonly blunder: number;
}

/** Spread of a number rounded to the nearest mark. */
export const spreadOf = (nearest: number) => nearest / Math.sqrt(12);

/** The likeliest bad number of one line. */
export function suspectOn(hull: Hull, line: LongLine, { nearest, blunder }: TableCloseness): Suspect {
  const run = line.run(spreadOf(nearest));
  const { index, proof } = oddOneOut(run);
  const { correction, hidden } = run.corrections[index]!; // one a point
  const shows = Math.max(hidden, blunder);
  return {
    line,
    station: hull.stations[index]!,
    correction,
    shows,
    proof: Math.abs(correction) / shows,
    // What is too small for a blunder comes after all that is not, however smooth its line.
    weight: Math.abs(correction) >= blunder ? proof : Math.min(proof, Math.abs(correction) / blunder),
  };
}

/** The number of the same line that stands out next most. */
export interface Rival {
  readonly station: Station;
  /** m, as of the suspect. */
  readonly correction: number;
  /** How far it stands out, over how far the suspect does: 0 to 1. */
  readonly nearly: number;
}

/** From this share on two numbers of a line are not told apart. */
export const ALIKE = 0.8;

export function rivalOn(hull: Hull, line: LongLine, { nearest }: Pick<TableCloseness, 'nearest'>): Rival {
  const { corrections } = line.run(spreadOf(nearest));
  const out = corrections.map(({ correction, hidden }) => Math.abs(correction) / hidden);
  const most = indexOfMost(out);
  const next = indexOfMost(out.map((times, i) => (i === most ? -1 : times)));
  return {
    station: hull.stations[next]!, // one a point
    correction: corrections[next]!.correction,
    nearly: out[most]! > 0 ? out[next]! / out[most]! : 0,
  };
}

/** The likeliest of the whole hull. @throws where no line can be judged */
export function firstSuspect(hull: Hull, closeness: TableCloseness): Suspect {
  const all = longLines(hull).map((line) => suspectOn(hull, line, closeness));
  const first = all.reduce<Suspect | null>(
    (best, one) => (best && best.weight >= one.weight ? best : one),
    null,
  );
  if (!first) throw new Error('no edge of this hull can be judged while its offsets have faults');
  return first;
}

/** The three other signs of a bad number, each for or against the station. */
export interface Witnesses {
  /** The run of flare of a panel at that edge is oddest there; null where too few stations have one. */
  readonly flare: boolean | null;
  /** The duck there pushes hardest of all. */
  readonly duck: boolean;
  /** The batten is hollow there, or its bend parts most from the mean of its neighbours'. */
  readonly bend: boolean;
}

export function witnessesOf(
  hull: Hull,
  line: LongLine,
  index: number,
  { nearest }: TableCloseness,
): Witnesses {
  const { edge, bends, ducks } = line;
  const panels = hull.panels.filter(
    ({ inner, outer }) => inner.name === edge.name || outer.name === edge.name,
  );
  const oddest = panels.flatMap((panel) => oddestFlare(hull, panel.index, line, nearest) ?? []);
  return {
    flare: oddest.length === 0 ? null : oddest.includes(index),
    duck: indexOfMost(ducks.map(Math.abs)) === index,
    bend: bends[index]! < 0 || indexOfMost(partings(bends)) === index,
  };
}

const COUNTS = ['none', 'one', 'two', 'three'];

/** After `Of the other signs`: `two of three agree`. */
export function signsInWords(signs: readonly boolean[]): string {
  const agree = signs.filter(Boolean).length;
  const all = COUNTS[signs.length]!; // two or three signs
  if (agree === signs.length) return `all ${all} agree`;
  return `${COUNTS[agree]!} of ${all} ${agree > 1 ? 'agree' : 'agrees'}`;
}

/** Spread of the flare of a side so wide, rad: both of its corners are rounded, each by its own. Both arguments m. */
export const flareSpread = (nearest: number, width: number) => (Math.SQRT2 * spreadOf(nearest)) / width;

/** The station where a panel's run of flare is oddest, or null where it is too short to tell. */
function oddestFlare(hull: Hull, panel: number, line: LongLine, nearest: number): number | null {
  const corner = (edge: Edge | undefined, i: number): Vec2 => {
    const [, y, z] = edge!.points[i]!; // a panel has two edges with one point a station
    if (edge!.index !== line.edge.index) return [y, z];
    return line.view === 'plan' ? [line.values[i]!, z] : [y, line.values[i]!];
  };
  const sides = line.x.flatMap((x, i) => {
    const low = corner(hull.edges[panel], i);
    const high = corner(hull.edges[panel + 1], i);
    const width = distance2(low, high);
    // Where the sides have met at a stem there is no flare to speak of.
    if (width === 0 || (low[0] === 0 && high[0] === 0)) return [];
    return [{ i, x, flare: Math.atan2(high[0] - low[0], high[1] - low[1]), width }];
  });
  if (sides.length < FEWEST_POINTS) return null;
  const width = sides.reduce((sum, side) => sum + side.width, 0) / sides.length;
  const run = fairRun(
    sides.map(({ x }) => x),
    sides.map(({ flare }) => flare),
    flareSpread(nearest, width),
  );
  return sides[oddOneOut(run).index]!.i;
}

/** How far each number parts from the mean of its two neighbours; the ends, which have one, not at all. */
function partings(numbers: readonly number[]): readonly number[] {
  return numbers.map((here, i) => {
    const before = numbers[i - 1];
    const after = numbers[i + 1];
    return before === undefined || after === undefined ? 0 : Math.abs(here - (before + after) / 2);
  });
}

function indexOfMost(numbers: readonly number[]): number {
  return numbers.indexOf(Math.max(...numbers));
}
