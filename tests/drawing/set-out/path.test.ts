import { describe, expect, test } from 'vitest';
import { arc, arrow, circle, mark } from '../../../src/drawing';
import type { Paper } from '../../../src/drawing/set-out/berth';
import { arcPath, arrowPaths, circlePath, markPath, polyline } from '../../../src/drawing/set-out/path';

/** 2 px to the mm, origin at (100, 50). */
const paper: Paper = { scale: 2, origin: [100, 50], left: 0, top: 0, right: 200, bottom: 100, size: 13 };

describe('path data', () => {
  test('is rounded to hundredths, negative numbers and noughts too', () => {
    expect(
      polyline([
        [0.004, -0.004],
        [-1.006, 12.999],
        [-0.5, 3.1],
      ]),
    ).toBe('M0 0L-1.01 13L-0.5 3.1');
    expect(polyline([], true)).toBe('');
  });

  test('of an arc: anticlockwise on the drawing, the long way round where it is more than half a turn', () => {
    const quarter = arc([0, 0], 10, 0, Math.PI / 2);
    expect(arcPath(quarter, paper)).toBe('M120 50A20 20 0 0 0 100 30');
    const rest = arc([0, 0], 10, Math.PI / 2, 0);
    expect(arcPath(rest, paper)).toBe('M100 30A20 20 0 1 0 120 50');
  });

  test('of a whole turn is a circle', () => {
    const whole = circlePath(circle([5, 0], 10), paper);
    expect(whole).toBe('M90 50A20 20 0 1 0 130 50A20 20 0 1 0 90 50Z');
    expect(arcPath(arc([5, 0], 10, 1, 1), paper)).toBe(whole);
  });

  test('of an arrow ends in its head, which takes all of a short one', () => {
    expect(arrowPaths(arrow([0, 0], [50, 0]), paper)).toEqual({
      shaft: 'M100 50L191 50',
      head: 'M200 50L191 52.1L191 47.9Z',
    });
    expect(arrowPaths(arrow([0, 0], [2, 0]), paper).shaft).toBe('M100 50L100 50');
    expect(arrowPaths(arrow([7, 7], [7, 7]), paper)).toEqual({ shaft: '', head: '' });
  });

  test('of a point mark has one size at any scale', () => {
    for (const form of ['cross', 'dot', 'ring'] as const) {
      const far = markPath(mark([0, 0], { form }), { ...paper, scale: 40 });
      expect(far).toBe(markPath(mark([0, 0], { form }), paper));
    }
  });
});
