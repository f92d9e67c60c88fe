/** What the list asks: needs and prices from the cells, what is on the shelf, what is bought and what was paid. */
import { choice, type ChoiceSpec, input, type InputSpec } from '../form/define';
import { chosenFromShop, fromShop } from '../form/from-shop';
import { buyLines, type LineId } from './buy-list-lines';

const PRACTICE = 'common practice, no source';
const EXAMPLE = 'an example; put in your shop’s';

const counted = (label: string, from: string, preset = '0', max = '1000000') =>
  input('count', label, { from, preset, min: '0', max, step: '1' });
const cost = (label: string, from: string) =>
  input('money', label, { from, preset: '0', min: '0', max: '10000000', step: '1' });
const price = (label: string, preset: string, note = EXAMPLE) =>
  input('money', label, { preset, min: '0', max: '100000', step: '1', note });
const volume = (label: string, from: string, max = '10000 L') =>
  input('volume', label, { from, preset: '0 L', min: '0 L', max, step: '1 L' });
const mass = (label: string, from: string, preset = '0 kg') =>
  input('mass', label, { from, preset, min: '0 kg', max: '10000 kg', step: '1 kg' });

/** Needs by the cells, each with the place that it comes from, and prices that no other cell asks. */
export const needInputs = {
  timbersNeed: counted('Boards for long timbers', 'boards.boards'),
  timbersCost: cost('Boards and joints cost', 'boards.cost'),
  timberJoints: counted('Joints in them', 'boards.joints'),
  jointWorth: input('money', 'What a joint is worth', {
    from: 'boards.jointPrice',
    preset: '2',
    min: '0',
    max: '1000',
    step: '1',
    note: 'work, and not money: taken off again here',
  }),
  frameWood: volume('Wood in the frames', 'frame.volume'),
  stemWood: volume('Wood in the stem', 'stem.volume'),
  thwartWood: volume('Wood in the thwarts', 'thwart.volume'),
  roughWaste: input('share', 'Bought beyond it', {
    preset: '40 %',
    min: '0 %',
    max: '300 %',
    step: '5 %',
    note: `sawn to shape across the board: ${PRACTICE}`,
  }),
  boardThickness: fromShop('boardThickness'),
  boardWidth: fromShop('boardWidth'),
  roughLength: fromShop('lengthA'),
  roughPrice: input('money', 'A board for frames costs', {
    from: '{self}.usualBoard',
    preset: '7',
    min: '0',
    max: '100000',
    step: '1',
    note: 'by volume, at the shop’s price, until you put in its own',
  }),
  byVolume: fromShop('price'),
  jigNeed: counted('Boards for the jig', 'strongback.boards'),
  jigPrice: price('A board for the jig costs', '9'),
  sheetsNeed: counted('Sheets of plywood', 'sheets.count'),
  sheetsCost: cost('Sheets cost', 'sheets.cost'),
  screwsNeed: counted('Boxes of screws', 'screwCount.boxes'),
  screwsPrice: price('A box of screws costs', '12'),
  glueIs: chosenFromShop('glue'),
  glueVolume: volume('Glue for all joints', 'glue.all.volume'),
  gluePack: input('pack', 'A pack of glue', {
    from: 'glue.pack',
    preset: '1 L',
    min: '0.01 L',
    max: '250 L',
    step: '0.1 L',
  }),
  gluePrice: price('A pack of glue costs', '14'),
  epoxySmall: counted('Small packs of epoxy', 'resin.small'),
  epoxyMiddle: counted('Middle packs of epoxy', 'resin.middle'),
  epoxyLarge: counted('Large packs of epoxy', 'resin.large'),
  epoxyCost: cost('Epoxy costs', 'resin.cost'),
  glueFiller: mass('Filler for glue lines', 'glue.all.filler'),
  filletEpoxy: mass('Epoxy for fillets', 'fillet.onBoat', '0 g'),
  fillerShare: fromShop('fillerShare'),
  pasteFiller: mass('Filler for holes and gaps', 'filler.fillerMass'),
  bag: input('mass', 'A bag of filler holds', {
    preset: '0.5 kg',
    presetInch: '1 lb',
    min: '10 g',
    max: '50 kg',
    step: '0.1 kg',
  }),
  bagPrice: price('A bag of filler costs', '8'),
  clothLength: input('length', 'Length of cloth', {
    from: 'cloth.length',
    preset: '0 m',
    min: '0 m',
    max: '10 km',
    step: '1 m',
  }),
  clothBy: input('length', 'Cloth is sold by the', {
    from: 'cloth.soldBy',
    preset: '1 m',
    min: '1 mm',
    max: '200 m',
    step: '0.1 m',
  }),
  clothCost: cost('Cloth costs', 'cloth.cost'),
  paintVolume: volume('Paint for all coats', 'paint.volume'),
  smallTin: input('pack', 'Small tin', { from: 'paint.smallTin', preset: '0.5 L', min: '0 L', max: '250 L' }),
  smallTinPrice: cost('Small tin, price', 'paint.smallTinPrice'),
  middleTin: input('pack', 'Middle tin', {
    from: 'paint.middleTin',
    preset: '1 L',
    min: '0 L',
    max: '250 L',
  }),
  middleTinPrice: cost('Middle tin, price', 'paint.middleTinPrice'),
  largeTin: input('pack', 'Large tin', { from: 'paint.largeTin', preset: '4 L', min: '0 L', max: '250 L' }),
  largeTinPrice: cost('Large tin, price', 'paint.largeTinPrice'),
  thinnerVolume: volume('Thinner to stir in', 'paint.thinnerVolume'),
  washing: input('volume', 'Thinner to wash brushes', {
    preset: '0.5 L',
    presetInch: '1 pt',
    min: '0 L',
    max: '100 L',
    step: '0.25 L',
    note: PRACTICE,
  }),
  thinnerTin: input('pack', 'A tin of thinner', {
    preset: '1 L',
    presetInch: '1 qt',
    min: '0.01 L',
    max: '250 L',
    step: '0.5 L',
  }),
  thinnerPrice: price('A tin of thinner costs', '9'),
  paperNeed: counted('Pieces of paper for sanding', 'sand.pieces'),
  paperPrice: price('A piece of it costs', '0.8'),
  paintCovers: counted('Roller covers for paint', 'paint.rollers'),
  sealCoats: counted('Sealing coats of epoxy', 'resin.sealCoats'),
  fillCoats: counted('Fill coats of epoxy', 'resin.fillCoats'),
  coverPrice: price('A roller cover costs', '3'),
  batches: counted('Batches of epoxy', 'batch.batches'),
  pots: counted('Pots of filler', 'filler.pots'),
  cupPrice: price('A mixing cup costs', '0.4'),
  glovesNeed: input('count', 'Boxes of gloves', {
    preset: '1',
    min: '0',
    max: '1000',
    step: '1',
    note: 'nitrile, for epoxy; leather for the saw and the rope',
  }),
  glovesPrice: price('A box of gloves costs', '12'),
  sandingTime: input('time', 'Hours of sanding', {
    from: 'sand.lasts',
    preset: '8 h',
    min: '0 h',
    max: '100000 h',
    step: '1 h',
  }),
  maskPrice: price('A mask for dust costs', '5'),
  fittingsNeed: input('count', 'Lots of fittings', {
    preset: '0',
    min: '0',
    max: '1000',
    step: '1',
    note: 'rowlocks, cleats, drain plug, eye bolt: what no cell counts',
  }),
  fittingsPrice: price('A lot of them costs', '60'),
} as const;

