import { describe, expect, test } from 'vitest';
import { buildHull, type Hull, offsetsOf, starters } from '../../../src/boat';
import type { SvgNode } from '../../../src/drawing';
import { modelOf } from '../../../src/page/hull3d/hull-model';
import { namedLooks, threeQuarter } from '../../../src/page/hull3d/look';
import { stillOf } from '../../../src/page/hull3d/still';
import { box, hullThrough, wedge } from '../../boat/shapes';
import { withoutChines, withTwoChines } from '../../cells/odd-boats';
import '../../kernel/near';

const boats = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['no chine', withoutChines] as const,
  ['two chines', withTwoChines] as const,
].map(([id, table]) => [id, buildHull(offsetsOf(table))] as const);

const none: ReadonlySet<string> = new Set();
const picture = (hull: Hull, words = 'Three-quarter', lit = none, second: Hull | null = null): SvgNode => {
  const { look } = namedLooks.find((one) => one.words === words)!;
  return stillOf(hull, { look, name: 'Boat', lit, second });
};
const paths = ({ kids }: SvgNode, className: string): string[] =>
  kids.flatMap((kid) =>
    typeof kid !== 'string' && String(kid.attrs['class']).split(' ').includes(className)
      ? [String(kid.attrs['d'])]
      : [],
  );
const pointsOf = (d: string): number[][] =>
  d
    .replaceAll(/[MZ]/g, '')
    .split('L')
    .map((pair) => pair.split(' ').map(Number));
const bounds = (ds: readonly string[]) => {
  const all = ds.flatMap(pointsOf);
  const [xs, ys] = [all.map(([x]) => x!), all.map(([, y]) => y!)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
};

describe.each(boats)('%s', (_, hull) => {
  test.each(namedLooks.map(({ words }) => words))('%s keeps within its sheet', (words) => {
    const tree = picture(hull, words);
    const [, , width = 0, height = 0] = String(tree.attrs['viewBox']).split(' ').map(Number);
    const all = [...paths(tree, 'skin'), ...paths(tree, 'edge'), ...paths(tree, 'frame')];
    expect(all.join('')).toMatch(/^[MLZ\d. -]+$/);
    const { left, right, top, bottom } = bounds(all);
    expect(Math.min(left, top)).toBeGreaterThanOrEqual(0);
    expect(right).toBeLessThanOrEqual(width);
    expect(bottom).toBeLessThanOrEqual(height);
    expect(tree.attrs['aria-label']).toMatch(
      /^Boat, seen from .*: \d panels? a side, \d long edges and \d frames?\.$/,
    );
  });
  test('has a model to turn of the same parts', () => {
    const model = modelOf(hull)!;
    expect(model.panels.map(({ name }) => name)).toStrictEqual(hull.panels.map(({ name }) => name));
    expect(model.frames).toHaveLength(hull.stations.length);
    expect(2 * model.half[0]).toBeNear(hull.length, 1e-3);
    expect(2 * model.half[1]).toBeNear(hull.beam, 1e-3);
  });
});

describe('a box 6 m by 2 m by 1 m', () => {
  const hull = hullThrough(box(6, 2, 1));
  test('from port is its profile, to scale', () => {
    const { left, right, top, bottom } = bounds(paths(picture(hull, 'From port'), 'skin'));
    // A tenth of a pixel each way.
    expect((right - left) / (bottom - top)).toBeNear(6, 0.005);
  });
  test('paints what is nearer later: the starboard side, then the bottom, then the port side', () => {
    const fromPort = { ...threeQuarter, turn: Math.PI / 2, lift: 0.3 };
    const { kids } = stillOf(hull, { look: fromPort, name: '', lit: none, second: null });
    const parts = kids.flatMap((kid) =>
      typeof kid !== 'string' && String(kid.attrs['class']).startsWith('skin')
        ? [kid.attrs['data-part']]
        : [],
    );
    const skin = parts.filter((part) => part === 'side' || part === 'bottom');
    const runs = skin.filter((part, i) => part !== skin[i - 1]);
    expect(runs).toStrictEqual(['side', 'bottom', 'side']);
    // From the other side it is the other way about, so the order is no accident of the list.
    const fromStarboard = stillOf(hull, {
      look: { ...fromPort, turn: -Math.PI / 2 },
      name: '',
      lit: none,
      second: null,
    });
    const last = (tree: SvgNode) => paths(tree, 'skin').at(-1)!;
    const below = (d: string) => bounds([d]).bottom;
    expect(below(last(fromStarboard))).toBeGreaterThan(below(paths(fromStarboard, 'skin')[0]!));
  });
  test('lights a part by its name, and dashes a second version over it', () => {
    const lit = new Set(['chine', 'side']);
    expect(paths(picture(hull), 'lit')).toHaveLength(0);
    const some = picture(hull, 'Three-quarter', lit);
    // Chine: a side of two quads on each side of the boat; the side panel itself once.
    expect(paths(some, 'lit').length).toBeGreaterThan(3 * 2 * 4);
    const both = picture(hull, 'Three-quarter', none, hullThrough(wedge(6, 2, 1)));
    expect(paths(both, 'ghost')).toHaveLength(2 * 3);
    expect(both.attrs['aria-label']).toMatch(/dashed/);
  });
});
