// The table of character widths against the browser's own measure: a text that comes out
// wider than the drawing reckons would run into its neighbour.

import '@fontsource/source-sans-3/400.css';
import '@fontsource/source-sans-3/600.css';
import { expect, test } from 'vitest';
import { textWidth } from '../../src/drawing';

const printable = Array.from({ length: 95 }, (_, i) => String.fromCodePoint(32 + i));
const trade = Array.from('°±×½¼¾⅛⅜⅝⅞′″−–·²³≤≥µ÷');

test.each(['400', '600'])(
  'no character of the shipped sans at weight %s is wider than the table says',
  async (weight) => {
    await document.fonts.load(`${weight} 100px "Source Sans 3"`);
    expect(document.fonts.check(`${weight} 100px "Source Sans 3"`)).toBe(true);
    const context = document.createElement('canvas').getContext('2d')!;
    // As the drawings' style sets them: figures of one width, as the font has by default.
    context.font = `${weight} 100px "Source Sans 3", Arial, sans-serif`;
    const wider = [...printable, ...trade].filter(
      (c) => context.measureText(c).width > textWidth(c, 100) + 0.01,
    );
    expect(wider).toEqual([]);
  },
);

test('the table is generous, not wasteful: usual texts come out at four fifths of it or more', async () => {
  await document.fonts.load('600 13px "Source Sans 3"');
  const context = document.createElement('canvas').getContext('2d')!;
  context.font = '600 13px "Source Sans 3"';
  for (const text of ['14 5/8 in', '152 mm', '5\' 3 1/2"', 'keelson, after length', 'R 1200 mm']) {
    const ratio = context.measureText(text).width / textWidth(text, 13);
    expect(ratio).toBeGreaterThan(0.8);
    expect(ratio).toBeLessThanOrEqual(1);
  }
});
