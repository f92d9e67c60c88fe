/** Bevels of a frame: the angle each of its edges is planed to so that the skin lies on it. */
import { input, choice, type OnHand, type Chart, defineCell } from '../form/define';
import { fromBoat } from '../form/from-boat';
import { firstOf, words } from '../form/in-words';
import { tableOf } from '../form/row-quantities';
import { pastTheSaw } from './saw-tilt';
import { mm, drawing, note } from '../../drawing';
import { edgeSection } from './bevelled-edge-drawing';
import { logSection } from './log-drawing';
import { attempt } from '../../boat';
import { isIssue } from '../../measure';
import { bevelSteps } from './bevels-steps';

const slope = (label: string, from: string) =>
  input('ratio', label, {
    from,
    preset: '0',
    min: '-3',
    max: '3',
    step: '0.01',
    note: '+ where the line moves outboard, or up, going forward',
  });

const SIDE_OPENS = 'chineBevel >= 0° and sheerBevel >= 0°';
const OPENS = { when: SIDE_OPENS, says: 'opens', otherwise: 'closes in' };
const BOTTOM_OPENS = 'bottomBevel >= 0° and keelBevel >= 0°';
/** The face or corner that is meant where this holds; elsewhere it is the other. */
const after = (when: string) => ({ when, says: 'after', otherwise: 'forward' });
const forward = (when: string) => ({ when, says: 'forward', otherwise: 'after' });

