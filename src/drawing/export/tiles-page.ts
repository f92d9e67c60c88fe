// The printed sheets: the part of the drawing in its window, marks to join sheets by, a bar to measure.

import type { Ink, Inked, InkLine, InkText } from './full-size-ink';
import type { Box, Pen, Point } from '../shapes';
import { textWidth } from '../set-out/text-size';
import { MARGIN, OVERLAP, type PaperName, sheetsOf, shows, type Tile, tile, type Tiling } from './tiles';

/** A sheet of paper, mm, y up from its lower left corner. */
export interface Page {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  /** Ink that is cut off at the window's edges. */
  readonly within: { readonly window: Box; readonly ink: readonly Ink[] } | null;
  readonly ink: readonly Ink[];
}

/** The sheets of a drawing; where there are several, first one that shows how they are joined. */
export function pagesOf(of: Inked, paper: PaperName): Page[] {
  const tiling = tile(of, paper);
  const printed = tiling.tiles.filter((one) => one.printed);
  const pages = printed.map((one, i) => tilePage(of, tiling, one, `sheet ${i + 1} of ${printed.length}`));
  return pages.length > 1 ? [joiningPage(of, tiling), ...pages] : pages;
}

const line = (points: readonly Point[], pen: Pen = 'thin'): InkLine => ({ ink: 'line', points, pen });

const words = (at: Point, text: string, size = 3.2, more: Partial<InkText> = {}): InkText => ({
  ink: 'text',
  at,
  text,
  size,
  anchor: 'start',
  turn: 0,
  bold: false,
  ...more,
});

function tilePage(of: Inked, tiling: Tiling, one: Tile, sheet: string): Page {
  const { width, height } = tiling;
  const window: Box = {
    left: MARGIN.side,
    right: width - MARGIN.side,
    bottom: MARGIN.bottom,
    top: height - MARGIN.top,
  };
  const shift: Point = [window.left - one.window.left, window.top - one.window.top];
  const place = `row ${one.row + 1}, column ${one.column + 1} of ${tiling.rows} × ${tiling.columns}; ${sheet}`;
  return {
    title: `${of.title}: ${place}`,
    width,
    height,
    within: {
      window,
      ink: of.ink.filter((ink) => shows(one.window, ink)).map((ink) => moved(ink, shift)),
    },
    ink: [
      ...joints(tiling, one, window),
      ...bar([MARGIN.side, 8]),
      ...signature(of.title, place, window.right, width - 2 * MARGIN.side - BAR - 8),
    ],
  };
}

export function moved(ink: Ink, [dx, dy]: Point): Ink {
  if (ink.ink === 'text') return { ...ink, at: [ink.at[0] + dx, ink.at[1] + dy] };
  return { ...ink, points: ink.points.map(([x, y]): Point => [x + dx, y + dy]) };
}

/**
 * Crosses at the corners that four sheets share, ticks in the margins to trim by, and dashed lines to which
 * the sheets on the right and above are laid.
 */
function joints({ step, columns, tiles }: Tiling, one: Tile, window: Box): Ink[] {
  const { left, right, bottom, top } = window;
  const netRight = left + step[0];
  const netTop = bottom + step[1];
  const printed = (row: number, column: number): boolean =>
    column >= 0 && column < columns && (tiles[row * columns + column]?.printed ?? false);
  const arm = 3;
  const ink: Ink[] = [];
  const stroke = (from: Point, to: Point, pen?: Pen) => ink.push(line([from, to], pen));
  for (const x of [left, netRight]) {
    stroke([x, top + 1], [x, top + 7]);
    stroke([x, bottom - 1], [x, bottom - 7]);
    for (const y of [bottom, netTop]) {
      stroke([x - arm, y], [x + arm, y]);
      stroke([x, y - arm], [x, y + arm]);
    }
  }
  for (const y of [bottom, netTop]) {
    stroke([left - 1, y], [left - 7, y]);
    stroke([right + 1, y], [right + 7, y]);
  }
  if (printed(one.row, one.column + 1)) {
    stroke([netRight, bottom], [netRight, top], 'hidden');
    const says = `column ${one.column + 2} lies to this line`;
    ink.push(words([netRight + OVERLAP / 2, bottom + 6], says, 2.4, { turn: Math.PI / 2 }));
  }
  if (printed(one.row - 1, one.column)) {
    stroke([left, netTop], [right, netTop], 'hidden');
    ink.push(words([left + 6, netTop + OVERLAP / 2], `row ${one.row} lies to this line`, 2.4));
  }
  return ink;
}

