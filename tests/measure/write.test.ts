import { describe, expect, test } from 'vitest';
import {
  type KindId,
  kinds,
  plainShown,
  type Shown,
  write,
  writeDifference,
  type WriteOptions,
} from '../../src/measure';

const feet: Shown = { length: 'feet', fraction: 16, mass: 'lb', money: '$' };
const inches: Shown = { ...feet, length: 'inches' };
const inch = 0.0254;

describe('lengths on a tape', () => {
  const marks: readonly [string, number, string, string, string][] = [
    // inches, text, remainder, spoken
    ['on the mark', 14.625, '14 5/8 in', '', '14 and 5/8 inches'],
    ['nought', 0, '0 in', '', '0 inches'],
    ['one', 1, '1 in', '', '1 inch'],
    ['a fraction alone', 0.625, '5/8 in', '', '5/8 of an inch'],
    ['in lowest terms', 0.75, '3/4 in', '', '3/4 of an inch'],
    ['just under two feet', 23.9375, '23 15/16 in', '', '23 and 15/16 inches'],
    ['two feet', 24, `2' 0"`, '', '2 feet'],
    ['feet and inches', 63.5, `5' 3 1/2"`, '', '5 feet 3 and 1/2 inches'],
    ['feet and a fraction', 60.75, `5' 0 3/4"`, '', '5 feet 3/4 of an inch'],
    ['feet and one inch', 61, `5' 1"`, '', '5 feet 1 inch'],
    ['rounded up into the next foot', 35.99, `3' 0"`, '0.01 in scant', '3 feet'],
    ['past the mark', 14.635, '14 5/8 in', '0.01 in strong', '14 and 5/8 inches'],
    ['short of the mark', 14.605, '14 5/8 in', '0.02 in scant', '14 and 5/8 inches'],
    ['past by a 64th', 14.625 + 1 / 64, '14 5/8 in', '1/64 in strong', '14 and 5/8 inches'],
    ['short by a 32nd', 14.625 - 1 / 32 + 1e-6, '14 5/8 in', '1/32 in scant', '14 and 5/8 inches'],
    ['past by less than a pencil line', 14.629, '14 5/8 in', '', '14 and 5/8 inches'],
    ['below nought', -3.5, '−3 1/2 in', '', 'minus 3 and 1/2 inches'],
    ['below nought and past the mark', -3.51, '−3 1/2 in', '0.01 in strong', 'minus 3 and 1/2 inches'],
    ['next to nothing', 1e-6, '0 in', '', '0 inches'],
    ['less than half a mark', 0.018, '1/64 in', '', '1/64 of an inch'],
    ['less than half a mark below', -0.03, '−1/32 in', '', 'minus 1/32 of an inch'],
    ['next to nothing below', -1e-6, '0 in', '', '0 inches'],
  ];
  test.each(marks)('%s', (_, size, text, remainder, spoken) => {
    expect(write(size * inch, 'length', feet)).toMatchObject({ text, remainder, spoken });
  });
  // The marks of a steel rule, from memory: no published table. An eighth is too coarse for three sixteenths.
  test.each([
    [3 / 16, '3/16 in', ''],
    [0.197, '3/16 in', '0.01 in strong'],
    [0.059, '1/16 in', ''],
    [-3 / 16, '−3/16 in', ''],
    // 6 and 9 mm ply are a scant quarter and three eighths in the trade.
    [6 / 25.4, '1/4 in', '0.01 in scant'],
    [9 / 25.4, '3/8 in', '0.02 in scant'],
  ])(
    'on a tape of eighths %d in is read on a finer scale only where an eighth would be far off',
    (size, text, remainder) => {
      expect(write(size * inch, 'length', { ...feet, fraction: 8 })).toMatchObject({ text, remainder });
    },
  );
  test('a limit goes to the next mark on its own side, of a scale fine enough for it', () => {
    const tape = { ...feet, fraction: 8 } as const;
    expect(write(0.24 * inch, 'length', tape, { bound: 'most' }).text).toBe('7/32 in');
    expect(write(0.26 * inch, 'length', tape, { bound: 'least' }).text).toBe('9/32 in');
  });
  test('what a tolerance forgives is not told; a tolerance of inches is written in inches', () => {
    const tape = { ...feet, fraction: 8 } as const;
    const quarter = 0.25 * inch;
    expect(write(6.72 * inch, 'length', tape, { within: quarter })).toMatchObject({
      text: '6 3/4 in',
      told: '6 3/4 in',
    });
    expect(write(6.68 * inch, 'length', tape, { within: quarter }).told).toBe('6 5/8 in');
    expect(write(6.69 * inch, 'length', tape, { within: quarter / 4 }).told).toBe('6 11/16 in');
    expect(write(214.4 * inch, 'length', tape, { within: 0.1 }).told).toBe(`17' 10"`);
    expect(write(214.9 * inch, 'length', tape, { within: 0.1, bound: 'most' }).told).toBe(`17' 10"`);
  });
  test('to the fraction on the tape', () => {
    const size = 14.592 * inch;
    expect(
      [8, 16, 32].map((fraction) => write(size, 'length', { ...feet, fraction: fraction as 8 }).text),
    ).toStrictEqual(['14 5/8 in', '14 9/16 in', '14 19/32 in']);
    expect(write(size, 'length', { ...feet, fraction: 8 }).remainder).toBe('0.03 in scant');
  });
  const eighths: readonly [number, string, string][] = [
    [63.5, '5-3-4', '5 feet, 3 inches, 4 eighths'],
    [63.5625, '5-3-4+', '5 feet, 3 inches, 4 eighths and a sixteenth'],
    [13.125, '1-1-1', '1 foot, 1 inch, 1 eighth'],
    [0, '0-0-0', '0 feet, 0 inches, 0 eighths'],
    [-3.5, '−0-3-4', 'minus 0 feet, 3 inches, 4 eighths'],
    [11.99, '1-0-0', '1 foot, 0 inches, 0 eighths'],
  ];
  test.each(eighths)('%s in as a table of offsets has it', (size, text, spoken) => {
    expect(write(size * inch, 'length', plainShown, { eighths: true })).toMatchObject({ text, spoken });
  });
});

