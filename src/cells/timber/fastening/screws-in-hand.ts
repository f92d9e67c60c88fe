/** The screws of the frame that the cell speaks of, from its values: laid out once for all steps and pictures. */
import type { Hull } from '../../../boat';
import type { FrameOutline } from '../../../boat/joinery/frame-outline';
import type { FramePieces } from '../../../boat/joinery/frame-pieces';
import { type FrameScrew, frameScrews, type Joint } from '../../../boat/joinery/frame-screws';
import type { KeepOut } from '../../../boat/joinery/keep-outs';
import type { Values } from '../../form/define';
import { keepOutsInHand, outlineInHand, PIECE_INPUTS, piecesInHand } from '../../common/frame/frame-in-hand';

/** What the layout follows from. */
export const SCREW_INPUTS = [
  ...PIECE_INPUTS,
  'screwClear',
  'fastened',
  'chine',
  'faces',
  'rows',
  'rowGap',
  'pitch',
  'diameter',
  'head',
  'hold',
  'ruleAlong',
  'ruleAcross',
  'ruleEnd',
  'ruleEdge',
] as const;

export interface ScrewsInHand {
  readonly outline: FrameOutline;
  readonly pieces: FramePieces;
  readonly keepOuts: readonly KeepOut[];
  readonly joint: Joint;
  /** Those that stand come first. */
  readonly screws: readonly FrameScrew[];
  readonly standing: readonly (FrameScrew & { readonly at: readonly [number, number] })[];
}

const known = new WeakMap<Hull, Map<string, ScrewsInHand>>();
/** Layouts kept of one hull: those of two versions, of a table and its pictures. */
const KEPT = 12;

/** @throws a sentence where the frame has no such joint */
export function screwsInHand(hull: Hull, values: Values): ScrewsInHand {
  const key = SCREW_INPUTS.map((name) => values[name]).join(' ');
  const ofHull = known.get(hull) ?? new Map<string, ScrewsInHand>();
  known.set(hull, ofHull);
  const before = ofHull.get(key);
  if (before) return before;
  const made = layOut(hull, values);
  if (ofHull.size >= KEPT) ofHull.clear();
  ofHull.set(key, made);
  return made;
}

function layOut(hull: Hull, values: Values): ScrewsInHand {
  const of = (name: (typeof SCREW_INPUTS)[number]) => Number(values[name]);
  const outline = outlineInHand(hull, values);
  const pieces = piecesInHand(hull, values);
  const keepOuts = keepOutsInHand(outline, pieces, values);
  const joint = jointOf(hull, values);
  const screws = frameScrews(outline, pieces.notches, keepOuts, joint, {
    along: of('ruleAlong'),
    across: of('ruleAcross'),
    end: of('ruleEnd'),
    edge: of('ruleEdge'),
    rows: of('rows'),
    rowGap: of('rowGap'),
    pitch: of('pitch'),
    head: of('head'),
    diameter: of('diameter'),
    hold: Math.max(0, of('hold')),
    plateLeg: of('gussetLeg'),
    keelsonWidth: of('keelsonWidth'),
    siding: of('siding'),
    bothFaces: values['faces'] === 'both',
  });
  const standing = screws.flatMap((screw) => (screw.at ? [{ ...screw, at: screw.at }] : []));
  return { outline, pieces, keepOuts, joint, screws, standing };
}

function jointOf(hull: Hull, values: Values): Joint {
  if (values['fastened'] === 'keelson') return { fastened: 'keelson' };
  if (values['fastened'] === 'skin') {
    const named = hull.panels.find(({ name }) => name === values['member']);
    return { fastened: 'skin', panel: (named ?? hull.panels.at(-1)!).name }; // a hull has a panel
  }
  const chines = hull.edges.slice(1, -1);
  const chine = chines.find(({ name }) => name === values['chine']) ?? chines[0];
  return { fastened: 'plate', chine: chine?.index ?? 0 };
}

/** From where the distance along a member is taped. */
export function datumOf({ joint, outline }: ScrewsInHand): string {
  if (joint.fastened === 'keelson') return 'the centreline';
  if (joint.fastened === 'plate') return `the ${outline.members[joint.chine]!.panel.inner.label}`; // laid out, so it is there
  const member = outline.members.find(({ panel }) => panel.name === joint.panel)!; // laid out, so it is there
  return `the ${member.panel.outer.label}`;
}

/** Which face, or which side, a screw goes in from. */
export function faceInWords({ outline, joint }: ScrewsInHand, { from }: FrameScrew): string {
  if (from === 'outside') return joint.fastened === 'keelson' ? 'under the keelson' : 'through the skin';
  const after = (outline.stands === 'forward') === (from === 'line');
  return after ? 'after face' : 'forward face';
}
