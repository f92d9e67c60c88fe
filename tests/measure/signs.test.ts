import { describe, expect, test } from 'vitest';
import { plainText } from '../../src/measure/signs';

describe('one sign for each meaning', () => {
  test.each([
    ['5′ 3″', `5' 3"`],
    ['5’ 3”', `5' 3"`],
    ["5' 3''", `5' 3"`],
    ['5` 3“', `5' 3"`],
    ['14½', '14 1/2'],
    ['14 ⅝', '14 5/8'],
    ['⅞', '7/8'],
    ['5⁄8', '5/8'],
    ['−3 – 2 — 1', '-3 - 2 - 1'],
    ['2 × 3 ÷ 4 · 5', '2 * 3 / 4 * 5'],
    ['a ≤ b ≥ c ≠ d', 'a <= b >= c != d'],
    ['1\u00A0m\u2009\u202F2\t3', '1 m  2 3'],
    ['1\u200B9 mm', '19 mm'],
    ['90º', '90°'],
    ['π', 'pi'],
    ['  plain  ', 'plain'],
    ['N·m µm m² °C €', 'N·m µm m² °C €'],
  ])('%s', (text, plain) => {
    expect(plainText(text)).toBe(plain);
  });
});
