/** Is a long line fair, and if not, which number is wrong and what is the least that mends it? */
import { choice, defineCell, hullStep, input, step, type WordsWhen } from '../form/define';
import { offersOf } from './fair-offers';
import { drawLine, runChart } from './fair-drawing';
import { wedgePatterns } from './fair-wedge-drawing';
import {
  after,
  before,
  displacementOf,
  indexHere,
  leanOf,
  lineKeys,
  lineOf,
  mendedKeys,
  mendKeys,
  mendOf,
  number,
  panelUnder,
  reading,
  rivalOf,
  runKeys,
  showsAtFrames,
  signsFor,
  skinOf,
  suspectOf,
  trialBy,
  word,
} from './fair-working';
import { lineViews } from './long-line';
import { ALIKE, firstSuspect, signsInWords, spreadOf } from './suspects';

const RUN = 'geometry of divided differences; how sure it is: docs/fairness.md';
const BATTEN =
  'A. Saxena and B. Sahay, Computer Aided Engineering Design, chapter 5: a batten between ducks is a cubic';
const LEAST = 'C. L. Lawson and R. J. Hanson, Solving Least Squares Problems, 1974, chapter 23';
const GEOMETRY = 'geometry';
const TABLE = 'the table of offsets';
const FIRST_OF_ALL = ['nearest', 'blunder'] as const;

const HOLLOWS = 'Hollows in the line: {hollowCount}.';
const UNSEEN =
  'With {stations} stations a small error stays hidden: it shows from about {showsBest} at the frame that shows it best, from {showsEverywhere} at the one that shows it least.';

/** Words for a number that stands out, with what mends it in wood. */
function found(when: string, stands: string, column: string): readonly WordsWhen[] {
  const amiss = `In {view} the {edge} stands about {error} too ${stands} at {oddStation}: ${column} {corrected} instead of {stands}. Of the other signs, {signs}.`;
  const after =
    'over the {wedgeLength} of the frame side. The flare goes from {lean} to {leanAfter}, the skin changes by {areaChange}, the displacement by {volumeChange}.';
  return [
    // Near an end two numbers can upset the run alike.
    {
      when: `proof > 1 and ${when} and rivalNearly > ${ALIKE}`,
      says: `${amiss} Or, nearly as likely, {rival} is out by about {rivalError}: look up both before you move anything. ${HOLLOWS}`,
    },
    {
      when: `proof > 1 and ${when} and wedge > nearest and ownWood > 0 mm`,
      says: `${amiss} In wood that is a wedge {wood} thick there, tapering to nothing ${after} With the same taper planed off inside, the frame side keeps its depth of {moulded} there, {ownWood} of it its own wood. ${HOLLOWS}`,
    },
    {
      when: `proof > 1 and ${when} and wedge > nearest`,
      says: `${amiss} In wood that is a wedge {wood} thick there, tapering to nothing ${after} ${HOLLOWS}`,
    },
    {
      when: `proof > 1 and ${when} and wedge < -nearest`,
      says: `${amiss} In wood that is a cut {wood} deep there, running out to nothing ${after} ${HOLLOWS}`,
    },
    // The frame side runs along the move: the line is only marked elsewhere on it.
    { when: `proof > 1 and ${when}`, says: `${amiss} ${HOLLOWS}` },
  ];
}

const foundHere = [
  ...found('view == "plan" and correction > 0 mm', 'far in', 'half-breadth'),
  ...found('view == "plan" and correction <= 0 mm', 'far out', 'half-breadth'),
  ...found('view == "profile" and correction > 0 mm', 'low', 'height'),
  ...found('view == "profile" and correction <= 0 mm', 'high', 'height'),
];

/** The same where a number of another line stands out more. */
function elsewhereFirst({ when, says }: WordsWhen): WordsWhen {
  return {
    when: `${when} and suspectProof > 1 and (suspectLine != edge or suspectView != view)`,
    says: `Look first at {suspect}, the {suspectLine} in {suspectView}. ${says}`,
  };
}

/** A station that the least mend leaves alone. */
function stays(label: string, note?: string) {
  const more = { options: 'stations', none: 'none', preset: 'none' } as const;
  return choice(label, note === undefined ? more : { ...more, note });
}

