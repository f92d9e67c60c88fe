/** The yield model of a screw or nail pushed sideways: its modes as steps, each of its own formula. */
import { step } from '../../form/define';
import { firstOf } from '../../form/in-words';
import { NDS } from '../../../trade/sources';

export const YIELD = `${NDS}, Table 12.3.1A`;
const REMEMBERED = `${NDS}, Table 12.3.1A; the term 1 + 2 Re from memory`;

/**
 * Over what the cell calls `fastener`, `diameter`, `rootDiameter`, `mainLength`, `sideLength`, `mainGravity`,
 * `sideGravity`, `shear`, `reduction` and `yieldStress`.
 */
export const yieldSteps = {
  bearing: step(
    'caliper',
    'fastener == "screw" ? rootDiameter : diameter',
    'diameter that bears: of a screw its root',
    `${NDS}, 12.3.7: root diameter of threaded fastenings`,
  ),
  mainEmbed: step(
    'stress',
    '16600 psi * mainGravity^1.84',
    'pressure at which the main part gives under the screw',
    `${NDS}, Table 12.3.3: below 1/4 in (6.3 mm)`,
  ),
  sideEmbed: step(
    'stress',
    '16600 psi * sideGravity^1.84',
    'pressure at which the part screwed on gives',
    `${NDS}, Table 12.3.3: below 1/4 in (6.3 mm)`,
  ),
  embedRatio: step('ratio', 'mainEmbed / sideEmbed', 'Re: main part over part screwed on', YIELD),
  lengthRatio: step('ratio', 'mainLength / sideLength', 'Rt: depth in the main part over the other', YIELD),
  k1: step(
    'ratio',
    '(sqrt(embedRatio + 2 * embedRatio^2 * (1 + lengthRatio + lengthRatio^2) + lengthRatio^2 * embedRatio^3) - embedRatio * (1 + lengthRatio)) / (1 + embedRatio)',
    'k1',
    YIELD,
  ),
  k2: step(
    'ratio',
    '-1 + sqrt(2 * (1 + embedRatio) + 2 * yieldStress * (1 + 2 * embedRatio) * bearing^2 / (3 * mainEmbed * mainLength^2))',
    'k2',
    REMEMBERED,
  ),
  k3: step(
    'ratio',
    '-1 + sqrt(2 * (1 + embedRatio) / embedRatio + 2 * yieldStress * (2 + embedRatio) * bearing^2 / (3 * mainEmbed * sideLength^2))',
    'k3',
    YIELD,
  ),
  mainCrushes: step(
    'force',
    'bearing * mainLength * mainEmbed / reduction',
    'mode Im: the main part gives along the whole screw',
    YIELD,
  ),
  sideCrushes: step(
    'force',
    'bearing * sideLength * sideEmbed / reduction * planes',
    'mode Is: the part screwed on gives along the whole screw',
    YIELD,
  ),
  screwTilts: step(
    'force',
    'k1 * bearing * sideLength * sideEmbed / reduction',
    'mode II: the screw tilts in both parts; in single shear only',
    YIELD,
  ),
  bendsInSide: step(
    'force',
    'k2 * bearing * mainLength * mainEmbed / ((1 + 2 * embedRatio) * reduction)',
    'mode IIIm: the screw bends once, in the part screwed on, and tilts in the main part; in single shear only',
    YIELD,
  ),
  bendsInMain: step(
    'force',
    'k3 * bearing * sideLength * mainEmbed / ((2 + embedRatio) * reduction) * planes',
    'mode IIIs: the screw bends once, in the main part, and tilts in the part screwed on',
    YIELD,
  ),
  bendsTwice: step(
    'force',
    'bearing^2 / reduction * sqrt(2 * mainEmbed * yieldStress / (3 * (1 + embedRatio))) * planes',
    'mode IV: the screw bends twice, once in each part',
    YIELD,
  ),
  lateral: step(
    'force',
    'shear == "double" ? min(mainCrushes, sideCrushes, bendsInMain, bendsTwice) : min(mainCrushes, sideCrushes, screwTilts, bendsInSide, bendsInMain, bendsTwice)',
    'push sideways on one screw at normal duration, dry: the smallest of the modes',
    YIELD,
  ),
} as const;

/** Names of the modes in the order of their table, with the step of each. */
export const modes = [
  { of: 'mainCrushes', name: 'Im' },
  { of: 'sideCrushes', name: 'Is' },
  { of: 'screwTilts', name: 'II' },
  { of: 'bendsInSide', name: 'IIIm' },
  { of: 'bendsInMain', name: 'IIIs' },
  { of: 'bendsTwice', name: 'IV' },
] as const;

/** How a fastening gives when it is pushed harder than it bears, each with the comparison that tells it. */
export const inModes = firstOf(
  [
    {
      when: 'lateral == mainCrushes',
      says: 'the main part crushes along the whole screw (mode Im)',
    },
    {
      when: 'lateral == sideCrushes',
      says: 'the part screwed on crushes along the whole screw (mode Is)',
    },
    {
      when: 'shear == "single" and lateral == screwTilts',
      says: 'the screw tilts in both parts without bending (mode II)',
    },
    {
      when: 'shear == "single" and lateral == bendsInSide',
      says: 'the screw bends in the part screwed on and tilts in the main part (mode IIIm)',
    },
    {
      when: 'lateral == bendsInMain',
      says: 'the screw bends in the main part and tilts in the part screwed on (mode IIIs)',
    },
  ],
  'the screw bends twice, once in each part (mode IV)',
);
