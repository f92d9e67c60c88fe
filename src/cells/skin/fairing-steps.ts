/** The working of the fairing: the face of a long timber held against the skin. */
import { type FacePlace, faceOnSkin, type StickPlace, underStick } from '../../boat/joinery/face-on-skin';
import { skinOnPost } from '../../boat/hull/post-skin';
import { step, type ValuesOf } from '../form/define';
import { fact, tell } from '../form/fact';
import { marksAlong, MOST_MARKS } from '../common/frame/marks-along';
import type { fairingInputs } from './fairing-inputs';
import { GEOMETRY } from '../../trade/sources';

const BOARD =
  'small deflections of a board held at the stations, as in any text on the strength of materials';

/** The inputs as facts read them. */
export type FairingAsked = ValuesOf<typeof fairingInputs>;

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

export const lie = fact(
  'the board’s own curve and turn between the frames, held against the ruled panel',
  `geometry; ${BOARD}`,
  ({ ends }: Pick<FairingAsked, 'ends'>, { ask }) => {
    const { edge, panel, reach } = ask(onPanel);
    return faceOnSkin(edge, panel, reach, ends);
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

/** Tenths of the way up. */
const TENTHS = 10;

/**
 * The landing of the side on a stem that is planed evenly, its bevel turning as much in each tenth of its height from
 * its foot to its head; held at the outer face, it leaves the skin at the bearding line. Null where she has no stem.
 */
const onStem = fact(
  'the bevel at each tenth of the way up against one that turns evenly from foot to head; landing × sine of the difference',
  GEOMETRY,
  ({ landing }: Pick<FairingAsked, 'landing'>, { hull }) => {
    if (hull.fore.role !== 'stem') return null;
    const places = Array.from({ length: TENTHS + 1 }, (_, i) => skinOnPost(hull, hull.fore, i / TENTHS));
    const [foot, head] = [places[0]!.entry, places[TENTHS]!.entry];
    const offs = places.map(({ up, entry }, i) => {
      const even = foot + ((head - foot) * i) / TENTHS;
      return { up, off: landing * Math.sin(even - entry) };
    });
    return { proud: largest(offs, ({ off }) => off), lack: largest(offs, ({ off }) => -off) };
  },
);

const mark = fact(lie.how, lie.source, ({ at }: Pick<FairingAsked, 'at'>, { ask }) => ask(lie).at(at));

export const marks = fact(
  'from its after end at the interval, both ends with them',
  GEOMETRY,
  ({ interval }: Pick<FairingAsked, 'interval'>, { ask }) => marksAlong(ask(landing).edge.length, interval),
);

/** Nothing that a plane takes is smaller, m: a pencil line is as thick. */
const positive = (value: number) => (value > NOTHING ? value : 0);

export const fairingSteps = {
  faces: tell(landing, 'count', 'panels that meet at the edge', ({ panels }) => panels.length),
  isKeelson: tell(landing, 'count', 'whether it lies along the keel', ({ edge }) =>
    edge.index === 0 ? 1 : 0,
  ),
  panel: tell(onPanel, 'choice', 'panel that the face lies on', ({ panel }) => panel.name, {
    options: 'panels',
  }),
  timberLength: tell(landing, 'length', 'length along the edge', ({ edge }) => edge.length),
  reach: tell(onPanel, 'length', 'from the edge across the face to its far edge', ({ reach }) => reach),
  most: tell(worst, 'length', 'most that it stands proud of the skin, anywhere along it', ({ proud }) =>
    positive(proudOf(proud)),
  ),
  mostAt: tell(worst, 'length', 'where that is, from its after end', ({ proud }) => proud.along),
  rises: tell(
    worst,
    'length',
    'how much further its far edge stands out there than its near one',
    ({ proud }) => proud.far - proud.line,
  ),
  lacks: tell(worst, 'length', 'most that it lacks of reaching the skin', ({ lack }) =>
    positive(lackOf(lack)),
  ),
  lacksAt: tell(worst, 'length', 'where that is, from its after end', ({ lack }) => lack.along),
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
    (found) => positive(found?.proud.off ?? 0),
  ),
  stemMostUp: tell(onStem, 'length', 'where that is, up the stem', (found) => found?.proud.up ?? 0),
  stemLacks: tell(onStem, 'length', 'most that it lacks there of reaching the side', (found) =>
    positive(-(found?.lack.off ?? 0)),
  ),
  stemLacksUp: tell(onStem, 'length', 'where that is, up the stem', (found) => found?.lack.up ?? 0),
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
