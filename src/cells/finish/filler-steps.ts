/** The working of the filler. */
import { step } from '../form/define';
import { MIXING } from '../common/glue/glue-needs';
import { packsToBuy } from '../common/sizes/packs-sold';
import { DOUBLING } from '../common/glue/glues';
import { workable } from '../../trade/fillers';
import { potful } from '../../trade/pots';
import { citation } from '../../trade/table';
import { GEOMETRY } from '../../trade/sources';

export const fillerSteps = {
  mouth: step(
    'caliper',
    'head + (shape == "flared" ? 2 * recess * tan(angle / 2) : 0 mm)',
    'width of the hole at the face',
    GEOMETRY,
  ),
  hole: step(
    'volume',
    'pi * recess * (head^2 + head * mouth + mouth^2) / 12',
    'filler over one head',
    'geometry: a cone cut off at the head; the slot of the screw left out',
  ),
  inHoles: step('volume', 'holes * hole', 'filler over all heads', GEOMETRY),
  inGaps: step('volume', 'gapLength * gapWidth * gapDepth', 'filler in the gaps', GEOMETRY),
  inSeams: step('volume', 'seamLength * seamWidth * seamDepth / 2', 'filler in the seams', 'geometry: a V'),
  inSkim: step('volume', 'skimArea * skimFilm', 'filler on a face, all over', GEOMETRY),
  deepest: step(
    'length',
    'max(holes > 0 ? recess : 0 mm, gapLength > 0 m ? gapDepth : 0 mm, seamLength > 0 m ? seamDepth : 0 mm, skimArea > 0 m^2 ? skimFilm : 0 mm)',
    'deepest of them',
    GEOMETRY,
  ),
  net: step('volume', 'inHoles + inGaps + inSeams + inSkim', 'filler that stays', GEOMETRY),
  paste: step('volume', '(1 + waste) * net', 'paste to mix, with scrapings', 'scrapings added to the net'),
  pasteYield: step(
    'ratio',
    '1 + fillerShare * epoxyDensity / fillerDensity',
    'paste from one volume of epoxy',
    MIXING,
  ),
  grains: step('share', '1 - 1 / pasteYield', 'part of the paste that is grains, by volume', MIXING),
  epoxy: step('volume', 'paste / pasteYield', 'mixed epoxy in it, resin and hardener together', MIXING),
  toBuy: packsToBuy('epoxy', 'epoxy to buy for it, resin and hardener together'),
  epoxyMass: step('mass', 'epoxy * epoxyDensity', 'the same by weight', GEOMETRY),
  fillerMass: step('mass', 'fillerShare * epoxyMass', 'filler to weigh out', MIXING),
  pot: step('minutes', 'potLife * 2^((298.15 K - air) / (10 K))', 'pot life in this air', DOUBLING, 'most'),
  work: step(
    'minutes',
    'holes * perHole + (gapLength + seamLength) / (1 m) * perMetre + skimArea / (1 m^2) * perArea',
    'time to fill all of it',
    GEOMETRY,
  ),
  byWork: step(
    'count',
    `ceil(work / (${workable.value} * pot) - 0.000001)`,
    'pots, so that each is spread while it is good',
    citation(workable),
  ),
  byCup: step(
    'count',
    'ceil(epoxyMass / cup - 0.000001)',
    'pots, so that none heats itself',
    citation(potful.cup),
  ),
  pots: step('count', 'net > 0 L ? max(1, byWork, byCup) : 0', 'pots, one after the other', GEOMETRY),
  resinEach: step(
    'mass',
    'epoxyMass / max(1, pots) * 100 / (100 + hardenerPer100)',
    'resin to weigh into one pot',
    MIXING,
  ),
  hardenerEach: step('mass', 'resinEach * hardenerPer100 / 100', 'hardener to weigh into it', MIXING),
  fillerEach: step('mass', 'fillerMass / max(1, pots)', 'filler to stir into it', MIXING),
  looseEach: step('volume', 'fillerEach / bulk', 'the same by volume, poured loose', GEOMETRY),
} as const;
