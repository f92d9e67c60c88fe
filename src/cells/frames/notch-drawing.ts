/** The frame's corner with the notch in it, and the cut across the frame's thickness, in millimetres. */
import {
  breakLine,
  dim,
  type Drawing,
  drawing,
  hatch,
  label,
  line,
  mm,
  note,
  type Point,
  type Shape,
} from '../../drawing';
import { convexOutline, widened } from '../../kernel';

export interface NotchSeen {
  readonly frame: string;
  readonly timber: string;
  readonly sideFlare: number;
  readonly deadrise: number;
  readonly moulded: number;
  readonly siding: number;
  readonly kerf: number;
  readonly nearDepth: number;
  readonly planedOff: number;
  readonly farDepth: number;
  readonly along: number;
  readonly startsAt: number;
  readonly endsAt: number;
  readonly foot: number;
  readonly passes: number;
  readonly landLeft: number;
  readonly screwClear: number;
  readonly keepTo: number;
  readonly keepDepth: number;
}

type Say = (metres: number) => string;

/** More cuts than this run into one another on a small drawing; they are told in words only. */
const MOST_CUTS = 16;

export function notchView(v: NotchSeen, say: Say): Drawing {
  const log = v.timber === 'chineLog';
  const corner = log ? atChine(v) : atSheer(v);
  const name = log ? 'chine log' : 'sheer clamp';
  const depth = Math.max(mm(v.moulded), 1.15 * mm(v.farDepth));
  return drawing({
    title: `Notch for the ${name}`,
    says: `The notch runs ${say(v.along)} along the frame’s edge, ${say(v.nearDepth)} deep on the face on the station line and ${say(v.farDepth)} on the other. No screw within ${say(v.keepTo)} along the edge and ${say(v.keepDepth)} from it.`,
    shapes: [
      corner.member,
      hatch(corner.timber, 'cedar', { part: v.timber }),
      cuts(v, corner.at),
      line(widened(convexOutline(corner.deepest), mm(v.screwClear)), {
        pen: 'hidden',
        closed: true,
        layer: 'keep screws out',
      }),
      label(corner.at(mm(v.keepTo), mm(v.keepDepth) * 0.5), 'no screws', { toward: log ? 'nw' : 'sw' }),
      label(corner.at(mm(v.startsAt + v.along * 0.4), mm(v.nearDepth) * 0.5), name, {
        toward: log ? 'w' : 'nw',
      }),
      dim(corner.at(mm(v.startsAt), 0), corner.at(mm(v.endsAt), 0), say(v.along), { side: 'right' }),
      dim(corner.at(0, 0), corner.at(mm(v.keepTo), 0), say(v.keepTo), { side: 'right', level: 1 }),
      v.startsAt > 0
        ? dim(corner.at(0, 0), corner.at(mm(v.startsAt), 0), say(v.startsAt), { side: 'right' })
        : [],
      log && v.foot > 0 ? dim(corner.at(0, 0), corner.foot, say(v.foot), { side: 'below' }) : [],
      dim(corner.at(mm(v.keepTo), 0), corner.at(mm(v.keepTo), mm(v.keepDepth)), say(v.keepDepth), {
        side: log ? 'above' : 'below',
      }),
      across(v, [corner.middle - mm(v.siding) / 2, corner.low - 0.55 * depth], say),
      note(
        log
          ? 'Above: looking along the boat at the face on the line; dashed, where no screw may stand. Below: cut across the frame, that face to the left.'
          : 'Above: the head of the frame, looking along the boat at the face on the line; dashed, where no screw may stand. Below: cut across the frame, that face to the left.',
      ),
    ],
  });
}

interface Corner {
  /** A place along the edge on the skin from the corner, and in from it. */
  readonly at: (along: number, inward: number) => Point;
  readonly member: readonly Shape[];
  readonly timber: readonly Point[];
  /** The notch as deep as on the deeper face. */
  readonly deepest: readonly Point[];
  /** Where a log's notch ends on the bottom edge. */
  readonly foot: Point;
  /** How low the drawing reaches, and where its middle lies across. */
  readonly low: number;
  readonly middle: number;
}

/** A side edge from the corner at the origin: up for a log, down for a clamp. */
function edgeFrom(flare: number, way: 1 | -1): Corner['at'] {
  const [s, c] = [Math.sin(flare), Math.cos(flare)];
  return (along, inward) => [way * along * s - inward * c, way * along * c + inward * s];
}

const held = (angle: number, least: number, most: number) => Math.max(least, Math.min(most, angle));
const degrees = Math.PI / 180;

