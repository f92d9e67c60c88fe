/** How many boards of a wood break in a bend: strength and stiffness vary from board to board. */
import { chanceOfBreaking } from '../../../kernel';
import { type CellFunction, type Source, step } from '../../form/define';
import { fromShop } from '../../form/from-shop';

const LOGNORMAL =
  'lognormal strength and stiffness about the means, as in J. R. Benjamin and C. A. Cornell, Probability, Statistics, and Decision for Civil Engineers (1970); from memory';
export const chanceInputs = {
  ruptureSpread: fromShop('ruptureSpread'),
  modulusSpread: fromShop('modulusSpread'),
  together: fromShop('strongAreStiff'),
};

export const chanceSteps = {
  chance: step(
    'share',
    'chanceOfBreaking(share, ruptureSpread, modulusSpread, together)',
    'chance that a clear, straight-grained board of this wood breaks in this bend',
    LOGNORMAL,
  ),
  chanceApart: step(
    'share',
    'chanceOfBreaking(share, ruptureSpread, modulusSpread, 0)',
    'the same if stiff boards were no stronger than others',
    LOGNORMAL,
  ),
  chanceAllowed: step(
    'share',
    'chanceOfBreaking(allowed, ruptureSpread, modulusSpread, together)',
    'the same at the share of breaking that is allowed',
    LOGNORMAL,
  ),
  oneIn: step(
    'count',
    'boardsForOne(chance)',
    'boards of which one breaks, in round numbers',
    'one over the chance',
  ),
};

/** More boards than that nobody counts. */
const MOST = 100_000;

export const chanceFunctions: Readonly<Record<'chanceOfBreaking' | 'boardsForOne', CellFunction>> = {
  chanceOfBreaking: {
    takes: ['share', 'share', 'share', 'ratio'],
    gives: 'share',
    how: 'area under the normal curve up to the difference of the logarithms of stress and strength over its standard deviation; the medians lie below the means by √(1 + spread²)',
    run: (share, strength, stiffness, correlation) =>
      chanceOfBreaking(share, { strength, stiffness, correlation }),
  },
  boardsForOne: {
    takes: ['share'],
    gives: 'count',
    how: `one over the chance, to one figure or two, at most ${MOST}`,
    run: boardsForOne,
  },
};

/** 1 in 28 is told as 28, 1 in 283 as 280. */
export function boardsForOne(chance: number): number {
  if (!(chance > 1 / MOST)) return MOST;
  const boards = 1 / chance;
  const step = 10 ** Math.max(0, Math.floor(Math.log10(boards)) - 1);
  return Math.round(boards / step) * step;
}

export const chanceSources: readonly Source[] = [
  {
    text: 'Wood Handbook, Table 5-6: strength in bending varies by 16 %, stiffness by 22 % of the mean',
    known: 'from memory',
  },
  {
    text: 'Wood and Fiber Science (2018): strength and stiffness of small clear specimens taken from No. 2 2×8 and 2×10 southern pine, abstract; correlation 0.77',
    known: 'published',
  },
];

export const chanceCaution =
  'The chance is that of a clear, straight-grained board taken from the pile unseen, at the tightest place alone. Knots, checks and grain that runs out make it greater, and so does length: look at the board in hand.';
