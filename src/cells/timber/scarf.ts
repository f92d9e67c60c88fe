/** Scarf joint: its taper, its glue, what it eats and what it keeps. */
import { breakLine, dim, drawing, hatch, label, line, mm, note, type Point } from '../../drawing';
import { scarfSpread, scarfStrength } from '../../trade/scarf-strength';
import { choice, defineCell, input, step } from '../define';

const GEOMETRY = 'geometry';
const HANDBOOK = 'Wood Handbook, USDA FPL-GTR-190 (2010), ch. 10';

export const scarf = defineCell({
  id: 'scarf',
  stage: 'timber',
  title: 'Scarf joint',
  question: 'How long is the taper, how much board does it eat, and how strong is the joint?',
  inputs: {
    along: choice('Long timber, along', { options: 'longEdges', preset: 'keel' }),
    thickness: input('length', 'Board thickness', {
      from: 'keelson.thickness',
      preset: '18 mm',
      min: '1 mm',
      max: '150 mm',
      step: '1 mm',
      note: 'calipered where the taper comes, not the name it is sold under',
    }),
    slope: input('slope', 'Slope', {
      preset: '8',
      min: '4',
      max: '20',
      step: '1',
      slider: true,
      note: '1 in 8 for plywood, 1 in 8 to 12 for keel, chine and rail, 1 in 12 for spars: common practice',
    }),
    width: input('length', 'Board width', {
      seldom: true,
      from: 'keelson.width',
      preset: '90 mm',
      min: '5 mm',
      max: '3 m',
      step: '5 mm',
    }),
    boardLength: input('length', 'Length of one board', {
      preset: '8 ft',
      min: '300 mm',
      max: '12 m',
      step: '100 mm',
    }),
    wanted: input('length', 'Length to reach', {
      from: '{along}.length',
      preset: '4.2 m',
      min: '100 mm',
      max: '100 m',
      step: '100 mm',
      note: 'along the edge, before trimming the ends',
    }),
    boards: input('count', 'Boards joined', {
      from: '{self}.boardsNeeded',
      preset: '3',
      min: '1',
      max: '50',
      step: '1',
    }),
  },
  functions: {
    boardsToReach: {
      takes: ['length', 'length', 'length'],
      gives: 'count',
      says: 'least number of boards that, less one taper at each joint, reach the length',
      run: boardsToReach,
    },
    strengthOfScarf: {
      takes: ['slope'],
      gives: 'share',
      says: 'the planning curve of strength against slope, straight between 0.25 at a butt, 0.65 at 1 in 5, 0.80 at 8, 0.85 at 10, 0.90 at 12 and 0.95 at 20',
      run: scarfStrength,
    },
  },
  steps: {
    taper: step('length', 'slope * thickness', 'length of the taper along the board', GEOMETRY),
    angle: step('angle', 'atan(1 / slope)', 'angle between the taper and the face of the board', GEOMETRY),
    glueFace: step(
      'length',
      'thickness * sqrt(1 + slope^2)',
      'length of the glue face, down the slope',
      GEOMETRY,
    ),
    glueArea: step('area', 'width * glueFace', 'area to glue at one joint, one face', GEOMETRY),
    glueToSection: step(
      'ratio',
      'glueArea / (width * thickness)',
      'glue area over the section of the board',
      `${HANDBOOK}: 10 or more, wood being about 10 times stronger in tension than in shear`,
    ),
    boardsNeeded: step(
      'count',
      'boardsToReach(wanted, boardLength, taper)',
      'boards needed for the length',
      'geometry: n boards less n - 1 tapers',
    ),
    lost: step('length', '(boards - 1) * taper', 'length of board eaten by the joints together', GEOMETRY),
    joinedLength: step('length', 'boards * boardLength - lost', 'length of the joined board', GEOMETRY),
    over: step('length', 'joinedLength - wanted', 'length to spare; less than nothing falls short', GEOMETRY),
    strengthKept: step(
      'share',
      'strengthOfScarf(slope)',
      'part of the strength of the unbroken board that the joint keeps, in tension',
      `common practice: a curve drawn through printed values, which stand ${scarfSpread} apart either way; butt from ${HANDBOOK}; slopes 5 to 12 from memory of its older chapter on glued members; 1 in 20 quoted from R. Birmingham, Boat Building Techniques`,
    ),
    shearInGlue: step(
      'ratio',
      'slope / (1 + slope^2)',
      'shear in the glue line for each unit of pull in the board',
      'geometry: equilibrium on the slope',
    ),
    tensionOnGlue: step(
      'ratio',
      '1 / (1 + slope^2)',
      'tension across the glue line for each unit of pull in the board',
      'geometry: equilibrium on the slope',
    ),
    stagger: step(
      'length',
      'max(600 mm, 24 * thickness)',
      'least distance along the boat from a joint in the paired or neighbouring timber',
      'common practice, no source',
    ),
  },
  answers: [
    {
      of: 'taper',
      label: 'taper',
      from: 'along the face, square back from the end of the board',
      tolerance: '1 mm',
    },
    { of: 'joinedLength', label: 'joined length', from: 'end to end, before trimming' },
    {
      of: 'strengthKept',
      label: 'strength kept',
      from: 'of the unbroken board in tension, give or take 5 %',
    },
  ],
  inWords:
    'Taper {taper} of each board at {slope}; {boards} boards of {boardLength} then reach {joinedLength}.',
  warnings: [
    {
      when: 'boards > 1 and boardLength < 2 * taper',
      says: 'A board of {boardLength} is too short for a taper of {taper} at both ends.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'over < 0 mm',
      says: '{boards} boards reach only {joinedLength}, short of {wanted}: {boardsNeeded} are needed.',
      limit: 'geometry: n boards less n - 1 tapers',
      weight: 'stop',
    },
    {
      when: 'slope < 8',
      says: 'Steeper than 1 in 8: a scarf of {slope} keeps about {strengthKept} of the strength.',
      limit: `plywood scarfs are typically 1 in 8, ${HANDBOOK}`,
      weight: 'mind',
    },
    {
      when: 'glueToSection < 10',
      says: 'The glue area is {glueToSection} times the section; 10 times is asked where the joint must be about as strong as the wood.',
      limit: HANDBOOK,
      weight: 'mind',
    },
  ],
  cautions: [
    'Keep joints away from the tightest bend and from frame notches, and port and starboard joints apart by the stagger or more.',
    'A feather edge catches: clamp the board and plane or saw the taper away from your hands; wear eye protection.',
    "Glue: follow the maker's sheet for moisture, temperature, gloves and fresh air. Thin-line glues need pressure, epoxy only contact.",
    'The strength kept is a planning value for sound, straight-grained wood and a good glue line, not a test of your joint.',
  ],
  sources: [
    { text: `${HANDBOOK}: butt, scarf and finger joints, bond area and slope`, known: 'published' },
    {
      text: 'Wood Handbook, older chapter on glued members: strength of plain scarfs, 1 in 5 to 1 in 12',
      known: 'from memory',
    },
    {
      text: 'R. Birmingham, Boat Building Techniques, seen only as others quote it: 65 % at 1 in 4 to 95 % at 1 in 20',
      known: 'from memory',
    },
    { text: 'Planning curve of strength and stagger of joints', known: 'common practice' },
    { text: 'Taper, glue face, joined length', known: 'geometry' },
  ],
  lights: ['{along}'],

  draw: (v, on) => {
    const thickness = mm(v.thickness);
    const taper = mm(v.taper);
    const width = mm(v.width);
    const stub = Math.max(2 * thickness, taper / 3);
    const right = taper + stub;
    // The face to be cut away stands above the side view; of a wide panel only a strip.
    const whole = width <= 0.7 * taper;
    const face = whole ? width : 0.7 * taper;
    const faceFoot = thickness + taper / 5;
    const faceTop = faceFoot + face;
    const leftBoard: Point[] = [
      [-stub, 0],
      [taper, 0],
      [0, thickness],
      [-stub, thickness],
    ];
    const rightBoard: Point[] = [
      [right, 0],
      [taper, 0],
      [0, thickness],
      [right, thickness],
    ];
    return drawing({
      title: 'Scarf joint, from the side and on the face',
      says: `Two boards ${on.say(v.thickness, 'length')} thick, each tapered over ${on.say(v.taper, 'length')} at ${on.say(v.slope, 'slope')}, laid one on the other; the glue face is ${on.say(v.glueFace, 'length')} long.`,
      shapes: [
        hatch(leftBoard, 'cedar', { pen: 'none', part: v.along }),
        hatch(rightBoard, 'cedar', { pen: 'none', falling: true, part: v.along }),
        line(
          [
            [-stub, 0],
            [right, 0],
          ],
          { pen: 'outline' },
        ),
        line(
          [
            [-stub, thickness],
            [right, thickness],
          ],
          { pen: 'outline' },
        ),
        line(
          [
            [0, thickness],
            [taper, 0],
          ],
          { pen: 'outline', layer: 'glue line' },
        ),
        breakLine([-stub, 0], [-stub, thickness]),
        breakLine([right, 0], [right, thickness]),
        dim([0, thickness], [taper, 0], on.say(v.taper, 'length'), { run: 'horizontal', side: 'below' }),
        dim([right, 0], [right, thickness], on.say(v.thickness, 'length'), { side: 'right' }),
        label(
          [taper / 2, thickness / 2],
          `glue face ${on.say(v.glueFace, 'length')}, ${on.say(v.angle, 'angle')}`,
          { toward: 's' },
        ),
        line(
          [
            [0, faceTop],
            [0, faceFoot],
            [right, faceFoot],
            [right, faceTop],
          ],
          { pen: 'outline', part: v.along },
        ),
        line(
          [
            [0, faceTop],
            [right, faceTop],
          ],
          { pen: whole ? 'outline' : 'thin' },
        ),
        line(
          [
            [taper, faceFoot],
            [taper, faceTop],
          ],
          { pen: 'visible', layer: 'marks' },
        ),
        label([taper, faceFoot + face / 2], 'square across the face to be cut away', { toward: 'ne' }),
        whole
          ? dim([right, faceFoot], [right, faceTop], on.say(v.width, 'length'), { side: 'right' })
          : note('Part of the width is drawn.'),
      ],
    });
  },

  chart: (v) => ({
    title: 'Strength kept against slope',
    says: 'Flatter scarfs keep more: steep gains up to 1 in 8, small ones beyond 1 in 12.',
    x: { label: 'Slope', kind: 'slope', from: 4, to: 20 },
    y: { label: 'Strength kept', kind: 'share', from: 0.5, to: 1 },
    lines: [
      { name: 'planning curve', points: curve(0) },
      { name: 'highest printed', points: curve(scarfSpread) },
      { name: 'lowest printed', points: curve(-scarfSpread) },
    ],
    limits: [
      { at: 8, axis: 'x', label: 'plywood' },
      { at: 12, axis: 'x', label: 'spars' },
    ],
    points: [{ x: v.slope, y: v.strengthKept, label: 'this joint' }],
  }),
});

/**
 * Boards that reach a length when each joint eats one taper; at least 1.
 *
 * Throws a sentence when a board is no longer than its taper, for then no number is enough.
 */
function boardsToReach(wanted: number, boardLength: number, taper: number): number {
  if (wanted <= boardLength) return 1;
  if (boardLength <= taper)
    throw new Error('a board no longer than its taper cannot be joined into a longer one');
  // A thousandth of a board is forgiven, so that three boards that just reach are three, not four.
  return Math.max(1, Math.ceil((wanted - taper) / (boardLength - taper) - 0.001));
}

const slopes = Array.from({ length: 33 }, (_, i) => 4 + i / 2);

function curve(shift: number): readonly (readonly [number, number])[] {
  return slopes.map((slope) => [slope, Math.min(1, scarfStrength(slope) + shift)] as const);
}
