import { describe, expect, test } from 'vitest';
import {
  angleDim,
  arc,
  breakLine,
  circle,
  dim,
  drawing,
  extents,
  flatten,
  hatch,
  label,
  line,
  mark,
  mm,
  note,
  rectHatch,
} from '../../src/drawing';

const draw = (...shapes: Parameters<typeof drawing>[0]['shapes']) =>
  drawing({ title: 'Frame 3', says: 'A frame.', shapes });

describe('a drawing', () => {
  test('lays lists of shapes open, in order', () => {
    const [a, b, c] = [line([]), mark([0, 0]), note('x')];
    expect(draw(a, [b, [c]], []).shapes).toEqual([a, b, c]);
  });

  test.each([
    [
      'line',
      line([
        [0, 0],
        [NaN, 1],
      ]),
    ],
    ['circle', circle([0, 0], Infinity)],
    ['dim', dim([0, 0], [0, -Infinity], '1 mm')],
    [
      'area',
      hatch(
        [
          [0, 0],
          [1, 0],
        ],
        'cedar',
        { holes: [[[NaN, 0]]] },
      ),
    ],
  ])('refuses a %s at no finite place, by name', (name, shape) => {
    expect(() => draw(shape)).toThrow(`the drawing "Frame 3" has a ${name} at a place that is not a number`);
  });

  test('refuses extents that are not numbers', () => {
    const keepIn = { left: 0, right: NaN, bottom: 0, top: 1 };
    expect(() => drawing({ title: 'T', says: 's', shapes: [], keepIn })).toThrow('extents');
  });

  test('is in millimetres', () => {
    expect(mm(1.6)).toBe(1600);
  });
});

describe('builders', () => {
  test('a dimension stands below what is flat and left of what is steep, unless told', () => {
    expect(dim([0, 0], [10, 1], 'x').side).toBe('below');
    expect(dim([0, 0], [1, 10], 'x').side).toBe('left');
    expect(dim([0, 0], [10, 1], 'x', { run: 'vertical' }).side).toBe('left');
    expect(dim([0, 0], [1, 10], 'x', { run: 'horizontal' }).side).toBe('below');
    expect(dim([0, 0], [10, 1], 'x', { side: 'above', level: 2 })).toMatchObject({
      side: 'above',
      level: 2,
      run: 'aligned',
    });
  });

  test('carry part and layer, and leave them out when not given', () => {
    expect(rectHatch(0, 0, 1, 1, 'ply', { part: 'bottom', layer: 'skin' })).toMatchObject({
      part: 'bottom',
      layer: 'skin',
    });
    expect(Object.keys(label([0, 0], 'x'))).not.toContain('part');
    expect(angleDim([0, 0], 0, 1, 'x', { reach: 3, part: 'stem' })).toMatchObject({ reach: 3, part: 'stem' });
  });

  test('a break line runs from end to end and swings to both sides', () => {
    const { points } = breakLine([0, 0], [0, 100]);
    expect(points[0]).toEqual([0, 0]);
    expect(points.at(-1)).toEqual([0, 100]);
    expect(Math.min(...points.map((p) => p[0]))).toBeCloseTo(-9, 9);
    expect(Math.max(...points.map((p) => p[0]))).toBeCloseTo(9, 9);
  });
});

describe('extents', () => {
  test('of arcs are those of the part that is drawn', () => {
    // A quarter from east to north of radius 10 about (5, 5).
    const box = extents(draw(arc([5, 5], 10, 0, Math.PI / 2)));
    expect(box.left).toBeCloseTo(5, 9);
    expect(box.right).toBeCloseTo(15, 9);
    expect(box.bottom).toBeCloseTo(5, 9);
    expect(box.top).toBeCloseTo(15, 9);
  });

  test('of an arc that passes a quadrant reach as far as its chords: short by at most r * step^2 / 8', () => {
    const box = extents(draw(arc([0, 0], 100, -0.73, 0.81)));
    expect(100 - box.right).toBeGreaterThanOrEqual(0);
    expect(100 - box.right).toBeLessThan((100 * 0.1 ** 2) / 8);
  });

  test('hold what is to be kept in sight, and what is measured and pointed to', () => {
    const keepIn = { left: -1, right: 2, bottom: -3, top: 4 };
    const shapes = [
      dim([0, 0], [50, 0], 'x'),
      label([0, 60], 'y'),
      note('z', { at: [0, -70] }),
      note('foot'),
    ];
    expect(extents(drawing({ title: 't', says: 's', shapes, keepIn }))).toEqual({
      left: -1,
      right: 50,
      bottom: -70,
      top: 60,
    });
    expect(extents(draw())).toEqual({ left: 0, right: 0, bottom: 0, top: 0 });
  });
});

describe('flattened', () => {
  test('an arc from north to east goes the long way round, anticlockwise', () => {
    const [points] = flatten(arc([0, 0], 10, Math.PI / 2, 0));
    const angle = points!.reduce((sum, p, i) => {
      const q = points![i + 1];
      return q ? sum + Math.atan2(p[0] * q[1] - p[1] * q[0], p[0] * q[0] + p[1] * q[1]) : sum;
    }, 0);
    expect(angle).toBeCloseTo(1.5 * Math.PI, 9);
  });

  test('a closed line and each ring of an area end where they began', () => {
    const ring = [
      [0, 0],
      [4, 0],
      [0, 3],
    ] as const;
    for (const shape of [line(ring, { closed: true }), hatch(ring, 'ply', { holes: [ring] })]) {
      for (const points of flatten(shape)) expect(points.at(-1)).toEqual(points[0]);
    }
    expect(flatten(hatch(ring, 'ply', { holes: [ring] }))).toHaveLength(2);
  });

  test('a circle of chords has the area of the circle but for the stated error', () => {
    const [points] = flatten(circle([3, -2], 10), 0.01);
    const area = points!.reduce((sum, [x, y], i) => {
      const [nx, ny] = points![(i + 1) % points!.length]!;
      return sum + (x * ny - nx * y) / 2;
    }, 0);
    // An inscribed polygon of n corners lacks (2 pi / n)^2 / 6 of the circle's area.
    expect(1 - area / (100 * Math.PI)).toBeCloseTo(0.01 ** 2 / 6, 6);
  });
});
