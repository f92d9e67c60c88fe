import { describe, expect, test } from 'vitest';
import { isIssue, type KindId, plainShown, read, type Shown } from '../../src/measure';

const feet: Shown = { ...plainShown, length: 'feet', mass: 'lb' };
const inches: Shown = { ...feet, length: 'inches' };

const kindOfName: Readonly<Record<string, KindId>> = {
  'side.thickness': 'length',
  'hull.beam': 'length',
  'frame3.sheer.halfBreadth': 'length',
  'keelson.timber': 'choice',
  'frames.count': 'count',
  'hull.mass': 'mass',
  'shop.temperature': 'temperature',
  'scarf.slope': 'slope',
  'bottom.flare': 'angle',
  'ply.price': 'money',
  'resin.waste': 'share',
};
const values: Readonly<Record<string, number>> = {
  'side.thickness': 0.009,
  'hull.beam': 1.5,
  'frames.count': 5,
  'hull.mass': 120,
  'shop.temperature': 290,
  'scarf.slope': 8,
  'bottom.flare': 0.5,
  'ply.price': 40,
  'resin.waste': 0.1,
};

function reading(text: string, kind: KindId = 'length', shown: Shown = plainShown, unit?: string) {
  return read(text, {
    kind,
    shown,
    field: 'thickness',
    kindOf: (name) => kindOfName[name],
    known: () => Object.keys(kindOfName),
    ...(unit !== undefined && { unit }),
  });
}

/** The value read, or the sentence of refusal. */
function valueOf(...args: Parameters<typeof reading>): number | string {
  const read = reading(...args);
  if (isIssue(read)) return read.issue;
  const value = read.evaluate((name) => values[name] ?? Number.NaN);
  return isIssue(value) ? value.issue : value;
}

/** The text kept. */
function keptOf(...args: Parameters<typeof reading>): string {
  const read = reading(...args);
  return isIssue(read) ? `refused: ${read.issue}` : read.text;
}

describe('lengths in every notation of the trade', () => {
  // In 64ths of an inch, so that the expected value is one exact division.
  const inSixtyFourths: readonly [string, number][] = [
    [`5' 3 1/2"`, 63.5 * 64],
    [`5'3 1/2"`, 63.5 * 64],
    [`5' 3-1/2"`, 63.5 * 64],
    [`5'-3 1/2"`, 63.5 * 64],
    [`5'-3-1/2"`, 63.5 * 64],
    [`5 ft 3-1/2 in`, 63.5 * 64],
    [`5 ft. 3 1/2 in.`, 63.5 * 64],
    ['5ft3.5in', 63.5 * 64],
    ['5 feet 3 1/2 inches', 63.5 * 64],
    ['5′ 3½″', 63.5 * 64],
    ['5’ 3 ½”', 63.5 * 64],
    ["5' 3 1/2''", 63.5 * 64],
    ['5´ 3-½"', 63.5 * 64],
    ['5-3-4', 63.5 * 64],
    ['5-3-4+', (63 + 9 / 16) * 64],
    ['5-3-4-', (63 + 7 / 16) * 64],
    ['-5-3-4', -63.5 * 64],
    ['5-11-7+', (71 + 15 / 16) * 64],
    [`5' 11 15/16"`, (71 + 15 / 16) * 64],
    ['0-0-0+', 4],
    ['0-0-0-', -4],
    [`5'`, 60 * 64],
    ['5 ft', 60 * 64],
    [`5' 3`, 63 * 64],
    ["5'3", 63 * 64],
    ["6'-2", 74 * 64],
    [`5' 3/4"`, 60.75 * 64],
    [`5' 0 3/4"`, 60.75 * 64],
    ['14 5/8 in', 14.625 * 64],
    ['14-5/8 in', 14.625 * 64],
    ['14 5/8"', 14.625 * 64],
    ['14.625 in', 14.625 * 64],
    ['14⅝ in', 14.625 * 64],
    ['14 ⅝"', 14.625 * 64],
    ['⅝ in', 40],
    ['5⁄8 in', 40],
    ['5/8 in', 40],
    ['10/16 in', 40],
    ['.625 in', 40],
    ['0,625 in', 40],
    ['-3 1/2 in', -3.5 * 64],
    ['− 3 ½ in', -3.5 * 64],
    ['+3 1/2"', 3.5 * 64],
    ['2 yd 1 ft', 7 * 12 * 64],
    ['1 2/3 ft', 20 * 64],
  ];
  test.each(inSixtyFourths)('%s', (text, sixtyFourths) => {
    for (const shown of [plainShown, feet, inches]) {
      // 0.0254/64 m = 127/320000 m.
      expect(valueOf(text, 'length', shown)).toBe((sixtyFourths * 127) / 320000);
      expect(keptOf(text, 'length', shown)).toBe(text);
    }
  });

  const metric: readonly [string, number][] = [
    ['371 mm', 0.371],
    ['19 mm', 0.019],
    ['1.2 m', 1.2],
    ['1,2 m', 1.2],
    ['1,25 m', 1.25],
    ['12,5 mm', 0.0125],
    ['0,125 m', 0.125],
    ['1,2345 m', 1.2345],
    ['1,234.5 mm', 1.2345],
    ['1.234,5 mm', 1.2345],
    ['1,234,567 mm', 1234.567],
    ['1.234.567 mm', 1234.567],
    ['-100 mm', -0.1],
    ['- 100 mm', -0.1],
    ['−100 mm', -0.1],
    ['12 cm', 0.12],
    ['0.5 µm', 5e-7],
    ['3 thou', 0.0000762],
    ['1e3 mm', 1],
    ['1.5E-3 m', 0.0015],
    ['5. mm', 0.005],
    ['.5 m', 0.5],
    ['371\u00A0mm', 0.371],
    ['371\u202Fmm', 0.371],
    ['  371 mm ', 0.371],
    ['371mm', 0.371],
    ['371 MM', 0.371],
    ['0 mm', 0],
    ['00019 mm', 0.019],
  ];
  test.each(metric)('%s', (text, metres) => {
    expect(valueOf(text)).toBe(metres);
    expect(keptOf(text)).toBe(text.trim());
  });
});

