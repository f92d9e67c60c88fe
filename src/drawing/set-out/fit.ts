// How large a drawing comes out on its sheet: one scale both ways, the geometry as large
// as the margins that the texts need allow.

import { type Paper } from './berth';
import type { Seat } from './seating';
import type { Box, Shape } from '../shapes';
import type { Margins } from './sheet';

/** Clear paper at the edge of the sheet, px. */
export const EDGE = 6;
/** Beyond the geometry for the width of heavy lines, px. */
const RIM = 4;
/**
 * The geometry keeps at least these shares of the field, however much the texts ask for:
 * across, texts that then don't fit go to the key; up and down, the sheet grows.
 */
const LEAST_WIDTH = 0.4;
const LEAST_HEIGHT = 0.7;

/** Where the drawing may lie, px. */
export interface DrawingField {
  readonly width: number;
  readonly maxHeight: number;
  /** Fixed, px for each mm; null to take as much as there is. */
  readonly scale: number | null;
}

/** Lays the geometry's extents on paper within margins; the top of the field is at y = 0. */
export function fit(box: Box, margins: Margins, size: number, field: DrawingField): Paper {
  const wide = box.right - box.left;
  const high = box.top - box.bottom;
  const width = field.width - 2 * EDGE;
  const byWidth = Math.max(width - margins.left - margins.right, LEAST_WIDTH * width) / wide;
  const byHeight =
    Math.max(field.maxHeight - margins.top - margins.bottom, LEAST_HEIGHT * field.maxHeight) / high;
  // A point alone has no size to fit: one to one is as good as any.
  const free = Math.min(byWidth, byHeight);
  const scale = field.scale ?? (Number.isFinite(free) ? free : 1);

  const spare = width - margins.left - margins.right - scale * wide;
  // What is left over, or lacks, falls to both sides alike.
  const left = field.scale ? margins.left : EDGE + margins.left + spare / 2;
  const top = margins.top;
  return {
    scale,
    origin: [left - scale * box.left, top + scale * box.top],
    left,
    top,
    right: left + scale * wide,
    bottom: top + scale * high,
    size,
  };
}

/** Margins to begin with: for each side that has dimensions, room for one or two rows of them. */
export function firstMargins(shapes: readonly Shape[], size: number): Margins {
  const rows = { above: 0, below: 0, left: 0, right: 0 };
  for (const shape of shapes) if (shape.shape === 'dim') rows[shape.side] += 1;
  const depth = (count: number): number =>
    count === 0 ? RIM : Math.min(2, count) * (size + 9) + (count === 1 ? 12 : 6);
  return {
    left: depth(rows.left),
    right: depth(rows.right),
    top: depth(rows.above),
    bottom: depth(rows.below),
  };
}

/** Margins that texts and their lines take in fact, in steps of 4 px so that small changes don't move the drawing. */
export function marginsOf(seats: readonly Seat[], paper: Paper): Margins {
  const need = (beyond: (seat: Seat) => number): number =>
    4 * Math.ceil(Math.max(RIM, ...seats.map(beyond)) / 4);
  return {
    left: need((s) => paper.left - s.berth.left),
    right: need((s) => s.berth.right - paper.right),
    top: need((s) => paper.top - s.berth.top),
    bottom: need((s) => s.berth.bottom - paper.bottom),
  };
}
