/** The working of the cell `fair`. */
import { step, type ValuesOf } from '../form/define';
import { fact, tell } from '../form/fact';
import {
  after,
  BATTEN,
  before,
  corrections,
  displacementOf,
  first,
  here,
  leanAt,
  LEAST,
  line,
  mend,
  panel,
  rival,
  RUN,
  shows,
  signs,
  skinOf,
  suspect,
  TABLE,
  trial,
} from './fair-facts';
import type { FairAsked, fairInputs } from './fair-inputs';
import { signsInWords } from './suspects';
import { GEOMETRY } from '../../trade/sources';

/** The line's numbers at the station looked at. */
const atStation = fact('from the table, with the trial move', TABLE, (_: FairAsked, { ask }) => {
  const at = ask(here);
  const { values, bends, ducks, misses } = ask(line);
  return { offset: values[at]!, bend: bends[at]!, duck: ducks[at]!, miss: misses[at]! }; // one of each a station
});

const correctionHere = fact(
  corrections.how,
  RUN,
  (_: FairAsked, { ask }) => ask(corrections)[ask(here)]!, // one a station
);

const moveHere = fact(
  'the least mend of the whole line: its move of this station',
  LEAST,
  (_: FairAsked, at) => at.ask(mend)[at.ask(here)]!, // one a station
);

/** What the correction does to the frame side and to the boat. */
const side = fact(
  'of the straight frame side that the line bounds: the one above it in plan, below it in profile',
  GEOMETRY,
  (_: FairAsked, { ask }) => {
    const { station } = ask(suspect);
    return {
      lean: leanAt(ask(before), ask(panel), station),
      length: ask(before).station(station.name).girth(ask(panel).name),
    };
  },
);

type Corrected = FairAsked & { readonly proposed: number };
const leaned = fact('the same with the correction', GEOMETRY, (_: Corrected, { ask }) =>
  leanAt(ask(after), ask(panel), ask(suspect).station),
);
const skinGained = fact(
  'the hull drawn anew with the correction, its panels laid flat, less those before',
  GEOMETRY,
  ({ proposed }: Corrected, { ask }) => (proposed === 0 ? 0 : skinOf(ask(after)) - skinOf(ask(before))),
);
const volumeGained = fact(
  'the hull drawn anew with the correction, under the water to the draught, less that before',
  GEOMETRY,
  ({ proposed, draught }: Corrected, { ask }) =>
    proposed === 0 ? 0 : displacementOf(ask(after), draught) - displacementOf(ask(before), draught),
);

