/** The patterns of a frame at full size: the half frame to lay the pieces up on, each member, the gussets. */
import { attempt } from '../../boat';
import type { FrameOutline, Member } from '../../boat/joinery/frame-outline';
import type { FramePieces, Gusset } from '../../boat/joinery/frame-pieces';
import {
  centreLine,
  type Drawing,
  drawing,
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
import { keepOuts, outline as outlineInHand, pieces as piecesInHand } from '../common/frame/frame-facts';
import { keepOutLines } from '../common/frame/keep-outs-drawing';
import { type FrameDrawn, onPaper, ring } from './frame-drawing';

type Place = readonly [y: number, z: number];
type Say = OnHand['say'];

/** Layer of centreline, level line and sheer mark in files for a cutting table. */
const MARKS = { layer: 'marks' } as const;

/** None where the frame can't be drawn. */
export function framePatterns(
  v: FrameDrawn,
  { hull, say, ask }: Pick<OnHand, 'say' | 'hull' | 'ask'>,
): readonly Drawing[] {
  if (!hull) return [];
  const made = attempt(() => ({
    outline: ask(outlineInHand),
    pieces: ask(piecesInHand),
    clear: ask(keepOuts),
  }));
  if (isIssue(made)) return [];
  const { outline, pieces, clear } = made;
  return [
    halfFrame(v, outline, pieces, keepOutLines(clear, outline), say),
    ...pieces.members.map(({ member, outlines }) => memberPattern(outline, member, outlines, say)),
    ...pieces.gussets.map((gusset) => gussetPattern(outline, gusset, v, say)),
  ];
}

const faceOf = ({ stands }: FrameOutline) => (stands === 'forward' ? 'after' : 'forward');

const nameOf = ({ station: { label: name } }: FrameOutline) => name.charAt(0).toUpperCase() + name.slice(1);

function halfFrame(
  v: FrameDrawn,
  outline: FrameOutline,
  pieces: FramePieces,
  clear: readonly Shape[],
  say: Say,
): Drawing {
  const { corners, station } = outline;
  const length = (metres: number) => say(metres, 'length');
  const level: Point = [mm(v.markHalfBreadth), mm(v.markHeight)];
  const deep = mm(v.moulded);
  const foot = onPaper(corners[0]!); // a frame has a keel
  const sheer = onPaper(corners.at(-1)!); // and a sheer
  return drawing({
    title: `${nameOf(outline)}: half, to lay the pieces on`,
    says: `Full size, the ${faceOf(outline)} face, which stands on the station line; turn it over on the centreline for the other half.`,
    shapes: [
      ...pieces.members.flatMap(({ member, outlines }) =>
        outlines.map((one) => sawn(ring(one), station.name, `${member.panel.name} member`)),
      ),
      ...pieces.gussets.flatMap(({ outlines }) =>
        outlines.map((one) =>
          line(ring(one), { pen: 'hidden', closed: true, part: 'gusset', layer: 'gusset' }),
        ),
      ),
      line(ring(outline.farCorners), { pen: 'ghost', layer: 'other face' }),
      ...clear,
      centreLine([0, foot[1] - 40], [0, foot[1] + deep + 60], MARKS),
      label([0, foot[1] + deep + 30], 'centreline', { toward: 'e' }),
      centreLine([level[0] - 2.5 * deep, level[1]], [level[0] + 30, level[1]], MARKS),
      label([level[0] - 2 * deep, level[1]], `level line, ${length(v.markHeight)} above the base`, {
        toward: 'n',
      }),
      ...corners.map((corner) => mark(onPaper(corner), MARKS)),
      ...corners.map(([y, z], i) =>
        label(onPaper([y, z]), `${station.label}: ${length(y)} out, ${length(z)} up`, {
          toward: i === 0 ? 'ne' : 'w',
        }),
      ),
      sheerMark(outline),
      label(sheer, 'sheer mark', { toward: 'nw' }),
      // A line each, short enough to stand on one sheet.
      note(`${nameOf(outline)}, ${faceOf(outline)} face. Whole lines: pieces.`),
      note('Long dashes: gussets. Short dashes: the other face on the skin.'),
      note('Dashes round notches and along edges: no screws.'),
    ],
  });
}

const sawn = (points: readonly Point[], part: string, layer: string) =>
  line(points, { pen: 'outline', closed: true, part, layer });

/** A stroke across the side member at the sheer, where the length left over is trimmed. */
function sheerMark({ members }: FrameOutline): Shape[] {
  const { outer, inward, outline, inner } = members.at(-1)!; // a frame has a side
  const [y, z] = outline[3]!; // on the inner edge
  const depth = inward[0] * (y - inner[0]) + inward[1] * (z - inner[1]);
  const across: Place = [outer[0] + depth * inward[0], outer[1] + depth * inward[1]];
  return [line([onPaper(outer), onPaper(across)], { pen: 'thin', ...MARKS })];
}

/** A member with its edge on the skin level at the bottom of the sheet, its inner end to the left. */
function memberPattern(
  frame: FrameOutline,
  member: Member,
  outlines: readonly (readonly Place[])[],
  say: Say,
): Drawing {
  const { panel, pieces, bevels, footCut, headCut } = member;
  const flat = flatOn(member);
  const angle = (radians: number) => say(radians, 'angle');
  const length = say(member.length, 'length');
  const [inner, outer] = [flat(member.inner), flat(member.outer)];
  const deep = Math.max(...member.outline.map((point) => flat(point)[1]));
  const across = pieces === 1;
  const cuts = across
    ? `both ends ${angle(headCut)} off square`
    : `ends ${angle(footCut)} and ${angle(headCut)} off square`;
  return drawing({
    title: `${nameOf(frame)}: ${panel.label} member, ${across ? 'one piece, half of it' : 'two, opposite hands'}`,
    says: `Full size: ${length} from long point to long point, ${cuts}.`,
    shapes: [
      ...outlines.map((one) => sawn(one.map(flat), frame.station.name, `${panel.name} member`)),
      across
        ? [
            centreLine([0, -20], [0, deep + 60], MARKS),
            label([0, deep + 30], 'centreline: turn over for the other half', { toward: 'e' }),
          ]
        : [],
      mark(inner, MARKS),
      mark(outer, MARKS),
      label([outer[0] * 0.35, 0], bevelInWords(bevels[0], 'inner end', angle), { toward: 's' }),
      label([outer[0] * 0.75, 0], bevelInWords(bevels[1], 'outer end', angle), { toward: 's' }),
      note(`${nameOf(frame)}, ${panel.label} member, ${faceOf(frame)} face up, edge on the skin below.`),
      note(`${length} over all, ${cuts}. Saw ${pieces}.`),
    ],
  });
}

/** Plane coordinates to paper with the member's edge along the level. */
function flatOn({ inner, along, inward }: Member): (at: Place) => Point {
  return ([y, z]) => {
    const [dy, dz] = [y - inner[0], z - inner[1]];
    return [mm(dy * along[0] + dz * along[1]), mm(dy * inward[0] + dz * inward[1])];
  };
}

function bevelInWords(bevel: number, where: string, angle: (radians: number) => string): string {
  return `${where}: plane ${angle(Math.abs(bevel))} off the ${bevel > 0 ? 'aft' : 'forward'} corner`;
}

function gussetPattern(frame: FrameOutline, { at, outlines }: Gusset, v: FrameDrawn, say: Say): Drawing {
  const length = (key: 'gussetLeg' | 'gussetThickness') => say(v[key], 'length');
  return drawing({
    title: `${nameOf(frame)}: gusset at the ${at}, four`,
    says: `Full size: legs of ${length('gussetLeg')} along the members, notched for the chine log.`,
    shapes: [
      ...outlines.map((one) => sawn(ring(one), 'gusset', 'gusset')),
      note(`${nameOf(frame)}, ${at}: saw four, two of each hand, from ${length('gussetThickness')} plywood.`),
    ],
  });
}
