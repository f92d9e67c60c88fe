/** Half a frame as it stands in the boat: skin, members, notches and plates, with the corners' dimensions. */
import { attempt } from '../../boat';
import type { FrameOutline } from '../../boat/joinery/frame-outline';
import type { FramePieces } from '../../boat/joinery/frame-pieces';
import {
  centreLine,
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
} from '../../drawing';
import { isIssue } from '../../measure';
import type { OnHand } from '../form/define';
import {
  keepOuts,
  member,
  outline as outlineInHand,
  pieces as piecesInHand,
  type PiecesAsked,
} from '../common/frame/frame-facts';
import { keepOutLines } from '../common/frame/keep-outs-drawing';

type Place = readonly [y: number, z: number];
export const onPaper = ([y, z]: Place): Point => [mm(y), mm(z)];
export const ring = (points: readonly Place[]): Point[] => points.map(onPaper);

type Say = (metres: number) => string;

/** What the drawings and the patterns of a frame go by. */
export interface FrameDrawn extends PiecesAsked {
  readonly gussetThickness: number;
  readonly markHeight: number;
  readonly markHalfBreadth: number;
}

/** Drawn from the face that stands on the station line; where there is none, words. */
export function frameView(
  v: FrameDrawn,
  { hull, ask, ...on }: Pick<OnHand, 'say' | 'hull' | 'ask'>,
): Drawing {
  const say: Say = (metres) => on.say(metres, 'length');
  const made = attempt(() => {
    if (!hull) throw new Error('There is no hull to take the frame from.');
    return {
      outline: ask(outlineInHand),
      pieces: ask(piecesInHand),
      spoken: ask(member),
      clear: ask(keepOuts),
    };
  });
  if (isIssue(made)) return drawing({ title: 'Frame', says: made.issue, shapes: [note(made.issue)] });
  const { outline, pieces, spoken, clear } = made;
  const { station, corners } = outline;
  const ahead = outline.stands === 'forward';
  const out = mm(Math.max(...corners.map(([y]) => y)));
  const top = Math.max(...outline.members.at(-1)!.outline.map(([, z]) => z)); // a frame has a side
  return drawing({
    title: `${capital(station.label)}, half, seen on its ${ahead ? 'after' : 'forward'} face`,
    says: `Inside the skin ${cornersInWords(outline, say)}. Members ${say(v.moulded)} deep; the ${spoken.panel.label} member is ${say(spoken.length)} long to cut.`,
    shapes: [
      skin(outline),
      ...pieces.members.flatMap(({ outlines }) =>
        outlines.map((one) => hatch(ring(one), 'plain', { part: station.name })),
      ),
      timbers(pieces),
      line(ring(outline.farCorners), { pen: 'hidden' }),
      ...pieces.gussets.flatMap(({ outlines }) =>
        outlines.map((one) => line(ring(one), { pen: 'hidden', closed: true, part: 'gusset' })),
      ),
      keepOutLines(clear, outline),
      centreLine([0, Math.min(0, mm(corners[0]![1]) - 40)], [0, mm(top) + 30]),
      centreLine([-out * 0.06, 0], [out * 1.06, 0]),
      levelMark(v, say),
      dims(outline, say),
      dim(onPaper(spoken.inner), onPaper(spoken.outer), say(lengthOf(spoken)), { side: 'left' }),
      label([out * 0.25, 0], 'base line', { toward: 'n' }),
      ...pieces.gussets.flatMap(({ outlines }) =>
        outlines
          .slice(0, 1)
          .map((one) => label(middle(one), `gusset ${say(v.gussetThickness)}, both faces`, { toward: 'nw' })),
      ),
      note(
        ahead
          ? 'The starboard half, looking forward; port is its mirror. Dashed: the gussets; the outline of the forward face; and the wood round later cuts where no screw may stand.'
          : 'The port half, looking aft; starboard is its mirror. Dashed: the gussets; the outline of the after face; and the wood round later cuts where no screw may stand.',
      ),
    ],
  });
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function cornersInWords({ corners }: FrameOutline, say: Say): string {
  return corners
    .slice(1)
    .map(([y, z]) => `a corner ${say(y)} out and ${say(z)} up`)
    .join(', ');
}

/** The skin between the offsets and the frame; nothing to see where the offsets are to the inside. */
function skin({ station, corners }: FrameOutline): Shape[] {
  const outside = station.section;
  const same = outside.every(([y, z], i) => y === corners[i]![0] && z === corners[i]![1]);
  return same ? [] : [hatch([...ring(outside), ...ring(corners).toReversed()], 'ply', { pen: 'thin' })];
}

/** Chine logs and sheer clamp in section. */
function timbers({ notches }: FramePieces): Shape[] {
  return notches.flatMap(({ part, section }) =>
    part === 'keelson' ? [] : [hatch(ring(section), 'cedar', { part })],
  );
}

function levelMark(v: FrameDrawn, say: Say): Shape[] {
  const at: Point = [mm(v.markHalfBreadth), mm(v.markHeight)];
  const inward: Point = [at[0] - mm(v.moulded) * 1.5, at[1]];
  return [
    line([inward, [at[0] + 12, at[1]]], { pen: 'thin' }),
    mark(at),
    label(at, `level line, ${say(v.markHalfBreadth)} out`, { toward: 'w' }),
  ];
}

/** Every corner out from the centreline and up from the base. */
function dims({ corners }: FrameOutline, say: Say): Shape[] {
  return corners.flatMap(([y, z], i): Shape[] => {
    const at = onPaper([y, z]);
    const side = i === 0 ? 'left' : 'right';
    const up = dim([at[0], 0], at, say(z), { side, run: 'vertical', level: Math.max(0, i - 1) });
    if (i === 0) return [up];
    const last = i === corners.length - 1;
    const across = last ? ({ side: 'above', level: 0 } as const) : ({ side: 'below', level: i - 1 } as const);
    return [dim([0, at[1]], at, say(y), { ...across, run: 'horizontal' }), up];
  });
}

const lengthOf = ({ inner, outer }: { inner: Place; outer: Place }) =>
  Math.hypot(outer[0] - inner[0], outer[1] - inner[1]);

function middle(points: readonly Place[]): Point {
  const sum = points.reduce<[number, number]>((all, [y, z]) => [all[0] + y, all[1] + z], [0, 0]);
  return onPaper([sum[0] / points.length, sum[1] / points.length]);
}
