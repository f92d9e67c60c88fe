/** The frame that the pattern cell speaks of, from its values: worked out once for all its steps and pictures. */
import type { Hull } from '../../../boat';
import {
  frameOutline,
  type FrameOutline,
  type FrameStock,
  type Member,
} from '../../../boat/joinery/frame-outline';
import { framePieces, type FramePieces } from '../../../boat/joinery/frame-pieces';
import { type KeepOut, keepOutsIn } from '../../../boat/joinery/keep-outs';
import type { Values } from '../../form/define';

/** What the outline and the members follow from. */
export const OUTLINE_INPUTS = [
  'frame',
  'stands',
  'joint',
  'siding',
  'moulded',
  'beyond',
  'bottomThickness',
  'bilgeThickness',
  'sideThickness',
] as const;

/** The same, and the member spoken of. */
export const MEMBER_INPUTS = [...OUTLINE_INPUTS, 'member'] as const;

/** What notches and plates follow from. */
export const PIECE_INPUTS = [
  ...MEMBER_INPUTS,
  'keelsonWidth',
  'keelsonThickness',
  'limberWidth',
  'holeDiameter',
  'logThickness',
  'logWidth',
  'clampThickness',
  'clampWidth',
  'gussetLeg',
] as const;

type Key = (typeof PIECE_INPUTS)[number];

const number = (values: Values, key: Key) => Number(values[key]);

/** The input that holds the thickness of a panel. */
export function thicknessKey(panel: string): 'bottomThickness' | 'bilgeThickness' | 'sideThickness' {
  if (panel === 'bottom') return 'bottomThickness';
  return panel === 'side' ? 'sideThickness' : 'bilgeThickness';
}

const outlines = new WeakMap<Hull, Map<string, FrameOutline>>();
/** Frames kept of one hull: a table's rows and two versions of one frame. */
const KEPT = 12;

/** @throws a sentence where there is no such frame */
export function outlineInHand(hull: Hull, values: Values): FrameOutline {
  const key = OUTLINE_INPUTS.map((name) => values[name]).join(' ');
  const ofHull = outlines.get(hull) ?? new Map<string, FrameOutline>();
  outlines.set(hull, ofHull);
  const known = ofHull.get(key);
  if (known) return known;
  const made = frameOutline(hull, String(values['frame']), stockOf(hull, values));
  if (ofHull.size >= KEPT) ofHull.clear();
  ofHull.set(key, made);
  return made;
}

function stockOf(hull: Hull, values: Values): FrameStock {
  return {
    stands: values['stands'] === 'aft' ? 'aft' : 'forward',
    siding: number(values, 'siding'),
    moulded: number(values, 'moulded'),
    joint: values['joint'] === 'butt' ? 'butt' : 'mitre',
    beyond: number(values, 'beyond'),
    skin: Object.fromEntries(hull.panels.map(({ name }) => [name, number(values, thicknessKey(name))])),
  };
}

export function memberInHand(hull: Hull, values: Values): Member {
  const { members } = outlineInHand(hull, values);
  return members.find(({ panel }) => panel.name === values['member']) ?? members.at(-1)!; // a hull has a panel
}

export function piecesInHand(hull: Hull, values: Values): FramePieces {
  const of = (key: Key) => number(values, key);
  return framePieces(hull, outlineInHand(hull, values), {
    slot: slotOf(values),
    chineLog: { thickness: of('logThickness'), width: of('logWidth') },
    sheerClamp: { thickness: of('clampThickness'), width: of('clampWidth') },
    gussetLeg: of('gussetLeg'),
    moulded: of('moulded'),
    beyond: of('beyond'),
  });
}

const slotOf = (values: Values) => ({
  width: number(values, 'keelsonWidth') + 2 * number(values, 'limberWidth'),
  depth: number(values, 'keelsonThickness'),
  radius: number(values, 'holeDiameter') / 2,
});

/** Where no screw may stand, because something is still to be cut there. */
export function keepOutsInHand(
  outline: FrameOutline,
  pieces: FramePieces,
  values: Values,
): readonly KeepOut[] {
  return keepOutsIn(outline, pieces.notches, {
    slot: slotOf(values),
    beyond: number(values, 'beyond'),
    clearance: Number(values['screwClear']),
  });
}
