/** Lists in one array: each is what a list of its own would be, whatever becomes of the others. */
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { IdLists } from '../../../src/notebook/graph/id-lists';

const deed = fc.record({
  list: fc.nat(9),
  does: fc.oneof(
    fc.record({ push: fc.nat(5) }),
    fc.record({ drop: fc.nat(5) }),
    fc.record({ cut: fc.nat(20) }),
  ),
});

test('hold what was put into them, however they grow and move', () => {
  fc.assert(
    fc.property(fc.array(deed, { maxLength: 300 }), (deeds) => {
      const lists = new IdLists();
      lists.reach(9);
      const plain = Array.from({ length: 10 }, (): number[] => []);
      for (const { list, does } of deeds) {
        const own = plain[list]!;
        if ('push' in does) {
          lists.push(list, does.push);
          own.push(does.push);
        } else if ('drop' in does) {
          const at = own.lastIndexOf(does.drop);
          if (at < 0) continue;
          lists.drop(list, does.drop);
          own[at] = own.at(-1)!; // it has one
          own.pop();
        } else if (does.cut <= own.length) {
          lists.cut(list, does.cut);
          own.length = does.cut;
        }
      }
      for (const [at, own] of plain.entries()) expect([...lists.of(at)]).toStrictEqual(own);
    }),
    { numRuns: 300, seed: 7 },
  );
});

test('leave behind no more room than they have', () => {
  const lists = new IdLists();
  lists.reach(999);
  for (let size = 0; size < 40; size += 1) for (let list = 0; list < 1000; list += 1) lists.push(list, size);
  expect([...lists.of(999)]).toStrictEqual(Array.from({ length: 40 }, (_, at) => at));
  // Rooms of 2, 4, 8, 16 and 32 left behind for one of 64, two places more for each of the six, and the array at the
  // most twice as long.
  expect(lists.pool.length).toBeLessThanOrEqual(2 * 138_000 + 256);
});

test('have none for what was never reached', () => {
  expect([...new IdLists().of(5000)]).toStrictEqual([]);
});