/** Two members that meet at the chine. Beyond what can be told apart on paper, angles are drawn less sharp. */
function atChine(v: NotchSeen): Corner {
  const flare = held(v.sideFlare, -40 * degrees, 60 * degrees);
  const angle = held(Math.PI / 2 + v.sideFlare + v.deadrise, 70 * degrees, 165 * degrees);
  const at = edgeFrom(flare, 1);
  const deep = Math.max(mm(v.moulded), 1.15 * mm(v.farDepth));
  const inner = deep / Math.tan(angle / 2);
  const reach = Math.max(1.15 * mm(v.keepTo), inner + 0.35 * deep);
  // From the side's direction the bottom's lies that much further round, inboard.
  const turn = Math.PI / 2 - flare + angle;
  const bottom = (along: number, inward: number): Point => [
    along * Math.cos(turn) + inward * Math.sin(turn),
    along * Math.sin(turn) - inward * Math.cos(turn),
  ];
  const low = Math.max(reach, 1.15 * mm(v.foot));
  const apex = (depth: number) => at(mm(v.along), depth);
  const footAt = (depth: number) => bottom(v.nearDepth > 0 ? (mm(v.foot) * depth) / mm(v.nearDepth) : 0, 0);
  const near = mm(v.nearDepth);
  const outer = [bottom(low, 0), footAt(near), apex(near), at(mm(v.along), 0), at(reach, 0)];
  const inside = [at(reach, deep), at(inner, deep), bottom(low, deep)];
  return {
    at,
    member: brokenMember(v.frame, outer, inside),
    timber: [at(0, 0), at(mm(v.along), 0), apex(near), footAt(near)],
    deepest: [at(0, 0), at(mm(v.along), 0), apex(mm(v.farDepth)), footAt(mm(v.farDepth))],
    foot: footAt(near),
    low: Math.min(bottom(low, 0)[1], -mm(v.screwClear)),
    middle: (bottom(low, 0)[0] + at(reach, 0)[0]) / 2,
  };
}

/** The head of the side member, standing above the sheer until it is trimmed. */
function atSheer(v: NotchSeen): Corner {
  const flare = held(v.sideFlare, -60 * degrees, 75 * degrees);
  const at = edgeFrom(flare, -1);
  const deep = Math.max(mm(v.moulded), 1.15 * mm(v.farDepth));
  const reach = Math.max(1.25 * mm(v.keepTo), deep);
  const [start, end] = [mm(v.startsAt), mm(v.endsAt)];
  const above = -Math.max(0.4 * deep, 1.2 * mm(v.screwClear));
  const near = mm(v.nearDepth);
  const section = (depth: number) => [at(start, 0), at(end, 0), at(end, depth), at(start, depth)];
  const outer = [at(reach, 0), at(end, 0), at(end, near), at(start, near), at(start, 0), at(above, 0)];
  const inside = [at(above, deep), at(reach, deep)];
  return {
    at,
    member: [
      hatch([...outer, ...inside], 'plain', { pen: 'none', part: v.frame }),
      line([...outer, ...inside], { pen: 'outline', part: v.frame }),
      breakLine(at(reach, deep), at(reach, 0), { part: v.frame }),
      line([at(0, -0.15 * deep), at(0, deep)], { pen: 'thin' }),
      label(at(0, deep), 'sheer mark', { toward: 'nw' }),
    ],
    timber: section(near),
    deepest: section(mm(v.farDepth)),
    foot: at(0, 0),
    low: at(reach, 0)[1],
    middle: (at(above, 0)[0] + at(reach, deep)[0]) / 2,
  };
}

function brokenMember(part: string, outer: readonly Point[], inside: readonly Point[]): Shape[] {
  return [
    hatch([...outer, ...inside], 'plain', { pen: 'none', part }),
    line(outer, { pen: 'outline', part }),
    line(inside, { pen: 'outline', part }),
    breakLine(outer.at(-1)!, inside[0]!, { part }), // lists written out above
    breakLine(inside.at(-1)!, outer[0]!, { part }),
  ];
}

/** Each pass of the saw by its two sides, from the edge to the floor. */
function cuts(v: NotchSeen, at: Corner['at']): Shape[] {
  if (v.passes > MOST_CUTS) return [];
  return Array.from({ length: v.passes }, (_, i): Shape[] => {
    const from = v.startsAt + i * (v.kerf + v.landLeft);
    return [from, Math.min(from + v.kerf, v.endsAt)].map((along) =>
      line([at(mm(along), 0), at(mm(along), mm(v.nearDepth))], { pen: 'thin' }),
    );
  }).flat();
}

/** Across the frame's thickness: the notch's floor, the square edge and the bevelled one. */
function across(v: NotchSeen, [x, y]: Point, say: Say): Shape[] {
  const siding = mm(v.siding);
  // A very steep bevel is drawn flatter and keeps its texts.
  const off = Math.min(mm(v.planedOff), 2 * siding);
  const near = mm(v.nearDepth);
  const deep = Math.max(1.6 * near + off, siding);
  const place = (across: number, inward: number): Point => [x + across, y - inward];
  const floor = [place(0, near), place(siding, near + off)];
  return [
    hatch([...floor, place(siding, deep), place(0, deep)], 'cedar', { pen: 'none', part: v.frame }),
    line([place(0, deep), ...floor, place(siding, deep)], { pen: 'outline', part: v.frame }),
    breakLine(place(0, deep), place(siding, deep), { part: v.frame }),
    line([place(0, near), place(0, 0), place(siding, 0), place(siding, near + off)], { pen: 'thin' }),
    line([place(0, 0), place(siding, off)], { pen: 'thin' }),
    dim(place(0, 0), place(0, near), say(v.nearDepth), { side: 'left', run: 'vertical' }),
    dim(place(siding, 0), place(siding, near + off), say(v.farDepth), { side: 'right', run: 'vertical' }),
    dim(place(0, deep), place(siding, deep), say(v.siding), { side: 'below' }),
  ];
}