describe('a bare number', () => {
  test('takes the unit shown, and is kept with it', () => {
    expect([valueOf('19'), keptOf('19')]).toStrictEqual([0.019, '19 mm']);
    expect([valueOf('14 5/8', 'length', feet), keptOf('14 5/8', 'length', feet)]).toStrictEqual([
      0.371475,
      '14 5/8 in',
    ]);
    expect([valueOf('14-5/8', 'length', feet), keptOf('14-5/8', 'length', feet)]).toStrictEqual([
      0.371475,
      '14-5/8 in',
    ]);
    expect([valueOf('14.625', 'length', inches), keptOf('14.625', 'length', inches)]).toStrictEqual([
      0.371475,
      '14.625 in',
    ]);
    expect([valueOf('3/4', 'length', feet), keptOf('3/4', 'length', feet)]).toStrictEqual([
      0.01905,
      '3/4 in',
    ]);
    expect([valueOf('½', 'length', feet), keptOf('½', 'length', feet)]).toStrictEqual([0.0127, '½ in']);
    expect([valueOf('1,2'), keptOf('1,2')]).toStrictEqual([0.0012, '1,2 mm']);
    expect([valueOf('-100'), keptOf('-100')]).toStrictEqual([-0.1, '-100 mm']);
  });
  test('takes the field’s own unit where it has one', () => {
    expect([valueOf('20', 'time', plainShown, 'min'), keptOf('20', 'time', plainShown, 'min')]).toStrictEqual(
      [1200, '20 min'],
    );
    expect(valueOf('20', 'time')).toBe(72000);
    expect(valueOf('20', 'minutes')).toBe(1200);
  });
  const kept: readonly [string, KindId, Shown, string][] = [
    ['12', 'angle', plainShown, '12°'],
    ['20', 'temperature', plainShown, '20 °C'],
    ['68', 'temperature', feet, '68 °F'],
    ['12', 'share', plainShown, '12 %'],
    ['8', 'slope', plainShown, '1 in 8'],
    ['3', 'count', plainShown, '3'],
    ['1.5', 'ratio', plainShown, '1.5'],
    ['12.50', 'money', plainShown, '12.50'],
    ['12.50', 'pricePerLength', feet, '12.50/ft'],
    ['0.89 a foot', 'pricePerLength', plainShown, '0.89 a foot'],
    ['6.49 each', 'money', plainShown, '6.49 each'],
    ['8 to 1', 'slope', plainShown, '8 to 1'],
    ['1/8', 'slope', plainShown, '1/8'],
    ['12', 'stress', plainShown, '12 MPa'],
    ['1700', 'stress', feet, '1700 psi'],
    ['2', 'area', feet, '2 ft²'],
    ['2', 'volume', plainShown, '2 L'],
    ['4', 'perLength', plainShown, '4/m'],
  ];
  test.each(kept)('%s as a %s', (text, kind, shown, want) => {
    expect(keptOf(text, kind, shown)).toBe(want);
  });
  test('means the same when read again under any other choice of units', () => {
    for (const [text, kind, shown] of kept) {
      const again = keptOf(text, kind, shown);
      for (const other of [plainShown, feet, inches]) {
        expect(valueOf(again, kind, other)).toBe(valueOf(text, kind, shown));
        expect(keptOf(again, kind, other)).toBe(again);
      }
    }
  });
});