const box = (left: number, bottom: number, right: number, top: number): readonly Point[] => [
  [left, bottom],
  [right, bottom],
  [right, top],
  [left, top],
  [left, bottom],
];

/** Of the bar on every sheet, mm. */
const BAR = 100;

/** A bar of 100 mm from a point, in two halves, its ends ticked. */
function bar([x, y]: Point): Ink[] {
  const tick = (at: number) =>
    line([
      [at, y - 2.5],
      [at, y + 2.5],
    ]);
  return [
    { ink: 'solid', points: box(x, y - 1, x + BAR / 2, y + 1), white: false },
    line(box(x, y - 1, x + BAR, y + 1)),
    tick(x),
    tick(x + BAR),
    words([x, y - 5.5], '100 mm = 3 15/16 in: measure it before you cut; print at 100 %, not fitted', 2.6),
  ];
}

/** Title and place of a sheet, right-aligned beside the bar, as small as they must be. */
function signature(title: string, place: string, right: number, room: number): Ink[] {
  return [title, place].map((text, i) =>
    words([right, 9.5 - 4.5 * i], text, Math.min(3.2, room / textWidth(text, 1)), {
      anchor: 'end',
      bold: i === 0,
    }),
  );
}

const HOW = [
  'Print every sheet at 100 % (actual size), not fitted to the page, and measure the bar on each.',
  'Trim the left and the lower edge of each sheet at the ticks, where it has a neighbour there.',
  'Lay it over its neighbours to their dashed lines until the crosses meet; tape. Begin at the lower left.',
  'Cut and mark along the middle of the lines.',
] as const;

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

/** The drawing in small with the sheets' edges and places, what to do, and lengths to check a sheet by. */
function joiningPage(of: Inked, tiling: Tiling): Page {
  const { width, height, step, columns, rows, tiles } = tiling;
  const room = width - 2 * MARGIN.side;
  const high = height - MARGIN.top - MARGIN.bottom - 30 - 6 * HOW.length;
  const scale = Math.min(room / (columns * step[0] + OVERLAP), high / (rows * step[1] + OVERLAP));
  const corner: Point = [MARGIN.side, height - MARGIN.top - 14];
  const first = tiles[0]!; // there is at least one tile
  const at = ([x, y]: Point): Point => [
    corner[0] + (x - first.window.left) * scale,
    corner[1] + (y - first.window.top) * scale,
  ];
  const sketch = of.ink.flatMap((ink): Ink[] =>
    ink.ink === 'line' && ink.pen !== 'dimension'
      ? [{ ...ink, points: ink.points.map(at), pen: 'thin' }]
      : [],
  );
  const grid = tiles.flatMap((one): Ink[] => {
    const { left, bottom } = one.window;
    const [x0, y0] = at([left, bottom]);
    const [x1, y1] = at([left + step[0], bottom + step[1]]);
    const name = one.printed ? `row ${one.row + 1}, column ${one.column + 1}` : 'blank: not printed';
    const size = Math.min(3.2, (x1 - x0 - 2) / textWidth(name, 1));
    return [
      line(box(x0, y0, x1, y1), one.printed ? 'visible' : 'hidden'),
      words([(x0 + x1) / 2, y0 + 2], name, size, { anchor: 'middle' }),
    ];
  });
  const foot = corner[1] - (rows * step[1] + OVERLAP) * scale - 8;
  const check = `From cross to cross a sheet measures ${step[0].toFixed(1)} mm across and ${step[1].toFixed(1)} mm up.`;
  const fitted = (text: string, size: number) => Math.min(size, room / textWidth(text, 1));
  const total = `${counted(sheetsOf(tiling), 'sheet')} in ${counted(rows, 'row')} and ${counted(columns, 'column')}`;
  return {
    title: `${of.title}: how the sheets are joined`,
    width,
    height,
    within: null,
    ink: [
      words([MARGIN.side, height - MARGIN.top - 5], of.title, fitted(of.title, 6), { bold: true }),
      words([MARGIN.side, height - MARGIN.top - 11], total, 3.6),
      ...sketch,
      ...grid,
      ...[...HOW, check].map((text, i) => words([MARGIN.side, foot - 6 * i], text, fitted(text, 3.6))),
      ...bar([MARGIN.side, 8]),
    ],
  };
}
