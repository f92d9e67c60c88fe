/** The compound cut where a leaning side meets a leaning transom: mitre across the board, tilt of the saw. */
import { choice, input, defineCell } from '../form/define';
import { fromBoat } from '../form/from-boat';
import { words } from '../form/in-words';
import { tableOf } from '../form/row-quantities';
import { SAW_TILT } from './saw-tilt';
import { endAngleQuantities } from '../../boat/quantities/end-angle-quantities';
import {
  mm,
  drawing,
  note,
  type Point,
  type Shape,
  hatch,
  label,
  line,
  centreLine,
  angleDim,
} from '../../drawing';
import { edgeSection } from './bevelled-edge-drawing';
import { compoundCutSteps } from './compound-cut-steps';
import { GEOMETRY } from '../../trade/sources';

const LARGER = { when: 'edgeBevel >= 0°', says: 'inner', otherwise: 'outer' };
const SMALLER = { when: 'edgeBevel >= 0°', says: 'outer', otherwise: 'inner' };

export const compoundCut = defineCell({
  id: 'compoundCut',
  stage: 'frames',
  title: 'Compound cut at the transom',
  question: 'Where the side meets the raked transom, what tilt and what mitre do I set the saw to?',
  inputs: {
    end: choice('Which', {
      options: [
        { id: 'transom', label: 'transom at the stern', ofBoat: true },
        { id: 'bowTransom', label: 'transom at the bow', ofBoat: true },
      ],
      preset: 'transom',
    }),
    at: choice('Where on its edge', {
      options: [
        { id: 'foot', label: 'lower end of the side', ofBoat: true },
        { id: 'middle', label: 'middle, by the mean', ofBoat: true },
        { id: 'head', label: 'upper end of the side', ofBoat: true },
      ],
      preset: 'middle',
      note: 'a side that winds meets the transom at another angle below than above',
    }),
    joint: choice('Joint', {
      options: [
        { id: 'past', label: 'side runs past the transom' },
        { id: 'mitre', label: 'mitre, half on each' },
      ],
      preset: 'past',
    }),
    lean: input('angle', 'Lean of the side', {
      from: '{end}.side.{at}.lean',
      preset: '20 deg',
      min: '-60 deg',
      max: '89 deg',
      step: '0.5 deg',
      note: 'out of plumb, + outward, square to a level line drawn on it',
    }),
    rake: input('angle', 'Rake of the transom', {
      from: '{end}.rake',
      preset: '13 deg',
      min: '-60 deg',
      max: '89 deg',
      step: '0.5 deg',
      note: 'out of plumb, + where its top leans out of the boat',
    }),
    turn: input('angle', 'Side in plan', {
      from: '{end}.side.{at}.turn',
      preset: '-10 deg',
      min: '-70 deg',
      max: '70 deg',
      step: '0.5 deg',
      note: 'off the centreline on a level line, + where it closes in going away from the transom, − as at most sterns',
    }),
    memberRise: input('angle', 'Rise of the log or clamp', {
      preset: '0 deg',
      min: '-60 deg',
      max: '60 deg',
      step: '0.5 deg',
      note: 'off level on the side’s face, + where it rises going away from the transom',
    }),
    thickness: fromBoat('transom.thickness'),
    sideThickness: fromBoat('side.thickness'),
    ends: input('count', 'How many such transoms', {
      from: '{end}.pieces',
      preset: '0',
      min: '0',
      max: '1',
      step: '1',
      note: '0 where the boat has none and only the typed numbers hold',
    }),
  },
  groups: {
    'The joint': ['joint', 'memberRise', 'thickness', 'sideThickness', 'ends'],
  },
  steps: compoundCutSteps,
  answers: [
    {
      of: 'sawTilt',
      label: 'tilt of the saw',
      from: 'blade off square to the board’s face',
      tolerance: '0.5 deg',
    },
    {
      of: 'endCut',
      label: 'mitre of the side',
      from: 'across its face, off square to a level line on it; + top reaches farther out',
      tolerance: '0.5 deg',
    },
    {
      of: 'onTransom',
      label: 'slant of the transom',
      from: 'on its face, its edge off the centreline, + wider at the top',
      tolerance: '0.5 deg',
    },
  ],
  inWords: {
    when: 'joint == "mitre"',
    says: 'Tilt the blade {sawTilt} and leave the outer face of both pieces the longer: {transomOff} goes off the transom’s inner face, {sideOff} off the side’s. Across the side the cut runs {endCut} off square; on the transom its edge stands {onTransom} off the centreline.',
    otherwise: words`Mark the transom’s ${LARGER} face, the larger one, its edge {onTransom} off the centreline, and plane the ${SMALLER} corner off it, {transomOff} on the ${SMALLER} face. Cut the end of the side {endCut} off square with the blade tilted {sawTilt}, its ${LARGER} face the longer by {sideOff}.`,
  },
  table: tableOf({
    caption: 'The corner from the lower end of the side to the upper',
    over: 'at',
    columns: [
      { of: 'angle', label: 'side to transom' },
      { of: 'edgeBevel', label: 'transom’s edge' },
      { of: 'transomOff', label: 'off the transom' },
      { of: 'onTransom', label: 'slant' },
      { of: 'endCut', label: 'mitre of the side' },
      { of: 'sawTilt', label: 'tilt' },
    ],
  }),
  warnings: [
    {
      when: 'ends < 1',
      says: 'This boat has no {end}: the lean, rake and plan used here are not hers.',
      limit: 'the plan’s table',
      weight: 'mind',
    },
    {
      when: 'sawTilt > 45°',
      says: 'A tilt of {sawTilt} is past what a saw gives: stand the board on edge against a tall fence, or saw to the line by hand and plane.',
      limit: SAW_TILT,
      weight: 'mind',
    },
    {
      when: 'joint == "past" and transomOff > thickness',
      says: 'The edge of the transom loses {transomOff}, more than its thickness: back it with a cleat, so that the side has something to be fastened to.',
      limit: 'a faying face at least as wide as the wood is thick; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'abs(turn) > 45°',
      says: 'In plan the side stands {turn} off the centreline: nearer to the transom than to the boat’s length. See that lean and plan were not measured on the other piece.',
      limit: GEOMETRY,
      weight: 'mind',
    },
  ],
  cautions: [
    'A tilted blade can trap the offcut: fence on the side away from the tilt, guard on, push stick, as the maker of the saw says.',
    'Port and starboard are a pair: swap the tilt or turn the board end for end, and try both settings on scrap before the good board.',
    'A ruled side winds. Cut the transom’s edge to the smaller bevel, plane to both marks, and leave the ends of the sides long until they are on.',
  ],
  sources: [
    { text: 'Corner of two planes from their normals', known: 'geometry' },
    {
      text: '“Compound-angle settings for popular structures”, printed in the operator’s manuals of bench saws: mitre and tilt for boxes of equal sides',
      known: 'published',
    },
  ],
  about: ['{end}', 'side'],
  brings: endAngleQuantities,
  draw: (v, { say }) => {
    const thick = mm(v.thickness);
    // A mitre leaves the outer face the longer one; a side that runs past, the face toward the wider angle.
    const bevel = v.joint === 'mitre' ? -v.sawTilt : v.edgeBevel;
    const tilt = say(v.sawTilt, 'angle');
    const off = (key: 'transomOff' | 'sideOff') => say(v[key], 'length');
    // The faces are drawn without a measure of their own, small beside the sections.
    const face = 0.7 * thick;
    const low = -5.2 * thick;
    return drawing({
      title: 'Transom’s edge and side’s end, cut square to the corner; below, both faces',
      says: `Tilt ${tilt} off square, which takes ${off('transomOff')} off the transom’s edge, ${say(v.thickness, 'length')} thick, and ${off('sideOff')} off the side’s end. The mitre across the side is ${say(v.endCut, 'angle')} off square; the transom’s edge slants ${say(v.onTransom, 'angle')} off its centreline.`,
      shapes: [
        edgeSection([0, 0], thick, bevel, {
          name: 'transom’s edge',
          gauge: say(Math.PI / 2 - v.sawTilt, 'angle'),
          off: off('transomOff'),
          faces: ['outer', 'inner'],
          part: v.end,
        }),
        ...sideEnd([thick * 3.4, 0], mm(v.sideThickness), thick, bevel, `side’s end: ${off('sideOff')} goes`),
        ...sideFace([thick * 3.2, low], face, v.endCut, say(v.endCut, 'angle')),
        ...transomFace([-face, low], face, v.onTransom, say(v.onTransom, 'angle')),
        note(
          'Outer faces to the left. Hatched the other way, in a dashed outline: the wood that goes. The faces below show their slants, not their size.',
        ),
      ],
    });
  },
});

