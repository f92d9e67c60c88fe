/** The line with its comb, and the run of its third differences: as they stand, and with the correction. */
import { type Drawing, drawing, mark, note, type Shape } from '../../drawing';
import { fairRun, placeInView } from '../../kernel';
import type { Chart, OnHand, Values } from '../define';
import { lineOf, number, word } from './fair-working';
import { comb, curve, grid, lineOn, movedCurve, paperFor } from './line-picture';
import { spreadOf } from './suspects';

type Saying = Pick<OnHand, 'hull' | 'say'>;

export function drawLine(v: Values, { hull, say }: Saying): Drawing {
  if (!hull) {
    const shapes = [mark([0, 0]), mark([100, 0])];
    return drawing({ title: 'The line', says: 'There is no hull to draw the line of.', shapes });
  }
  const line = lineOf(hull, v);
  const paper = paperFor(line);
  const odd = hull.station(word(v, 'oddStation'));
  const proposed = number(v, 'proposed');
  const move = `${say(Math.abs(proposed), 'length')} ${wayOf(proposed, line.view)}`;
  const moves = line.x.map((_, i) => (i === odd.index ? proposed : 0));
  // Told under the drawing: the teeth leave no room for texts on it.
  const found: Shape[] = [
    lineOn(movedCurve(line, paper, moves), 'ghost'),
    mark(paper.at(line.x[odd.index]!, line.values[odd.index]!), { form: 'ring' }),
    note(`Ring: ${odd.label}, to be moved ${move}; dashed: the batten then.`),
  ];
  const hollow = line.hollows
    .filter(({ depth }) => depth > number(v, 'nearest') / 2)
    .flatMap(({ from, to, depth }): Shape[] => [
      lineOn(curve(line, paper, from, to), 'hidden'),
      mark(paper.at(...placeInView(line.batten, line.view, (from + to) / 2)), { form: 'cross' }),
      note(`Cross: hollow, ${say(depth, 'length')} deep.`),
    ]);
  return drawing({
    title: `The ${line.edge.label} in ${line.view}, with its comb`,
    says: `The harder the batten bends, the longer the tooth. ${
      proposed === 0
        ? 'No station stands out.'
        : `At ${odd.label} a move of ${move} sets the run right (dashed).`
    } Hollows: ${number(v, 'hollowCount')}.`,
    shapes: [
      grid(line, paper),
      comb(line, paper),
      lineOn(curve(line, paper), 'outline', line.edge.name),
      hollow,
      proposed === 0 ? [] : found,
    ],
  });
}

/** Outboard or inboard in plan, up or down in profile. */
export function wayOf(by: number, view: 'plan' | 'profile'): string {
  if (view === 'plan') return by > 0 ? 'outboard' : 'inboard';
  return by > 0 ? 'up' : 'down';
}

export function runChart(v: Values, { hull, say }: Saying): Chart {
  const bare = {
    title: 'Run of third differences',
    x: { label: 'Along, from the after end of the bottom', kind: 'length' },
    y: { label: 'Third difference', kind: 'length' },
  } as const;
  if (!hull) return { ...bare, says: 'There is no hull to take them from.', lines: [] };
  const line = lineOf(hull, v);
  const odd = hull.station(word(v, 'oddStation'));
  const proposed = number(v, 'proposed');
  const runOf = (by: number) => {
    const values = line.values.map((value, i) => (i === odd.index ? value + by : value));
    const { at, differences } = fairRun(line.x, values, spreadOf(number(v, 'nearest')));
    return at.map((x, i) => [x, differences[i]!] as const); // one difference a place
  };
  const stands = { name: 'as it stands', points: runOf(0) };
  if (proposed === 0) {
    return {
      ...bare,
      says: 'A fair line’s third differences run on without leaps. No one correction would better these by enough to tell.',
      lines: [stands],
    };
  }
  return {
    ...bare,
    says: `A number out by e upsets four differences in a row, by e, −3e, 3e, −e. So does ${odd.label}, out by ${say(Math.abs(proposed), 'length')}; corrected, the run goes on without leaps.`,
    lines: [stands, { name: 'with the correction', points: runOf(proposed) }],
    points: [{ x: line.x[odd.index]!, y: 0, label: odd.label }],
  };
}
