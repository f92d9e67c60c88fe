/** Flotation: foam to buy so that she floats when she is full of water, where it goes, and how she lies with it. */
import { defineCell } from '../form/define';
import { tableOf } from '../form/row-quantities';
import { drawFlotation } from './flotation-drawing';
import { flotationInputs } from './flotation-inputs';
import { flotationFunctions, flotationSteps } from './flotation-steps';

export const flotation = defineCell({
  id: 'flotation',
  stage: 'afloat',
  title: 'Flotation',
  question: 'How much foam keeps her up when she is full of water, and where does it go?',
  inputs: flotationInputs,
  groups: {
    'What hangs on it': ['rated', 'equipment', 'finish', 'finishDensity', 'metal', 'metalDensity'],
    'Her wood': ['wood', 'wetDensity', 'credit'],
    'Where it goes': ['where', 'below', 'stripDown', 'thick', 'seat', 'fills'],
    'The foam': ['fitted', 'foamDensity', 'soak', 'waste', 'sheetLong', 'sheetWide', 'sheetThick'],
    'People and motor': ['person', 'peopleForward', 'motorForward', 'hullForward', 'long'],
  },
  functions: flotationFunctions,
  steps: flotationSteps,
  answers: [
    { of: 'foam', label: 'foam', from: 'fitted in her, by the rule' },
    { of: 'sheets', label: 'sheets to buy', from: 'with the offcuts' },
    { of: 'hands', label: 'people hanging on', from: 'in the water, the boat swamped, motor and all' },
  ],
  inWords: [
    'Under water {sinks} must be held up: {peopleSink} for people, {gearSinks} for gear, {motorSinks} for the motor and {partsSink} for what is built in. Buy {toBuy} of foam, {sheets} {sheets?sheet:sheets}.',
    {
      when: 'aheadBy < 50 mm',
      says: 'The foam’s middle lies under theirs, and she floats level fore and aft.',
      otherwise: {
        when: 'ahead < 0 mm',
        says: 'Their middle lies {aheadBy} abaft the foam’s: her stern floats lower.',
        otherwise: 'Their middle lies {aheadBy} ahead of the foam’s: her bow floats lower.',
      },
    },
    'She holds up {hands} {hands?person who hangs:people who hang} on, or {sitting} who {sitting?sits:sit} in her.',
  ],
  table: tableOf({
    caption: 'Foam by the bays, forward of each station, both sides',
    over: 'bay',
    only: 'bayThere',
    columns: [
      { of: 'bayRoom', label: 'room' },
      { of: 'bayFoam', label: 'foam' },
    ],
  }),
  warnings: [
    {
      when: 'lacks > 0 m^3',
      says: 'The bays have room for {room}: {lacks} of foam finds no place.',
      limit: 'geometry of the hull, and the share of room that you let foam fill',
      weight: 'stop',
    },
    {
      when: 'fitted < foam',
      says: 'She gets {fitted} of foam, and the rule asks for {foam}.',
      limit: '33 CFR 183.105, 183.220 and 183.320',
      weight: 'stop',
    },
    {
      when: 'aim == "level" and where == "under"',
      says: 'Foam low down under the thwarts holds her up, and lets her roll over once she is swamped: level flotation wants it high, against the sides.',
      limit: 'Coast Guard, Boatbuilder’s Handbook, chapter on flotation',
      weight: 'mind',
    },
    {
      when: 'aim == "level" and lacks <= 0 m^3 and aheadBy > long / 10',
      says: [
        'What hangs on the foam has its middle {aheadBy}',
        { when: 'ahead < 0 mm', says: 'abaft', otherwise: 'ahead of' },
        'the foam’s: one end may go under. Make room for more foam at that end.',
      ],
      limit: 'a tenth of her length; common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'A swamped boat is no place to sail home in: it keeps people beside something that floats. Jackets on, stay with her, and ask the law of the place what must be aboard.',
    'A yardstick: the rule swamps her for 18 hours and measures. With iron for people and gear she may heel 10°, her lower end 6 in (152 mm) under and the other out; with half of the people on one side 30° and 12 in (305 mm). Try it in shallow water.',
    'Foam poured in place gives off isocyanate: the maker’s sheet says which mask and how much air. Sheet foam is cut, not sanded.',
    'Foam in the bilge, or near fuel, must stand petrol, oil and water by the rule, or it is gone when it is needed: ask for its sheet.',
    'Fix it to the boat, not under loose boards: each block pulls upward with nearly its volume in water. Leave a way for air and drain water, or frames rot behind it.',
    'How far she heels is not worked out here: a wooden hull full of water lies as her wood, her foam and her people have it.',
  ],
  sources: [
    {
      text: '33 CFR 183.105, .220 to .235 and .320 to .335, annual edition 2015: what people and gear weigh in water, and the tests',
      known: 'published',
    },
    {
      text: 'Coast Guard, Boatbuilder’s Handbook, chapter on flotation: steps, and where foam goes',
      known: 'published',
    },
    {
      text: 'Motors in water, since June 2018: ABYC S-30 Table 1A, as a builders’ page reproduces it',
      known: 'published',
    },
    { text: 'What a thing weighs in water: Archimedes’ principle', known: 'geometry' },
    {
      text: 'No lift counted for wood, its density when wet, share of a bay filled, offcuts: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['{bay}'],
  draw: drawFlotation,
});
