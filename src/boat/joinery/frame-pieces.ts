/** The pieces of a frame as they are sawn, and the plates that join them. */
import type { Vec2 } from '../../kernel';
import { cutAway } from './cut-away';
import {
  chineLogNotch,
  keelsonSlot,
  type Notch,
  sheerClampNotch,
  type Slot,
  type TimberSection,
} from './frame-notches';
import type { FrameOutline, Member } from './frame-outline';
import type { Hull } from '../hull/hull';

export interface Fittings {
  readonly slot: Slot;
  readonly chineLog: TimberSection;
  readonly sheerClamp: TimberSection;
  /** Along each member from the corner of the skin's inside, m. */
  readonly gussetLeg: number;
  /** Depth of the members and what is left on the sides above the sheer, m: as the outline was drawn with. */
  readonly moulded: number;
  readonly beyond: number;
}

export interface FramePieces {
  readonly notches: readonly Notch[];
  readonly members: readonly {
    readonly member: Member;
    /** Notched; one outline, more where a notch cuts the member through, none where it takes all of it. */
    readonly outlines: readonly (readonly Vec2[])[];
  }[];
  /** A plate at each chine, port side, notched with the members. */
  readonly gussets: readonly Gusset[];
}

export interface Gusset {
  /** In the plan's words: `chine`. */
  readonly at: string;
  readonly outlines: readonly (readonly Vec2[])[];
  /** The leg with which the long edge just passes the inner corner of the members, m. */
  readonly leastLeg: number;
}

/** What is cut out of a frame, keel outward. */
export function frameNotches(
  hull: Hull,
  frame: FrameOutline,
  fittings: Pick<Fittings, 'slot' | 'chineLog' | 'sheerClamp' | 'beyond'>,
): readonly Notch[] {
  return [
    keelsonSlot(hull, frame, fittings.slot),
    ...hull.edges.slice(1, -1).map((edge) => chineLogNotch(hull, frame, edge, fittings.chineLog)),
    sheerClampNotch(hull, frame, fittings.sheerClamp, fittings.beyond),
  ];
}

export function framePieces(hull: Hull, frame: FrameOutline, fittings: Fittings): FramePieces {
  const notches = frameNotches(hull, frame, fittings);
  const logs = notches.filter(({ part }) => part === 'chineLog');
  return {
    notches,
    members: frame.members.map((member) => ({ member, outlines: notched(member.outline, notches) })),
    gussets: logs.map((log) => gusset(frame, log, fittings)),
  };
}

function notched(outline: readonly Vec2[], notches: readonly Notch[]): readonly (readonly Vec2[])[] {
  return notches.reduce<readonly (readonly Vec2[])[]>(
    (left, { cut }) => left.flatMap((one) => cutAway(one, cut)),
    [outline],
  );
}

function gusset(frame: FrameOutline, log: Notch, { gussetLeg, moulded }: Fittings): Gusset {
  const { index, label } = log.edge;
  const angle = frame.angles[index - 1]!;
  const outline = plateAt(frame, index, gussetLeg);
  // The inner corner lies moulded / sin(half) from the outer one, the long edge leg x cos(half). Members
  // nearly in one line need no plate across a corner.
  const leastLeg = angle > Math.PI - 0.02 ? 0 : (2 * moulded) / Math.sin(angle);
  return { at: label, outlines: cutAway(outline, log.cut), leastLeg };
}

/** The plate at a chine before it is notched: its corner, then its legs' ends up the member above and along the one below. */
export function plateAt(frame: FrameOutline, index: number, leg: number): readonly [Vec2, Vec2, Vec2] {
  const below = frame.members[index - 1]!; // a chine has a member on either side
  const above = frame.members[index]!;
  const corner = frame.corners[index]!;
  return [
    corner,
    [corner[0] + leg * above.along[0], corner[1] + leg * above.along[1]],
    [corner[0] - leg * below.along[0], corner[1] - leg * below.along[1]],
  ];
}
