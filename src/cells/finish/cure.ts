/** Cure: every coat from now on over the days, with the nights: when the next goes on, is sanded, painted, turned over. */
import { defineCell } from '../form/define';
import { tableOf } from '../form/row-quantities';
import { cureInputs } from './cure-inputs';
import { cureSteps } from './cure-steps';
import { coatTables } from './coat-tables';
import { coatsOverDays } from './cure-drawing';
import { jobList } from './cure-facts';
import { HOUR, warmthAt } from './cure-clock';

export const cure = defineCell({
  id: 'cure',
  stage: 'finish',
  title: 'Coats over the days',
  question: 'When does each coat go on, when is it sanded, and when can I paint and turn her over?',
  inputs: cureInputs,
  groups: {
    'Day and night': ['told', 'dayFrom', 'dayTo'],
    'The epoxy': ['hardener', 'tackFree', 'window', 'sandable', 'cured', 'factor', 'stops', 'fillSlipCoat'],
    'The coats': ['fillCoats', 'primerCoats', 'paint', 'paintCoats', 'job'],
    'The paint': [
      'paintAfter',
      'primerRecoat',
      'recoat',
      'hard',
      'leastDry',
      'primerSlipCoat',
      'paintSlipCoat',
    ],
    'Your hours': ['when', 'workFrom', 'workLasts', 'coatTime', 'sandTime'],
    'What slips': ['sealSlip', 'clothSlip', 'fillSlip', 'sandSlip', 'primerSlip', 'paintSlip'],
  },
  steps: cureSteps,
  answers: [
    { of: 'recoatFrom', label: 'next coat from', from: 'when the coat is tack-free', when: 'epoxied > 0' },
    {
      of: 'recoatUntil',
      label: 'and unsanded until',
      from: 'after that wash, dry and sand first',
      when: 'epoxied > 0',
    },
    { of: 'lastCoat', label: 'last coat goes on', from: 'with the hours that slip, if no more do' },
  ],
  inWords: [
    'Job {job}, {name}, begins at {begins}.',
    {
      when: 'epoxied > 0',
      says: 'The next coat goes on from {recoatFrom}, and unsanded until {recoatUntil}; after that wash and sand first, from {sandFrom}.',
    },
    {
      when: 'next == "seal" or next == "cloth"',
      says: 'Trim the cloth with a knife from {trimFrom}, while it still cuts.',
    },
    {
      when: 'primerCoats + paintCoats > 0',
      says: 'The first paint goes on at {paintFrom}, the last at {lastCoat}.',
    },
    'Turn her over from {turnFrom}.',
  ],
  table: tableOf({
    caption: 'The jobs, one after another',
    over: 'job',
    rows: jobList,
    columns: [
      { of: 'begins', label: 'begins' },
      { of: 'how', label: 'how' },
      { of: 'recoatFrom', label: 'tack-free', where: 'epoxied' },
      { of: 'recoatUntil', label: 'unsanded until', where: 'epoxied' },
      { of: 'sandFrom', label: 'sand, or coat sanded, from', where: 'coated' },
    ],
  }),
  warnings: [
    {
      when: 'missed > 0',
      says: 'Coats that come too late for the one below: {missed}. There wash, dry and sand first.',
      limit: 'the recoat window of the hardener; its sheet rules',
      weight: 'mind',
    },
    {
      when: 'max(air, cold) >= stops and min(air, cold) < stops',
      says: 'For {coldHours} of each day it is colder than {stops}: there this epoxy may stand still, and these hours are not counted.',
      limit: 'least temperature of the hardener; its sheet rules',
      weight: 'mind',
    },
    {
      when: 'max(air, cold) < stops',
      says: 'By day {air}, by night {cold}: it never gets as warm as this epoxy asks, {stops}: warm the shed, or take a hardener for the cold.',
      limit: 'least temperature of the hardener; its sheet rules',
      weight: 'stop',
    },
    {
      when: 'cold >= stops and cold < 15 °C',
      says: 'At {cold} by night a thin coat may stay soft for days, longer than the rule has it.',
      limit: 'below 15 °C (59 °F), an aircraft-kit maker’s manual',
      weight: 'mind',
    },
    {
      when: 'air > 35 °C',
      says: 'At {air} the rule no longer holds, and the pot heats itself.',
      limit: 'to 35 °C (95 °F), an aircraft-kit maker’s manual',
      weight: 'mind',
    },
    {
      when: 'coatTime > workLasts',
      says: 'A coat takes {coatTime}, longer than your {workLasts}: it runs on past your hours, and is planned so.',
      limit: 'your hours as typed',
      weight: 'mind',
    },
    {
      when: 'cold > air',
      says: 'By night it is said to be warmer, {cold}, than by day, {air}: is that so?',
      limit: 'as typed',
      weight: 'mind',
    },
    {
      when: 'primerCoats + paintCoats > 0 and paintAfter < 3 d',
      says: 'Paint on epoxy only {paintAfter} old may stay soft.',
      limit: 'three to seven days; common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'Never sand epoxy that has not cured overnight at least: its dust makes skin and lungs allergic for life. Wear a P100 or FFP3 mask, gloves and sleeves.',
    'The sheets of hardener and paint outrank every time here. Thin films answer less to warmth than cups do: press a thumbnail into the coat, and believe that.',
    'Cool, damp air and stoves without a flue leave a greasy film on epoxy. Wash it off with water and a rough pad and dry with towels before you sand; solvent only spreads it.',
    'Coat bare wood while it cools: wood that warms up blows bubbles into the coat.',
    'Turn her over with enough hands: paint that is hard to the touch still takes the print of a strap for days.',
  ],
  sources: [
    {
      text: 'Epoxy makers’ sheets: cure twice as quick for each 10 K warmer; hours summed at that rate through the day',
      known: 'published',
    },
    {
      text: 'A supplier’s answer: in thin films only 1.3 times as quick; a supplier of floor coatings: recoat after 8 to 24 h',
      known: 'published',
    },
    {
      text: 'An aircraft-kit maker’s manual: below 15 °C (59 °F) thin laminates stay uncured for days',
      known: 'published',
    },
    {
      text: 'Times of hardeners and paints, days before paint, paint dries by the hour and not by the rule: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['bottom', 'bilge', 'side', 'transom', 'bowTransom'],
  brings: coatTables,
  draw: coatsOverDays,
  chart: (v, on) => ({
    title: 'Warmth through a day',
    says: `The air goes from ${on.say(v.cold, 'temperature')} to ${on.say(v.air, 'temperature')}; the epoxy cures from ${on.say(v.stops, 'temperature', { bound: 'least' })} up.`,
    x: { label: 'Time of day', kind: 'time', from: 0, to: 24 * HOUR },
    y: { label: 'Air', kind: 'temperature' },
    lines: [
      {
        name: 'air',
        points: Array.from({ length: 97 }, (_, i): [number, number] => [
          i * (HOUR / 4),
          warmthAt(
            { told: v.told, warm: v.air, cold: v.cold, dayFrom: v.dayFrom, dayTo: v.dayTo },
            i * (HOUR / 4),
          ),
        ]),
        as: v.told === 'steady' ? 'steps' : 'line',
      },
    ],
    limits: [{ at: v.stops, axis: 'y', label: 'coldest it cures' }],
  }),
});
