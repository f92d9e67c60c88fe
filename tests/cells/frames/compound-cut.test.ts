import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { compoundCut } from '../../../src/cells/frames/compound-cut';
import { cross, dihedral, dot, unit, type Vec3 } from '../../../src/kernel';
import { withoutChines, withTwoChines } from '../odd-boats';
import { measured, provesItsDrawing, testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

const DEGREE = Math.PI / 180;
const typed = {
  lean: '20 deg',
  rake: '13 deg',
  turn: '-10 deg',
  thickness: '18 mm',
  sideThickness: '6 mm',
  ends: '1',
};
const cut = (entries: Record<string, string>) => tryCell(compoundCut, { ...typed, ...entries });
const boats = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['two chines', withTwoChines] as const,
  ['no chine', withoutChines] as const,
];

describe('compoundCut', () => {
  test('plumb and square everything is square, and a mitre is 45°', () => {
    const square = { lean: '0 deg', rake: '0 deg', turn: '0 deg' };
    const tried = cut(square);
    for (const key of ['edgeBevel', 'sawTilt', 'endCut', 'onTransom', 'transomOff'])
      expect(tried.number(key)).toBeCloseTo(0, 12);
    expect(cut({ ...square, joint: 'mitre' }).number('sawTilt') / DEGREE).toBeCloseTo(45, 12);
  });

  test('without lean the side’s end is mitred by the rake alone; without rake the transom slants by the lean', () => {
    expect(cut({ lean: '0 deg', turn: '0 deg' }).number('endCut') / DEGREE).toBeCloseTo(13, 9);
    const upright = cut({ rake: '0 deg', turn: '0 deg' });
    expect(upright.number('onTransom') / DEGREE).toBeCloseTo(20, 9);
    expect(upright.number('endCut')).toBeCloseTo(0, 9);
    expect(upright.number('sawTilt')).toBeCloseTo(0, 9);
  });

  test('goes the way of the normals: every corner is that of the two planes', () => {
    const angle = fc.integer({ min: -50, max: 50 });
    fc.assert(
      fc.property(angle, angle, angle, (lean, rake, turn) => {
        const tried = cut({ lean: `${lean} deg`, rake: `${rake} deg`, turn: `${turn} deg` });
        const [f, r, p] = [lean * DEGREE, rake * DEGREE, turn * DEGREE];
        const { sin, cos } = Math;
        const side: Vec3 = [sin(p) * cos(f), cos(p) * cos(f), -sin(f)];
        const transom: Vec3 = [-cos(r), 0, -sin(r)];
        const inside = dihedral(side, transom);
        expect(tried.number('angle')).toBeCloseTo(inside, 9);
        expect(tried.number('edgeBevel')).toBeCloseTo(inside - Math.PI / 2, 9);
        expect(tried.number('sawTilt')).toBeCloseTo(Math.abs(inside - Math.PI / 2), 9);
        // The line where the planes meet: up the face of the transom, and forward on the level along the side.
        const line = unit(cross(side, transom));
        const [x, y, z] = line[2] < 0 ? ([-line[0], -line[1], -line[2]] as const) : line;
        const up = Math.atan2(y, dot([x, y, z], [-sin(r), 0, cos(r)]));
        expect(tried.number('onTransom')).toBeCloseTo(up, 9);
        const along = Math.acos(dot([x, y, z], [cos(p), -sin(p), 0]));
        expect(tried.number('endCut')).toBeCloseTo(along - Math.PI / 2, 7);
      }),
      { seed: 41, numRuns: 40 },
    );
  });

  test.each([3, 4, 5, 6, 8, 12])('is the box of %i equal sides where both lean alike', (sides) => {
    for (const pitch of [20, 45, 70]) {
      const tried = cut({
        joint: 'mitre',
        lean: `${90 - pitch} deg`,
        rake: `${90 - pitch} deg`,
        turn: `${360 / sides - 90} deg`,
      });
      // The formulas behind the chart printed in manuals of bench saws.
      const half = Math.PI / sides;
      expect(tried.number('endCut')).toBeCloseTo(Math.atan(Math.cos(pitch * DEGREE) * Math.tan(half)), 9);
      expect(tried.number('sawTilt')).toBeCloseTo(Math.asin(Math.sin(pitch * DEGREE) * Math.sin(half)), 9);
    }
  });

  test('a four-sided box butted has the tilt of its cosine squared', () => {
    const tried = cut({ lean: '15 deg', rake: '15 deg', turn: '0 deg' });
    expect(tried.number('sawTilt')).toBeCloseTo(Math.asin(Math.cos(75 * DEGREE) ** 2), 12);
  });

  // The second road: the bevel of the transom's edge that the hull takes from its skin.
  test.each(boats)('on the %s the edge of the transom has the bevel of the skin', (_id, table) => {
    const hull = buildHull(offsetsOf(table));
    const { inner, outer } = hull.panels.at(-1)!;
    for (const end of [hull.aft, hull.fore]) {
      if (end.role !== 'transom' && end.role !== 'bow transom') continue;
      const of = { end: end.role === 'transom' ? 'transom' : 'bowTransom' };
      for (const [at, edge] of [['foot', inner] as const, ['head', outer] as const]) {
        const tried = tryCell(compoundCut, { ...of, at }, table);
        // Opening forward is opening away from a transom at the stern, and toward one at the bow.
        const bevel = end.bevel(edge.name, 'side') * (end.role === 'transom' ? 1 : -1);
        expect(Math.abs(tried.number('edgeBevel') - bevel)).toBeLessThan(1e-9);
      }
    }
  });

  test('the slant on the transom is that of its true shape', () => {
    const hull = buildHull(offsetsOf(starters[2]!.table));
    const [, chine, sheer] = hull.aft.outline;
    const slant = Math.atan2(sheer![0] - chine![0], sheer![1] - chine![1]);
    const tried = tryCell(compoundCut, {}, starters[2]!.table);
    // The side is a little crowned, the outline straight.
    expect(Math.abs(tried.number('onTransom') - slant)).toBeLessThan(0.5 * DEGREE);
  });

  test('a member that rises along the side is cut so much less off square', () => {
    const tried = cut({ memberRise: '5 deg' });
    expect(tried.number('endCut') - tried.number('memberCut')).toBeCloseTo(5 * DEGREE, 12);
  });

  test('words name the larger face, the corner that goes and the tilt', () => {
    expect(cut({}).words).toMatch(
      /^Mark the transom’s inner face, the larger one,.*plane the outer corner off it/,
    );
    expect(cut({ turn: '20 deg' }).words).toMatch(
      /^Mark the transom’s outer face.*plane the inner corner off it/,
    );
    expect(cut({ joint: 'mitre' }).words).toContain('leave the outer face of both pieces the longer');
  });

  describe('warnings', () => {
    const says = (entries: Record<string, string>) => cut(entries).warnings.map((one) => one.says);
    test('none for a usual stern', () => expect(says({})).toEqual([]));
    test('no bow transom on the dory', () =>
      expect(tryCell(compoundCut, { end: 'bowTransom' }).warnings[0]?.says).toContain(
        'This boat has no transom at the bow',
      ));
    test.each([
      ['past a saw', { lean: '55 deg', rake: '65 deg' }, 'past what a saw gives'],
      ['loses more than it has', { lean: '55 deg', rake: '65 deg' }, 'more than its thickness'],
      ['measured on the other piece', { turn: '60 deg' }, 'nearer to the transom'],
    ])('%s', (_what, entries, wanted) => expect(says(entries).join(' ')).toContain(wanted));
  });

  describe('drawing', () => {
    testDrawings(compoundCut, {
      'as the boat stands': {},
      typed,
      mitre: { ...typed, joint: 'mitre' },
      square: { ...typed, lean: '0 deg', rake: '0 deg', turn: '0 deg' },
      steep: { ...typed, lean: '60 deg', rake: '60 deg' },
      'leaning in': { ...typed, lean: '-20 deg', turn: '30 deg' },
    });
    test('its dimension reads as the figure and spans it', () => {
      const tried = cut({ turn: '20 deg' });
      const off = tried.number('transomOff') * 1000;
      expect(measured(provesItsDrawing(tried.drawing), `${off.toFixed(1)} mm`)).toBeCloseTo(off, 9);
    });
  });
});
