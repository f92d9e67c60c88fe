/**
 * Units: how they are spelled and exactly how much they are.
 *
 * Every factor follows from the seven SI units by exact definitions: the international yard and pound
 * (0.9144 m and 0.453 592 37 kg, agreement of 1959), standard gravity 9.806 65 m/s² (3rd CGPM, 1901),
 * the US gallon of 231 cubic inches, the nautical mile of 1852 m, the horsepower of 550 ft·lbf/s
 * (all in NIST Special Publication 811, appendix B).
 */
import { type Dimension, dimension, plain, times, toPower } from './dimension';
import { type Exact, exact, exactDecimal, multiply, power } from './exact';

export interface Unit {
  /** How it is printed: `mm`, `N/mm²`. */
  readonly symbol: string;
  /** SI units in one of it. */
  readonly factor: Exact;
  readonly dimension: Dimension;
  /** Kelvins at its zero, for °C and °F. */
  readonly zero?: Exact;
  /** The smaller unit that may follow in one quantity (5 ft 3 in), how many make one, and its name. */
  readonly then?: Then;
  /** One and many of it in full words: `millimetre`, `newtons per square millimetre`. */
  readonly says: readonly [one: string, many: string];
}

interface Then {
  readonly unit: string;
  readonly count: number;
  readonly plural: string;
  /** True if the smaller unit may go unwritten: `5' 3`. */
  readonly bare: boolean;
}

interface Row {
  /** By units above it; empty for a base. */
  readonly is: string;
  /** One and many, in full. */
  readonly says: readonly [one: string, many: string];
  /** Other spellings, parted by commas. */
  readonly also?: string;
  readonly then?: Then;
  readonly zero?: Exact;
}

const bases: Readonly<Record<string, Dimension>> = {
  m: dimension({ length: 1 }),
  kg: dimension({ mass: 1 }),
  s: dimension({ time: 1 }),
  K: dimension({ temperature: 1 }),
  rad: dimension({ angle: 1 }),
  money: dimension({ money: 1 }),
};

/** π to 50 decimals, more than any double can tell from π itself. */
const pi: Exact = { top: 314159265358979323846264338327950288419716939937510n, bottom: 10n ** 50n };

/** A row whose plural takes an s. */
function unit(is: string, one: string, also = '', more: Pick<Row, 'then' | 'zero'> = {}): Row {
  return { is, says: [one, `${one}s`], also, ...more };
}

function then(unit: string, count: number, plural: string, bare = false): Pick<Row, 'then'> {
  return { then: { unit, count, plural, bare } };
}

