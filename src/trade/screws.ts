/**
 * Countersunk wood screws by gauge: diameters, heads, roots and the holes they need.
 *
 * Gauges are the numbers of ASME B18.6.1. Inch figures are kept as printed and turned into metres
 * once, below. Trade charts disagree about roots by a few per cent, so a cell lets the builder
 * type the root measured on the screws in hand.
 */
import { INCH } from '../measure/si';
import { type Cited, look, type TradeTable } from './table';

export type ScrewColumn = 'diameter' | 'head' | 'root' | 'pitch';

const SIZES = 'ASME B18.6.1, basic diameter 0.060 in + 0.013 in x gauge';
const HEADS = 'flat-head diameters of ASME B18.6.1 as a trade list prints them';
const HEAD_RULE = '2.04 x diameter - 0.003 in, which fits the listed flat heads to 0.001 in';
const ROOTS = 'National Design Specification for Wood Construction (2018), Appendix Table L3';

/** A dash stands for what no source gives. Head and root in inches. */
const rows: readonly (readonly [
  gauge: number,
  head: number | null,
  root: number | null,
  threadsPerInch: number | null,
])[] = [
  [4, 0.225, null, 22],
  [5, null, null, null],
  [6, 0.279, 0.113, 18],
  [7, null, 0.122, 16],
  [8, 0.332, 0.131, 15],
  [9, null, 0.142, null],
  [10, 0.385, 0.152, 13],
  [12, 0.438, 0.171, 11],
  [14, 0.491, 0.196, 10],
];

/** Read in a trade list; the other threads are remembered from the standard. */
const threadsRead = new Set([4, 6, 7]);

const basicDiameter = (gauge: number) => (0.06 + 0.013 * gauge) * INCH;

function headOf(gauge: number, listed: number | null): Cited {
  if (listed !== null) return { value: listed * INCH, source: HEADS, known: 'published' };
  return { value: 2.04 * basicDiameter(gauge) - 0.003 * INCH, source: HEAD_RULE, known: 'calculated' };
}

function rootOf(gauge: number, listed: number | null): Cited {
  if (listed !== null) return { value: listed * INCH, source: ROOTS, known: 'from memory' };
  return {
    value: 0.8 * basicDiameter(gauge),
    source: 'root about 0.8 of the diameter in small sizes',
    known: 'common practice',
  };
}

function pitchOf(gauge: number, threadsPerInch: number): Cited {
  return {
    value: INCH / threadsPerInch,
    source: 'ASME B18.6.1, threads per inch',
    known: threadsRead.has(gauge) ? 'published' : 'from memory',
  };
}

export const screws: TradeTable<ScrewColumn> = {
  id: 'screw',
  columns: {
    diameter: { kind: 'length', meaning: 'shank diameter' },
    head: { kind: 'length', meaning: 'head diameter' },
    root: { kind: 'length', meaning: 'root diameter of the thread' },
    pitch: { kind: 'length', meaning: 'distance from thread to thread' },
  },
  rows: rows.map(([gauge, head, root, threads]) => ({
    id: idOf(gauge),
    label: `No. ${gauge}`,
    cells: {
      diameter: { value: basicDiameter(gauge), source: SIZES, known: 'from memory' },
      head: headOf(gauge, head),
      root: rootOf(gauge, root),
      ...(threads === null ? {} : { pitch: pitchOf(gauge, threads) }),
    },
  })),
};

/** Shank of a wood screw by its gauge, m; undefined for a gauge that is not sold. */
export function shankOf(gauge: number): number | undefined {
  return look(screws, idOf(gauge), 'diameter')?.value;
}

function idOf(gauge: number): string {
  return `gauge${gauge}`;
}

/**
 * What a hole for the shank is wider than the shank, m: the screw must drop through without a thread catching.
 * Common practice, no source: two thousandths of an inch.
 */
export const shankPlay = 0.002 * INCH;

/**
 * One size of a screw of this gauge, m.
 *
 * Throws a sentence for the builder when the gauge is not one that is sold.
 */
export function screwSize(gauge: number, column: Exclude<ScrewColumn, 'pitch'>): number {
  const size = look(screws, idOf(gauge), column);
  if (!size) throw new Error(`there is no wood screw of gauge ${gauge}: sold are 4 to 10, 12 and 14`);
  return size.value;
}

/**
 * Included angle of a countersunk head, degrees: the middle of the 80 to 82 degrees of inch screws.
 * Some metric heads have 90 degrees. Source: ASME B18.6.1, from memory.
 */
export const headDegrees = 81;
/** The same, rad. */
export const headAngle = (headDegrees * Math.PI) / 180;

/**
 * The part of the root diameter to drill for the thread, by specific gravity (oven-dry).
 *
 * NDS 2018, 12.1.5: 0.9 above 0.6, 0.7 above 0.5 and up to 0.6, no hole required at 0.5 and less.
 * Boats are drilled in every wood (common practice), so 0.7 holds for the light woods too.
 */
export function leadHoleShare(gravity: number): number {
  return gravity > 0.6 ? 0.9 : 0.7;
}

/**
 * The screw to buy: the shortest that reaches the wanted length, or, where that would come out of
 * the far face, the longest that stays inside.
 *
 * @param wanted length for full penetration, m
 * @param longest length that stays clear of the far face, m
 * @returns a length that is sold, m. Throws a sentence when even the shortest is too long.
 */
export function screwToBuy(wanted: number, longest: number, sold: readonly number[]): number {
  // Sold lengths and reckoned ones meet exactly (25 mm = 9 mm + 16 mm); a hair's breadth is forgiven.
  const hair = 1e-6;
  const inside = sold.filter((length) => length <= longest + hair);
  const last = inside.at(-1);
  if (last === undefined)
    throw new Error('no wood screw sold is short enough to stay inside these two parts');
  return inside.find((length) => length >= wanted - hair) ?? last;
}

/**
 * The gauge usually put through plywood of this thickness: No. 6 through 6 mm, No. 8 through 9 mm,
 * No. 10 through more. Common practice, no source; it names no gauge beyond 12 mm plywood.
 */
export function usualGauge(topThickness: number): number {
  // Half a millimetre of grace: sheets are sold as 6 and 9 mm and measure 1/4 and 3/8 in.
  if (topThickness <= 0.0065) return 6;
  return topThickness <= 0.00953 ? 8 : 10;
}
