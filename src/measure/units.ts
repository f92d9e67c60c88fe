/** Units: reading how they are written, single or compound, and exactly how much they are. */
import { type Dimension, plain, times, toPower } from './dimension';
import { type Exact, exact, exactDecimal, multiply, power } from './exact';
import { bases, compounds, pi, raisedInWords, rows, type Smaller } from './unit-table';

export interface Unit {
  /** How it is printed: `mm`, `N/mm²`. */
  readonly symbol: string;
  /** SI units in one of it. */
  readonly factor: Exact;
  readonly dimension: Dimension;
  /** Kelvins at its zero, for °C and °F. */
  readonly zero?: Exact;
  /** The smaller unit that may follow in one quantity (5 ft 3 in), how many make one, and its name. */
  readonly smaller?: Smaller;
  /** One and many of it in full words: `millimetre`, `newtons per square millimetre`. */
  readonly words: readonly [one: string, many: string];
}

/** The symbol, or the compound, that each spelling means. */
const symbolOf = new Map<string, string>();
for (const [symbol, { words, also }] of Object.entries(rows)) {
  const spellings = [symbol, ...words, ...(also ? also.split(',') : [])];
  for (const spelling of spellings) symbolOf.set(spelling, symbol);
  if (!raisedInWords.includes(symbol)) continue;
  for (const spelling of spellings.filter((spelling) => /^[a-z]/.test(spelling))) {
    for (const word of ['sq', 'square']) symbolOf.set(`${word} ${spelling}`, `${symbol}²`);
    for (const word of ['cu', 'cubic']) symbolOf.set(`${word} ${spelling}`, `${symbol}³`);
  }
}
for (const [compound, spellings] of Object.entries(compounds)) {
  for (const spelling of spellings.split(',')) symbolOf.set(spelling, compound);
}

// A phone's keyboard writes `Mm` and `LB`: letters may be of either size where that leaves no doubt (kN and kn do).
const sizeless = new Map<string, string | null>();
for (const [spelling, symbol] of symbolOf) {
  const small = spelling.toLowerCase();
  const known = sizeless.get(small);
  sizeless.set(small, known === undefined || known === symbol ? symbol : null);
}

function lookUp(spelling: string): string | undefined {
  return symbolOf.get(spelling) ?? sizeless.get(spelling.toLowerCase()) ?? undefined;
}

/** Every spelling of a single unit, for finding the nearest to one that is unknown. */
export const unitSpellings: readonly string[] = [...symbolOf.keys()];

const escaped = [...symbolOf.keys()]
  .toSorted((a, b) => b.length - a.length)
  .map((spelling) => spelling.replaceAll(/[$^.*+?()[\]{}|]/g, String.raw`\$&`).replaceAll(' ', ' *'));
const lettered = escaped.filter((spelling) => /[A-Za-z]$/.test(spelling)).join('|');
const signs = escaped.filter((spelling) => !/[A-Za-z]$/.test(spelling)).join('|');
// A word ends where no letter or figure follows, nor a dot that makes it the head of a quantity's name.
const ends = String.raw`(?![A-Za-z_(]|\.[A-Za-z0-9])`;
const powers = String.raw`(?:\^-?[1-4]|[234]|⁻?[¹²³⁴])`;
const atom = String.raw`(?:(?:${lettered})(?:${powers}|\.(?![A-Za-z0-9]))?${ends}|(?:${signs}))`;
const join = String.raw`(?:[/*·]| ?per )`;
const unitPattern = new RegExp(String.raw`(?:/ ?|per )?${atom}(?:${join}${atom})*`, 'iy');
const atomPattern = new RegExp(String.raw` ?(/|\*|·|per)? ?(${lettered}|${signs})(${powers})?\.?`, 'iy');

/** The unit written in `text` from `at` on, and where it ends; undefined if none begins there. */
export function unitAt(text: string, at: number): { unit: Unit; end: number } | undefined {
  unitPattern.lastIndex = at;
  const spelling = unitPattern.exec(text)?.[0];
  const unit = spelling === undefined ? undefined : unitOf(spelling);
  return unit && spelling !== undefined ? { unit, end: at + spelling.length } : undefined;
}

const units = new Map<string, Unit | undefined>();

/** The unit with this spelling, single or compound: `mm`, `N/mm²`, `kg/m^3`, `/m`; undefined if it is none. */
export function unitOf(spelling: string): Unit | undefined {
  if (units.has(spelling)) return units.get(spelling);
  const unit = makeUnit(spelling);
  // Bounded, since spellings come from texts of anybody's making.
  if (units.size < 2000) units.set(spelling, unit);
  return unit;
}

