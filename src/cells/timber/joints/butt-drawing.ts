/** The inside of the panel between two frames with what stands behind the butt, and a section through it. */
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
  type Point,
  rectHatch,
  type Shape,
} from '../../../drawing';
import type { OnHand } from '../../form/define';

/** Screws of a row that are drawn; more could not be told apart. */
const MOST_DRAWN = 24;

interface Sizes {
  readonly kind: string;
  readonly skin: string;
  /** Half of what is free between the frames, and half the plate, mm. */
  readonly side: number;
  readonly half: number;
  readonly siding: number;
  readonly joint: number;
  readonly gap: number;
}

/** The values that are drawn. */
type Key =
  | 'freeBay'
  | 'half'
  | 'jointFrom'
  | 'jointLength'
  | 'limberGap'
  | 'narrowest'
  | 'perRow'
  | 'plateLength'
  | 'plateThickness'
  | 'plies'
  | 'room'
  | 'rowIn'
  | 'siding'
  | 'strengthKept'
  | 'tall'
  | 'thickness';
type ButtDrawn = Readonly<Record<Key, number> & Record<'kind' | 'skin' | 'frame', string>>;

export function drawButt(v: ButtDrawn, { say }: Pick<OnHand, 'say'>): Drawing {
  const of = (key: Key) => v[key];
  const length = (key: Key) => say(of(key), 'length');
  const kind = v.kind;
  const sizes: Sizes = {
    kind,
    skin: v.skin,
    side: Math.max(mm(of('freeBay')) / 2, 10),
    half: mm(of('half')),
    siding: mm(of('siding')),
    joint: mm(of('jointLength')),
    gap: Math.min(mm(of('limberGap')), mm(of('jointLength')) / 2),
  };
  const reach = Math.max(sizes.side, sizes.half);
  const times = Math.max(1, Math.min(4, Math.floor(reach / Math.max(sizes.half, 1))));
  return drawing({
    title: 'The butt from inside, and cut through',
    says: saysOf(kind, length, say(of('strengthKept'), 'share')),
    shapes: [
      bayView(v, sizes, length),
      sectionView(v, sizes, times, reach, length),
      note(
        `Below, the inside of the panel between the frames, to scale. Above, cut through the joint${times > 1 ? `, ${times} times as large` : ''}${kind === 'strap' ? '; the plies of glass are drawn apart' : ''}.`,
      ),
    ],
  });
}

function saysOf(kind: string, length: (key: Key) => string, kept: string): string {
  if (kind === 'bare') return `Two panels ${length('thickness')} thick glued end to end: ${kept} is kept.`;
  return `Midway between two frames, ${length('jointFrom')} from either, two panels ${length('thickness')} thick meet; ${length('plateLength')} across the joint, ${length('room')} free to each frame. About ${kept} is kept.`;
}

function bayView(v: ButtDrawn, s: Sizes, length: (key: Key) => string): Shape[] {
  const { side, half, joint, gap } = s;
  const frame = (x: number): Shape =>
    rectHatch(x, 0, s.siding, joint, 'cedar', { part: v.frame, falling: x > 0 });
  const behind: Shape[] =
    s.kind === 'bare'
      ? []
      : [
          rectHatch(-half, gap, 2 * half, joint - 2 * gap, s.kind === 'strap' ? 'resin' : 'ply', {
            part: s.skin,
            layer: 'plate',
          }),
          dim([-half, joint], [half, joint], length('plateLength'), { side: 'above', run: 'horizontal' }),
          dim([half, gap], [half, joint - gap], length('tall'), { side: 'right', run: 'vertical' }),
        ];
  return [
    rectHatch(-side, 0, 2 * side, joint, 'plain', { pen: 'thin', part: s.skin }),
    frame(-side - s.siding),
    frame(side),
    ...behind,
    line(
      [
        [0, 0],
        [0, joint],
      ],
      { pen: s.kind === 'bare' ? 'outline' : 'hidden', layer: 'joint' },
    ),
    ...(s.kind === 'block' ? screwsOf(v, s) : []),
    dim([-side, 0], [0, 0], length('jointFrom'), { side: 'below', run: 'horizontal' }),
    dim([-side, 0], [side, 0], length('freeBay'), { side: 'below', run: 'horizontal', level: 1 }),
  ];
}

