/** The eight ways to lie, against each other, and no-fit polygons that are got by turning one. */
import { describe, expect, test } from 'vitest';
import { type Quarter, turnedOutline } from '../../../src/kernel/nest';
import type { Vec2 } from '../../../src/kernel/vec';
import { forbids, makeNoFits } from '../../../src/search/nest/no-fit';
import { makeShapes } from '../../../src/search/nest/shapes';
import { inTurn, type Turn, turnedAbout, turns, undone } from '../../../src/search/nest/turn';

describe('turns', () => {
  test.each(turns)('%s undone is as it was, and one after another is one', (turn) => {
    const at = turnedAbout(turn, 3, 5);
    const back = turnedAbout(undone(turn), ...at);
    expect(back.map((one) => one + 0)).toStrictEqual([3, 5]);
    for (const next of turns)
      expect(turnedAbout(inTurn(turn, next), 3, 5).map((one) => one + 0)).toStrictEqual(
        turnedAbout(next, ...at).map((one) => one + 0),
      );
  });
});

test('a shape keeps off another where it would if both were drawn as they lie', () => {
  const hook: readonly Vec2[] = [
    [0, 0],
    [0.5, 0.05],
    [0.52, 0.2],
    [0.2, 0.16],
    [0.1, 0.4],
    [0, 0.38],
  ];
  const wedge: readonly Vec2[] = [
    [0, 0],
    [0.3, 0.02],
    [0.28, 0.21],
  ];
  const gap = 0.004;
  const lying = (outline: readonly Vec2[], some: readonly Turn[]) =>
    some.map((turn) => ({
      outline,
      turn,
      lies: turnedOutline(outline, (turn % 4) as Quarter, turn >= 4),
    }));
  const shapes = makeShapes();
  const noFit = makeNoFits();
  const places = Array.from({ length: 12 }, (_, i) => (i - 6) * 9173);
  for (const one of lying(hook, [0, 3, 5]))
    for (const other of [...lying(hook, [2, 5]), ...lying(wedge, [1, 6])]) {
      const got = noFit(shapes.ways(one.outline, gap)(one.turn), shapes.ways(other.outline, gap)(other.turn));
      // Of patterns met for the first time, so that nothing is turned.
      const fresh = makeShapes();
      const wanted = makeNoFits()(fresh.ways(one.lies, gap)(0), fresh.ways(other.lies, gap)(0));
      const said = ({ rings, ...box }: typeof got) =>
        places.flatMap((x) => places.map((y) => forbids({ rings, ...box }, x, y)));
      const differing = said(got).filter((is, i) => is !== said(wanted)[i]);
      expect(differing).toStrictEqual([]);
      expect(Math.abs(got.left - wanted.left)).toBeLessThanOrEqual(4);
      expect(Math.abs(got.high - wanted.high)).toBeLessThanOrEqual(4);
    }
});
