// From shapes and seated texts to the sheet's primitives. Each shape gives the same number
// of them whatever its numbers; what isn't there is an empty path or a text without lines.

import { onPaper, type Paper } from './berth';
import { HATCH, hatchLines } from './hatching';
import {
  arcPath,
  arrowPaths,
  circlePath,
  dotPath,
  headsPath,
  markPath,
  polyline,
  ringPath,
  round,
  strokesPath,
} from './path';
import type { Seat } from './seating';
import type { AreaShape, PlainShape, Shape, TextShape } from '../shapes';
import type { PathClass, Placed, PlacedPath, TextClass } from './sheet';
import type { Slab } from './slab';
import { ASCENT } from './text-size';

/** What a primitive takes over from its shape. */
const owner = (shape: Shape, of: number): Pick<PlacedPath, 'of' | 'part' | 'layer'> => ({
  of,
  ...(shape.part === undefined ? {} : { part: shape.part }),
  ...(shape.layer === undefined ? {} : { layer: shape.layer }),
});

export function placeShape(
  shape: PlainShape,
  of: number,
  paper: Paper,
  texts: readonly Slab[],
): PlacedPath[] {
  const path = (className: PathClass, d: string): PlacedPath => ({
    kind: 'path',
    ...owner(shape, of),
    d,
    className,
  });
  switch (shape.shape) {
    case 'line':
      return [
        path(
          `pen-${shape.pen}`,
          polyline(
            shape.points.map((p) => onPaper(paper, p)),
            shape.closed,
          ),
        ),
      ];
    case 'circle':
      return [path(`pen-${shape.pen}`, circlePath(shape, paper))];
    case 'arc':
      return [path(`pen-${shape.pen}`, arcPath(shape, paper))];
    case 'area':
      return areaPaths(shape, paper, texts, path);
    case 'mark':
      return [path(shape.form === 'dot' ? 'leader-dot' : 'pen-visible', markPath(shape, paper))];
    case 'arrow': {
      const { shaft, head } = arrowPaths(shape, paper);
      return [path(`pen-${shape.pen}`, shaft), path('arrowhead', head)];
    }
  }
}

function areaPaths(
  shape: AreaShape,
  paper: Paper,
  texts: readonly Slab[],
  path: (className: PathClass, d: string) => PlacedPath,
): PlacedPath[] {
  const rings = shape.rings.map((ring) => ring.map((p) => onPaper(paper, p)));
  const d = rings.map((ring) => polyline(ring, true)).join('');
  const paths = [path(`fill-${shape.fill}`, d)];
  const spacing = HATCH[shape.fill];
  if (spacing !== undefined) {
    const lines = hatchLines(rings, spacing, shape.falling, texts);
    paths.push(path(`hatch-${shape.fill}`, strokesPath(lines)));
  }
  if (shape.pen !== 'none') paths.push(path(`pen-${shape.pen}`, d));
  return paths;
}

const CLASS: { readonly [shape in TextShape['shape']]: TextClass } = {
  dim: 'dim-text',
  angle: 'dim-text',
  radius: 'dim-text',
  label: 'label-text',
  note: 'note-text',
};

/** Size of the numbers that refer to the key, px. */
const NUMBER = 13;

/** Thin lines, arrowheads or dot, ring, text: always these four. */
export function placeText(seat: Seat, paper: Paper): Placed[] {
  const { berth, shape } = seat;
  const { slab, setting, dot } = berth;
  const of = owner(shape, seat.of);
  const head: PathClass = shape.shape === 'label' ? 'leader-dot' : 'arrowhead';
  const ring = slab && setting.ringed ? ringPath([slab.x, slab.y], setting.width / 2 - 1) : '';
  return [
    { kind: 'path', ...of, d: strokesPath(berth.strokes), className: 'pen-dimension' },
    { kind: 'path', ...of, d: dot ? dotPath(dot, 1.9) : headsPath(berth.heads), className: head },
    { kind: 'path', ...of, d: ring, className: 'key-ring' },
    {
      kind: 'text',
      ...of,
      ...textPlace(seat, setting.ringed ? NUMBER : paper.size),
      lines: slab ? setting.lines : [],
      className: setting.ringed ? 'number-text' : CLASS[shape.shape],
    },
  ];
}

function textPlace(
  { berth }: Seat,
  size: number,
): { x: number; y: number; size: number; anchor: 'start' | 'middle' | 'end'; turn: number } {
  const { slab, setting, anchor } = berth;
  if (!slab) return { x: 0, y: 0, size, anchor, turn: 0 };
  // From the slab's centre back to the anchor, and up to the first baseline.
  const along = anchor === 'start' ? -slab.halfWidth : anchor === 'end' ? slab.halfWidth : 0;
  const down = setting.ringed ? 0.36 * size : ASCENT * size - slab.halfHeight;
  return {
    x: round(slab.x + along * slab.cos - down * slab.sin),
    y: round(slab.y + along * slab.sin + down * slab.cos),
    size,
    anchor,
    turn: round((Math.atan2(slab.sin, slab.cos) * 180) / Math.PI),
  };
}
