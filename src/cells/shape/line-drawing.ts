/** A long line drawn as on the loft floor, but stretched across so that its shape can be seen. */
import type { Station } from '../../boat';
import { centreLine, extents, line, mark, mm, note, type Pen, type Point, type Shape } from '../../drawing';
import { type Batten, bendBatten, placeInView, type Vec3, viewCurvature } from '../../kernel';
import type { LongLine } from './long-line';
import { shortName } from './station-names';

/** Places drawn a bay. */
const LOOKS = 12;

/** From the lowest of the drawing down to the words under it, of the length: on a phone too they stand clear. */
const UNDER = 0.06;

export interface LinePaper {
  /** How many times as large across as along. */
  readonly across: number;
  /** Length along, mm. */
  readonly span: number;
  readonly at: (x: number, value: number) => Point;
}

/** A sheet on which the line rises about a third of its length. */
export function paperFor({ x, values }: LongLine): LinePaper {
  const span = mm(x.at(-1)! - x[0]!);
  const low = Math.min(...values);
  const rise = mm(Math.max(...values) - low);
  const across = [50, 20, 10, 5, 4, 3, 2].find((times) => times * rise <= span / 3) ?? 1;
  return { across, span, at: (along, value) => [mm(along), mm(value - low) * across] };
}

/** The batten itself between two of its parameters. */
export function curve(drawn: LongLine, paper: LinePaper, from?: number, to?: number): Point[] {
  return places(drawn.batten, from, to).map((t) => paper.at(...placeInView(drawn.batten, drawn.view, t)));
}

/** The batten with some of its points moved, m, one a station. */
export function movedCurve({ x, values }: LongLine, paper: LinePaper, moves: readonly number[]): Point[] {
  return floorCurve(bendBatten(x.map((along, i): Vec3 => [along, values[i]! + moves[i]!, 0])), paper);
}

/** A batten on the floor. */
export function floorCurve(batten: Batten, paper: LinePaper): Point[] {
  return places(batten).map((t) => paper.at(...placeInView(batten, 'plan', t)));
}

/** Teeth as long as the line bends there, on its outer side; where it is hollow they stand on the inner. */
export function comb(drawn: LongLine, paper: LinePaper): Shape[] {
  const { batten, view } = drawn;
  const at = places(batten);
  const bends = at.map((t) => viewCurvature(batten, t, view));
  const most = Math.max(...bends.map(Math.abs));
  // Straighter than a millimetre's turn over its length there is no bend to show.
  if (most * paper.span < 1) return [];
  const feet = curve(drawn, paper);
  const tips = feet.map(([x, y], i): Point => [x, y - (bends[i]! / most) * 0.16 * paper.span]);
  return [
    ...tips.flatMap((tip, i) => (i % 2 === 0 ? [line([feet[i]!, tip], { pen: 'thin' })] : [])),
    line(tips, { pen: 'thin' }),
  ];
}

/** The base, the stations and their points; the frames by their numbers, close under the base or a comb that hangs below it. */
export function grid(
  drawn: LongLine,
  paper: LinePaper,
  stations: readonly Station[],
  teeth: readonly Shape[],
): Shape[] {
  const { x, values } = drawn;
  const base = Math.min(...values);
  const words = wordsUnder(teeth, paper);
  return [
    ...x.flatMap((along, i) => [
      line([paper.at(along, base), paper.at(along, values[i]!)], { pen: 'dimension' }),
      mark(paper.at(along, values[i]!), { form: 'dot' }),
    ]),
    ...baseLine(drawn, paper, words),
    ...namedFrames(x, stations).map(({ name, along }) => note(name, { at: [mm(along), words] })),
  ];
}

/** The height of the words under the base, and under what hangs below it. */
function wordsUnder(shapes: readonly Shape[], paper: LinePaper): number {
  const { bottom } = extents({ title: '', says: '', shapes: [mark([0, 0]), ...shapes] });
  return bottom - UNDER * paper.span;
}

/** The base, which end is which in words so high, and how far the drawing is stretched. */
export function baseLine({ x, values }: LongLine, paper: LinePaper, words: number): Shape[] {
  const base = Math.min(...values);
  const start = paper.at(x[0]!, base);
  const end = paper.at(x.at(-1)!, base);
  return [
    centreLine(start, end),
    note('aft', { at: [start[0], words] }),
    note('forward', { at: [end[0], words] }),
    note(`Aft to the left; drawn ${timesAsLarge(paper.across)} across as along.`),
  ];
}

/** `as large`, `twice as large`, `5 times as large`. */
function timesAsLarge(times: number): string {
  if (times === 1) return 'as large';
  return times === 2 ? 'twice as large' : `${times} times as large`;
}

/** Clear of the words at the two ends, and of each other, of the length. */
const CLEAR = { ends: 0.12, frames: 0.075 };

/** Frames whose names stand on the drawing, the same in both versions. */
function namedFrames(x: readonly number[], stations: readonly Station[]) {
  const [start, end] = [x[0]!, x.at(-1)!]; // a line has two ends
  const length = end - start;
  return stations.slice(1, -1).reduce<{ name: string; along: number }[]>((kept, { label, index }) => {
    const along = x[index]!; // a place each
    const fromEnd = Math.min(along - start, end - along);
    const fromLast = along - (kept.at(-1)?.along ?? -Infinity);
    const isClear = fromEnd >= CLEAR.ends * length && fromLast >= CLEAR.frames * length;
    const name = shortName(label);
    return isClear && name.length <= 3 ? [...kept, { name, along }] : kept;
  }, []);
}

export function lineOn(points: readonly Point[], pen: Pen, part?: string): Shape {
  return line(points, part === undefined ? { pen } : { pen, part });
}

function places({ knots }: Batten, from = knots[0]!, to = knots.at(-1)!): readonly number[] {
  const inner = Array.from(knots)
    .slice(0, -1)
    .flatMap((knot, i) =>
      Array.from({ length: LOOKS }, (_, k) => knot + ((knots[i + 1]! - knot) * k) / LOOKS),
    );
  return [from, ...inner.filter((t) => t > from && t < to), to];
}
