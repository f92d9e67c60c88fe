/** Batch: how long a pot of epoxy lasts in this warmth, how much may be mixed at once, how many pots and hands it takes. */
import { drawing, mm, note } from '../../drawing';
import { isIssue } from '../../measure';
import { deepestPour } from '../../trade/fillers';
import { hotFrom, leastStirring, mostInCup, potful, slowBelow, warmedTo } from '../../trade/pots';
import { citation } from '../../trade/table';
import { defineCell } from '../form/define';
import { firstOf } from '../form/in-words';
import { potWithMix } from './batch-drawing';
import { batchInputs } from './batch-inputs';
import { batchSteps } from './batch-steps';
import { coatTables } from './coat-tables';

const SHEET = 'common practice; the maker’s sheet rules';
/** From cold enough that a pot lasts for hours to the warmest that resin is laid up. */
const SWEPT = Array.from({ length: 26 }, (_, i) => 283.15 + i);

export const batch = defineCell({
  id: 'batch',
  stage: 'finish',
  title: 'Batches of epoxy',
  question:
    'How long does a pot of epoxy last in this warmth, how much do I mix at once, and how many times?',
  inputs: batchInputs,
  groups: {
    'The label': ['labelLife', 'labelAt', 'hardenerPer100', 'epoxyDensity', 'energy'],
    'The pot': ['most', 'cupWidth', 'trayLength', 'trayWidth', 'measures'],
    'How fast you work': ['pace', 'takes', 'perMetre', 'goodFor', 'mixing', 'within'],
  },
  steps: batchSteps,
  answers: [
    {
      of: 'potLife',
      label: 'pot life',
      from: 'of the label’s 100 g (3 1/2 oz), from when the two are mixed',
    },
    {
      of: 'largest',
      label: 'at most in one batch',
      from: 'resin and hardener together, for one pair of hands',
    },
    { of: 'batches', label: 'batches', from: 'all alike, for the whole of this work' },
  ],
  inWords: {
    when: 'batches > 0',
    says: [
      {
        when: 'batches > 1',
        says: 'Mix {batches} batches of {batch}:',
        otherwise: 'Mix one batch of {batch}:',
      },
      '{resin} of resin and {hardenerMass} of hardener',
      { when: 'batches > 1', says: 'into each.', otherwise: '.' },
      'Each is good for {workable};',
      firstOf(
        [
          { when: 'spread < most', says: 'one pair of hands spreads no more in that time.' },
          { when: 'pot == "cup"', says: 'more in a cup would heat itself.' },
        ],
        'more at once would heat itself.',
      ),
      {
        when: 'hands > 1',
        says: 'To be done within {within} it takes {hands} pairs of hands, each with a pot of its own.',
        otherwise: 'One pair of hands is done in {alone}.',
      },
    ],
    otherwise: 'There is nothing to spread.',
  },
  warnings: [
    {
      when: 'mixing >= workable',
      says: 'It is good for {workable}, and you weigh and stir for {mixing}: it goes off before it is spread. Take a slower hardener, or cooler resin.',
      limit: `six tenths of the pot life; ${SHEET}`,
      weight: 'stop',
    },
    {
      when: `pot == "cup" and most > ${mostInCup.value} kg`,
      says: 'With {most} in a cup it heats itself: pour it out into a wide tray at once, or mix less.',
      limit: citation(mostInCup),
      weight: 'stop',
    },
    {
      when: 'pot == "tray" and most > trayful',
      says: 'In this warmth {trayful} is the most that is mixed for a tray: it heats while you pour.',
      limit: `${citation(potful.tray)}; ${potful.hotTray.source}`,
      weight: 'stop',
    },
    {
      when: `pot == "tray" and depth > ${deepestPour.value} m`,
      says: 'In this tray the mix stands {depth} deep, and that is a pot again: take a wider tray.',
      limit: citation(deepestPour),
      weight: 'stop',
    },
    {
      when: `(hardener == "fast" or air > ${hotFrom.value} K) and pot == "cup" and most > cupful and most <= ${mostInCup.value} kg`,
      says: 'Of a fast hardener, or in such heat, {cupful} is the most for a cup.',
      limit: citation(potful.hotCup),
      weight: 'stop',
    },
    {
      when: `air < ${slowBelow.value} K`,
      says: 'At {air} resin is stiff, and thin coats may stay soft for days: warm the resin and the wood.',
      limit: citation(slowBelow),
      weight: 'mind',
    },
    {
      when: `air > ${warmedTo.value} K`,
      says: 'At {air} resin is too warm to be laid up by hand.',
      limit: citation(warmedTo),
      weight: 'stop',
    },
    {
      when: `mixing < ${leastStirring.value} s`,
      says: 'In {mixing} nobody has scraped sides and bottom into the mix: unmixed epoxy never cures.',
      limit: citation(leastStirring),
      weight: 'stop',
    },
  ],
  cautions: [
    'Resin and hardener sensitise for life: nitrile gloves, changed often, sleeves, eye protection and fresh air; never solvent on the skin.',
    '100 g (3 1/2 oz) left in a cup can reach 204 °C (400 °F), and 4 L (1 gal) mixed at once can be solid in five minutes. Carry a hot pot outdoors, away from the fumes, and not to the bin.',
    'Hardener spilled on sawdust can catch fire by itself: keep the mixing bench clear of both.',
    'Never alter the ratio to hasten or slow the cure. Label and sheet of the epoxy in hand outrank this cell; the label’s pot life is of its own mass in its own cup, and a larger mass is gone sooner.',
  ],
  sources: [
    {
      text: 'Epoxy makers’ sheets: pot life doubles for each 10 K colder and halves for each 10 K warmer; it is mostly told of 100 g (3 1/2 oz)',
      known: 'published',
    },
    {
      text: 'An epoxy maker on uncontrolled cure: 100 g (3 1/2 oz) can reach 400 °F (204 °C); pour into a shallow tray; hardener on sawdust',
      known: 'published',
    },
    {
      text: 'M. Barnard, “Controlling Exotherm”: 4 L (1 gal) at once, solid in about 5 min',
      known: 'published',
    },
    {
      text: 'An aircraft-kit maker’s manual, on resin: viscosity and working time by warmth',
      known: 'published',
    },
    {
      text: 'Pot life by hardener, most in a pot, pace of spreading, six tenths of the pot life: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['bottom', 'bilge', 'side'],
  brings: coatTables,
  draw: (v, on) => {
    const tray = v.pot === 'tray';
    const width = tray ? v.trayLength : v.cupWidth;
    const depth = on.say(v.depth, 'length');
    return drawing({
      title: `One batch in ${tray ? 'the tray' : 'the cup'}, in section`,
      says: `${on.say(v.batch, 'mass')} of mixed epoxy stand ${depth} deep in ${tray ? 'a tray' : 'a cup'} ${on.say(width, 'length')} wide.`,
      shapes: [
        potWithMix(
          { kind: tray ? 'tray' : 'cup', width: mm(width), depth: mm(v.depth) },
          {
            width: on.say(width, 'length'),
            depth: `${depth} deep`,
            holds: `${on.say(v.batch, 'mass')}, ${on.say(v.volume, 'volume')}`,
          },
        ),
        note(
          tray
            ? 'Poured out at once, it keeps cool.'
            : 'The cup is round. The deeper the mix stands, the faster it heats.',
        ),
      ],
    });
  },
  chart: (v, on) => {
    const swept = SWEPT.flatMap((air) => {
      const one = on.with({ air });
      return isIssue(one) ? [] : [one];
    });
    const say = (kg: number) => on.say(kg, 'mass', { bound: 'most' });
    return {
      title: 'Largest batch by the warmth of the resin',
      says: `In cool resin the pot sets the limit, in warm resin the time to spread it. At ${on.say(v.air, 'temperature')} a pot lasts ${on.say(v.potLife, 'minutes', { bound: 'most' })}, and a batch is ${say(v.largest)}.`,
      x: { label: 'Warmth of the resin', kind: 'temperature' },
      y: { label: 'Largest batch', kind: 'mass', from: 0 },
      lines: [
        { name: 'largest batch', points: swept.map((one) => [one.air, one.largest] as const), as: 'line' },
      ],
      points: [{ x: v.air, y: v.largest, label: 'now' }],
    };
  },
});
