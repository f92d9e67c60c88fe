/**
 * Exact fractions, so that what is typed is kept to the last bit: 19 mm is the double nearest to 0.019,
 * not 19 times the double nearest to 0.001.
 */
export interface Exact {
  readonly top: bigint;
  /** Always positive. */
  readonly bottom: bigint;
}

export function exact(top: bigint | number, bottom: bigint | number = 1n): Exact {
  return { top: BigInt(top), bottom: BigInt(bottom) };
}

/**
 * The fraction that a decimal writes: `14.625`, `.5`, `1.2e-3`. The text must be one; the exponent has at most
 * three figures, so that a hostile text cannot ask for a number of a billion digits.
 */
export function exactDecimal(text: string): Exact {
  const [digits = '', exponent = '0'] = text.toLowerCase().split('e');
  const [whole = '', decimals = ''] = digits.split('.');
  const power = Number(exponent) - decimals.length;
  const top = BigInt(whole + decimals);
  return power < 0 ? { top, bottom: 10n ** BigInt(-power) } : { top: top * 10n ** BigInt(power), bottom: 1n };
}

/** The fraction that a double is. Throws for one that is not finite. */
export function exactDouble(value: number): Exact {
  if (!Number.isFinite(value)) throw new RangeError(`no fraction is ${value}`);
  let power = 0;
  let scaled = value;
  // Doubling and halving by powers of two lose nothing.
  while (!Number.isInteger(scaled)) {
    scaled *= 2;
    power += 1;
  }
  return { top: BigInt(scaled), bottom: 1n << BigInt(power) };
}

export function add(a: Exact, b: Exact): Exact {
  return { top: a.top * b.bottom + b.top * a.bottom, bottom: a.bottom * b.bottom };
}

export function multiply(a: Exact, b: Exact): Exact {
  return { top: a.top * b.top, bottom: a.bottom * b.bottom };
}

export function divide(a: Exact, b: Exact): Exact {
  const sign = b.top < 0n ? -1n : 1n;
  return { top: sign * a.top * b.bottom, bottom: sign * a.bottom * b.top };
}

export function negate(a: Exact): Exact {
  return { top: -a.top, bottom: a.bottom };
}

/** `a` to a whole power; a negative power of zero must not be asked for. */
export function power(a: Exact, n: number): Exact {
  const raised = { top: a.top ** BigInt(Math.abs(n)), bottom: a.bottom ** BigInt(Math.abs(n)) };
  return n < 0 ? divide(exact(1), raised) : raised;
}

/** Below, at or above zero as `a` is less than, equal to or greater than `b`. */
export function compare(a: Exact, b: Exact): number {
  const difference = a.top * b.bottom - b.top * a.bottom;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

const exactlyHeld = BigInt(Number.MAX_SAFE_INTEGER);

/** The nearest double, ties to even; infinite where none is near enough. Below 2^-1022 the last bit may be off by one. */
export function nearestDouble({ top, bottom }: Exact): number {
  // One division of two whole doubles is rounded once, and so rightly.
  if (top <= exactlyHeld && -top <= exactlyHeld && bottom <= exactlyHeld) return Number(top) / Number(bottom);
  if (top < 0n) return -nearestDouble({ top: -top, bottom });
  // A quotient of at least 56 bits, its last bit set if anything is left over, rounds as the fraction would.
  const shift = 64 + 4 * (bottom.toString(16).length - top.toString(16).length);
  const quotient = shift >= 0 ? (top << BigInt(shift)) / bottom : top / (bottom << BigInt(-shift));
  const left = shift >= 0 ? (top << BigInt(shift)) % bottom : top % (bottom << BigInt(-shift));
  const rounded = Number(left === 0n ? quotient << 1n : (quotient << 1n) | 1n);
  // In two steps, since 2 to the power of the whole shift may itself be out of range.
  const half = Math.trunc((shift + 1) / 2);
  return rounded * 2 ** -half * 2 ** (half - shift - 1);
}

/** Rounded to a whole number of `1/parts`, halves away from zero: the number of parts. */
export function toParts(a: Exact, parts: bigint): bigint {
  const size = a.top < 0n ? -a.top : a.top;
  const whole = (2n * size * parts + a.bottom) / (2n * a.bottom);
  return a.top < 0n ? -whole : whole;
}
