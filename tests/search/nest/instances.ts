/** Instances of cutting and packing with a known optimum, as their papers print them. */
import type { NestProblem, Quarter } from '../../../src/kernel/nest';
import type { Vec2 } from '../../../src/kernel/vec';

export const rectangle = (width: number, height: number): readonly Vec2[] => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

/** `3x7:2 8x2` is two pieces of 3 by 7 and one of 8 by 2. */
export function rectangles(
  list: string,
): readonly { readonly width: number; readonly height: number; readonly count: number }[] {
  return list.split(' ').map((one) => {
    const [size = '', count = '1'] = one.split(':');
    const [width = 0, height = 0] = size.split('x').map(Number);
    return { width, height, count: Number(count) };
  });
}

export function problemOf(
  [length, width]: readonly [length: number, width: number],
  list: string,
  { turns = [0], gap = 0, scale = 1 }: { turns?: readonly Quarter[]; gap?: number; scale?: number } = {},
): NestProblem {
  return {
    pieces: rectangles(list).flatMap(({ width: w, height: h, count }) =>
      Array.from({ length: count }, (_, i) => ({
        name: `${w} by ${h}, ${i + 1}`,
        outline: rectangle(w * scale, h * scale),
        turns,
        mirror: false,
      })),
    ),
    stocks: [{ length: length * scale, width: width * scale, price: 1 }],
    gap: gap * scale,
    edge: 0,
  };
}

export const BEASLEY =
  'J. E. Beasley, Algorithms for unconstrained two-dimensional guillotine cutting, Journal of the Operational Research Society 36 (1985)';

/** All pieces on the fewest sheets, as they lie and with quarter turns: proved by exhaustion elsewhere. */
export const sheets: readonly {
  readonly id: string;
  readonly sheet: readonly [number, number];
  readonly list: string;
  readonly fixed: number;
  readonly turned: number;
}[] = [
  { id: 'ngcut1', sheet: [10, 10], list: '3x7:2 8x2:2 10x2:1 5x4:3 2x9:2', fixed: 3, turned: 3 },
  { id: 'ngcut2', sheet: [10, 10], list: '1x10:3 5x3:2 9x3:3 6x1:3 3x8:3 4x1:1 7x3:2', fixed: 4, turned: 3 },
  {
    id: 'ngcut3',
    sheet: [10, 10],
    list: '3x2:2 7x2:3 4x5:2 4x1:2 1x10:1 8x4:1 4x2:2 3x7:3 6x2:3 9x1:2',
    fixed: 3,
    turned: 3,
  },
  { id: 'ngcut4', sheet: [15, 10], list: '15x2:2 7x3:1 9x1:1 8x3:1 12x2:2', fixed: 2, turned: 2 },
  {
    id: 'ngcut5',
    sheet: [15, 10],
    list: '10x3:2 9x3:1 12x2:3 11x3:1 12x3:3 11x1:3 2x10:1',
    fixed: 3,
    turned: 3,
  },
  {
    id: 'ngcut6',
    sheet: [15, 10],
    list: '2x9:1 10x2:3 2x4:1 2x8:2 3x8:1 4x1:1 6x4:3 10x3:1 11x2:1 4x5:1',
    fixed: 3,
    turned: 2,
  },
  { id: 'ngcut7', sheet: [20, 20], list: '1x9:3 16x3:1 18x3:1 20x2:1 3x1:2', fixed: 1, turned: 1 },
  {
    id: 'ngcut8',
    sheet: [20, 20],
    list: '15x3:1 6x6:3 13x1:2 8x7:2 18x5:3 12x4:1 8x3:1',
    fixed: 2,
    turned: 2,
  },
  {
    id: 'ngcut9',
    sheet: [20, 20],
    list: '14x2:1 1x5:1 20x4:2 12x3:3 11x8:2 11x6:2 7x9:1 17x5:1 7x14:2 1x7:3',
    fixed: 3,
    turned: 3,
  },
  { id: 'ngcut10', sheet: [30, 30], list: '1x30:3 25x7:1 27x9:3 30x2:3 26x7:3', fixed: 3, turned: 3 },
  {
    id: 'ngcut11',
    sheet: [30, 30],
    list: '3x23:3 29x5:1 21x2:3 17x11:3 14x7:2 8x5:2 21x8:1',
    fixed: 2,
    turned: 2,
  },
  {
    id: 'ngcut12',
    sheet: [30, 30],
    list: '16x6:1 24x1:3 6x28:3 8x23:3 5x1:3 6x26:2 2x30:2 9x11:3 4x30:1 16x13:1',
    fixed: 3,
    turned: 3,
  },
  {
    id: 'gcut1',
    sheet: [250, 250],
    list: '167x184 114x118 167x152 83x140 70x86 143x166 120x160 66x148 87x141 69x165',
    fixed: 5,
    turned: 4,
  },
];

const HOPPER = 'E. Hopper and B. C. H. Turton, European Journal of Operational Research 128 (2001)';
const SPP = 'S. Martello, M. Monaci and D. Vigo, INFORMS Journal on Computing 15 (2003)';

