import { describe, expect, test } from 'vitest';
import { isUnread, lists, readTable, starters, type Table } from '../../../../src/boat';
import { fasten } from '../../../../src/cells/timber/fastening/fasten';
import { screwCount } from '../../../../src/cells/timber/fastening/screw-count';
import { withoutChines, withTwoChines } from '../../odd-boats';
import { tryCell } from '../../try-cell';

const boats: readonly (readonly [string, Table])[] = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['two chines', withTwoChines],
  ['no chine', withoutChines],
];

/** A scow 3 m long, 1 m wide, 400 mm deep, square at both ends, three frames between them. */
const scow = (): Table => {
  const made = readTable({
    name: 'scow',
    unit: 'mm',
    offsetsTo: 'outside of skin',
    edges: ['keel', 'chine', 'sheer'],
    stations: ['transom', 'frame 1', 'frame 2', 'frame 3', 'bow transom'].map((name, i) => ({
      name,
      keel: { x: 750 * i, y: 0, z: 0 },
      chine: { x: 750 * i, y: 500, z: 0 },
      sheer: { x: 750 * i, y: 500, z: 400 },
    })),
  });
  if (isUnread(made)) throw new Error(made.faults.join('; '));
  return made;
};

describe('screwCount', () => {
  test('counts a scow as one would by hand', () => {
    const tried = tryCell(screwCount, { pitch: '100 mm', end: '50 mm', framePitch: '100 mm' }, scow());
    // 2.9 m in spaces of 100 are 30 screws a line; keel 2 lines, chine 4, sheer 2.
    expect(['keel', 'chine', 'sheer'].map((edge) => tried.all[`${edge}.onEdge`])).toStrictEqual([
      60, 120, 60,
    ]);
    expect(tried.number('onEdges')).toBe(240);
    // Across a frame 400 mm in spaces of 100 on the bottom, 300 mm on the side: 5 and 4 a side of three frames.
    expect(tried.number('onFrames')).toBe(3 * 2 * (5 + 4));
    expect(tried.number('total')).toBe(294);
    // 294 and a tenth.
    expect(tried.number('toBuy')).toBe(324);
    expect(tried.number('boxes')).toBe(4);
  });

  test('one panel takes its own two edges, and the panels add up to all', () => {
    const one = (skin: string) => tryCell(screwCount, { skin, pitch: '100 mm', end: '50 mm' }, scow());
    expect(['keel', 'chine', 'sheer'].map((edge) => one('side').all[`${edge}.onEdge`])).toStrictEqual([
      0, 60, 60,
    ]);
    expect(one('side').number('total') + one('bottom').number('total')).toBe(one('none').number('total'));
  });

  test.each(boats)('along each edge of %s a panel takes what the cell of one edge counts', (_, table) => {
    const { edges, panels } = lists(table);
    for (const [at, { id: skin }] of panels.entries()) {
      const counted = tryCell(screwCount, { skin, end: '50 mm' }, table);
      for (const { id: along } of edges.slice(at, at + 2)) {
        const one = tryCell(fasten, { along, skin, endDistance: '50 mm' }, table);
        expect([along, counted.all[`${along}.onEdge`]]).toStrictEqual([along, one.number('total')]);
      }
    }
  });

  test('frames glued alone take none', () => {
    const tried = tryCell(screwCount, { frames: 'glued' });
    expect(tried.number('total')).toBe(tried.number('onEdges'));
    expect(tried.words).toContain('glued alone');
  });

  test.each(boats)('the rows of the table add up to all edges on %s', (_, table) => {
    const tried = tryCell(screwCount, {}, table);
    expect(tried.issues).toStrictEqual({});
    const rows = lists(table).edges.map(({ id }) => Number(tried.all[`${id}.onEdge`]));
    expect(rows.reduce((sum, one) => sum + one, 0)).toBe(tried.number('onEdges'));
    expect(tried.chart!.points![0]!.y).toBe(tried.number('total'));
  });

  test('warns of wide spaces', () => {
    const says = (entries: Readonly<Record<string, string>>) =>
      tryCell(screwCount, entries).warnings.map((warning) => warning.says);
    expect(says({})).toStrictEqual([]);
    expect(says({ pitch: '200 mm' })[0]).toContain('Wider than usual');
  });
});
