import { all, create, type FactoryFunctionMap } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { kindOf, type KindId } from '../../src/measure';
import { nearestDouble } from '../../src/measure/exact';
import { rows } from '../../src/measure/unit-table';
import { unitAt, unitOf } from '../../src/measure/units';

const math = create(all as unknown as FactoryFunctionMap, { number: 'BigNumber', precision: 64 });

const factorOf = (symbol: string) => nearestDouble(unitOf(symbol)!.factor);
const relative = (a: number, b: number) => Math.abs(a - b) / Math.abs(b);

/** The same unit as the general library spells it. */
const mathjsName: Readonly<Record<string, string>> = {
  µm: 'um',
  gal: 'gallon',
  qt: 'quart',
  pt: 'pint',
  'fl oz': 'floz',
  oz: 'ounce',
  t: 'tonne',
  min: 'minute',
  h: 'hour',
  d: 'day',
  '°': 'deg',
  arcmin: 'arcmin',
  in: 'inch',
  yd: 'yard',
  mi: 'mile',
  thou: 'mil',
  L: 'litre',
  mL: 'millilitre',
  cL: 'centilitre',
  kgf: '9.80665 kg m / s^2',
  nmi: '1852 m',
  'imp gal': '4.54609 litre',
  'bd ft': '144 in^3',
  ksi: '1000 psi',
  'million psi': '1000000 psi',
  kn: '1852 m / hour',
  mph: 'mile / hour',
  week: '7 day',
};
const notUnits = new Set(['money', '%', '°C', '°F', 'Δ°C', 'Δ°F']);

describe('factors against mathjs Units, an independent table', () => {
  const symbols = Object.keys(rows).filter((symbol) => !notUnits.has(symbol));
  test.each(symbols)('%s', (symbol) => {
    const name = mathjsName[symbol] ?? symbol;
    const other = math.unit(/^\d/.test(name) ? name : `1 ${name}`).toSI() as unknown as { value: unknown };
    // mathjs rounds a few of its factors: psi to 12 figures, US measures of volume to 6 or 7.
    const coarse = ['gal', 'qt', 'pt', 'fl oz', 'psi', 'ksi', 'million psi', 'hp'].includes(symbol);
    expect(relative(factorOf(symbol), Number(other.value))).toBeLessThan(coarse ? 2e-6 : 1e-14);
  });
  const sameKind: readonly [KindId, string][] = [
    ['stress', 'MPa'],
    ['moment', 'N m'],
    ['density', 'kg/m^3'],
    ['areaDensity', 'g/m^2'],
    ['stiffness', 'N/mm'],
    ['power', 'kW'],
    ['secondMoment', 'cm^4'],
    ['speed', 'm/s'],
    ['acceleration', 'm/s^2'],
    ['bendingStiffness', 'N m^2'],
    ['flow', 'litre/minute'],
  ];
  test.each(sameKind)('the dimension of a %s is that of its %s', (kind, text) => {
    // mathjs puts mass first, then length and time.
    const [mass, length, time] = (math.unit(`1 ${text}`) as unknown as { dimensions: number[] }).dimensions;
    expect(kindOf(kind).dimension.slice(0, 3)).toStrictEqual([length, mass, time]);
  });
});

// NIST Special Publication 811 (2008), appendix B.8, to the seven figures printed there; from memory.
const nist: readonly [string, number][] = [
  ['bd ft', 2.359737e-3],
  ['hp', 7.456999e2],
  ['kn', 5.144444e-1],
  ['lbf', 4.448222],
  ['psi', 6.894757e3],
  ['ft·lbf', 1.355818],
  ['lbf/ft', 1.45939e1],
  ['lbf/in', 1.751268e2],
  ['lb/ft³', 1.601846e1],
  ['oz/yd²', 3.390575e-2],
  ['gal', 3.785412e-3],
  ['qt', 9.463529e-4],
  ['pt', 4.731765e-4],
  ['fl oz', 2.957353e-5],
  ['oz', 2.834952e-2],
  ['mph', 4.4704e-1],
  ['thou', 2.54e-5],
  ['in⁴', 4.162314e-7],
  ['in³', 1.638706e-5],
  ['ft³', 2.831685e-2],
  ['yd²', 8.361274e-1],
  ['lb/ft', 1.488164],
  ['lbf/ft²', 4.788026e1],
  ['°', 1.745329e-2],
  ['gal/min', 6.30902e-5],
  ['lb·ft²', 4.214011e-2],
  ['Δ°F', 5.555556e-1],
];