export const bevels = defineCell({
  id: 'bevels',
  stage: 'frames',
  title: 'Bevels of the frames',
  question: 'What bevel do I plane on each edge of this frame, and off which corner?',
  inputs: {
    frame: choice('Frame', { options: 'frames', preset: 'frame3' }),
    chine: choice('Chine', {
      options: 'chines',
      preset: 'chine',
      without: 'none: side and bottom are one',
      note: 'the side is taken to run from it to the sheer: of two chines the upper one',
    }),
    siding: fromBoat('frame.siding', { hint: 'measure the wood in hand' }),
    flare: input('angle', 'Flare of the skin at the chine', {
      from: '{frame}.{chine}.above.flare',
      preset: '20 deg',
      min: '-60 deg',
      max: '80 deg',
      step: '0.5 deg',
      note: 'from plumb, + outward',
    }),
    sheerFlare: input('angle', 'Flare of the skin at the sheer', {
      from: '{frame}.{sheer}.below.flare',
      preset: '20 deg',
      min: '-60 deg',
      max: '80 deg',
      step: '0.5 deg',
      note: 'from plumb, + outward',
    }),
    deadrise: input('angle', 'Deadrise of the skin at the chine', {
      from: '{frame}.{chine}.below.deadrise',
      preset: '0 deg',
      min: '-20 deg',
      max: '80 deg',
      step: '0.5 deg',
      note: 'from level, + where the bottom rises outboard',
    }),
    chinePlan: slope('Chine slope in plan', '{frame}.{chine}.planSlope'),
    chineProfile: slope('Chine slope in profile', '{frame}.{chine}.profileSlope'),
    sheerPlan: slope('Sheer slope in plan', '{frame}.{sheer}.planSlope'),
    sheerProfile: slope('Sheer slope in profile', '{frame}.{sheer}.profileSlope'),
    keelProfile: slope('Keel slope in profile', '{frame}.{keel}.profileSlope'),
    keelDeadrise: input('angle', 'Deadrise of the skin at the keel', {
      from: '{frame}.{keel}.above.deadrise',
      preset: '0 deg',
      min: '-20 deg',
      max: '80 deg',
      step: '0.5 deg',
      note: 'from level, + where the bottom rises outboard',
    }),
    side: choice('Stands', {
      from: 'framePattern.side',
      options: [
        { id: 'custom', label: 'as is the custom' },
        { id: 'forward', label: 'forward of its line' },
        { id: 'aft', label: 'aft of its line' },
      ],
      preset: 'custom',
    }),
    custom: choice('By custom it stands', {
      when: 'side == "custom"',
      from: '{frame}.stands',
      options: [
        { id: 'forward', label: 'forward of its line' },
        { id: 'aft', label: 'aft of its line' },
        { id: 'larger', label: 'its larger face on the line' },
      ],
      preset: 'larger',
      note: 'forward of its line before the widest frame, aft of it behind',
    }),
    logThickness: fromBoat('chineLog.thickness', {
      hint: 'from its face on the side panel inward',
    }),
  },
  groups: {
    'At the chine': ['deadrise', 'chineProfile', 'logThickness'],
    'At the sheer': ['sheerFlare', 'sheerPlan', 'sheerProfile'],
    'At the keel': ['keelProfile', 'keelDeadrise'],
    'How it stands': ['side', 'custom'],
  },
  steps: bevelSteps,
  answers: [
    {
      of: 'chineBevel',
      when: 'hasChine > 0',
      label: 'bevel at the chine',
      from: 'off square, on the edge that takes the side; + plane the after corner, − the forward corner',
      tolerance: '0.5 deg',
    },
    {
      of: 'sheerBevel',
      label: 'bevel at the sheer',
      from: 'off square, on the edge that takes the side; + plane the after corner, − the forward corner',
      tolerance: '0.5 deg',
    },
    {
      of: 'chineAngle',
      when: 'hasChine > 0',
      label: 'side to bottom',
      from: 'inside the hull, square to the chine log, whose two outer faces meet at it',
      tolerance: '0.5 deg',
    },
  ],
  inWords: firstOf(
    [
      {
        when: 'hasChine < 1',
        says: words`This boat has no chine: each frame has one edge a side, from keel to sheer. Plane its ${after('sheerBevel >= 0°')} corner off: {keelRemoval} at the keel, {sheerRemoval} at the sheer, marked on the ${after('sheerBevel >= 0°')} face.`,
      },
      {
        // What no plane can take off.
        when: 'max(abs(chineBevel), abs(sheerBevel), abs(bottomBevel), abs(keelBevel)) < 0.05°',
        says: 'The skin crosses the frame square, at the side and at the bottom: leave its edges as they were sawn.',
      },
    ],
    [
      words`The ${forward('forwardOnLine > 0')} face stands on the line.`,
      {
        when: `(${SIDE_OPENS}) or (chineBevel <= 0° and sheerBevel <= 0°)`,
        says: words`The side ${OPENS} going forward: plane the ${after(SIDE_OPENS)} corner off its edge. Mark on the ${after(SIDE_OPENS)} face {chineRemoval} at the chine, {sheerRemoval} at the sheer; a gauge held on the ${forward(SIDE_OPENS)} face reads {chineGauge} and {sheerGauge}.`,
        otherwise: words`The side’s edge winds through square: at the chine plane {chineRemoval} off the ${after('chineBevel > 0°')} face, at the sheer {sheerRemoval} off the ${forward('chineBevel > 0°')} face.`,
      },
      {
        when: `(${BOTTOM_OPENS}) or (bottomBevel <= 0° and keelBevel <= 0°)`,
        says: words`The bottom’s edge loses its ${after(BOTTOM_OPENS)} corner: {keelRemoval} off the ${after(BOTTOM_OPENS)} face at the keel, {bottomRemoval} at the chine.`,
        otherwise: words`The bottom’s edge winds: {keelRemoval} off the ${forward('bottomBevel > 0°')} face at the keel, {bottomRemoval} off the ${after('bottomBevel > 0°')} face at the chine.`,
      },
    ],
  ),
  table: tableOf({
    caption: 'Bevels at every frame: + off the after corner, − off the forward one',
    over: 'frame',
    only: 'hasChine',
    columns: [
      { of: 'chineBevel', label: 'side at chine', where: 'hasChine' },
      { of: 'sheerBevel', label: 'side at sheer' },
      { of: 'bottomBevel', label: 'bottom at chine', where: 'hasChine' },
      { of: 'keelBevel', label: 'bottom at keel' },
      { of: 'chineRemoval', label: 'off side at chine', where: 'hasChine' },
      { of: 'sheerRemoval', label: 'off side at sheer' },
      { of: 'bottomRemoval', label: 'off bottom at chine', where: 'hasChine' },
      { of: 'keelRemoval', label: 'off bottom at keel' },
      { of: 'chineAngle', label: 'side to bottom', where: 'hasChine' },
      { of: 'flareThere', label: 'flare, skin', where: 'hasChine' },
      { of: 'deadriseThere', label: 'deadrise, skin', where: 'hasChine' },
      { of: 'chineInPlan', label: 'chine in plan', where: 'hasChine' },
      { of: 'chineInProfile', label: 'chine in profile', where: 'hasChine' },
      { of: 'sheerInPlan', label: 'sheer in plan' },
      { of: 'sheerInProfile', label: 'sheer in profile' },
    ],
  }),
  warnings: [
    pastTheSaw('max(abs(chineBevel), abs(sheerBevel), abs(bottomBevel)) > 45°'),
    {
      when: 'proud > 0.5 mm',
      says: 'The face on the station line is not the larger one everywhere. Leave up to {proud} of wood outside the line there, or the other face comes out too small; the working says how much at each place.',
      limit: 'geometry',
      weight: 'mind',
    },
    {
      when: 'hasChine > 0 and wind > 5°',
      says: 'The side edge winds by {wind} between chine and sheer: one setting of the saw won’t do. Saw to the smaller bevel and plane to both marks.',
      limit: 'about 5°; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'max(chineRemoval, sheerRemoval, bottomRemoval) > siding / 2',
      says: 'The bevel takes more than half the frame’s thickness off one face: keep screws and notches back from that corner until it is planed.',
      limit: 'screw heads at least 2 mm (3/32 in) below the finished edge; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'hasChine > 0 and logPlaning > logThickness',
      says: 'Side and bottom meet at {chineAngle}: a square log would lose {logPlaning}, more than it is thick. Start from a wider piece.',
      limit: 'geometry',
      weight: 'mind',
    },
  ],
  cautions: [
    'A saw tilted for a steep bevel can trap the offcut between blade and fence: fence on the side away from the tilt, guard on, push stick, as the maker of the saw says.',
    'By custom frames before the widest one stand forward of their lines, those behind it aft of theirs, so that bevels are only cut off. A frame set on the wrong side of its line comes out too small.',
    'Try the bevels with a batten over three frames before the last shavings: a batten shows what sums do not.',
  ],
  sources: [
    {
      text: 'Bevel from flare and the slopes of the long line: geometry of the plane through the frame’s edge and the line',
      known: 'geometry',
    },
    { text: 'Which side of its line a frame stands: custom of the trade', known: 'common practice' },
  ],
  about: ['{frame}', '{chine}', 'sheer'],
  draw: (v, on) => {
    const siding = mm(v.siding);
    const log = mm(v.logThickness);
    const atChine = v.chine === 'none' ? '' : ` and ${on.say(v.chineBevel, 'angle')} at the chine`;
    const atLog =
      v.chine === 'none' ? '' : ` At the chine log side and bottom meet at ${on.say(v.chineAngle, 'angle')}.`;
    return drawing({
      title:
        v.chine === 'none'
          ? 'The frame’s edge at the sheer'
          : 'The frame’s edge at sheer and chine, and the chine log',
      says: `Bevel ${on.say(v.sheerBevel, 'angle')} at the sheer${atChine} across ${on.say(v.siding, 'length')}.${atLog}`,
      shapes: [
        edgeSection([0, 0], siding, v.sheerBevel, {
          name: 'at the sheer',
          gauge: on.say(v.sheerGauge, 'angle'),
          off: on.say(v.sheerRemoval, 'length'),
          faces: facesAt(v.forwardOnLine),
          part: v.frame,
        }),
        ...(v.chine === 'none'
          ? []
          : [
              edgeSection([0, -siding * 3], siding, v.chineBevel, {
                name: 'at the chine',
                gauge: on.say(v.chineGauge, 'angle'),
                off: on.say(v.chineRemoval, 'length'),
                siding: on.say(v.siding, 'length'),
                faces: facesAt(v.forwardOnLine),
                part: v.frame,
              }),
              logSection(
                [siding * 0.4, -siding * 5.4 - log * 3.2],
                { thick: log, wide: log * 2, flare: v.flare, angle: v.chineAngle, lean: v.flare },
                {
                  name: 'the chine log, square to its length',
                  part: 'chineLog',
                  angle: on.say(v.chineAngle, 'angle'),
                  thick: on.say(v.logThickness, 'length'),
                  sideOff: '',
                  bottomOff: on.say(Math.abs(v.logPlaning), 'length'),
                },
              ),
            ]),
        note('Seen along the side, forward to the right, the skin as a line over the edge.'),
        note('Hatched the other way, in a dashed outline: the wood that goes.'),
      ],
    });
  },
  chart: (v, on) => alongTheHull(v.chine, v.frame, v.chineAngle, on),
});