describe('other kinds', () => {
  const cases: readonly [string, KindId, number][] = [
    ['2 lb', 'mass', 0.90718474],
    ['2 lb 3 oz', 'mass', (35 * 0.45359237) / 16],
    ['2 lb 3', 'mass', (35 * 0.45359237) / 16],
    ['450 g', 'mass', 0.45],
    ['50 lbf', 'force', 222.411080763025],
    ['5 kgf', 'force', 49.03325],
    ['2 kN', 'force', 2000],
    ['12 N/mm²', 'stress', 12e6],
    ['12 N/mm^2', 'stress', 12e6],
    ['9.8 GPa', 'stress', 9.8e9],
    ['600 kg/m^3', 'density', 600],
    ['600 kg/m3', 'density', 600],
    ['200 g/m²', 'areaDensity', 0.2],
    ['12°', 'angle', (12 * Math.PI) / 180],
    ['12 deg', 'angle', (12 * Math.PI) / 180],
    ["12° 30'", 'angle', (12.5 * Math.PI) / 180],
    ['0.2 rad', 'angle', 0.2],
    ['180°', 'angle', Math.PI],
    ['90°', 'angle', Math.PI / 2],
    ['20 °C', 'temperature', 293.15],
    ['-5 °C', 'temperature', 268.15],
    ['-40 °F', 'temperature', 233.15],
    ['-40', 'temperature', 233.15],
    ['68 F', 'temperature', 293.15],
    ['20C', 'temperature', 293.15],
    ['300 K', 'temperature', 300],
    ['5 °C', 'warmth', 5],
    ['9 °F', 'warmth', 5],
    ['5 K', 'warmth', 5],
    ['5', 'warmth', 5],
    ['1 h 30 min', 'time', 5400],
    ['1 h 30', 'time', 5400],
    ['2 d', 'time', 172800],
    ['90 s', 'minutes', 90],
    ['3 gal', 'volume', 0.011356235352],
    ['1 gal 2 qt', 'volume', 0.005678117676],
    ['16 fl oz', 'volume', 0.000473176473],
    ['250 mL', 'volume', 0.00025],
    ['32 sq ft', 'area', 2.97289728],
    ['1,5 m²', 'area', 1.5],
    ['4 /m', 'perLength', 4],
    ['4 per m', 'perLength', 4],
    ['40 N·m', 'moment', 40],
    ['1 in 8', 'slope', 8],
    ['8:1', 'slope', 8],
    ['1:8', 'slope', 8],
    ['8 : 1', 'slope', 8],
    ['2 in 16', 'slope', 8],
    ['1 in 7 1/2', 'slope', 7.5],
    ['1:1', 'slope', 1],
    // A slope is said as rise over run: 1/2 is one in two.
    ['1/2', 'slope', 2],
    ['1/8', 'slope', 8],
    ['1 / 8', 'slope', 8],
    ['8 to 1', 'slope', 8],
    ['1 to 8', 'slope', 8],
    ['1-in-8', 'slope', 8],
    ['12', 'slope', 12],
    ['1/8', 'ratio', 0.125],
    ['1 in 8', 'ratio', 0.125],
    ['#8', 'number', 8],
    ['No. 8', 'number', 8],
    ['no 8', 'count', 8],
    ['2 to 1', 'ratio', 2],
    ['8:1', 'ratio', 8],
    ['2:1', 'number', 2],
    ['1:4', 'ratio', 0.25],
    ['100:28', 'ratio', 100 / 28],
    ['12 %', 'share', 0.12],
    ['12%', 'share', 0.12],
    ['12', 'share', 0.12],
    ['12 percent', 'share', 0.12],
    ['12 %', 'number', 0.12],
    ['3', 'count', 3],
    ['6/2', 'count', 3],
    ['6.49 each', 'money', 6.49],
    ['£4.20 each', 'money', 4.2],
    ['6.49 ea.', 'money', 6.49],
    ['$38 per sheet', 'money', 38],
    ['38/sheet', 'money', 38],
    ['12.90 a box', 'money', 12.9],
    ['2 * 6.49 each', 'money', 12.98],
    ['$5', 'money', 5],
    ['0.89/ft', 'pricePerLength', 0.89 / 0.3048],
    ['0.89 a foot', 'pricePerLength', 0.89 / 0.3048],
    ['$0.89/lf', 'pricePerLength', 0.89 / 0.3048],
    ['12.50 per litre', 'pricePerVolume', 12_500],
    ['$40 a gallon', 'pricePerVolume', 40 / 0.003785411784],
    ['$3.20/bf', 'timberPrice', 3.2 / (144 * 0.0254 ** 3)],
    ['12.50', 'money', 12.5],
    ['$12.50', 'money', 12.5],
    ['€ 12,50', 'money', 12.5],
    ['12.50 €', 'money', 12.5],
    ['-$3', 'money', -3],
    ['$12.50/m', 'pricePerLength', 12.5],
    ['12.50/m', 'pricePerLength', 12.5],
    ['12.50 per m', 'pricePerLength', 12.5],
    ['£3/L', 'pricePerVolume', 3000],
    ['25 kn', 'speed', 25 * (1852 / 3600)],
  ];
  test.each(cases)('%s is a %s', (text, kind, si) => {
    const value = valueOf(text, kind);
    expect(value).toBeTypeOf('number');
    // The expected values above are rounded once or twice themselves.
    expect(Math.abs(Number(value) - si)).toBeLessThanOrEqual(2 * Number.EPSILON * Math.abs(si));
  });
});