const rows: Readonly<Record<string, Row>> = {
  m: unit('', 'metre', 'meter,meters'),
  kg: unit('', 'kilogram', 'kilo,kilos'),
  s: unit('', 'second', 'sec,secs'),
  K: unit('', 'kelvin'),
  rad: unit('', 'radian'),
  money: { is: '', says: ['of money', 'of money'], also: '$,€,£,¤' },

  mm: unit('0.001 m', 'millimetre', 'millimeter,millimeters'),
  cm: unit('0.01 m', 'centimetre', 'centimeter,centimeters'),
  dm: unit('0.1 m', 'decimetre'),
  km: unit('1000 m', 'kilometre', 'kilometer,kilometers'),
  µm: unit('0.000001 m', 'micrometre', 'μm,um,micron,microns'),
  in: { is: '0.0254 m', says: ['inch', 'inches'], also: '"' },
  ft: { is: '12 in', says: ['foot', 'feet'], also: "'", ...then('in', 12, 'inches', true) },
  yd: unit('3 ft', 'yard', '', then('ft', 3, 'feet')),
  mi: unit('5280 ft', 'mile'),
  nmi: unit('1852 m', 'nautical mile'),
  thou: { is: '0.001 in', says: ['thousandth of an inch', 'thousandths of an inch'], also: 'mil,mils' },

  L: unit('0.001 m³', 'litre', 'liter,liters'),
  mL: unit('0.001 L', 'millilitre', 'cc,milliliter,milliliters'),
  cL: unit('0.01 L', 'centilitre'),
  gal: unit('231 in³', 'gallon', 'US gal,US gallon,US gallons', then('qt', 4, 'quarts')),
  qt: unit('0.25 gal', 'quart', 'US qt', then('fl oz', 32, 'fluid ounces')),
  pt: unit('0.125 gal', 'pint', 'US pt', then('fl oz', 16, 'fluid ounces')),
  'fl oz': unit('0.0078125 gal', 'fluid ounce', 'fl. oz,US fl oz'),
  'imp gal': unit('4.54609 L', 'imperial gallon', 'UK gal'),
  'bd ft': { is: '144 in³', says: ['board foot', 'board feet'] },

  g: unit('0.001 kg', 'gram'),
  mg: unit('0.001 g', 'milligram'),
  t: unit('1000 kg', 'tonne'),
  lb: unit('0.45359237 kg', 'pound', 'lbs', then('oz', 16, 'ounces', true)),
  oz: unit('0.0625 lb', 'ounce'),

  min: unit('60 s', 'minute', 'mins', then('s', 60, 'seconds')),
  h: unit('60 min', 'hour', 'hr,hrs', then('min', 60, 'minutes', true)),
  d: unit('24 h', 'day', '', then('h', 24, 'hours')),
  week: unit('7 d', 'week'),

  N: unit('kg·m/s²', 'newton'),
  kN: unit('1000 N', 'kilonewton'),
  kgf: { is: '9.80665 N', says: ['kilogram of force', 'kilograms of force'], also: 'kp' },
  lbf: {
    is: '9.80665 lb·m/s²',
    says: ['pound of force', 'pounds of force'],
    also: 'lb force,pound-force,pounds-force',
  },
  Pa: unit('N/m²', 'pascal'),
  kPa: unit('1000 Pa', 'kilopascal'),
  MPa: unit('1000000 Pa', 'megapascal'),
  GPa: unit('1000 MPa', 'gigapascal'),
  bar: unit('100000 Pa', 'bar'),
  psi: { is: 'lbf/in²', says: ['pound per square inch', 'pounds per square inch'] },
  ksi: { is: '1000 psi', says: ['thousand pounds per square inch', 'thousand pounds per square inch'] },
  J: unit('N·m', 'joule'),
  kJ: unit('1000 J', 'kilojoule'),
  W: unit('J/s', 'watt'),
  kW: unit('1000 W', 'kilowatt'),
  hp: { is: '550 ft·lbf/s', says: ['horsepower', 'horsepower'] },
  kn: unit('1852 m/h', 'knot', 'kt,kts'),
  mph: { is: 'mi/h', says: ['mile an hour', 'miles an hour'] },

  '°': unit('rad', 'degree', 'deg,degs', then('arcmin', 60, 'minutes')),
  arcmin: unit('1/60 °', 'minute of arc'),
  'Δ°C': { is: 'K', says: ['degree Celsius of difference', 'degrees Celsius of difference'], also: 'ΔK,C°' },
  'Δ°F': {
    is: '5/9 K',
    says: ['degree Fahrenheit of difference', 'degrees Fahrenheit of difference'],
    also: 'F°',
  },
  '°C': {
    is: 'K',
    says: ['degree Celsius', 'degrees Celsius'],
    also: 'C,degC,deg C,celsius',
    zero: exact(27315, 100),
  },
  '°F': {
    is: '5/9 K',
    says: ['degree Fahrenheit', 'degrees Fahrenheit'],
    also: 'F,degF,deg F,fahrenheit',
    zero: exact(45967 * 5, 900),
  },
  '%': { is: '0.01', says: ['percent', 'percent'], also: 'per cent,pct' },
};

