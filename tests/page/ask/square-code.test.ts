/** Square codes, read back by another library (jsQR), and their room as the standard has it. */
import jsQR from 'jsqr';
import { expect, test } from 'vitest';
import { MOST_IN_CODE, squaresOf } from '../../../src/page/ask/square-code';

/** As a camera would have it: four pixels to a module. */
function seen(text: string): string | undefined {
  const squares = squaresOf(text);
  if (!squares) return undefined;
  const scale = 4;
  const size = squares.length * scale;
  const pixels = new Uint8ClampedArray(size * size * 4);
  for (let y = 0; y < size; y += 1)
    for (let x = 0; x < size; x += 1)
      pixels.fill(
        squares[Math.floor(y / scale)]![Math.floor(x / scale)] ? 0 : 255,
        (y * size + x) * 4,
        (y * size + x) * 4 + 3,
      );
  return jsQR(pixels, size, size)?.data;
}

test.each([
  'http://127.0.0.1:4173/#/why-one-in-eight',
  'http://127.0.0.1:4173/?seed=%C5%81ucja#/why-one-in-eight',
  `BB:${'H4sIAAAAAAAAA-_x'.repeat(40)}:BB`,
])('what is written is read: %s', (text) => expect(seen(text)).toBe(text));

test('it holds 2953 bytes and not one more (ISO/IEC 18004, version 40-L)', () => {
  expect(MOST_IN_CODE).toBe(2953);
  const most = squaresOf('x'.repeat(2953));
  // 177 modules of version 40 and four of light on each side.
  expect(most).toHaveLength(177 + 8);
  expect(squaresOf('x'.repeat(2954))).toBeNull();
  expect(squaresOf('ü'.repeat(1477))).toBeNull();
});
