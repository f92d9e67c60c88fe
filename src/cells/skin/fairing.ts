/** Fairing a long timber: what stands proud of the skin between the frames and is planed, what lacks and is shimmed. */
import { defineCell } from '../form/define';
import { tableOf } from '../form/row-quantities';
import { glueQuantities } from '../common/glue/glues';
import { alongTimber, drawFairing } from './fairing-drawing';
import { fairingInputs } from './fairing-inputs';
import { fairingSteps, marks } from './fairing-steps';
import { GEOMETRY } from '../../trade/sources';

const END = { when: 'timber == "stem"', says: 'up from its foot', otherwise: 'from its after end' };

const THERE = {
  when: 'isKeelson > 0 and rises > 0.3 mm',
  says: 'at the edges of its face, and keep its middle',
  otherwise: 'there',
};

export const fairing = defineCell({
  id: 'fairing',
  stage: 'skin',
  title: 'Fairing the long timbers',
  question:
    'Between the frames, where does this timber stand proud of the skin, where does it lack, and by how much?',
  inputs: fairingInputs,
  groups: {
    'The marks': ['interval', 'ends'],
    'The timber': ['thickness', 'width', 'landing'],
    'The glue': ['glue', 'mostGap'],
  },
  steps: fairingSteps,
  answers: [
    {
      of: 'most',
      label: 'most proud',
      from: 'to plane off, square to the skin, at the higher edge of its face',
      tolerance: '0.5 mm',
    },
    {
      of: 'lacks',
      label: 'lacks most',
      from: 'to shim, square to the skin, at the lower edge of its face',
      tolerance: '0.5 mm',
    },
    {
      of: 'differ',
      label: 'keelson to chine',
      from: 'under a straight stick between two frames; + the keelson stands out more',
      when: 'hasChine > 0 and timber != "stem"',
      tolerance: '0.5 mm',
    },
  ],
  inWords: [
    {
      when: 'most > 0.3 mm',
      says: ['Most proud is the {timber} {mostAt}', END, ': plane off {most}', THERE, '.'],
      otherwise: [
        {
          when: 'timber == "stem"',
          says: 'Planed evenly from its foot to its head, the stem',
          otherwise: 'The {timber}',
        },
        'stands proud of the {panel} by no more than a shaving.',
      ],
    },
    {
      when: 'lacks > 0.3 mm',
      says: [
        'It lacks most {lacksAt}',
        END,
        ': {lacks}',
        {
          when: 'lacks > mostGap',
          says: ', which wants a shim',
          otherwise: ', which the glue bridges',
        },
        '.',
      ],
    },
    {
      when: 'timber != "stem" and hasChine > 0 and abs(differ) > 0.3 mm',
      says: 'Between {differFrom} and {differTo} the keelson’s curve and the chine log’s differ by {differ}.',
    },
    {
      when: 'timber != "stem" and max(stemMost, stemLacks) > 1 mm',
      says: 'A stem planed evenly from foot to head stands up to {stemMost} proud of the side and lacks up to {stemLacks}.',
    },
  ],
  table: tableOf({
    caption: 'Marks along the timber, from its after end or up from its foot: + plane off, − it lacks',
    over: 'at',
    rows: marks,
    columns: [
      { of: 'at', label: 'from its end' },
      { of: 'line', label: 'at its edge' },
      { of: 'far', label: 'at the far edge' },
      { of: 'off', label: 'plane off' },
      { of: 'shim', label: 'shim' },
    ],
  }),
  warnings: [
    {
      when: 'onTimber < 1',
      says: [
        'The mark is {at}',
        END,
        ', and the timber only {timberLength} long. The reading is that of its other end.',
      ],
      limit: GEOMETRY,
      weight: 'stop',
    },
    {
      when: 'most > mostGap',
      says: 'Left proud by {most}, the timber holds the skin off beside it by more than the {mostGap} that the glue bridges.',
      limit: 'the gap that the glue bridges: its sheet rules',
      weight: 'mind',
    },
    {
      when: 'lacks > mostGap',
      says: 'Where it lacks {lacks} the glue, which bridges {mostGap}, meets no skin. Glue a shim on, and plane that.',
      limit: 'the gap that the glue bridges: its sheet rules',
      weight: 'mind',
    },
    {
      when: 'listed < timberLength',
      says: ['A hundred marks end {listed}', END, ': take a wider interval.'],
      limit: 'the list holds a hundred marks',
      weight: 'mind',
    },
  ],
  cautions: [
    'Punch nails and screws well under before you plane. A plane iron that meets one is spoiled; a power plane throws the pieces.',
    'The figures are of a board that bends alike everywhere. Yours has knots: lay a straight stick from the keelson to the chine log between every two frames, and believe the stick.',
    'Plane down to the frames and no deeper: there the notches are true.',
    'Where keelson and log lack alike, the skin follows both. What counts there is the stick.',
    'No frame divides the stem. Plane it to the bevel that its own cell gives at each height, and try it with a stick from the first frame to the stem.',
  ],
  sources: [
    { text: 'Ruled panels of the hull, and their normals', known: 'geometry' },
    {
      text: 'Curve of a board held at points, ends free: small deflections, no moment at the ends (any text on the strength of materials)',
      known: 'geometry',
    },
    {
      text: 'A stick laid between the frames, planing to it, shims where it lacks: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['{timber}', '{along}'],
  wide: true,
  draw: drawFairing,
  chart: alongTimber,
  brings: glueQuantities,
});