describe('factors against NIST SP 811', () => {
  test.each(nist)('%s', (symbol, printed) => {
    // Half a unit in the seventh figure.
    expect(relative(factorOf(symbol), printed)).toBeLessThan(5e-7);
  });
  test('exact by definition', () => {
    expect([
      factorOf('ft'),
      factorOf('in'),
      factorOf('lb'),
      factorOf('lbf'),
      factorOf('gal'),
      factorOf('kn'),
    ]).toStrictEqual([0.3048, 0.0254, 0.45359237, 4.4482216152605, 0.003785411784, 1852 / 3600]);
  });
  test('°F: water boils at 212 °F and freezes at 32 °F', () => {
    const { factor, zero } = unitOf('°F')!;
    expect(212 * nearestDouble(factor) + nearestDouble(zero!)).toBeCloseTo(373.15, 10);
    expect(32 * nearestDouble(factor) + nearestDouble(zero!)).toBeCloseTo(273.15, 10);
  });
});

describe('spellings', () => {
  const alike: readonly (readonly string[])[] = [
    ['mm', 'MM', 'millimetre', 'millimeters', 'Mm'],
    ['in', '"', 'inch', 'Inches', 'in.'],
    ['ft', "'", 'foot', 'FEET'],
    ['N/mm²', 'N/mm^2', 'N/mm2', 'newtons per square millimetre', 'N per mm²'],
    ['kg/m³', 'kg/m^3', 'kg/m3', 'kg per cu m', 'kilograms per cubic metre'],
    ['oz/yd²', 'oz/yd2', 'oz per sq yd'],
    ['ft²', 'sq ft', 'square feet', 'ft^2', 'square foot'],
    ['ft·lbf', 'ft-lb', 'ft*lbf', 'ft lbf', 'foot-pounds'],
    ['fl oz', 'fl. oz', 'fluid ounces', 'FL OZ'],
    ['gal', 'US gal', 'gallons'],
    ['°', 'deg', 'degrees'],
    ['µm', 'μm', 'um', 'microns'],
    ['%', 'percent', 'per cent'],
    ['m⁻¹', 'm^-1'],
    ['/m', 'per m', 'per metre'],
  ];
  test.each(alike)('%s', (...spellings) => {
    const symbol = unitOf(spellings[0]!)!.symbol;
    const read = spellings.map((spelling) => ({
      symbol: unitOf(spelling)?.symbol,
      end: unitAt(`3 ${spelling}`, 2)?.end,
    }));
    expect(read).toStrictEqual(spellings.map((spelling) => ({ symbol, end: spelling.length + 2 })));
  });
  test('letters of either size only where that leaves no doubt', () => {
    expect(unitOf('kN')?.symbol).toBe('kN');
    expect(unitOf('kn')?.symbol).toBe('kn');
    expect(unitOf('KN')).toBeUndefined();
  });
  test.each([
    'furlong',
    'mmm',
    'm/',
    '/',
    'm//s',
    '°C/m',
    'N/°F',
    'in2x',
    '',
    ' ',
    '__proto__',
    'constructor',
    'm^9',
  ])('"%s" is none', (text) => {
    expect(unitOf(text)).toBeUndefined();
  });
  test('a unit ends where a dotted name or a call begins', () => {
    expect(unitAt('m.length', 0)).toBeUndefined();
    expect(unitAt('min(3)', 0)).toBeUndefined();
    expect(unitAt('N/mm.x', 0)?.end).toBe(1);
  });
  test('says itself in words', () => {
    expect(unitOf('N/mm²')?.words).toStrictEqual([
      'newton per square millimetre',
      'newtons per square millimetre',
    ]);
    expect(unitOf('cm⁴')?.words).toStrictEqual(['centimetre to the power 4', 'centimetres to the power 4']);
    expect(unitOf('/m')?.words).toStrictEqual(['per metre', 'per metre']);
  });
  test('every unit of the table reads back by each of its spellings', () => {
    for (const [symbol, { words, also }] of Object.entries(rows)) {
      for (const spelling of [...words, ...(also ? also.split(',') : [])]) {
        expect({ spelling, symbol: unitOf(spelling)?.symbol }).toStrictEqual({ spelling, symbol });
      }
    }
  });
});
