/** Float: where she comes to rest in the water under any load, and what is left of her sides. */
import { waterDensity } from '../../trade/sea-water';
import { type CellFunction, defineCell } from '../form/define';
import { firstOf } from '../form/in-words';
import { tableOf } from '../form/row-quantities';
import { drawFloat, freeboardChart } from './float-drawing';
import { floatInputs } from './float-inputs';
import { floatSteps } from './float-steps';

const seaWater: CellFunction = {
  takes: ['temperature', 'number'],
  gives: 'density',
  how: 'the equation of state of sea water at the pressure of the air',
  run: (kelvin = 288.15, salt = 35) => waterDensity(kelvin - 273.15, salt),
};

export const float = defineCell({
  id: 'float',
  stage: 'afloat',
  title: 'Draught, trim and freeboard',
  question: 'How deep does she float with this load, does she lie level, and how much of her side is left?',
  inputs: floatInputs,
  groups: {
    'Who sits and moves where': ['mover', 'far', 'centreSide'],
    'The water': ['water', 'waterWarmth', 'waterSalt', 'density'],
  },
  functions: { seaWater },
  steps: floatSteps,
  answers: [
    { of: 'draught', label: 'draught', from: 'from her lowest point plumb up to the water' },
    { of: 'trim', label: 'trim', from: 'more than 0: bow down; less: stern down' },
    {
      of: 'leastFreeboard',
      label: 'least freeboard',
      from: 'plumb, from the water up to the sheer where it is nearest',
    },
  ],
  inWords: firstOf(
    [
      {
        when: 'floats == 0',
        says: 'With this load she finds no rest on the water: she is drawn held level.',
      },
      {
        when: 'leastFreeboard <= 0 mm',
        says: 'The water stands over the sheer {leastAt} forward: she fills.',
      },
    ],
    [
      'She floats {draught} deep,',
      firstOf(
        [
          { when: 'trimSize < 0.05°', says: 'level fore and aft' },
          { when: 'trim > 0°', says: 'trimmed {trimSize} by the bow' },
        ],
        'trimmed {trimSize} by the stern',
      ),
      firstOf(
        [
          { when: 'heelSize < 0.05°', says: 'and upright.' },
          { when: 'heel > 0°', says: 'and heeled {heelSize} to port.' },
        ],
        'and heeled {heelSize} to starboard.',
      ),
      'The sheer comes nearest to the water {leastAt} forward, where {leastFreeboard} is left; another {sinks} aboard sinks her by about 10 mm (3/8 in).',
    ],
  ),
  table: tableOf({
    caption: 'By station',
    over: 'station',
    columns: [
      { of: 'place', label: 'forward' },
      { of: 'waterUp', label: 'paint the waterline, above base' },
      { of: 'sheerDown', label: 'or below the sheer' },
      { of: 'freePort', label: 'freeboard to port now' },
      { of: 'freeStarboard', label: 'to starboard now' },
    ],
  }),
  warnings: [
    {
      when: 'volume >= toSheer',
      says: 'All of her under water up to the sheer pushes aside {toSheer}, and she would need {volume}: she sinks.',
      limit: 'her own volume; Archimedes’ principle',
      weight: 'stop',
    },
    {
      when: 'floats == 0 and volume < toSheer',
      says: 'With its centre {movedForward} forward and {movedHeight} up this load stands her on end.',
      limit: 'balance of weight and buoyancy',
      weight: 'stop',
    },
    {
      when: 'floats == 1 and leastFreeboard <= 0 mm',
      says: 'The water stands over the sheer {leastAt} forward, by {leastFreeboard}: she fills.',
      limit: 'the sheer of this hull',
      weight: 'stop',
    },
    {
      when: 'floats == 1 and leastFreeboard > 0 mm and leastFreeboard < 150 mm',
      says: 'Only {leastFreeboard} of side is left above flat water, {leastAt} forward.',
      limit: '150 mm (6 in) in sheltered water; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'floats == 1 and abs(heel) > 5°',
      says: [
        'She lies over {heelSize}',
        { when: 'heel > 0°', says: 'to port:', otherwise: 'to starboard:' },
        'bring the weight back to the middle.',
      ],
      limit: '5°; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'floats == 1 and abs(trim) > 2°',
      says: [
        'She trims {trimSize}',
        {
          when: 'trim > 0°',
          says: 'by the bow: shift weight aft.',
          otherwise: 'by the stern: shift weight forward.',
        },
      ],
      limit: '2°; common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'This is flat water and people who keep still. How many may go aboard is for the capacity rule of the place, for stability, and for the water she is used on.',
    'Try every change of places in shallow water first, with life jackets on: one person on the rail does what the drawing shows, and quickly.',
    'The water is taken against the face of the skin that the offsets are measured to. Offsets to the inside of the skin give a little less than what floats.',
    'The hull is taken as closed to the sheer: cut-outs of the transom are not seen, and water comes in there first.',
  ],
  sources: [
    {
      text: 'Balance of weight and buoyancy, metacentres: K. J. Rawson and E. C. Tupper, Basic Ship Theory, chapters 3 and 4',
      known: 'from memory',
    },
    {
      text: 'Density of sea water: N. P. Fofonoff and R. C. Millard, UNESCO Technical Papers in Marine Science 44, 1983',
      known: 'from memory',
    },
    { text: 'Freeboard, heel and trim to mind: custom of the trade', known: 'common practice' },
  ],
  about: ['{station}', 'sheer'],
  lies: 'heel',
  draw: drawFloat,
  chart: freeboardChart,
});
