/** The working of the fairing: the face of a long timber held against the skin. */
import { type FacePlace, faceOnSkin, type StickPlace, underStick } from '../../boat/joinery/face-on-skin';
import { step, type ValuesOf } from '../form/define';
import { fact, tell } from '../form/fact';
import { marksAlong, MOST_MARKS } from '../common/frame/marks-along';
import type { FairingAsked } from './fairing-inputs';
import { onStem, stem } from './fairing-stem';
import type { fairingInputs } from './fairing-inputs';
import { GEOMETRY } from '../../trade/sources';

const BOARD =
  'small deflections of a board held at the stations, as in any text on the strength of materials';

/** The edge that it lies along and the panels that meet there. */
export const landing = fact(
  'the edge of the hull that it lies along',
  GEOMETRY,
  ({ along }: Pick<FairingAsked, 'along'>, { hull }) => {
    const edge = hull.edge(along);
    const panels = hull.panels.filter(({ inner, outer }) => inner === edge || outer === edge);
    return { edge, panels };
  },
);

/** The panel that the face in hand lies on, and how far across it the face reaches from the edge. */
export const onPanel = fact(
  'a keelson half to each side; a log flat on the side by its width, on the bottom by its thickness',
  GEOMETRY,
  ({ face, thickness, width }: Pick<FairingAsked, 'face' | 'thickness' | 'width'>, { ask }) => {
    const { edge, panels } = ask(landing);
    const isUnder = panels.length > 1 && face === 'below';
    const panel = isUnder ? panels[0]! : panels.at(-1)!; // an edge bounds a panel
    return { edge, panel, reach: edge.index === 0 ? width / 2 : isUnder ? thickness : width };
  },
);

/** A stem reaches the side by its landing, and stands on its own foot; any other timber lies along its edge. */
export const lie = fact(
  'the board’s own curve and turn between the frames, held against the ruled panel; of a stem its bevel, planed evenly from foot to head',
  `geometry; ${BOARD}`,
  ({ timber, ends, landing: wide }: Pick<FairingAsked, 'timber' | 'ends' | 'landing'>, { hull, ask }) => {
    if (timber === 'stem') {
      const of = ask(stem);
      if (!of) throw new Error('she has no stem: choose another timber');
      const side = hull.panels.at(-1)!; // a hull has a panel
      return { ...of, panel: side, reach: wide, ticks: [] };
    }
    const { edge, panel, reach } = ask(onPanel);
    // An arc a station.
    const ticks = hull.stations.map(({ index, label }) => ({ at: edge.arcs[index]!, label }));
    return { ...faceOnSkin(edge, panel, reach, ends), length: edge.length, panel, reach, ticks };
  },
);

const proudOf = ({ line, far }: FacePlace) => Math.max(line, far);
const lackOf = ({ line, far }: FacePlace) => Math.max(-line, -far);

/** Less than this is what rounding leaves, m. */
const NOTHING = 1e-7;

function largest<T>(places: readonly T[], of: (place: T) => number): T {
  return places.reduce((best, place) => (of(place) > of(best) + NOTHING ? place : best));
}

/** Where it stands proud most, and where it lacks most. */
export const worst = fact('sixteen places a bay', GEOMETRY, (_: unknown, { ask }) => {
  const { places } = ask(lie);
  return { proud: largest(places, proudOf), lack: largest(places, lackOf) };
});

const stick = fact(
  'keelson and first chine, each below its straight line from station to station, at the same share of the bay',
  `geometry; ${BOARD}`,
  ({ ends }: Pick<FairingAsked, 'ends'>, { hull }) => {
    const places = underStick(hull, ends);
    const most = places.length > 0 ? largest(places, ({ proud }: StickPlace) => Math.abs(proud)) : null;
    return most && { ...most, from: hull.stations[most.after]!, to: hull.stations[most.after + 1]! }; // within the ends
  },
);

const mark = fact(lie.how, lie.source, ({ at }: Pick<FairingAsked, 'at'>, { ask }) => ask(lie).at(at));

