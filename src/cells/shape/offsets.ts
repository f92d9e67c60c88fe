/** The table of offsets: typed and pasted in the page's own grid, measured and held against the plan here. */
import { defineCell } from '../form/define';
import { firstOf, words } from '../form/in-words';
import { tableOf } from '../form/row-quantities';
import { drawOffsets } from './offsets-drawing';
import { offsetsInputs, offsetsSteps } from './offsets-steps';

const LOOKED_INTO = 'the difference to be looked into, as typed among the inputs; common practice, no source';

const MISSING = {
  when: 'missing == 1',
  says: 'One number is',
  otherwise: '{missing} numbers {missing?is:are}',
};
const THEM = { when: 'missing == 1', says: 'it', otherwise: 'them' };

export const offsets = defineCell({
  id: 'offsets',
  stage: 'shape',
  title: 'Table of offsets',
  question: 'Are these the plan’s numbers, and what boat do they make?',
  view: 'offsets',
  inputs: offsetsInputs,
  steps: offsetsSteps,
  answers: [
    {
      of: 'length',
      label: 'length over all',
      from: 'between the extreme points of all edges, raked ends included',
    },
    {
      of: 'beam',
      label: 'greatest breadth',
      from: 'over both sides, on the face of the skin that the table is to',
    },
    { of: 'depth', label: 'depth', from: 'from the keel up to the sheer, at the widest station' },
  ],
  inWords: firstOf(
    [
      {
        when: 'missing > 0',
        says: [
          words`${MISSING} still missing or can’t be read; what depends on ${THEM} waits.`,
          { when: 'faults > 0', says: 'Other faults: {faults}, each told below.' },
        ],
      },
      {
        when: 'faults > 0',
        says: [
          'Every number is there, but the table has',
          { when: 'faults == 1', says: 'a fault. It is', otherwise: '{faults} faults. Each is' },
          'told below, and marked in its box where it has one.',
        ],
      },
    ],
    '{stations} stations and {edges} edges make a hull {length} long, {beam} wide and {depth} deep. From the after corner of the sheer across to its fore end a tape on the floor reads {diagonal}. At {station} the {edge} stands {halfBreadth} out from the centreline and {height} above the base line.',
  ),
  table: tableOf({
    caption: 'What the numbers make at each station',
    over: 'station',
    columns: [
      { of: 'forward', label: 'forward' },
      { of: 'halfBreadth', label: 'half-breadth' },
      { of: 'height', label: 'height' },
      { of: 'deadrise', label: 'deadrise, section', where: 'across' },
      { of: 'flare', label: 'flare, section' },
    ],
  }),
  warnings: [
    {
      when: 'abs(lengthOff) > within',
      says: 'The plan says {planLength} over all, the table makes {length}: look for a number lost or misread before anything is cut.',
      limit: LOOKED_INTO,
      weight: 'mind',
    },
    {
      when: 'abs(beamOff) > within',
      says: 'The plan says {planBeam} of breadth, the table makes {beam}: is the table to the other face of the skin, or a half-breadth misread?',
      limit: LOOKED_INTO,
      weight: 'mind',
    },
    {
      when: 'leansMost > 1 mm',
      says: '{leaning} {leaning?frame leans, its edges:frames lean, their edges} up to {leansMost} apart fore and aft. If the plan has frames plumb, a number forward is misread. If the plan rakes one, loft it on the floor: here frames are drawn and set up plumb.',
      limit: 'frames are taken as plumb; 1 mm (1/32 in)',
      weight: 'mind',
    },
  ],
  cautions: [
    'The plan outranks this table. Keep it beside you, read each number back aloud to somebody, and measure length, breadth and diagonal on the floor before cutting.',
    'Whether the numbers are to the inside or the outside of the skin stands on the plan, not in the numbers. A skin deducted twice, or not at all, makes every frame wrong by its thickness.',
  ],
  sources: [
    {
      text: 'Feet, inches and eighths in three figures, + and − for a sixteenth more or less: the usual notation of tables of offsets',
      known: 'common practice',
    },
    {
      text: 'Half-breadth from the centreline, height from the base line, one section a station',
      known: 'common practice',
    },
    {
      text: 'A. Saxena and B. Sahay, Computer Aided Engineering Design, chapter 5: a batten between ducks is a cubic',
      known: 'published',
    },
  ],
  about: ['{station}', '{edge}'],
  draw: drawOffsets,
});