/** The unit of a symbol in our own text. Throws if there is none. */
export function knownUnit(symbol: string): Unit {
  const unit = unitOf(symbol);
  if (!unit) throw new Error(`unknown unit: ${symbol}`);
  return unit;
}

/** A number with its unit after it, as it is written: `12 mm`, `12°`, `4/m`; bare without one. */
export function withUnit(number: string, unit: Unit | undefined): string {
  if (!unit) return number;
  return unit.symbol === '°' || unit.symbol.startsWith('/')
    ? number + unit.symbol
    : `${number} ${unit.symbol}`;
}

function makeUnit(spelling: string): Unit | undefined {
  const symbol = lookUp(spelling.replace(/\.$/, ''));
  const row = symbol === undefined ? undefined : rows[symbol];
  if (symbol === undefined || row === undefined) return compoundOf(symbol ?? spelling);
  const base = bases[symbol];
  const { words, zero, smaller } = row;
  if (base) return { symbol, factor: exact(1), dimension: base, words };
  const { factor, dimension } = defined(row.is);
  return {
    symbol,
    factor: symbol === '°' ? multiply(factor, { top: pi.top, bottom: pi.bottom * 180n }) : factor,
    dimension,
    words,
    ...(zero && { zero }),
    ...(smaller && { smaller }),
  };
}

/** A definition: a number, a unit, or a number of a unit. */
function defined(text: string): { factor: Exact; dimension: Dimension } {
  const [, top, bottom = '1', rest = ''] = /^([\d.]+)?(?:\/(\d+))? ?(.*)$/.exec(text) ?? [];
  const number = top === undefined ? exact(1) : multiply(exactDecimal(top), exact(1, BigInt(bottom)));
  if (rest === '') return { factor: number, dimension: plain };
  const unit = knownUnit(rest);
  return { factor: multiply(number, unit.factor), dimension: unit.dimension };
}

/** A product or quotient of units, read from left to right: `kg/m³`, `N*m`, `/m`. */
function compoundOf(text: string): Unit | undefined {
  let factor = exact(1);
  let dimension = plain;
  let symbol = '';
  let words: readonly [string, string] = ['', ''];
  let at = 0;
  while (at < text.length) {
    atomPattern.lastIndex = at;
    const [whole = '', joined = '', spelling = '', raised = ''] = atomPattern.exec(text) ?? [];
    const unit = spelling === '' || spelling === text ? undefined : unitOf(spelling);
    // Degrees with a zero of their own have no place in a compound.
    if (!unit || unit.zero || (at > 0 && joined === '')) return undefined;
    const size = raised === '' ? 1 : figure(raised);
    const under = joined === '/' || joined.toLowerCase() === 'per';
    factor = multiply(factor, power(unit.factor, under ? -size : size));
    dimension = times(dimension, toPower(unit.dimension, under ? -size : size));
    symbol += (under ? '/' : at > 0 ? '·' : '') + unit.symbol + (size === 1 ? '' : superscript(size));
    words = wordsWith(words, unit.words, size, under);
    at += whole.length;
  }
  return symbol === '' ? undefined : { symbol, factor, dimension, words };
}

/** `newton` and `metre` as `newton metre`; under a stroke, `newton per square metre`. */
function wordsWith(
  [one, many]: Unit['words'],
  next: Unit['words'],
  size: number,
  under: boolean,
): Unit['words'] {
  const [nextOne, nextMany] = next.map((word) => raisedWord(word, size)) as [string, string];
  if (under) return [`${one} per ${nextOne}`.trim(), `${many} per ${nextOne}`.trim()];
  return one === '' ? [nextOne, nextMany] : [`${one} ${nextOne}`, `${one} ${nextMany}`];
}

function raisedWord(word: string, size: number): string {
  if (size === 2) return `square ${word}`;
  if (size === 3) return `cubic ${word}`;
  return size === 1 ? word : `${word} to the power ${size}`;
}

const raisedFigures = '⁰¹²³⁴';

function figure(raised: string): number {
  const digit = raised.at(-1) ?? '';
  const size = raisedFigures.includes(digit) ? raisedFigures.indexOf(digit) : Number(digit);
  return /[-⁻]/.test(raised) ? -size : size;
}

function superscript(size: number): string {
  return (size < 0 ? '⁻' : '') + raisedFigures.charAt(Math.abs(size));
}
