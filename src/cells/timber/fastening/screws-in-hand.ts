/** The screws of the frame that the cell speaks of: laid out once for all steps and pictures. */
import type { Hull } from '../../../boat';
import type { FrameOutline } from '../../../boat/joinery/frame-outline';
import type { FramePieces } from '../../../boat/joinery/frame-pieces';
import { type FrameScrew, frameScrews, type ScrewedOn } from '../../../boat/joinery/frame-screws';
import type { KeepOut } from '../../../boat/joinery/keep-outs';
import * as frame from '../../common/frame/frame-facts';
import type { ListRow } from '../../form/define';
import { fact } from '../../form/fact';

/** What the layout follows from. */
export interface ScrewsAsked extends frame.PiecesAsked {
  readonly screwClear: number;
  readonly fastened: 'plate' | 'skin' | 'keelson';
  readonly chine: string;
  readonly member: string;
  readonly faces: 'both' | 'one';
  readonly rows: number;
  readonly rowGap: number;
  readonly pitch: number;
  readonly diameter: number;
  readonly head: number;
  readonly hold: number;
  readonly ruleAlong: number;
  readonly ruleAcross: number;
  readonly ruleEnd: number;
  readonly ruleEdge: number;
}

export interface ScrewsInHand {
  readonly outline: FrameOutline;
  readonly pieces: FramePieces;
  readonly keepOuts: readonly KeepOut[];
  readonly joint: ScrewedOn;
  /** Those that stand come first. */
  readonly screws: readonly FrameScrew[];
  readonly standing: readonly (FrameScrew & { readonly at: readonly [number, number] })[];
}

/** No value where the frame has no such joint. */
export const screwsInHand = fact(
  'rows from the outer edge inward, each shared out evenly; a screw that meets a later cut goes to the nearest place that keeps every rule, to the millimetre (in large plates to 2 or 3)',
  'geometry',
  (asked: ScrewsAsked, { hull, ask }): ScrewsInHand => {
    const outline = ask(frame.outline);
    const pieces = ask(frame.pieces);
    const keepOuts = ask(frame.keepOuts);
    const joint = jointOf(hull, asked);
    const screws = frameScrews(outline, pieces.notches, keepOuts, joint, {
      along: asked.ruleAlong,
      across: asked.ruleAcross,
      end: asked.ruleEnd,
      edge: asked.ruleEdge,
      rows: asked.rows,
      rowGap: asked.rowGap,
      pitch: asked.pitch,
      head: asked.head,
      diameter: asked.diameter,
      hold: Math.max(0, asked.hold),
      plateLeg: asked.gussetLeg,
      keelsonWidth: asked.keelsonWidth,
      siding: asked.siding,
      bothFaces: asked.faces === 'both',
    });
    const standing = screws.flatMap((screw) => (screw.at ? [{ ...screw, at: screw.at }] : []));
    return { outline, pieces, keepOuts, joint, screws, standing };
  },
);

function jointOf(hull: Hull, { fastened, member, chine: named }: ScrewsAsked): ScrewedOn {
  if (fastened === 'keelson') return { fastened };
  if (fastened === 'skin') {
    const panel = hull.panels.find(({ name }) => name === member) ?? hull.panels.at(-1)!; // a hull has a panel
    return { fastened, panel: panel.name };
  }
  const chines = hull.edges.slice(1, -1);
  const chine = chines.find(({ name }) => name === named) ?? chines[0];
  return { fastened, chine: chine?.index ?? 0 };
}

/** The screw of the layout that is looked at; null where there are fewer. */
export const screwInHand = fact(
  'the same layout, from the outer row inward',
  'geometry',
  ({ screw }: ScrewsAsked & { readonly screw: number }, { ask }) =>
    ask(screwsInHand).standing[screw - 1] ?? null,
);

/** Every screw that stands, by its number. */
export const screwList = fact(screwInHand.how, 'geometry', (_: ScrewsAsked, { ask }): readonly ListRow[] =>
  ask(screwsInHand).standing.map((_screw, i) => ({
    id: `screw${i + 1}`,
    label: `screw ${i + 1}`,
    value: i + 1,
  })),
);

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
