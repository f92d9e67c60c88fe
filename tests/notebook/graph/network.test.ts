/** The network under the graph: what is worked out, how often, and that one laid over another says what one made afresh would say. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createNetwork, type Id, type Network } from '../../../src/notebook/graph/network';

const noCircle = (way: readonly Id[]): never => {
  throw new TypeError(`round in a circle: ${way.join(' ')}`);
};

/** Nodes that each add their own number to those they read; the first `inputs` of them read none. */
interface Sums {
  readonly numbers: number[];
  readonly reads: readonly (readonly Id[])[];
}

function networkOf({ numbers, reads }: Sums, over?: Network<number>, own?: ReadonlyMap<Id, number>) {
  let worked: Id[] = [];
  const network: Network<number> = createNetwork<number>({
    work: (id) => {
      worked.push(id);
      return reads[id]!.reduce((sum, other) => sum + network.ask(other), own?.get(id) ?? numbers[id]!);
    },
    same: (a, b) => a === b,
    circle: noCircle,
    ...(over && { over, isOwn: (id) => own?.has(id) ?? false }),
  });
  const since = () => {
    const ids = worked;
    worked = [];
    return ids;
  };
  return { network, since };
}

describe('a chain with a branch', () => {
  // 2 = 0 + 1, 3 = 2, 4 = 1
  const chain = (): Sums => ({ numbers: [10, 20, 0, 0, 0], reads: [[], [], [0, 1], [2], [1]] });

  test('is worked out when looked at, once, and again only below what moved', () => {
    const sums = chain();
    const { network, since } = networkOf(sums);
    expect(network.value(3)).toBe(30);
    expect(since()).toStrictEqual([3, 2, 0, 1]);
    expect([network.value(3), network.value(4)]).toStrictEqual([30, 20]);
    expect(since()).toStrictEqual([4]);
    sums.numbers[0] = 11;
    network.mark(0);
    expect([network.value(4), network.value(3)]).toStrictEqual([20, 31]);
    expect(since()).toStrictEqual([0, 2, 3]);
  });

  test('stops where a value comes out as it was', () => {
    const sums = chain();
    const { network, since } = networkOf(sums);
    network.value(3);
    since();
    network.mark(0);
    expect(network.value(3)).toBe(30);
    expect(since()).toStrictEqual([0]);
    // Two moves that cancel out.
    sums.numbers[0] = 9;
    sums.numbers[1] = 21;
    network.mark(0);
    network.mark(1);
    expect(network.value(3)).toBe(30);
    expect(since()).toStrictEqual([0, 2, 1]);
  });

  test('tells what a node was worked out from, and the way to what is being worked out', () => {
    const ways: (readonly Id[] | null)[] = [];
    const network: Network<number> = createNetwork<number>({
      work: (id) => {
        ways.push(network.underway(0));
        return id < 2 ? network.ask(id + 1) : 1;
      },
      same: Object.is,
      circle: noCircle,
    });
    network.value(0);
    expect(ways).toStrictEqual([[0], [0, 1], [0, 1, 2]]);
    expect(network.underway(0)).toBeNull();
    expect([0, 2].map((id) => [...network.links.of(id)])).toStrictEqual([[1], []]);
  });

  test('asks by name without looking the name up, where it was asked for in the same place the last time', () => {
    const names = ['a', 'b', 'c', 'd'];
    let turned = false;
    let lookedUp: string[] = [];
    const network: Network<number> = createNetwork<number>({
      work: (id) => {
        if (id > 0) return id;
        const asked = turned ? ['b', 'd', 'c'] : ['b', 'c', 'd'];
        return asked.reduce((sum, name) => sum + network.askFor(name), 0);
      },
      same: () => false,
      circle: noCircle,
      names,
      idOf: (name) => {
        lookedUp.push(name);
        return names.indexOf(name);
      },
    });
    const again = (): string[] => {
      lookedUp = [];
      network.mark(1);
      expect(network.value(0)).toBe(6);
      return lookedUp;
    };
    expect(again()).toStrictEqual(['b', 'c', 'd']);
    expect(again()).toStrictEqual([]);
    turned = true;
    expect(again()).toStrictEqual(['d', 'c']);
    expect([...network.links.of(0)]).toStrictEqual([1, 3, 2]);
    expect(again()).toStrictEqual([]);
  });

  test('that fails in mid-work is worked out anew the next time', () => {
    let fails = true;
    const network: Network<number> = createNetwork<number>({
      work: (id) => {
        if (id === 0) return network.ask(1) + 1;
        if (fails) throw new TypeError('a slip');
        return 1;
      },
      same: Object.is,
      circle: noCircle,
    });
    expect(() => network.value(0)).toThrow('a slip');
    expect(network.underway(0)).toBeNull();
    fails = false;
    expect(network.value(0)).toBe(2);
  });

  test('that fails over a change is worked out anew though nothing has changed since', () => {
    let [given, fails] = [1, false];
    const network: Network<number> = createNetwork<number>({
      work: (id) => {
        if (id === 1) return given;
        const found = network.ask(1) + 1;
        if (fails) throw new TypeError('a slip');
        return found;
      },
      same: Object.is,
      circle: noCircle,
    });
    expect(network.value(0)).toBe(2);
    [given, fails] = [5, true];
    network.mark(1);
    expect(() => network.value(0)).toThrow('a slip');
    fails = false;
    expect(network.value(0)).toBe(6);
  });

  test('laid over another, works out only what comes to something else', () => {
    const sums = chain();
    const below = networkOf(sums);
    for (const id of [3, 4]) below.network.value(id);
    below.since();
    const { network, since } = networkOf(sums, below.network, new Map([[0, 12]]));
    expect([network.value(4), network.value(3)]).toStrictEqual([20, 32]);
    expect(since()).toStrictEqual([0, 2, 3]);
    expect(below.since()).toStrictEqual([]);
    sums.numbers[1] = 30;
    for (const one of [below.network, network]) one.mark(1);
    expect([network.value(4), network.value(3)]).toStrictEqual([30, 42]);
    expect(since()).toStrictEqual([2, 3]);
  });
});

