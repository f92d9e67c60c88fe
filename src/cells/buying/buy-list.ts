/** The list: all that the boat needs, once, by shop; what is bought and spent of it; and what the roof rack carries home. */
import { packFunctions } from '../common/sizes/cheapest-packs';
import { defineCell } from '../form/define';
import { tableOf } from '../form/row-quantities';
import { drawRack } from './buy-list-drawing';
import { buyListInputs } from './buy-list-inputs';
import { buyLines, type LineId } from './buy-list-lines';
import { buyListSteps } from './buy-list-steps';

const PRACTICE = 'common practice, no source';

const ofLines = <const K extends 'Have' | 'Got' | 'Paid'>(
  what: readonly K[],
  ids: readonly LineId[],
): readonly `${LineId}${K}`[] => ids.flatMap((id) => what.map((one): `${LineId}${K}` => `${id}${one}`));

const ids = buyLines.map(({ id }) => id);

export const buyList = defineCell({
  id: 'buyList',
  stage: 'buying',
  title: 'The buying list',
  question: 'What do I still have to buy for this boat, where, and what does all of it cost?',
  inputs: buyListInputs,
  groups: {
    'Ticked off': ofLines(['Got', 'Paid'], ids),
    'On the shelf': ofLines(['Have'], ids),
    'At the lumber yard': [
      'timbersNeed',
      'timbersCost',
      'timberJoints',
      'jointWorth',
      'frameWood',
      'stemWood',
      'thwartWood',
      'roughWaste',
      'boardThickness',
      'boardWidth',
      'roughLength',
      'roughPrice',
      'byVolume',
      'jigNeed',
      'jigPrice',
    ],
    'Plywood and screws': [
      'sheetsNeed',
      'sheetsCost',
      'screwsNeed',
      'screwsPrice',
      'fittingsNeed',
      'fittingsPrice',
    ],
    'Glue and cloth': [
      'glueIs',
      'glueVolume',
      'gluePack',
      'gluePrice',
      'epoxySmall',
      'epoxyMiddle',
      'epoxyLarge',
      'epoxyCost',
      'glueFiller',
      'filletEpoxy',
      'fillerShare',
      'pasteFiller',
      'bag',
      'bagPrice',
      'clothLength',
      'clothBy',
      'clothCost',
    ],
    'Paint and thinner': [
      'paintVolume',
      'smallTin',
      'smallTinPrice',
      'middleTin',
      'middleTinPrice',
      'largeTin',
      'largeTinPrice',
      'thinnerVolume',
      'washing',
      'thinnerTin',
      'thinnerPrice',
    ],
    'Used up and worn': [
      'paperNeed',
      'paperPrice',
      'paintCovers',
      'sealCoats',
      'fillCoats',
      'coverPrice',
      'batches',
      'pots',
      'cupPrice',
      'glovesNeed',
      'glovesPrice',
      'sandingTime',
      'maskPrice',
    ],
    'The roof rack': [
      'barsApart',
      'longestBoard',
      'jigLength',
      'sheetLength',
      'sheetWidth',
      'sheetThickness',
      'plyDensity',
      'woodVolume',
      'woodDensity',
      'jigBoard',
    ],
  },
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
