/** What a stack of layers costs in wood, glue and money, and the same of other numbers of layers beside it. */
import { choice, input, step } from '../../form/define';
import { fromShop } from '../../form/from-shop';
import { chanceBeside } from './laminate-chance';
import { evenPitchOver, usualPitchOver } from './laminate-glue';
import { boardSection, priceInputs, pricePerVolume } from '../../common/wood/wood-price';
import { GEOMETRY } from '../../../trade/sources';

const ALIKE = 'the formulas of the stack, for layers all alike';

const numbers = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'] as const;

export const costInputs = {
  kerf: fromShop('kerf', { hint: 'of each layer; 0 only here where the yard sells that thickness' }),
  planing: input('length', 'Planed off, each layer', {
    preset: '1 mm',
    presetInch: '1/32 in',
    min: '0 mm',
    max: '10 mm',
    step: '0.5 mm',
    note: 'common practice: both faces together',
  }),
  ...priceInputs,
  price: fromShop('price', { when: 'quoted == "volume"' }),
  perLength: fromShop('perLength', { when: 'quoted == "length"' }),
  each: fromShop('eachA', { when: 'quoted == "each"' }),
  boardSold: fromShop('lengthA', { when: 'quoted == "each"' }),
  gluePrice: input('pricePerMass', 'Price of the glue', {
    // What stacks take comes out of the smallest pack; other glues than epoxy have no packs that the shop tells.
    from: 'resin.pricePerMass',
    fromBy: { choice: 'glue', links: { polyurethane: '', resorcinol: '', pva: '' } },
    preset: '20 /kg',
    presetInch: '9 /lb',
    min: '0 /kg',
    max: '1000 /kg',
    step: '1 /kg',
    note: 'made up: write what your shop asks',
  }),
  beside: choice('Set beside it', {
    // Held together, so that a table's row keeps to one line.
    options: numbers.map((id, i) => ({ id, label: i === 0 ? 'one\u00A0board' : `${i + 1}\u00A0layers` })),
    preset: 'one',
  }),
};

/** Wood with kerf and planing for so many layers; one board is bought as it is. */
const wood = (layers: string) => `(whole + ${layers} * (kerf + planing)) * width * length`;
/** Glue goes with the number of lines, and a stack has one at least. */
const massOf = (layers: string) => `glueMass * (${layers} - 1) / (layers - 1)`;

export const costSteps = {
  bought: step('lumber', wood('layers'), 'wood to buy, kerf and planing counted for each layer', GEOMETRY),
  dust: step(
    'share',
    '1 - whole * width * length / bought',
    'part of it that becomes dust and shavings',
    GEOMETRY,
  ),
  boardSection,
  paid: pricePerVolume(
    { volume: 'price', length: 'perLength', each: 'each', board: 'boardSold' },
    'price of the wood by volume',
  ),
  woodCost: step('money', 'bought * paid', 'price of the wood', GEOMETRY),
  glueCost: step('money', 'glueMass * gluePrice', 'price of the glue', GEOMETRY),
  cost: step('money', 'woodCost + glueCost', 'price of wood and glue', GEOMETRY),
  solidBought: step('lumber', 'whole * width * length', 'wood of one solid board, bought as it is', GEOMETRY),
  solidCost: step('money', 'solidBought * paid', 'price of one solid board', GEOMETRY),
};

export const besideSteps = {
  besideLayers: step(
    'count',
    numbers
      .slice(0, -1)
      .reduceRight((rest, id, i) => `beside == "${id}" ? ${i + 1} : ${rest}`, `${numbers.length}`),
    'layers set beside the stack',
    'what is chosen',
  ),
  besidePly: step('length', 'whole / besideLayers', 'thickness of each of those', GEOMETRY),
  besideShare: step(
    'share',
    'solidShare / besideLayers',
    'share of what breaks this wood, in each of those',
    ALIKE,
  ),
  besideChance: step(
    'share',
    chanceBeside('besideShare', 'besideLayers'),
    'chance that the weakest of those breaks, each from another board',
    ALIKE,
  ),
  besideForce: step(
    'force',
    'solidForce / besideLayers^2',
    'pull that brings those down to the frame',
    ALIKE,
  ),
  besideSpring: step('share', '1 / besideLayers^2', 'part of the rise that those lose off a form', ALIKE),
  besideGlue: step('mass', massOf('besideLayers'), 'glue for those', ALIKE),
  besidePitch: step(
    'length',
    `pitch == usualPitch ? (${usualPitchOver('besidePly')}) : pitch`,
    'clamp to clamp, at most, on those; what was typed stands',
    ALIKE,
    'most',
  ),
  besideClamps: step(
    'count',
    `besideLayers > 1 ? max(clampsByForce, ceil(length / (${evenPitchOver('besidePly', 'besidePitch')}) - 0.001)) : 0`,
    'clamps for gluing those; one board is not glued',
    ALIKE,
  ),
  besideBought: step(
    'lumber',
    `besideLayers > 1 ? ${wood('besideLayers')} : solidBought`,
    'wood to buy for those',
    ALIKE,
  ),
  besideCost: step(
    'money',
    'besideBought * paid + besideGlue * gluePrice',
    'price of wood and glue for those',
    ALIKE,
  ),
};
