/** The glued joints of a boat: how long each is and how wide, as formulas over the scantlings linked to. */
import type { Option } from '../../boat';
import { input, step } from '../define';

interface Joint extends Option {
  /** Formulas over the inputs below. */
  readonly length: string;
  readonly width: string;
}

/** Where three parts meet each joint stands for itself: a log is glued to frames, to the side and to the bottom. */
const joints: readonly Joint[] = [
  { id: 'keelsonFrames', label: 'keelson to frames', length: 'keelsonSeats', width: 'siding' },
  { id: 'logFrames', label: 'chine logs to frames', length: 'logSeats', width: 'siding' },
  { id: 'clampFrames', label: 'sheer clamps to frames', length: 'clampSeats', width: 'siding' },
  { id: 'bottomKeelson', label: 'bottom to keelson', length: 'keelsonRun', width: 'keelsonWidth' },
  { id: 'bottomLogs', label: 'bottom to chine logs', length: 'logRun', width: 'logThickness' },
  { id: 'sideLogs', label: 'sides to chine logs', length: 'logRun', width: 'logWidth' },
  { id: 'sideClamps', label: 'sides to sheer clamps', length: 'clampRun', width: 'clampWidth' },
  { id: 'rubRails', label: 'rub rails to sides', length: 'railRun', width: 'railWidth' },
];

export const jointOptions: readonly Option[] = [
  ...joints.map(({ id, label }) => ({ id, label })),
  { id: 'all', label: 'all of these together' },
];

/** A width takes one bead for every so much of it. */
export const BEAD_EVERY = '40 mm';
const BEADS = `one bead for each ${BEAD_EVERY} of width: common practice, no source`;
const GEOMETRY = 'geometry';

const pick = (of: (joint: Joint) => string, all: string) =>
  joints.reduceRight((rest, joint) => `joint == "${joint.id}" ? ${of(joint)} : ${rest}`, all);
const sum = (of: (joint: Joint) => string) => joints.map(of).join(' + ');
const beadsOn = (width: string) => `ceil(${width} / (${BEAD_EVERY}))`;

/** From the scantlings to the length and the width of the joint chosen; of all together the width is the mean. */
export const jointSteps = {
  keelsonSeats: step('length', 'frames * keelsonWidth', 'keelson on the frames, all seats', GEOMETRY),
  logSeats: step(
    'length',
    'frames * logPieces * (logThickness + logWidth)',
    'chine logs in their notches, two faces of each',
    GEOMETRY,
  ),
  clampSeats: step(
    'length',
    'frames * clampPieces * (clampThickness + clampWidth)',
    'sheer clamps in their notches, two faces of each',
    GEOMETRY,
  ),
  allLength: step(
    'length',
    sum(({ length }) => length),
    'all joints together',
    GEOMETRY,
  ),
  allArea: step(
    'area',
    sum(({ length, width }) => `${length} * ${width}`),
    'glue faces of all joints together',
    GEOMETRY,
  ),
  allBeads: step(
    'length',
    sum(({ length, width }) => `${length} * ${beadsOn(width)}`),
    'beads of all joints, one after the other',
    BEADS,
  ),
  jointLength: step(
    'length',
    pick(({ length }) => length, 'allLength'),
    'length of this joint on the boat',
    GEOMETRY,
  ),
  jointWidth: step(
    'length',
    pick(({ width }) => width, 'allLength > 0 ? allArea / allLength : 0 mm'),
    'width of its glue face',
    GEOMETRY,
  ),
  usualBeads: step(
    'number',
    `joint != "all" ? ${beadsOn('jointWidth')} : allLength > 0 ? allBeads / allLength : 0`,
    'beads side by side',
    BEADS,
  ),
};

const run = (label: string, from: string) =>
  input('length', label, { seldom: true, from, preset: '0 m', min: '0 m', max: '400 m', step: '100 mm' });
const side = (label: string, from: string, preset: string) =>
  input('length', label, { seldom: true, from, preset, min: '0 mm', max: '500 mm', step: '1 mm' });
const pieces = (label: string, from: string) =>
  input('count', label, { seldom: true, from, preset: '0', min: '0', max: '40', step: '1' });

/** What the formulas ask of the boat; 0 where it has no such part. */
export const jointInputs = {
  frames: pieces('Frames', 'hull.frames'),
  siding: side('Frames: thickness fore and aft', 'frame.siding', '19 mm'),
  keelsonRun: run('Keelson: length', 'keelson.totalLength'),
  keelsonWidth: side('Keelson: width', 'keelson.width', '90 mm'),
  logRun: run('Chine logs: length, all together', 'chineLog.totalLength'),
  logPieces: pieces('Chine logs', 'chineLog.pieces'),
  logThickness: side('Chine logs: thickness', 'chineLog.thickness', '19 mm'),
  logWidth: side('Chine logs: width', 'chineLog.width', '38 mm'),
  clampRun: run('Sheer clamps: length, all together', 'sheerClamp.totalLength'),
  clampPieces: pieces('Sheer clamps', 'sheerClamp.pieces'),
  clampThickness: side('Sheer clamps: thickness', 'sheerClamp.thickness', '19 mm'),
  clampWidth: side('Sheer clamps: width', 'sheerClamp.width', '38 mm'),
  railRun: run('Rub rails: length, all together', 'rubRail.totalLength'),
  railWidth: side('Rub rails: width', 'rubRail.width', '38 mm'),
};
