/** Stability: what rights her at any heel, where water comes in, and what people to one side and loose water do. */
import { defineCell } from '../form/define';
import { firstOf } from '../form/in-words';
import { tableOf } from '../form/row-quantities';
import { drawStability, leverChart } from './stability-drawing';
import { heelRows } from './stability-facts';
import { stabilityInputs } from './stability-inputs';
import { stabilitySteps } from './stability-steps';

export const stability = defineCell({
  id: 'stability',
  stage: 'afloat',
  title: 'Stability',
  question: 'What rights her when she heels, and how far does she go with everybody on one side?',
  inputs: stabilityInputs,
  groups: {
    'The people and the rules': ['person', 'usPerson', 'breadth'],
    'Deck and cockpit': ['deckLength', 'cockpit', 'sideDeck', 'coaming'],
    'Loose water in the bilge': ['looseLength', 'looseBreadth', 'looseParts'],
    'Full of water': ['swampedLift', 'swampedHands', 'swampedHeel', 'swampedTrim'],
    'All aboard': ['mass', 'centreForward', 'centreHeight', 'density'],
  },
  steps: stabilitySteps,
  answers: [
    {
      of: 'rightingLever',
      label: 'righting lever',
      from: 'level, from her weight to the water’s push, at the heel looked at',
    },
    { of: 'peopleHeel', label: 'heel, people to one side', from: 'from upright, in flat water' },
    {
      of: 'peopleFreeboard',
      label: 'least freeboard then',
      from: 'plumb, from the water up to the sheer where it is nearest',
    },
  ],
  inWords: firstOf(
    [
      {
        when: 'floats == 0',
        says: 'With this load she finds no rest on the water: she is drawn held level.',
      },
    ],
    [
      {
        when: 'swamps < 89.9°',
        says: 'Water comes in at a heel of {swamps};',
        otherwise: 'Up to 90° of heel no water comes in;',
      },
      'her metacentric height is {metacentricHeight}, less {looseLost} for loose water.',
      firstOf(
        [
          { when: 'peopleHeel > 90°', says: 'So many on one side turn her over.' },
          { when: 'peopleFreeboard <= 0 mm', says: 'So many on one side put her sheer under: she fills.' },
        ],
        '{people} {people?person:people} to one side heel her {peopleHeel}, and {peopleFreeboard} of side is left.',
      ),
      // Else two heels stand side by side, and nothing says which to believe.
      {
        when: 'people > 0 and abs(peopleHeel - usHeel) > 1°',
        says: 'They all sit {aside} off the middle here; the US rule spreads them over the deck and counts each {usAside} off: {usHeel}.',
      },
      // Beyond them a warning says so.
      {
        when: 'usMeets == 1',
        says: 'She stays within the US rule for small passenger vessels, people alone counted: {usHeel} of 14°, {usSinks} of {usMay} put under.',
      },
      {
        when: 'ukMeets == 1',
        says: 'She stays within the UK code for small commercial vessels: {ukHeel} of 7°.',
      },
      firstOf(
        [
          { when: 'swampedFloats == 0', says: 'Full of water she has no lift left for anyone.' },
          { when: 'swampedHands < 1', says: 'Full of water she floats, with nobody hanging on.' },
        ],
        [
          'Full of water she holds up {swampedHands} {swampedHands?person:people};',
          {
            when: 'swampedOver == 1',
            says: 'with yours she turns over.',
            otherwise: [
              {
                when: 'swampedHeel < 1°',
                says: 'with yours she lies upright,',
                otherwise: 'with yours she lies over by {swampedHeel},',
              },
              firstOf(
                [
                  { when: 'swampedTilt < 1°', says: 'level fore and aft.' },
                  { when: 'swampedTrim > 0°', says: 'bow {swampedTilt} down.' },
                ],
                'stern {swampedTilt} down.',
              ),
            ],
          },
        ],
      ),
    ],
  ),
  table: tableOf({
    caption: 'By heel, closed up to her sheer',
    over: 'heel',
    rows: heelRows,
    columns: [
      { of: 'rightingLever', label: 'righting lever' },
      { of: 'wallLever', label: 'wall-sided formula' },
      { of: 'rightingMoment', label: 'what rights her' },
      { of: 'trim', label: 'trim' },
      { of: 'leftAtHeel', label: 'least freeboard' },
    ],
  }),
  warnings: [
    {
      when: 'floats == 0',
      says: 'With {mass} aboard, its centre {centreForward} forward, she sinks or stands on end: look at her draught and trim first.',
      limit: 'balance of weight and buoyancy',
      weight: 'stop',
    },
    {
      when: 'floats == 1 and looseLeft <= 0 mm',
      says: {
        when: 'metacentricHeight <= 0 mm',
        says: 'Her metacentric height is {metacentricHeight}: upright she won’t stay. Bring the weight down.',
        otherwise:
          'Loose water takes {looseLost} of metacentric height, and she has {metacentricHeight}: she lies over. Bail before anything else.',
      },
      limit: 'balance of weight and buoyancy, and the free surface of the water in her',
      weight: 'stop',
    },
    {
      when: 'floats == 1 and peopleFreeboard <= 0 mm',
      says: 'With these people to one side the water stands over the sheer: she fills.',
      limit: 'the sheer of this hull',
      weight: 'stop',
    },
    {
      when: 'peopleMass > mass',
      says: 'These people weigh {peopleMass}, and all aboard only {mass}: count them in.',
      limit: 'what all aboard weigh',
      weight: 'stop',
    },
    {
      when: 'floats == 1 and (usHeel > 14° or usSinks > usMay)',
      says: 'By the US rule people to one side heel her {usHeel} and put {usSinks} of side under: it allows 14° and {usMay}.',
      limit: 'US rule for small passenger vessels, 46 CFR 178.330, edition of 2015; its wind is not counted',
      weight: 'mind',
    },
    {
      when: 'floats == 1 and ukHeel > 7°',
      says: 'By the UK code people to one side heel her {ukHeel}: it allows 7°.',
      limit:
        'UK code for small commercial vessels, 11.4.1, from memory; up to 10° where enough freeboard is left',
      weight: 'mind',
    },
    {
      when: 'floats == 1 and deck != "open" and ukFreeboard < 75 mm',
      says: 'By the UK code a decked boat keeps 75 mm (3 in) of freeboard then, and she has {ukFreeboard}.',
      limit: 'UK code for small commercial vessels, 11.4.1, from memory',
      weight: 'mind',
    },
    {
      when: 'swampedShort > 0',
      says: 'Full of water she holds up {swampedHands} {swampedHands?person:people} hanging on: for {swampedShort} more there is nothing but a jacket.',
      limit: 'foam and wood against 2/15 of each person’s weight, the share of 33 CFR 183.105',
      weight: 'mind',
    },
  ],
  cautions: [
    'Flat water, no wind, people who keep still: nothing here says what waves, wind, a tow or a jump do to her. Whoever carries others for pay, or has doubts, asks a licensed naval architect; local law comes first.',
    'Both rules were written for other boats, with trials and parts that are not reckoned here: of the US rule its wind, and the height that it sets its people at, 30 in (762 mm) above the deck. They are yardsticks, and pass no boat.',
    'Beyond the heel at which water comes in the curve is of a hull that stays closed. An open boat fills there, and her lever is gone.',
    'Full of water: whether she stays upright, and how far she rolls when hands pull at one side, the flotation works out for flat water and a hull that hides no air. Swamp her in shallow water and see.',
    'All aboard but the people who move is taken on the centreline, and nothing shifts. Cut-outs of the transom are not seen: water comes in there first.',
  ],
  sources: [
    {
      text: 'Righting lever with free trim: K. J. Rawson and E. C. Tupper, Basic Ship Theory, chapter 4',
      known: 'from memory',
    },
    {
      text: 'Wall-sided formula, free surface, list by a shifted weight: D. R. Derrett, Ship Stability for Masters and Mates',
      known: 'from memory',
    },
    { text: 'People to one side: 46 CFR 178.330 and 170.090, edition of 2015', known: 'published' },
    {
      text: 'UK code for small commercial vessels, 11.4.1: 7°, and 75 mm (3 in) where decked',
      known: 'from memory',
    },
    { text: 'Where people sit: custom of the trade', known: 'common practice' },
  ],
  about: ['sheer'],
  lies: 'heel',
  draw: drawStability,
  chart: leverChart,
});
