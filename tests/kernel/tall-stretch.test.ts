/** How long an outline is taller than a height: shapes whose answer is plain. */
import { describe, expect, test } from 'vitest';
import { tallStretch } from '../../src/kernel/tall-stretch';
import type { Vec2 } from '../../src/kernel/vec';

describe('taller than a height', () => {
  const plank: readonly Vec2[] = [
    [0, 0],
    [3, 0],
    [3, 0.65],
    [0, 0.65],
  ];
  test('a plank is all along, or nowhere', () => {
    expect(tallStretch(plank, 0.6)).toBeCloseTo(3, 12);
    expect(tallStretch(plank, 0.65)).toBe(0);
  });

  test('a wedge is from where it has grown to it', () => {
    const wedge: readonly Vec2[] = [
      [0, 0],
      [4, 0],
      [4, 1],
    ];
    expect(tallStretch(wedge, 0.25)).toBeCloseTo(3, 12);
  });

  test('a fork is where its prongs are one, and not where they stand one above the other', () => {
    const fork: readonly Vec2[] = [
      [0, 0],
      [3, 0],
      [3, 0.4],
      [1, 0.4],
      [1, 0.6],
      [3, 0.6],
      [3, 1],
      [0, 1],
    ];
    expect(tallStretch(fork, 0.5)).toBeCloseTo(1, 12);
    expect(tallStretch(fork, 0.3)).toBeCloseTo(3, 12);
  });
});
