import { describe, expect, test } from 'vitest';
import { power } from '../../../src/cells/afloat/power';
import { tryCell } from '../try-cell';

const KNOT = 1852 / 3600;
const HP = 745.699_871_582_27;
const LB = 0.453_592_37;
/** 1200 lb and 16 ft on the water, with 25 hp: 48 lb a horsepower. */
const set = {
  motorPower: '25 hp',
  laden: '1200 lb',
  waterLong: '16 ft',
  transom: '15 in',
  fuelAboard: '24 L',
  shaftHeight: '15 in',
  revs: '5000',
  gear: '2',
  slipLeast: '10 %',
  slipMost: '20 %',
  burnLeast: '0.2 L',
  burnMost: '0.4 L',
};
const tried = (entries: Record<string, string> = {}) => tryCell(power, { ...set, ...entries });
const says = (entries: Record<string, string>) =>
  tried(entries)
    .warnings.map((one) => one.says)
    .join(' ');

describe('a boat of 1200 lb and 16 ft', () => {
  test('planes with 25 hp', () => {
    const one = tried();
    const side = ((1200 * LB) / 1000) ** (1 / 3);
    expect(one.number('volume')).toBeCloseTo((1200 * LB) / 1000, 9);
    expect(one.number('deepSize')).toBeCloseTo(side, 9);
    expect(one.number('planingLeast') / KNOT).toBeCloseTo(150 / Math.sqrt(48), 9);
    expect(one.number('planingMost') / KNOT).toBeCloseTo(190 / Math.sqrt(48), 9);
    expect(one.number('froude')).toBeCloseTo(((150 / Math.sqrt(48)) * KNOT) / Math.sqrt(9.80665 * side), 9);
    expect(one.number('planes')).toBe(1);
    expect(one.number('slowest')).toBe(one.number('planingLeast'));
    expect(one.number('fastest')).toBe(one.number('planingMost'));
    expect(one.words).toContain('She planes');
    expect(one.warnings).toStrictEqual([]);
  });

  test('planes from the power that it says, and not below it', () => {
    const least = tried().number('toPlane');
    const at = (share: number) => tried({ motorPower: `${share * least} W` }).number('planes');
    expect([at(0.999), at(1.001)]).toStrictEqual([0, 1]);
  });

  test('comes to hull speed with the power that it says', () => {
    const one = tried();
    const there = tried({ motorPower: `${one.number('enough')} W` });
    expect(there.number('pushing')).toBeCloseTo(one.number('hullSpeed'), 9);
    expect(there.number('slowest')).toBeCloseTo(one.number('hullSpeed'), 9);
    const weak = tried({ motorPower: '1 hp' });
    expect(weak.number('slowest')).toBe(weak.number('pushing'));
    expect(weak.words).toContain('She pushes water');
    expect(weak.number('froudeLength')).toBeCloseTo(
      weak.number('pushing') / Math.sqrt(9.80665 * 16 * 0.3048),
      9,
    );
    const between = tried({ motorPower: '6 hp' });
    expect(between.number('slowest')).toBe(between.number('hullSpeed'));
    expect(between.number('fastest')).toBe(between.number('pushing'));
    expect(between.words).toContain('no rule holds well between');
  });

  test('fuel, hours and miles', () => {
    const one = tried();
    expect(one.number('fuelLeast')).toBeCloseTo(0.005, 12);
    expect(one.number('fuelMost')).toBeCloseTo(0.01, 12);
    expect(one.number('hours')).toBeCloseTo(1.6 * 3600, 6);
    expect(one.number('miles')).toBeCloseTo((1.6 * 150) / Math.sqrt(48), 6);
    expect(tried({ motorPower: '0 hp' }).number('hours')).toBe(0);
    expect(tried({ motorPower: '0 hp' }).words).toContain('Without a motor');
  });

  test('pitch by speed, turns and slip', () => {
    const one = tried();
    expect(one.number('turns')).toBe(2500);
    expect(one.number('pitchLeast')).toBeCloseTo((one.number('slowest') * 60) / 2500 / 0.9, 9);
    expect(one.number('pitchMost')).toBeCloseTo((one.number('fastest') * 60) / 2500 / 0.8, 9);
    expect(says({ slipMost: '5 %' })).toContain('exchange them');
  });

  test('shaft against the transom', () => {
    const inches = (transom: string) => tried({ transom }).number('shaft') / 0.0254;
    expect(['15 in', '17 in', '18 in', '24 in', '29 in'].map(inches).map(Math.round)).toStrictEqual([
      15, 15, 20, 25, 30,
    ]);
    const high = tried({ transom: '17 in' });
    expect(high.number('plate')).toBeCloseTo(2 * 0.0254, 9);
    expect(high.number('plateOff')).toBeCloseTo(2 * 0.0254, 9);
    expect(says({ transom: '17 in' })).toContain('draws air');
    expect(says({ transom: '13 in' })).toContain('drags');
    expect(says({ transom: '15.5 in' })).toBe('');
  });
});

test('the graph runs through this motor, and never down', () => {
  const { chart } = tried();
  const [least, most] = chart!.lines;
  const rise = least!.points.map(([, y]) => y);
  expect(rise.every((y, at) => at === 0 || y >= rise[at - 1]!)).toBe(true);
  expect(least!.points.every(([, y], at) => y <= most!.points[at]![1] + 1e-12)).toBe(true);
  expect(chart!.points![0]!.x / HP).toBeCloseTo(25, 9);
});
