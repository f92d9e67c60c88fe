/** Screws along an edge: which, where, how many, the holes they need, and whether the wood will split. */
import { fasteningGravity, screwedDensity } from '../../common/screws/screwed-wood';
import { bothSides } from '../../common/sizes/both-sides';
import { choice, input, defineCell } from '../../form/define';
import { fromBoat } from '../../form/from-boat';
import { chosenFromBoat, fromShop } from '../../form/from-shop';
import { landingTimbers, landings } from '../../../boat/quantities/landings';
import { screwInputs, screwWarnings, screwCautions } from '../../common/screws/screw-choice';
import { firstOf } from '../../form/in-words';
import { COMMENTARY, EC5 } from './screw-rules';
import { tradeQuantities } from '../../../boat/quantities/trade-quantities';
import { fastenPicture } from './fasten-drawing';
import { fastenFunctions, fastenSteps } from './fasten-steps';
import { CUSTOM, NDS } from '../../../trade/sources';

export const fasten = defineCell({
  id: 'fasten',
  stage: 'timber',
  title: 'Screws along an edge',
  question: 'Which screw, how far apart, how far from the edge, and will the wood split?',
  inputs: {
    along: choice('Edge', { options: 'edges', preset: 'chine' }),
    length: input('length', 'Length of the edge', {
      from: '{along}.length',
      preset: '4.2 m',
      min: '50 mm',
      max: '100 m',
      step: '100 mm',
    }),
    sides: bothSides('How many such edges', 'port and starboard; along the keel too, where both panels land'),
    rows: input('count', 'Rows of screws', {
      preset: '1',
      min: '1',
      max: '6',
      step: '1',
      note: '2, staggered, on timbers 45 mm (1 3/4 in) wide or more: common practice',
    }),
    rowGap: fromShop('rowGap', { when: 'rows > 1' }),
    pitch: fromShop('screwPitch', { bound: 'most', slider: true }),
    skin: choice('Panel screwed on', { options: 'panels', from: '{along}.panel', preset: 'side' }),
    topThickness: fromBoat('{skin}.thickness', { label: 'Thickness screwed on' }),
    into: choice('Screwed into', {
      options: landingTimbers.map((timber) => ({ ...timber, ofBoat: true })),
      from: '{along}.landsOn',
      preset: 'chineLog',
    }),
    lands: choice('It lands on', {
      options: [
        { id: 'part', label: 'the face that is its own' },
        { id: 'wide', label: 'the wide face' },
        { id: 'narrow', label: 'the narrow face' },
      ],
      preset: 'part',
      note: 'a side lies on the wide face of a chine log, a bottom on the narrow one under it; a panel between two chines on the wide face of the lower log and on the narrow one of the upper',
    }),
    thickness: fromBoat('{into}.thickness', { label: 'Thickness screwed into' }),
    width: fromBoat('{into}.width', { label: 'Width screwed into' }),
    depth: input('length', 'Depth screwed into', {
      from: '{self}.usualDepth',
      preset: '19 mm',
      min: '3 mm',
      max: '400 mm',
      step: '1 mm',
      note: 'in the direction of the screw',
    }),
    face: input('length', 'Face screwed into', {
      from: '{self}.usualFace',
      preset: '38 mm',
      min: '3 mm',
      max: '400 mm',
      step: '1 mm',
      note: 'across the row of screws, after bevelling',
    }),
    species: chosenFromBoat('{into}.timber', { label: 'Wood screwed into' }),
    gravity: fasteningGravity('Specific gravity'),
    density: screwedDensity('Density of the wood', 'counts where nothing is drilled'),
    holes: choice('Holes', {
      options: [
        { id: 'drilled', label: 'drilled' },
        { id: 'none', label: 'none: driven into the wood' },
      ],
      preset: 'drilled',
    }),
    splits: choice('The wood splits', {
      options: [
        { id: 'species', label: 'as its kind does' },
        { id: 'usual', label: 'as most do' },
        { id: 'easily', label: 'easily' },
      ],
      preset: 'species',
      note: 'Douglas-fir and spruce easily: from memory, EN 1995-1-1, 8.3.1.2; oak and larch: common practice, no source',
    }),
    ...screwInputs,
    endDistance: input('length', 'First screw from the end', {
      from: '{self}.leastEnd',
      preset: '50 mm',
      min: '1 mm',
      max: '1 m',
      step: '5 mm',
    }),
    spare: input('share', 'Spare', {
      preset: '10 %',
      min: '0 %',
      max: '100 %',
      step: '5 %',
      note: 'common practice',
    }),
    box: input('count', 'Screws in a box', {
      preset: '100',
      min: '1',
      max: '10000',
      step: '50',
    }),
  },
  functions: fastenFunctions,
  groups: {
    'The run': ['skin', 'length', 'sides', 'rows', 'rowGap', 'endDistance'],
    'The timber': ['lands', 'thickness', 'width', 'depth', 'face'],
    'The wood': ['species', 'gravity', 'density', 'splits'],
    'The screw': ['gauge', 'holes', 'held'],
    'As the shop sells it': ['soldIn', 'spare', 'box'],
  },
  steps: fastenSteps,
  answers: [
    { of: 'evenPitch', label: 'screw to screw', from: 'along the edge, centre to centre', tolerance: '3 mm' },
    { of: 'pilot', label: 'pilot drill', from: 'diameter, as deep as the screw is long' },
    { of: 'toBuy', label: 'screws to buy', from: 'for all rows and edges, spare included' },
  ],
  inWords: [
    firstOf(
      [
        { when: 'light > 1', says: 'Splitting light red: no rule allows it as it stands.' },
        { when: 'light > 0', says: 'Splitting light amber: one rule allows it, another does not.' },
      ],
      'Splitting light green: both rules are kept.',
    ),
    'No. {gauge} screws, {screwLength} long: first {endDistance} from the end, then every {evenPitch},',
    {
      when: 'light > 1',
      says: '{edgeDistance} from the edge; the rules want {leastEnd}, {leastPitch} and {leastEdge}, in drilled holes.',
      otherwise:
        '{perRow} to a row. That is {total} {total?screw:screws} for {sides} {sides?edge:edges}, {rows} {rows?row:rows} on each; with spares buy {toBuy}, in {boxes} {boxes?box:boxes} of {box}.',
    },
    {
      when: 'light <= 0',
      says: 'Holes: {pilot} for the thread, {shankHole} through the part screwed on; sink the head {sink}.',
    },
  ],
  warnings: [
    ...screwWarnings,
    {
      when: 'topThickness <= 9.5 mm and hold < 1.5 * topThickness',
      says: 'The screw reaches {hold} into the timber, less than one and a half thicknesses of what it holds down.',
      limit: CUSTOM,
      weight: 'mind',
    },
    {
      when: 'edgeDistance < min(americanEdge, europeanEdge)',
      says: 'Screws {edgeDistance} from the edge of the timber split it: {leastEdge} is wanted. A thinner screw, a wider face or fewer rows.',
      limit: `${COMMENTARY}, 2.5 diameters, and EN 1995-1-1`,
      weight: 'stop',
    },
    {
      when: 'edgeDistance >= min(americanEdge, europeanEdge) and edgeDistance < leastEdge',
      says: 'Screws {edgeDistance} from the edge of the timber; {leastEdge} is wanted.',
      limit: `${EC5}: 3 diameters in drilled holes`,
      weight: 'mind',
    },
    {
      when: 'endDistance < leastEnd',
      says: 'The first screw, {endDistance} from the end, may split it: {leastEnd} is wanted where it pulls towards the end.',
      limit: `${COMMENTARY}: 10 diameters in drilled holes; EN 1995-1-1: 12`,
      weight: 'mind',
    },
    {
      when: 'perRow > 1 and evenPitch < leastPitch',
      says: 'Screws {evenPitch} apart in one line of grain may split it: {leastPitch} is wanted, or two rows staggered.',
      limit: `${COMMENTARY}: 10 diameters along the grain in drilled holes`,
      weight: 'mind',
    },
    {
      when: 'drilled < mustDrill',
      says: 'Without a hole this wood splits: timber under {undrilledFrom}, or heavier than {heaviest}, is drilled.',
      limit: 'from memory: EN 1995-1-1, 8.3.1',
      weight: 'stop',
    },
    {
      when: 'rows > 1 and rowGap < leastRowGap',
      says: 'Rows {rowGap} apart; {leastRowGap} is wanted.',
      limit: `${COMMENTARY} and EN 1995-1-1: 3 diameters in drilled holes`,
      weight: 'mind',
    },
    {
      when: 'pitch > usualMost',
      says: 'Wider than usual: with glue, screws stand {usualLeast} to {usualMost} apart.',
      limit: CUSTOM,
      weight: 'mind',
    },
    {
      when: 'rows > 1 and face < twoRows',
      says: 'Two rows want a face of {twoRows}; this one is {face}.',
      limit: CUSTOM,
      weight: 'mind',
    },
  ],
  cautions: [
    'Keep screws clear of later cuts: notches, limbers, bevels to be planed. A blade that meets a screw throws it: mark each on the face, look and feel with a pin before each cut, and wear eye protection. A magnet finds steel alone.',
    'Drill every hole, and try screw, drill and countersink on an offcut of the same wood first.',
    'Brass and bronze screws snap in hard wood: run a steel screw of the same size in first, and wax it.',
    ...screwCautions,
    'A head pulls through thin plywood before its thread lets go.',
  ],
  sources: [
    { text: `${NDS}: lead holes 12.1.5, penetration of 6 diameters`, known: 'published' },
    { text: 'ASME B18.6.1: gauges and heads, trade list', known: 'published' },
    {
      text: `${NDS}, Appendix Table L3: roots; commentary: edge, end and spacing; EN 1995-1-1 Table 8.2 and 8.3.1`,
      known: 'from memory',
    },
    {
      text: 'Shop custom: spacing with glue, gauge by thickness, screws three times as long as what they hold, lengths sold, 3 mm (1/8 in) at the point, spare, the light',
      known: 'common practice',
    },
  ],
  about: ['{along}', '{skin}', '{into}'],
  brings: (layout) => [...tradeQuantities(), ...landings(layout)],
  draw: fastenPicture,
});
