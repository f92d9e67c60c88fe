// How a drawing at full size is spread over sheets of paper that a home printer takes.

import type { Ink, Inked } from './full-size-ink';
import type { Box, Point } from '../shapes';
import { textWidth } from '../set-out/text-size';

export type PaperName = 'A4' | 'Letter';

/** Upright sheets, mm: ISO 216 A4; Letter is 8 1/2 by 11 in (ANSI/ASME Y14.1 size A). */
export const PAPERS: { readonly [name in PaperName]: readonly [width: number, height: number] } = {
  A4: [210, 297],
  Letter: [215.9, 279.4],
};

/** What neighbouring sheets show alike, mm. */
export const OVERLAP = 10;
/** Left free at the edges of a sheet, where printers do not reach; below, room for the bar and the label; mm. */
export const MARGIN = { side: 10, top: 10, bottom: 22 } as const;

export interface Tile {
  /** From 0, at the top left. */
  readonly row: number;
  readonly column: number;
  /** What it shows of the drawing, overlaps included, mm. */
  readonly window: Box;
  /** False where the drawing has nothing: the sheet is not printed. */
  readonly printed: boolean;
}

export interface Tiling {
  /** Of the sheet as it is turned, mm. */
  readonly width: number;
  readonly height: number;
  readonly rows: number;
  readonly columns: number;
  /** From the left edge of one tile to that of the next, and from top to top, mm. */
  readonly step: Point;
  /** Row by row from the top left. */
  readonly tiles: readonly Tile[];
}

/** The tiling with the sheet upright or lying, whichever prints fewer sheets. */
export function tile(of: Inked, paper: PaperName): Tiling {
  const [short, long] = PAPERS[paper];
  const upright = tilesOn(of, short, long);
  const lying = tilesOn(of, long, short);
  return sheetsOf(lying) < sheetsOf(upright) ? lying : upright;
}

export const sheetsOf = ({ tiles }: Tiling): number => tiles.filter(({ printed }) => printed).length;

function tilesOn(of: Inked, width: number, height: number): Tiling {
  const wide = width - 2 * MARGIN.side;
  const high = height - MARGIN.top - MARGIN.bottom;
  const step: Point = [wide - OVERLAP, high - OVERLAP];
  const columns = Math.max(1, Math.ceil((of.width - OVERLAP) / step[0]));
  const rows = Math.max(1, Math.ceil((of.height - OVERLAP) / step[1]));
  // What the last sheets have to spare is shared out on both sides.
  const left = (of.width - columns * step[0] - OVERLAP) / 2;
  const top = of.height - (of.height - rows * step[1] - OVERLAP) / 2;
  const tiles = Array.from({ length: rows * columns }, (_, i): Tile => {
    const column = i % columns;
    const row = Math.floor(i / columns);
    const from: Point = [left + column * step[0], top - row * step[1]];
    const window = { left: from[0], top: from[1], right: from[0] + wide, bottom: from[1] - high };
    const printed = of.ink.some((ink) => (ink.ink === 'text' ? inside(window, ink.at) : shows(window, ink)));
    return { row, column, window, printed };
  });
  // Sheets that hang together only over blank ones could not be joined without them.
  const all = { width, height, rows, columns, step, tiles };
  return isJoined(all) ? all : { ...all, tiles: tiles.map((one) => ({ ...one, printed: true })) };
}

/** Whether every printed sheet can be reached from the first over printed neighbours. */
function isJoined({ tiles, columns }: Tiling): boolean {
  const waiting = new Set(tiles.flatMap((one, i) => (one.printed ? [i] : [])));
  const reached = [...waiting].slice(0, 1);
  for (const at of reached) {
    waiting.delete(at);
    const column = at % columns;
    const beside = [column > 0 ? at - 1 : -1, column + 1 < columns ? at + 1 : -1, at - columns, at + columns];
    for (const next of beside) if (waiting.delete(next)) reached.push(next);
  }
  return waiting.size === 0;
}

/** Whether any of the ink lies in a window; of a text, whether it may reach into it. */
export function shows({ left, right, bottom, top }: Box, ink: Ink): boolean {
  if (ink.ink === 'text') {
    const reach = textWidth(ink.text, ink.size);
    return inside(
      { left: left - reach, right: right + reach, bottom: bottom - reach, top: top + reach },
      ink.at,
    );
  }
  const window = { left, right, bottom, top };
  return ink.points.some(
    (point, i) => inside(window, point) || crosses(window, ink.points[i - 1] ?? point, point),
  );
}

const inside = ({ left, right, bottom, top }: Box, [x, y]: Point): boolean =>
  x >= left && x <= right && y >= bottom && y <= top;

/** Whether a stroke passes through a window: what is left of it, cut at all four sides (Liang and Barsky). */
function crosses({ left, right, bottom, top }: Box, [x, y]: Point, [toX, toY]: Point): boolean {
  let from = 0;
  let to = 1;
  const cut = (run: number, room: number): void => {
    if (run === 0) to = room < 0 ? -1 : to;
    else if (run < 0) from = Math.max(from, room / run);
    else to = Math.min(to, room / run);
  };
  cut(x - toX, x - left);
  cut(toX - x, right - x);
  cut(y - toY, y - bottom);
  cut(toY - y, top - y);
  return from <= to;
}
