/** The working of the glue. */
import { jointSteps } from './glued-joints';
import { usualLineStep, usualSpreadStep, glueNeeds, MIXING } from '../../common/glue/glue-needs';
import { step } from '../../form/define';
import { DOUBLING } from '../../common/glue/glues';
import { CUSTOM, GEOMETRY } from '../../../trade/sources';

export const BEADED = 'glue == "polyurethane"';

export const glueSteps = {
  ...jointSteps,
  usualFilm: usualLineStep,
  usualSpread: usualSpreadStep('film'),
  cartridge: step('pack', '0.3 L', 'cartridge usual in a shop', CUSTOM),
  run: step('length', 'length', 'length of this joint, all pieces', GEOMETRY),
  area: step('area', 'length * width', 'glue face', GEOMETRY),
  beadNeeded: step(
    'length',
    `${BEADED} ? sqrt(4 * width * film / (pi * max(1, beads))) : 0 mm`,
    'thickness of the bead that makes this film when closed',
    'geometry: the round bead is pressed flat',
    'least',
  ),
  ...glueNeeds({
    area: 'area',
    line: 'film',
    laid: 'glue == "polyurethane" ? length * beads * pi * bead^2 / 4 : glue == "epoxy" ? area * film : area * spread / density',
  }),
  filmLaid: step(
    'length',
    'area > 0 ? laid / area : 0 mm',
    'thickness to which it closes, if none is squeezed out',
    GEOMETRY,
  ),
  fromPack: step(
    'length',
    `${BEADED} ? pack / (pi * max(bead, 1 mm)^2 / 4) : 0 m`,
    'bead from one cartridge; 0 with glues that are not laid as one',
    'geometry: length of a round bead',
  ),
  mixed: step(
    'mass',
    'glue == "epoxy" ? glueMass : 0 g',
    'mixed epoxy by weight; 0 with other glues',
    MIXING,
  ),
  hardener: step('mass', 'mixed * hardenerPer100 / (100 + hardenerPer100)', 'hardener to weigh out', MIXING),
  resin: step('mass', 'mixed - hardener', 'resin to weigh out', MIXING),
  packs: step('count', 'volume > 0 L ? ceil(volume / pack) : 0', 'packs or cartridges', GEOMETRY),
  slower: step('ratio', '2^((293.15 K - shop) / (10 K))', 'times as long as at 20 °C (68 °F)', DOUBLING),
  open: step(
    'minutes',
    'openAt20 * slower',
    'time from spreading until all must be closed',
    DOUBLING,
    'most',
  ),
  atOnce: step(
    'length',
    'open / perMetre * 1 m',
    'run that can be spread and closed in that time',
    GEOMETRY,
    'most',
  ),
  each: step('length', 'length / pieces', 'of that one piece, glued in one go', GEOMETRY),
  goes: step(
    'count',
    'length > 0 m ? pieces * ceil(each / atOnce) : 0',
    'batches, one after the other',
    GEOMETRY,
  ),
} as const;
