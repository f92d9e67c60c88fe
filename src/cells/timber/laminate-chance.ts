/** How often a layer breaks as it is bent, for boards of one wood are not alike. */
import { chanceOfBreaking } from '../../kernel/chance';
import { allHappen, anyHappens } from '../../kernel/layers';
import { citation } from '../../trade/table';
import { timberSpread } from '../../trade/timber';
import { type CellFunction, input, step } from '../define';

const LOGNORMAL =
  'strength and stiffness lognormal over the boards of a wood; spreads from memory: Wood Handbook, Table 5-6';
const SPREADS = 'ruptureSpread, modulusSpread, together';

const spread = (label: string, { value, ...how }: (typeof timberSpread)['rupture']) =>
  input('share', label, {
    seldom: true,
    preset: `${value * 100} %`,
    min: '1 %',
    max: '60 %',
    step: '1 %',
    note: `standard deviation over mean; ${citation(how)}`,
  });

export const chanceInputs = {
  ruptureSpread: spread('Strength varies by', timberSpread.rupture),
  modulusSpread: spread('Stiffness varies by', timberSpread.modulus),
  together: input('ratio', 'Strength goes with stiffness', {
    seldom: true,
    preset: '0.7',
    min: '0',
    max: '0.95',
    step: '0.05',
    note: 'correlation of their logarithms; common practice, no source: 0.6 to 0.8 in clear wood; 0 for none, which breaks more',
  }),
};

const four = ['share', 'share', 'share', 'share'] as const;

export const chanceFunctions: Readonly<Record<string, CellFunction>> = {
  breaking: {
    takes: ['share', 'share', 'share', 'ratio'],
    gives: 'share',
    says: 'share of boards whose stress at this curve outruns their strength, both lognormal',
    run: (share = 0, strength = 0, stiffness = 0, correlation = 0) =>
      chanceOfBreaking(share, { strength, stiffness, correlation }),
  },
  oneOfAlike: {
    takes: ['share', 'count'],
    gives: 'share',
    says: '1 − (1 − chance)ⁿ',
    run: (chance = 0, layers = 0) => anyHappens(Array.from({ length: layers }, () => chance)),
  },
  oneOfListed: {
    takes: four,
    gives: 'share',
    says: '1 less the product of all chances to hold',
    run: (...chances) => anyHappens(chances),
  },
  allOfListed: {
    takes: four,
    gives: 'share',
    says: 'product of the chances of those layers that there are',
    run: (...chances) => allHappen(chances.filter((chance) => chance > 0)),
  },
};

const breakingAt = (share: string) => `breaking(${share}, ${SPREADS})`;
const listed = [1, 2, 3, 4].map((i) => breakingAt(`modulus * layer${i} / (2 * radius) / rupture`)).join(', ');

export const chanceSteps = {
  chance: step('share', breakingAt('share'), 'chance that such a layer breaks as it is bent', LOGNORMAL),
  solidChance: step('share', breakingAt('solidShare'), 'chance that one solid board breaks', LOGNORMAL),
  chanceAny: step(
    'share',
    `layup == "alike" ? oneOfAlike(chance, layers) : oneOfListed(${listed})`,
    'chance that the weakest of the layers breaks, each from another board; from one board, that of a single layer',
    'chance: boards that know nothing of each other',
  ),
  chanceAll: step(
    'share',
    `layup == "alike" ? chance^layers : allOfListed(${listed})`,
    'chance that the strongest breaks too, and so all of them',
    'chance: boards that know nothing of each other',
  ),
};

/** Of so many layers alike at this share, as a formula. */
export const chanceBeside = (share: string, layers: string): string =>
  `oneOfAlike(${breakingAt(share)}, ${layers})`;
