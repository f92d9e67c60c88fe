/** The batten between its ducks with their forces, and how near to breaking it is along its length. */
import { arrow, type Drawing, drawing, label, mark, note, type Point, type Shape } from '../../drawing';
import { curvatureAt, derivativeAt, lengthTo, pointAt } from '../../kernel';
import { bendShares } from '../../trade/bend-grades';
import type { Chart, OnHand } from '../form/define';
import { type BattenValues, ducks, line as lineInHand, worst } from './batten-steps';
import { baseLine, floorCurve, type LinePaper, lineOn, paperFor } from './line-drawing';
import { type LongLine, lineViews } from './long-line';

type Saying = Pick<OnHand, 'hull' | 'say' | 'ask'>;
/** Length of the longest arrow, of the line's length. */
const LONGEST = 0.14;
/** Where words stand under the base, clear of arrows that come from below and of their numbers, of the length. */
const UNDER = -0.24;
/** Of so many arrows each has its number beside it; of more, every second or third: the same in both versions. */
const TOLD = 9;

export function drawForces(v: BattenValues, { hull, say, ask }: Saying): Drawing {
  if (!hull) {
    const shapes = [mark([0, 0]), mark([100, 0])];
    return drawing({ title: 'The batten', says: 'There is no hull to bend it round.', shapes });
  }
  const line = ask(lineInHand);
  const paper = paperFor(line);
  const { greatest } = v;
  const forces = ask(ducks);
  const every = Math.ceil(forces.length / TOLD);
  const reach = (LONGEST * paper.span) / greatest;
  const arrows = forces.flatMap((force, i): Shape[] => {
    const head = paper.at(line.x[i]!, line.values[i]!); // a point a duck
    const tail: Point = [head[0], head[1] - reach * force];
    const toward = force > 0 ? 's' : 'n';
    return [arrow(tail, head), ...(i % every === 0 ? [label(tail, say(force, 'force'), { toward })] : [])];
  });
  const [x, y] = ask(worst).point;
  return drawing({
    title: `The batten on the ${line.edge.label}, ${viewWord(line)}`,
    says: `The hardest push is ${say(greatest, 'force')}; where it bends hardest it runs round ${say(v.radius, 'length')}.`,
    shapes: [
      baseLine(line, paper, UNDER * paper.span),
      lineOn(floorCurve(line.freeBatten, paper), 'outline', line.edge.name),
      past(line, paper, v.past).map((points) => lineOn(points, 'hidden')),
      mark(paper.at(x, y), { form: 'ring' }),
      arrows,
      note('Arrows: which way each duck pushes the batten. Ring: where it bends hardest.'),
      note(`Dashed: ${say(v.past, 'length')} of batten past each end, free.`),
    ],
  });
}

const viewWord = ({ view }: LongLine) => `in ${lineViews.find(({ id }) => id === view)!.label}`;

/** What runs on past the two ends, straight as a batten that nothing bends. */
function past({ freeBatten }: LongLine, paper: LinePaper, length: number): readonly Point[][] {
  const { knots } = freeBatten;
  return [
    { t: knots[0]!, way: -1 },
    { t: knots.at(-1)!, way: 1 },
  ].map(({ t, way }) => {
    const [x, y] = pointAt(freeBatten, t);
    const [dx, dy] = derivativeAt(freeBatten, t, 1);
    const out = (way * length) / Math.hypot(dx, dy);
    return [paper.at(x, y), paper.at(x + out * dx, y + out * dy)];
  });
}

export function shareChart(v: BattenValues, { hull, say, ask }: Saying): Chart {
  const bare = {
    title: 'Share of breaking along the batten',
    x: { label: 'Along the batten, from the after end of the line', kind: 'length', from: 0 },
    y: { label: 'Share of breaking', kind: 'share', from: 0 },
    limits: [
      { at: v.allowed, axis: 'y', label: 'share allowed' },
      { at: bendShares.picked, axis: 'y', label: 'picked wood' },
    ],
  } as const;
  if (!hull) return { ...bare, says: 'There is no hull to bend it round.', lines: [] };
  const { freeBatten } = ask(lineInHand);
  const hardest = { x: v.along, y: v.share, label: 'hardest bend' };
  const last = freeBatten.knots.at(-1)!;
  const parts = 96;
  const shareOf = (bend: number) => (v.modulus * v.thickness * bend) / (2 * v.rupture);
  const points = Array.from({ length: parts + 1 }, (_, i) => (last * i) / parts).map(
    (t) => [lengthTo(freeBatten, t), shareOf(curvatureAt(freeBatten, t).magnitude)] as const,
  );
  return {
    ...bare,
    x: { ...bare.x, to: freeBatten.length },
    says: `Nothing at the two ends, where the batten runs on free; most, ${say(hardest.y, 'share')}, ${say(hardest.x, 'length')} from the after end.`,
    lines: [{ name: 'this batten', points }],
    points: [hardest],
  };
}
