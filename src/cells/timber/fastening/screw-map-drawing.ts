/** The joint in the frame with its screws: where each stands, which were moved and from where, and what is kept free. */
import { attempt } from '../../../boat';
import type { FrameOutline, Member } from '../../../boat/joinery/frame-outline';
import { stillToCome } from '../../../boat/joinery/frame-screws';
import type { KeepOut } from '../../../boat/joinery/keep-outs';
import {
  centreLine,
  dim,
  type Drawing,
  drawing,
  hatch,
  label,
  line,
  mm,
  note,
  type Shape,
} from '../../../drawing';
import { common, type Vec2, widened } from '../../../kernel';
import { isIssue } from '../../../measure';
import type { OnHand } from '../../form/define';
import { KEEP_OUT } from '../../common/frame/keep-outs-drawing';
import { numberedAtPlace, rowsInWords, type ScrewRow, screwRows } from './screw-symbols';
import { crossesAt, moved, onPaper, ring, SCREWS, screwShapes } from './screw-symbols-drawing';
import { datumOf, faceInWords, type ScrewsAsked, type ScrewsInHand, screwsInHand } from './screws-in-hand';

type On = Pick<OnHand, 'say' | 'hull' | 'ask'>;

/** What the drawings go by. */
export interface ScrewsDrawn extends ScrewsAsked {
  readonly screw: number;
  readonly topThickness: number;
  readonly leastWood: number;
}

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
    title: titleOf(made),
    says: `Standing: ${standing.length} of ${screws.length}; moved: ${shifted.length}. ${screwInWords(made, v, length)}`,
    shapes: [
      jointShapes(made, v),
      screwShapes(made, v),
      numberedAtPlace(screwRows(screws)).map(({ number, at }) => label(onPaper(at), String(number), SCREWS)),
      reading(made, v, length),
      note(notesOf(made, v, length)),
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
        screwShapes(made, v),
        numberedAtPlace(screwRows(made.screws)).map(({ number, at, along, inward }) =>
          label(onPaper(at), `${number}: ${length(along)}, ${length(inward)} in`, SCREWS),
        ),
        note(`${titleOf(made)}. Along each member from ${datumOf(made)}. ${notesOf(made, v, length)}`),
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

function notesOf(
  { joint, outline, screws }: ScrewsInHand,
  v: ScrewsDrawn,
  length: (m: number) => string,
): string {
  const face = faceOf(outline);
  const rows = screwRows(screws);
  const crosses = crossesAt(screws, joint, v);
  const lost = screws.filter(({ at }) => !at).length;
  const fromOther = joint.fastened === 'plate' && screws.some(({ from }) => from === 'other');
  return [
    `One side of the boat, seen on the ${face} face.`,
    rowsInWords(rows),
    fromOther ? `Dashed ring: from the ${face === 'after' ? 'forward' : 'after'} face.` : '',
    shiftsInWords(rows, length),
    crosses.some(({ of }) => of) ? 'Small cross: its place in the row.' : '',
    lost > 0 ? `Left out: ${lost}${crosses.some(({ of }) => !of) ? ', large cross' : ''}.` : '',
    'Dashed outline: kept free for later cuts.',
  ]
    .filter((said) => said !== '')
    .join(' ');
}

/** So many shifts are said one by one; the table has them all. */
const EACH_SHIFT = 2;

function shiftsInWords(rows: readonly ScrewRow[], length: (m: number) => string): string {
  const shifted = rows.flatMap(({ screws }) => screws).filter(({ clash }) => clash !== '');
  if (shifted.length === 0) return '';
  const by = shifted.map(({ moved: far }) => far);
  return shifted.length > EACH_SHIFT
    ? `Dot: moved ${length(Math.min(...by))} to ${length(Math.max(...by))}.`
    : `Dot: moved, ${shifted.map(({ number, moved: far }) => `${number} by ${length(far)}`).join(', ')}.`;
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
