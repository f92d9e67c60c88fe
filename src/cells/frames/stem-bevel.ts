/** The bevel of a stem: planed so that both sides land on it, at heights from its foot to its head. */
import { attempt, endWith } from '../../boat';
import { endAngleQuantities } from '../../boat/quantities/end-angle-quantities';
import { skinOnPost } from '../../boat/hull/post-skin';
import { isIssue } from '../../measure';
import { type Chart, choice, defineCell, input, type OnHand, step } from '../form/define';
import { firstOf, words } from '../form/in-words';
import { pastTheSaw } from './saw-tilt';
import { fromBoat } from '../form/from-boat';
import { tableOf } from '../form/row-quantities';
import { stemSection } from './stem-bevel-drawing';
import { GEOMETRY } from '../../trade/sources';

const places = [
  { id: 'foot', label: 'foot' },
  ...Array.from({ length: 9 }, (_, i) => ({
    id: `tenth${i + 1}`,
    label: i === 0 ? 'a tenth up' : `${i + 1} tenths up`,
  })),
  { id: 'head', label: 'head' },
];

const AFT = 'post == "sternpost"';
/** The face of the post that is out of the boat. */
const OUTER = { when: AFT, says: 'after', otherwise: 'forward' };
const BACK_FROM = { when: AFT, says: 'forward of', otherwise: 'abaft' };