export const fair = defineCell({
  id: 'fair',
  stage: 'shape',
  title: 'Is the line fair?',
  question: 'Is this line fair, or is one of its numbers wrong, and which?',
  inputs: {
    edge: choice('Line', { options: 'edges', preset: 'sheer' }),
    view: choice('Seen in', { options: lineViews, preset: 'plan' }),
    tried: choice('Station to move on trial', { options: 'stations', preset: 'frame3' }),
    shift: input('length', 'Move it on trial by', {
      preset: '0 mm',
      min: '-100 mm',
      max: '100 mm',
      step: '1 mm',
      slider: true,
      note: '+ outboard in plan, up in profile; the table is left alone',
    }),
    meant: choice('A reverse in this line is meant', {
      options: [
        { id: 'no', label: 'no' },
        { id: 'yes', label: 'yes, one' },
      ],
      preset: 'no',
      note: 'a flared bow or a reverse sheer bends both ways on purpose',
    }),
    station: choice('Station looked at', {
      options: 'stations',
      from: '{self}.suspectStation',
      preset: 'frame2',
    }),
    ends: choice('The two ends of the line', {
      options: [
        { id: 'held', label: 'stay' },
        { id: 'free', label: 'may move' },
      ],
      preset: 'held',
    }),
    keep: stays(
      'A station that stays',
      'in the least mend: a frame that is built, or a number that you trust',
    ),
    keepAnother: stays('Another that stays'),
    keepThird: stays('A third that stays'),
    nearest: input('length', 'Table written to the nearest', {
      preset: '1.5 mm',
      presetInch: '1/16 in',
      min: '0.1 mm',
      max: '10 mm',
      step: '0.5 mm',
      note: 'lines are drawn to 1/32 to 1/16 in (0.8 to 1.5 mm): common practice',
    }),
    blunder: input('length', 'Smallest error worth a thought', {
      preset: '6 mm',
      presetInch: '1/4 in',
      min: '1 mm',
      max: '50 mm',
      step: '1 mm',
      note: 'common practice: 1/8 in (3 mm) is faired away in silence, above 1/4 in (6 mm) one looks for a blunder',
    }),
    mostWedge: input('length', 'Thickest wedge worth gluing on', {
      bound: 'most',
      preset: '25 mm',
      min: '1 mm',
      max: '100 mm',
      step: '1 mm',
      note: 'common practice: up to an inch (25 mm) at the top, nothing at the bottom',
    }),
    moulded: input('length', 'Depth of the members', {
      from: 'frame.moulded',
      preset: '70 mm',
      min: '1 mm',
      max: '500 mm',
      step: '5 mm',
      note: 'square to its outer edge, before anything is glued on or planed off',
    }),
    stiffness: input('bendingStiffness', 'Stiffness of the batten', {
      from: 'batten.stiffness',
      preset: '120 N·m²',
      min: '0.001 N·m²',
      step: '1 N·m²',
      note: 'about a square batten of spruce, 19 mm (3/4 in)',
    }),
    draught: input('length', 'Draught', {
      from: 'hull.draught',
      preset: '150 mm',
      min: '1 mm',
      max: '2 m',
      step: '10 mm',
      note: 'from the lowest point of the hull, floating level',
    }),
  },
  groups: {
    'What stays': ['ends', 'keep', 'keepAnother', 'keepThird'],
    'The table of offsets': ['nearest', 'blunder', 'station'],
    'Wood and water': ['mostWedge', 'moulded', 'stiffness', 'draught'],
  },
  steps: {
    suspectStation: hullStep('choice', {
      says: 'every line in plan and in profile is asked for the one correction that leaves its run of third differences likest a fair line’s; the station of the one that stands out most',
      uses: FIRST_OF_ALL,
      options: 'stations',
      find: (hull, v) => firstSuspect(hull, reading(v)).station.name,
      meaning: 'station of the number likeliest to be wrong, in the whole table',
      source: RUN,
    }),
    suspectProof: hullStep('ratio', {
      says: 'the same search: its correction over the least error that would stand out there',
      uses: FIRST_OF_ALL,
      find: (hull, v) => firstSuspect(hull, reading(v)).proof,
      meaning: 'how far it stands out; 1 and less is the plan’s own shape',
      source: RUN,
    }),
    suspect: hullStep('choice', {
      says: 'the same search: its station where that stands out, else none',
      uses: FIRST_OF_ALL,
      options: 'stations',
      find: (hull, v) => {
        const { station, proof } = firstSuspect(hull, reading(v));
        return proof > 1 ? station.name : 'none';
      },
      meaning: 'station of the first suspect of the whole table, if there is one',
      source: RUN,
    }),
    suspectLine: hullStep('choice', {
      says: 'the same search: its line',
      uses: FIRST_OF_ALL,
      options: 'edges',
      find: (hull, v) => firstSuspect(hull, reading(v)).line.edge.name,
      meaning: 'line of the number likeliest to be wrong',
      source: RUN,
    }),
    suspectView: hullStep('choice', {
      says: 'the same search: its view',
      uses: FIRST_OF_ALL,
      find: (hull, v) => firstSuspect(hull, reading(v)).line.view,
      meaning: 'view in which it is likeliest to be wrong',
      source: RUN,
    }),
    oddStation: hullStep('choice', {
      says: 'the station of this line whose one correction leaves the run of third differences likest a fair line’s',
      uses: runKeys,
      options: 'stations',
      find: (hull, v) => suspectOf(hull, v).station.name,
      meaning: 'oddest station of this line',
      source: RUN,
    }),
    standsOut: hullStep('choice', {
      says: 'the oddest station of this line where its correction is larger than a fair line would ask for, else none',
      uses: runKeys,
      options: 'stations',
      find: (hull, v) => {
        const { station, proof } = suspectOf(hull, v);
        return proof > 1 ? station.name : 'none';
      },
      meaning: 'station whose number stands out of this line, if there is one',
      source: RUN,
    }),
    correction: hullStep('length', {
      says: 'that one correction, by generalised least squares on the run',
      uses: runKeys,
      find: (hull, v) => suspectOf(hull, v).correction,
      meaning: 'correction that would set this line right there; + outboard or up',
      source: RUN,
    }),
    shows: hullStep('length', {
      bound: 'most',
      says: '2.5 times the spread of that correction among fair lines with these stations, or the smallest error worth a thought if that is more',
      uses: runKeys,
      find: (hull, v) => suspectOf(hull, v).shows,
      meaning: 'least error that stands out at that station from the plan’s own shape',
      source: RUN,
    }),
    showsBest: hullStep('length', {
      says: 'the smallest of the same over all stations but the two ends',
      uses: runKeys,
      find: (hull, v) => Math.min(...showsAtFrames(hull, v)),
      meaning: 'least error that stands out at the frame that shows it best',
      source: RUN,
    }),
    showsEverywhere: hullStep('length', {
      says: 'the largest of the same over all stations but the two ends',
      uses: runKeys,
      find: (hull, v) => Math.max(...showsAtFrames(hull, v)),
      meaning: 'least error that stands out at every frame',
      source: RUN,
    }),
    stations: hullStep('count', {
      says: 'counted',
      uses: ['edge'],
      find: (hull, v) => hull.edge(word(v, 'edge')).points.length,
      meaning: 'stations of the line',
      source: TABLE,
    }),
    error: step('length', 'abs(correction)', 'how far it stands out or in', GEOMETRY),
    proof: step('ratio', 'error / shows', 'how far it stands out; 1 and less is the plan’s own shape', RUN),
    proposed: step(
      'length',
      'proof > 1 ? correction : 0 mm',
      'correction proposed: none where nothing stands out',
      RUN,
    ),
    rival: hullStep('choice', {
      says: 'the station whose one correction stands out next most',
      uses: runKeys,
      options: 'stations',
      find: (hull, v) => rivalOf(hull, v).station.name,
      meaning: 'next to it in this line',
      source: RUN,
    }),
    rivalError: hullStep('length', {
      says: 'how large that correction would be, either way',
      uses: runKeys,
      find: (hull, v) => Math.abs(rivalOf(hull, v).correction),
      meaning: 'error of the next, if it were the bad one',
      source: RUN,
    }),
    rivalNearly: hullStep('share', {
      says: 'how far its correction stands out, over how far the oddest one’s does',
      uses: runKeys,
      find: (hull, v) => rivalOf(hull, v).nearly,
      meaning: 'how nearly as well the next explains the run; from 80 % on the two are not told apart',
      source: RUN,
    }),
    witnesses: hullStep('count', {
      says: 'counted: the run of flare is oddest there, where there is one; the duck there pushes hardest; the batten is hollow there, or its bend differs most from its neighbours’',
      uses: [...runKeys, 'oddStation'],
      find: (hull, v) => signsFor(hull, v).filter(Boolean).length,
      meaning: 'other signs that point to the same station',
      source: 'common practice, no source',
    }),
    signs: hullStep('choice', {
      says: 'the same count, in words',
      uses: [...runKeys, 'oddStation'],
      find: (hull, v) => signsInWords(signsFor(hull, v)),
      meaning: 'how many of the other signs agree',
      source: 'common practice, no source',
    }),
    hollowCount: hullStep('count', {
      says: 'stretches of the batten that bend against the line’s own turn, deeper than half the mark the table is read to',
      uses: [...lineKeys, 'nearest'],
      find: (hull, v) =>
        lineOf(hull, v).hollows.filter(({ depth }) => depth > number(v, 'nearest') / 2).length,
      meaning: 'hollows of this line',
      source: BATTEN,
    }),
    hollowDepth: hullStep('length', {
      says: 'under a straightedge laid across the deepest of them',
      uses: lineKeys,
      find: (hull, v) => Math.max(0, ...lineOf(hull, v).hollows.map(({ depth }) => depth)),
      meaning: 'depth of the deepest hollow',
      source: GEOMETRY,
    }),
    trial: hullStep('length', {
      says: 'as typed; nothing for what lies on the centreline by nature: a stem in plan, and the keel',
      uses: ['edge', 'view', 'tried', 'shift'],
      find: trialBy,
      meaning: 'move made on trial',
      source: GEOMETRY,
    }),
    stands: hullStep('length', {
      says: 'from the table, with the trial move',
      uses: [...lineKeys, 'oddStation'],
      find: (hull, v) => lineOf(hull, v).values[hull.station(word(v, 'oddStation')).index]!,
      meaning: 'half-breadth or height of the oddest station as it stands',
      source: TABLE,
    }),
    corrected: step('length', 'stands + proposed', 'half-breadth or height there when corrected', GEOMETRY),
    mendCount: hullStep('count', {
      says: 'the least change, in its sum of squares, that leaves the batten no hollow and no duck harder than a fair line’s: stations it moves',
      uses: mendKeys,
      find: (hull, v) => mendOf(hull, v).filter((move) => move !== 0).length,
      meaning: 'stations moved by the least mend',
      source: LEAST,
    }),
    mendMost: hullStep('length', {
      says: 'the same: its greatest move',
      uses: mendKeys,
      find: (hull, v) => Math.max(...mendOf(hull, v).map(Math.abs)),
      meaning: 'greatest move of the least mend, either way',
      source: LEAST,
    }),
    lean: hullStep('angle', {
      says: 'of the straight frame side that the line bounds: the one above it in plan, below it in profile',
      uses: [...lineKeys, 'oddStation'],
      find: (hull, v) => leanOf(hull, before(hull, v), v),
      meaning: 'flare of the frame side there, from plumb',
      source: GEOMETRY,
    }),
    wedge: step(
      'length',
      'view == "plan" ? proposed * cos(lean) : -proposed * sin(lean)',
      'thickness of the wedge at this line, square to the frame side, tapering to nothing at its other end; − is planed off',
      'geometry; wedges: common practice, no source',
    ),
    wood: step('length', 'abs(wedge)', 'the same, thick or deep', GEOMETRY),
    ownWood: step(
      'length',
      'moulded - abs(wedge)',
      'what is left there of the frame side’s own wood: of a wedged one when the same taper is planed off inside to keep its depth',
      GEOMETRY,
    ),
    wedgeLength: hullStep('length', {
      says: 'along the frame side, from this line to the next',
      uses: [...lineKeys, 'oddStation'],
      find: (hull, v) =>
        before(hull, v)
          .station(word(v, 'oddStation'))
          .girth(panelUnder(hull, lineOf(hull, v)).name),
      meaning: 'length of the taper',
      source: GEOMETRY,
    }),
    leanAfter: hullStep('angle', {
      says: 'the same with the correction',
      uses: mendedKeys,
      find: (hull, v) => leanOf(hull, after(hull, v), v),
      meaning: 'flare of the frame side with the correction',
      source: GEOMETRY,
    }),
    areaChange: hullStep('area', {
      says: 'the hull drawn anew with the correction, its panels laid flat, less those before',
      uses: mendedKeys,
      find: (hull, v) => (number(v, 'proposed') === 0 ? 0 : skinOf(after(hull, v)) - skinOf(before(hull, v))),
      meaning: 'skin gained by the correction, both sides',
      source: GEOMETRY,
    }),
    volumeChange: hullStep('volume', {
      says: 'the hull drawn anew with the correction, under the water to the draught, less that before',
      uses: [...mendedKeys, 'draught'],
      find: (hull, v) => {
        if (number(v, 'proposed') === 0) return 0;
        const draught = number(v, 'draught');
        return displacementOf(after(hull, v), draught) - displacementOf(before(hull, v), draught);
      },
      meaning: 'displacement gained by the correction at that draught',
      source: GEOMETRY,
    }),
    offset: hullStep('length', {
      says: 'from the table, with the trial move',
      uses: [...lineKeys, 'station'],
      find: (hull, v) => lineOf(hull, v).values[indexHere(hull, v)]!,
      meaning: 'half-breadth or height of the station looked at',
      source: TABLE,
    }),
    bend: hullStep('curvature', {
      says: 'of the batten in this view: 1 over its radius',
      uses: [...lineKeys, 'station'],
      find: (hull, v) => lineOf(hull, v).bends[indexHere(hull, v)]!,
      meaning: 'bend of the batten there; − is hollow',
      source: BATTEN,
    }),
    duck: hullStep('force', {
      says: 'stiffness of the batten times the jump of its third derivative there, the batten’s ends running on free',
      uses: [...lineKeys, 'station', 'stiffness'],
      find: (hull, v) => number(v, 'stiffness') * lineOf(hull, v).ducks[indexHere(hull, v)]!,
      meaning: 'force of the duck on the batten there; + outboard or up',
      source: BATTEN,
    }),
    miss: hullStep('length', {
      says: 'its duck alone lifted, the batten held by all the others, its ends running on free',
      uses: [...lineKeys, 'station'],
      find: (hull, v) => lineOf(hull, v).misses[indexHere(hull, v)]!,
      meaning:
        'how far the mark stands outboard of or above the batten when its duck is lifted; at the two ends the batten runs on straight',
      source: BATTEN,
    }),
    oneHere: hullStep('length', {
      says: 'the one correction that would serve the run best, if it were this station’s',
      uses: [...lineKeys, 'nearest', 'station'],
      find: (hull, v) =>
        lineOf(hull, v).run(spreadOf(number(v, 'nearest'))).corrections[indexHere(hull, v)]!.correction,
      meaning: 'one correction if this station were the bad one',
      source: RUN,
    }),
    clears: hullStep('share', {
      says: 'what that correction takes off the run’s unfairness',
      uses: [...lineKeys, 'nearest', 'station'],
      find: (hull, v) =>
        lineOf(hull, v).run(spreadOf(number(v, 'nearest'))).corrections[indexHere(hull, v)]!.clears,
      meaning: 'share of the line’s unfairness that it would take away',
      source: RUN,
    }),
    move: hullStep('length', {
      says: 'the least mend of the whole line: its move of this station',
      uses: [...mendKeys, 'station'],
      find: (hull, v) => mendOf(hull, v)[indexHere(hull, v)]!,
      meaning: 'move of this station in the least mend; + outboard or up',
      source: LEAST,
    }),
  },
  answers: [
    {
      of: 'standsOut',
      label: 'stands out',
      from: 'the station of this line whose number disagrees with the others',
    },
    {
      of: 'proposed',
      label: 'move it by',
      from: 'at that station, + outboard or up',
      when: 'proof > 1',
    },
    {
      of: 'showsBest',
      label: 'an error shows from',
      from: 'at the frame of this line that shows it best; a smaller one is lost in the shape of the line itself',
    },
  ],
  inWords: [
    ...foundHere.map(elsewhereFirst),
    ...foundHere,
    {
      when: 'suspectProof > 1',
      says: `Look first at {suspect}, the {suspectLine} in {suspectView}. No number of the {edge} stands out in {view}. ${UNSEEN} ${HOLLOWS}`,
    },
    { says: `No number of the {edge} stands out in {view}. ${UNSEEN} ${HOLLOWS}` },
  ],
  table: {
    caption: 'The line at every station',
    over: 'station',
    columns: [
      { of: 'offset', label: 'offset' },
      { of: 'bend', label: 'bend' },
      { of: 'duck', label: 'duck' },
      { of: 'miss', label: 'proud when lifted' },
      { of: 'oneHere', label: 'move by, if it alone is wrong' },
      { of: 'clears', label: 'unfairness that takes away' },
      { of: 'move', label: 'move in the least mend' },
    ],
  },
  warnings: [
    {
      when: 'proof > 1',
      says: 'The number at {oddStation} is out by about {error}; a fair line would show no more than {shows}. Look it up in the plan before you cut anything.',
      limit: 'what fair lines with these stations show; docs/fairness.md',
      weight: 'mind',
    },
    {
      when: 'hollowCount > 0 and meant == "no"',
      says: 'Part of the line bends the wrong way. Hollows: {hollowCount}, the deepest {hollowDepth}.',
      limit: 'a line bends one way unless a reverse is meant; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'hollowCount > 1 and meant == "yes"',
      says: 'One reverse is meant, but {hollowCount} stretches of the line bend the other way.',
      limit: 'one reverse; common practice, no source',
      weight: 'mind',
    },
    {
      when: `wood > mostWedge and rivalNearly <= ${ALIKE}`,
      says: 'If {oddStation} is built already, {wood} of wood would have to go on or come off there, more than {mostWedge}: make a new one.',
      limit: 'a wedge of up to an inch (25 mm) at the thick end; common practice, no source',
      weight: 'stop',
    },
    {
      when: 'abs(shift) > 0 mm and abs(trial) == 0 mm',
      says: 'At {tried} the {edge} lies on the centreline, so in plan it is not moved there: look at it in profile, or try another station.',
      limit: 'the two sides of the boat meet there',
      weight: 'mind',
    },
  ],
  cautions: [
    'A suspect is not a verdict. Look up the number in the plan and measure the frame: the designer may have meant that shape.',
    'Two wrong numbers side by side can pass for one somewhere else. Look again after each correction.',
    'How far the batten springs when a duck is lifted is shown, but the cell does not judge by it: the neighbours of a wrong number spring as far as the wrong number does. At the two ends the batten only runs on straight, however fair the line.',
    'The two ends of a line show next to nothing: measure them by themselves. At a stem every half-breadth is nothing, and is not doubted.',
    'Mend both sides of the frame alike. Clamp it down before you plane it, keep both hands behind the iron, and sight along a batten over three frames before the last shavings.',
  ],
  sources: [
    { text: BATTEN, known: 'published' },
    { text: `${LEAST}: least change under conditions`, known: 'published' },
    {
      text: 'Divided differences: one error e shows in four third differences as e, −3e, 3e, −e',
      known: 'geometry',
    },
    {
      text: 'Fairing: 1/8 in (3 mm) is moved in silence, above 1/4 in (6 mm) one looks for a blunder; a wedge to nothing at the bottom and up to an inch (25 mm) at the top, the same taper taken off inside where the depth is to stay',
      known: 'common practice',
    },
  ],
  lights: ['{edge}'],
  draw: drawLine,
  chart: runChart,
  offers: offersOf,
  patterns: wedgePatterns,
});
