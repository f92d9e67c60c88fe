/**
 * A figure in a fixed text stands in it in both systems: `60 to 75 mm (2 1/2 to 3 in)`. Texts are shown as they are,
 * and who works in feet and inches has no millimetres on the rule.
 */
import { describe, expect, test } from 'vitest';
import { demoBoat } from '../../src/boat';
import { cells } from '../../src/cells/all';
import { wholeCatalogue } from '../../src/notebook/whole-catalogue';

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

/** Figures of a text that stand in one system only. */
function alone(text: string): readonly string[] {
  const all = figuresIn(text);
  return [...new Set(all.filter((one) => !all.some((other) => isTwin(one, other))).map((one) => one.text))];
}

/** Where a figure may stand alone, and why. */
const excused: readonly (readonly [text: RegExp, why: string])[] = [
  [/√\(2 g h\)/, 'g is gravity'],
  [/13 d - 30 mm/, 'a formula of the European code, true in its own unit only'],
  [/10 D \+ 0\.5 to 1\/4 in/, 'a formula of the American code, true in its own unit only'],
  [/0\.060 in \+ 0\.013 in for each gauge/, 'the rule of a standard, in its own unit'],
  [/3,360, 4,320 or 5,280 psi/, 'constants of an older code, in its own unit'],
  [/1\.12 x specific gravity .* x 1000 kg\/m³/, 'what a cubic metre of water weighs, as the formula has it'],
  [/6 in of plate on 1\/4 in/, 'rows of a printed table'],
  [/ring nails of 2 to 2\.7 mm .*\(14 to 12 gauge/, 'wire goes by gauge where nails are sold by the inch'],
  [/two drops \(0\.1 mL\)/, 'drops are the same everywhere'],
  [/sold by 0\.3 m or by two feet/, 'each system’s own lengths at the yard'],
];

/** Keys under which a declaration holds what is read as it stands. */
const read = new Set(
  'label note says limit meaning title question caption turns from source text'.split(' '),
);
/** Links and formulas stand under the same key as the words for where a tape is laid. */
const isLink = (place: string): boolean => place.endsWith('.from') && !place.includes('.answers.');

/** Every text of a declaration that is shown as it is, with its place. */
function fixedIn(value: unknown, place: string, shown = false): readonly (readonly [string, string])[] {
  if (typeof value === 'string') return shown && !isLink(place) ? [[place, value]] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    fixedIn(inner, `${place}.${key}`, read.has(key) || key === 'inWords' || place.endsWith('.cautions')),
  );
}

const { given, derived } = wholeCatalogue(demoBoat);
const texts = [
  ...cells.flatMap((cell) => fixedIn(cell, cell.id)),
  ...[...given, ...derived].flatMap((quantity) => fixedIn(quantity, quantity.name)),
];

describe('figures in fixed texts', () => {
  test.each([
    ['common practice: 200 to 300 N at arm’s reach', ['200 to 300 N']],
    ['1 km where it is straight', ['1 km']],
    ['half a millimetre between layers, a metre at most', ['1/2 mm', '1 m']],
    ['a difference of 1/8 in is accepted', ['1/8 in']],
    ['most take 35 to 48 mm (1 3/8 in)', ['35 to 48 mm']],
    ['25 mm (1/2 in)', ['25 mm', '1/2 in']],
    ['cures at 20 °C (78 °F)', ['20 °C', '78 °F']],
    ['20 °C (68 °F), down to -50 °C (-58 °F)', []],
    ['Leave {gap}, 1 in 8; a metre (3 ft 3 in) at most; 1 in {oneIn} breaks', []],
    ['200 to 300 N (45 to 65 lbf), 10 000 mm²', ['10 000 mm²']],
  ])('what stands alone in "%s"', (text, found) => {
    expect(alone(text)).toStrictEqual(found);
  });

  test('stand in both systems', () => {
    expect(texts.length).toBeGreaterThan(3000);
    const amiss = texts
      .filter(([, text]) => !excused.some(([pattern]) => pattern.test(text)))
      .flatMap(([place, text]) => alone(text).map((one) => `${place}: ${one}, in "${text}"`));
    expect(amiss).toStrictEqual([]);
  });

  test.each(excused)('%s is excused: %s', (pattern) => {
    expect(texts.some(([, text]) => pattern.test(text) && alone(text).length > 0)).toBe(true);
  });
});