export const marks = fact(
  'from its after end, or its foot, at the interval, both ends with them',
  GEOMETRY,
  ({ interval }: Pick<FairingAsked, 'interval'>, { ask }) => marksAlong(ask(lie).length, interval),
);

/** Nothing that a plane takes is smaller, m: a pencil line is as thick. */
const positive = (value: number) => (value > NOTHING ? value : 0);

export const fairingSteps = {
  faces: tell(
    landing,
    'count',
    'panels that meet at the edge; one lands on a stem from each side',
    ({ panels }, { timber }: FairingAsked) => (timber === 'stem' ? 1 : panels.length),
  ),
  isKeelson: tell(landing, 'count', 'whether it lies along the keel', ({ edge }, { timber }: FairingAsked) =>
    timber !== 'stem' && edge.index === 0 ? 1 : 0,
  ),
  panel: tell(lie, 'choice', 'panel that the face lies on', ({ panel }) => panel.name, {
    options: 'panels',
  }),
  timberLength: tell(
    lie,
    'length',
    'length along the edge; of a stem up its outer face',
    ({ length }) => length,
  ),
  reach: tell(lie, 'length', 'from the edge across the face to its far edge', ({ reach }) => reach),
  most: tell(worst, 'length', 'most that it stands proud of the skin, anywhere along it', ({ proud }) =>
    positive(proudOf(proud)),
  ),
  mostAt: tell(worst, 'length', 'where that is, from its after end or its foot', ({ proud }) => proud.along),
  rises: tell(
    worst,
    'length',
    'how much further its far edge stands out there than its near one',
    ({ proud }) => proud.far - proud.line,
  ),
  lacks: tell(worst, 'length', 'most that it lacks of reaching the skin', ({ lack }) =>
    positive(lackOf(lack)),
  ),
  lacksAt: tell(worst, 'length', 'where that is, from its after end or its foot', ({ lack }) => lack.along),
  differ: tell(
    stick,
    'length',
    'most that the keelson’s own curve and the chine’s differ by between two frames: + the keelson stands out more, - it lacks',
    (found) => found?.proud ?? 0,
  ),
  differFrom: tell(stick, 'choice', 'station aft of that place', (found) => found?.from.name ?? 'none', {
    options: 'stations',
  }),
  differTo: tell(stick, 'choice', 'station forward of it', (found) => found?.to.name ?? 'none', {
    options: 'stations',
  }),
  hasChine: tell(stick, 'count', 'whether there is a chine to lay a stick to', (found) => (found ? 1 : 0)),
  hasStem: tell(onStem, 'count', 'whether she has a stem', (found) => (found ? 1 : 0)),
  stemMost: tell(
    onStem,
    'length',
    'most that a stem planed evenly from foot to head stands proud of the side, at the bearding line',
    (found) => positive(found?.proud.far ?? 0),
  ),
  stemMostUp: tell(onStem, 'length', 'where that is, up the stem', (found) => found?.proud.along ?? 0),
  stemLacks: tell(onStem, 'length', 'most that it lacks there of reaching the side', (found) =>
    positive(-(found?.lack.far ?? 0)),
  ),
  stemLacksUp: tell(onStem, 'length', 'where that is, up the stem', (found) => found?.lack.along ?? 0),
  line: tell(
    mark,
    'length',
    'at the edge: + it stands proud of the skin by so much, - it lacks so much',
    ({ line }) => line,
  ),
  far: tell(mark, 'length', 'the same at the far edge of its face', ({ far }) => far),
  off: step('length', 'max(0 mm, max(line, far))', 'to plane off at this mark, at the higher edge', GEOMETRY),
  shim: step('length', 'max(0 mm, max(-line, -far))', 'to shim at this mark, at the lower edge', GEOMETRY),
  onTimber: step('count', 'at <= timberLength + 0.1 mm ? 1 : 0', 'whether the mark lies on it', GEOMETRY),
  listed: step('length', `${MOST_MARKS} * interval`, 'where the list of marks ends', GEOMETRY),
} as const;

export type FairingValues = ValuesOf<typeof fairingInputs, typeof fairingSteps>;
