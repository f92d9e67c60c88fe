/** Sanding: which grit when, how many discs, belts or sheets, how much dust, and which mask. */
import { grits, masks } from '../../trade/grits';
import { citation } from '../../trade/table';
import { defineCell } from '../form/define';
import { tableOf } from '../form/row-quantities';
import { sandInputs } from './sand-inputs';
import { gradesOf, gritRows, sandFunctions, sandSteps } from './sand-steps';

export const sand = defineCell({
  id: 'sand',
  stage: 'finish',
  title: 'Sanding',
  question: 'Which grit comes when, how much paper do I need, and which mask against the dust?',
  inputs: sandInputs,
  groups: {
    'The paper': ['reach', 'marked', 'grit'],
    'The dust': ['takenOff', 'density', 'bulk', 'escapes', 'lasts', 'room', 'changes'],
  },
  functions: sandFunctions,
  steps: sandSteps,
  answers: [
    {
      of: 'sequence',
      label: 'grits, in this order',
      from: 'each until the scratches of the one before are gone',
    },
    { of: 'pieces', label: 'pieces of paper', from: 'of all grits together, as many of each' },
    { of: 'dust', label: 'dust', from: 'off the face; in the bag, in the air and on the floor' },
  ],
  inWords: [
    'Sand {face} with {grits?grit:grits} {sequence}: {perGrit} {perGrit?piece:pieces} of each, {pieces} in all.',
    'That makes {dust} of dust, {heap} as it lies.',
    {
      when: `over <= ${masks.disposable.value}`,
      says: 'Wear a P100 or FFP3 mask from the first stroke on',
      otherwise: 'Wear a full-face mask with P100 or P3 filters from the first stroke on',
    },
    ', and for {clears} after the last.',
  ],
  table: tableOf({
    caption: 'The grits, one after another',
    over: 'grit',
    rows: gritRows,
    columns: [
      { of: 'grain', label: 'grain' },
      { of: 'perGrit', label: 'pieces' },
    ],
  }),
  warnings: [
    {
      when: 'state == "soft"',
      says: 'Leave it: soft or greasy epoxy fills the paper, and its dust is what makes allergic. Wash it, dry it, and sand when it has cured overnight.',
      limit: 'makers’ sheets; common practice',
      weight: 'stop',
    },
    {
      when: `over > ${masks.fullFace.value}`,
      says: 'The air would hold {over} times the dust allowed, more than a full-face mask keeps out: take a vacuum, a stronger fan, or go outdoors.',
      limit: citation(masks.fullFace),
      weight: 'stop',
    },
    {
      when: `over > ${masks.disposable.value} and over <= ${masks.fullFace.value}`,
      says: 'The air would hold {over} times the dust allowed: a mask that covers nose and mouth alone is not enough.',
      limit: citation(masks.disposable),
      weight: 'mind',
    },
    {
      when: 'work == "wood" and sander == "belt"',
      says: 'A belt is through the face veneer of plywood in a moment: sand it by hand, or with a disc held flat.',
      limit: 'face veneers of 0.5 to 1.5 mm (0.02 to 0.06 in); common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'Dust of wood, epoxy and glass goes deep into the lungs, and wood dust can cause cancer: a P100 or FFP3 mask on a shaved face, a vacuum on the sander, gloves and sleeves against the itch.',
    'Sand no epoxy that has not cured overnight: its dust makes allergic for life.',
    'A sander makes 85 to 95 dB: wear ear muffs. Sand wet only through a residual-current breaker (GFCI or RCD), and never sand antifouling dry.',
    'Stop where the weave of the cloth shows, and give it another fill coat. Cut glass is lost strength, and its dust is worse.',
    'Empty the bag outdoors at the end of the day: dust with oil or hardener in it heats itself.',
    'The sheets of paint, epoxy and mask outrank this cell; where people are employed, so does the law.',
  ],
  sources: [
    {
      text: `Grains: ${citation(grits.rows[0]!.cells.fepa!)}, after FEPA and CAMI`,
      known: 'published',
    },
    {
      text: 'NIOSH and ACGIH on wood dust and fibrous glass; IARC, monographs 62 and 100C, on wood dust; MMWR 28 October 1994, table S3-1, on changing the air; UK guidance and NIOSH on masks',
      known: 'published',
    },
    {
      text: 'Which grit when, pieces of paper to a face, what a grit takes off, what escapes: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['bottom', 'bilge', 'side', 'transom', 'bowTransom'],
  chart: (_, on) => {
    const grades = on.ask(gradesOf);
    return {
      title: 'Grains of the grits in use',
      says: `${grades.flatMap(({ grit, grain, isUsed }) => (isUsed ? [`${grit} grit has grains of ${on.say(grain, 'film')}`] : [])).join(', ')}.`,
      x: { label: 'Grit', kind: 'count' },
      y: { label: 'Grain', kind: 'film', from: 0 },
      lines: [{ name: 'grain', points: grades.map(({ grit, grain }) => [grit, grain] as const), as: 'line' }],
      points: grades.flatMap(({ grit, grain, isUsed }) =>
        isUsed ? [{ x: grit, y: grain, label: `${grit} grit` }] : [],
      ),
    };
  },
});
