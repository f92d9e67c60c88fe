/** What the glued joints of a boat ask of her, and how long, how wide and in how many pieces each is. */
import { input, step } from '../../form/define';
import { fromBoat } from '../../form/from-boat';
import { type JointToGlue, joints, parts, SEATS, single, type Timber } from './joint-list';
import { GEOMETRY } from '../../../trade/sources';

/** A width takes one bead for every so much of it. */
export const BEAD_EVERY = '40 mm';
const BEADS = `one bead for each ${BEAD_EVERY} (1 1/2 in) of width: common practice, no source`;

const pick = (of: (joint: JointToGlue) => string, all: string) =>
  single.reduceRight((rest, joint) => `joint == "${joint.id}" ? ${of(joint)} : ${rest}`, all);
/** The boat's part along which a single joint runs; the keelson where there is no such joint. */
export const partAlong = (joint: string): string =>
  parts[single.find(({ id }) => id === joint)?.along ?? 'keelson'];

/** The wood of that part, by the joint. */
export const woodAlong: Readonly<Record<string, string>> = Object.fromEntries(
  single.map(({ id, along }) => [id, `${parts[along]}.timber`]),
);
/** Whether the joint chosen runs along this part. */
export const joinedAlong = (part: string): string =>
  single
    .filter(({ along }) => parts[along] === part)
    .map(({ id }) => `joint == "${id}"`)
    .join(' or ');

/** A formula by the timber along which a single joint runs. */
export const byPart = (of: Readonly<Record<Timber, string>>): string =>
  single
    .slice(0, -1)
    .reduceRight(
      (rest, { id, along }) => `joint == "${id}" ? ${of[along]} : ${rest}`,
      of[single.at(-1)!.along],
    ); // there are joints
const sum = (of: (joint: JointToGlue) => string) => joints.map(of).join(' + ');

/** From the scantlings to the joint chosen; of all together the width is the mean. */
export const jointSteps = {
  keelsonSeats: step('length', `(${SEATS}) * keelsonWidth`, 'keelson where it is glued, all seats', GEOMETRY),
  logSeats: step(
    'length',
    `(${SEATS}) * logPieces * (logThickness + logWidth)`,
    'chine logs in their notches, two faces of each',
    GEOMETRY,
  ),
  clampSeats: step(
    'length',
    `(${SEATS}) * clampPieces * (clampThickness + clampWidth)`,
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
  pieces: step(
    'count',
    `max(1, ${pick(({ pieces }) => pieces, '1')})`,
    'pieces glued one after the other: port and starboard, chine by chine',
    GEOMETRY,
  ),
  places: step(
    'count',
    `max(1, ${pick(({ places }) => places, '1')})`,
    'places where each is glued; 1 for a run all along',
    GEOMETRY,
  ),
  above: step(
    'length',
    pick(({ above }) => above, '0 mm'),
    'wood over the glue, that a clamp presses through',
    GEOMETRY,
  ),
  pieceLength: step('length', 'jointLength / pieces', 'length of the joint on one of them', GEOMETRY),
  usualBeads: step('count', `ceil(width / (${BEAD_EVERY}))`, 'beads side by side', BEADS),
};

/** Names in formulas that are worked out of others, spelt out. */
const spelt = (formula: string): string =>
  formula.replace(/\b(keelson|log|clamp)Seats\b/g, (name) => jointSteps[name as 'keelsonSeats'].formula);
const asks = (formula: string, key: string) => new RegExp(String.raw`\b${key}\b`).test(spelt(formula));

/** Where a number of the boat counts: in joints that go by it, as long as it is not typed over what comes of it. */
function countsIn(key: string): string {
  const of = single.filter((joint) =>
    [joint.length, joint.width, joint.pieces, joint.places, joint.above].some((formula) =>
      asks(formula, key),
    ),
  );
  const inAll = joints.some(({ length, width }) => asks(length, key) || asks(width, key));
  const among = [...of.map(({ id }) => id), ...(inAll ? ['all'] : [])];
  const own = [
    ...(of.some(({ length, above }) => asks(length, key) || asks(above, key))
      ? ['length == jointLength']
      : []),
    ...(of.some(({ width }) => asks(width, key)) ? ['width == jointWidth'] : []),
  ];
  const chosen = among.map((id) => `joint == "${id}"`).join(' or ');
  // Of pieces each is glued by itself, however long they are.
  return of.some(({ pieces }) => asks(pieces, key)) ? chosen : `(${chosen}) and (${own.join(' or ')})`;
}

const run = (key: string, label: string, from: string) =>
  input('length', label, {
    from,
    preset: '0 m',
    min: '0 m',
    max: '400 m',
    step: '100 mm',
    when: countsIn(key),
    ofBoat: true,
  });
const ofBoat = (key: string, name: string) => fromBoat(name, { when: countsIn(key), ofBoat: true });
const pieces = (key: string, label: string, from: string) =>
  input('count', label, {
    from,
    preset: '0',
    min: '0',
    max: '40',
    step: '1',
    when: countsIn(key),
    ofBoat: true,
  });

/** What the formulas ask of the boat; 0 where it has no such part. */
export const jointInputs = {
  frames: pieces('frames', 'Frames', 'hull.frames'),
  ends: input('count', 'Ends that timbers land on', {
    when: countsIn('ends'),
    ofBoat: true,
    preset: '2',
    min: '0',
    max: '2',
    step: '1',
    note: 'stem and transom, each reckoned as one more frame',
  }),
  siding: ofBoat('siding', 'frame.siding'),
  keelsonRun: run('keelsonRun', 'Keelson: length', 'keelson.totalLength'),
  keelsonWidth: ofBoat('keelsonWidth', 'keelson.width'),
  keelsonThickness: ofBoat('keelsonThickness', 'keelson.thickness'),
  logRun: run('logRun', 'Chine logs, length in all', 'chineLog.totalLength'),
  logPieces: pieces('logPieces', 'Number of chine logs', 'chineLog.pieces'),
  logThickness: ofBoat('logThickness', 'chineLog.thickness'),
  logWidth: ofBoat('logWidth', 'chineLog.width'),
  clampRun: run('clampRun', 'Sheer clamps, length in all', 'sheerClamp.totalLength'),
  clampPieces: pieces('clampPieces', 'Number of sheer clamps', 'sheerClamp.pieces'),
  clampThickness: ofBoat('clampThickness', 'sheerClamp.thickness'),
  clampWidth: ofBoat('clampWidth', 'sheerClamp.width'),
  railRun: run('railRun', 'Rub rails, length in all', 'rubRail.totalLength'),
  railPieces: pieces('railPieces', 'Number of rub rails', 'rubRail.pieces'),
  railThickness: ofBoat('railThickness', 'rubRail.thickness'),
  railWidth: ofBoat('railWidth', 'rubRail.width'),
  bottomThickness: fromBoat('{bottom}.thickness', {
    label: 'Bottom thickness',
    when: countsIn('bottomThickness'),
    ofBoat: true,
  }),
  sideThickness: ofBoat('sideThickness', 'side.thickness'),
};