const facesAt = (forwardOnLine: number): readonly [string, string] =>
  forwardOnLine > 0 ? ['aft', 'forward, on the line'] : ['aft, on the line', 'forward'];

/** The angle that the log is planed to, along the boat: a rolling bevel where the line slopes. */
function alongTheHull(chine: string, frame: string, here: number, { hull, say }: OnHand): Chart {
  const points = (hull?.frames ?? []).flatMap((station): (readonly [number, number])[] => {
    const angle = attempt(() => station.angle(chine));
    return isIssue(angle) ? [] : [[station.x, angle]];
  });
  const at = attempt(() => hull?.station(frame).x ?? 0);
  const angles = points.map(([, angle]) => angle);
  return {
    title: 'Rolling bevel of the chine log',
    says:
      points.length > 0
        ? `From the first frame to the last the angle between side and bottom runs between ${say(Math.min(...angles), 'angle')} and ${say(Math.max(...angles), 'angle')}.`
        : 'No hull to take the angles of other frames from.',
    x: { label: 'from the after end', kind: 'length' },
    y: { label: 'side to bottom', kind: 'angle' },
    lines: [{ name: 'side to bottom', points, as: 'line' }],
    points: isIssue(at) ? [] : [{ x: at, y: here, label: `this frame: ${say(here, 'angle')}` }],
  };
}
