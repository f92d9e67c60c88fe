/**
 * The table of units: what each is, exactly, and how it is spelled.
 *
 * Every factor follows from the SI by exact definitions: the international yard and pound (0.9144 m and
 * 0.453 592 37 kg, agreement of 1959), standard gravity 9.806 65 m/s² (3rd CGPM, 1901), the US gallon of 231 cubic
 * inches, the nautical mile of 1852 m, the horsepower of 550 ft·lbf/s (all in NIST Special Publication 811,
 * appendix B). A board foot is 144 cubic inches (trade usage in the United States and Canada).
 */
import { type Dimension, dimension } from './dimension';
import { type Exact, exact } from './exact';

export interface Smaller {
  readonly unit: string;
  readonly count: number;
  readonly plural: string;
  /** True if the smaller unit may go unwritten: `5' 3`. */
  readonly bare: boolean;
}

export interface UnitRow {
  /** By units above it; empty for a base. */
  readonly is: string;
  /** One and many, in full. */
  readonly words: readonly [one: string, many: string];
  /** Other spellings, parted by commas. */
  readonly also?: string;
  readonly smaller?: Smaller;
  readonly zero?: Exact;
}

export const bases: Readonly<Record<string, Dimension>> = {
  m: dimension({ length: 1 }),
  kg: dimension({ mass: 1 }),
  s: dimension({ time: 1 }),
  K: dimension({ temperature: 1 }),
  rad: dimension({ angle: 1 }),
  money: dimension({ money: 1 }),
};

/** π to 50 decimals, more than any double can tell from π itself. */
export const pi: Exact = { top: 314159265358979323846264338327950288419716939937510n, bottom: 10n ** 50n };

/** A row whose plural takes an s. */
function unit(is: string, one: string, also = '', more: Pick<UnitRow, 'smaller' | 'zero'> = {}): UnitRow {
  return { is, words: [one, `${one}s`], also, ...more };
}

function parts(unit: string, count: number, plural: string, bare = false): Pick<UnitRow, 'smaller'> {
  return { smaller: { unit, count, plural, bare } };
}

