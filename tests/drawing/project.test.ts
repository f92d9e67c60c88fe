import { describe, expect, test } from 'vitest';
import {
  extents,
  linesPlan,
  thumbnail,
  view,
  type LineShape,
  type Shape,
  type SpaceLine,
} from '../../src/drawing';
import { skiffLines } from './demonstrations';

/** A line with a different number on each axis, metres. */
const slant: SpaceLine = {
  name: 'chine',
  points: [
    [0, 0.1, 0.2],
    [4, 0.5, 0.9],
  ],
};
const points = (shapes: readonly Shape[]) =>
  shapes.filter((s): s is LineShape => s.shape === 'line').map((s) => s.points);
const box = (shapes: readonly Shape[]) => extents({ title: '', says: '', shapes });

describe('a view', () => {
  test('from the side takes length and height, in mm', () => {
    expect(points(view([slant], 'profile'))).toEqual([
      [
        [0, 200],
        [4000, 900],
      ],
    ]);
  });

  test('from above takes length and half-breadth', () => {
    expect(points(view([slant], 'plan'))).toEqual([
      [
        [0, 100],
        [4000, 500],
      ],
    ]);
  });

  test('of the body has forward sections on the right, after ones on the left', () => {
    const fore: SpaceLine = {
      name: 'frame5',
      points: [
        [3, 0, 0.1],
        [3, 0.4, 0.6],
      ],
    };
    const after: SpaceLine = {
      name: 'frame1',
      points: [
        [1, 0, 0.1],
        [1, 0.5, 0.5],
      ],
    };
    const shapes = view([fore, after], 'body');
    expect(points(shapes)).toEqual([
      [
        [0, 100],
        [400, 600],
      ],
      [
        [0, 100],
        [-500, 500],
      ],
    ]);
    expect(shapes.map((s) => s.part)).toEqual(['frame5', 'frame1']);
  });

  test('of the body draws what stands right amidships once, on the forward side', () => {
    const there: SpaceLine = {
      name: 'frame3',
      points: [
        [2, 0, 0],
        [2, 0.4, 0.5],
      ],
    };
    expect(points(view([there], 'body', { amidships: 2 }))).toEqual([
      [
        [0, 0],
        [400, 500],
      ],
    ]);
  });

  test('of the body parts a line amidships, where it is cut', () => {
    const [right, left] = points(view([slant], 'body', { amidships: 1 }));
    // A quarter of the way along: half-breadth 0.2 m, height 0.375 m.
    expect(right![0]![0]).toBeCloseTo(200, 9);
    expect(right![0]![1]).toBeCloseTo(375, 9);
    expect(left!.at(-1)![0]).toBeCloseTo(-200, 9);
    expect(left!.at(-1)![1]).toBeCloseTo(375, 9);
    expect(right!.at(-1)).toEqual([500, 900]);
    expect(left![0]).toEqual([-100, 200]);
  });

  test('of the body keeps each piece of a line that crosses amidships again', () => {
    const back: SpaceLine = {
      name: 'x',
      points: [
        [0, 1, 0],
        [2, 1, 1],
        [0, 1, 2],
      ],
    };
    expect(points(view([back], 'body', { amidships: 1 })).map((p) => p.length)).toEqual([3, 2, 2]);
  });

  test('can be set elsewhere on the sheet', () => {
    expect(points(view([slant], 'profile', { at: [10, -20] }))).toEqual([
      [
        [10, 180],
        [4010, 880],
      ],
    ]);
  });

  test('of no lines is empty', () => {
    for (const which of ['profile', 'plan', 'body'] as const) expect(view([], which)).toEqual([]);
  });
});

describe('the lines plan', () => {
  const lines = skiffLines();
  const says = { title: 'Lines', says: 'A skiff.' };

  test('has the plan under the profile at the same stations, the body plan on the same base line', () => {
    const { shapes } = linesPlan(lines, says);
    const profile = view(lines, 'profile');
    expect(shapes).toEqual(expect.arrayContaining(profile));
    const plan = view(lines, 'plan');
    const moved = points(shapes).find((p) => p.length === 41 && p[0]![1] < box(profile).bottom)!;
    expect(moved.map((p) => p[0])).toEqual(points(plan)[0]!.map((p) => p[0]));
    // The body plan's heights are those of the profile: same base line.
    const body = points(shapes).slice(2 + 2 * lines.length);
    const heights = body.flat().map((p) => p[1]);
    expect(Math.min(...heights)).toBeCloseTo(box(profile).bottom, 9);
    expect(Math.max(...heights)).toBeCloseTo(box(profile).top, 9);
  });

  test.each(['wide', 'tall'] as const)('keeps the %s views apart', (form) => {
    const { shapes } = linesPlan(lines, { ...says, form });
    const count = 2 + lines.length;
    const drawn = shapes.filter((s): s is LineShape => s.shape === 'line');
    const parts = [
      drawn.slice(2, count),
      drawn.slice(count, count + lines.length),
      drawn.slice(count + lines.length),
    ].map(box);
    for (const [i, a] of parts.entries()) {
      for (const b of parts.slice(i + 1)) {
        expect(a.right < b.left || b.right < a.left || a.top < b.bottom || b.top < a.bottom).toBe(true);
      }
    }
  });

  test('names its views, its thumbnail does not', () => {
    const names = linesPlan(lines, says).shapes.flatMap((s) => ('text' in s ? [s.text] : []));
    expect(names).toEqual(['Profile', 'Half-breadth', 'Body plan']);
    expect(thumbnail(lines, says).shapes.every((s) => s.shape === 'line')).toBe(true);
  });

  test('carries the name of each line, to light it up', () => {
    for (const plan of [linesPlan(lines, says), thumbnail(lines, says)]) {
      for (const { name } of lines)
        expect(plan.shapes.filter((s) => s.part === name).length).toBeGreaterThanOrEqual(3);
    }
  });
});
