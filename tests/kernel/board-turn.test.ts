import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../src/kernel';
import { turnBetween } from '../../src/kernel/board-turn';
import { orderOf } from './near';

/** The twist of a strip along a line from 0 to `end`, added up over so many pieces. */
function twistOf(lie: (t: number) => { along: Vec3; face: Vec3 }, end: number, pieces: number): number {
  let turn = 0;
  for (let i = 0; i < pieces; i++) {
    const [one, two] = [lie((end * i) / pieces), lie((end * (i + 1)) / pieces)];
    turn += turnBetween([one.along, two.along], [one.face, two.face]);
  }
  return turn;
}

describe('the turn of a board about its length', () => {
  test('straight and wound like a propeller is its winding, + as a right-hand screw', () => {
    const lie = (t: number) => ({ along: [1, 0, 0] as const, face: [0, Math.cos(t), Math.sin(t)] as const });
    expect(twistOf(lie, 2, 7)).toBeNear(2, 1e-14);
    expect(twistOf(lie, -2, 7)).toBeNear(-2, 1e-14);
  });

  test('bent round a drum without rise is none', () => {
    const lie = (t: number) => ({
      along: [-Math.sin(t), Math.cos(t), 0] as const,
      face: [Math.cos(t), Math.sin(t), 0] as const,
    });
    expect(twistOf(lie, 3, 5)).toBeNear(0, 0, 1e-14);
  });

  test.each([0.2, 0.7, 1.3])(
    'laid on a cylinder as a helix of %d rad is sin x cos over the radius',
    (rise) => {
      // do Carmo, section 3-2: the geodesic torsion of a line at this angle to a principal direction is
      // (k2 - k1) sin cos, here with curvatures 1/radius round and 0 along.
      const radius = 0.8;
      const lie = (s: number) => {
        const a = (s * Math.cos(rise)) / radius;
        return {
          along: [-Math.sin(a) * Math.cos(rise), Math.cos(a) * Math.cos(rise), Math.sin(rise)] as const,
          face: [Math.cos(a), Math.sin(a), 0] as const,
        };
      };
      const wanted = (Math.sin(rise) * Math.cos(rise)) / radius;
      const missed = (pieces: number) => Math.abs(twistOf(lie, 1, pieces)) - wanted;
      expect(missed(64)).toBeNear(0, 0, 1e-4);
      expect(orderOf(missed(16), missed(32))).toBeNear(2, 0.05);
    },
  );

  test.each([0, 0.4, 1.2])('bent far at once, its face at %d rad to the bend, is none', (slant) => {
    const [c, s] = [Math.cos(1), Math.sin(1)];
    const face = (turned: boolean): Vec3 => {
      const [y, z] = [Math.cos(slant), Math.sin(slant)];
      return turned ? [-s * y, c * y, z] : [0, y, z];
    };
    const turn = turnBetween(
      [
        [1, 0, 0],
        [c, s, 0],
      ],
      [face(false), face(true)],
    );
    expect(turn).toBeNear(0, 0, 1e-14);
  });

  test('running back on itself is refused', () => {
    const back = () =>
      turnBetween(
        [
          [1, 0, 0],
          [-1, 0, 0],
        ],
        [
          [0, 1, 0],
          [0, 1, 0],
        ],
      );
    expect(back).toThrow('back on itself');
  });
});