describe('metric and decimal lengths', () => {
  const cases: readonly [number, Shown, WriteOptions, string, string, string][] = [
    [0.371, plainShown, {}, '371 mm', '', '371 millimetres'],
    [0.3714, plainShown, {}, '371.4 mm', '', '371.4 millimetres'],
    [0.3714, plainShown, { tape: true }, '371 mm', '0.4 mm strong', '371 millimetres'],
    [0.3706, plainShown, { tape: true }, '371 mm', '0.4 mm scant', '371 millimetres'],
    [0.37104, plainShown, { tape: true }, '371 mm', '', '371 millimetres'],
    [0.001, plainShown, {}, '1 mm', '', '1 millimetre'],
    [4.5213, plainShown, {}, '4521 mm', '', '4521 millimetres'],
    [-0.1, plainShown, {}, '−100 mm', '', 'minus 100 millimetres'],
    [1e-9, plainShown, {}, '0 mm', '', '0 millimetres'],
    [-1e-9, plainShown, { tape: true }, '0 mm', '', '0 millimetres'],
    [14.625 * inch, inches, {}, '14.63 in', '', '14.63 inches'],
    [0.625 * inch, inches, {}, '0.625 in', '', '0.625 inches'],
    [204.7244 * inch, inches, {}, '204.72 in', '', '204.72 inches'],
    [4.5213, plainShown, { unit: 'm' }, '4.521 m', '', '4.521 metres'],
    [14.625 * inch, feet, { unit: 'in' }, '14.63 in', '', '14.63 inches'],
    [0.371, plainShown, { sign: true }, '+371 mm', '', 'plus 371 millimetres'],
    [0, plainShown, { sign: true }, '0 mm', '', '0 millimetres'],
    [-0.371, plainShown, { sign: true }, '−371 mm', '', 'minus 371 millimetres'],
  ];
  test.each(cases)('%s m as %j %j', (size, shown, options, text, remainder, spoken) => {
    expect(write(size, 'length', shown, options)).toMatchObject({ text, remainder, spoken });
  });
});

