/** What a stack of layers costs in wood, glue and money, and the same of other numbers of layers beside it. */
import { choice, input, step } from '../../form/define';
import { chosenFromShop, fromShop } from '../../form/from-shop';
import { soldLength } from '../../common/sizes/lumber-sold';
import { chanceBeside } from './laminate-chance';
import { evenPitchOver, usualPitchOver } from './laminate-glue';
import { byBoard, byLength, pricePerVolume } from '../../common/wood/wood-price';

const GEOMETRY = 'geometry';
const ALIKE = 'the formulas of the stack, for layers all alike';

const numbers = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'] as const;

const ofBoard = { when: 'quoted != "volume"' } as const;

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
  quoted: chosenFromShop('quoted'),
  price: fromShop('price', { when: 'quoted == "volume"' }),
  perLength: byLength('Price of the wood by length'),
  each: byBoard('Price of one board', '7'),
  boardThickness: input('length', 'Thickness of the board priced', {
    ...ofBoard,
    preset: '19 mm',
    presetInch: '3/4 in',
    min: '1 mm',
    max: '150 mm',
    step: '1 mm',
  }),
  boardWidth: input('length', 'Width of the board priced', {
    ...ofBoard,
    preset: '89 mm',
    presetInch: '3 1/2 in',
    min: '3 mm',
    max: '2 m',
    step: '1 mm',
  }),
  boardSold: soldLength('Length of the board priced', {
    preset: '2.4 m',
    presetInch: '8 ft',
    min: '300 mm',
    max: '12 m',
    when: 'quoted == "each"',
  }),
  gluePrice: input('pricePerMass', 'Price of the glue', {
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
  boardSection: step('area', 'boardThickness * boardWidth', 'end of the board priced', GEOMETRY),
  paid: pricePerVolume(
    { volume: 'price', length: 'perLength', each: 'each', section: 'boardSection', board: 'boardSold' },
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
