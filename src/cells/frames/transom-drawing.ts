/** The transom seen square to its face, and from the side with plumb and slope. */
import { attempt } from '../../boat';
import type { TransomShape } from '../../boat/hull/transom-shape';
import {
  angleDim,
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
  radiusDim,
  rectHatch,
  type Shape,
} from '../../drawing';
import { isIssue } from '../../measure';
import type { OnHand } from '../form/define';
import { largerFace, shape as shapeInHand, type TransomAsked } from './transom-facts';

type Say = OnHand['say'];
type Place = readonly [y: number, u: number];

/** Both halves of a shape that is given for one, its top cut out in the middle; mm. */
export function bothSides(half: readonly Place[], notch: readonly Point[]): Point[] {
  const port = half.map(([y, u]): Point => [mm(y), mm(u)]);
  const starboard = port.map(([y, u]): Point => [-y, u]).toReversed();
  return [...starboard, ...port.slice(port[0]![0] === 0 ? 1 : 0), ...notch];
}

/** The values that the pictures read, in mm. */
type Length =
  | 'alongFace'
  | 'blankHeight'
  | 'blankWidth'
  | 'bottomThickness'
  | 'cutDepth'
  | 'cutHeight'
  | 'cutWidth'
  | 'draught'
  | 'halfAtCut'
  | 'pads'
  | 'radius'
  | 'raise'
  | 'thickness'
  | 'topUp';

/** What the drawings and the patterns of a transom go by. */
export type TransomDrawn = TransomAsked & Readonly<Record<Length | 'rake', number>>;

export function cutOut(v: TransomDrawn) {
  const of = (key: Length) => mm(v[key]);
  const depth = of('cutDepth');
  const half = of('cutWidth') / 2;
  const there = v.end === 'transom' && depth > 0 && half < of('halfAtCut');
  return { there, half, at: of('alongFace'), top: of('topUp'), radius: Math.min(of('radius'), half, depth) };
}

/** Down one side of the cut-out and up the other, from port to starboard, its corners round. */
export function cutOutLine(v: TransomDrawn): Point[] {
  const { there, half, at, top, radius } = cutOut(v);
  if (!there) return [];
  const steps = 6;
  const round = (side: 1 | -1) =>
    Array.from({ length: steps + 1 }, (_, i): Point => {
      const turn = (i / steps) * (Math.PI / 2);
      return [side * (half - radius + radius * Math.cos(turn)), at + radius - radius * Math.sin(turn)];
    });
  return [[half, top], ...round(1), ...round(-1).toReversed(), [-half, top]];
}

export function transomView(
  v: TransomDrawn,
  { hull, say, ask }: Pick<OnHand, 'say' | 'hull' | 'ask'>,
): Drawing {
  const made = attempt(() => {
    if (!hull) throw new Error('There is no hull to take the transom from.');
    return ask(shapeInHand);
  });
  if (isIssue(made)) return drawing({ title: 'Transom', says: made.issue, shapes: [note(made.issue)] });
  const length = (key: Length) => say(v[key], 'length');
  const stern = v.end === 'transom';
  const low = Math.min(0, ...made.outside.map(([, u]) => mm(u)));
  const tall = mm(Math.max(v.topUp, stern ? v.alongFace : 0));
  return drawing({
    title: `${made.station.label.charAt(0).toUpperCase()}${made.station.label.slice(1)}`,
    says: stern
      ? `Blank ${length('blankWidth')} wide and ${length('blankHeight')} high up the slope, raked ${say(v.rake, 'angle')}. The cut-out lies ${length('cutHeight')} plumb above the bottom, ${length('alongFace')} up the slope.`
      : `Blank ${length('blankWidth')} wide and ${length('blankHeight')} high up the slope, raked ${say(v.rake, 'angle')}.`,
    shapes: [
      ...faceView(made, ask(largerFace), v, say),
      // Under it, so that both are as large as the width allows.
      ...sideView(v, say, [0, low - tall - 0.35 * (tall - low) - 60]),
      note(
        `Above, its true shape, square to the face; dashed, the larger face. Below, from starboard, ${stern ? 'aft to the left' : 'forward to the right'}.`,
      ),
    ],
  });
}

