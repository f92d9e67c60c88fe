// What stands under a drawing: scale bar, the key to numbers, and what is drawn and how it is read.

import { EDGE } from './fit';
import { polyline } from './path';
import { scaleBar, type ScaleUnits } from './scale-bar';
import type { KeyLine, Placed, PlacedText, TextClass } from './sheet';
import { ASCENT, LINE, TALL, wrap } from './text-size';

export interface FootParts {
  readonly width: number;
  readonly scale: number;
  readonly size: number;
  readonly units: ScaleUnits;
  readonly bar: boolean;
  readonly key: readonly KeyLine[];
  /** One key primitive is kept for each of these, used or not. */
  readonly keyPlaces: number;
  /** What is drawn, and the notes on how it is read: one paragraph. */
  readonly caption: readonly string[];
}

/** Height of the scale bar, px, and how much of the width it may take. */
const BAR = 5;
const BAR_SHARE = 0.36;
const BAR_MOST = 220;
/** Between the parts of the foot, px. */
const GAP = 8;

/** The foot's primitives with its top at `top`, and where it ends, px. */
export function foot(
  parts: FootParts,
  top: number,
): { readonly marks: readonly Placed[]; readonly bottom: number } {
  const { width, size } = parts;
  const left = EDGE + 2;
  const marks: Placed[] = [];
  let y = top;

  const text = (words: string, className: TextClass): PlacedText => {
    const lines = words === '' ? [] : wrap(words, size, width - 2 * left);
    const baseline = y + ASCENT * size;
    if (lines.length > 0) y += (TALL + LINE * (lines.length - 1)) * size + GAP / 2;
    return { kind: 'text', of: null, x: left, y: baseline, lines, size, anchor: 'start', turn: 0, className };
  };

  if (parts.bar) {
    const found = scaleBar(parts.scale, Math.min(BAR_MOST, BAR_SHARE * width), parts.units);
    const middle = y + (TALL * size) / 2;
    const bar = (from: number, to: number): string =>
      polyline(
        [
          [left + from, middle - BAR / 2],
          [left + to, middle - BAR / 2],
          [left + to, middle + BAR / 2],
          [left + from, middle + BAR / 2],
        ],
        true,
      );
    const solid = Array.from({ length: found?.parts ?? 0 }, (_, i) => i)
      .filter((i) => i % 2 === 0)
      .map((i) => bar((i * found!.width) / found!.parts, ((i + 1) * found!.width) / found!.parts));
    marks.push(
      { kind: 'path', of: null, d: found ? bar(0, found.width) : '', className: 'pen-thin' },
      { kind: 'path', of: null, d: solid.join(''), className: 'bar-solid' },
      {
        kind: 'text',
        of: null,
        x: left + (found?.width ?? 0) + 7,
        y: y + ASCENT * size,
        lines: found ? [found.text] : [],
        size,
        anchor: 'start',
        turn: 0,
        className: 'bar-text',
      },
    );
    if (found) y += TALL * size + GAP;
  }
  for (let i = 0; i < parts.keyPlaces; i++) {
    const line = parts.key[i];
    marks.push(text(line ? (line.number > 0 ? `${line.number}: ${line.text}` : line.text) : '', 'key-text'));
  }
  if (parts.caption.length > 0) marks.push(text(parts.caption.join(' '), 'caption-text'));
  return { marks, bottom: y };
}
