import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { balance, rightingCurve } from '../../../src/kernel';
import '../near';
import { boxMesh } from '../shapes';

describe('righting curve', () => {
  const box = boxMesh([-3, -1, 0], [3, 1, 1]);
  test('ends where she stands on end', () => {
    expect(rightingCurve(box, { volume: 13, centre: [0, 0, 0] }, [0, 0.1])).toHaveLength(0);
  });
  // Turned right over, a box with its weight in the middle of its height lies as it did.
  test('of a box weighed in its middle turns over to the same', () => {
    const heels = [0.1, 0.4, Math.PI - 0.4, Math.PI - 0.1];
    const levers = rightingCurve(box, { volume: 6, centre: [0, 0, 0.5] }, heels).map(({ lever }) => lever);
    expect(levers).toHaveLength(4);
    expect(levers[3]).toBeNear(-levers[0]!, 1e-7);
    expect(levers[2]).toBeNear(-levers[1]!, 1e-7);
  });
});

test('each lever of a curve is the one found from upright, with no neighbour to begin by', () => {
  const { body } = buildHull(offsetsOf(starters[0]!.table));
  const burden = { volume: 0.3, centre: [1.8, 0, 0.35] } as const;
  const heels = [0, 0.2, 0.5, 0.9, 1.3];
  rightingCurve(body, burden, heels).forEach((at, i) => {
    const alone = balance(body, burden, { heel: heels[i]! })!;
    expect(at.lever).toBeNear(alone.lever, 0, 1e-9);
    expect(at.trim).toBeNear(alone.trim, 0, 1e-8);
  });
});
