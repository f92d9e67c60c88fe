/** How often a layer breaks as it is bent, for boards of one wood are not alike. */
import { allHappen, anyHappens } from '../../../kernel/layers';
import { type CellFunction, step } from '../../form/define';
import { chanceFunctions } from './bend-chance';

const LOGNORMAL = 'lognormal strength and stiffness, as in the cell on bending one board';
const ROUND = 'one over the chance';
const APART = 'chance: boards that know nothing of each other';

const four = ['share', 'share', 'share', 'share'] as const;

export const layerChanceFunctions: Readonly<Record<string, CellFunction>> = {
  ...chanceFunctions,
  oneOfAlike: {
    takes: ['share', 'count'],
    gives: 'share',
    how: '1 − (1 − chance)ⁿ',
    run: (chance = 0, layers = 0) => anyHappens(Array.from({ length: layers }, () => chance)),
  },
  oneOfListed: {
    takes: four,
    gives: 'share',
    how: '1 less the product of all chances to hold',
    run: (...chances) => anyHappens(chances),
  },
  allOfListed: {
    takes: four,
    gives: 'share',
    how: 'product of the chances of those layers that there are',
    run: (...chances) => allHappen(chances.filter((chance) => chance > 0)),
  },
};

const breakingAt = (share: string) => `chanceOfBreaking(${share}, ruptureSpread, modulusSpread, together)`;
const listed = [1, 2, 3, 4].map((i) => breakingAt(`modulus * layer${i} / (2 * radius) / rupture`)).join(', ');

export const layerChanceSteps = {
  chance: step('share', breakingAt('share'), 'chance that such a layer breaks as it is bent', LOGNORMAL),
  solidChance: step('share', breakingAt('solidShare'), 'chance that one solid board breaks', LOGNORMAL),
  chanceAny: step(
    'share',
    `layup == "alike" ? oneOfAlike(chance, layers) : oneOfListed(${listed})`,
    'chance that the weakest of the layers breaks, each from another board; from one board, that of a single layer',
    APART,
  ),
  chanceAll: step(
    'share',
    `layup == "alike" ? chance^layers : allOfListed(${listed})`,
    'chance that the strongest breaks too, and so all of them',
    APART,
  ),
  oneIn: step(
    'count',
    'boardsForOne(chanceAny)',
    'stacks of which one has a layer that breaks, in round numbers; 100 000 or more',
    ROUND,
  ),
  solidOneIn: step('count', 'boardsForOne(solidChance)', 'boards of which one breaks, counted so', ROUND),
};

/** Of so many layers alike at this share, as a formula. */
export const chanceBeside = (share: string, layers: string): string =>
  `oneOfAlike(${breakingAt(share)}, ${layers})`;