const gotOptions = [
  { id: 'no', label: 'to buy' },
  { id: 'yes', label: 'bought' },
] as const;

/** Of each line: whether it is bought, and what was paid; and how many stand on the shelf. */
type OfLines = {
  readonly [K in `${LineId}Got`]: ChoiceSpec & { readonly options: typeof gotOptions };
} & { readonly [K in `${LineId}Paid`]: InputSpec & { readonly kind: 'money' } } & {
  readonly [K in `${LineId}Have`]: InputSpec & { readonly kind: 'number' };
};

const called = (label: string) => label.charAt(0).toUpperCase() + label.slice(1);

const lineInputs = Object.fromEntries(
  buyLines.flatMap(({ id, label, sold }) => [
    [
      `${id}Have`,
      input('number', `${called(label)}, in stock`, {
        preset: '0',
        min: '0',
        max: '100000',
        step: '1',
        note: id === 'paint' ? 'of the smallest tins, there already' : `${sold} there already`,
      }),
    ],
    [`${id}Got`, choice(called(label), { options: gotOptions, preset: 'no' })],
    [
      `${id}Paid`,
      input('money', `${called(label)}, paid`, {
        from: `{self}.${id}Plan`,
        preset: '0',
        min: '0',
        max: '1000000000',
        step: '1',
        note: 'as planned, until you type what was paid',
        when: `${id}Got == "yes"`,
      }),
    ],
  ]),
) as unknown as OfLines; // the keys are the lines' own

