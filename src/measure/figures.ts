/** Decimals: as many figures of a number as a builder reads, or exactly as many as bring the same double back. */
import { type Exact, exact, multiply, toParts } from './exact';

/** Figures that a builder reads: more are noise, in wood as on a tape. */
const figures = 4;

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
const tapes = new Set(['mm', 'in', 'µm', 'thou', '°', '°C', '°F', '%', 's']);

/** A number of `unit` as a builder reads it: four figures, trailing noughts dropped, never `-0`. */
export function readable(value: number, unit: string): string {
  const size = Math.abs(value);
  if (size === 0) return '0';
  const power = Math.floor(Math.log10(size));
  if (power < -9 && tapes.has(unit)) return '0';
  if (power >= 12 || power < -9) return trimmed(value.toExponential(figures - 1)).replace('e+', 'e');
  const most = decimals.get(unit) ?? 2;
  // A long length in inches is wanted to the hundredth all the same.
  const usual = Math.min(Math.max(figures - 1 - power, unit === 'in' ? 2 : 0), most);
  // Two or three figures at least, so that a small share of a megapascal is not written as none.
  const needed = tapes.has(unit) ? 0 : Math.min((most > 1 ? 2 : 1) - power, 11);
  return trimmed(value.toFixed(Math.max(usual, needed)));
}

/** Without noughts after the last figure; `-0.0` as `0`. */
function trimmed(text: string): string {
  const short = text.replace(/(\.\d*?)0+(?=e|$)/, '$1').replace(/\.(?=e|$)/, '');
  return short === '-0' ? '0' : short;
}

/**
 * The shortest decimal that `isRight` takes for `value`, by adding figures one at a time. What is right at no length,
 * as half a board in a count, is given with as many figures as tell any double from the next.
 */
export function shortestDecimal(value: Exact, isRight: (text: string) => boolean): string {
  for (let count = 1; count <= 24; count += 1) {
    const text = decimalOf(value, count);
    if (isRight(text)) return text;
  }
  return decimalOf(value, 17);
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
