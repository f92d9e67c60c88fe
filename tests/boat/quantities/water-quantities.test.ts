/** One draught for the boat: the waterline and the water at her transoms follow from it. */
import { describe, expect, test } from 'vitest';
import { starter, starters } from '../../../src/boat';
import { deriveBoat } from '../derive';

describe('the design waterline', () => {
  test('lies the draught above the lowest point: on the class skiff 76 mm and a little less, between her frames', () => {
    const boat = deriveBoat(starter('class-skiff')!, { 'hull.draught': '100 mm' });
    expect(boat.number('hull.waterline')).toBeGreaterThan(0.175);
    expect(boat.number('hull.waterline')).toBeLessThanOrEqual(0.176);
    // Her transom's foot stands 155 mm above the base.
    expect(boat.number('transom.waterDepth')).toBeCloseTo(boat.number('hull.waterline') - 0.155, 12);
  });
  test('a transom clear of the water has less than none', () => {
    const punt = deriveBoat(starter('creek-punt')!, { 'hull.draught': '60 mm' });
    expect(punt.number('bowTransom.waterDepth')).toBeLessThan(-0.15);
  });
  test.each(starters)('of the $table.name stays where it is when her widest station changes', ({ table }) => {
    const wider = table.stations[2]!.name.replace(' ', '');
    const plan = deriveBoat(table).number('hull.waterline');
    const edge = table.edges.at(-1)!;
    const moved = deriveBoat(table, { [`${wider}.${edge}.halfBreadth`]: '990 mm' });
    expect(moved.number('hull.waterline')).toBe(plan);
  });
});
