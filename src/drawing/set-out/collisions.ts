// What must not remain on a sheet, found from its finished primitives alone, so that it
// judges the setting out without believing it.

import type { PlacedPath, PlacedText, Sheet } from './sheet';
import { makeSlab, slabsMeet, within, type Slab, type Stroke } from './slab';
import { ASCENT, textHeight, textWidth } from './text-size';

export type Collision =
  | { readonly what: 'text on text'; readonly a: PlacedText; readonly b: PlacedText }
  | { readonly what: 'line through text'; readonly a: PlacedText; readonly b: PlacedPath }
  | { readonly what: 'text off the sheet'; readonly a: PlacedText };

/** Less than this is rounding, px. */
const TOUCH = 0.1;

/** The paper that a placed text covers, by the table of character widths; null for one without lines. */
export function textSlab({ x, y, lines, size, anchor, turn }: PlacedText): Slab | null {
  if (lines.length === 0) return null;
  const halfWidth = Math.max(...lines.map((l) => textWidth(l, size))) / 2;
  const halfHeight = textHeight(lines.length, size) / 2;
  const cos = Math.cos((turn * Math.PI) / 180);
  const sin = Math.sin((turn * Math.PI) / 180);
  const along = anchor === 'start' ? halfWidth : anchor === 'end' ? -halfWidth : 0;
  const down = halfHeight - ASCENT * size;
  return makeSlab(
    x + along * cos - down * sin,
    y + along * sin + down * cos,
    halfWidth,
    halfHeight,
    cos,
    sin,
  );
}

/** Texts on texts, thin lines and arrowheads through texts of others, and texts that leave the sheet. */
export function collisions(sheet: Sheet): readonly Collision[] {
  const texts: { text: PlacedText; slab: Slab }[] = [];
  const lines: { path: PlacedPath; strokes: Stroke[] }[] = [];
  for (const mark of sheet.marks) {
    if (mark.kind === 'text') {
      const slab = textSlab(mark);
      if (slab) texts.push({ text: mark, slab });
    } else if (THIN.has(mark.className)) {
      lines.push({ path: mark, strokes: strokesOf(mark.d) });
    }
  }

  const found: Collision[] = [];
  for (const [i, { text: a, slab }] of texts.entries()) {
    const beyond =
      slab.x - slab.reachX < -TOUCH ||
      slab.y - slab.reachY < -TOUCH ||
      slab.x + slab.reachX > sheet.width + TOUCH ||
      slab.y + slab.reachY > sheet.height + TOUCH;
    if (beyond) found.push({ what: 'text off the sheet', a });
    for (const { text: b, slab: other } of texts.slice(i + 1)) {
      if (slabsMeet(slab, other, -TOUCH)) found.push({ what: 'text on text', a, b });
    }
    for (const { path: b, strokes } of lines) {
      if (b.of === a.of) continue;
      if (strokes.some((s) => within(slab, s, -TOUCH))) found.push({ what: 'line through text', a, b });
    }
  }
  return found;
}

const THIN: ReadonlySet<string> = new Set(['pen-dimension', 'arrowhead', 'leader-dot']);

/** The straight strokes of path data made of M, L and Z, as all thin lines are. */
export function strokesOf(d: string): Stroke[] {
  const strokes: Stroke[] = [];
  let [startX, startY, x, y] = [0, 0, 0, 0];
  for (const [, command, first, second] of d.matchAll(/([MLZ])(?:(-?[\d.]+) (-?[\d.]+))?/g)) {
    const toX = command === 'Z' ? startX : Number(first);
    const toY = command === 'Z' ? startY : Number(second);
    if (command === 'M') [startX, startY] = [toX, toY];
    else strokes.push([x, y, toX, toY]);
    [x, y] = [toX, toY];
  }
  return strokes;
}