function faceView(shape: TransomShape, larger: readonly Place[], v: TransomDrawn, say: Say): Shape[] {
  const length = (key: Length) => say(v[key], 'length');
  const { there, half, at, top, radius } = cutOut(v);
  const skin = bothSides(shape.outside, []);
  const wood = bothSides(shape.inside, cutOutLine(v));
  const sheer = shape.inside.at(-1)!; // every transom has a sheer
  const broad = Math.max(...shape.inside.map(([y]) => y));
  const motor: Shape[] = there
    ? [
        dim([-half, top], [half, top], length('cutWidth'), { side: 'above', run: 'horizontal' }),
        dim([half, at], [half, top], length('cutDepth'), { side: 'right', run: 'vertical' }),
        radiusDim([half - radius, at + radius], radius, -Math.PI / 4, `R ${length('radius')}`),
        dim([0, 0], [0, at], length('alongFace'), { side: 'left', run: 'vertical' }),
      ]
    : v.end === 'transom' && v.raise > 0
      ? [
          line(
            [
              [-half, top],
              [-half, at],
              [half, at],
              [half, top],
            ],
            { pen: 'ghost' },
          ),
          label([half, at], `the motor asks for ${length('raise')} more`, { toward: 'e' }),
          dim([0, 0], [0, at], length('alongFace'), { side: 'left', run: 'vertical' }),
        ]
      : [];
  return [
    line(skin, { pen: 'thin', closed: true }),
    hatch(wood, 'plain', { part: shape.station.name }),
    line(bothSides(larger, []), { pen: 'hidden', closed: true }),
    centreLine([0, -30], [0, Math.max(top, at) + 30]),
    ...motor,
    dim([-mm(larger.at(-1)![0]), top], [mm(larger.at(-1)![0]), top], length('blankWidth'), {
      side: 'above',
      run: 'horizontal',
      level: 1,
    }),
    dim([mm(sheer[0]), 0], [mm(sheer[0]), top], length('topUp'), { side: 'right', run: 'vertical' }),
    label([mm(broad) * 0.7, mm(shape.inside[1]![1]) * 0.5], 'bottom', { toward: 's' }),
  ];
}

/** From the side with the outside of the bottom at `foot`: the section on the centreline. */
function sideView(v: TransomDrawn, say: Say, [x0, z0]: Point): Shape[] {
  const length = (key: Length) => say(v[key], 'length');
  const of = (key: Length) => mm(v[key]);
  const stern = v.end === 'transom';
  const rake = Math.max(-1, Math.min(1, v.rake));
  const lean = stern ? -1 : 1;
  // Up the slope and inward from the outer face.
  const at = (up: number, inward: number): Point => [
    x0 + lean * (up * Math.sin(rake) - inward * Math.cos(rake)),
    z0 + up * Math.cos(rake) + inward * Math.sin(rake),
  ];
  const { there } = cutOut(v);
  const head = there ? of('alongFace') : of('topUp');
  const thick = of('thickness');
  const floor = of('bottomThickness');
  const run = Math.max(of('topUp') * 0.9, 200);
  const knee = Math.min(head * 0.7, run * 0.7);
  const inside = -lean;
  const floorLeft = Math.min(x0, x0 + inside * run);
  const foot: Point = [x0, z0];
  const cut = at(of('alongFace'), 0);
  return [
    rectHatch(floorLeft, z0, run, floor, 'ply', { part: 'bottom' }),
    hatch([at(floor, 0), at(head, 0), at(head, thick), at(floor, thick)], 'ply', {
      part: 'transom',
      falling: true,
    }),
    ...(there ? [line([at(head, 0), at(of('topUp'), 0), at(of('topUp'), thick), at(head, thick)])] : []),
    ...(stern
      ? [
          hatch(
            [
              at(head, thick),
              at(head, thick + of('pads')),
              at(head * 0.55, thick + of('pads')),
              at(head * 0.55, thick),
            ],
            'cedar',
          ),
          line([at(knee, thick), [x0 + inside * knee, z0 + floor], at(floor, thick)], { pen: 'visible' }),
          label([x0 + inside * knee * 0.5, z0 + floor + knee * 0.35], 'knee to the keelson', {
            toward: 'ne',
          }),
          dim([x0, z0], [cut[0], cut[1]], length('cutHeight'), { side: 'left', run: 'vertical', level: 1 }),
          dim(foot, cut, length('alongFace'), { side: 'left' }),
          ...water(v, say, [x0, z0], run, inside),
        ]
      : [dim(foot, at(of('topUp'), 0), length('topUp'), { side: 'right' })]),
    centreLine([x0, z0 - 20], [x0, z0 + of('topUp') * 1.05]),
    ...rakeAngle(foot, rake * lean, of('topUp') * 0.9, say(v.rake, 'angle')),
  ];
}

/** Anticlockwise from the right-hand leg to the left-hand one, plumb and slope. */
function rakeAngle(apex: Point, toRight: number, reach: number, text: string): Shape[] {
  if (Math.abs(toRight) < 0.01) return [];
  const plumb = Math.PI / 2;
  const slope = plumb - toRight;
  const [from, to] = toRight > 0 ? [slope, plumb] : [plumb, slope];
  return [angleDim(apex, from, to, text, { reach })];
}

function water(v: TransomDrawn, say: Say, [x0, z0]: Point, run: number, inside: number): Shape[] {
  const depth = v.draught;
  const level = z0 + mm(depth);
  const aft = x0 - inside * run * 0.35;
  return [
    line(
      [
        [aft, level],
        [x0, level],
      ],
      { pen: 'thin' },
    ),
    label(
      [aft, level],
      `water, ${say(Math.abs(depth), 'length')} ${depth < 0 ? 'below' : 'above'} the bottom`,
      {
        toward: depth < 0 ? 'nw' : 'sw',
      },
    ),
  ];
}
