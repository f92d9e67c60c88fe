/** The cloth on its roll and on the hull, its pieces numbered in the order of laying; and what other rolls would take. */
import { attempt, type Hull } from '../../boat';
import {
  type Drawing,
  drawing,
  hatch,
  label,
  line,
  mm,
  note,
  type Point,
  rect,
  type Shape,
} from '../../drawing';
import { rollWidths } from '../../trade/glass';
import { isIssue } from '../../measure';
import type { Vec2, Vec3 } from '../../kernel';
import type { Chart, OnHand } from '../form/define';
import type { ClothPlan } from './cloth-plan';
import type { ClothPiece } from './cloth-rules';
import { type ClothValues, plan } from './cloth-steps';

type Saying = Pick<OnHand, 'hull' | 'say' | 'ask'>;

/** Drawn at least as long, in widths of the roll. */
const LEAST_LENGTH = 3.4;

const TITLE = 'The cloth on the roll';

export function drawCloth(v: ClothValues, on: Saying): Drawing {
  const planned = attempt(() => on.ask(plan));
  if (isIssue(planned)) return drawing({ title: TITLE, says: planned.issue, shapes: [note(planned.issue)] });
  const { pieces, cut } = planned;
  if (pieces.length === 0) {
    const none = 'No cloth is asked for.';
    return drawing({ title: TITLE, says: none, shapes: [note(none)] });
  }
  const hull = v.over === 'hull' ? on.hull : null;
  return drawing({
    title: TITLE,
    says: `${pieces.length} ${pieces.length === 1 ? 'piece lies' : 'pieces lie'} on ${on.say(cut, 'length')} of a roll ${on.say(v.width, 'length')} wide.`,
    // A short stretch of the roll alone would fill the page.
    keepIn: { left: 0, bottom: 0, right: mm(Math.max(cut, LEAST_LENGTH * v.width)), top: mm(v.width) },
    shapes: [
      onRoll(planned, v.width),
      hull ? onHull(hull, planned, v) : [],
      note(
        `${hull ? 'Below, on the hull, from the side and from above. ' : ''}Pieces are numbered in the order of laying; aft is at the left.`,
      ),
      pieces.some(({ marks }) => marks.length > 0)
        ? note(
            'Ticks at the edges of a piece: the frames, to lay it back by. Hatched: upper layers and strips.',
          )
        : [],
    ],
  });
}

/** The roll from its end, each piece as it is cut, in it its finished edge. */
function onRoll({ pieces, places, cut }: ClothPlan, width: number): Shape[] {
  return [
    rect(0, 0, mm(cut), mm(width), { pen: 'visible' }),
    ...pieces.flatMap((piece, i) => {
      const { along, across } = places[i]!; // a place a piece
      const at = ([x, y]: Vec2): Point => [mm(along + x), mm(across + y)];
      const isUpper = piece.layer > 1 || piece.kind === 'strip';
      return [
        rect(mm(along), mm(across), mm(piece.long), mm(piece.wide), { pen: 'thin' }),
        hatch(piece.outline.map(at), isUpper ? 'resin' : 'plain', { pen: 'visible', part: piece.part }),
        ...piece.marks.flatMap((mark) => ticksOf(mark).map((tick) => line(tick.map(at), { pen: 'thin' }))),
        ...(isNumbered(piece, cut) ? [note(String(i + 1), { at: at(middleOf(piece)) })] : []),
      ];
    }),
  ];
}

/** A frame crosses the edge of a piece at both ends of its line; between them the piece keeps room for its number. */
function ticksOf({ from, to }: ClothPiece['marks'][number]): readonly (readonly Vec2[])[] {
  const at = (share: number): Vec2 => [
    from[0] + share * (to[0] - from[0]),
    from[1] + share * (to[1] - from[1]),
  ];
  return [
    [from, at(0.22)],
    [at(0.78), to],
  ];
}

/** Room for a number on a phone. */
const isNumbered = ({ wide, long }: ClothPiece, cut: number): boolean => Math.min(wide, long) > cut / 34;

function middleOf({ outline, wide }: ClothPiece): Vec2 {
  const xs = outline.map(([x]) => x);
  return [(Math.min(...xs) + Math.max(...xs)) / 2, wide / 2];
}

/** Places along an edge that are drawn. */
const LOOKS = 40;

