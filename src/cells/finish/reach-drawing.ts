/** How far the stock of resin goes, on the hull: what is wetted out of each face, and where it stops. */
import type { Hull, Panel } from '../../boat';
import { type Drawing, drawing, hatch, label, line, mm, note, type Point, type Shape } from '../../drawing';
import type { OnHand } from '../form/define';
import { between, distance, type Vec3 } from '../../kernel';
import type { ClothPlan } from './cloth-plan';
import type { ClothReach } from './cloth-reach';
import type { ClothPiece } from './cloth-rules';

/** Places along an edge that are drawn. */
const LOOKS = 40;

/** One face seen: the port side, the bottom from below with both halves, the starboard side. */
interface Seen {
  readonly name: string;
  readonly panels: readonly { readonly panel: Panel; readonly side: 'port' | 'starboard' }[];
  readonly to: (point: Vec3) => Point;
}

interface Stock {
  readonly inHand: number;
  readonly sealEnds: number;
  readonly wetEnds: number;
  readonly total: number;
  readonly fillCoats: number;
  readonly fillsCoats: number;
}

type Found = ClothReach & { readonly planned: ClothPlan };

export function drawReach(hull: Hull, found: Found, stock: Stock, say: OnHand['say']): Drawing {
  const told = howFar(found, stock, say);
  return drawing({
    title: 'How far the stock in the shop goes',
    says: told,
    shapes: [
      reachOnHull(hull, found, { stops: `stops in piece ${found.stops}` }),
      note(
        'Hatched: cloth wetted out, from aft, in the order of laying. Both sides are drawn with the bow to the right.',
      ),
    ],
  });
}

function howFar({ planned, stops, shares }: Found, v: Stock, say: OnHand['say']): string {
  const stock = say(v.inHand, 'volume');
  if (v.inHand < v.sealEnds) return `With ${stock} in the shop no cloth is wetted out.`;
  const piece = planned.pieces[stops - 1];
  if (v.inHand < v.wetEnds && piece)
    return `${stock} wet out the pieces before piece ${stops}, ${piece.name}, and ${say(shares[stops - 1] ?? 0, 'share')} of it.`;
  if (v.inHand < v.total)
    return `${stock} wet out all cloth, and cover ${say(v.fillsCoats, 'number')} of ${say(v.fillCoats, 'count')} fill coats.`;
  return `${stock} wet out all cloth and fill its weave.`;
}

function reachOnHull(
  hull: Hull,
  { planned, shares, stops }: Found,
  says: { readonly stops: string },
): Shape[] {
  return views(hull).flatMap(({ name, panels, to }) => [
    ...panels.flatMap(({ panel, side }) =>
      wetted(panel, side, planned.pieces, shares).flatMap((piece) => [
        hatch(piece.around.map(to), 'resin', {
          pen: 'none',
          falling: piece.layer % 2 === 0,
          part: panel.name,
        }),
        ...(piece.at === stops
          ? [
              line(piece.end.map(to), { pen: 'outline' }),
              label(to(between(piece.end[0], piece.end[1], 0.5)), says.stops, { toward: 's' }),
            ]
          : []),
      ]),
    ),
    ...outlines(panels, to),
    label(to(headOf(panels)), name, { toward: 'n' }),
  ]);
}

/** Port above, bottom, starboard, the bow to the right in all of them. */
function views(hull: Hull): readonly Seen[] {
  const [bottom, ...others] = hull.panels;
  const [low, high] = heightsOf(hull);
  const gap = 0.09 * mm(hull.length);
  const tall = mm(high - low);
  const wide = bottom ? mm(bottom.outer.greatestHalfBreadth) : 0;
  const sides = others.length > 0 ? others : hull.panels;
  const on = (side: 'port' | 'starboard', of: readonly Panel[]) => of.map((panel) => ({ panel, side }));
  const profile =
    (top: number) =>
    ([x, , z]: Vec3): Point => [mm(x), top + mm(z - high)];
  const below = -tall - gap - wide;
  const last = others.length > 0 ? below - wide - gap : -tall - gap;
  return [
    { name: 'port side', panels: on('port', sides), to: profile(0) },
    ...(bottom && others.length > 0
      ? [
          {
            name: 'bottom, from above',
            panels: [...on('port', [bottom]), ...on('starboard', [bottom])],
            to: ([x, y]: Vec3): Point => [mm(x), below + mm(y)],
          },
        ]
      : []),
    { name: 'starboard side', panels: on('starboard', sides), to: profile(last) },
  ];
}

