import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textHeight, textWidth, wrap } from '../../../src/drawing/set-out/text-size';

describe('the width of a text', () => {
  test('is the sum of its characters, in proportion to the size', () => {
    expect(textWidth('19', 10)).toBeCloseTo(2 * textWidth('1', 10), 12);
    expect(textWidth('14 5/8 in', 26)).toBeCloseTo(2 * textWidth('14 5/8 in', 13), 12);
    expect(textWidth('', 13)).toBe(0);
  });

  test('counts a character outside the table as a full em', () => {
    expect(textWidth('木', 13)).toBe(13);
  });
});

describe('a wrapped text', () => {
  test('has all its words in order and no line wider than asked', () => {
    fc.assert(
      fc.property(fc.lorem({ maxCount: 20 }), fc.integer({ min: 60, max: 400 }), (text, width) => {
        const lines = wrap(text, 13, width);
        expect(lines.join(' ').replaceAll(/\s/g, '')).toBe(text.replaceAll(/\s/g, ''));
        for (const line of lines) expect(textWidth(line, 13)).toBeLessThanOrEqual(width);
      }),
      { seed: 4 },
    );
  });

  test('keeps a number and its unit together', () => {
    // Room for "bent to a radius of 1200" but not for the unit as well.
    const room = textWidth('bent to a radius of 1200 m', 13);
    expect(wrap('bent to a radius of 1200 mm and held', 13, room)).toEqual([
      'bent to a radius of',
      '1200 mm and held',
    ]);
  });

  test.each([
    '12 15/16 in',
    '12 15/16 in strong',
    '14\' 10 23/32"',
    '2\' 0"',
    '10\' 3 3/8" strong',
    '23 in',
    '1.5 kg/m³',
  ])('does not part %s', (measure) => {
    const text = `starboard corner ${measure} up from there, and so on to the end`;
    for (let width = textWidth(measure, 13) + 1; width < 400; width += 5)
      expect(wrap(text, 13, width).some((line) => line.includes(measure))).toBe(true);
  });

  test('parts a measure at a space where there is no room for all of it', () => {
    expect(wrap('12 15/16 in strong', 13, textWidth('in strong', 13))).toEqual(['12 15/16', 'in strong']);
  });

  test('breaks a word only when it alone is too wide', () => {
    const lines = wrap('a sheerclampandchinelog b', 13, 60);
    expect(lines[0]).toBe('a');
    expect(lines.at(-1)).toMatch(/ b$/);
    expect(lines.slice(1).join('')).toBe('sheerclampandchinelog b');
    expect(wrap('', 13, 60)).toEqual(['']);
  });

  test('takes one line more height for each line more', () => {
    expect(textHeight(3, 13) - textHeight(2, 13)).toBeCloseTo(textHeight(2, 13) - textHeight(1, 13), 12);
  });
});