export const fairSteps = {
  suspectStation: tell(
    first,
    'choice',
    'station of the number likeliest to be wrong, in the whole table',
    ({ station }) => station.name,
    { options: 'stations' },
  ),
  suspectProof: tell(
    first,
    'ratio',
    'how far it stands out; 1 and less is the plan’s own shape',
    ({ proof }) => proof,
    { how: 'the same search: its correction over the least error that would stand out there' },
  ),
  suspect: tell(
    first,
    'choice',
    'station of the first suspect of the whole table, if there is one',
    ({ station, proof }) => (proof > 1 ? station.name : 'none'),
    { options: 'stations', how: 'the same search: its station where that stands out, else none' },
  ),
  suspectLine: tell(
    first,
    'choice',
    'line of the number likeliest to be wrong',
    ({ line: { edge } }) => edge.name,
    { options: 'edges' },
  ),
  suspectView: tell(
    first,
    'choice',
    'view in which it is likeliest to be wrong',
    ({ line: { view } }) => view,
  ),
  oddStation: tell(suspect, 'choice', 'oddest station of this line', ({ station }) => station.name, {
    options: 'stations',
  }),
  standsOut: tell(
    suspect,
    'choice',
    'station whose number stands out of this line, if there is one',
    ({ station, proof }) => (proof > 1 ? station.name : 'none'),
    {
      options: 'stations',
      how: 'the oddest station of this line where its correction is larger than a fair line would ask for, else none',
    },
  ),
  correction: tell(
    suspect,
    'length',
    'correction that would set this line right there; + outboard or up',
    ({ correction }) => correction,
    { how: 'that one correction, by generalised least squares on the run' },
  ),
  shows: tell(
    suspect,
    'length',
    'least error that stands out at that station from the plan’s own shape',
    (odd) => odd.shows,
    {
      bound: 'most',
      how: '2.5 times the spread of that correction among fair lines with these stations, or the smallest error worth a thought if that is more',
    },
  ),
  showsBest: tell(
    shows,
    'length',
    'least error that stands out at the frame that shows it best',
    (all) => Math.min(...all),
    { how: 'the smallest of the same over all stations but the two ends' },
  ),
  showsEverywhere: tell(
    shows,
    'length',
    'least error that stands out at every frame',
    (all) => Math.max(...all),
    { how: 'the largest of the same over all stations but the two ends' },
  ),
  stations: tell(line, 'count', 'stations of the line', ({ x }) => x.length, { how: 'counted' }),
  error: step('length', 'abs(correction)', 'how far it stands out or in', GEOMETRY),
  proof: step('ratio', 'error / shows', 'how far it stands out; 1 and less is the plan’s own shape', RUN),
  proposed: step(
    'length',
    'proof > 1 ? correction : 0 mm',
    'correction proposed: none where nothing stands out',
    RUN,
  ),
  rival: tell(rival, 'choice', 'next to it in this line', ({ station }) => station.name, {
    options: 'stations',
  }),
  rivalError: tell(
    rival,
    'length',
    'error of the next, if it were the bad one',
    ({ correction }) => Math.abs(correction),
    { how: 'how large that correction would be, either way' },
  ),
  rivalNearly: tell(
    rival,
    'share',
    'how nearly as well the next explains the run; from 80 % on the two are not told apart',
    ({ nearly }) => nearly,
    { how: 'how far its correction stands out, over how far the oddest one’s does' },
  ),
  witnesses: tell(
    signs,
    'count',
    'other signs that point to the same station',
    (all) => all.filter(Boolean).length,
  ),
  signs: tell(signs, 'choice', 'how many of the other signs agree', signsInWords, {
    how: 'the same count, in words',
  }),
  hollowCount: tell(
    line,
    'count',
    'hollows of this line',
    ({ hollows }, { nearest }) => hollows.filter(({ depth }) => depth > nearest / 2).length,
    {
      how: 'stretches of the batten that bend against the line’s own turn, deeper than half the mark the table is read to',
      source: BATTEN,
    },
  ),
  hollowDepth: tell(
    line,
    'length',
    'depth of the deepest hollow',
    ({ hollows }) => Math.max(0, ...hollows.map(({ depth }) => depth)),
    { how: 'under a straightedge laid across the deepest of them', source: GEOMETRY },
  ),
  trial: tell(trial, 'length', 'move made on trial', ({ by }) => by),
  stands: tell(
    suspect,
    'length',
    'half-breadth or height of the oddest station as it stands',
    ({ line: { values }, station }) => values[station.index]!, // one a station
    { how: 'from the table, with the trial move', source: TABLE },
  ),
  corrected: step('length', 'stands + proposed', 'half-breadth or height there when corrected', GEOMETRY),
  mendCount: tell(
    mend,
    'count',
    'stations moved by the least mend',
    (moves) => moves.filter((move) => move !== 0).length,
    {
      how: 'the least change, in its sum of squares, that leaves the batten no hollow and no duck harder than a fair line’s: stations it moves',
    },
  ),
  mendMost: tell(
    mend,
    'length',
    'greatest move of the least mend, either way',
    (moves) => Math.max(...moves.map(Math.abs)),
    { how: 'the same: its greatest move' },
  ),
  lean: tell(side, 'angle', 'flare of the frame side there, from plumb', ({ lean }) => lean),
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
  wedgeLength: tell(side, 'length', 'length of the taper', ({ length }) => length, {
    how: 'along the frame side, from this line to the next',
  }),
  leanAfter: tell(leaned, 'angle', 'flare of the frame side with the correction'),
  areaChange: tell(skinGained, 'area', 'skin gained by the correction, both sides'),
  volumeChange: tell(volumeGained, 'volume', 'displacement gained by the correction at that draught'),
  offset: tell(atStation, 'length', 'half-breadth or height of the station looked at', (at) => at.offset),
  bend: tell(atStation, 'curvature', 'bend of the batten there; − is hollow', ({ bend }) => bend, {
    how: 'of the batten in this view: 1 over its radius',
    source: BATTEN,
  }),
  duck: tell(
    atStation,
    'force',
    'force of the duck on the batten there; + outboard or up',
    ({ duck }, { stiffness }) => stiffness * duck,
    {
      how: 'stiffness of the batten times the jump of its third derivative there, the batten’s ends running on free',
      source: BATTEN,
    },
  ),
  miss: tell(
    atStation,
    'length',
    'how far the mark stands outboard of or above the batten when its duck is lifted; at the two ends the batten runs on straight',
    ({ miss }) => miss,
    {
      how: 'its duck alone lifted, the batten held by all the others, its ends running on free',
      source: BATTEN,
    },
  ),
  oneHere: tell(
    correctionHere,
    'length',
    'one correction if this station were the bad one',
    ({ correction }) => correction,
  ),
  clears: tell(
    correctionHere,
    'share',
    'share of the line’s unfairness that it would take away',
    (one) => one.clears,
    { how: 'what that correction takes off the run’s unfairness' },
  ),
  move: tell(moveHere, 'length', 'move of this station in the least mend; + outboard or up'),
} as const;

/** All that the drawings, offers and patterns of the cell go by. */
export type FairValues = ValuesOf<typeof fairInputs, typeof fairSteps>;
