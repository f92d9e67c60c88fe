/**
 * The search for the cheapest cutting plan as a mixed-integer programme, for a solver to take: a packing by patterns.
 * Every way to fill a board is a column, and columns are bought until every length is covered (P. C. Gilmore and R. E.
 * Gomory, A linear programming approach to the cutting-stock problem, Operations Research 9, 1961). Where there are too
 * many ways to write out, each board has columns of its own: which pieces lie on it.
 */
import type { Board, CuttingPlan, CuttingProblem } from './cutting';

export interface CuttingModel {
  readonly columns: readonly ModelColumn[];
  readonly rows: readonly ModelRow[];
  /** Whether its least is the least of all: false where the model was cut short. */
  readonly complete: boolean;
  /** The plan that a solution stands for. */
  readonly read: (solution: ArrayLike<number>) => CuttingPlan;
}

export interface ModelColumn {
  readonly cost: number;
  readonly least: number;
  readonly most: number;
  readonly whole: boolean;
}

/** least <= sum of terms <= most. */
export interface ModelRow {
  readonly least: number;
  readonly most: number;
  readonly terms: readonly (readonly [column: number, factor: number])[];
}

/** Boards that a model by boards is written out for, at the most. */
const MOST_BOARDS = 24;

/** More ways to fill a board than this are not written out. */
const MOST_PATTERNS = 60_000;

/** @param within a plan that is known: no search needs more money than it costs */
export function cuttingModel(problem: CuttingProblem, within: CuttingPlan): CuttingModel {
  return patternModel(problem) ?? boardModel(problem, within);
}

/** By patterns; null where there are too many. */
function patternModel(problem: CuttingProblem): CuttingModel | null {
  const { parts, stocks, kerf } = problem;
  const lengths = [...new Set(parts.map(({ length }) => length))].toSorted((a, b) => b - a);
  const wanted = lengths.map((length) => parts.filter((part) => part.length === length).length);
  const patterns: { readonly stock: number; readonly counts: readonly number[] }[] = [];

  const fill = (stock: number, at: number, room: number, counts: number[]): boolean => {
    const length = lengths[at];
    if (length === undefined) {
      // A board that would take one piece more is covered by the pattern that has it.
      const spare = lengths.findIndex((short, i) => counts[i]! < wanted[i]! && short <= room);
      if (spare < 0 && counts.some((count) => count > 0)) patterns.push({ stock, counts: [...counts] });
      return patterns.length <= MOST_PATTERNS;
    }
    const most = Math.min(wanted[at]!, Math.floor((room + 1e-9) / (length + kerf)));
    for (let count = most; count >= 0; count -= 1) {
      counts[at] = count;
      if (!fill(stock, at + 1, room - count * (length + kerf), counts)) return false;
    }
    counts[at] = 0;
    return true;
  };
  for (const [stock, { length }] of stocks.entries()) {
    // The last piece needs no kerf after it.
    if (
      !fill(
        stock,
        0,
        length + kerf,
        lengths.map(() => 0),
      )
    )
      return null;
  }

  const columns = patterns.map(({ stock }): ModelColumn => ({
    cost: stocks[stock]!.price,
    least: 0,
    most: parts.length,
    whole: true,
  }));
  // At least: a piece too many is left on the board.
  const rows = lengths.map((_, i): ModelRow => ({
    least: wanted[i]!,
    most: Infinity,
    terms: patterns.flatMap(({ counts }, column) => (counts[i]! > 0 ? [[column, counts[i]!] as const] : [])),
  }));

  const read = (solution: ArrayLike<number>): CuttingPlan => {
    const left = lengths.map((length) => parts.flatMap((part, at) => (part.length === length ? [at] : [])));
    const boards: Board[] = [];
    for (const [column, { stock, counts }] of patterns.entries()) {
      for (let n = Math.round(solution[column]!); n > 0; n -= 1) {
        const held = counts.flatMap((count, i) => left[i]!.splice(0, count));
        if (held.length > 0) boards.push({ stock, parts: held });
      }
    }
    return { boards };
  };
  return { columns, rows, complete: true, read };
}

/**
 * By boards. For each board: which stock it is, and which pieces lie on it. Boards are told apart only by their
 * places, so they stand in order of price.
 */
function boardModel({ parts, stocks, kerf }: CuttingProblem, within: CuttingPlan): CuttingModel {
  const cheapest = Math.min(...stocks.map(({ price }) => price));
  const known = within.boards.reduce((sum, { stock }) => sum + stocks[stock]!.price, 0);
  const byPrice = cheapest > 0 ? Math.floor(known / cheapest + 1e-9) : parts.length;
  const boards = Math.max(within.boards.length, Math.min(byPrice, 2 * within.boards.length, MOST_BOARDS));
  const columns: ModelColumn[] = [];
  const rows: ModelRow[] = [];
  const binary = (cost: number) => columns.push({ cost, least: 0, most: 1, whole: true }) - 1;
  const isStock = Array.from({ length: boards }, () => stocks.map(({ price }) => binary(price)));
  const has = Array.from({ length: boards }, () => parts.map(() => binary(0)));

  for (let board = 0; board < boards; board += 1) {
    rows.push({ least: 0, most: 1, terms: isStock[board]!.map((column) => [column, 1] as const) });
    rows.push({
      least: -Infinity,
      most: 0,
      terms: [
        ...has[board]!.map((column, part) => [column, parts[part]!.length + kerf] as const),
        ...stocks.map(({ length }, stock) => [isStock[board]![stock]!, -(length + kerf)] as const),
      ],
    });
    if (board > 0)
      rows.push({
        least: 0,
        most: Infinity,
        terms: stocks.flatMap(({ price }, stock) => [
          [isStock[board - 1]![stock]!, price] as const,
          [isStock[board]![stock]!, -price] as const,
        ]),
      });
  }
  for (const part of parts.keys())
    rows.push({ least: 1, most: 1, terms: has.map((of) => [of[part]!, 1] as const) });

  const read = (solution: ArrayLike<number>): CuttingPlan => ({
    boards: has.flatMap((of, board): Board[] => {
      const stock = isStock[board]!.findIndex((column) => solution[column]! > 0.5);
      const held = of.flatMap((column, part) => (solution[column]! > 0.5 ? [part] : []));
      return stock >= 0 && held.length > 0 ? [{ stock, parts: held }] : [];
    }),
  });
  return { columns, rows, complete: boards >= byPrice, read };
}
