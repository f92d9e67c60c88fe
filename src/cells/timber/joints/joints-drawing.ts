/** Both sides' boards along the edge laid out straight, with the frames, and how hard the edge bends there. */
import { attempt } from '../../../boat';
import {
  type Joint,
  type JointLayout,
  type LaidSide,
  type LongTimber,
  verdictOf,
} from '../../../boat/joinery/joint-layout';
import {
  dim,
  type Drawing,
  drawing,
  hatch,
  label,
  mark,
  mm,
  note,
  type Point,
  rectHatch,
  type Shape,
} from '../../../drawing';
import { isIssue } from '../../../measure';
import type { Chart, OnHand } from '../../form/define';
import { layout } from './joints-facts';
import type { JointsValues } from './joints-steps';

/** Joints of one side that are named and measured; more would be a ladder. */
const MOST_TOLD = 6;

type Saying = Pick<OnHand, 'hull' | 'say' | 'ask'>;

const inHand = ({ hull, ask }: Saying) =>
  attempt(() => {
    if (!hull) throw new Error('There is no hull to lay the boards along.');
    return ask(layout);
  });

export function drawJoints({ part }: JointsValues, on: Saying): Drawing {
  const laid = inHand(on);
  const title = 'The boards along the edge, laid out straight';
  if (isIssue(laid)) return drawing({ title, says: laid.issue, shapes: [note(laid.issue)] });
  const { timber, port, starboard, joints } = laid;
  const length = mm(timber.edge.length);
  const high = length / 13;
  const gap = starboard ? length / 4.5 : 0;
  const strips = [
    { name: 'port', side: port, bottom: gap / 2, above: true },
    ...(starboard ? [{ name: 'starboard', side: starboard, bottom: -gap / 2 - high, above: false }] : []),
  ];
  const top = gap / 2 + high;
  const foot = starboard ? -top : 0;
  const told = (name: string) => joints.filter((joint) => joint.side === name && joint.number <= MOST_TOLD);
  const metres = (value: number) => on.say(value, 'length');
  return drawing({
    title,
    says: saysOf(laid, metres),
    shapes: [
      hardStretches(timber).map(({ from, to }) =>
        rectHatch(mm(from), foot - high / 3, mm(to - from), top - foot + (2 * high) / 3, 'plain', {
          pen: 'none',
        }),
      ),
      timber.frames.map(({ station, from, to }) =>
        strips.map(({ bottom }) =>
          rectHatch(mm(from), bottom - high / 4, mm(to - from), 1.5 * high, 'void', {
            pen: 'thin',
            part: station.name,
          }),
        ),
      ),
      frameNames(timber, starboard ? gap / 4 : -high / 2),
      strips.flatMap(({ name, side, bottom, above }) => [
        side.pieces.map((_, i) => pieceShape(side, i, { bottom, high, part })),
        told(name).map((joint, i) => {
          const level = above ? bottom + high : bottom;
          return dim([0, level], [mm(joint.at), level], `${joint.number}: ${metres(joint.at)}`, {
            side: above ? 'above' : 'below',
            run: 'horizontal',
            level: i,
          });
        }),
      ]),
      tightestMark(timber, starboard ? -gap / 2 : top, starboard ? gap / 4 : null, metres),
      note(
        `Aft to the left${starboard ? ', port above, starboard below' : ''}. Lengths and tapers are to scale, the width of the boards is not. Frames are marked by their numbers. Distances run from the after end of the edge to the middle of each joint.`,
      ),
      hardStretches(timber).length > 0 ? note('Tinted: the hard bend.') : [],
      joints.some(({ number }) => number > MOST_TOLD)
        ? note(`The first ${MOST_TOLD} joints of a side are measured.`)
        : [],
    ],
  });
}

/** One board seen on its edge, so that both its tapers show. */
function pieceShape(
  { pieces }: LaidSide,
  i: number,
  { bottom, high, part }: { readonly bottom: number; readonly high: number; readonly part: string },
): Shape {
  const { from, to } = pieces[i]!; // one of its own pieces
  const before = pieces[i - 1];
  const after = pieces[i + 1];
  const outline: Point[] = [
    [mm(before ? before.to : from), bottom],
    [mm(to), bottom],
    [mm(after ? after.from : to), bottom + high],
    [mm(from), bottom + high],
  ];
  return hatch(outline, 'cedar', { falling: i % 2 === 1, part });
}

