import { describe, expect, test } from 'vitest';
import { demoBoat } from '../../src/boat';
import { isIssue } from '../../src/measure';
import { deriveBoat } from './derive';

const broadened = deriveBoat(demoBoat, { 'stem.sheer.halfBreadth': '300 mm' });

describe('an offset written over that makes a transom of the stem', () => {
  test.each(['stem.length', 'stem.mass', 'hull.structureMass', 'hull.structureCentre.x'])(
    'leaves %s without a number, and says why',
    (name) => {
      const value = broadened.value(name);
      expect(isIssue(value) && value.issue).toMatch(/ends in a bow transom, and by the plan in none/);
    },
  );
  test('spoils nothing else', () => {
    expect(broadened.value('keelson.mass')).toBeGreaterThan(0);
    expect(broadened.value('transom.area')).toBeGreaterThan(0);
  });
});

test('what there is none of has no middle, and the rest is weighed without it', () => {
  const bare = deriveBoat(demoBoat, { 'thwart.number': '0' });
  const centre = bare.value('thwart.centre.x');
  expect(isIssue(centre) && centre.issue).toBe('the boat has no thwarts');
  expect(bare.value('thwart.mass')).toBe(0);
  expect(bare.value('hull.structureCentre.x')).toBeGreaterThan(0);
});
