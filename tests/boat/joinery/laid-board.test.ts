import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { laidBoard } from '../../../src/boat/joinery/laid-board';
import { curvatureAt } from '../../../src/kernel';
import '../../kernel/near';

const boards = starters.flatMap(({ id, table }) => {
  const hull = buildHull(offsetsOf(table));
  return hull.edges.map((edge) => [`${id}, ${edge.name}`, hull, edge] as const);
});

describe.each(boards)('a board laid along the %s', (_, hull, edge) => {
  const board = laidBoard(hull, edge.name);

  test('bends both ways together as the edge does in space', () => {
    board.stations.forEach(({ bend, along }, i) => {
      expect(along).toBeNear(edge.arcs[i]!, 1e-9, 1e-9);
      const whole = curvatureAt(edge.batten, edge.batten.knots[i]!).magnitude;
      expect(Math.hypot(bend.flat, bend.edgewise)).toBeNear(whole, 1e-9, 1e-12);
    });
  });

  test.each(['free', 'fast'] as const)('is held by as many pushes as there are stations, %s', (ends) => {
    expect(board.pushes(ends)).toHaveLength(edge.points.length);
  });

  test('keeps its length when it is laid out, and its ends on the chord', () => {
    for (const line of [board.seen.onEdge, board.seen.onFace]) {
      const length = line
        .slice(1)
        .reduce((sum, [x, y], i) => sum + Math.hypot(x - line[i]![0], y - line[i]![1]), 0);
      expect(length).toBeNear(edge.length, 1e-9);
      expect(line.at(-1)![1]).toBeNear(0, 0, 1e-12);
    }
  });
});

describe('a keelson', () => {
  test.each(starters.map(({ id, table }) => [id, table] as const))(
    'of the %s lies in one plane: no twist, nothing edgewise',
    (_, table) => {
      const board = laidBoard(buildHull(offsetsOf(table)), 'keel');
      for (const { bend, turn } of board.places) {
        expect(turn).toBeNear(0, 0, 1e-12);
        expect(bend.edgewise).toBeNear(0, 0, 1e-12);
      }
      expect(board.crook).toBeNear(0, 0, 1e-12);
    },
  );
});

describe('a chine log', () => {
  test.each(starters.map(({ id, table }) => [id, table] as const))(
    'on the %s is as hollow edgewise as the flat side’s edge',
    (_, table) => {
      const hull = buildHull(offsetsOf(table));
      const panel = hull.panels[1];
      if (!panel) return;
      const line = panel.flat.inner;
      const [a, b] = [line[0]!, line.at(-1)!];
      const chord = Math.hypot(b[0] - a[0], b[1] - a[1]);
      const off = line.map(
        ([x, y]) => Math.abs((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) / chord,
      );
      // Another road: the panel laid flat by its triangles; a side with twist left has no exact flat shape.
      expect(laidBoard(hull, panel.inner.name).crook).toBeNear(Math.max(...off), 0.02, 0.001);
    },
  );

  test.each(starters.map(({ id, table }) => [id, table] as const))(
    'on the %s turns with the flare of the side',
    (_, table) => {
      const hull = buildHull(offsetsOf(table));
      const panel = hull.panels[1];
      if (!panel) return;
      const board = laidBoard(hull, panel.inner.name);
      const [first, ...others] = hull.stations;
      const flare = (station: typeof hull.aft) => station.skinFlare(panel.inner.name, panel.name);
      for (const station of others) {
        const turned = board.stations[station.index]!.turn - board.stations[first!.index]!.turn;
        // More flare lays the port side out: against a right-hand screw. Flare is measured in a plane square to the
        // centreline and not to the log: a degree and a half where a punt sweeps up.
        expect(turned).toBeNear(flare(first!) - flare(station), 0.2, 0.03);
      }
    },
  );
});

describe('the pushes', () => {
  const { table } = starters[0]!;
  const hull = buildHull(offsetsOf(table));

  test('of frames on a keelson with free ends balance, but for what the ends take along it', () => {
    const board = laidBoard(hull, 'keel');
    const pushes = board.pushes('free').map(({ flat }) => flat);
    const sum = pushes.reduce((all, push) => all + push, 0);
    const sizes = pushes.reduce((all, push) => all + Math.abs(push), 0);
    // Each is square to the keelson where it stands, and that is not one direction: some degrees make some thousandths.
    expect(Math.abs(sum)).toBeLessThan(0.01 * sizes);
  });

  test('leave nothing next to an end held fast as the curve leads on', () => {
    const pushes = laidBoard(hull, 'chine').pushes('fast');
    for (const i of [1, pushes.length - 2]) expect(pushes[i]!.flat).toBeNear(0, 0, 1e-12);
  });
});
