/** Names on graphs: clear of each other, of the marked points and, where there is room, of the lines. */
import { expect, test } from 'vitest';
import { textWidth } from '../../../src/drawing';
import { placeNames } from '../../../src/page/picture/chart-labels';

const field = { width: 232, height: 140 };
const SIZE = 12;

test('a long name on a narrow arch goes under it', () => {
  const arch = (x: number) => 140 - 130 * Math.sin((Math.PI * x) / 232);
  const line = Array.from({ length: 233 }, (_, x) => ({ x, y: arch(x) }));
  const at = { x: 140, y: arch(140) };
  const text = 'frame 3: 0.158 m²';
  const [placed] = placeNames([{ text, of: 'point', ...at }], line, field, SIZE);
  const width = textWidth(text, SIZE);
  const left = placed!.anchor === 'start' ? placed!.x : placed!.x - width;
  const under = line.filter(({ x, y }) => x > left && x < left + width && Math.abs(y - placed!.y) < SIZE / 2);
  expect(under).toStrictEqual([]);
  expect(left).toBeGreaterThanOrEqual(0);
  expect(left + width).toBeLessThanOrEqual(field.width);
});