/** The hull from the side and from above, below the roll: what lies where, its seams, and what is turned round a chine. */
function onHull(hull: Hull, planned: ClothPlan, v: ClothValues): Shape[] {
  const { faces, seams, dart } = planned;
  const top = -mm(v.width) * 0.35;
  const gap = mm(hull.length) * 0.12;
  const sheerTop = Math.max(...hull.edges.flatMap(({ points }) => points.map(([, , z]) => z)));
  const profile = ([x, , z]: Vec3): Point => [mm(x), top + mm(z - sheerTop)];
  const across = mm(hull.beam);
  const plan = ([x, y]: Vec3): Point => [mm(hull.length) + gap + mm(x), top - across / 2 + mm(y)];
  const starboard = ([x, y, z]: Vec3): Vec3 => [x, -y, z];
  const lines = hull.edges.map((edge) => edge.polyline(LOOKS));
  const numbers = (part: string) =>
    planned.pieces.flatMap((piece, i) =>
      piece.part === part && piece.kind === 'cloth' && piece.layer === 1 ? [i + 1] : [],
    );
  return [
    ...hull.panels.flatMap((panel): Shape[] => {
      const covered = faces.find(({ part }) => part === panel.name);
      const isUnder = panel.name === 'bottom';
      const seen = isUnder ? plan : profile;
      const [inner, outer] = [lines[panel.index]!, lines[panel.index + 1]!]; // a line an edge
      const around = isUnder
        ? [...outer, ...outer.toReversed().map(starboard)]
        : [...inner, ...outer.toReversed()];
      const fill = covered ? (covered.layers > 1 ? 'resin' : 'plain') : 'void';
      const own = numbers(panel.name);
      const at = seen(middleOfPanel(panel.strip.rulings, isUnder));
      return [
        hatch(around.map(seen), fill, { pen: 'visible', part: panel.name }),
        ...(covered
          ? seams
              .filter(({ face }) => face === covered)
              .flatMap((seam) => {
                const run = seam.face.face.inSpace(seam.axis, seam.at);
                return [run, ...(isUnder ? [run.map(starboard)] : [])].map((one) =>
                  line(one.map(seen), { pen: 'hidden' }),
                );
              })
          : []),
        ...(own.length > 0 && own.length <= 4 ? [note(own.join(', '), { at })] : []),
      ];
    }),
    ...lapsOnSides(hull, planned, v).map((run) => line(run.map(profile), { pen: 'hidden' })),
    ...(dart && dart.length > 0 ? [cutOpen(hull, dart.from, plan)] : []).flat(),
    ...(faces.some(({ part, sides }) => part === 'bottom' && sides === 2)
      ? [line(lines[0]!.map(plan), { pen: 'hidden' })]
      : []),
  ];
}

function middleOfPanel(
  rulings: readonly { readonly from: Vec3; readonly to: Vec3 }[],
  isUnder: boolean,
): Vec3 {
  const { from, to } = rulings[Math.round(rulings.length * 0.45)]!; // a strip has rulings
  const share = isUnder ? 0.5 : 0.55;
  return [0, 1, 2].map((axis) => from[axis]! + share * (to[axis]! - from[axis]!)) as unknown as Vec3;
}

/** How far up the panel above it the bottom's cloth is turned. */
function lapsOnSides(
  { panels }: Hull,
  { faces }: ClothPlan,
  { turn, further }: ClothValues,
): readonly (readonly Vec3[])[] {
  const bottom = faces.find(({ part }) => part === 'bottom');
  const above = panels[1];
  if (!bottom || !above) return [];
  const far = turn + (bottom.layers - 1) * further;
  return [
    above.strip.rulings.flatMap(({ from, to }): Vec3[] => {
      const length = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
      if (length <= far) return [];
      const share = far / length;
      return [
        [
          from[0] + share * (to[0] - from[0]),
          from[1] + share * (to[1] - from[1]),
          from[2] + share * (to[2] - from[2]),
        ],
      ];
    }),
  ];
}

function cutOpen(hull: Hull, from: number, plan: (point: Vec3) => Point): Shape[] {
  const keel = hull.edges[0]!; // every hull has a keel
  const start = keel.polyline(LOOKS * 4).filter((_, i) => (i / (LOOKS * 4)) * keel.length >= from);
  if (start.length < 2) return [];
  return [
    line(start.map(plan), { pen: 'outline' }),
    label(plan(start[Math.floor(start.length / 2)]!), 'cut open, wrapped round the stem', { toward: 's' }),
  ];
}

/** What rolls of other widths would take. */
export function byRoll(v: ClothValues, on: Pick<OnHand<ClothValues>, 'say' | 'with'>): Chart {
  const taken = rollWidths.flatMap((width) => {
    const other = on.with({ width });
    return isIssue(other) ? [] : [{ width, length: other.length }];
  });
  const least = taken.reduce(
    (best, one) => (one.length * one.width < best.length * best.width ? one : best),
    {
      width: v.width,
      length: v.length,
    },
  );
  return {
    title: 'Length to buy from rolls of other widths',
    says: `Of the rolls sold, one ${on.say(least.width, 'length')} wide is the least cloth: ${on.say(least.length, 'length')} of it.`,
    x: { label: 'width of the roll', kind: 'length' },
    y: { label: 'length to buy', kind: 'length', from: 0 },
    lines: [
      {
        name: 'length to buy',
        points: taken.map(({ width, length }) => [width, length] as const),
        as: 'dots',
      },
    ],
    points: [{ x: v.width, y: v.length, label: `this roll: ${on.say(v.length, 'length')}` }],
  };
}