export const rows: Readonly<Record<string, UnitRow>> = {
  m: unit('', 'metre', 'meter,meters'),
  kg: unit('', 'kilogram', 'kilo,kilos'),
  s: unit('', 'second', 'sec,secs'),
  K: unit('', 'kelvin'),
  rad: unit('', 'radian'),
  money: { is: '', words: ['of money', 'of money'], also: '$,€,£,¤' },

  mm: unit('0.001 m', 'millimetre', 'millimeter,millimeters'),
  cm: unit('0.01 m', 'centimetre', 'centimeter,centimeters'),
  dm: unit('0.1 m', 'decimetre'),
  km: unit('1000 m', 'kilometre', 'kilometer,kilometers'),
  µm: unit('0.000001 m', 'micrometre', 'μm,um,micron,microns'),
  in: { is: '0.0254 m', words: ['inch', 'inches'], also: '"' },
  ft: { is: '12 in', words: ['foot', 'feet'], also: "',lf", ...parts('in', 12, 'inches', true) },
  yd: unit('3 ft', 'yard', '', parts('ft', 3, 'feet')),
  mi: unit('5280 ft', 'mile'),
  nmi: unit('1852 m', 'nautical mile'),
  thou: { is: '0.001 in', words: ['thousandth of an inch', 'thousandths of an inch'], also: 'mil,mils' },

  L: unit('0.001 m³', 'litre', 'liter,liters'),
  mL: unit('0.001 L', 'millilitre', 'cc,milliliter,milliliters'),
  cL: unit('0.01 L', 'centilitre'),
  gal: unit('231 in³', 'gallon', 'US gal,US gallon,US gallons', parts('qt', 4, 'quarts')),
  qt: unit('0.25 gal', 'quart', 'US qt', parts('fl oz', 32, 'fluid ounces')),
  pt: unit('0.125 gal', 'pint', 'US pt', parts('fl oz', 16, 'fluid ounces')),
  'fl oz': unit('0.0078125 gal', 'fluid ounce', 'fl. oz,US fl oz'),
  'imp gal': unit('4.54609 L', 'imperial gallon', 'UK gal'),
  'bd ft': { is: '144 in³', words: ['board foot', 'board feet'], also: 'bf' },

  g: unit('0.001 kg', 'gram'),
  mg: unit('0.001 g', 'milligram'),
  t: unit('1000 kg', 'tonne'),
  lb: unit('0.45359237 kg', 'pound', 'lbs', parts('oz', 16, 'ounces', true)),
  oz: unit('0.0625 lb', 'ounce'),

  min: unit('60 s', 'minute', 'mins', parts('s', 60, 'seconds')),
  h: unit('60 min', 'hour', 'hr,hrs', parts('min', 60, 'minutes', true)),
  d: unit('24 h', 'day', '', parts('h', 24, 'hours')),
  week: unit('7 d', 'week'),

  N: unit('kg·m/s²', 'newton'),
  kN: unit('1000 N', 'kilonewton'),
  kgf: { is: '9.80665 N', words: ['kilogram of force', 'kilograms of force'], also: 'kp' },
  lbf: {
    is: '9.80665 lb·m/s²',
    words: ['pound of force', 'pounds of force'],
    also: 'lb force,pound-force,pounds-force',
  },
  Pa: unit('N/m²', 'pascal'),
  kPa: unit('1000 Pa', 'kilopascal'),
  MPa: unit('1000000 Pa', 'megapascal'),
  GPa: unit('1000 MPa', 'gigapascal'),
  bar: unit('100000 Pa', 'bar'),
  psi: { is: 'lbf/in²', words: ['pound per square inch', 'pounds per square inch'] },
  'million psi': {
    is: '1000000 psi',
    words: ['million pounds per square inch', 'million pounds per square inch'],
  },
  ksi: { is: '1000 psi', words: ['thousand pounds per square inch', 'thousand pounds per square inch'] },
  J: unit('N·m', 'joule'),
  kJ: unit('1000 J', 'kilojoule'),
  W: unit('J/s', 'watt'),
  kW: unit('1000 W', 'kilowatt'),
  hp: { is: '550 ft·lbf/s', words: ['horsepower', 'horsepower'] },
  kn: unit('1852 m/h', 'knot', 'kt,kts'),
  mph: { is: 'mi/h', words: ['mile an hour', 'miles an hour'] },

  '°': unit('rad', 'degree', 'deg,degs', parts('arcmin', 60, 'minutes')),
  arcmin: unit('1/60 °', 'minute of arc'),
  'Δ°C': { is: 'K', words: ['degree Celsius of difference', 'degrees Celsius of difference'], also: 'ΔK,C°' },
  'Δ°F': {
    is: '5/9 K',
    words: ['degree Fahrenheit of difference', 'degrees Fahrenheit of difference'],
    also: 'F°',
  },
  '°C': {
    is: 'K',
    words: ['degree Celsius', 'degrees Celsius'],
    also: 'C,degC,deg C,celsius',
    zero: exact(27315, 100),
  },
  '°F': {
    is: '5/9 K',
    words: ['degree Fahrenheit', 'degrees Fahrenheit'],
    also: 'F,degF,deg F,fahrenheit',
    zero: exact(45967 * 5, 900),
  },
  '%': { is: '0.01', words: ['percent', 'percent'], also: 'per cent,pct' },
};

/** Compounds with spellings of their own. */
export const compounds: Readonly<Record<string, string>> = {
  ft·lbf: 'ft-lbf,ft-lb,ft-lbs,ft lbf,ft lb,ft lbs,foot-pound,foot-pounds',
  lbf·ft: 'lb-ft,lbf-ft',
  in·lbf: 'in-lbf,in-lb,in-lbs',
  N·m: 'Nm,N m',
  'lb/ft³': 'pcf',
  'lbf/ft²': 'psf',
  'km/h': 'kph',
};

/** Lengths whose squares and cubes are also written in words: `sq ft`, `cubic metres`. */
export const raisedInWords: readonly string[] = ['mm', 'cm', 'm', 'in', 'ft', 'yd'];