/** Spellings of whole compounds. */
const spellings: Readonly<Record<string, string>> = {
  'sq in': 'in²',
  'sq ft': 'ft²',
  'sq yd': 'yd²',
  'sq m': 'm²',
  'sq mm': 'mm²',
  'sq cm': 'cm²',
  'square inches': 'in²',
  'square feet': 'ft²',
  'square yards': 'yd²',
  'square metres': 'm²',
  'square meters': 'm²',
  'cu in': 'in³',
  'cu ft': 'ft³',
  'cu yd': 'yd³',
  'cu m': 'm³',
  'cubic inches': 'in³',
  'cubic feet': 'ft³',
  'cubic yards': 'yd³',
  'cubic metres': 'm³',
  'cubic meters': 'm³',
  'ft-lbf': 'ft·lbf',
  'ft-lb': 'ft·lbf',
  'ft-lbs': 'ft·lbf',
  'ft lbf': 'ft·lbf',
  'foot-pounds': 'ft·lbf',
  'lb-ft': 'lbf·ft',
  'in-lbf': 'in·lbf',
  'in-lb': 'in·lbf',
  Nm: 'N·m',
  'N m': 'N·m',
  pcf: 'lb/ft³',
  psf: 'lbf/ft²',
  kph: 'km/h',
};

const symbolOf = new Map<string, string>();
for (const [symbol, { says, also }] of Object.entries(rows)) {
  for (const spelling of [symbol, ...says, ...(also ? also.split(',') : [])]) symbolOf.set(spelling, symbol);
}
for (const [spelling, compound] of Object.entries(spellings)) symbolOf.set(spelling, compound);

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

function makeUnit(spelling: string): Unit | undefined {
  const symbol = lookUp(spelling.replace(/\.$/, ''));
  const row = symbol === undefined ? undefined : rows[symbol];
  if (symbol === undefined || row === undefined) return compoundOf(symbol ?? spelling);
  const base = bases[symbol];
  const { says, zero, then } = row;
  if (base) return { symbol, factor: exact(1), dimension: base, says };
  const { factor, dimension } = defined(row.is);
  return {
    symbol,
    factor: symbol === '°' ? multiply(factor, { top: pi.top, bottom: pi.bottom * 180n }) : factor,
    dimension,
    says,
    ...(zero && { zero }),
    ...(then && { then }),
  };
}

/** A definition: a number, a unit, or a number of a unit. */
function defined(text: string): { factor: Exact; dimension: Dimension } {
  const [, top, bottom = '1', rest = ''] = /^([\d.]+)?(?:\/(\d+))? ?(.*)$/.exec(text) ?? [];
  const number = top === undefined ? exact(1) : multiply(exactDecimal(top), exact(1, BigInt(bottom)));
  if (rest === '') return { factor: number, dimension: plain };
  const unit = unitOf(rest);
  if (!unit) throw new Error(`a unit is defined by another that is unknown: ${text}`);
  return { factor: multiply(number, unit.factor), dimension: unit.dimension };
}

/** A product or quotient of units, read from left to right: `kg/m³`, `N*m`, `/m`. */
function compoundOf(text: string): Unit | undefined {
  let factor = exact(1);
  let dimension = plain;
  let symbol = '';
  let says: readonly [string, string] = ['', ''];
  let at = 0;
  while (at < text.length) {
    atomPattern.lastIndex = at;
    const [whole = '', joined = '', spelling = '', raised = ''] = atomPattern.exec(text) ?? [];
    const unit = spelling === text ? undefined : unitOf(spelling);
    // Degrees with a zero of their own have no place in a compound.
    if (!unit || unit.zero || (at > 0 && joined === '')) return undefined;
    const size = raised === '' ? 1 : figure(raised);
    const under = joined === '/' || joined.toLowerCase() === 'per';
    factor = multiply(factor, power(unit.factor, under ? -size : size));
    dimension = times(dimension, toPower(unit.dimension, under ? -size : size));
    symbol += (under ? '/' : at > 0 ? '·' : '') + unit.symbol + (size === 1 ? '' : superscript(size));
    says = saysWith(says, unit.says, size, under);
    at += whole.length;
  }
  return { symbol, factor, dimension, says };
}

/** `newton` and `metre` as `newton metre`; under a stroke, `newton per square metre`. */
function saysWith([one, many]: Unit['says'], next: Unit['says'], size: number, under: boolean): Unit['says'] {
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
