import { describe, expect, test } from 'vitest';
import { demoBoat, endsOf, plannedEnds } from '../../../src/boat';
import { blankTable } from '../../../src/boat/table/blank-table';
import { isIssue } from '../../../src/measure';
import { deriveBoat } from '../derive';

/** Numbers that turn the dory's stem into a transom at the bow, and her transom into a sternpost. */
const broadened = deriveBoat(demoBoat, { 'stem.sheer.halfBreadth': '300 mm' });
const pointed = deriveBoat(demoBoat, {
  'transom.chine.halfBreadth': '0 mm',
  'transom.sheer.halfBreadth': '0 mm',
});

describe('an offset written over that makes a transom of the stem', () => {
  test('gives her the parts of that end, and takes the stem away', () => {
    expect(broadened.names).toContain('bowTransom.mass');
    expect(broadened.names).toContain('bowTransom.rake');
    expect(broadened.names).not.toContain('stem.mass');
  });
  test('weighs her with it: the bare hull less the bow transom, and the stem again, is the plan’s', () => {
    const plan = deriveBoat(demoBoat);
    const without = (boat: typeof plan, end: string) =>
      boat.number('hull.structureMass') - boat.number(`${end}.mass`);
    const parts = ['side', 'bottom', 'keelson', 'chineLog', 'sheerClamp', 'rubRail'];
    const moved = parts.reduce(
      (sum, part) => sum + broadened.number(`${part}.mass`) - plan.number(`${part}.mass`),
      0,
    );
    expect(without(broadened, 'bowTransom')).toBeCloseTo(without(plan, 'stem') + moved, 9);
  });
});

describe('half-breadths of nothing at the stern', () => {
  test('make a sternpost of the transom, counted with the stem', () => {
    expect(pointed.names).not.toContain('transom.mass');
    expect(pointed.names).toContain('sternpost.rake');
    expect(pointed.number('stem.pieces')).toBe(2);
    expect(pointed.number('hull.structureMass')).toBeGreaterThan(0);
  });
});

describe('what a boat ends in before her numbers say', () => {
  const blank = blankTable({ name: 'New', stations: 5, edges: 3, unit: 'mm', offsetsTo: 'outside of skin' });
  test('is a transom at the stern and a stem at the bow', () => {
    expect(plannedEnds(blank)).toStrictEqual({ aft: 'transom', fore: 'stem' });
  });
  test('even of a table without stations, or with one', () => {
    for (const stations of [[], blank.stations.slice(0, 1)])
      expect(plannedEnds({ ...blank, stations })).toStrictEqual({ aft: 'transom', fore: 'stem' });
  });
  test('and a number still missing leaves it at that', () => {
    const half = deriveBoat(blank, { 'transom.chine.halfBreadth': '0 mm' });
    expect(endsOf(half.hull()).aft).toBe('transom');
  });
});

test('what there is none of has no middle, and the rest is weighed without it', () => {
  const bare = deriveBoat(demoBoat, { 'thwart.number': '0' });
  const centre = bare.value('thwart.centre.x');
  expect(isIssue(centre) && centre.issue).toBe('the boat has no thwarts');
  expect(bare.value('thwart.mass')).toBe(0);
  expect(bare.value('hull.structureCentre.x')).toBeGreaterThan(0);
});
