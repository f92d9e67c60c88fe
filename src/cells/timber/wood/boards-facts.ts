/** The pieces of the boat's long parts as a cutting problem, and the best plan known for it. */
import type { Hull } from '../../../boat';
import { longParts } from '../../../boat/joinery/long-parts';
import { type TimberPiece, timberPieces } from '../../../boat/joinery/piece-plan';
import { soldKeys } from '../../../boat/quantities/shop-lumber';
import {
  costAtLeast,
  costOf,
  type CuttingAnswer,
  type CuttingPlan,
  type CuttingProblem,
  faultsOfPlan,
  shopPlan,
} from '../../../kernel/cutting';
import type { ListRow, ValuesOf } from '../../form/define';
import { fact } from '../../form/fact';
import { type boardsInputs, otherKeys, partKeys, type priceSteps } from './boards-inputs';

/** A piece to cut: its name, and which ends are scarfed. */
export type PieceToCut = Pick<TimberPiece, 'name' | 'length' | 'scarfed'>;

/** Pieces of one section, cut from boards of that section. */
export interface BoardSection {
  readonly thickness: number;
  readonly width: number;
  readonly cuts: readonly PieceToCut[];
  readonly problem: CuttingProblem;
}

export interface BoughtSection extends BoardSection {
  readonly plan: CuttingPlan;
  readonly proved: boolean;
}

/** A piece in the order of the cuts: board by board, from the end of each. */
export interface CutHere extends PieceToCut {
  /** The board, 1 first, through all sections. */
  readonly board: number;
  readonly section: BoughtSection;
}

/** The inputs and the prices by volume, as facts read them. */
export type BoardsAsked = ValuesOf<typeof boardsInputs, typeof priceSteps>;

export const PLAN = 'the plan of pieces, as the cell on the joints shows it';

/** No saw cuts closer: lengths that differ by less are one, m. */
const MICRON = 1e-6;

/** The sections in order of the parts; those alike within a tenth of a millimetre are one. */
export const sections = fact(
  'the pieces as laid, by the section bought for them',
  PLAN,
  (v: BoardsAsked, at) => {
    const stocks = soldKeys
      .map((key) => ({ length: v[`stock${key}`], price: v[`paid${key}`] }))
      .filter(({ length }) => length > 0);
    if (stocks.length === 0) throw new Error('give the length of at least one board that is sold');
    const bySection = new Map<string, { thickness: number; width: number; cuts: PieceToCut[] }>();
    const add = (key: (typeof partKeys)[keyof typeof partKeys] | 'other', cuts: readonly PieceToCut[]) => {
      if (cuts.length === 0) return;
      const [thickness, width] = [v[`${key}Thickness`], v[`${key}Width`]];
      const id = `${Math.round(thickness * 1e4)} ${Math.round(width * 1e4)}`;
      const section = bySection.get(id) ?? { thickness, width, cuts: [] };
      bySection.set(id, section);
      section.cuts.push(...cuts);
    };
    for (const { id } of longParts)
      if (v[`${partKeys[id]}Pieces`] > 0) add(partKeys[id], longCuts(at.hull, v, id));
    add('other', otherCuts(v));
    if (bySection.size === 0) throw new Error('no part is to be cut: give a number of pieces');
    return [...bySection.values()].map(({ thickness, width, cuts }): BoardSection => ({
      thickness,
      width,
      cuts,
      problem: {
        parts: cuts.map(({ name, length }) => ({ name, length: Math.round(length / MICRON) * MICRON })),
        stocks: stocks.map(({ length, price }) => ({ length, price: price * thickness * width * length })),
        kerf: v.kerf,
      },
    }));
  },
);

/** As the plan of pieces lays them, of so many timbers as are asked for; the first come first. */
function longCuts(hull: Hull, v: BoardsAsked, part: keyof typeof partKeys): readonly PieceToCut[] {
  const key = partKeys[part];
  const wanted = v[`${key}Pieces`];
  const timbers = timberPieces(hull, part, {
    board: v[`${key}Board`],
    taper: v.slope * v[`${key}Thickness`],
    trim: v.trim,
    first: {
      port: v[`${key}Port`],
      starboard: key === 'keelson' ? v.keelsonPort : v[`${key}Starboard`],
    },
  });
  return timbers.slice(0, wanted).flat();
}

/** Whether a part of the boat is among what is cut: her hull says how long it is. */
export const asksHull = (
  v: Pick<BoardsAsked, `${(typeof partKeys)[keyof typeof partKeys]}Pieces`>,
): boolean => Object.values(partKeys).some((key) => v[`${key}Pieces`] > 0);

/** Parts of the builder's own list, each in one piece. */
function otherCuts(v: BoardsAsked): readonly PieceToCut[] {
  // A line counts when those above it do.
  const end = otherKeys.findIndex((key) => v[`${key}Pieces`] === 0);
  const lengths = otherKeys
    .slice(0, end < 0 ? undefined : end)
    .flatMap((key) => Array.from({ length: v[`${key}Pieces`] }, () => v[`${key}Length`]));
  return lengths.map((length, i) => ({
    name: lengths.length === 1 ? 'other part' : `other part ${i + 1}`,
    length: length + v.trim,
    scarfed: { aft: false, fore: false },
  }));
}

/** The problem as the searcher takes it. */
export const problem = fact('the pieces, the boards sold and the kerf', PLAN, (_: BoardsAsked, { ask }) =>
  JSON.stringify(ask(sections).map(({ problem: of }) => of)),
);

const SAME = 1e-6;

const cutBy = (section: BoardSection, plan: CuttingPlan): BoughtSection => ({
  ...section,
  plan,
  proved: costOf(plan, section.problem) <= costAtLeast(section.problem) * (1 + SAME),
});

export const shop = fact(
  'long pieces first, each on the first board with room',
  'common practice, no source',
  (_: BoardsAsked, { ask }) => ask(sections).map((section) => cutBy(section, shopPlan(section.problem))),
);

export const best = fact(
  'the cheaper of two plans: the one by the rule of the shop, and the best that the search has found',
  'P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock problem, 1961',
  (_: BoardsAsked, { ask, found }) => {
    const answer = found(ask(problem)) as CuttingAnswer | null; // as its searcher gives it
    return ask(shop).map((byRule, at) => {
      const searched = answer?.plans[at];
      if (!searched || faultsOfPlan(searched, byRule.problem).length > 0) return byRule;
      const cut = cutBy(byRule, searched);
      return { ...cut, proved: cut.proved || answer?.proved[at] === true };
    });
  },
);

/** The cut list: the pieces in the order of the cuts. */
export const cutList = fact(
  'board by board, from the end of each',
  PLAN,
  (_: BoardsAsked, { ask }): readonly CutHere[] => {
    let board = 0;
    return ask(best).flatMap((section) =>
      section.plan.boards.flatMap(({ parts }) => {
        board += 1;
        return parts.map((part) => ({ ...section.cuts[part]!, board, section })); // a part a cut
      }),
    );
  },
);

export const cutRows = fact(cutList.how, PLAN, (_: BoardsAsked, { ask }) =>
  ask(cutList).map((_cut, i): ListRow => ({ id: `cut${i + 1}`, label: `${i + 1}`, value: i + 1 })),
);
