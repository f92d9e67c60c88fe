/** Figures with a unit in a text, in signs and in letters, and those that stand in one system of units only. */

type System = 'metric' | 'inch';
type Unit = readonly [sort: string, system: System, factor: number];

/**
 * What each sign measures, its system, and how much it is. Factors: NIST Special Publication 811, appendix B.
 * A pound of force and one of mass are said alike, so both are one sort.
 */
const units: Readonly<Record<string, Unit>> = {
  mm: ['length', 'metric', 1],
  cm: ['length', 'metric', 10],
  m: ['length', 'metric', 1000],
  km: ['length', 'metric', 1e6],
  in: ['length', 'inch', 25.4],
  ft: ['length', 'inch', 304.8],
  yd: ['length', 'inch', 914.4],
  'mm²': ['area', 'metric', 1],
  'cm²': ['area', 'metric', 100],
  'm²': ['area', 'metric', 1e6],
  'in²': ['area', 'inch', 645.16],
  'ft²': ['area', 'inch', 92_903.04],
  g: ['load', 'metric', 0.001],
  kg: ['load', 'metric', 1],
  N: ['load', 'metric', 1 / 9.80665],
  kN: ['load', 'metric', 1000 / 9.80665],
  oz: ['load', 'inch', 0.028_349_5],
  lb: ['load', 'inch', 0.453_592_37],
  lbf: ['load', 'inch', 0.453_592_37],
  mL: ['volume', 'metric', 1],
  L: ['volume', 'metric', 1000],
  'fl oz': ['volume', 'inch', 29.5735],
  pt: ['volume', 'inch', 473.176],
  qt: ['volume', 'inch', 946.353],
  gal: ['volume', 'inch', 3785.41],
  kPa: ['pressure', 'metric', 1],
  MPa: ['pressure', 'metric', 1000],
  psi: ['pressure', 'inch', 6.894_757],
  'g/m²': ['mass on an area', 'metric', 1],
  'kg/m²': ['mass on an area', 'metric', 1000],
  'oz/yd²': ['mass on an area', 'inch', 33.9057],
  'lb/ft²': ['mass on an area', 'inch', 4882.43],
  'mL/m²': ['volume on an area', 'metric', 1],
  'fl oz/ft²': ['volume on an area', 'inch', 318.326],
  'kg/m³': ['density', 'metric', 1],
  'kg/L': ['density', 'metric', 1000],
  'g/mL': ['density', 'metric', 1000],
  'lb/ft³': ['density', 'inch', 16.018_46],
  '°C': ['temperature', 'metric', 1],
  '°F': ['temperature', 'inch', 1 / 1.8],
};

/** Names of units, for figures with letters: `a metre`, `two feet`. */
const spelt: Readonly<Record<string, string>> = {
  millimetre: 'mm',
  centimetre: 'cm',
  metre: 'm',
  kilometre: 'km',
  inch: 'in',
  foot: 'ft',
  feet: 'ft',
  yard: 'yd',
  gram: 'g',
  kilogram: 'kg',
  ounce: 'oz',
  pound: 'lb',
  newton: 'N',
  litre: 'L',
  pint: 'pt',
  quart: 'qt',
  gallon: 'gal',
};
const numerals: Readonly<Record<string, string>> = {
  'a quarter of a': '1/4',
  'two thousandths of an': '0.002',
  'half a': '1/2',
  'half an': '1/2',
  a: '1',
  an: '1',
  one: '1',
  two: '2',
  three: '3',
  four: '4',
  six: '6',
  ten: '10',
};

const either = (words: Readonly<Record<string, unknown>>): string =>
  Object.keys(words)
    .toSorted((a, b) => b.length - a.length)
    .join('|');
const NUMBER = String.raw`-?(?:(?:\d+ )?\d+/\d+|\d{1,3}(?:[ ,]\d{3})+|\d+(?:\.\d+)?)`;
const inLetters = new RegExp(`\\b(${either(numerals)}|${NUMBER}) (${either(spelt)})(?:e?s)?\\b`, 'gi');
/** `1 in 8` is a slope, `1 in {oneIn}` a chance, and `125 in other softwood` no inch. */
const figure = new RegExp(
  `(?<![\\w./,])(${NUMBER}(?:(?: to| by| or| and|,) ${NUMBER})*) (${either(units)})(?![\\w²³/·])(?! (?:\\d|\\{|hardwood|other))`,
  'g',
);

interface Figure {
  readonly text: string;
  readonly sort: string;
  readonly system: System;
  readonly value: number;
}

/** `1 3/8`, `10 000`, `6,400`, `0.15`. */
function numberOf(text: string): number {
  const [, whole = '0', top, under] = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(text) ?? [];
  return top === undefined
    ? Number(text.replaceAll(/[ ,]/g, ''))
    : Number(whole) + Number(top) / Number(under);
}

function figuresIn(text: string): readonly Figure[] {
  const plain = text
    .replaceAll(
      inLetters,
      (_, number: string, unit: string) =>
        `${numerals[number.toLowerCase()] ?? number} ${spelt[unit.toLowerCase()]}`,
    )
    .replaceAll(
      /(\d+) ft (\d+) in\b/g,
      (_, feet: string, inches: string) => `${Number(feet) * 12 + Number(inches)} in`,
    );
  return [...plain.matchAll(figure)].flatMap(([whole, numbers = '', sign = '']) => {
    const [sort, system, factor] = units[sign]!; // the signs of the pattern are the table's
    const zero = sign === '°F' ? 32 : 0;
    return numbers
      .split(/ (?:to|by|or|and) |, /)
      .map((number) => ({ text: whole, sort, system, value: (numberOf(number) - zero) * factor }));
  });
}

/** A person rounds, farthest on a rule: 1/32 in for a millimetre. */
const ROUNDING = 0.22;

function isTwin(a: Figure, b: Figure): boolean {
  if (a.sort !== b.sort || a.system === b.system) return false;
  const apart = Math.abs(a.value - b.value);
  return a.sort === 'temperature'
    ? apart < 1
    : apart <= ROUNDING * Math.max(Math.abs(a.value), Math.abs(b.value));
}

/** Figures of a text that stand in one system only: none of the other is within what a person rounds. */
export function alone(text: string): readonly string[] {
  const all = figuresIn(text);
  return [...new Set(all.filter((one) => !all.some((other) => isTwin(one, other))).map((one) => one.text))];
}
