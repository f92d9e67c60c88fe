/** What cells know of a frame: its outline inside the skin, its members, its notches and plates, where no screw may stand. */
import type { Hull } from '../../../boat';
import { sideOf } from '../../../boat/hull/side-of';
import { frameOutline } from '../../../boat/joinery/frame-outline';
import { framePieces } from '../../../boat/joinery/frame-pieces';
import { keepOutsIn } from '../../../boat/joinery/keep-outs';
import { fact } from '../../form/fact';
import { GEOMETRY } from '../../../trade/sources';

/** Thickness of the skin's panels, m. */
export interface SkinAsked {
  readonly sideThickness: number;
  readonly bottomThickness: number;
  /** Of panels between. */
  readonly bilgeThickness: number;
}

/** What a frame's outline follows from. */
export interface FrameAsked extends SkinAsked {
  readonly frame: string;
  readonly stands: string;
  readonly joint: 'mitre' | 'butt';
  readonly siding: number;
  readonly moulded: number;
  /** Left above the sheer. */
  readonly beyond: number;
}

/** What the keelson's slot follows from. */
interface SlotAsked {
  readonly keelsonWidth: number;
  readonly keelsonThickness: number;
  readonly limberWidth: number;
  readonly holeDiameter: number;
}

/** What notches and plates follow from. */
export interface PiecesAsked extends FrameAsked, SlotAsked {
  readonly logThickness: number;
  readonly logWidth: number;
  readonly clampThickness: number;
  readonly clampWidth: number;
  readonly gussetLeg: number;
}

/** Thickness of a panel by its name. */
export function skinOver(asked: SkinAsked, panel: string): number {
  if (panel === 'bottom') return asked.bottomThickness;
  return panel === 'side' ? asked.sideThickness : asked.bilgeThickness;
}

/** The side of its line on which it stands. */
export const stands = fact(
  'as chosen; by custom forward of its line before the widest frame, aft of it behind, so that bevels are only cut off',
  'custom of the trade; common practice, no source',
  ({ frame, side }: { readonly frame: string; readonly side: string }, { hull }) =>
    sideOf(hull.station(frame), side, false),
);

export const outline = fact(
  'the planes of the skin on both sides of the corner, moved in by their thickness',
  GEOMETRY,
  (asked: FrameAsked, { hull }) =>
    frameOutline(hull, asked.frame, {
      stands: asked.stands === 'aft' ? 'aft' : 'forward',
      siding: asked.siding,
      moulded: asked.moulded,
      joint: asked.joint,
      beyond: asked.beyond,
      skin: skinOf(hull, asked),
    }),
);

const skinOf = (hull: Hull, asked: SkinAsked) =>
  Object.fromEntries(hull.panels.map(({ name }) => [name, skinOver(asked, name)]));

/** The member spoken of. */
export const member = fact(
  'the member’s outline between its two joints',
  GEOMETRY,
  ({ member: named }: FrameAsked & { readonly member: string }, { ask }) => {
    const { members } = ask(outline);
    return members.find(({ panel }) => panel.name === named) ?? members.at(-1)!; // a hull has a panel
  },
);

export const pieces = fact(
  'the timbers’ sections where the plane of the station cuts them',
  GEOMETRY,
  (asked: PiecesAsked, { hull, ask }) =>
    framePieces(hull, ask(outline), {
      slot: slotOf(asked),
      chineLog: { thickness: asked.logThickness, width: asked.logWidth },
      sheerClamp: { thickness: asked.clampThickness, width: asked.clampWidth },
      gussetLeg: asked.gussetLeg,
      moulded: asked.moulded,
      beyond: asked.beyond,
    }),
);

const slotOf = (asked: SlotAsked) => ({
  width: asked.keelsonWidth + 2 * asked.limberWidth,
  depth: asked.keelsonThickness,
  radius: asked.holeDiameter / 2,
});

/** Where no screw may stand, because something is still to be cut there. */
export const keepOuts = fact(
  'the cuts still to come, and the wood kept round them',
  GEOMETRY,
  (asked: PiecesAsked & { readonly screwClear: number }, { ask }) =>
    keepOutsIn(ask(outline), ask(pieces).notches, {
      slot: slotOf(asked),
      beyond: asked.beyond,
      clearance: asked.screwClear,
    }),
);
