/** What all cells on bending hold to, and how much boards differ. */
import { bendShareTexts, easyBend } from '../../trade/bend-grades';
import { timberSpread } from '../../trade/timber';
import type { Declared } from './quantity';
import { shop } from './shop-entry';

const VARIES = 'from memory: Wood Handbook, Table 5-6, clear wood of one species';

export const shopBends: readonly Declared[] = [
  shop('breakingShare', 'share', {
    label: 'Share of rupture allowed',
    meaning: 'share of rupture that a bend may take',
    source: bendShareTexts.source,
    preset: bendShareTexts.clear,
    min: '10 %',
    max: bendShareTexts.picked,
    step: '1 %',
  }),
  shop('easyFrom', 'number', {
    label: 'Easy bend from, in thicknesses',
    meaning: 'thicknesses of radius from which a bend is easy, and below which it is tight',
    source: easyBend.source,
    preset: String(easyBend.value),
    min: '10',
    max: '2000',
    step: '10',
  }),
  shop('onePerson', 'force', {
    label: 'What one person holds',
    meaning: 'pull that one person holds',
    source: 'common practice: 200 to 300 N (45 to 65 lbf) at arm’s reach',
    preset: '250 N',
    min: '10 N',
    max: '2 kN',
    step: '10 N',
  }),
  shop('ruptureSpread', 'share', {
    label: 'Strength varies by',
    meaning: 'spread of the strength of boards',
    source: `standard deviation over mean; ${VARIES}. Knotty boards vary more`,
    preset: `${timberSpread.rupture.value * 100} %`,
    min: '1 %',
    max: '60 %',
    step: '1 %',
  }),
  shop('modulusSpread', 'share', {
    label: 'Stiffness varies by',
    meaning: 'spread of the stiffness of boards',
    source: `standard deviation over mean; ${VARIES}`,
    preset: `${timberSpread.modulus.value * 100} %`,
    min: '1 %',
    max: '60 %',
    step: '1 %',
  }),
  shop('strongAreStiff', 'ratio', {
    label: 'Correlation with stiffness',
    source:
      '447 small clear pieces of southern pine, Wood and Fiber Science (2018); 0 if you trust no such tie, which makes breaking likelier',
    preset: '0.77',
    min: '0',
    max: '1',
    step: '0.05',
  }),
];
