/** Screws along an edge: which, where, how many, and the holes they need. */
import {
  breakLine,
  circle,
  dim,
  drawing,
  hatch,
  label,
  line,
  mm,
  note,
  type Point,
  rectHatch,
} from '../../drawing';
import { spacingByAmericanCode, spacingByEurocode } from '../../trade/screw-spacing';
import { leadHoleShare, lengthsSold, screwSize, screwToBuy, usualGauge } from '../../trade/screws';
import { choice, defineCell, input, step } from '../define';
import { screwPicture } from './screw-picture';
import { woods } from './woods';

const NDS = 'National Design Specification for Wood Construction (2018)';
const COMMENTARY = 'from memory: commentary to the National Design Specification, wood screws, drilled';
const EC5 = 'from memory: EN 1995-1-1 Table 8.2, drilled';
const CUSTOM = 'common practice, no source';

export const fasten = defineCell({
  id: 'fasten',
  stage: 'timber',
  title: 'Screws along an edge',
  question: 'Which screw, how far apart, how far from the edge, and how many boxes?',
  inputs: {
    along: choice('Edge', { options: 'edges', preset: 'chine' }),
    length: input('length', 'Length of the edge', {
      seldom: true,
      from: '{along}.length',
      preset: '4.2 m',
      min: '50 mm',
      max: '100 m',
      step: '100 mm',
    }),
    sides: input('count', 'How many such edges', {
      seldom: true,
      preset: '2',
      min: '1',
      max: '20',
      step: '1',
      note: 'port and starboard; one for the keel',
    }),
    rows: input('count', 'Rows of screws', {
      seldom: true,
      preset: '1',
      min: '1',
      max: '6',
      step: '1',
      note: '2, staggered, on timbers 45 mm wide or more: common practice',
    }),
    rowGap: input('length', 'Row to row', {
      seldom: true,
      preset: '20 mm',
      min: '3 mm',
      max: '200 mm',
      step: '1 mm',
    }),
    pitch: input('length', 'Screw to screw, at most', {
      preset: '75 mm',
      min: '10 mm',
      max: '1 m',
      step: '5 mm',
      slider: true,
      note: 'with glue: chine, keelson and stem 60 to 75 mm, frames 100 to 125 mm: common practice',
    }),
    skin: choice('Panel screwed on', { options: 'panels', preset: 'side' }),
    topThickness: input('length', 'Thickness screwed on', {
      seldom: true,
      from: '{skin}.thickness',
      preset: '6 mm',
      min: '1 mm',
      max: '100 mm',
      step: '1 mm',
    }),
    into: choice('Screwed into', {
      options: [
        { id: 'chineLog', label: 'chine log' },
        { id: 'sheerClamp', label: 'sheer clamp' },
        { id: 'keelson', label: 'keelson' },
      ],
      preset: 'chineLog',
    }),
    depth: input('length', 'Depth of the timber screwed into', {
      seldom: true,
      from: '{into}.thickness',
      preset: '19 mm',
      min: '5 mm',
      max: '300 mm',
      step: '1 mm',
      note: 'in the direction of the screw; type the other side where it goes into the narrow face',
    }),
    face: input('length', 'Face of the timber screwed into', {
      seldom: true,
      from: '{into}.width',
      preset: '38 mm',
      min: '5 mm',
      max: '300 mm',
      step: '1 mm',
      note: 'across the row of screws, after bevelling',
    }),
    species: choice('Wood screwed into', {
      seldom: true,
      options: woods,
      from: '{into}.timber',
      preset: 'douglasFirCoast',
    }),
    gravity: input('ratio', 'Specific gravity', {
      seldom: true,
      from: 'timber.{species}.gravity',
      preset: '0.48',
      min: '0.2',
      max: '1.2',
      step: '0.01',
      note: 'oven-dry mass over volume at 12 % moisture',
    }),
    gauge: input('number', 'Screw gauge, no.', {
      from: '{self}.usualGauge',
      preset: '8',
      min: '4',
      max: '14',
      step: '2',
    }),
    soldIn: choice('Lengths sold in', {
      seldom: true,
      options: [
        { id: 'mm', label: 'millimetres' },
        { id: 'inch', label: 'inches' },
      ],
      preset: 'mm',
    }),
    screwLength: input('length', 'Screw length', {
      from: '{self}.lengthToBuy',
      preset: '30 mm',
      min: '5 mm',
      max: '300 mm',
      step: '5 mm',
      note: 'over all, head included',
    }),
    endDistance: input('length', 'First screw from the end', {
      seldom: true,
      from: '{self}.leastEnd',
      preset: '50 mm',
      min: '1 mm',
      max: '1 m',
      step: '5 mm',
    }),
    spare: input('share', 'Spare', {
      seldom: true,
      preset: '10 %',
      min: '0 %',
      max: '100 %',
      step: '5 %',
      note: 'common practice',
    }),
    box: input('count', 'Screws in a box', {
      seldom: true,
      preset: '100',
      min: '1',
      max: '10000',
      step: '50',
    }),
  },
  functions: {
    gaugeFor: {
      takes: ['length'],
      gives: 'number',
      says: 'No. 6 through 6 mm, No. 8 through 9 mm, No. 10 through more',
      run: usualGauge,
    },
    shank: {
      takes: ['number'],
      gives: 'length',
      says: 'shank diameter of the gauge',
      run: (gauge) => screwSize(gauge, 'diameter'),
    },
    rootOf: {
      takes: ['number'],
      gives: 'length',
      says: 'root diameter of the gauge',
      run: (gauge) => screwSize(gauge, 'root'),
    },
    headOf: {
      takes: ['number'],
      gives: 'length',
      says: 'head diameter of the gauge',
      run: (gauge) => screwSize(gauge, 'head'),
    },
    shankDrill: {
      takes: ['number'],
      gives: 'length',
      says: 'drill that passes the shank',
      run: (gauge) => screwSize(gauge, 'clearance'),
    },
    soldMetric: {
      takes: ['length', 'length'],
      gives: 'length',
      says: 'shortest sold length that reaches the first, or the longest within the second',
      run: (wanted, longest) => screwToBuy(wanted, longest, lengthsSold.metric),
    },
    soldInch: {
      takes: ['length', 'length'],
      gives: 'length',
      says: 'shortest sold length that reaches the first, or the longest within the second',
      run: (wanted, longest) => screwToBuy(wanted, longest, lengthsSold.inch),
    },
    partOfRoot: {
      takes: ['ratio'],
      gives: 'ratio',
      says: '0.9 above a specific gravity of 0.6, else 0.7',
      run: leadHoleShare,
    },
    americanPitch: {
      takes: ['length'],
      gives: 'length',
      says: '10 diameters',
      run: (d) => spacingByAmericanCode(d, true).along,
    },
    americanEnd: {
      takes: ['length'],
      gives: 'length',
      says: '10 diameters, pulled towards the end',
      run: (d) => spacingByAmericanCode(d, true).loadedEnd,
    },
    americanEdge: {
      takes: ['length'],
      gives: 'length',
      says: '2.5 diameters',
      run: (d) => spacingByAmericanCode(d, true).freeEdge,
    },
    europeanPitch: {
      takes: ['length'],
      gives: 'length',
      says: '5 diameters, pulled along the grain',
      run: (d) => alongGrain(d).along,
    },
    europeanEnd: {
      takes: ['length'],
      gives: 'length',
      says: '12 diameters, pulled towards the end',
      run: (d) => alongGrain(d).loadedEnd,
    },
    europeanEdge: {
      takes: ['length'],
      gives: 'length',
      says: '3 diameters, edge not pulled towards',
      run: (d) => alongGrain(d).freeEdge,
    },
  },
  steps: {
    usualGauge: step('number', 'gaugeFor(topThickness)', 'gauge usual for this thickness', CUSTOM),
    diameter: step(
      'length',
      'shank(gauge)',
      'shank diameter',
      'from memory: ASME B18.6.1, 0.060 in + 0.013 in for each gauge',
    ),
    root: step(
      'length',
      'rootOf(gauge)',
      'root diameter of the thread',
      `from memory: ${NDS}, Appendix Table L3; charts differ by a few per cent`,
    ),
    head: step(
      'length',
      'headOf(gauge)',
      'head diameter, to countersink',
      'flat heads of ASME B18.6.1, trade list',
    ),
    wantedHold: step(
      'length',
      '6 * diameter',
      'least depth in the timber, point included',
      `${NDS}: 6 diameters`,
    ),
    fullLength: step('length', 'topThickness + wantedHold', 'screw length that gives it', 'geometry'),
    longest: step(
      'length',
      'topThickness + depth - 3 mm',
      'longest screw that stays inside',
      'common practice: 3 mm short of the far face',
    ),
    lengthToBuy: step(
      'length',
      'soldIn == "inch" ? soldInch(fullLength, longest) : soldMetric(fullLength, longest)',
      'length to buy',
      'common practice: lengths that shops keep',
    ),
    hold: step('length', 'screwLength - topThickness', 'depth in the timber', 'geometry'),
    holdInDiameters: step('ratio', 'hold / diameter', 'depth in the timber, in diameters', 'geometry'),
    behind: step('length', 'depth - hold', 'wood left beyond the point', 'geometry'),
    thread: step(
      'length',
      'max(0 mm, min(2 / 3 * screwLength, hold))',
      'thread in the timber',
      'wood screws to ASME B18.6.1, as trade lists give them: thread is two thirds of the length',
    ),
    pilot: step(
      'length',
      'partOfRoot(gravity) * root',
      'drill for the thread',
      `${NDS} 12.1.5: 0.9 of the root above a gravity of 0.6, 0.7 above 0.5; lighter woods are drilled the same in boats, common practice`,
    ),
    shankHole: step(
      'length',
      'shankDrill(gauge)',
      'drill for the shank, through the part screwed on',
      CUSTOM,
    ),
    leastPitch: step(
      'length',
      'max(americanPitch(diameter), europeanPitch(diameter))',
      'least distance from screw to screw',
      `${COMMENTARY} 10 D; ${EC5} 5 d; the larger`,
    ),
    leastEnd: step(
      'length',
      'max(americanEnd(diameter), europeanEnd(diameter))',
      'least distance from the end of the timber',
      `${COMMENTARY} 10 D; ${EC5} 12 d; the larger`,
    ),
    leastEdge: step(
      'length',
      'max(americanEdge(diameter), europeanEdge(diameter))',
      'least distance from the edge of the timber',
      `${COMMENTARY} 2.5 D; ${EC5} 3 d; the larger`,
    ),
    edgeDistance: step(
      'length',
      '(face - (rows - 1) * rowGap) / 2',
      'outer row from the edge of the timber',
      'geometry: rows in the middle of the face',
    ),
    firstToLast: step(
      'length',
      'max(0 mm, length - 2 * endDistance)',
      'from first screw to last',
      'geometry',
    ),
    perRow: step(
      'count',
      '1 + ceil(firstToLast / pitch - 0.001)',
      'screws in one row',
      'geometry; a thousandth of a space is forgiven',
    ),
    evenPitch: step(
      'length',
      'firstToLast / max(1, perRow - 1)',
      'screw to screw, shared out evenly',
      'geometry',
    ),
    total: step('count', 'perRow * rows * sides', 'screws in all', 'count'),
    toBuy: step('count', 'ceil(total * (1 + spare) - 0.001)', 'screws to buy', 'count and spare'),
    boxes: step('count', 'ceil(toBuy / box)', 'boxes to buy', 'count'),
    holding: step(
      'force',
      '2850 psi * gravity^2 * diameter * thread',
      'pull on one screw allowed along its length, normal duration',
      `${NDS}: 2850 G^2 D lb for each inch of thread`,
    ),
    breaking: step(
      'force',
      '15700 psi * gravity^2 * diameter * thread',
      'pull that draws one screw out on average',
      'from memory: Wood Handbook, ch. 8: 15,700 G^2 D L',
    ),
  },
  answers: [
    { of: 'evenPitch', label: 'screw to screw', from: 'along the edge, centre to centre', tolerance: '3 mm' },
    { of: 'pilot', label: 'pilot drill', from: 'diameter, as deep as the screw is long' },
    { of: 'toBuy', label: 'screws to buy', from: 'all edges, spare included' },
  ],
  inWords:
    'No. {gauge} screws, {screwLength} long: first {endDistance} from the end, then every {evenPitch}, {total} in all; buy {toBuy}, {boxes} boxes.',
  warnings: [
    {
      when: 'behind < 0 mm',
      says: 'The screw comes out of the far face: at most {longest} long.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'behind >= 0 mm and behind < 3 mm',
      says: 'The point stops {behind} short of the far face.',
      limit: '3 mm clear: common practice',
      weight: 'mind',
    },
    {
      when: 'holdInDiameters < 6',
      says: 'The screw stands {hold} in the timber, {holdInDiameters} diameters; 6 are asked. The glue has to carry the joint.',
      limit: `${NDS}: penetration of at least 6 diameters`,
      weight: 'mind',
    },
    {
      when: 'topThickness <= 9.5 mm and hold < 1.5 * topThickness',
      says: 'The screw stands {hold} in the timber, less than one and a half thicknesses of what it holds down.',
      limit: CUSTOM,
      weight: 'mind',
    },
    {
      when: 'edgeDistance < americanEdge(diameter)',
      says: 'Screws {edgeDistance} from the edge of the timber split it: {leastEdge} is wanted. A thinner screw, a wider face or fewer rows.',
      limit: `${COMMENTARY}: 2.5 diameters`,
      weight: 'stop',
    },
    {
      when: 'edgeDistance >= americanEdge(diameter) and edgeDistance < leastEdge',
      says: 'Screws {edgeDistance} from the edge of the timber; {leastEdge} is wanted.',
      limit: `${EC5}: 3 diameters`,
      weight: 'mind',
    },
    {
      when: 'endDistance < leastEnd',
      says: 'The first screw, {endDistance} from the end, may split it: {leastEnd} is wanted.',
      limit: `${COMMENTARY}: 10 diameters; ${EC5}: 12`,
      weight: 'mind',
    },
    {
      when: 'perRow > 1 and evenPitch < leastPitch',
      says: 'Screws {evenPitch} apart in one line of grain may split it: {leastPitch} is wanted, or two rows staggered.',
      limit: `${COMMENTARY}: 10 diameters along the grain`,
      weight: 'mind',
    },
    {
      when: 'pitch > 125 mm',
      says: 'Wider than usual: with glue, screws stand 60 to 125 mm apart.',
      limit: CUSTOM,
      weight: 'mind',
    },
    {
      when: 'rows > 1 and face < 45 mm',
      says: 'Two rows want a face of 45 mm; this one is {face}.',
      limit: CUSTOM,
      weight: 'mind',
    },
  ],
  cautions: [
    'Drill every hole, and try screw, drill and countersink on an offcut of the same wood first.',
    'Keep screws clear of later cuts: notches, limbers, bevels to be planed. A blade that meets a screw throws it: eye protection, and check before each cut.',
    'Brass and bronze screws snap in hard wood: run a steel screw of the same size in first.',
    'Withdrawal figures are for side grain at normal duration. Plywood this thin lets the head pull through first; the glue carries the load.',
  ],
  sources: [
    {
      text: `${NDS}: lead holes 12.1.5, penetration of 6 diameters, withdrawal 2850 G^2 D`,
      known: 'published',
    },
    { text: 'ASME B18.6.1: gauges and heads, trade list', known: 'published' },
    {
      text: `${NDS}, Appendix Table L3: roots; commentary: edge, end and spacing; EN 1995-1-1 Table 8.2`,
      known: 'from memory',
    },
    {
      text: 'Spacing with glue, gauge by thickness, lengths sold, 3 mm at the point, spare',
      known: 'common practice',
    },
  ],
  lights: ['{along}', '{skin}', '{into}'],

  draw: (v, on) => {
    const screw = {
      length: mm(v.screwLength),
      diameter: mm(v.diameter),
      root: mm(v.root),
      head: mm(v.head),
      thread: (2 / 3) * mm(v.screwLength),
    };
    const top = mm(v.topThickness);
    const depth = mm(v.depth);
    const face = mm(v.face);
    const pitch = mm(v.evenPitch);
    const first = Math.min(mm(v.endDistance), mm(v.length) / 2);
    const shown = Math.min(3, v.perRow);
    const whole = v.perRow <= 3;
    const end = whole ? mm(v.length) : first + 2.5 * pitch;
    const across = Array.from({ length: shown }, (_, i) => first + i * pitch);
    // The face stands above the section, screws over screws.
    const foot = Math.max(0.12 * end, 2 * screw.diameter);
    const outer = foot + mm(v.edgeDistance);
    const rows = Array.from({ length: v.rows }, (_, i) => i);
    const staggered = rows.flatMap((row) =>
      across
        .map((x): Point => [x + (row % 2) * (pitch / 2), outer + row * mm(v.rowGap)])
        .filter(([x]) => x <= end - first / 2 || row === 0),
    );
    const far = across.at(-1) ?? first;
    return drawing({
      title: 'The edge from outside, and cut along the screws',
      says: `Screws ${on.say(v.evenPitch, 'length')} apart, the first ${on.say(v.endDistance, 'length')} from the end, ${on.say(v.edgeDistance, 'length')} from the edge of the timber; each stands ${on.say(v.hold, 'length')} in it.`,
      shapes: [
        rectHatch(0, -top, end, top, 'ply', { pen: whole ? 'outline' : 'none', falling: true, part: v.skin }),
        rectHatch(0, -top - depth, end, depth, 'cedar', {
          pen: whole ? 'outline' : 'none',
          part: v.into,
        }),
        whole ? [] : openEnd(end, [0, -top, -top - depth]),
        across.map((x) => screwPicture([x, 0], screw)),
        hatch(
          [
            [0, foot],
            [end, foot],
            [end, foot + face],
            [0, foot + face],
          ],
          'plain',
          { pen: whole ? 'outline' : 'none' },
        ),
        whole ? [] : openEnd(end, [foot + face, foot]),
        staggered.map((at) => circle(at, screw.head / 2)),
        dim([0, foot + face], [first, outer], on.say(v.endDistance, 'length'), {
          run: 'horizontal',
          side: 'above',
        }),
        shown > 1
          ? dim([first, outer], [first + pitch, outer], on.say(v.evenPitch, 'length'), {
              run: 'horizontal',
              side: 'above',
            })
          : [],
        v.edgeDistance > 0
          ? dim([0, foot], [first, outer], on.say(v.edgeDistance, 'length'), {
              run: 'vertical',
              side: 'left',
            })
          : [],
        dim([0, -top], [0, 0], on.say(v.topThickness, 'length'), { side: 'left' }),
        dim([end, 0], [far, -screw.length], on.say(v.screwLength, 'length'), {
          run: 'vertical',
          side: 'right',
        }),
        label([first, -top - depth / 2], `pilot ${on.say(v.pilot, 'length')}`, { toward: 'sw' }),
        note(`Above: the face, ${on.say(v.face, 'length')} wide. Below: the section.`),
      ],
    });
  },
});

/** Both codes are asked for screws in drilled holes, pulled along the grain of the timber. */
function alongGrain(diameter: number) {
  return spacingByEurocode(diameter, 0, true, 0);
}

/** Faces that run on past the drawing, ended by a break. */
function openEnd(end: number, faces: readonly number[]) {
  const highest = Math.max(...faces);
  const lowest = Math.min(...faces);
  return [
    ...faces.map((y) =>
      line(
        [
          [0, y],
          [end, y],
        ],
        { pen: 'outline' },
      ),
    ),
    line(
      [
        [0, lowest],
        [0, highest],
      ],
      { pen: 'outline' },
    ),
    breakLine([end, lowest], [end, highest]),
  ];
}