/** The end of the side like the transom's edge, to the same scale; it is too thin for dimensions. */
function sideEnd([x, y]: Point, skin: number, tall: number, bevel: number, text: string): Shape[] {
  const off = skin * Math.tan(drawnAs(bevel));
  const left: Point = [x, y - Math.max(0, off)];
  const right: Point = [x + skin, y + Math.min(0, off)];
  const [kept, corner, gone]: readonly Point[] =
    off > 0 ? [right, [x, y], left] : [left, [x + skin, y], right];
  const root = y - tall - Math.abs(off);
  return [
    hatch([[x, root], [x + skin, root], right, left], 'cedar', { part: 'side' }),
    ...(Math.abs(off) > 1e-3 * skin
      ? [hatch([kept!, corner!, gone!], 'cedar', { pen: 'ghost', falling: true })]
      : []),
    label([x + skin / 2, y - Math.abs(off) / 3], text, { toward: 'ne' }),
  ];
}

/** Slants are drawn up to this one; steeper ones keep their texts. */
const steepest = (70 * Math.PI) / 180;
const drawnAs = (angle: number) => Math.max(-steepest, Math.min(steepest, angle));

/** The end of the side on its face, the boat to the right: `low` is the end's lower corner. */
function sideFace([x, y]: Point, unit: number, cut: number, text: string): Shape[] {
  const tall = 3 * unit;
  const lean = drawnAs(cut);
  const head: Point = [x - tall * Math.tan(lean), y + tall];
  const far = Math.max(x, head[0]) + 3 * unit;
  return [
    hatch([[x, y], [far, y], [far, y + tall], head], 'plain', { part: 'side' }),
    line(
      [
        [x, y],
        [x, y + tall * 1.15],
      ],
      { pen: 'ghost' },
    ),
    ...slant(
      [x, y],
      lean > 0 ? [Math.PI / 2, Math.PI / 2 + lean] : [Math.PI / 2 + lean, Math.PI / 2],
      tall,
      text,
    ),
    label([far - unit, y + tall], 'side, its face', { toward: 'n' }),
  ];
}

/** Half the transom on its face, the centreline to the left. */
function transomFace([x, y]: Point, unit: number, slope: number, text: string): Shape[] {
  const tall = 3 * unit;
  const half = 2 * unit;
  const lean = drawnAs(slope);
  const head: Point = [Math.max(x, x + half + tall * Math.tan(lean)), y + tall];
  return [
    hatch([[x, y], [x + half, y], head, [x, y + tall]], 'plain', { part: 'transom' }),
    centreLine([x, y - unit * 0.4], [x, y + tall * 1.15]),
    line(
      [
        [x + half, y],
        [x + half, y + tall * 1.15],
      ],
      { pen: 'ghost' },
    ),
    ...slant(
      [x + half, y],
      lean > 0 ? [Math.PI / 2 - lean, Math.PI / 2] : [Math.PI / 2, Math.PI / 2 - lean],
      tall,
      text,
    ),
    label([x + unit * 0.7, y + tall], 'half transom', { toward: 'n' }),
  ];
}

function slant(apex: Point, [from, to]: readonly [number, number], reach: number, text: string): Shape[] {
  return to - from < 0.01
    ? [note(text, { at: [apex[0], apex[1] - reach * 0.2] })]
    : [angleDim(apex, from, to, text, { reach })];
}