/** Four rows: by the joint and by the edge, on either side. */
function screwsOf(v: ButtDrawn, { half, joint, gap }: Sizes): Shape[] {
  const rowIn = mm(v.rowIn);
  const count = Math.min(v.perRow, MOST_DRAWN);
  const room = joint - 2 * gap - 2 * rowIn;
  const at = (i: number) => (room > 0 && count > 1 ? gap + rowIn + (room * i) / (count - 1) : joint / 2);
  const apart = [2 * rowIn, half - 2 * rowIn, count > 1 ? room / (count - 1) : joint].filter(
    (gapTo) => gapTo > 0,
  );
  const arm = ARM * Math.min(...apart);
  return [-half + rowIn, -rowIn, rowIn, half - rowIn].flatMap((x) =>
    Array.from({ length: count }, (_, i) => crossAt([x, at(i)], arm)).flat(),
  );
}

/** Of the distance to the nearest screw: drawn to scale, crosses stand apart in the smallest drawing. */
const ARM = 0.3;

const crossAt = ([x, y]: Point, arm: number): Shape[] => [
  line(
    [
      [x - arm, y],
      [x + arm, y],
    ],
    { layer: 'screws' },
  ),
  line(
    [
      [x, y - arm],
      [x, y + arm],
    ],
    { layer: 'screws' },
  ),
];

function sectionView(
  v: ButtDrawn,
  s: Sizes,
  times: number,
  reach: number,
  length: (key: Key) => string,
): Shape[] {
  const thick = times * mm(v.thickness);
  const plate = times * mm(v.plateThickness);
  const half = times * s.half;
  const stub = Math.max(half, reach * 0.5) + reach * 0.15;
  const foot = s.joint + 0.35 * reach + plate;
  const top = foot + thick;
  const panel = (from: number, to: number, falling: boolean): Shape =>
    rectHatch(Math.min(from, to), foot, Math.abs(to - from), thick, 'ply', { falling, part: s.skin });
  const middle: Point = [stub * 0.8, foot + thick / 2];
  return [
    panel(-stub, 0, false),
    panel(0, stub, true),
    ...behindSection(v, { s, times, half, foot, top, plate, reach }),
    label(middle, `panel ${length('thickness')}`, { toward: 'ne' }),
    ...(s.kind === 'plate' || s.kind === 'block'
      ? [label([half * 0.5, foot - plate / 2], `behind it ${length('plateThickness')}`, { toward: 'e' })]
      : []),
    centreLine([0, foot - plate - 0.05 * reach], [0, top + 0.05 * reach]),
  ];
}

interface Cut {
  readonly s: Sizes;
  readonly times: number;
  readonly half: number;
  readonly foot: number;
  readonly top: number;
  readonly plate: number;
  readonly reach: number;
}

function behindSection(v: ButtDrawn, { s, times, half, foot, top, plate, reach }: Cut): Shape[] {
  if (s.kind === 'bare') return [];
  if (s.kind !== 'strap') {
    // Ends bevelled, so that nothing lodges behind them.
    const bevel = Math.min(plate, half / 2);
    const outline: Point[] = [
      [-half, foot],
      [half, foot],
      [half - bevel, foot - plate],
      [-half + bevel, foot - plate],
    ];
    return [hatch(outline, 'ply', { part: s.skin, layer: 'plate' })];
  }
  const plies = Math.min(v.plies, 6);
  const [widest, narrowest] = [times * mm(v.plateLength), times * mm(v.narrowest)];
  const apart = reach / 60;
  return Array.from({ length: plies }, (_, i) => {
    // The first is the narrowest and lies on the wood.
    const wide = plies > 1 ? narrowest + ((widest - narrowest) * i) / (plies - 1) : widest;
    return [top + (i + 1) * apart, foot - (i + 1) * apart].map((y) =>
      line(
        [
          [-wide / 2, y],
          [wide / 2, y],
        ],
        { pen: 'visible', part: s.skin, layer: 'glass' },
      ),
    );
  }).flat();
}
