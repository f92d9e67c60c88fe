/** The curves of form: what she carries, where her centres lie and what sinks or trims her, at any draught. */
import { defineCell } from '../form/define';
import { tableOf } from '../form/row-quantities';
import { displacementChart, drawCurves } from './curves-drawing';
import { draughtRows } from './curves-facts';
import { curvesInputs } from './curves-inputs';
import { curvesSteps } from './curves-steps';

export const curves = defineCell({
  id: 'curves',
  stage: 'afloat',
  title: 'Load and trim at each draught',
  question: 'What does she carry at each draught, and what does it take to sink or trim her a little more?',
  inputs: curvesInputs,
  steps: curvesSteps,
  answers: [
    { of: 'mass', label: 'displacement', from: 'boat and all aboard, floating level' },
    {
      of: 'sinks',
      label: 'sinks her by 10 mm (3/8 in)',
      from: 'put aboard over the middle of the waterplane',
    },
    {
      of: 'trimMoment',
      label: 'trims her by as much',
      from: 'load times how far it moves, over the length of the waterline',
    },
  ],
  inWords: [
    'At a draught of {draught} she weighs {mass}, and another {sinks} sinks her by 10 mm (3/8 in).',
    {
      when: 'trimMoment > 0 kg*m',
      says: 'One person of {person} who walks {walks} forward or aft changes her trim by as much, one end up and the other down together. Put a load {flotation} forward, over the middle of the waterplane, and she sinks without trimming.',
      otherwise: 'With a centre so high no trim holds.',
    },
  ],
  table: tableOf({
    caption: 'At each draught up to her lowest sheer',
    over: 'draught',
    rows: draughtRows,
    columns: [
      { of: 'deep', label: 'draught' },
      { of: 'mass', label: 'displacement' },
      { of: 'buoyancyForward', label: 'centre of the water aside, forward' },
      { of: 'metacentre', label: 'metacentre, above base' },
      { of: 'sinks', label: 'sinks her by 10 mm (3/8 in)' },
      { of: 'trimMoment', label: 'trims her by as much' },
    ],
  }),
  warnings: [
    {
      when: 'freeboard <= 0 mm',
      says: 'At a draught of {draught} the water would stand over the sheer where it is lowest: she would fill before she floated so deep.',
      limit: 'the sheer of this hull',
      weight: 'stop',
    },
    {
      when: 'stiffness <= 0 mm',
      says: 'The centre of all aboard, {centreHeight} up, lies above her metacentre, {metacentre} up: upright she would not stay.',
      limit: 'the metacentre at this draught',
      weight: 'stop',
    },
  ],
  cautions: [
    'What she floats at a draught is not what she may carry. That is for the capacity rule of the place, for stability, and for the water she is used on.',
    'All this is of the hull floating level in flat water, by the face of the skin that the offsets are measured to. Offsets to the inside of the skin give a little less than what floats.',
  ],
  sources: [
    {
      text: 'Centres, metacentres, load to sink and to trim: K. J. Rawson and E. C. Tupper, Basic Ship Theory, chapter 3',
      known: 'from memory',
    },
    {
      text: 'Moment to change trim: D. R. Derrett, Ship Stability for Masters and Mates, summary of formulae',
      known: 'from memory',
    },
  ],
  about: ['sheer'],
  draw: drawCurves,
  chart: displacementChart,
});
