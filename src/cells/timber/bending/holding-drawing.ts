/** The bent board seen on its edge, with what holds it, and on its face, with what the curve asks edgewise. */
import { attempt } from '../../../boat';
import {
  arrow,
  dim,
  type Drawing,
  drawing,
  hatch,
  label,
  line,
  mark,
  mm,
  note,
  type Point,
  type Shape,
} from '../../../drawing';
import { isIssue } from '../../../measure';
import type { Chart, OnHand } from '../../form/define';
import { board as boardInHand, type HoldingValues, pulls as pullsInHand } from './holding-steps';

type Saying = Pick<OnHand, 'hull' | 'say' | 'ask'>;
/** Length of the longest arrow, of the board's length. */
const LONGEST = 0.12;
/** An arrow shorter than that, of the longest, goes without its number: the table has it. */
const TOLD = 0.25;

export function drawHolding(v: HoldingValues, { hull, say, ask }: Saying): Drawing {
  const board = hull && attempt(() => ask(boardInHand));
  if (!board || isIssue(board))
    return drawing({
      title: 'The board and what holds it',
      says: 'There is no hull to bend it round.',
      shapes: [mark([0, 0]), mark([100, 0])],
    });
  const { edge, seen } = board;
  const half = mm(v.thickness) / 2;
  const middle = seen.onEdge.map(([x, y]): Point => [mm(x), mm(y)]);
  const at = board.stations.map((place) => middle[board.places.indexOf(place)]!); // a place laid out each
  const span = middle.at(-1)![0];
  const pulls = ask(pullsInHand);
  const { greatest } = v;
  // Inside the hull is up, so what pushes outward comes from above.
  const reach = greatest > 0 ? (LONGEST * span) / greatest : 0;
  const arrows = pulls.flatMap((pull, i): Shape[] => {
    if (Math.abs(reach * pull) < span / 400) return [];
    const [x, y] = at[i]!; // a pull a station
    const head: Point = [x, y + Math.sign(pull) * half];
    const tail: Point = [x, head[1] + reach * pull];
    const told = Math.abs(pull) >= TOLD * greatest;
    return [
      arrow(tail, head),
      ...(told ? [label(tail, say(Math.abs(pull), 'force'), { toward: pull > 0 ? 'n' : 's' })] : []),
    ];
  });
  const low = Math.min(...middle.map(([, y]) => y)) - (LONGEST + 0.12) * span;
  const wide = mm(v.width);
  const highest = Math.max(...seen.onFace.map(([, y]) => mm(y)));
  const face = seen.onFace.map(([x, y]): Point => [mm(x), mm(y) + low - highest - wide / 2]);
  const axis = low - highest - wide / 2;
  const far = face.reduce((best, point) =>
    Math.abs(point[1] - axis) > Math.abs(best[1] - axis) ? point : best,
  );
  return drawing({
    title: `The board along the ${edge.label}, on its edge and on its face`,
    says: `The hardest held station takes ${say(greatest, 'force')}; the face lies ${say(board.crook, 'length')} off a straight line.`,
    shapes: [
      hatch(band(middle, half), 'cedar', { part: edge.name }),
      arrows,
      hatch(band(face, wide / 2), 'plain', { part: edge.name }),
      line(face, { pen: 'centre' }),
      line([face[0]!, face.at(-1)!], { pen: 'thin' }),
      board.crook > 1e-3
        ? dim([far[0], axis], far, say(board.crook, 'length'), { run: 'vertical', side: 'right' })
        : [],
      note(
        'Aft to the left. Above, inside of the hull up; arrows: which way each station holds it. Below, seen from inside. Each view shows one bend alone.',
      ),
    ],
  });
}

/** The outline of a board about its middle line. */
function band(middle: readonly Point[], half: number): Point[] {
  const off = (side: number) =>
    middle.map(([x, y], i): Point => {
      const [ax, ay] = middle[Math.max(0, i - 1)]!;
      const [bx, by] = middle[Math.min(middle.length - 1, i + 1)]!;
      const length = Math.hypot(bx - ax, by - ay);
      return [x - (side * half * (by - ay)) / length, y + (side * half * (bx - ax)) / length];
    });
  return [...off(1), ...off(-1).toReversed()];
}

export function sharesChart(v: HoldingValues, { hull, say, ask }: Saying): Chart {
  const board = hull && attempt(() => ask(boardInHand));
  const bare = {
    title: 'Share of breaking, across the thickness and edgewise',
    x: { label: 'Along the edge, from the after end', kind: 'length', from: 0 },
    y: { label: 'Share of breaking', kind: 'share', from: 0 },
    limits: [{ at: v.allowed, axis: 'y', label: 'allowed' }],
  } as const;
  if (!board || isIssue(board)) return { ...bare, says: 'There is no hull to bend it round.', lines: [] };
  const share = (bend: number, depth: number) => (v.modulus * depth * Math.abs(bend)) / (2 * v.rupture);
  const { thickness, width } = v;
  return {
    ...bare,
    x: { ...bare.x, to: board.edge.length },
    says: `Across its thickness the board takes up to ${say(v.flatShare, 'share')}; forced edgewise it would take up to ${say(v.edgeShare, 'share')}.`,
    lines: [
      {
        name: 'across the thickness',
        points: board.places.map(({ along, bend }) => [along, share(bend.flat, thickness)] as const),
      },
      {
        name: 'edgewise, if forced',
        points: board.places.map(({ along, bend }) => [along, share(bend.edgewise, width)] as const),
      },
    ],
  };
}