export const buyListInputs = {
  line: choice('Line', {
    options: buyLines.map(({ id, label, about }) => ({ id, label, about })),
    preset: 'sheets',
  }),
  contingency: input('share', 'Set aside for surprises', {
    preset: '10 %',
    min: '0 %',
    max: '100 %',
    step: '1 %',
    note: PRACTICE,
  }),
  rackBears: input('mass', 'The roof rack bears', {
    preset: '75 kg',
    presetInch: '165 lb',
    min: '1 kg',
    max: '1000 kg',
    step: '5 kg',
    note: 'the least of car, rack and feet, from their papers',
  }),
  barsApart: input('length', 'Its bars stand apart', {
    preset: '900 mm',
    presetInch: '3 ft',
    min: '200 mm',
    max: '5 m',
    step: '50 mm',
  }),
  longestBoard: input('length', 'Longest board', {
    from: 'boards.longest',
    preset: '2.4 m',
    presetInch: '8 ft',
    min: '0 m',
    max: '20 m',
    step: '0.1 m',
  }),
  jigLength: input('stockLength', 'Boards for the jig are long', {
    from: 'strongback.stock',
    preset: '4.8 m',
    presetInch: '16 ft',
    min: '0.3 m',
    max: '12 m',
    step: '0.3 m',
  }),
  sheetLength: fromShop('sheetLength'),
  sheetWidth: fromShop('sheetWidth'),
  sheetThickness: fromShop('sheetThickness'),
  plyDensity: input('density', 'Density of the plywood', {
    from: 'panels.plyDensity',
    preset: '540 kg/m³',
    min: '200 kg/m^3',
    max: '1000 kg/m^3',
    step: '10 kg/m^3',
    note: `of the sheets bought, taken all as thick as those priced: ${PRACTICE}`,
  }),
  woodVolume: input('lumber', 'Wood of the long timbers', {
    from: 'boards.bought',
    preset: '0.05 m^3',
    min: '0 m^3',
    max: '100 m^3',
    step: '0.01 m^3',
  }),
  woodDensity: input('density', 'Density of the boards', {
    preset: '520 kg/m^3',
    min: '100 kg/m^3',
    max: '1200 kg/m^3',
    step: '10 kg/m^3',
    note: `as they come from the yard: ${PRACTICE}`,
  }),
  jigBoard: input('mass', 'A board for the jig weighs', {
    preset: '12 kg',
    presetInch: '26 lb',
    min: '0.1 kg',
    max: '200 kg',
    step: '1 kg',
  }),
  ...needInputs,
  ...lineInputs,
} as const;
