import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starter, starters } from '../../../src/boat';
import { flatPanel } from '../../../src/boat/hull/flat-panel';
import { distance2, turned, type Vec2 } from '../../../src/kernel';
import '../../kernel/near';
import { box, hullThrough, wedge } from '../shapes';

const xs = (line: readonly Vec2[]) => line.map(([x]) => x);
const ys = (line: readonly Vec2[]) => line.map(([, y]) => y);
const long = (line: readonly Vec2[]) =>
  line.slice(1).reduce((sum, point, i) => sum + distance2(line[i]!, point), 0);
const area = (outline: readonly Vec2[]) =>
  outline.reduce((sum, [x, y], i) => {
    const [x2, y2] = outline[(i + 1) % outline.length]!;
    return sum + (x * y2 - x2 * y) / 2;
  }, 0);

describe('a box', () => {
  const hull = hullThrough(box(4, 1.2, 0.5));

  test('has a rectangle for a side: aft lower corner at the origin, forward to the right', () => {
    const { length, width, outline } = flatPanel(hull.panel('side'));
    expect(length).toBeNear(4, 1e-9);
    expect(width).toBeNear(0.5, 1e-9);
    expect(area(outline)).toBeNear(2, 1e-9);
    for (const [x, y] of [
      [0, 0],
      [4, 0],
      [4, 0.5],
      [0, 0.5],
    ] as const)
      expect(outline.some((point) => distance2(point, [x, y]) < 1e-9)).toBe(true);
  });

  test('is crossed by its frames squarely, each at its distance', () => {
    const marks = flatPanel(hull.panel('side')).marks(hull.frames);
    expect(marks.map(({ station }) => station.name)).toStrictEqual(['station1', 'station2', 'station3']);
    marks.forEach(({ inner, outer, line }, i) => {
      for (const mark of [inner, outer]) {
        expect(mark.along).toBeNear(i + 1, 1e-9);
        expect(mark.at[0]).toBeNear(i + 1, 1e-9);
      }
      expect(line[0]).toStrictEqual(inner.at);
      expect(line.at(-1)).toStrictEqual(outer.at);
      expect(long(line)).toBeNear(0.5, 1e-9);
    });
  });
});

test('where its edges meet at a stem the outline has one corner, said once', () => {
  const { outline, inner, outer } = flatPanel(hullThrough(wedge(4, 1.2, 0.5)).panel('bottom'));
  expect(distance2(inner.at(-1)!, outer.at(-1)!)).toBeLessThan(1e-9);
  const tip = inner.at(-1)!;
  expect(outline.filter((point) => distance2(point, tip) < 1e-6)).toHaveLength(1);
  expect(area(outline)).toBeNear(1.2, 1e-9);
});

describe.each(starters.map(({ id }) => [id] as const))('%s', (id) => {
  const hull = buildHull(offsetsOf(starter(id)!));

  test.each(hull.panels.map((panel) => [panel.name, panel] as const))(
    '%s: edges keep their length on the sheet to 0.01 mm, and the outline its area',
    (_, panel) => {
      const { inner, outer, outline } = flatPanel(panel);
      expect(Math.abs(long(inner) - panel.inner.length)).toBeLessThan(1e-5);
      expect(Math.abs(long(outer) - panel.outer.length)).toBeLessThan(1e-5);
      expect(area(outline)).toBeNear(panel.area, 2e-5);
    },
  );

  test.each(hull.panels.map((panel) => [panel.name, panel] as const))(
    '%s: stands on the straight edge, and no turn stands lower',
    (_, panel) => {
      const { outline, inner, length, width } = flatPanel(panel);
      expect(Math.min(...xs(outline))).toBeNear(0, 0, 1e-12);
      expect(Math.min(...ys(outline))).toBeNear(0, 0, 1e-12);
      expect(Math.max(...xs(outline))).toBeNear(length, 1e-12);
      expect(Math.max(...ys(outline))).toBeNear(width, 1e-12);
      expect(inner.at(-1)![0]).toBeGreaterThan(inner[0]![0]);
      for (let i = 1; i < 200; i++) {
        const heights = ys(outline.map((point) => turned(point, (i * Math.PI) / 200)));
        expect(Math.max(...heights) - Math.min(...heights)).toBeGreaterThan(width - 1e-12);
      }
    },
  );

  test.each(hull.panels.map((panel) => [panel.name, panel] as const))(
    '%s: each frame is marked where a tape along the edge says, and its line joins the two marks',
    (_, panel) => {
      const marks = flatPanel(panel).marks(hull.frames);
      expect(marks.length).toBe(hull.frames.length);
      const { inner, outer } = flatPanel(panel);
      for (const { inner: low, outer: high, line } of marks) {
        for (const [edge, mark] of [
          [inner, low],
          [outer, high],
        ] as const) {
          const before = edge.findLastIndex(([x]) => x <= mark.at[0]);
          const done = long(edge.slice(0, before + 1)) + distance2(edge[before]!, mark.at);
          expect(Math.abs(done - mark.along)).toBeLessThan(3e-5);
        }
        expect(distance2(line[0]!, low.at)).toBe(0);
        expect(distance2(line.at(-1)!, high.at)).toBe(0);
      }
    },
  );
});
