/** Lines are named where they lie apart. */
import { expect, test } from 'vitest';
import type { Chart } from '../../../src/cells';
import { namesIn } from '../../../src/page/picture/chart-names';

const field = { width: 300, height: 200, toX: (x: number) => 300 * x, toY: (y: number) => 200 - 10 * y };
const xs = Array.from({ length: 41 }, (_, i) => i / 40);
const family = (y: (x: number, of: number) => number): Chart => ({
  title: '',
  says: '',
  x: { label: '', kind: 'number' },
  y: { label: '', kind: 'number' },
  lines: [1, 2, 3].map((of) => ({
    name: `${of}`,
    end: `${of}`,
    points: xs.map((x) => [x, y(x, of)] as const),
  })),
});

test('at their ends where there is room, and else where they are farthest apart', () => {
  expect(
    namesIn(
      family((x, of) => 4 * of * x),
      field,
    ).map(({ x }) => x),
  ).toStrictEqual([300, 300, 300]);
  // They come together at the end: 4 of (1 - x), which is 40 px apart at the beginning, and 18 first at 0.5.
  const meeting = namesIn(
    family((x, of) => 4 * of * (1 - x)),
    field,
  );
  expect(meeting.map(({ text }) => text)).toStrictEqual(['1', '2', '3']);
  const ys = meeting.map(({ y }) => y);
  expect(Math.min(ys[0]! - ys[1]!, ys[1]! - ys[2]!)).toBeGreaterThanOrEqual(18);
  expect(meeting[0]!.x).toBeLessThan(200);
});
