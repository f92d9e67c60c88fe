import { expect, test } from 'vitest';
import { bendBatten, curveOf, derivativeAt, pointAt } from '../../src/kernel';

const batten = bendBatten([
  [0, 0, 0],
  [1, 0.5, 0.1],
  [2.5, 0.7, 0],
  [4, 0, 0.4],
]);

test('a curve of a batten gives its point and two derivatives', () => {
  const curve = curveOf(batten);
  const out = new Float64Array(9);
  for (const t of [curve.start, 0.4, 2.1, 3.3, curve.end]) {
    curve.write(t, out);
    expect([...out]).toStrictEqual([
      ...pointAt(batten, t),
      ...derivativeAt(batten, t, 1),
      ...derivativeAt(batten, t, 2),
    ]);
  }
});

test('a part of a batten is the same curve between other ends', () => {
  const part = curveOf(batten, 0.5, 2);
  expect([part.start, part.end]).toStrictEqual([0.5, 2]);
  expect(() => curveOf(batten, 2, 0.5)).toThrow('a curve must run forward; got 2 to 0.5');
});