describe('a sum', () => {
  const sums: readonly [string, KindId, number, string?][] = [
    ['2 * side.thickness + 1/4 in', 'length', 0.02435],
    ['2 × side.thickness + ¼ in', 'length', 0.02435],
    ['side.thickness', 'length', 0.009],
    ['-side.thickness', 'length', -0.009],
    ['hull.beam/2-1/2 in', 'length', 0.7373],
    ['hull.beam - 1/2 in', 'length', 1.4873],
    ['hull.beam / 14 5/8 in * 1 m', 'length', 1.5 / 0.371475],
    ['hull.beam / (3/4 in) * 1 mm', 'length', (1.5 / 0.01905) * 0.001],
    ['6\' - 2"', 'length', 1.778],
    ["6'-2*side.thickness", 'length', 1.8108],
    ['(hull.beam + 5-3-4) / 2', 'length', 1.55645],
    ['5-3-4+ + 1/16 in', 'length', 63.625 * 0.0254],
    ['5 - 3 - 4', 'length', -0.002, '(5 - 3 - 4) * 1 mm'],
    ['2 + 3', 'length', 0.005, '(2 + 3) * 1 mm'],
    ['frames.count * 400', 'length', 2, '(frames.count * 400) * 1 mm'],
    ['scarf.slope * side.thickness', 'length', 0.072],
    ['max(side.thickness, 12 mm, 0)', 'length', 0.012],
    ['max(1,5 mm)', 'length', Number.NaN],
    ['max((1,5 mm), 1 mm)', 'length', 0.0015],
    ["max(5' 3,2')", 'length', 63 * 0.0254],
    ['hypot(3 in, 4 in)', 'length', 0.127],
    ['tan(30°) * 1 m', 'length', Math.tan(Math.PI / 6)],
    ['hull.beam * sin(bottom.flare)', 'length', 1.5 * Math.sin(0.5)],
    ['sqrt(hull.beam ^ 2 + (2 m)^2)', 'length', 2.5],
    ['round(hull.beam, 1 ft)', 'length', 1.524],
    ['hull.beam > 1 m ? 12 mm : 9 mm', 'length', 0.012],
    ['20 kg / 2 / (1 m) ^ 3 * 1 m^4 / kg', 'length', 10],
    ['2 * (3 + 4) mm', 'length', Number.NaN],
    ['atan(1/8)', 'angle', Math.atan(1 / 8)],
    ['atan2(1 ft, 8 ft) + 2°', 'angle', Math.atan(1 / 8) + Math.PI / 90],
    ['2 * 6', 'angle', Math.PI / 15, '(2 * 6) * 1°'],
    ['scarf.slope + 2', 'slope', 10],
    ['2 * 6', 'share', 0.12, '(2 * 6) * 1 %'],
    ['resin.waste * 2', 'share', 0.2],
    ['frames.count + 1', 'count', 6],
    ['2.4 m / 300 mm', 'count', 8],
    ['shop.temperature + 5 K', 'temperature', 295],
    ['max(-5 °C, shop.temperature)', 'temperature', 290],
    ['ply.price * 3 + $5', 'money', 125],
    ['ply.price / 2.4 m', 'pricePerLength', 40 / 2.4],
    ['600 kg / m^3 * 2', 'density', 1200],
    ['hull.mass * g', 'force', 120 * 9.80665],
    ['pi * (50 mm)^2 / 4', 'area', (Math.PI * 0.0025) / 4],
    ['hull.beam * bottom.flare / rad', 'length', 0.75],
  ];
  test.each(sums.filter(([, , want]) => !Number.isNaN(want)))('%s', (text, kind, want, kept = text) => {
    const value = valueOf(text, kind);
    expect(value).toBeTypeOf('number');
    // Some operations of rounding each.
    expect(Math.abs(Number(value) - want)).toBeLessThanOrEqual(8 * Number.EPSILON * Math.abs(want));
    expect(keptOf(text, kind)).toBe(kept);
    expect(valueOf(kept, kind, feet)).toBe(value);
  });
  test('reads one name alone as it reads the sum of that name', () => {
    const kinds = new Set(Object.values(kindOfName));
    for (const name of [...Object.keys(kindOfName), 'side.height'])
      for (const kind of kinds)
        for (const unit of [undefined, 'mm']) {
          const [alone, sum] = [name, `(${name})`].map((text) => reading(text, kind, plainShown, unit));
          expect(isIssue(alone!), `${name} as ${kind}`).toBe(isIssue(sum!));
          if (isIssue(alone!) || isIssue(sum!)) continue;
          expect([alone!.names, alone!.dimension]).toStrictEqual([sum!.names, sum!.dimension]);
          for (const value of [0, 3, 3.5, -1, Infinity, Number.NaN])
            expect(alone!.evaluate(() => value)).toStrictEqual(sum!.evaluate(() => value));
        }
  });

  test('names the quantities it stands on, each once', () => {
    const sum = reading('side.thickness + hull.beam - side.thickness + 0 * frame3.sheer.halfBreadth');
    expect(!isIssue(sum) && sum.names).toStrictEqual([
      'side.thickness',
      'hull.beam',
      'frame3.sheer.halfBreadth',
    ]);
    const literal = reading('19 mm');
    expect(!isIssue(literal) && literal.names).toStrictEqual([]);
  });
  test('asks for no value before it is evaluated, and for each name once', () => {
    const asked: string[] = [];
    const sum = reading('side.thickness + side.thickness * 2');
    expect(asked).toStrictEqual([]);
    if (isIssue(sum)) throw new Error(sum.issue);
    const value = sum.evaluate((name) => {
      asked.push(name);
      return 0.01;
    });
    expect([asked, value]).toStrictEqual([['side.thickness'], 0.03]);
  });
  test('hands on an issue in the place of a value, and lets what is thrown pass', () => {
    const sum = reading('2 * side.thickness');
    if (isIssue(sum)) throw new Error(sum.issue);
    const waits = { issue: 'the hull is not drawn', waitsFor: 'hull.length' };
    expect(sum.evaluate(() => waits)).toBe(waits);
    class Stop extends Error {}
    expect(() =>
      sum.evaluate(() => {
        throw new Stop();
      }),
    ).toThrow(Stop);
  });
  test('knows an undotted name where there is one, before a unit of that spelling', () => {
    const sum = read('2 * m', {
      kind: 'length',
      shown: plainShown,
      field: 'x',
      kindOf: (name) => (name === 'm' ? 'length' : undefined),
    });
    expect(!isIssue(sum) && sum.evaluate(() => 3)).toBe(6);
    const unit = read('2 * m', { kind: 'length', shown: plainShown, field: 'x' });
    expect(!isIssue(unit) && unit.evaluate(() => 3)).toBe(2);
  });
});