describe('other kinds have the figures that a builder reads', () => {
  const cases: readonly [KindId, number, string, string][] = [
    // SI value, metric, customary
    ['area', 2.97289728, '2.97 m²', '32 ft²'],
    ['area', 0.0012, '12 cm²', '1.86 in²'],
    ['volume', 0.00125, '1.25 L', '1.32 qt'],
    ['volume', 0.00035, '350 mL', '11.8 fl oz'],
    ['volume', 0.00099999, '1 L', '1.06 qt'],
    ['mass', 12.345, '12.3 kg', '27.2 lb'],
    ['mass', 0.25, '250 g', '8.8 oz'],
    ['density', 512.4, '512 kg/m³', '32 lb/ft³'],
    ['areaDensity', 0.2, '200 g/m²', '5.9 oz/yd²'],
    ['areaDensity', 6.6, '6.6 kg/m²', '1.35 lb/ft²'],
    ['force', 123.4, '123 N', '27.7 lbf'],
    ['force', 12345, '12.3 kN', '2780 lbf'],
    ['stress', 45.32e6, '45.3 MPa', '6570 psi'],
    ['stress', 0.0456e6, '0.046 MPa', '6.6 psi'],
    ['stress', 12.4e9, '12.4 GPa', '1.8 million psi'],
    ['moment', 40.06, '40.1 N·m', '29.5 ft·lbf'],
    ['temperature', 293.15, '20 °C', '68 °F'],
    ['temperature', 263.15, '−10 °C', '14 °F'],
    ['warmth', 5, '5 °C', '9 °F'],
    ['time', 5400, '1.5 h', '1.5 h'],
    ['time', 600, '10 min', '10 min'],
    ['minutes', 200000, '2.3 d', '2.3 d'],
    ['speed', 3.0866666, '6 kn', '6 kn'],
    ['power', 7456.999, '7.46 kW', '10 hp'],
    ['angle', Math.PI / 15, '12°', '12°'],
    ['angle', 0.2115, '12.1°', '12.1°'],
    ['share', 0.1234, '12.3 %', '12.3 %'],
    ['share', 1.5e-17, '0 %', '0 %'],
    ['slope', 8, '1 in 8', '1 in 8'],
    ['slope', 7.456, '1 in 7.46', '1 in 7.46'],
    ['ratio', 1.23456, '1.23', '1.23'],
    ['number', 0.0345, '0.0345', '0.0345'],
    ['number', 1.2e15, '1.2e15', '1.2e15'],
    ['number', 4.56e-10, '4.56e-10', '4.56e-10'],
    ['count', 12, '12', '12'],
    ['money', 1234.5, '1234.50', '$1234.50'],
    ['money', -3, '−3.00', '−$3.00'],
    ['money', -0.001, '0.00', '$0.00'],
    ['pricePerLength', 12.5, '12.50/m', '$3.81/ft'],
    ['curvature', 0.25, '0.25/m', '0.0762/ft'],
    ['secondMoment', 4.5e-6, '450 cm⁴', '10.8 in⁴'],
    ['lumber', 0.0235973, '0.0236 m³', '10 bd ft'],
    ['film', 0.000125, '125 µm', '4.9 thou'],
    ['spreadingRate', 10000, '10 m²/L', '407 ft²/gal'],
  ];
  test.each(cases)('%s %s', (kind, si, metric, customary) => {
    expect([write(si, kind, plainShown).text, write(si, kind, feet).text]).toStrictEqual([metric, customary]);
  });
  test.each(kinds.filter(({ id }) => id !== 'choice'))('$id: nought is written without a sign', ({ id }) => {
    for (const nought of [0, -0])
      expect(write(nought, id, plainShown).text).toMatch(
        id === 'temperature' ? /273/ : /^(1 in )?0(\.00)?( ?[^\d].*)?$/,
      );
  });
  test('what is not finite is written as such, in words', () => {
    for (const value of [Number.NaN, Infinity, -Infinity]) {
      expect(write(value, 'length', feet)).toMatchObject({
        text: 'no value',
        remainder: '',
        spoken: 'no value',
      });
    }
  });
  test('is spoken in words', () => {
    expect(write(45.3e6, 'stress', plainShown).spoken).toBe('45.3 megapascals');
    expect(write(1e6, 'stress', plainShown).spoken).toBe('1 megapascal');
    expect(write(2.97289728, 'area', feet).spoken).toBe('32 square feet');
    expect(write(-0.5, 'angle', plainShown).spoken).toBe('minus 28.6 degrees');
    expect(write(12.5, 'money', feet).spoken).toBe('12.50 dollars');
    expect(write(12.5 / 0.3048, 'pricePerLength', feet).spoken).toBe('12.50 dollars per foot');
    expect(write(8, 'slope', feet).spoken).toBe('1 in 8');
  });
});

describe('differences', () => {
  const cases: readonly [KindId, number, Shown, string][] = [
    ['length', 0.003, plainShown, '+3 mm'],
    ['length', -0.003175, feet, '−1/8 in'],
    ['length', 0, feet, '0 in'],
    ['length', 1e-6, feet, '0 in'],
    ['temperature', 4, plainShown, '+4 °C'],
    ['temperature', -5, feet, '−9 °F'],
    ['slope', 2, plainShown, '+2'],
    ['share', -0.02, plainShown, '−2 %'],
    ['money', 3.5, feet, '+$3.50'],
    ['money', -3.5, feet, '−$3.50'],
    ['mass', 0.2, plainShown, '+200 g'],
  ];
  test.each(cases)('%s %s', (kind, value, shown, text) => {
    expect(writeDifference(value, kind, shown)).toBe(text);
  });
});
