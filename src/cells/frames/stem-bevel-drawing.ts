/** A stem cut square to its length, its outer face up: what is left of it, and the two wedges that go; mm. */
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
  type Shape,
} from '../../drawing';
import type { OnHand } from '../form/define';

/** No bevel is drawn to leave less than this share of the face, or to run farther back than the wood is deep. */
const LEAST = 0.04;

/** The values that are drawn. */
type Key = 'back' | 'entry' | 'faceLeft' | 'inset' | 'landing' | 'moulded' | 'sideThickness' | 'siding';
type StemDrawn = Readonly<Record<Key, number> & Record<'post', string>>;

export function stemSection(v: StemDrawn, { say }: Pick<OnHand, 'say'>): Drawing {
  const of = (key: Key) => mm(v[key]);
  const length = (key: Key) => say(v[key], 'length');
  const angle = (key: Key) => say(v[key], 'angle');
  const entry = v.entry;
  const half = of('siding') / 2;
  const deep = of('moulded');
  // As much of the bevel as there is wood for.
  const share = Math.min(
    1,
    of('inset') > 0 ? (half * (1 - LEAST)) / of('inset') : 1,
    of('back') > 0 ? (deep * (1 - LEAST)) / of('back') : 1,
  );
  const [inset, back] = [of('inset') * share, of('back') * share];
  const face = half - inset;
  const skin = of('sideThickness');
  const left: Point[] = [
    [-half, -deep],
    [half, -deep],
    [half, -back],
    [face, 0],
    [-face, 0],
    [-half, -back],
  ];
  const sternward = v.post === 'sternpost';
  const outer = sternward ? 'after face' : 'forward face';
  const run = Math.max(of('landing') * share * 1.9, 1.5 * back);
  const wedges = ([1, -1] as const).map((side) =>
    hatch(
      [
        [side * half, -back],
        [side * half, 0],
        [side * face, 0],
      ],
      'cedar',
      { pen: 'ghost', falling: true },
    ),
  );
  return drawing({
    title: `The ${sternward ? 'sternpost' : 'stem'} cut square to its length, ${outer} up`,
    says: `The skin stands ${angle('entry')} off the centreline. Each bevel begins ${length('back')} back on the side, takes ${length('inset')} off each side of the face and leaves ${of('faceLeft') > 0 ? length('faceLeft') : 'nothing of it'}.`,
    shapes: [
      hatch(left, 'cedar', { part: 'side' }),
      ...(inset > 1e-3 && back > 1e-3 ? wedges : []),
      ...([1, -1] as const).map((side) => planking(side, [face, 0], entry, run, skin)),
      centreLine([0, -deep * 1.1], [0, deep * 0.18]),
      dim([-half, -deep], [half, -deep], length('siding'), { side: 'below' }),
      of('faceLeft') > 0 ? dim([-face, 0], [face, 0], length('faceLeft'), { side: 'above', level: 1 }) : [],
      dim([half, -back], [half, 0], length('back'), { side: 'right', run: 'vertical', level: 1 }),
      dim([-half, 0], [-face, 0], length('inset'), { side: 'above' }),
      ...(entry > 0.01
        ? [angleDim([-half, -back], Math.PI / 2 - entry, Math.PI / 2, angle('entry'), { reach: back })]
        : []),
      label([half, -back], 'bearding line', { toward: 'e' }),
      note(outer, { at: [0, deep * 0.35] }),
      note('Hatched the other way, in a dashed outline: the wood that goes.'),
      ...(share < 1 ? [note('The bevel is drawn only as far as there is wood for it.')] : []),
    ],
  });
}

/** The side on its bevel, from the outer face back; `at` is the edge of the face to starboard. */
function planking(side: 1 | -1, [x, y]: Point, entry: number, run: number, skin: number): Shape {
  const along: Point = [Math.sin(entry), -Math.cos(entry)];
  const out: Point = [Math.cos(entry), Math.sin(entry)];
  // Trimmed flush with the face, so that its outer edge lies farther out by the skin over the cosine.
  const head = x + skin / Math.max(Math.cos(entry), 0.08);
  const foot: Point = [x + run * along[0], y + run * along[1]];
  const points: Point[] = [[x, y], foot, [foot[0] + skin * out[0], foot[1] + skin * out[1]], [head, y]];
  return line(
    points.map(([px, py]): Point => [side * px, py]),
    { pen: 'visible', closed: true, part: 'side' },
  );
}