/** Short names stand at their frames; longer ones are led to. Of many only some, or none could be read. */
function frameNames({ frames }: LongTimber, y: number): Shape[] {
  const every = Math.ceil(frames.length / 9);
  const named = frames
    .filter((_, i) => i % every === 0)
    .map(({ station, from, to }) => ({
      at: [mm((from + to) / 2), y] as const,
      text: station.label.replace(/^(frame|station)\s+/i, ''),
    }));
  const short = named.every(({ text }) => text.length <= 2);
  return named.map(({ at, text }) => (short ? note(text, { at }) : label(at, text, { toward: 's' })));
}

/** Where the edge bends hardest; between two strips it is named in the room there, held to the middle of the sheet. */
function tightestMark(
  { edge }: LongTimber,
  y: number,
  above: number | null,
  metres: (value: number) => string,
): Shape[] {
  const { leastRadius } = edge;
  if (!leastRadius) return [];
  const at: Point = [mm(leastRadius.along), y];
  const text = `tightest, R ${metres(leastRadius.radius)}`;
  const middle = Math.min(0.66, Math.max(0.34, leastRadius.along / edge.length)) * mm(edge.length);
  return [
    mark(at, { form: 'ring' }),
    above === null ? label(at, text, { toward: 'n' }) : note(text, { at: [middle, y + above] }),
  ];
}

/** Stretches of the edge that bend hard, m. */
function hardStretches({
  bend,
  hardFrom,
}: LongTimber): readonly { readonly from: number; readonly to: number }[] {
  const stretches: { from: number; to: number }[] = [];
  bend.looks.forEach(([along, here], i) => {
    const before = bend.looks[i - 1];
    if (!before) return;
    const [start, there] = before;
    if (here < hardFrom && there < hardFrom) return;
    // Straight between two looks, it passes the limit once.
    const passes = here === there ? along : start + ((hardFrom - there) / (here - there)) * (along - start);
    const from = there >= hardFrom ? start : passes;
    const to = here >= hardFrom ? along : passes;
    const last = stretches.at(-1);
    if (last && from - last.to < 1e-9) last.to = to;
    else stretches.push({ from, to });
  });
  return stretches.filter(({ from, to }) => to > from);
}

const nameOf = ({ side, number }: Joint, starboard: LaidSide | null) =>
  starboard ? `${side} ${number}` : `joint ${number}`;

function saysOf({ timber, joints, starboard }: JointLayout, metres: (value: number) => string): string {
  if (joints.length === 0)
    return `One board reaches the whole ${metres(timber.edge.length)} without a joint.`;
  const each = joints.map(
    (joint) => `${nameOf(joint, starboard)} at ${metres(joint.at)}, ${verdictOf(joint)}`,
  );
  return `From the after end of the ${timber.edge.label}: ${each.join('; ')}.`;
}

/** How hard the edge bends, and where on it the joints stand. */
export function bendChart(_: JointsValues, on: Saying): Chart {
  const laid = inHand(on);
  const axes = {
    title: 'Joints on the bend of the edge',
    x: { label: 'Along the edge, from the after end', kind: 'length', from: 0 },
    y: { label: 'Share of the hardest bend', kind: 'share', from: 0, to: 1 },
  } as const;
  if (isIssue(laid)) return { ...axes, says: laid.issue, lines: [] };
  const { timber, joints, starboard } = laid;
  const { bend, edge } = timber;
  const share = (of: number) => (bend.worst > 0 ? of / bend.worst : 0);
  const worst = Math.max(0, ...joints.map((joint) => joint.share));
  return {
    ...axes,
    says:
      bend.worst > 0
        ? `The ${edge.label} bends hardest ${on.say(edge.leastRadius?.along ?? 0, 'length')} from the after end; of the joints the hardest bent takes ${on.say(worst, 'share')} of that. Small dots: the frames.`
        : `The ${edge.label} is straight.`,
    x: { ...axes.x, to: edge.length },
    lines: [
      { name: 'bend of the edge', points: bend.looks.map(([along, here]) => [along, share(here)] as const) },
      {
        name: 'at the frames',
        as: 'dots',
        points: timber.frames.map(
          ({ from, to }) => [(from + to) / 2, share(bend.within({ from, to }))] as const,
        ),
      },
    ],
    ...(Number.isFinite(timber.hardFrom)
      ? { limits: [{ at: share(timber.hardFrom), axis: 'y' as const, label: 'hard bend' }] }
      : {}),
    points: joints
      .filter(({ number }) => number <= MOST_TOLD)
      .map((joint) => ({ x: joint.at, y: joint.share, label: nameOf(joint, starboard) })),
  };
}
