/** Weights: every part of the boat and all that goes aboard, with the centre of it; and what the scales say to it. */
import type { Derived, Layout } from '../../boat';
import { defineCell } from '../form/define';
import { tableOf } from '../form/row-quantities';
import { drawWeights } from './weights-drawing';
import { weightsInputs } from './weights-inputs';
import { weightsSteps } from './weights-steps';

const gearFields = <const Id extends 'gearA' | 'gearB' | 'gearC' | 'gearD'>(id: Id) =>
  [id, `${id}Mass`, `${id}Forward`, `${id}Height`, `${id}Side`] as const;

export const weights = defineCell({
  id: 'weights',
  stage: 'afloat',
  title: 'Weights and their centre',
  question: 'What does she weigh, bare, rigged and with people aboard, and where does that weight lie?',
  inputs: weightsInputs,
  groups: {
    'The people': ['person', 'peopleHeight', 'peopleSide', 'seat'],
    'Motor and fuel': ['motorForward', 'motorHeight', 'fuel', 'fuelForward', 'fuelHeight'],
    'First piece of gear': gearFields('gearA'),
    'Second piece of gear': gearFields('gearB'),
    'Third piece of gear': gearFields('gearC'),
    'Fourth piece of gear': gearFields('gearD'),
    'Her skin': ['bottomMass', 'bilgeMass', 'sideMass', 'transomMass', 'bowMass'],
    'Her timbers': [
      'keelsonMass',
      'stemMass',
      'logMass',
      'clampMass',
      'railMass',
      'frameMass',
      'gussetMass',
      'thwartMass',
    ],
    'Water in the wood': ['moisture', 'drinks', 'woodDoubt'],
    'Glue and resin': ['sheathing', 'glueLines', 'glueWeight', 'filletPaste', 'fillerPaste', 'pasteWeight'],
    'Screws and paint': ['screwsIn', 'oneScrew', 'painted', 'dryPaint', 'paintWeight', 'finishDoubt'],
    'The scales': ['aftReads', 'foreReads', 'aftAt', 'foreAt', 'leverage'],
  },
  steps: weightsSteps,
  answers: [
    { of: 'hull', label: 'hull', from: 'with seats, glue, cloth and paint; empty' },
    { of: 'loaded', label: 'loaded', from: 'hull, motor, fuel, gear and people' },
    {
      of: 'centreForward',
      label: 'centre, loaded',
      from: 'from the after end of the bottom, forward',
    },
  ],
  inWords: [
    {
      when: 'weighed == "no"',
      says: 'The hull weighs about {hull}, somewhere from {hullLeast} to {hullMost}.',
      otherwise: [
        'By the scales the hull weighs {hull},',
        { when: 'correction >= 0 kg', says: '{correctionSize} more', otherwise: '{correctionSize} less' },
        'than reckoned, and its centre lies {correctionForwardSize}',
        { when: 'correctionForward >= 0 mm', says: 'further forward.', otherwise: 'further aft.' },
      ],
    },
    'Rigged she weighs {rigged}, and with {people} {people?person:people} aboard {loaded}.',
    'All of it together has its centre {centreForward} forward of the after end of the bottom and {centreHeight} above the base line.',
  ],
  table: tableOf({
    caption: 'Every part',
    over: 'part',
    only: 'listed',
    columns: [
      { of: 'partMass', label: 'weighs' },
      { of: 'partX', label: 'forward' },
      { of: 'partZ', label: 'height' },
      { of: 'partShare', label: 'of all' },
    ],
  }),
  warnings: [
    {
      when: 'loaded >= bears',
      says: 'With all aboard she weighs {loaded}, and down to her sheer she pushes aside {bears} of water: she sinks.',
      limit: 'her own volume, in fresh water; Archimedes’ principle',
      weight: 'stop',
    },
    {
      when: 'abs(centreSide) > beam / 100',
      says: [
        'The centre lies {centreAside}',
        { when: 'centreSide > 0 mm', says: 'to port', otherwise: 'to starboard' },
        'of the centreline: she heels that way.',
      ],
      limit: 'a hundredth of the breadth; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'weighed != "no" and correctionSize > reckoned / 5',
      says: 'The scales are off by {correctionSize} from what was reckoned: weigh her once more, and look for what the list forgot.',
      limit: 'a fifth of the weight reckoned; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'weighed != "no" and foreAt - aftAt < beam / 2',
      says: 'The supports stand only {aftAt} and {foreAt} forward: so close together a small misreading moves the centre far.',
      limit: 'half a breadth apart at the least; common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'A hull on two scales rocks: chock her both sides, lift with enough hands, and keep hands and feet from under her.',
    'Reckoned weights are a guess until she has been weighed. How much may go aboard is for the capacity rule of the place, not for this sum.',
    'Cloth, glue and paint are those of the cells above, as they stand there: if only the outside is painted there, only that is counted here.',
  ],
  sources: [
    { text: 'Sums and moments: statics, any text', known: 'geometry' },
    {
      text: 'Densities of the woods: Wood Handbook, USDA FPL-GTR-190 (2010), at 12 % moisture; of plywood: trade sheets',
      known: 'published',
    },
    { text: 'One adult 75 kg (165 lb): ISO 14946; 185 lb (84 kg): 46 CFR 170.090', known: 'published' },
    {
      text: 'Weight of gear, of screws and of dry paint, doubts, water taken up: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['{part}'],
  brings: bilgesMass,
  draw: drawWeights,
});

/** All panels between bottom and sides weigh together; none where there are no such panels. */
function bilgesMass({ panels }: Layout): readonly Derived[] {
  const bilges = panels.map(({ name }) => name).filter((name) => name.startsWith('bilge'));
  if (bilges.length === 0) return [];
  return [
    {
      name: 'bilges.mass',
      kind: 'mass',
      meaning: 'mass of all panels between bottom and sides, all pieces',
      source: 'sum of the parts',
      from: (read) => bilges.reduce((sum, name) => sum + read.number(`${name}.mass`), 0),
    },
  ];
}
