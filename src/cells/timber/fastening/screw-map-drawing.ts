/** The joint in the frame with its screws: where each stands, which were moved and from where, and what is kept free. */
import { attempt } from '../../../boat';
import type { FrameOutline, Member } from '../../../boat/joinery/frame-outline';
import { type FrameScrew, stillToCome } from '../../../boat/joinery/frame-screws';
import type { KeepOut } from '../../../boat/joinery/keep-outs';
import {
  arrow,
  centreLine,
  circle,
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
import { common, type Vec2, widened } from '../../../kernel';
import { isIssue } from '../../../measure';
import type { OnHand } from '../../form/define';
import { KEEP_OUT } from '../../common/frame/keep-outs-drawing';
import { datumOf, faceInWords, type ScrewsAsked, type ScrewsInHand, screwsInHand } from './screws-in-hand';

type On = Pick<OnHand, 'say' | 'hull' | 'ask'>;

/** What the drawings go by. */
export interface ScrewsDrawn extends ScrewsAsked {
  readonly screw: number;
  readonly topThickness: number;
  readonly leastWood: number;
}
type StandingScrew = ScrewsInHand['standing'][number];

const SCREWS = { layer: 'screws' } as const;

const onPaper = ([y, z]: Vec2): Point => [mm(y), mm(z)];
const ring = (points: readonly Vec2[]): Point[] => points.map(onPaper);
const moved = ([y, z]: Vec2, by: number, [dy, dz]: Vec2): Vec2 => [y + by * dy, z + by * dz];

export function screwMapView(v: ScrewsDrawn, { say, hull, ask }: On): Drawing {
  const made = attempt(() => {
    if (!hull) throw new Error('There is no hull to take the frame from.');
    return ask(screwsInHand);
  });
  if (isIssue(made))
    return drawing({ title: 'Screws of a frame', says: made.issue, shapes: [note(made.issue)] });
  const { standing, screws } = made;
  const length = (metres: number) => say(metres, 'length');
  const shifted = standing.filter(({ clash }) => clash !== '');
  return drawing({
    title: `${titleOf(made)}: ${standing.length} screws`,
    says: `Screws that the rows ask for: ${screws.length}; standing: ${standing.length}, the nearest with ${length(v.leastWood)} of wood to a later cut; moved: ${shifted.length}. ${screwInWords(made, v, length)}`,
    shapes: [
      jointShapes(made, v),
      screws.map((screw) => screwShapes(screw, made, v)),
      numbered(standing, 14).map(([i, { at }]) => label(onPaper(at), String(i + 1), SCREWS)),
      reading(made, v, length),
      note(notesOf(made, screws)),
    ],
  });
}

/** At full size, to prick through: the same joint, with every screw’s reading at its place. */
export function screwMapPatterns(v: ScrewsDrawn, { say, hull, ask }: On): readonly Drawing[] {
  if (!hull) return [];
  const made = attempt(() => ask(screwsInHand));
  if (isIssue(made) || made.standing.length === 0) return [];
  const length = (metres: number) => say(metres, 'length');
  return [
    drawing({
      title: `${titleOf(made)}, screws`,
      says: `Full size, ${faceOf(made.outline)} face; turn it over on the centreline for the other side of the boat.`,
      shapes: [
        jointShapes(made, v),
        made.screws.map((screw) => screwShapes(screw, made, v)),
        numbered(made.standing, 14).map(([i, screw]) =>
          label(onPaper(screw.at), `${i + 1}: ${length(screw.along)}, ${length(screw.inward)} in`, SCREWS),
        ),
        note(`${titleOf(made)}. Along each member from ${datumOf(made)}. ${notesOf(made, made.screws)}`),
      ],
    }),
  ];
}

const faceOf = ({ stands }: FrameOutline) => (stands === 'forward' ? 'after' : 'forward');

function titleOf({ joint, outline }: ScrewsInHand): string {
  const name = outline.station.label;
  const frame = name.charAt(0).toUpperCase() + name.slice(1);
  if (joint.fastened === 'keelson') return `${frame}: keelson to frame`;
  if (joint.fastened === 'skin') return `${frame}: skin to frame along the ${joint.panel}`;
  return `${frame}: gusset at the ${outline.members[joint.chine]!.panel.inner.label}`; // laid out, so it is there
}

/** All, or where there are many the first, the last and what was moved. */
function numbered(standing: readonly StandingScrew[], most: number): (readonly [number, StandingScrew])[] {
  const all = standing.map((screw, i) => [i, screw] as const);
  if (all.length <= most) return all;
  const chosen = all.filter(([i, { clash }]) => clash !== '' || i === 0 || i === all.length - 1);
  return chosen.length <= most ? chosen : [all[0]!, all.at(-1)!];
}

function notesOf({ joint, outline }: ScrewsInHand, screws: readonly FrameScrew[]): string {
  const face = faceOf(outline);
  const seen = `Seen on the ${face} face, one side of the boat; the other is its mirror.`;
  const faces =
    joint.fastened === 'plate' && screws.some(({ from }) => from === 'other')
      ? ` Dashed rings: screws from the ${face === 'after' ? 'forward' : 'after'} face.`
      : '';
  const shifted = screws.some(({ clash, at }) => clash !== '' && at)
    ? ' Lozenge and arrow: moved, from the thin ring.'
    : '';
  const lost = screws.some(({ at }) => !at) ? ' Cross: left out, no place.' : '';
  return `${seen}${faces}${shifted}${lost} Dashed outlines: wood kept free for later cuts.`;
}

/** What is drawn, as a box in the plane of the station. */
function windowOf({ joint, outline, standing, screws }: ScrewsInHand, v: ScrewsDrawn): readonly Vec2[] {
  const near = joint.fastened === 'skin' ? memberOf(joint.panel, outline).outline : [];
  const leg = v.gussetLeg;
  const corner = joint.fastened === 'plate' ? outline.corners[joint.chine]! : null;
  const legs = corner
    ? [
        moved(corner, leg, outline.members[joint.fastened === 'plate' ? joint.chine : 0]!.along),
        moved(corner, -leg, outline.members[joint.fastened === 'plate' ? joint.chine - 1 : 0]!.along),
        corner,
      ]
    : [];
  const foot = outline.corners[0]!;
  const keel: readonly Vec2[] =
    joint.fastened === 'keelson'
      ? [
          [0, foot[1]],
          [v.keelsonWidth / 2 + v.limberWidth + v.moulded, foot[1] + v.moulded],
        ]
      : [];
  const all = [
    ...near,
    ...legs,
    ...keel,
    ...standing.map(({ at }) => at),
    ...screws.map(({ wanted }) => wanted),
  ];
  const margin = 0.25 * v.moulded;
  const [out, up] = [all.map(([y]) => y), all.map(([, z]) => z)];
  const [left, right] = [Math.max(0, Math.min(...out) - margin), Math.max(...out) + margin];
  const [low, high] = [Math.min(...up) - margin, Math.max(...up) + margin];
  return [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
}

const memberOf = (panel: string, { members }: FrameOutline): Member =>
  members.find((member) => member.panel.name === panel) ?? members.at(-1)!; // a frame has a side

/** Members as far as they lie in the window, long timbers in section, the plate, and what is kept free. */
function jointShapes(made: ScrewsInHand, v: ScrewsDrawn): Shape[] {
  const { outline, pieces, keepOuts, joint } = made;
  const window = windowOf(made, v);
  const within = (points: readonly Vec2[]) => common(points, window);
  const shown = (points: readonly Vec2[]) => points.length > 2;
  return [
    ...outline.members
      .map(({ outline: member }) => within(member))
      .filter(shown)
      .map((one) => hatch(ring(one), 'plain', { part: outline.station.name })),
    ...pieces.notches.flatMap(({ part, section }): Shape[] => {
      const one = within(section);
      return shown(one) ? [hatch(ring(one), 'cedar', { pen: 'thin', part })] : [];
    }),
    ...(joint.fastened === 'plate' ? pieces.gussets.slice(joint.chine - 1, joint.chine) : []).flatMap(
      ({ outlines }) =>
        outlines.map((one) => line(ring(one), { pen: 'visible', closed: true, part: 'gusset' })),
    ),
    ...stillToCome(keepOuts, joint.fastened).flatMap((one) =>
      outline.members
        .map((member) => within(common(keptFree(one, outline), member.outline)))
        .filter(shown)
        .map((inWood) => line(ring(inWood), { pen: 'hidden', closed: true, ...KEEP_OUT })),
    ),
    ...(joint.fastened === 'keelson' ? [centreLine([0, mm(window[0]![1])], [0, mm(window[2]![1])])] : []),
  ];
}

/** A cut with its clearance; of a bevel the strip along the member's edge. A limber lies in its slot. */
function keptFree({ cut, at, outline, depth, clearance }: KeepOut, frame: FrameOutline): readonly Vec2[] {
  if (cut !== 'planed') return widened(outline, clearance);
  const { inner, outer, inward } = memberOf(at, frame);
  return [inner, outer, moved(outer, depth + clearance, inward), moved(inner, depth + clearance, inward)];
}

function screwShapes(screw: FrameScrew, { joint }: ScrewsInHand, v: ScrewsDrawn): Shape[] {
  const head = mm(v.head) / 2;
  const { at, wanted, clash, from, member } = screw;
  const was = onPaper(wanted);
  if (!at) {
    return [
      circle(was, head, { pen: 'thin', ...SCREWS }),
      ...[1, -1].map((hand) =>
        line(
          [
            [was[0] - 1.4 * head, was[1] - hand * 1.4 * head],
            [was[0] + 1.4 * head, was[1] + hand * 1.4 * head],
          ],
          { pen: 'visible', ...SCREWS },
        ),
      ),
    ];
  }
  const here = onPaper(at);
  const shift: Shape[] =
    clash === ''
      ? []
      : [
          circle(was, head, { pen: 'thin', ...SCREWS }),
          arrow(was, here),
          line(lozenge(here, 1.7 * head), { pen: 'visible', closed: true, ...SCREWS }),
        ];
  if (joint.fastened === 'plate')
    return [
      circle(here, head, { pen: from === 'other' ? 'hidden' : 'visible', ...SCREWS }),
      mark(here, { form: 'dot', ...SCREWS }),
      ...shift,
    ];
  const into: Vec2 = joint.fastened === 'skin' ? member.inward : [0, 1];
  const [out, point] = [onPaper(moved(at, -v.topThickness, into)), onPaper(moved(at, v.hold, into))];
  return [
    line([out, point], { pen: 'outline', ...SCREWS }),
    mark(here, { form: 'dot', ...SCREWS }),
    ...shift,
  ];
}

const lozenge = ([x, y]: Point, reach: number): Point[] => [
  [x - reach, y],
  [x, y - reach],
  [x + reach, y],
  [x, y + reach],
];

/** Both tapes of the screw in hand. */
function reading(
  { standing, joint, outline }: ScrewsInHand,
  v: ScrewsDrawn,
  length: (m: number) => string,
): Shape[] {
  const screw = standing[v.screw - 1];
  if (!screw) return [];
  const { at, member, along, inward } = screw;
  if (joint.fastened === 'keelson')
    return [dim([0, mm(at[1])], onPaper(at), length(along), { run: 'horizontal', side: 'above' })];
  if (joint.fastened === 'skin')
    return [dim(onPaper(member.outer), onPaper(at), length(along), { side: 'right' })];
  const corner = outline.corners[joint.chine]!; // laid out, so it is there
  const foot = moved(at, -inward, member.inward);
  // Outside the boat, where nothing else is drawn.
  const steep = Math.abs(member.along[1]) > Math.abs(member.along[0]);
  return [
    dim(onPaper(corner), onPaper(foot), length(along), { side: steep ? 'right' : 'below', level: 1 }),
    dim(onPaper(foot), onPaper(at), length(inward), { side: steep ? 'above' : 'left' }),
  ];
}

function screwInWords(made: ScrewsInHand, v: ScrewsDrawn, length: (m: number) => string): string {
  const i = v.screw - 1;
  const screw = made.standing[i];
  if (!screw) return '';
  const edge = made.joint.fastened === 'plate' ? 'the outer edge' : 'the face on the station line';
  return `Screw ${i + 1}: ${length(screw.along)} from ${datumOf(made)} along the ${screw.member.panel.label} member, ${length(screw.inward)} from ${edge}, ${faceInWords(made, screw)}.`;
}
