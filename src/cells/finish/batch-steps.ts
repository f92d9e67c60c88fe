/** The working of the batch. */
import { step } from '../form/define';
import { DOUBLING } from '../common/glue/glues';
import { MIXING } from '../common/glue/glue-needs';
import { custom } from '../common/sizes/custom-sizes';
import { OUNCE } from '../../measure/si';
import { workable } from '../../trade/fillers';
import { halfAsThick, hotFrom, potful, potfulOunces, slowBelow, spreading, warmedTo } from '../../trade/pots';
import { citation } from '../../trade/table';
import { GEOMETRY } from '../../trade/sources';

/** What the label's figures and the trade's are told at. */
const WARM = '298.15 K';

type Pot = keyof typeof potful;
const most = (pot: Pot): string =>
  custom(`${potful[pot].value * 1000} g`, `${Math.round(potfulOunces[pot].value / OUNCE)} oz`);
const byWork = (of: (pace: number) => string): string =>
  spreading.rows
    .slice(1)
    .reduceRight(
      (rest, { id, cells }) => `work == "${id}" ? ${of(cells.pace?.value ?? 0)} : ${rest}`,
      of(spreading.rows[0]?.cells.pace?.value ?? 0),
    );
const between = `min(${warmedTo.value} K, max(${slowBelow.value} K, air))`;

export const batchSteps = {
  slower: step(
    'ratio',
    '2^((labelAt - air) / (10 K))',
    'times as long as the label says, in this warmth',
    DOUBLING,
  ),
  potLife: step('minutes', 'labelLife * slower', 'pot life in this warmth', DOUBLING, 'most'),
  lifeAt25: step(
    'minutes',
    `labelLife * 2^((labelAt - ${WARM}) / (10 K))`,
    'the label’s pot life at 25 °C (77 °F)',
    DOUBLING,
  ),
  byEnergy: step(
    'minutes',
    'labelLife * exp(energy / 0.008314463 * (1 K / air - 1 K / labelAt))',
    'pot life by the energy of the reaction, for comparison',
    'Arrhenius, with R = 8.314463 J/(mol·K)',
  ),
  heating: step(
    'ratio',
    `2^((air - ${WARM}) / (10 K))`,
    'times as much heat a minute as at 25 °C (77 °F)',
    DOUBLING,
  ),
  viscosity: step(
    'ratio',
    `2^((${WARM} - ${between}) / (${halfAsThick.value} K))`,
    'times as thick as at 25 °C (77 °F)',
    `${citation(halfAsThick)}; from 15 to 35 °C (59 to 95 °F)`,
  ),
  cupful: step(
    'mass',
    `hardener == "fast" or air > ${hotFrom.value} K ? ${most('hotCup')} : ${most('cup')}`,
    'most that is mixed in a cup',
    `${citation(potful.cup)}; ${potful.hotCup.source}, ${hotFrom.source}`,
    'most',
  ),
  trayful: step(
    'mass',
    `hardener == "fast" or air > ${hotFrom.value} K ? ${most('hotTray')} : ${most('tray')}`,
    'most that is mixed for a tray',
    `${citation(potful.tray)}; ${potful.hotTray.source}, ${hotFrom.source}`,
    'most',
  ),
  usualMost: step('mass', 'pot == "tray" ? trayful : cupful', 'most in this pot', GEOMETRY, 'most'),
  usualPace: step(
    'minutes',
    byWork((pace) => `${pace} s`),
    'time to spread a square metre, or a metre of fillet',
    spreading.rows
      .map(({ label, cells }) => `${label}: ${cells.pace ? citation(cells.pace) : ''}`)
      .join('; '),
  ),
  workable: step('minutes', 'goodFor * potLife', 'of that good to spread', citation(workable), 'most'),
  spread: step(
    'mass',
    'workable / pace * (work == "fillets" ? perMetre : takes * 1 m^2)',
    'what one pair of hands spreads in that time',
    GEOMETRY,
    'most',
  ),
  largest: step('mass', 'min(most, spread)', 'largest batch', 'the lesser of the two', 'most'),
  batches: step('count', 'mass > 0 g ? ceil(mass / largest - 0.000001) : 0', 'batches, all alike', GEOMETRY),
  batch: step('mass', 'mass / max(1, batches)', 'one batch', GEOMETRY),
  resin: step('mass', 'batch * 100 / (100 + hardenerPer100)', 'resin to weigh into it', MIXING),
  hardenerMass: step('mass', 'batch - resin', 'hardener to weigh into it', MIXING),
  volume: step('volume', 'batch / epoxyDensity', 'the same by volume, both parts together', GEOMETRY),
  covers: step(
    'area',
    'work == "fillets" ? 0 m^2 : batch / takes',
    'area that one batch covers; of fillets none',
    GEOMETRY,
  ),
  runs: step(
    'length',
    'work == "fillets" ? batch / perMetre * 1 m : 0 m',
    'run that one batch fills; of a coat none',
    GEOMETRY,
  ),
  spreading: step(
    'minutes',
    'batch / (work == "fillets" ? perMetre : takes * 1 m^2) * pace',
    'time to spread one batch',
    GEOMETRY,
  ),
  alone: step('time', 'batches * (mixing + spreading)', 'time for all of it, one pair of hands', GEOMETRY),
  hands: step(
    'count',
    'max(1, ceil(alone / within - 0.000001))',
    'pairs of hands, each with a pot of its own',
    GEOMETRY,
  ),
  together: step('time', 'ceil(batches / hands) * (mixing + spreading)', 'time with all of them', GEOMETRY),
  depth: step(
    'length',
    'volume / (pot == "tray" ? trayLength * trayWidth : pi * cupWidth^2 / 4)',
    'how deep it stands in the pot',
    GEOMETRY,
  ),
} as const;
