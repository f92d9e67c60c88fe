/** Packs pieces on sheets: one order of the pieces and where they are pulled to makes one plan. */
import type { LaidSheet, NestPlan, NestProblem } from '../../kernel/nest';
import { nestCostAtLeast } from '../../kernel/nest-bound';
import { type PieceKind, kindsOf, TICKS } from './shapes';
import { makeSheetStates, type Pull, pulls, roomOf, type SheetState, type SheetStates } from './sheet-states';
import { makeTemplates, type Templates } from './templates';

/** A way to pack: pieces in an order, by kind, and the stock that a new sheet is of. */
export interface Recipe {
  readonly order: readonly number[];
  readonly pull: Pull;
  readonly stock: number;
}

export interface Packed {
  readonly recipe: Recipe;
  readonly sheets: readonly SheetState[];
  readonly cost: number;
  /** The best that is left in one: the largest rectangle at the end or along the edge of a sheet, m2. */
  readonly offcut: number;
  /** The fuller the full sheets, the nearer is one to being emptied, m4. */
  readonly uneven: number;
}

export interface Packer {
  readonly problem: NestProblem;
  readonly kinds: readonly PieceKind[];
  readonly states: SheetStates;
  readonly templates: Templates;
  readonly leastCost: number;
  readonly pack: (recipe: Recipe) => Packed | null;
  readonly recipes: () => readonly Recipe[];
  readonly plan: (packed: Packed) => NestPlan;
}

/** @param templates those of the other packings of the same search */
export function makePacker(problem: NestProblem, templates = makeTemplates()): Packer {
  const kinds = kindsOf(problem, templates.shapes);
  const rooms = problem.stocks.map((stock) => roomOf(stock, problem.edge));
  const states = makeSheetStates(rooms, templates.noFit);
  const whole = kinds.flatMap(({ id, pieces }) => pieces.map(() => id));
  const priceOf = ({ stock }: SheetState) => problem.stocks[stock]!.price;

  const pack = (recipe: Recipe): Packed | null => {
    const sheets: SheetState[] = [];
    for (const id of recipe.order) {
      const kind = kinds[id]!; // an order is of kinds
      if (layOnOne(sheets, kind, recipe.pull)) continue;
      const fresh = [recipe.stock, ...rooms.keys()]
        .map((stock) => states.add(states.empty(stock), kind, recipe.pull))
        .find((state) => state !== null);
      if (!fresh) return null;
      sheets.push(fresh);
    }
    return packed(recipe, sheets.map(cheaper));
  };

  const layOnOne = (sheets: SheetState[], kind: PieceKind, pull: Pull): boolean => {
    for (const [at, sheet] of sheets.entries()) {
      const next = states.add(sheet, kind, pull);
      if (!next) continue;
      sheets[at] = next;
      return true;
    }
    return false;
  };

  /** The same pieces on the cheapest sheet that takes them as they came, or where they lie. */
  const cheaper = (sheet: SheetState): SheetState => {
    const others = [...rooms.keys()]
      .filter((stock) => problem.stocks[stock]!.price < priceOf(sheet))
      .toSorted((a, b) => problem.stocks[a]!.price - problem.stocks[b]!.price);
    for (const stock of others) {
      const room = rooms[stock]!;
      if (sheet.along <= room.length && sheet.across <= room.width)
        return { ...sheet, stock, next: new Map() };
      for (const pull of pulls) {
        let state: SheetState | null = states.empty(stock);
        for (const { kind } of sheet.laid) state = state && states.add(state, kind, pull);
        if (state) return state;
      }
    }
    return sheet;
  };

  const packed = (recipe: Recipe, sheets: readonly SheetState[]): Packed => ({
    recipe,
    sheets,
    cost: sheets.reduce((sum, sheet) => sum + priceOf(sheet), 0),
    offcut: Math.max(0, ...sheets.map((sheet) => offcutOf(sheet, states))),
    uneven: sheets.reduce((sum, { area }) => sum + area * area, 0),
  });

  /** The longest, the largest and the widest first, pulled each way, in each stock: what a shop would try. */
  const recipes = (): readonly Recipe[] => {
    const sides = (id: number) => {
      const { width, height } = kinds[id]!.lyings[0]!.shape; // a piece may lie some way
      return [Math.max(width, height), Math.min(width, height)] as const;
    };
    const by: readonly ((id: number) => number)[] = [
      (id) => sides(id)[0],
      (id) => kinds[id]!.area,
      (id) => sides(id)[1],
    ];
    return problem.stocks.flatMap((_, stock) =>
      by.flatMap((size) =>
        pulls.map((pull) => ({ order: whole.toSorted((a, b) => size(b) - size(a) || a - b), pull, stock })),
      ),
    );
  };

  const plan = ({ sheets }: Packed): NestPlan => {
    const used = kinds.map(() => 0);
    return {
      sheets: sheets.map(({ stock, laid }): LaidSheet => ({
        stock,
        laid: laid.map(({ kind, lying, x, y }) => ({
          piece: kind.pieces[used[kind.id]!++]!, // as many as there are of its kind
          mirrored: lying.mirrored,
          quarter: lying.quarter,
          at: [problem.edge + x / TICKS, problem.edge + y / TICKS],
        })),
      })),
    };
  };

  return { problem, kinds, states, templates, leastCost: nestCostAtLeast(problem), pack, recipes, plan };
}

/** What is left across the whole sheet at its end, or along all of it at its edge, whichever is more, m2. */
function offcutOf({ stock, along, across }: SheetState, { rooms }: SheetStates): number {
  const { length, width } = rooms[stock]!;
  return Math.max((length - along) * width, (width - across) * length) / (TICKS * TICKS);
}
