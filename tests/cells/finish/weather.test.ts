import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { weather } from '../../../src/cells/finish/weather';
import { plainShown, type Shown } from '../../../src/measure';
import { tryCell } from '../try-cell';

const feet: Shown = { ...plainShown, length: 'feet', fraction: 16, mass: 'lb' };
const celsius = (kelvin: number) => kelvin - 273.15;
const says = (entries: Record<string, string>) =>
  tryCell(weather, entries)
    .warnings.map((one) => one.says)
    .join(' ');
/** Air of 20 °C and 60 %, which sweats at 12.00 °C by WMO-No. 8, Annex 4.B; nothing cools unless it is said. */
const day = (entries: Record<string, string>) =>
  tryCell(weather, { air: '20 °C', humidity: '60 %', fall: '0 °C', ...entries });

/** e(t) by Bolton's eq. 10, Pa: another fit to the same tables. */
const bolton = (t: number) => 611.2 * Math.exp((17.67 * t) / (t + 243.5));

describe('weather', () => {
  test('at the dew point the air is saturated, by another fit to the steam tables within a third of a per cent', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 35 }), fc.integer({ min: 20, max: 100 }), (air, damp) => {
        const tried = tryCell(weather, { air: `${air} °C`, humidity: `${damp} %` });
        const vapour = (damp / 100) * bolton(air);
        expect(Math.abs(tried.number('vapour') / vapour - 1)).toBeLessThan(0.0035);
        expect(Math.abs(bolton(celsius(tried.number('dewPoint'))) / vapour - 1)).toBeLessThan(0.0035);
      }),
      { seed: 3, numRuns: 40 },
    );
  });

  test('saturated air sweats at its own temperature', () => {
    for (const air of [0, 12, 35]) {
      const tried = tryCell(weather, { air: `${air} °C`, humidity: '100 %' });
      expect(celsius(tried.number('dewPoint'))).toBeCloseTo(air, 9);
      expect(tried.number('logVapour')).toBeCloseTo((17.62 * air) / (243.12 + air), 12);
    }
  });

  test('the surface is as warm as the air until it is measured', () => {
    expect(celsius(day({}).number('asAir'))).toBeCloseTo(20, 9);
    expect(celsius(day({}).number('surface'))).toBeCloseTo(20, 9);
    expect(day({}).number('margin')).toBeCloseTo(8, 2);
    expect(day({ surface: '14 °C' }).number('margin')).toBeCloseTo(2, 2);
  });

  test('may fall to 3 °C above the dew point, or to what the coating asks where that is warmer', () => {
    expect(celsius(day({}).number('leastSurface'))).toBeCloseTo(15, 2);
    expect(celsius(day({}).number('coatFrom'))).toBeCloseTo(15, 2);
    expect(celsius(day({ coldest: '16 °C' }).number('coatFrom'))).toBeCloseTo(16, 9);
    expect(celsius(day({ humidity: '20 %' }).number('coatFrom'))).toBeCloseTo(10, 9);
    // In feet and inches it is 5 °F.
    const inches = tryCell(weather, { air: '68 °F', humidity: '60 %' }, undefined, feet);
    expect(((inches.number('leastSurface') - inches.number('dewPoint')) * 9) / 5).toBeCloseTo(5, 9);
  });

  test('leaves room for damp by the coating: a clear coat takes less', () => {
    expect(day({ mostHumidity: '85 %' }).number('damper')).toBeCloseTo(0.25, 12);
    expect(day({}).number('damper') - day({ coating: 'varnish' }).number('damper')).toBeCloseTo(0.1, 12);
  });

  test('a fall takes surface and margin down alike, and brings the air to saturation at its dew point', () => {
    const fallen = day({ fall: '5 °C' });
    expect(celsius(fallen.number('surfaceLater'))).toBeCloseTo(15, 9);
    expect(fallen.number('marginLater')).toBeCloseTo(fallen.number('margin') - 5, 9);
    // 60 % of 23.4 hPa over 17.1 hPa: steam tables.
    expect(fallen.number('humidityLater')).toBeCloseTo((0.6 * 23.39) / 17.06, 2);
    const dew = celsius(day({}).number('dewPoint'));
    expect(day({ fall: `${20 - dew} °C` }).number('humidityLater')).toBeCloseTo(1, 9);
    expect(day({ fall: '20 °C' }).number('humidityLater')).toBe(1);
  });

  test('tells to coat, to wait for a warmer spell, or to wait', () => {
    expect(day({}).words).toMatch(
      /^Coat: these limits are met now\. In this air dew forms on anything as cold as 12 °C;/,
    );
    expect(day({ fall: '3 °C' }).words).toMatch(/^Coat: .*still when it has cooled by 3 °C\./);
    expect(day({ fall: '6 °C' }).words).toMatch(/^Now these limits are met, but not until/);
    expect(day({ surface: '14 °C' }).words).toMatch(/^Wait\. .*the surface is 2 °C above that\.$/);
    expect(day({ surface: '11 °C' }).words).toMatch(/^Wait\. .*the surface is no warmer\.$/);
    expect(day({ humidity: '90 %', surface: '40 °C' }).words).toMatch(/^Wait\./);
  });

  test('no word to coat stands beside a warning, and no silence beside a word to wait', () => {
    fc.assert(
      fc.property(
        fc.record({
          air: fc.integer({ min: 0, max: 35 }),
          humidity: fc.integer({ min: 30, max: 100 }),
          over: fc.integer({ min: -10, max: 10 }),
          fall: fc.integer({ min: 0, max: 8 }),
        }),
        ({ air, humidity, over, fall }) => {
          const tried = tryCell(weather, {
            air: `${air} °C`,
            humidity: `${humidity} %`,
            surface: `${air + over} °C`,
            fall: `${fall} °C`,
          });
          const stops = tried.warnings.some(({ warning }) => warning.weight === 'stop');
          const word = /^Coat: |^Wait\.|^Now /.exec(tried.words)?.[0];
          const fits = stops ? 'Wait.' : tried.warnings.length > 0 ? 'Now ' : 'Coat: ';
          expect([tried.words, word]).toStrictEqual([tried.words, fits]);
        },
      ),
      { seed: 11, numRuns: 150 },
    );
  });

  describe('warnings', () => {
    test.each([
      ['it sweats', { surface: '11 °C' }, 'no coat holds on it'],
      ['too near the dew point', { surface: '14 °C' }, 'and 3 °C is asked'],
      ['later too near', { fall: '6 °C' }, 'the surface cools to 14 °C'],
      ['too damp', { humidity: '86 %', surface: '40 °C' }, 'takes 85 % at most'],
      ['later too damp', { humidity: '80 %', surface: '40 °C', fall: '3 °C' }, 'its humidity is'],
      ['too cold', { humidity: '20 %', surface: '9 °C' }, 'may never cure'],
      ['later too cold', { humidity: '20 %', surface: '11 °C', fall: '3 °C' }, 'asks for 10 °C at least'],
      ['a clear coat takes less damp', { coating: 'varnish', humidity: '80 %' }, 'takes 75 % at most'],
    ])('%s', (_what, entries, wanted) =>
      expect(says({ air: '20 °C', humidity: '60 %', fall: '0 °C', ...entries })).toContain(wanted),
    );
    test('none on a fine day', () => expect(day({}).warnings).toStrictEqual([]));
  });

  test('the chart passes through this air: a surface at the lower line sweats', () => {
    const tried = day({ fall: '4 °C', humidity: '60 %' });
    const [dew, from] = tried.chart!.lines;
    const at = (line: typeof dew) => line!.points.find(([x]) => Math.abs(x - 0.6) < 1e-9)![1];
    expect(at(dew)).toBeCloseTo(tried.number('dewPoint'), 9);
    expect(at(from)).toBeCloseTo(tried.number('coatFrom'), 9);
    const points = (of: typeof tried) =>
      of.chart!.points!.map(({ label, y }) => [label, Math.round(celsius(y) * 100) / 100] as const);
    expect(points(tried)).toStrictEqual([
      ['now', 20],
      ['coat from', 23],
      ['sweats', 20],
      ['cooled', 16],
    ]);
    expect(points(day({})).map(([label]) => label)).toStrictEqual(['now', 'coat from', 'sweats']);
  });

  test('asks the shop for its air, and a joint glued in it is as cold', () => {
    expect(celsius(tryCell(weather, { 'shop.air': '7 °C' }).number('air'))).toBeCloseTo(7, 9);
    expect(tryCell(weather, { 'shop.humidity': '45 %' }).number('humidity')).toBeCloseTo(0.45, 12);
  });
});
