import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { inchText, inchTwin, isIssue, plainShown, read, write } from '../../src/measure';

const metres = (text: string): number => {
  const reading = read(text, { kind: 'length', shown: plainShown, field: 'size' });
  const value = isIssue(reading) ? reading : reading.evaluate(() => Number.NaN);
  if (isIssue(value)) throw new Error(value.issue);
  return value;
};

/** As yards and shops call the same things in both systems: common practice, no source. */
test.each([
  ['0.5 mm', '1/64 in'],
  ['1 mm', '1/32 in'],
  ['1.5 mm', '1/16 in'],
  ['3 mm', '1/8 in'],
  ['5 mm', '3/16 in'],
  ['6 mm', '1/4 in'],
  ['9 mm', '3/8 in'],
  ['12 mm', '1/2 in'],
  ['12.5 mm', '1/2 in'],
  ['18 mm', '3/4 in'],
  ['19 mm', '3/4 in'],
  ['20 mm', '3/4 in'],
  ['25 mm', '1 in'],
  ['38 mm', '1 1/2 in'],
  ['45 mm', '1 3/4 in'],
  ['50 mm', '2 in'],
  ['70 mm', '2 3/4 in'],
  ['90 mm', '3 1/2 in'],
  ['100 mm', '4 in'],
  ['140 mm', '5 1/2 in'],
  ['150 mm', '6 in'],
  ['230 mm', '9 in'],
  ['600 mm', `2' 0"`],
  ['1220 mm', `4' 0"`],
  ['2440 mm', `8' 0"`],
  ['2.4 m', `8' 0"`],
  ['4.2 m', `14' 0"`],
  ['4.5 m', `15' 0"`],
])('%s are %s', (metric, inches) => {
  const feet = { ...plainShown, length: 'feet', fraction: 32 } as const;
  expect(write(metres(inchTwin(metric)!), 'length', feet, { within: 0.0003 }).text).toBe(inches);
});

test('what was worked out has none, nor nought, nor what is said in inches already', () => {
  for (const text of ['2683 mm', '0 mm', '1/2 in', 'keelson.thickness', '1 km'])
    expect(inchTwin(text)).toBeUndefined();
});

test('it is about as large: within a quarter from half a millimetre up', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 999 }), fc.constantFrom(1, 10), (whole, by) => {
      const twin = inchTwin(`${whole * by} mm`)!;
      expect(Math.abs(metres(twin) / ((whole * by) / 1000) - 1)).toBeLessThan(0.25);
    }),
  );
});

test('what a table counts by inches is said in the inches it was counted by', () => {
  // 3 in of 0.0254 m come back from doubles as 2.9999999999999996.
  expect((3 * 0.0254) / 0.0254).not.toBe(3);
  for (let sixtyFourths = 1; sixtyFourths <= 64 * 24; sixtyFourths++)
    expect(inchText((sixtyFourths / 64) * 0.0254)).toBe(`${sixtyFourths / 64} in`);
});