/** Strips: the least height in which all pieces lie, as they are or turned. */
export const strips: readonly {
  readonly id: string;
  readonly source: string;
  readonly width: number;
  readonly list: string;
  readonly fixed?: number;
  readonly turned?: number;
}[] = [
  {
    id: 'C1-1',
    source: HOPPER,
    width: 20,
    list: '2x12 7x12 8x6 3x6 3x5 5x5 3x12 3x7 5x7 2x6 3x2 4x2 3x4 4x4 9x2 11x2',
    fixed: 20,
    turned: 20,
  },
  {
    id: 'C1-2',
    source: HOPPER,
    width: 20,
    list: '4x1 4x5 9x4 3x5 3x9 1x4 5x3 4x1 5x5 7x2 9x3 3x13 2x8 15x4 5x4 10x6 7x2',
    turned: 20,
  },
  {
    id: 'C1-3',
    source: HOPPER,
    width: 20,
    list: '4x14 5x2 2x2 9x7 5x5 2x5 7x7 3x5 6x5 3x2 6x2 4x6 6x3:2 10x3:2',
    fixed: 20,
  },
  {
    id: 'CGCUT1',
    source: 'N. Christofides and C. Whitlock, Operations Research 25 (1977)',
    width: 10,
    list: '4x8:2 7x3 2x8:3 4x3:5 3x3:2 2x3:2 1x2',
    turned: 23,
  },
  { id: 'NGCUT1', source: SPP, width: 10, list: '7x3:2 2x8:2 2x10 4x5:3 9x2:2', fixed: 23 },
  { id: 'NGCUT2', source: SPP, width: 10, list: '10x1:3 3x5:2 3x9:3 1x6:3 8x3:3 1x4 3x7:2', turned: 28 },
  {
    id: 'NGCUT3',
    source: SPP,
    width: 10,
    list: '2x3:2 2x7:3 5x4:2 1x4:2 10x1 4x8 2x4:2 7x3:3 2x6:3 1x9:2',
    fixed: 28,
    turned: 28,
  },
  { id: 'NGCUT4', source: SPP, width: 10, list: '2x15:2 3x7 1x9 3x8 2x12:2', fixed: 20, turned: 18 },
  { id: 'NGCUT5', source: SPP, width: 10, list: '3x10:2 3x9 2x12:3 3x11 3x12:3 1x11:3 10x2', fixed: 36 },
];

/** A strip that its pieces fill whole, which takes longer to find than a builder waits. */
export const hardStrip = {
  id: 'C2-1',
  source: HOPPER,
  width: 40,
  height: 15,
  list: '11x3:2 13x3 9x2 7x2 9x3 7x3 11x2:2 13x2 11x4 13x4 3x5:2 2x2 2x3 5x4 6x4 12x2 1x2 13x5 12x4 1x4 5x2 6x2',
};

/** One-dimensional: lengths into the fewest bins of one length, and what the longest first into the first that holds it takes. */
export const bins: readonly {
  readonly id: string;
  readonly source: string;
  readonly length: number;
  readonly lengths: string;
  readonly least: number;
  readonly firstFit: number;
}[] = [
  {
    id: 'N1C1W1_A',
    source: 'A. Scholl, R. Klein and C. Jürgens, Computers and Operations Research 24 (1997)',
    length: 100,
    lengths:
      '99 99 96 96 92 92 91 88 87 86 85 76 74 72 69 67 67 62 61 56 52 51 49 46 44 42 40 40 33 33 30 30 29 28 28 27 25 24 23 22 21 20 17 14 13 11 10 7 7 3',
    least: 25,
    firstFit: 25,
  },
  {
    id: 't60_00',
    source:
      'E. Falkenauer, A hybrid grouping genetic algorithm for bin packing, Journal of Heuristics 2 (1996)',
    length: 1000,
    lengths:
      '495 474 473 472 466 450 445 444 439 430 419 414 410 395 372 370 366 366 366 363 361 357 355 351 350 350 347 320 315 307 303 299 298 298 292 288 287 283 275 275 274 273 273 272 272 271 269 269 268 263 262 261 259 258 255 254 252 252 252 251',
    least: 20,
    firstFit: 23,
  },
  {
    id: 'u120_00',
    source:
      'E. Falkenauer, A hybrid grouping genetic algorithm for bin packing, Journal of Heuristics 2 (1996)',
    length: 150,
    lengths:
      '42 69 67 57 93 90 38 36 45 42 33 79 27 57 44 84 86 92 46 38 85 33 82 73 49 70 59 23 57 72 74 69 33 42 28 46 30 64 29 74 41 49 55 98 80 32 25 38 82 30 35 39 57 84 62 50 55 27 30 36 20 78 47 26 45 41 58 98 91 96 73 84 37 93 91 43 73 85 81 79 71 80 76 83 41 78 70 23 42 87 43 84 60 55 49 78 73 62 36 44 94 69 32 96 70 84 58 78 25 80 58 66 83 24 98 60 42 43 43 39',
    least: 48,
    firstFit: 49,
  },
];

/** Strips of one unit, on sheets of one unit: only lengths count. */
export const binProblem = ({ length, lengths }: (typeof bins)[number]): NestProblem =>
  problemOf(
    [length, 1],
    lengths
      .split(' ')
      .map((one) => `${one}x1`)
      .join(' '),
  );
