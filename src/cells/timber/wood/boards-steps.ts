/** The working of the cell `boards`. */
import { costAtLeast, costOf } from '../../../kernel/cutting';
import { step, type ValuesOf } from '../../form/define';
import { fact, tell } from '../../form/fact';
import {
  best,
  type BoardsAsked,
  type BoughtSection,
  type CutHere,
  cutList,
  PLAN,
  sections,
  type BoardSection,
  shop,
} from './boards-facts';
import { type boardsInputs, priceSteps } from './boards-inputs';
import { GEOMETRY } from '../../../trade/sources';

const sum = <T>(of: readonly T[], size: (one: T) => number): number =>
  of.reduce((total, one) => total + size(one), 0);
const jointsIn = (of: readonly BoardSection[]) =>
  sum(of, ({ cuts }) => cuts.filter(({ scarfed }) => scarfed.aft).length);
const money = (of: readonly BoughtSection[], { jointPrice }: BoardsAsked) =>
  sum(of, ({ plan, problem }) => costOf(plan, problem)) + jointsIn(of) * jointPrice;

/** The piece of the cut list that is looked at; undefined where the list is shorter. */
const cut = fact('of the cut list', PLAN, ({ piece }: BoardsAsked, { ask }) => ask(cutList)[piece - 1]);

const ends = ({ scarfed: { aft, fore } }: CutHere) =>
  aft && fore ? 'both ends' : aft ? 'its after end' : fore ? 'its fore end' : 'neither end';

export const boardsSteps = {
  ...priceSteps,
  boards: tell(best, 'count', 'boards to buy', (all) => sum(all, ({ plan }) => plan.boards.length)),
  cost: tell(best, 'money', 'cost of boards and joints', money, {
    how: 'their prices, and what each joint is worth',
    source: GEOMETRY,
  }),
  shopCost: tell(shop, 'money', 'cost by the rule of the shop', money),
  leastCost: tell(
    sections,
    'money',
    'no plan can cost less',
    (all, { jointPrice }) => sum(all, ({ problem }) => costAtLeast(problem)) + jointsIn(all) * jointPrice,
    { how: 'all the length wanted, at the lowest price and without waste, and the joints', source: GEOMETRY },
  ),
  proved: tell(
    best,
    'choice',
    'whether it is proved that no plan costs less',
    (all) => (all.every(({ proved }) => proved) ? 'yes' : 'not yet'),
    {
      how: 'the search has tried or ruled out every other plan, or the cost has come down to the least there can be',
      source: GEOMETRY,
    },
  ),
  joints: tell(sections, 'count', 'scarfs to make', jointsIn, { how: 'pieces less timbers' }),
  pieces: tell(sections, 'count', 'pieces to cut', (all) => sum(all, ({ cuts }) => cuts.length), {
    how: 'counted',
  }),
  bought: tell(
    best,
    'lumber',
    'wood bought',
    (all) =>
      sum(
        all,
        ({ thickness, width, plan, problem }) =>
          thickness * width * sum(plan.boards, ({ stock }) => problem.stocks[stock]!.length),
      ),
    { how: 'sections times lengths of the boards', source: GEOMETRY },
  ),
  longest: tell(
    best,
    'length',
    'the longest board to buy',
    (all) =>
      Math.max(
        0,
        ...all.flatMap(({ plan, problem }) => plan.boards.map(({ stock }) => problem.stocks[stock]!.length)),
      ),
    { how: 'of all the boards of the plan', source: GEOMETRY },
  ),
  needed: tell(
    sections,
    'lumber',
    'wood in the pieces',
    (all) => sum(all, ({ thickness, width, cuts }) => thickness * width * sum(cuts, ({ length }) => length)),
    { how: 'sections times lengths of the pieces, tapers and trimming included', source: GEOMETRY },
  ),
  wasted: step(
    'share',
    '1 - needed / bought',
    'part of the wood that is left over, kerfs included',
    GEOMETRY,
  ),
  board: tell(cut, 'count', 'board it is cut from', (found) => found?.board ?? 0, {
    how: 'boards counted through all sections',
  }),
  name: tell(cut, 'choice', 'what the piece is', (found) => found?.name ?? 'none', {
    how: 'part, side, and place from aft',
  }),
  length: tell(cut, 'length', 'length to cut', (found) => found?.length ?? 0, {
    how: 'as laid: tapers, and what is left for trimming, included',
  }),
  scarfed: tell(cut, 'choice', 'ends to be tapered', (found) => (found ? ends(found) : 'neither end'), {
    how: 'where the next piece of its timber laps it',
  }),
  sectionThickness: tell(cut, 'length', 'thickness of its board', (found) => found?.section.thickness ?? 0, {
    how: 'of the section bought for its part',
  }),
  sectionWidth: tell(cut, 'length', 'width of its board', (found) => found?.section.width ?? 0, {
    how: 'of the section bought for its part',
  }),
} as const;

/** All that the drawing and the search of the cell go by. */
export type BoardsValues = ValuesOf<typeof boardsInputs, typeof boardsSteps>;
