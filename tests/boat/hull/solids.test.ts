import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { solidOf, type SolidPart } from '../../../src/boat/hull/solids';
import {
  alongSheer,
  chineLogs,
  frames,
  keelson,
  skin,
  stems,
  thwarts,
  transom,
} from '../../../src/boat/joinery/parts';
import { below, heightsAlong, type Mesh } from '../../../src/kernel';

const SEAT = 0.25;
const VOLUME = 0.01;
const sizeOf = (mesh: Mesh) =>
  below(mesh, { normal: [0, 0, 1], height: heightsAlong(mesh, [0, 0, 1])[1] + 1 });

describe.each(starters.map(({ id, table }) => [id, buildHull(offsetsOf(table))] as const))(
  '%s',
  (_, hull) => {
    const has = (role: string) => [hull.aft.role, hull.fore.role].some((one) => one === role);
    const places: readonly (readonly [SolidPart, () => { readonly centre: readonly number[] }])[] = [
      ['bottom', () => skin(hull, 'bottom')],
      ['side', () => skin(hull, 'side')],
      ['keelson', () => keelson(hull)],
      ['chineLog', () => chineLogs(hull)],
      ['sheerClamp', () => alongSheer(hull)],
      ['frame', () => frames(hull)],
      ['thwart', () => thwarts(hull, 1, SEAT)],
      ...(has('transom') ? [['transom', () => transom(hull, 'transom')] as const] : []),
      ...(has('bow transom') ? [['bowTransom', () => transom(hull, 'bow transom')] as const] : []),
      ...(has('stem') ? [['stem', () => stems(hull)] as const] : []),
    ];

    // A plate is made of flat pieces, a hundredth short where its edges are bent; half its thickness off its face.
    test.each(places)('%s: as large as it is built, where the weights have its middle', (part, of) => {
      const { volume, centroid } = sizeOf(solidOf(hull, part, VOLUME, SEAT)!);
      expect(Math.abs(volume / VOLUME - 1)).toBeLessThan(0.012);
      const { centre } = of();
      centroid!.forEach((value, axis) => expect(Math.abs(value - centre[axis]!)).toBeLessThan(0.02));
    });
  },
);

test('what she has not is nothing', () => {
  const punt = buildHull(offsetsOf(starters.find(({ id }) => id === 'creek-punt')!.table));
  expect(solidOf(punt, 'stem', VOLUME, SEAT)).toBeNull();
  expect(solidOf(punt, 'bilge', VOLUME, SEAT)).toBeNull();
  expect(solidOf(punt, 'side', 0, SEAT)).toBeNull();
});
