/**
 * Cutting with scarfs, as a choice of chains. Lay some boards end to end and some parts end to end along
 * them: where a board ends inside a part there is a scarf, where a part ends inside a board a saw cut. A
 * chain of n boards and m parts makes n - 1 scarfs, and takes the parts' lengths, n - 1 tapers and m - 1
 * kerfs. No plan does with less, for in any plan the boards and parts that hang together are joined by at
 * least n + m - 1 pieces. So the cheapest plan is the cheapest set of chains that holds every part once: an
 * integer programme with a column a chain.
 *
 * What a chain may fail at are pieces too short to join; then dearer boards, or another order, are tried.
 */
import { type Board, CLOSE, type CuttingPlan, type CuttingProblem } from './cutting';
import type { Column, CuttingModel, Row } from './cutting-model';

type Scarf = NonNullable<CuttingProblem['scarf']>;

/** More chains than these are not written out, nor chains of more boards. */
const MOST_CHAINS = 6000;
const MOST_BOARDS = 10;
/** Orders of one chain that are tried. */
const MOST_ORDERS = 240;
/** Sets of boards that are tried for one chain before it is given up. */
const MOST_SETS = 40;

export interface ChainModel extends CuttingModel {
  /** The same choice as if no piece were too short: no plan costs less than its least. */
  readonly relaxed: Pick<CuttingModel, 'columns' | 'rows'>;
}

interface BoardSet {
  /** Which stocks, from the longest to the shortest. */
  readonly stocks: readonly number[];
  readonly length: number;
  readonly cost: number;
}

interface Chain {
  /** How many parts of each length. */
  readonly counts: readonly number[];
  /** Null where every way tried leaves a piece too short. */
  readonly laid: Laid | null;
  readonly cost: number;
  readonly leastCost: number;
}

/** Boards with their pieces, `part` being the place in this order of lengths. */
interface Laid {
  readonly order: readonly number[];
  readonly boards: readonly Board[];
}

/** Null where there are too many chains to write out, or where no part may be joined. */
export function chainModel(problem: CuttingProblem): ChainModel | null {
  const { parts, scarf } = problem;
  if (!scarf) return null;
  const lengths = [...new Set(parts.map(({ length }) => length))].toSorted((a, b) => b - a);
  const wanted = lengths.map((length) => parts.filter((part) => part.length === length).length);
  if (wanted.reduce((product, count) => product * (count + 1), 1) > MOST_CHAINS) return null;

  const sets = boardSets(problem, scarf);
  const chains = tuples(wanted).flatMap((counts) => chainOf(counts, lengths, sets, problem, scarf) ?? []);
  const rows = lengths.map((_, i): Row => ({
    least: wanted[i]!,
    most: wanted[i]!,
    terms: chains.flatMap(({ counts }, at) => (counts[i]! > 0 ? [[at, counts[i]!] as const] : [])),
  }));
  const columns = (costOf: (chain: Chain) => number, usable: (chain: Chain) => boolean) =>
    chains.map((chain): Column => ({
      cost: usable(chain) ? costOf(chain) : 0,
      least: 0,
      most: usable(chain) ? parts.length : 0,
      whole: true,
    }));
  return {
    columns: columns(
      ({ cost }) => cost,
      ({ laid }) => laid !== null,
    ),
    rows,
    complete: chains.every(({ cost, leastCost, laid }) => laid !== null && cost <= leastCost + 1e-9),
    relaxed: {
      columns: columns(
        ({ leastCost }) => leastCost,
        () => true,
      ),
      rows,
    },
    read: (solution) => planOf(chains, solution, lengths, problem),
  };
}

/** Every way to take from counts, but for taking nothing. */
function tuples(wanted: readonly number[]): number[][] {
  let all: number[][] = [[]];
  for (const most of wanted)
    all = all.flatMap((head) => Array.from({ length: most + 1 }, (_, count) => [...head, count]));
  return all.filter((counts) => counts.some((count) => count > 0));
}