/** Any nodes, each reading some before it, by what the first of them comes to: links that come and go. */
const networks = fc.integer({ min: 4, max: 14 }).chain((size) =>
  fc.record({
    numbers: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: size, maxLength: size }),
    reads: fc.tuple(
      ...Array.from({ length: size }, (_, id) =>
        id < 2 ? fc.constant<number[]>([]) : fc.array(fc.integer({ min: 0, max: id - 1 }), { maxLength: 4 }),
      ),
    ),
  }),
);
const deeds = fc.array(
  fc.record({
    write: fc.tuple(fc.nat(13), fc.integer({ min: 0, max: 3 })),
    layer: fc.option(fc.tuple(fc.nat(13), fc.option(fc.integer({ min: 0, max: 3 })))),
    look: fc.array(fc.nat(13), { maxLength: 6 }),
  }),
  { maxLength: 12 },
);

test('whatever is written, in it or in one laid over it, and looked at in any order: what one made afresh says', () => {
  fc.assert(
    fc.property(networks, deeds, ({ numbers, reads }, done) => {
      const size = numbers.length;
      const own = new Map<Id, number>();
      /** An odd value of its first link turns a node to its last link alone. */
      const workOf =
        (ask: (id: Id) => number, start: (id: Id) => number) =>
        (id: Id): number => {
          const [first, ...rest] = reads[id]!;
          if (first === undefined) return start(id);
          const at = ask(first);
          const asked = at % 2 === 1 ? rest.slice(-1) : rest;
          return (asked.reduce((sum, other) => sum + ask(other), start(id)) + at) % 7;
        };
      const below = (id: Id) => numbers[id]!;
      const above = (id: Id) => own.get(id) ?? numbers[id]!;
      const base: Network<number> = createNetwork<number>({
        work: (id) => workOf(base.ask, below)(id),
        same: Object.is,
        circle: noCircle,
      });
      const layer: Network<number> = createNetwork<number>({
        work: (id) => workOf(layer.ask, above)(id),
        same: Object.is,
        circle: noCircle,
        over: base,
        isOwn: (id) => own.has(id),
      });
      const afresh = (start: (id: Id) => number) => {
        const value = (id: Id): number => workOf(value, start)(id);
        return value;
      };
      for (const { write, layer: laid, look } of done) {
        const id = write[0] % size;
        numbers[id] = write[1];
        for (const one of [base, layer]) one.mark(id);
        if (laid) {
          const [at, to] = [laid[0] % size, laid[1]];
          if (to === null) own.delete(at);
          else own.set(at, to);
          layer.mark(at);
        }
        for (const at of look.map((one) => one % size)) {
          expect(layer.value(at)).toBe(afresh(above)(at));
          expect(base.value(at)).toBe(afresh(below)(at));
        }
      }
    }),
    { numRuns: 2000, seed: 4 },
  );
});
