/** The boat's own plan of pieces, and what it reads of the woods. */
import { describe, expect, test } from 'vitest';
import { starter, starters } from '../../../src/boat';
import { deriveBoat } from '../derive';

const punt = starter('creek-punt')!;
const launch = starter('vee-launch')!;

describe('the usual stagger', () => {
  // Common practice, no source: two feet, or 24 thicknesses where that is more.
  test.each([
    ['18 mm', 0.6],
    ['25 mm', 0.6],
    ['30 mm', 0.72],
  ])('of a keelson %s thick', (thickness, wanted) =>
    expect(deriveBoat(launch, { 'keelson.thickness': thickness }).number('keelson.usualStagger')).toBeCloseTo(
      wanted,
      12,
    ),
  );
});

describe('the board that a part is laid in', () => {
  const sold = [2.4, 3, 3.6, 4.2];
  test.each(starters.map(({ id, table }) => [id, table] as const))('is one that is sold: %s', (_, table) => {
    const boat = deriveBoat(table);
    for (const part of ['keelson', 'chineLog', 'sheerClamp'])
      expect(sold.some((length) => Math.abs(boat.number(`${part}.boardBest`) - length) < 1e-9)).toBe(true);
  });

  test('is the only one that is sold, where there is one', () => {
    const none = Object.fromEntries(['A', 'B', 'C'].map((key) => [`shop.length${key}`, '0 mm']));
    const boat = deriveBoat(launch, { ...none, 'shop.lengthD': '3.3 m' });
    expect(boat.number('keelson.boardBest')).toBeCloseTo(3.3, 12);
  });

  test('is wide as the part is, where the part bends the easy way alone', () => {
    // A flat-bottomed keelson is sprung along the centreline, where no edge bends sideways.
    expect(deriveBoat(punt, { 'keelson.width': '90 mm' }).number('keelson.boardWidth')).toBeCloseTo(0.09, 12);
  });

  test('is not taken more often than it reaches, where joints may stand anywhere', () => {
    const free = { 'pieces.hardShare': '0 %', 'pieces.frameClearance': '0 mm', 'keelson.stagger': '0 mm' };
    expect(deriveBoat(punt, { ...free, 'keelson.boardLength': '4.2 m' }).number('keelson.boardsMore')).toBe(
      0,
    );
  });
});

describe('woods', () => {
  test('bend alone by a tenth more than the beam of the table, which is sheared too', () => {
    // Wood Handbook, USDA FPL-GTR-190 (2010), ch. 5: the printed modulus is to be raised by 10 % for shear.
    const boat = deriveBoat(launch);
    expect(boat.number('timber.sitkaSpruce.bendingModulus')).toBeCloseTo(1.1 * 10.8e9, 0); // Table 5-3a
  });

  test('are glued in layers of a hundredth of the radius in hardwood and southern pine, a 125th in other softwood', () => {
    // From memory: National Design Specification 5.3.8.
    const boat = deriveBoat(launch);
    expect(['whiteOak', 'sitkaSpruce'].map((id) => boat.number(`timber.${id}.layerRatio`))).toEqual([
      100, 125,
    ]);
  });
});
