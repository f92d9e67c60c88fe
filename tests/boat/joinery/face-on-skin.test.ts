import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, type Panel, starters } from '../../../src/boat';
import { faceOnSkin, underStick } from '../../../src/boat/joinery/face-on-skin';
import type { Vec3 } from '../../../src/kernel';
import { coneSided, hullThrough, type Lines, planeSided, veePrism, box } from '../shapes';

const WIDTH = 0.04;
const onPanel = (lines: Lines, edge: string, panel: string, ends: 'free' | 'fast' = 'free') => {
  const hull = hullThrough(lines);
  return faceOnSkin(hull.edge(edge), hull.panel(panel), WIDTH, ends);
};
const most = (numbers: readonly number[]) => Math.max(...numbers.map(Math.abs));

/** A flat bottom on three stations 1 m apart, with heights of its keel and chine, and offsets of its sheer. */
const threeStations = (keel: readonly number[], chine: readonly number[], out: readonly number[]): Lines => ({
  keel: keel.map((z, i): Vec3 => [i, 0, z]),
  chine: chine.map((z, i): Vec3 => [i, 1, z]),
  sheer: out.map((by, i): Vec3 => [i, 1 + by, 1]),
});

describe('nothing stands off the skin', () => {
  test.each([
    ['a box', box(4, 1, 0.5), 'keel', 'bottom'],
    ['a box, at its chine', box(4, 1, 0.5), 'chine', 'side'],
    [
      'plane sides that lean and rise',
      planeSided({ flare: 0.3, plan: 0.1, profile: 0.05, rake: 0.2, height: 0.5 }),
      'chine',
      'side',
    ],
    [
      'the same, at the sheer',
      planeSided({ flare: 0.3, plan: 0.1, profile: 0.05, rake: 0.2, height: 0.5 }),
      'sheer',
      'side',
    ],
  ] as const)('of %s', (_, lines, edge, panel) => {
    for (const { line, far } of onPanel(lines, edge, panel).places) {
      expect(line).toBeCloseTo(0, 12);
      expect(far).toBeCloseTo(0, 9);
    }
  });
});

describe('a keelson', () => {
  test('stands out with its edges under a vee bottom by half its width times the sine of the deadrise', () => {
    const deadrise = 0.25;
    const { places } = onPanel(veePrism(4, 0.8, deadrise, 0.4, 0.2), 'keel', 'bottom');
    for (const { line, far } of places) {
      expect(line).toBeCloseTo(0, 12);
      expect(far).toBeCloseTo(WIDTH * Math.sin(deadrise), 9);
    }
  });

  test('with free ends lacks of a rockered bottom by two twenty-sevenths of the rise at the middle frame', () => {
    // Fair through three points is a parabola, h (2x - x²); a board with free ends h (3x - x³) / 2. They differ most at a third.
    const h = 0.02;
    const { places, at } = onPanel(threeStations([h, 0, h], [h, 0, h], [0, 0, 0]), 'keel', 'bottom');
    expect(at(0.5).line).toBeCloseTo(-h / 16, 5);
    expect(most(places.map(({ line }) => line)) / h).toBeCloseTo(2 / 27, 3);
    // Held fast it goes as the skin does.
    const fast = onPanel(threeStations([h, 0, h], [h, 0, h], [0, 0, 0]), 'keel', 'bottom', 'fast');
    expect(most(fast.places.map(({ line }) => line))).toBe(0);
  });
});

describe('a log and a clamp', () => {
  test('on a cone’s side: off the circle by what a board of three points misses it', () => {
    const half = 0.1;
    const radius = 5;
    const cone = coneSided({ r1: radius, r2: 5.5, height: 0.6, half, keelOffset: 4, stations: 3 });
    const hull = hullThrough(cone);
    const { places } = faceOnSkin(hull.edge('chine'), hull.panel('side'), WIDTH, 'free');
    // The free board against the parabola through the arc: h (x - 2x² + x³) / 2, at its most 2 h / 27, seen square to the side.
    const h = radius * (1 - Math.cos(half));
    const lean = Math.atan(0.5 / 0.6);
    const lacks = -Math.min(...places.map(({ line }) => line));
    // Sixteen places a bay, and arcs that are longer than their chords, leave half of a hundredth.
    expect(Math.abs(lacks / (((2 * h) / 27) * Math.cos(lean)) - 1)).toBeLessThan(0.01);
    // Round the cone the side doesn't wind along its edge, so an even turn is true all along.
    expect(most(places.map(({ line, far }) => far - line))).toBeLessThan(2e-5);
  });

  test('turned evenly between frames lean out more than a side whose flare quickens, the log’s top and the clamp’s foot', () => {
    const hull = hullThrough(box(2, 2, 0.5, 3));
    const [chine, sheer] = [hull.edge('chine'), hull.edge('sheer')];
    // Flare 0.05 x²: half way to the first frame 0.0125, where an even turn has 0.025.
    const quickening: Panel = {
      ...hull.panel('side'),
      normalOn: (_, x) => [0, Math.cos(0.05 * x * x), -Math.sin(0.05 * x * x)],
    };
    const log = faceOnSkin(chine, quickening, WIDTH, 'free').at(0.5);
    expect(log.line).toBeCloseTo(0, 12);
    expect(log.far).toBeCloseTo(WIDTH * Math.sin(0.0125), 9);
    expect(faceOnSkin(sheer, quickening, WIDTH, 'free').at(0.5).far).toBeCloseTo(
      -WIDTH * Math.sin(0.0125),
      9,
    );
  });

  test.each(starters.map(({ id, table }) => [id, buildHull(offsetsOf(table))] as const))(
    'of the %s are true at every frame',
    (_, hull) => {
      for (const edge of hull.edges.slice(1))
        for (const panel of hull.panels.filter(({ inner, outer }) => inner === edge || outer === edge))
          for (const along of edge.arcs) {
            const { line, far } = faceOnSkin(edge, panel, WIDTH, 'free').at(along);
            expect(most([line, far])).toBeLessThan(1e-9);
          }
    },
  );
});

describe('a stick from keelson to chine', () => {
  test('rocks on a rockered keel beside a straight chine by √3 / 9 of the rise', () => {
    // Below its chord the board stands h (x - x³) / 2: at most h √3 / 9, at x = 1 / √3.
    const h = 0.02;
    const places = underStick(hullThrough(threeStations([h, 0, h], [0, 0, 0], [0, 0, 0])), 'free');
    expect(Math.max(...places.map(({ proud }) => proud)) / h).toBeCloseTo(Math.sqrt(3) / 9, 3);
    expect(Math.min(...places.map(({ proud }) => proud))).toBeGreaterThan(-1e-6);
  });

  test('lies on both where they bend alike, and there is none without a chine', () => {
    const alike = underStick(hullThrough(threeStations([0.03, 0, 0.03], [0.03, 0, 0.03], [0, 0, 0])), 'free');
    expect(most(alike.map(({ proud }) => proud))).toBeLessThan(1e-9);
    const { keel, sheer } = box(4, 1, 0.5);
    expect(underStick(hullThrough({ keel: keel!, sheer: sheer! }), 'free')).toStrictEqual([]);
  });
});
