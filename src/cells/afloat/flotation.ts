/** Flotation: foam to buy so that she floats when she is full of water, where it goes, and how she lies with it. */
import { defineCell } from '../form/define';
import { firstOf } from '../form/in-words';
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
    'Where it goes': ['bay', 'where', 'below', 'stripDown', 'thick', 'seat', 'fills'],
    'The foam': ['fitted', 'foamDensity', 'soak', 'waste', 'sheetLong', 'sheetWide', 'sheetThick'],
    'People and motor': ['hanging', 'person', 'peopleForward', 'motorForward', 'motorHeight', 'hullForward'],
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
    'She holds up {hands} {hands?person who hangs:people who hang} on, or {sitting} who {sitting?sits:sit} in her.',
    firstOf(
      [
        { when: 'lying == "none"', says: 'Full of water, with nobody aboard,' },
        { when: 'lying == "middle"', says: 'Full of water, with people and gear in the middle,' },
        { when: 'lying == "side"', says: 'Full of water, with half of the people to one side,' },
        { when: 'lying == "round"', says: 'Full of water, with {hang} in it all round her,' },
      ],
      'Full of water, with {hang} in it on one side,',
    ),
    firstOf(
      [
        { when: 'swampedLies == 0', says: 'she goes down.' },
        { when: 'swampedLies == 2', says: 'she stands on end.' },
      ],
      [
        firstOf(
          [
            { when: 'swampedHeel > 90°', says: 'she turns her keel up,' },
            { when: 'swampedHeel < 1°', says: 'she lies upright,' },
          ],
          'she lies over by {swampedHeel},',
        ),
        firstOf(
          [
            { when: 'swampedTilt < 1°', says: 'level fore and aft,' },
            { when: 'swampedTrim > 0°', says: 'her bow {swampedTilt} down,' },
          ],
          'her stern {swampedTilt} down,',
        ),
        {
          when: 'swampedLow < 0 mm',
          says: 'her sheer {swampedBy} under water where it is lowest.',
          otherwise: 'her sheer {swampedBy} out of the water where it is lowest.',
        },
        'Her metacentric height is {swampedStiff} then. With her wood counted, {dryHands} in the water can hold on before her sheer goes under.',
      ],
    ),
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
      when: 'swampedLies != 1',
      says: {
        when: 'swampedLies == 0',
        says: 'Full of water, so laden, she goes down, her wood’s lift counted.',
        otherwise:
          'Full of water, so laden, she stands on end: make room for more foam there, and spread it along her.',
      },
      limit: 'balance of weight and buoyancy',
      weight: 'stop',
    },
    {
      when: 'swampedLies == 1 and swampedStiff <= 0 mm',
      says: 'Full of water she won’t stay upright: her metacentric height is {swampedStiff}. Foam high up, against the sides, keeps her so.',
      limit: 'balance of weight and buoyancy',
      weight: 'stop',
    },
    {
      when: 'aim == "level" and swampedLies == 1 and noneMeets * middleMeets * sideMeets == 0',
      says: [
        'By the tests of the US rule',
        {
          when: 'noneMeets == 0',
          says: 'with nobody aboard she heels {noneHeel}, her lower end {noneUnder} under (at most 10° and 6 in, 152 mm);',
        },
        {
          when: 'middleMeets == 0',
          says: 'with people and gear in the middle she heels {middleHeel}, her lower end {middleUnder} under (at most 10° and 6 in, 152 mm);',
        },
        {
          when: 'sideMeets == 0',
          says: 'with half of the people to one side she heels {sideHeel}, her lower end {sideUnder} under (at most 30° and 12 in, 305 mm);',
        },
        'and the other end is to be out.',
      ],
      limit: '33 CFR 183.225 to 183.235 and 183.325 to 183.335',
      weight: 'mind',
    },
  ],
  cautions: [
    'A swamped boat is no place to sail home in: it keeps people beside something that floats. Jackets on, stay with her, and ask the law of the place what must be aboard.',
    'A yardstick: the rule swamps her for 18 hours and measures. With iron for people and gear she may heel 10°, her lower end 6 in (152 mm) under and the other out; with half of the people on one side 30° and 12 in (305 mm). Try it in shallow water.',
    'Foam poured in place gives off isocyanate: the maker’s sheet says which mask and how much air. Sheet foam is cut, not sanded.',
    'Foam in the bilge, or near fuel, must stand petrol, oil and water by the rule, or it is gone when it is needed: ask for its sheet.',
    'Fix it to the boat, not under loose boards: each block pulls upward with nearly its volume in water. Leave a way for air and drain water, or frames rot behind it.',
    'How she lies counts her wood in full, at its wet density, and the people only as the rule has them; the foam to buy and the people held up count of it what you say. Seats, decks and boxes that hold air or water back are not seen, nor waves.',
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
