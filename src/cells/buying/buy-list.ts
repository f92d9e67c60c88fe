/** The list: all that the boat needs, once, by shop; what is bought and spent of it; and what the roof rack carries home. */
import { packFunctions } from '../common/sizes/cheapest-packs';
import { defineCell } from '../form/define';
import { tableOf } from '../form/row-quantities';
import { drawRack } from './buy-list-drawing';
import { buyListInputs } from './buy-list-inputs';
import type { LineId } from './buy-list-lines';
import { buyListSteps } from './buy-list-steps';

const PRACTICE = 'common practice, no source';

/** Of each line: whether it is bought, and what was paid. */
const bought = (...ids: readonly LineId[]) =>
  ids.flatMap((id): readonly (`${LineId}Got` | `${LineId}Paid`)[] => [`${id}Got`, `${id}Paid`]);
const inStock = (...ids: readonly LineId[]) => ids.map((id): `${LineId}Have` => `${id}Have`);

export const buyList = defineCell({
  id: 'buyList',
  stage: 'buying',
  title: 'The buying list',
  question: 'What do I still have to buy for this boat, where, and what does all of it cost?',
  inputs: buyListInputs,
  groups: {
    'Wood bought': bought('timbers', 'rough', 'jig', 'sheets'),
    'Screws bought': bought('screws', 'fittings'),
    'Glue and cloth bought': bought('glue', 'epoxy', 'powder', 'cloth'),
    'Paint bought': bought('paint', 'thinner'),
    'Small things bought': bought('paper', 'covers', 'cups'),
    'Gloves and masks bought': bought('gloves', 'masks'),
    'Wood and screws in stock': inStock('timbers', 'rough', 'jig', 'sheets', 'screws', 'fittings'),
    'Glue and paint in stock': inStock('glue', 'epoxy', 'powder', 'cloth', 'paint', 'thinner'),
    'Small things in stock': inStock('paper', 'covers', 'cups', 'gloves', 'masks'),
    'Long timbers and the jig': [
      'timbersNeed',
      'timbersCost',
      'timberJoints',
      'jointWorth',
      'jigNeed',
      'jigPrice',
    ],
    'Wood in frames': ['frameWood', 'stemWood', 'thwartWood', 'roughWaste'],
    'Frame boards': ['boardThickness', 'boardWidth', 'roughLength', 'roughPrice', 'byVolume'],
    'Plywood and screws': [
      'sheetsNeed',
      'sheetsCost',
      'screwsNeed',
      'screwsPrice',
      'fittingsNeed',
      'fittingsPrice',
    ],
    'The glue': ['glueIs', 'glueVolume', 'gluePack', 'gluePrice'],
    'Epoxy and cloth': [
      'epoxySmall',
      'epoxyMiddle',
      'epoxyLarge',
      'epoxyCost',
      'clothLength',
      'clothBy',
      'clothCost',
    ],
    'Filler for epoxy': ['glueFiller', 'filletEpoxy', 'fillerShare', 'pasteFiller', 'bag', 'bagPrice'],
    'Tins of paint': [
      'paintVolume',
      'smallTin',
      'smallTinPrice',
      'middleTin',
      'middleTinPrice',
      'largeTin',
      'largeTinPrice',
    ],
    Thinner: ['thinnerVolume', 'washing', 'thinnerTin', 'thinnerPrice'],
    'Paper and rollers': ['paperNeed', 'paperPrice', 'paintCovers', 'sealCoats', 'fillCoats', 'coverPrice'],
    'Cups and gloves': [
      'batches',
      'pots',
      'cupPrice',
      'glovesNeed',
      'glovesPrice',
      'sandingTime',
      'maskPrice',
    ],
    'The roof rack': ['barsApart', 'longestBoard', 'jigLength'],
    'Sheets carried': ['sheetLength', 'sheetWidth', 'sheetThickness', 'plyDensity'],
    'Boards carried': ['woodVolume', 'woodDensity', 'jigBoard'],
  },
  folded: 'Needs, prices and stock',
  functions: packFunctions,
  steps: buyListSteps,
  answers: [
    {
      of: 'cost',
      label: 'in all',
      from: 'as planned, with what is set aside; without work, motor and trailer',
    },
    { of: 'stillToPay', label: 'still to pay', from: 'planned for the lines that are not ticked off' },
    { of: 'rackMass', label: 'on the roof rack', from: 'sheets and boards that are not yet bought' },
  ],
  inWords: [
    'All lines together come to {planned}, and {setAside} is set aside for surprises.',
    {
      when: 'linesBought > 0',
      says: [
        '{linesBought} of {lines} lines {linesBought?is:are} bought, for {spent}:',
        {
          when: 'overSize <= planned / 10000',
          says: 'as planned.',
          otherwise: {
            when: 'over > 0',
            says: '{overSize} more than planned.',
            otherwise: '{overSize} less than planned.',
          },
        },
      ],
      otherwise: 'Nothing of the {lines} lines is ticked off yet.',
    },
    {
      when: 'rackMass > 0 kg',
      says: 'On the roof go {rackMass} in {trips} {trips?trip:trips}, the longest piece {longest}.',
    },
  ],
  table: tableOf({
    caption: 'The list, by shop',
    over: 'line',
    columns: [
      { of: 'lineShop', label: 'where' },
      { of: 'lineBuy', label: 'buy' },
      { of: 'lineSold', label: 'of' },
      { of: 'linePlan', label: 'planned' },
      { of: 'lineState', label: 'now' },
      { of: 'lineSpent', label: 'paid' },
    ],
  }),
  warnings: [
    {
      when: 'over > setAside',
      says: 'What is bought has cost {overSize} more than planned, and {setAside} was set aside.',
      limit: 'the share set aside, as you entered it',
      weight: 'mind',
    },
    {
      when: 'rackMass > rackBears',
      says: 'Sheets and boards weigh {rackMass}, and the rack bears {rackBears}: go {trips} times, or have them brought.',
      limit: 'the least of car, rack and feet, from their papers, as you entered it',
      weight: 'stop',
    },
    {
      when: 'beyond > 1 m',
      says: 'The longest piece stands out {beyond} beyond each bar. Have it cut at the yard where a joint falls anyway, or take a trailer.',
      limit: `1 m (3 ft 3 in); ${PRACTICE}; the law of the place on what stands out, and on flags`,
      weight: 'mind',
    },
  ],
  cautions: [
    'Long loads: tie sheets and boards down at both bars and at the bow of the car, flag the end, drive slowly. The law of the place rules on how far a load may stand out; car and rack rule on weight.',
    'With epoxy, paint and thinner goes their makers’ sheet of hazards: ask for it at the counter. Gloves and masks are counted by custom; what fits the work stands on those sheets.',
    'It counts what the cells say as they stand: the paint of the face that stands there, the paper of one sanding, the batches of one stage. Motor, trailer and tools are not in it.',
    'Prices are examples until your shop’s stand in their place. Buy boards and sheets after the last change of the plan, and no more epoxy than you use before it ages.',
  ],
  sources: [
    { text: 'Counts, lengths, volumes and packs: the cells that each line comes from', known: 'geometry' },
    {
      text: 'Waste of rough stock, covers, cups and masks; what is set aside; prices as examples: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['{line}'],
  view: 'list',
  draw: drawRack,
});
