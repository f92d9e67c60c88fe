import { describe, expect, test } from 'vitest';
import { judge, type PlyLayer, worstOf } from '../../../src/boat/joinery/plywood-bends';
import {
  type Grain,
  leastBendRadius,
  type LeastRadius,
  pickedBendRadius,
  type Wetness,
} from '../../../src/trade/plywood-bend';
import '../../kernel/near';

const INCH = 0.0254;
const FOOT = 0.3048;
const sheet = (
  inches: number,
  { wetness = 'dry', ...more }: Partial<PlyLayer> & { readonly wetness?: Wetness } = {},
): PlyLayer => {
  const thickness = inches * INCH;
  const both = (radius: (grain: Grain) => LeastRadius) => ({
    along: radius('along').radius,
    across: radius('across').radius,
  });
  return {
    thickness,
    grain: 'along',
    common: both((grain) => leastBendRadius(thickness, grain)),
    picked: both((grain) => pickedBendRadius(thickness, grain, wetness)),
    allowed: 1,
    ...more,
  };
};
/** Bent to a radius straight across the panel, without twist. */
const to = (radius: number, twist = 0) => ({ bend: 1 / radius, axis: Math.PI / 2, twist });

describe('bend', () => {
  test('takes all that a common panel allows at the printed radius, each way of the grain', () => {
    expect(judge(to(8 * FOOT), sheet(3 / 8)).common.both).toBeNear(1, 1e-12);
    expect(judge(to(3 * FOOT), sheet(3 / 8, { grain: 'across' })).common.both).toBeNear(1, 1e-12);
    expect(judge(to(16 * FOOT), sheet(3 / 8)).common.bend).toBeNear(0.5, 1e-12);
    expect(judge(to(31 * INCH), sheet(1 / 4)).picked.both).toBeNear(1, 1e-12);
    expect(judge(to(12 * INCH), sheet(1 / 4, { wetness: 'soaked' })).picked.both).toBeNear(1, 1e-12);
  });

  test.each([
    ['a common panel takes it', 5.1 * FOOT, sheet(1 / 4), 'bends'],
    ['a picked one takes it', 4.9 * FOOT, sheet(1 / 4), 'marginal'],
    ['none takes it', 30 * INCH, sheet(1 / 4), 'refuses'],
    ['a soaked one does', 30 * INCH, sheet(1 / 4, { wetness: 'soaked' }), 'marginal'],
    [
      'the common table lets it, the other does not',
      26 * INCH,
      sheet(5 / 16, { grain: 'across' }),
      'marginal',
    ],
    ['thinner than the common table, within its first row', 5.1 * FOOT, sheet(1 / 8), 'bends'],
    ['thinner than it, within the other table', 13 * INCH, sheet(1 / 8), 'marginal'],
    ['thinner than it, beyond the other', 11 * INCH, sheet(1 / 8), 'refuses'],
    ['thicker than the picked table, within the common one', 13 * FOOT, sheet(1 / 2), 'bends'],
    ['thicker than the picked table, beyond the common one', 11 * FOOT, sheet(1 / 2), 'refuses'],
    ['thicker than both, flatter than their last rows', 40 * FOOT, sheet(1), 'untabled'],
    ['thicker than both, tighter than their last rows', 3 * FOOT, sheet(1), 'refuses'],
    ['half of the table is used', 5.3 * FOOT, sheet(1 / 4, { allowed: 0.5 }), 'marginal'],
  ] as const)('%s', (_, radius, of, verdict) => {
    expect(judge(to(radius), of).verdict).toBe(verdict);
  });
});

describe('twist', () => {
  // Strain of the edges psi²/12; along the grain a 1/4 in panel takes t/(2R) = 0.125 / 60.
  const takes = 0.125 / 60;

  test('takes its strain of what the bend along the grain allows, and adds to the bend', () => {
    const psi = Math.sqrt(12 * takes);
    expect((psi * 180) / Math.PI).toBeNear(9.06, 1e-3);
    expect(judge({ bend: 0, axis: 1, twist: psi }, sheet(1 / 4)).common.both).toBeNear(1, 1e-12);
    const both = judge(to(10 * FOOT, psi / 2), sheet(1 / 4)).common;
    expect(both.bend).toBeNear(0.5, 1e-12);
    expect(both.twist).toBeNear(0.25, 1e-12);
    expect(both.both).toBeNear(0.75, 1e-12);
  });
});

test('the worst of several is said of all; what no table knows is worse than what one of two lets', () => {
  const said = (...verdicts: Parameters<typeof worstOf>[0][number]['verdict'][]) =>
    worstOf(verdicts.map((verdict) => ({ verdict })));
  expect(said('bends', 'bends')).toBe('bends');
  expect(said('bends', 'marginal', 'bends')).toBe('marginal');
  expect(said('untabled', 'marginal')).toBe('untabled');
  expect(said('refuses', 'untabled')).toBe('refuses');
});
