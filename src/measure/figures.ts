/** Decimals: as many figures of a number as a builder reads, or exactly as many as bring the same double back. */
import { type Exact, exact, multiply, toParts } from './exact';

/** Figures that a builder reads: more are noise. */
const figures = 3;
/** What is read off a tape or a protractor has one more: 1234 mm. */
const figuresOfTape = 4;

/** What a tolerance in round millimetres may exceed the mark that stands for it: 3 mm is 1/8 in. */
export const ROUND = 1.1;

/** 'most': a limit that is never written larger than it is; 'least': one that is never written smaller. */
export type Bound = 'most' | 'least';

/** How a number is rounded: towards its own side of a limit, to so many decimals more than are read. */
export interface Rounding {
  readonly bound?: Bound | undefined;
  readonly finer?: number | undefined;
  /** How far off is still good work, in the number's own unit. */
  readonly within?: number | undefined;
}

/** Most decimals by unit, where it is not two. */
const decimals: ReadonlyMap<string, number> = new Map([
  ['', 4],
  ['in', 3],
  ['m', 3],
  ['mm', 1],
  ['µm', 0],
  ['thou', 1],
  ['mL', 0],
  ['g', 0],
  ['g/m²', 0],
  ['oz', 1],
  ['fl oz', 1],
  ['kg/m³', 0],
  ['lb/ft³', 1],
  ['N', 1],
  ['lbf', 1],
  ['MPa', 1],
  ['psi', 0],
  ['kPa', 1],
  ['N·m', 1],
  ['ft·lbf', 1],
  ['°', 1],
  ['°C', 1],
  ['°F', 1],
  ['%', 1],
  ['s', 1],
  ['min', 1],
  ['h', 1],
  ['d', 1],
  ['kn', 1],
  ['m/s', 1],
  ['mph', 1],
]);

/** Units read off a tape, a protractor or a thermometer: what is finer than their last decimal is nothing. */
const tapes = new Set(['mm', 'm', 'in', 'µm', 'thou', '°', '°C', '°F', '%', 's']);

/** A number of `unit` as a builder reads it: few figures, trailing noughts dropped, never `-0`. */
export function readable(value: number, unit: string, { bound, finer = 0, within }: Rounding = {}): string {
  const size = Math.abs(value);
  if (size === 0) return '0';
  const isTape = tapes.has(unit);
  const power = Math.floor(Math.log10(size));
  if (power < -9 && isTape) return '0';
  const count = (isTape ? figuresOfTape : figures) - 1 + finer;
  if (power >= 12 || power < -9) return inPowers(value, count, bound);
  const most = (decimals.get(unit) ?? 2) + finer;
  // A long length in inches is wanted to the hundredth all the same.
  const usual = Math.min(Math.max(count - power, unit === 'in' ? 2 : isTape ? 0 : -Infinity), most);
  // Two or three figures at least, so that a small share of a megapascal is not written as none.
  const needed = isTape ? -Infinity : Math.min((most > 1 ? 2 : 1) - power, 11);
  const asked = within === undefined ? -Infinity : Math.ceil(-Math.log10(within * ROUND));
  const [number, places] = rounded(value, Math.max(usual, needed, asked), bound);
  return trimmed(number.toFixed(Math.max(places, 0)));
}

/** With a power of ten, to so many decimals. */
function inPowers(value: number, places: number, bound: Bound | undefined): string {
  const nearest = value.toExponential(places);
  const past = Number(nearest) - value;
  const isAmiss = bound === 'most' ? past > 0 : bound === 'least' && past < 0;
  const step = Number(`1e${Number(nearest.split('e')[1]) - places}`);
  const text = isAmiss ? (Number(nearest) - Math.sign(past) * step).toExponential(places) : nearest;
  return trimmed(text).replace('e+', 'e');
}

/** `value` to so many decimals, or to tens where they are below zero; a limit that would come to nothing keeps a figure. */
function rounded(
  value: number,
  places: number,
  bound: Bound | undefined,
): readonly [number: number, places: number] {
  const scale = 10 ** Math.abs(places);
  const marks = places < 0 ? value / scale : value * scale;
  const whole = wholeMarks(marks, bound);
  if (whole === 0 && bound !== undefined) {
    const power = Math.floor(Math.log10(Math.abs(value)));
    if (-power > places) return rounded(value, -power, bound);
  }
  return [places < 0 ? whole * scale : whole / scale, places];
}

/** The nearest whole number, for a limit the one on its own side; what misses a mark by the rounding of a sum is on it. */
export function wholeMarks(marks: number, bound: Bound | undefined): number {
  const slack = 1e-9 * Math.max(1, Math.abs(marks));
  const nearest = Math.sign(marks) * Math.round(Math.abs(marks));
  if (bound === undefined || Math.abs(marks - nearest) <= slack) return nearest + 0;
  return (bound === 'most' ? Math.floor(marks) : Math.ceil(marks)) + 0;
}

/** Without noughts after the last figure; `-0.0` as `0`. */
function trimmed(text: string): string {
  const short = text.replace(/(\.\d*?)0+(?=e|$)/, '$1').replace(/\.(?=e|$)/, '');
  return short === '-0' ? '0' : short;
}

/**
 * The shortest decimal that `isRight` takes for `value`. More figures come no further from it, so what is right with few
 * is right with more, and their number is found by halving. What is right at no length, as half a board in a count, is
 * given with as many figures as tell any double from the next.
 */
export function shortestDecimal(value: Exact, isRight: (text: string) => boolean): string {
  let right: string | undefined;
  let [tooFew, enough] = [0, 25];
  // Most that is written has four figures or fewer.
  for (let count = 4; enough - tooFew > 1; count = Math.floor((tooFew + enough) / 2)) {
    const text = decimalOf(value, count);
    if (isRight(text)) [right, enough] = [text, count];
    else tooFew = count;
  }
  return right ?? decimalOf(value, 17);
}

/** `value` to so many figures: plain where it is of everyday size, with a power of ten elsewhere. */
function decimalOf(value: Exact, count: number): string {
  if (value.top === 0n) return '0';
  // The power of the first figure, to within one, from the lengths of both numbers.
  const size = value.top < 0n ? -value.top : value.top;
  const power = size.toString().length - value.bottom.toString().length;
  const places = count - power;
  const parts =
    places >= 0
      ? toParts(value, 10n ** BigInt(places))
      : toParts(multiply(value, exact(1, 10n ** BigInt(-places))), 1n);
  const digits = (parts < 0n ? -parts : parts).toString();
  const sign = parts < 0n ? '-' : '';
  if (power > 20 || power < -12) return `${sign}${digits}e${-places}`;
  if (places <= 0) return sign + digits + '0'.repeat(-places);
  const padded = digits.padStart(places + 1, '0');
  return trimmed(`${sign}${padded.slice(0, -places)}.${padded.slice(-places)}`);
}
