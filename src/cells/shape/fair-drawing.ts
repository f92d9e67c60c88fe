/** The line with its comb, and the run of its third differences: as they stand, and with the correction. */
import { type Drawing, drawing, mark, note, type Point, type Shape } from '../../drawing';
import type { Hull } from '../../boat';
import { fairRun } from '../../kernel';
import type { Chart, OnHand } from '../form/define';
import { line as lineInHand } from './fair-facts';
import type { FairValues } from './fair-steps';
import { comb, curve, grid, type LinePaper, lineOn, movedCurve, paperFor } from './line-drawing';
import { type LongLine, nearestKnot } from './long-line';
import { spreadOf } from './suspects';

type Saying = Pick<OnHand, 'hull' | 'say' | 'ask'>;

export function drawLine(v: FairValues, { hull, say, ask }: Saying): Drawing {
  if (!hull) {
    const shapes = [mark([0, 0]), mark([100, 0])];
    return drawing({ title: 'The line', says: 'There is no hull to draw the line of.', shapes });
  }
  const line = ask(lineInHand);
  const paper = paperFor(line);
  const teeth = comb(line, paper);
  const odd = hull.station(v.oddStation);
  const { proposed } = v;
  const move = `${say(Math.abs(proposed), 'length')} ${wayOf(proposed, line.view)}`;
  const moves = line.x.map((_, i) => (i === odd.index ? proposed : 0));
  // Told under the drawing: the teeth leave no room for texts on it.
  const found: Shape[] = [
    lineOn(movedCurve(line, paper, moves), 'ghost'),
    mark(paper.at(line.x[odd.index]!, line.values[odd.index]!), { form: 'ring' }),
    note(`Ring: ${odd.label}, to be moved ${move}; dashed: the batten then.`),
  ];
  return drawing({
    title: `The ${line.edge.label} in ${line.view}, with its comb`,
    says: `${
      proposed === 0
        ? 'No station stands out.'
        : `At ${odd.label} a move of ${move} sets the run right (dashed).`
    } Hollows: ${v.hollowCount}.`,
    shapes: [
      grid(line, paper, hull.stations, teeth),
      teeth,
      lineOn(curve(line, paper), 'outline', line.edge.name),
      hollowsOf(hull, line, paper, v, say),
      proposed === 0 ? [] : found,
      note('Teeth: the harder the batten bends, the longer.'),
    ],
  });
}

/** A bar on the outer side of each stretch that bends the wrong way, however shallow, and where the deep ones are. */
function hollowsOf(hull: Hull, line: LongLine, paper: LinePaper, v: FairValues, say: Saying['say']): Shape[] {
  const { batten, hollows, turn } = line;
  const off = -0.03 * turn * paper.span;
  const beside = ([x, y]: Point): Point => [x, y + off];
  const bars = hollows.map(({ from, to }) => {
    const points = curve(line, paper, from, to);
    return lineOn([points[0]!, ...points.map(beside), points.at(-1)!], 'visible'); // a curve has two ends
  });
  const least = v.nearest / 2;
  const deep = hollows.filter(({ depth }) => depth > least);
  const shallow = hollows.length - deep.length;
  return [
    ...bars,
    ...deep.map(({ from, to, depth }) => {
      const { label } = hull.stations[nearestKnot(batten, (from + to) / 2)]!; // a knot a station
      return note(`Bar: hollow about ${label}, ${say(depth, 'length')} deep.`);
    }),
    ...(shallow > 0
      ? [note(`Bar${deep.length > 0 ? ' besides' : ''}: hollow, but under ${say(least, 'length')} deep.`)]
      : []),
  ];
}

/** Outboard or inboard in plan, up or down in profile. */
export function wayOf(by: number, view: 'plan' | 'profile'): string {
  if (view === 'plan') return by > 0 ? 'outboard' : 'inboard';
  return by > 0 ? 'up' : 'down';
}

export function runChart(v: FairValues, { hull, say, ask }: Saying): Chart {
  const bare = {
    title: 'Run of third differences',
    x: { label: 'Along, from the after end of the bottom', kind: 'length' },
    y: { label: 'Third difference', kind: 'length' },
  } as const;
  if (!hull) return { ...bare, says: 'There is no hull to take them from.', lines: [] };
  const line = ask(lineInHand);
  const odd = hull.station(v.oddStation);
  const { proposed } = v;
  const runOf = (by: number) => {
    const values = line.values.map((value, i) => (i === odd.index ? value + by : value));
    const { at, differences } = fairRun(line.x, values, spreadOf(v.nearest));
    return at.map((x, i) => [x, differences[i]!] as const); // one difference a place
  };
  const stands = { name: 'as it stands', points: runOf(0) };
  if (proposed === 0) {
    return {
      ...bare,
      says: 'The third differences of a fair line run on without leaps. No single correction would make them run better by enough to tell.',
      lines: [stands],
    };
  }
  return {
    ...bare,
    says: `A number out by e upsets four differences in a row, by e, −3e, 3e, −e${nearEnd(line, odd.index)}. So does ${odd.label}, out by ${say(Math.abs(proposed), 'length')}; corrected, the run goes on without leaps.`,
    lines: [stands, { name: 'with the correction', points: runOf(proposed) }],
    points: [{ x: line.x[odd.index]!, y: 0, label: odd.label }],
  };
}

/** How many of the four differences there are at a station near an end. */
function nearEnd({ x }: LongLine, index: number): string {
  const count = Math.min(index + 1, x.length - index);
  if (count >= 4) return '';
  return count === 1 ? '; at an end only one' : `; so near an end only ${count} of them`;
}
