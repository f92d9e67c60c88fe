/**
 * Pieces cut from boards of stock lengths: what a plan is, whether it holds, and a plan by the rule of
 * the shop. Lengths in m, prices in money; see cutting-model.ts for the search of the least.
 */

export interface CuttingProblem {
  /** Every piece wanted, one entry each. */
  readonly parts: readonly { readonly name: string; readonly length: number }[];
  readonly stocks: readonly { readonly length: number; readonly price: number }[];
  /** Lost between two pieces of a board. */
  readonly kerf: number;
}

export interface Board {
  /** Which stock, by its place in the problem. */
  readonly stock: number;
  /** Which parts are cut from it, by their places in the problem, in the order of the cuts. */
  readonly parts: readonly number[];
}

export interface CuttingPlan {
  readonly boards: readonly Board[];
}

/** What a search has found: a plan for each section asked, and whether it is proved to be the cheapest. */
export interface CuttingAnswer {
  readonly plans: readonly CuttingPlan[];
  readonly proved: readonly boolean[];
}

/** A tenth of a millimetre: no saw cuts closer. */
const CLOSE = 1e-4;

/** Length of board taken by pieces, with a kerf between each two. */
export function taken(lengths: readonly number[], kerf: number): number {
  return lengths.reduce((sum, length) => sum + length, 0) + Math.max(0, lengths.length - 1) * kerf;
}

export function costOf({ boards }: CuttingPlan, { stocks }: CuttingProblem): number {
  return boards.reduce((sum, { stock }) => sum + stocks[stock]!.price, 0);
}

/** Lengths of the pieces on a board. */
export const lengthsOn = (board: Board, { parts }: CuttingProblem): readonly number[] =>
  board.parts.map((part) => parts[part]!.length);

/**
 * What is wrong with a plan, as sentences; none when every piece is cut once and every board holds what is on it. A
 * plan from a solver is believed only after this.
 */
export function faultsOfPlan(plan: CuttingPlan, problem: CuttingProblem): string[] {
  const { parts, stocks, kerf } = problem;
  const faults: string[] = [];
  const cut = parts.map(() => 0);
  for (const [at, board] of plan.boards.entries()) {
    const stock = stocks[board.stock];
    if (!stock) {
      faults.push(`board ${at + 1} is of no stock length`);
      continue;
    }
    const known = board.parts.filter((part) => parts[part]);
    if (known.length < board.parts.length) faults.push(`board ${at + 1} holds a piece of no part`);
    for (const part of known) cut[part]! += 1;
    if (taken(lengthsOn({ ...board, parts: known }, problem), kerf) > stock.length + CLOSE)
      faults.push(`board ${at + 1} is too short for its pieces`);
  }
  for (const [at, { name }] of parts.entries()) {
    if (cut[at] === 0) faults.push(`${name} is not cut`);
    else if (cut[at]! > 1) faults.push(`${name} is cut more than once`);
  }
  return faults;
}

/** Why there is no plan at all, as a sentence; null where there is one. */
export function impossible({ parts, stocks }: CuttingProblem): string | null {
  const longest = Math.max(0, ...stocks.map(({ length }) => length));
  if (longest <= 0) return 'there is no board to cut from';
  const longPart = parts.find(({ length }) => length > longest + CLOSE);
  return longPart ? `${longPart.name} is longer than the longest board sold` : null;
}

/**
 * A plan by the rule of the shop: long pieces first, each on the first board that still has room. Tried with boards of
 * each length, and every board then exchanged for the cheapest that holds what is on it.
 *
 * Throws the sentence of `impossible` where there is none.
 */
export function shopPlan(problem: CuttingProblem): CuttingPlan {
  const none = impossible(problem);
  if (none !== null) throw new Error(none);
  const plans = problem.stocks.map((_, stock) => firstFit(problem, stock)).filter((plan) => plan !== null);
  return plans.toSorted((a, b) => costOf(a, problem) - costOf(b, problem))[0]!; // the longest stock holds each part
}

function firstFit(problem: CuttingProblem, stock: number): CuttingPlan | null {
  const { parts, stocks, kerf } = problem;
  const room = stocks[stock]!.length + CLOSE; // asked for each stock there is
  if (parts.some(({ length }) => length > room)) return null;
  const boards: number[][] = [];
  const takenBy = (held: readonly number[]) =>
    taken(
      held.map((part) => parts[part]!.length),
      kerf,
    );
  for (const part of [...parts.keys()].toSorted((a, b) => parts[b]!.length - parts[a]!.length || a - b)) {
    const board = boards.find((held) => takenBy([...held, part]) <= room);
    if (board) board.push(part);
    else boards.push([part]);
  }
  return { boards: boards.map((held) => ({ stock: cheapestFor(takenBy(held), problem), parts: held })) };
}

/** The cheapest stock that holds a length; there is one, for the pieces fitted a board. */
function cheapestFor(length: number, { stocks }: CuttingProblem): number {
  const fitting = [...stocks.keys()].filter((stock) => stocks[stock]!.length + CLOSE >= length);
  return fitting.toSorted((a, b) => stocks[a]!.price - stocks[b]!.price || a - b)[0]!;
}

/** No plan can cost less: the length wanted, bought at the lowest price per length and without waste. */
export function costAtLeast({ parts, stocks }: CuttingProblem): number {
  const wanted = parts.reduce((sum, { length }) => sum + length, 0);
  const perLength = Math.min(...stocks.map(({ length, price }) => price / length));
  return wanted * perLength;
}