function heightsOf({ edges }: Hull): readonly [low: number, high: number] {
  const heights = edges.flatMap(({ points }) => points.map(([, , z]) => z));
  return [Math.min(...heights), Math.max(...heights)];
}

const toSide = ([x, y, z]: Vec3, side: 'port' | 'starboard'): Vec3 => [x, side === 'port' ? y : -y, z];

function outlines(panels: Seen['panels'], to: Seen['to']): Shape[] {
  return panels
    .flatMap(({ panel, side }) =>
      [panel.inner, panel.outer].map((edge) =>
        line(
          edge.polyline(LOOKS).map((point) => to(toSide(point, side))),
          { pen: 'visible', part: panel.name },
        ),
      ),
    )
    .concat(
      panels.flatMap(({ panel, side }) =>
        [panel.strip.rulings[0]!, panel.strip.rulings.at(-1)!].map(({ from, to: end }) =>
          // a strip has rulings
          line([to(toSide(from, side)), to(toSide(end, side))], { pen: 'visible', part: panel.name }),
        ),
      ),
    );
}

/** A place on the upper line of a view, for its name. */
function headOf(panels: Seen['panels']): Vec3 {
  const { panel } = panels.at(-1) ?? panels[0]!; // a view shows a panel
  const port = panels.find(({ side }) => side === 'port') ?? panels[0]!;
  const edge = (port.panel === panel ? port.panel : panel).outer;
  const point = edge.polyline(LOOKS)[Math.round(LOOKS * 0.35)]!; // so many and one
  return toSide(point, port.side);
}

interface Wetted {
  /** The piece, counted from 1 in the order of laying. */
  readonly at: number;
  readonly layer: number;
  readonly around: readonly Vec3[];
  readonly end: readonly [Vec3, Vec3];
}

/** What is wetted out of a panel on one side of the boat, piece by piece, from aft. */
function wetted(
  panel: Panel,
  side: 'port' | 'starboard',
  pieces: readonly ClothPiece[],
  shares: readonly number[],
): readonly Wetted[] {
  return pieces.flatMap((piece, i): Wetted[] => {
    const share = shares[i] ?? 0;
    if (piece.part !== panel.name || piece.kind !== 'cloth' || share <= 0) return [];
    if (piece.side !== 'both' && piece.side !== side) return [];
    const { index, count, across } = piece.run;
    // A run across takes its part of the length, one along its part of the width.
    const [from, to] = across ? [index / count, (index + share) / count] : [0, share];
    const [low, high] = across ? [0, 1] : [index / count, (index + 1) / count];
    const strip = cut(panel, from, to, low, high);
    const [inner, outer] = [strip.map(([a]) => toSide(a, side)), strip.map(([, b]) => toSide(b, side))];
    return [
      {
        at: i + 1,
        layer: piece.layer,
        around: [...inner, ...outer.toReversed()],
        end: [inner.at(-1)!, outer.at(-1)!], // a strip has two ends
      },
    ];
  });
}

/** A piece of a panel between two shares of its area, counted from aft, and two shares of its width. */
function cut(
  panel: Panel,
  from: number,
  to: number,
  low: number,
  high: number,
): readonly (readonly [Vec3, Vec3])[] {
  const lines = panel.strip.rulings.map(({ from: a, to: b }): readonly [Vec3, Vec3] => [
    between(a, b, low),
    between(a, b, high),
  ]);
  const areas = lines.slice(1).map(([a, b], i) => {
    const [c, d] = lines[i]!; // the line before
    return ((distance(a, c) + distance(b, d)) / 2) * ((distance(a, b) + distance(c, d)) / 2);
  });
  const whole = areas.reduce((sum, area) => sum + area, 0);
  const at = (share: number): readonly [number, number] => {
    let left = share * whole;
    for (let i = 0; i < areas.length; i += 1) {
      const area = areas[i]!;
      if (left <= area || i === areas.length - 1) return [i, area > 0 ? Math.min(1, left / area) : 1];
      left -= area;
    }
    return [0, 0];
  };
  const line = ([i, part]: readonly [number, number]): readonly [Vec3, Vec3] => [
    between(lines[i]![0], lines[i + 1]![0], part),
    between(lines[i]![1], lines[i + 1]![1], part),
  ];
  const [start, stop] = [at(from), at(to)];
  return [line(start), ...lines.slice(start[0] + 1, stop[0] + 1), line(stop)];
}