/** Sets of boards, the cheapest first, joints counted in. */
function boardSets({ stocks }: CuttingProblem, scarf: Scarf): BoardSet[] {
  const order = [...stocks.keys()].toSorted((a, b) => stocks[b]!.length - stocks[a]!.length);
  const sets: BoardSet[] = [];
  const grow = (from: number, held: readonly number[], length: number, cost: number): void => {
    if (held.length > 0) sets.push({ stocks: held, length, cost: cost + (held.length - 1) * scarf.price });
    if (held.length === MOST_BOARDS) return;
    for (let i = from; i < order.length; i += 1) {
      const stock = stocks[order[i]!]!;
      grow(i, [...held, order[i]!], length + stock.length, cost + stock.price);
    }
  };
  grow(0, [], 0, 0);
  return sets.toSorted((a, b) => a.cost - b.cost);
}

function chainOf(
  counts: readonly number[],
  lengths: readonly number[],
  sets: readonly BoardSet[],
  problem: CuttingProblem,
  scarf: Scarf,
): Chain | null {
  const held = counts.flatMap((count, i) => Array.from({ length: count }, () => lengths[i]!));
  const wood = held.reduce((sum, length) => sum + length, 0) + (held.length - 1) * problem.kerf;
  let leastCost: number | null = null;
  let tried = 0;
  for (const set of sets) {
    if (set.length + CLOSE < wood + (set.stocks.length - 1) * scarf.taper) continue;
    leastCost ??= set.cost;
    const laid = layChain(held, set, problem, scarf);
    if (laid) return { counts, laid, cost: set.cost, leastCost };
    tried += 1;
    if (tried === MOST_SETS) break;
  }
  return leastCost === null ? null : { counts, laid: null, cost: leastCost, leastCost };
}

/** The pieces on each board, in the first order of boards and parts that leaves none too short; else null. */
function layChain(
  parts: readonly number[],
  { stocks }: BoardSet,
  problem: CuttingProblem,
  scarf: Scarf,
): Laid | null {
  let tried = 0;
  for (const boards of orders(stocks)) {
    for (const order of orders(parts)) {
      const laid = lay(order, boards, problem, scarf);
      if (laid) return { order, boards: laid };
      tried += 1;
      if (tried === MOST_ORDERS) return null;
    }
  }
  return null;
}

function lay(
  order: readonly number[],
  stocks: readonly number[],
  problem: CuttingProblem,
  { taper, least, most }: Scarf,
): Board[] | null {
  const boards = stocks.map((stock) => ({ stock, pieces: [] as { part: number; length: number }[] }));
  let at = 0;
  let room = problem.stocks[stocks[0]!]!.length;
  const next = (): boolean => {
    // A board with nothing on it would have been bought for nothing.
    if (boards[at]!.pieces.length === 0) return false;
    at += 1;
    if (at === boards.length) return false;
    room = problem.stocks[stocks[at]!]!.length;
    return true;
  };
  for (const [part, length] of order.entries()) {
    let need = length;
    for (let pieces = 1; need > room + CLOSE;) {
      // So much that the rest is still worth joining.
      const piece = Math.min(room, need + taper - least);
      if (piece >= least) {
        boards[at]!.pieces.push({ part, length: piece });
        need += taper - piece;
        pieces += 1;
        if (pieces > most) return null;
      }
      if (!next()) return null;
    }
    boards[at]!.pieces.push({ part, length: need });
    room -= need + problem.kerf;
  }
  return at === boards.length - 1 ? boards : null;
}

/** Every distinct order of a list, the given one first. */
function* orders(list: readonly number[]): Generator<readonly number[]> {
  if (list.length <= 1) {
    yield list;
    return;
  }
  const tried = new Set<number>();
  for (const [at, first] of list.entries()) {
    if (tried.has(first)) continue;
    tried.add(first);
    for (const rest of orders([...list.slice(0, at), ...list.slice(at + 1)])) yield [first, ...rest];
  }
}

/** The chains that a solution picks, with the real parts put in for their lengths. */
function planOf(
  chains: readonly Chain[],
  solution: ArrayLike<number>,
  lengths: readonly number[],
  { parts }: CuttingProblem,
): CuttingPlan {
  const left = new Map(
    lengths.map((length) => [length, [...parts.keys()].filter((part) => parts[part]!.length === length)]),
  );
  const boards: Board[] = [];
  for (const [column, { laid }] of chains.entries()) {
    const times = laid ? Math.round(solution[column]!) : 0;
    for (let n = 0; n < times; n += 1) {
      const real = laid!.order.map((length) => left.get(length)!.shift()!);
      for (const { stock, pieces } of laid!.boards)
        boards.push({ stock, pieces: pieces.map(({ part, length }) => ({ part: real[part]!, length })) });
    }
  }
  return { boards };
}
