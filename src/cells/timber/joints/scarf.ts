/** Scarf joint: its taper, its glue, what it eats and what it keeps. */
import { otherPrinted, panelScarfStrength, scarfSpread, scarfStrength } from '../../../trade/scarf-strength';
import { choice, defineCell, input, step } from '../../form/define';
import { firstOf } from '../../form/in-words';
import { fromBoat } from '../../form/from-boat';
import { longParts } from '../../../boat/joinery/long-parts';
import { drawScarf, inFigures, strengthChart } from './scarf-drawing';
import { GEOMETRY } from '../../../trade/sources';

const HANDBOOK = 'Wood Handbook, USDA FPL-GTR-190 (2010), ch. 10';

export const scarf = defineCell({
  id: 'scarf',
  stage: 'timber',
  title: 'Scarf joint',
  question: 'How long is the taper, how much board does it eat, and how strong is the joint?',
  inputs: {
    part: choice('What is joined', {
      options: [
        ...longParts.map((part) =>
          part.id === 'keelson' ? { ...part, withoutBoat: 'a board' } : { ...part, ofBoat: true },
        ),
        { id: 'panel', label: 'plywood, for a panel' },
        { id: 'spar', label: 'spar' },
      ],
      preset: 'keelson',
    }),
    thickness: fromBoat('{part}.thickness', {
      hint: 'calipered where the taper comes, not the name it is sold under',
      fromBy: { choice: 'part', links: { panel: '{bottom}.thickness', spar: '' } },
    }),
    slope: fromBoat('pieces.slope', {
      fromBy: { choice: 'part', links: { panel: 'pieces.panelSlope', spar: 'pieces.sparSlope' } },
      slider: true,
    }),
    width: fromBoat('{part}.width', {
      fromBy: { choice: 'part', links: { panel: 'shop.sheetWidth', spar: '' } },
    }),
    boardLength: fromBoat('{part}.boardLength', {
      fromBy: { choice: 'part', links: { panel: 'shop.sheetLength', spar: '' } },
    }),
    wanted: input('length', 'Length to reach', {
      from: '{part}.roughLength',
      fromBy: { choice: 'part', links: { panel: '{keel}.length', spar: '' } },
      preset: '4.2 m',
      min: '100 mm',
      max: '100 m',
      step: '100 mm',
      note: 'of a long timber: along its edge, and what is left for trimming',
    }),
    more: input('count', 'Boards more than need be', {
      from: '{part}.boardsMore',
      fromBy: { choice: 'part', links: { panel: '', spar: '' } },
      preset: '0',
      min: '0',
      max: '10',
      step: '1',
      note: 'the plan of pieces may take one more, to keep the joints clear',
    }),
    boards: input('count', 'Boards joined', {
      from: '{self}.usualBoards',
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
      how: 'least number of boards that, less one taper at each joint, reach the length',
      run: boardsToReach,
    },
    strengthOfScarf: {
      takes: ['slope'],
      gives: 'share',
      how: 'the planning curve of strength against slope, straight between 0.25 at a butt, 0.65 at 1 in 5, 0.80 at 8, 0.85 at 10, 0.90 at 12 and 0.95 at 20',
      run: scarfStrength,
    },
    strengthOfPanelScarf: {
      takes: ['slope'],
      gives: 'share',
      how: 'the same for plywood, straight between 0.25 at a butt, 0.75 at 1 in 5 and 1 at 8',
      run: panelScarfStrength,
    },
  },
  groups: {
    'The board': ['width', 'wanted', 'more'],
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
    usualBoards: step('count', 'boardsNeeded + more', 'boards by the plan of pieces', GEOMETRY),
    lost: step('length', '(boards - 1) * taper', 'length of board eaten by the joints together', GEOMETRY),
    joinedLength: step('length', 'boards * boardLength - lost', 'length of the joined board', GEOMETRY),
    over: step('length', 'joinedLength - wanted', 'length to spare; less than nothing falls short', GEOMETRY),
    strengthKept: step(
      'share',
      'part == "panel" ? strengthOfPanelScarf(slope) : strengthOfScarf(slope)',
      'part of the strength of the unbroken board that the joint keeps, in tension',
      `common practice: a curve drawn through printed values, which stand ${scarfSpread} apart either way; butt from ${HANDBOOK}; slopes 5 to 12 from memory of its older chapter on glued members; 1 in 20 quoted from R. Birmingham, Boat Building Techniques; plywood from memory of the Plywood Design Specification (APA)`,
    ),
    keptLow: step(
      'share',
      `part == "panel" ? strengthKept : max(0, strengthKept - ${scarfSpread})`,
      'the same by the lowest edition; of plywood there is one figure only',
      `from memory: editions of the Wood Handbook's older chapter on glued members differ by about ${scarfSpread}`,
    ),
    keptHigh: step(
      'share',
      `part == "panel" ? strengthKept : min(1, strengthKept + ${scarfSpread})`,
      'the same by the highest edition',
      'from memory: the same',
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
  inWords: firstOf(
    [
      {
        when: 'boards == 1',
        says: 'One board of {boardLength} reaches {wanted} without a joint. If you make one at {slope}, taper {taper} of each board; it keeps about {strengthKept} of the strength.',
      },
      {
        when: 'part == "panel"',
        says: 'Taper {taper} of each sheet at {slope}; {boards} sheets of {boardLength} then make {joinedLength}: the joints take up {lost}. A scarf in plywood keeps about {strengthKept} of the strength along the face grain.',
      },
    ],
    [
      'Taper {taper} of each board at {slope}; {boards} boards of {boardLength} then reach {joinedLength}, for {lost} goes into the joints. A joint keeps about {strengthKept} of the strength. The books do not agree: editions of one handbook run from {keptLow} to {keptHigh}.',
      {
        when: 'glueToSection < 10',
        says: 'A joint that must be as strong as the wood wants a glue area of 10 times the section: a slope of 1 in 10.',
      },
    ],
  ),
  warnings: [
    {
      when: 'boards > 1 and boardLength < 2 * taper',
      says: 'A board of {boardLength} is too short for a taper of {taper} at both ends.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'over < 0 mm',
      says: '{boards} boards {boards?reaches:reach} only {joinedLength}, short of {wanted}: {boardsNeeded} {boardsNeeded?is:are} needed.',
      limit: 'geometry: n boards less n - 1 tapers',
      weight: 'stop',
    },
    {
      when: 'slope < 8',
      says: 'Steeper than 1 in 8: a scarf of {slope} keeps about {strengthKept} of the strength.',
      limit: `1 in 8 to 12 for long timbers: common practice; plywood scarfs are typically 1 in 8, ${HANDBOOK}`,
      weight: 'mind',
    },
    {
      when: 'part == "spar" and slope < 10',
      says: 'A spar bends all its length: its joints must be about as strong as the wood. The glue area is {glueToSection} times the section, and 10 times is asked: a slope of 1 in 10.',
      limit: `${HANDBOOK}; 1 in 12 for spars: common practice`,
      weight: 'mind',
    },
  ],
  cautions: [
    'A feather edge catches: clamp the board and plane or saw the taper away from your hands; wear eye protection.',
    'Where the bend is not easy keep joints away from its tightest place; keep them clear of frames, and those of port and starboard apart. Another cell says where they fall along the boat.',
    'A plank bent flat is scarfed through its thickness, the taper on its wide faces, so that the bend presses the joint together and does not peel it.',
    'Plywood is tapered with its face grain along the sheet; the plies show as straight stripes when the taper is flat.',
    "Glue: follow the maker's sheet for moisture, temperature, gloves and fresh air. Thin-line glues need pressure, epoxy only contact.",
    'The strength kept is a planning value for sound, straight-grained wood and a good glue line, not a test of your joint.',
  ],
  sources: [
    { text: `${HANDBOOK}: butt, scarf and finger joints, bond area and slope`, known: 'published' },
    {
      text: 'Wood Handbook, older chapter on glued members: strength of plain scarfs, 1 in 5 to 1 in 12',
      known: 'from memory',
    },
    ...otherPrinted.map(
      (printed) => ({ text: `${printed.source}: ${inFigures(printed)}`, known: 'from memory' }) as const,
    ),
    { text: 'Planning curve of strength', known: 'common practice' },
    { text: 'Taper, glue face, joined length', known: 'geometry' },
  ],
  about: ['{part}'],
  draw: drawScarf,
  chart: strengthChart,
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