export const stemBevel = defineCell({
  id: 'stemBevel',
  stage: 'frames',
  title: 'Bevel of the stem',
  question: 'What bevel do I plane on the stem at each height, and how much of its face is left?',
  inputs: {
    post: choice('Which', {
      options: [
        { id: 'stem', label: 'stem' },
        { id: 'sternpost', label: 'sternpost' },
      ],
      preset: 'stem',
    }),
    place: choice('Height', {
      options: places.map((place) => ({ ...place, ofBoat: true })),
      preset: 'tenth5',
    }),
    entry: input('angle', 'Angle of the skin to the centreline', {
      from: '{post}.{place}.entry',
      preset: '30 deg',
      min: '0 deg',
      max: '85 deg',
      step: '0.5 deg',
      slider: true,
      note: 'half of what both sides enclose, square to the stem',
    }),
    rake: input('angle', 'Rake of the stem there', {
      from: '{post}.{place}.rake',
      preset: '30 deg',
      min: '-60 deg',
      max: '85 deg',
      step: '0.5 deg',
      note: 'from plumb, + where its top leans out of the boat',
    }),
    up: input('length', 'Distance up the stem', {
      from: '{post}.{place}.up',
      preset: '350 mm',
      min: '0 mm',
      max: '6 m',
      step: '10 mm',
      note: 'along its outer face, from the foot at the keel',
    }),
    siding: fromBoat('stem.siding'),
    moulded: fromBoat('stem.moulded'),
    landing: input('length', 'Landing wanted for the side', {
      preset: '30 mm',
      presetInch: '1 1/4 in',
      min: '3 mm',
      max: '200 mm',
      step: '1 mm',
      slider: true,
      note: 'width of the planed face: room for glue and a row of screws; common practice, no source',
    }),
    sideThickness: fromBoat('side.thickness'),
    run: input('length', 'Length of the stem', {
      from: '{post}.run',
      preset: '0 mm',
      min: '0 mm',
      max: '6 m',
      step: '10 mm',
      note: 'keel to sheer along its outer face; 0 where the boat has none and only the typed numbers hold',
    }),
  },
  groups: {
    'The stem': ['siding', 'moulded', 'rake', 'up', 'run'],
  },
  steps: {
    height: step('length', 'up', 'up the stem, along its outer face from its foot', GEOMETRY),
    bevel: step('angle', 'entry', 'bevel of the stem on each side, off its side face', GEOMETRY),
    gauge: step(
      'angle',
      '90° + entry',
      'bevel gauge, its stock on the outer face, its blade on the bevel',
      GEOMETRY,
    ),
    level: step(
      'angle',
      'atan(tan(entry) * cos(rake))',
      'the same angle held level: what the plan shows',
      'geometry: a plane through the raked line of the stem, cut level',
    ),
    inset: step('length', 'landing * sin(entry)', 'off the outer face on each side', GEOMETRY),
    back: step(
      'length',
      'landing * cos(entry)',
      'from the outer face back to where the bevel begins, on the stem’s side: the bearding line',
      GEOMETRY,
    ),
    faceLeft: step('length', 'siding - 2 * inset', 'width left of the outer face', GEOMETRY),
    sidingFor: step(
      'length',
      '2 * inset',
      'thickness at which this landing leaves no outer face',
      GEOMETRY,
      'least',
    ),
    cover: step(
      'length',
      'faceLeft + 2 * sideThickness / cos(entry)',
      'width over both sides, trimmed flush with the outer face: that of an outer stem that covers their ends',
      GEOMETRY,
    ),
  },
  answers: [
    {
      of: 'bevel',
      label: 'bevel, each side',
      from: 'off the stem’s side face, square to its length; half of what both sides enclose',
      tolerance: '0.5 deg',
    },
    {
      of: 'back',
      label: 'bearding line',
      from: 'on both side faces, back from the outer face',
      tolerance: '1 mm',
    },
    {
      of: 'faceLeft',
      label: 'face left',
      from: 'across the outer face, half of it on each side of the centreline; − where the stem is too thin, by so much',
      tolerance: '1 mm',
    },
  ],
  inWords: firstOf(
    [
      {
        when: 'run <= 0 mm',
        says: [
          'This boat has no {post}: a transom closes her',
          { when: AFT, says: 'stern.', otherwise: 'bow.' },
          'By the numbers entered here a {post} would be bevelled {bevel} on each side.',
        ],
      },
      {
        when: 'faceLeft < 0 mm',
        says: '{up} up from its foot the {post} is too thin: bevels with a landing of {landing} at {bevel} would meet inside it. Plane nothing before it is at least {sidingFor} thick, or the landing narrower.',
      },
    ],
    [
      { when: 'up <= 0 mm', says: 'At the foot:', otherwise: '{up} up from the foot:' },
      words`on each side of the {post} mark the bearding line {back} ${BACK_FROM} the ${OUTER} face, and on the ${OUTER} face a line {inset} inside each edge. Plane the ${OUTER} corners off between them; the gauge, its stock on the ${OUTER} face, stands at {gauge}, and {faceLeft} of the face is left.`,
    ],
  ),
  table: tableOf({
    caption: 'From the foot of the stem to its head',
    over: 'place',
    columns: [
      { of: 'height', label: 'up the stem' },
      { of: 'bevel', label: 'bevel, each side' },
      { of: 'gauge', label: 'gauge on the face' },
      { of: 'back', label: 'bearding line' },
      { of: 'inset', label: 'in from the edge' },
      { of: 'faceLeft', label: 'face left' },
      { of: 'cover', label: 'over the sides' },
    ],
  }),
  warnings: [
    {
      when: 'faceLeft < 0 mm',
      says: 'A landing of {landing} at {bevel} asks for a stem at least {sidingFor} thick; this one is {siding}. Make it thicker, or the landing narrower.',
      limit: GEOMETRY,
      weight: 'stop',
    },
    {
      when: 'faceLeft >= 0 mm and faceLeft < 6 mm',
      says: 'Only {faceLeft} of the face is left: an edge that chips under the plane and holds no outer stem.',
      limit: 'about 6 mm (1/4 in); common practice, no source',
      weight: 'mind',
    },
    {
      when: 'run > 0 mm and up > run + 1 mm',
      says: 'The {post} is only {run} long and the place {up} up it: nothing lands there.',
      limit: GEOMETRY,
      weight: 'mind',
    },
    {
      when: 'back > moulded',
      says: 'The bevel runs {back} back and the stem is only {moulded} deep: it comes out at the other face.',
      limit: GEOMETRY,
      weight: 'stop',
    },
    pastTheSaw('bevel > 45°'),
  ],
  cautions: [
    'On a crooked stem plane from both ends toward the middle, with the grain. A saw tilted for the bevel can trap the offcut: guard on, push stick, as its maker says.',
    'The stem has no rabbet here: the sides land on the bevel, are trimmed flush with the face, and an outer stem covers their ends.',
    'Leave the last shavings until the frames stand: a batten from two frames forward, laid on the stem, shows the true angle on port and on starboard.',
  ],
  sources: [
    {
      text: 'Angle of the skin at the stem from the normals of the panels at its ends, evenly turned between',
      known: 'geometry',
    },
    {
      text: 'Stem without a rabbet, bevelled, with an outer stem over the ends of the sides: custom of plywood building',
      known: 'common practice',
    },
  ],
  about: ['stem', 'side'],
  brings: endAngleQuantities,
  draw: stemSection,
  chart: upTheStem,
});

/** The bevel from foot to head, and the place in hand. */
function upTheStem(
  { post, up, entry }: { post: string; up: number; entry: number },
  { hull, say }: Pick<OnHand, 'hull' | 'say'>,
): Chart {
  const role = post === 'sternpost' ? 'sternpost' : 'stem';
  const found = attempt(() => {
    const end = hull && endWith(hull, role);
    if (!hull || !end) throw new Error(`There is no ${role} on this boat to take other heights from.`);
    return Array.from({ length: 51 }, (_, i): readonly [number, number] => {
      const there = skinOnPost(hull, end, i / 50);
      return [there.up, there.entry];
    });
  });
  const points = isIssue(found) ? [] : found;
  const angles = points.map(([, angle]) => angle);
  return {
    title: 'The bevel from foot to head',
    says: isIssue(found)
      ? found.issue
      : `From foot to head the bevel runs between ${say(Math.min(...angles), 'angle')} and ${say(Math.max(...angles), 'angle')}.`,
    x: { label: 'up the stem, from its foot', kind: 'length' },
    y: { label: 'bevel on each side', kind: 'angle' },
    lines: [{ name: 'bevel', points, as: 'line' }],
    points: [{ x: up, y: entry, label: `here: ${say(entry, 'angle')}` }],
  };
}
