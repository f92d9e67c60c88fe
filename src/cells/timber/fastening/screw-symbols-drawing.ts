/** The screws of a joint in their true size: on their heads, or from the side. */
import type { FrameScrew, ScrewedOn } from '../../../boat/joinery/frame-screws';
import { circle, hatch, line, mm, type Point, type Shape } from '../../../drawing';
import type { Vec2 } from '../../../kernel';
import {
  between,
  crossesOf,
  type NumberedScrew,
  rowLines,
  type ScrewCross,
  screwRows,
} from './screw-symbols';
import type { ScrewsInHand } from './screws-in-hand';

type Laid = Pick<ScrewsInHand, 'joint' | 'screws'>;

/** Across a head, through what is screwed on, and into the member, m. */
interface Sizes {
  readonly head: number;
  readonly topThickness: number;
  readonly hold: number;
}

export const SCREWS = { layer: 'screws' } as const;

export const onPaper = ([y, z]: Vec2): Point => [mm(y), mm(z)];
export const ring = (points: readonly Vec2[]): Point[] => points.map(onPaper);
export const moved = ([y, z]: Vec2, by: number, [dy, dz]: Vec2): Vec2 => [y + by * dy, z + by * dz];

/** Through skin and keelson there is one row, along an edge: what was moved there is said and not drawn twice. */
export const crossesAt = (screws: readonly FrameScrew[], { fastened }: ScrewedOn, v: Sizes) =>
  crossesOf(screws, v.head / 2).filter(({ of }) => of === null || fastened === 'plate');

/** Each screw once, where it stands; a dot in those moved; a thin line along each row of a plate. */
export function screwShapes({ joint, screws }: Laid, v: Sizes): Shape[] {
  const rows = screwRows(screws);
  const radius = v.head / 2;
  return [
    ...(joint.fastened === 'plate' ? rowLines(rows, radius) : []).map((tie) =>
      line(ring(tie), { pen: 'thin', ...SCREWS }),
    ),
    ...crossesAt(screws, joint, v).flatMap((cross) => crossShapes(cross, radius)),
    ...rows.flatMap((row) => row.screws).flatMap((screw) => screwSymbol(screw, joint, v)),
  ];
}

function crossShapes({ at, reach, of }: ScrewCross, radius: number): Shape[] {
  const [x, y] = onPaper(at);
  const arm = mm(reach) * Math.SQRT1_2;
  const link = of && between(at, of.at, 0, radius);
  return [
    ...[arm, -arm].map((rise) =>
      line(
        [
          [x - arm, y - rise],
          [x + arm, y + rise],
        ],
        { pen: 'visible', ...SCREWS },
      ),
    ),
    ...(link ? [line(ring(link), { pen: 'dimension', ...SCREWS })] : []),
  ];
}

/** The dot of a moved screw, in true size too, so that it meets no neighbour in a small drawing. */
const disc = ([x, y]: Point, radius: number): Point[] =>
  Array.from({ length: CORNERS }, (_, i) => {
    const turn = (2 * Math.PI * i) / CORNERS;
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
  });
const CORNERS = 24;
/** Of the head's radius. */
const IN_RING = 0.55;

/** Seen on its head in a plate; else from the side, its head outside the boat. */
function screwSymbol({ at, clash, from, member }: NumberedScrew, joint: ScrewedOn, v: Sizes): Shape[] {
  const dot = mm(v.head / 2) * (joint.fastened === 'plate' ? IN_RING : 1);
  const shifted = clash === '' ? [] : [hatch(disc(onPaper(at), dot), 'glue', { pen: 'none', ...SCREWS })];
  if (joint.fastened === 'plate')
    return [
      circle(onPaper(at), mm(v.head) / 2, { pen: from === 'other' ? 'hidden' : 'visible', ...SCREWS }),
      ...shifted,
    ];
  const into: Vec2 = joint.fastened === 'skin' ? member.inward : [0, 1];
  const square: Vec2 = [-into[1], into[0]];
  const [out, point] = [moved(at, -v.topThickness, into), moved(at, v.hold, into)];
  return [
    line(ring([out, point]), { pen: 'outline', ...SCREWS }),
    line(ring([moved(out, -v.head / 2, square), moved(out, v.head / 2, square)]), {
      pen: 'outline',
      ...SCREWS,
    }),
    ...shifted,
  ];
}
