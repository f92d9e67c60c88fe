/**
 * The glued joints of a boat, as formulas over the scantlings linked to: how long each is and how wide, in how
 * many pieces, at how many places, and how thick is what lies over the glue.
 *
 * A solid timber is glued where it crosses a frame or lands on an end; a laminated one all along each of its
 * lines; a panel along its seams.
 */
import type { Option } from '../../../boat';

export interface JointToGlue extends Option {
  readonly about: readonly string[];
  /** Formulas over the inputs below: all pieces together, both sides of the boat. */
  readonly length: string;
  readonly width: string;
  /** Pieces that are glued one after the other, and the places of each; one place is a run all along. */
  readonly pieces: string;
  readonly places: string;
  readonly above: string;
  /** The timber along which it runs. */
  readonly along: Timber;
}

export type Timber = 'keelson' | 'log' | 'clamp' | 'rail';
/** The boat's part by the timber. */
export const parts: Readonly<Record<Timber, string>> = {
  keelson: 'keelson',
  log: 'chineLog',
  clamp: 'sheerClamp',
  rail: 'rubRail',
};

export const SEATS = 'frames + ends';
export const ALONG = '1';

/** Where three parts meet each joint stands for itself: a log is glued to frames, to the side and to the bottom. */
export const joints: readonly JointToGlue[] = [
  {
    id: 'keelsonFrames',
    along: 'keelson',
    label: 'keelson to frames and ends',
    about: ['keelson', 'frame'],
    length: 'keelsonSeats',
    width: 'siding',
    pieces: '1',
    places: SEATS,
    above: 'keelsonThickness',
  },
  {
    id: 'logFrames',
    along: 'log',
    label: 'chine logs to frames and ends',
    about: ['chineLog', 'frame'],
    length: 'logSeats',
    width: 'siding',
    pieces: 'logPieces',
    places: SEATS,
    above: 'logThickness',
  },
  {
    id: 'clampFrames',
    along: 'clamp',
    label: 'sheer clamps to frames and ends',
    about: ['sheerClamp', 'frame'],
    length: 'clampSeats',
    width: 'siding',
    pieces: 'clampPieces',
    places: SEATS,
    above: 'clampThickness',
  },
  {
    id: 'bottomKeelson',
    along: 'keelson',
    label: 'bottom to keelson',
    about: ['keelson', 'bottom'],
    length: 'keelsonRun',
    width: 'keelsonWidth',
    pieces: '1',
    places: ALONG,
    above: 'bottomThickness',
  },
  {
    id: 'bottomLogs',
    along: 'log',
    label: 'bottom to chine logs',
    about: ['chineLog', 'bottom'],
    length: 'logRun',
    width: 'logThickness',
    pieces: 'logPieces',
    places: ALONG,
    above: 'bottomThickness',
  },
  {
    id: 'sideLogs',
    along: 'log',
    label: 'sides to chine logs',
    about: ['chineLog', 'side'],
    length: 'logRun',
    width: 'logWidth',
    pieces: 'logPieces',
    places: ALONG,
    above: 'sideThickness',
  },
  {
    id: 'sideClamps',
    along: 'clamp',
    label: 'sides to sheer clamps',
    about: ['sheerClamp', 'side'],
    length: 'clampRun',
    width: 'clampWidth',
    pieces: 'clampPieces',
    places: ALONG,
    above: 'sideThickness',
  },
  {
    id: 'rubRails',
    along: 'rail',
    label: 'rub rails to sides',
    about: ['rubRail', 'side'],
    length: 'railRun',
    width: 'railWidth',
    pieces: 'railPieces',
    places: ALONG,
    above: 'railThickness',
  },
];

/** Of two layers, as most are; they are no joints of a boat whose timbers are solid, and no part of the sum. */
const betweenLayers: readonly JointToGlue[] = [
  {
    id: 'keelsonLayers',
    along: 'keelson',
    label: 'between layers of the keelson',
    about: ['keelson'],
    length: 'keelsonRun',
    width: 'keelsonWidth',
    pieces: '1',
    places: ALONG,
    above: 'keelsonThickness / 2',
  },
  {
    id: 'logLayers',
    along: 'log',
    label: 'between layers of the chine logs',
    about: ['chineLog'],
    length: 'logRun',
    width: 'logWidth',
    pieces: 'logPieces',
    places: ALONG,
    above: 'logThickness / 2',
  },
  {
    id: 'clampLayers',
    along: 'clamp',
    label: 'between layers of the sheer clamps',
    about: ['sheerClamp'],
    length: 'clampRun',
    width: 'clampWidth',
    pieces: 'clampPieces',
    places: ALONG,
    above: 'clampThickness / 2',
  },
];

export const single: readonly JointToGlue[] = [...joints, ...betweenLayers];
const named = (list: readonly JointToGlue[]): readonly Option[] =>
  list.map(({ id, label, about }) => ({ id, label, about, ofBoat: true }));

/** Joints that are closed one at a time. */
export const singleJoints = named(single);

export const jointOptions: readonly Option[] = [
  ...named(joints),
  { id: 'all', label: 'all of these, timbers solid', about: Object.values(parts), ofBoat: true },
  ...named(betweenLayers),
];
