/** The working of the screw map. */
import { screwFunctions, screwSteps } from '../../common/screws/screw-choice';
import { ruleFunctions, ruleSteps } from './screw-rules';
import { stiffnessBored } from '../../../trade/bored';
import { tell, fact } from '../../form/fact';
import { stands } from '../../common/frame/frame-facts';
import { type CellFunction, step } from '../../form/define';
import { screwsInHand, type ScrewsAsked, screwInHand, faceInWords, datumOf } from './screws-in-hand';
import { CUSTOM, GEOMETRY } from '../../../trade/sources';

const wood = fact(
  'what is kept, and what is left beyond it',
  GEOMETRY,
  ({ screwClear }: ScrewsAsked, { ask }) => {
    const { standing } = ask(screwsInHand);
    const woodAt = (clear: number) => screwClear + Math.max(0, clear);
    return {
      least: standing.length > 0 ? woodAt(Math.min(...standing.map(({ clear }) => clear))) : screwClear,
      woodAt,
    };
  },
);

const woodInHand = fact(wood.how, GEOMETRY, (_: ScrewsAsked, { ask }) => {
  const screw = ask(screwInHand);
  return screw ? ask(wood).woodAt(screw.clear) : 0;
});

const faceInHand = fact(
  'the side of the joint that its row is driven from',
  GEOMETRY,
  (_: ScrewsAsked, { ask }) => {
    const screw = ask(screwInHand);
    return screw ? faceInWords(ask(screwsInHand), screw) : 'none';
  },
);

/** Of the two published rules, the one chosen, or the larger figure. */
const byRule = (of: string, meaning: string) =>
  step(
    'length',
    `rule == "american" ? american${of} : rule == "european" ? european${of} : max(american${of}, european${of})`,
    meaning,
    'as chosen',
  );

export const screwMapFunctions = {
  ...screwFunctions,
  ...ruleFunctions,
  leftBored: {
    takes: ['length', 'length', 'length'],
    gives: 'share',
    how: '1 - (d³ + 12 d c²) / h³, for a hole d across, c off the middle of the depth h',
    run: stiffnessBored,
  },
} satisfies Readonly<Record<string, CellFunction>>;

export const screwMapSteps = {
  stands: tell(stands, 'choice', 'side of the station line on which the frame stands', (side) => side),
  skinThickness: step(
    'length',
    'member == "bottom" ? bottomThickness : member == "side" ? sideThickness : bilgeThickness',
    'skin over this member',
    GEOMETRY,
  ),
  topThickness: step(
    'length',
    'fastened == "plate" ? gussetThickness : fastened == "skin" ? skinThickness : keelsonThickness',
    'thickness screwed on',
    GEOMETRY,
  ),
  depth: step(
    'length',
    'fastened == "plate" ? siding : max(moulded - (fastened == "skin" ? 0 mm : keelsonThickness), 5 mm)',
    'wood of the frame in the direction of the screw',
    GEOMETRY,
  ),
  ...screwSteps,
  drilled: step('count', '1', '1: every hole is drilled', 'common practice in boats'),
  ...ruleSteps,
  leastClear: step('length', '10 mm', 'least distance of a screw from a later cut', CUSTOM, 'least'),
  customPitch: step(
    'length',
    'soldIn == "inch" ? 1.5 in : 40 mm',
    'screw to screw in plates and keelson: what the room mostly allows',
    CUSTOM,
    'most',
  ),
  ruleAlong: {
    ...byRule('Pitch', 'least distance from screw to screw in one line of grain'),
    bound: 'least',
  },
  ruleAcross: { ...byRule('Rows', 'least distance from line to line'), bound: 'least' },
  ruleEdge: { ...byRule('Edge', 'least distance from an edge'), bound: 'least' },
  ruleEnd: step(
    'length',
    'ends == "pulled" ? (rule == "american" ? americanEnd : rule == "european" ? europeanEnd : max(americanEnd, europeanEnd)) : rule == "american" ? americanQuietEnd : rule == "european" ? europeanQuietEnd : max(americanQuietEnd, europeanQuietEnd)',
    'least distance from an end, along the grain',
    'as chosen',
    'least',
  ),
  asked: tell(
    screwsInHand,
    'count',
    'screws that the rows ask for, port side',
    ({ screws }) => screws.length,
  ),
  placed: tell(
    screwsInHand,
    'count',
    'screws that find a place, port side',
    ({ standing }) => standing.length,
  ),
  moved: tell(
    screwsInHand,
    'count',
    'screws moved off a later cut',
    ({ standing }) => standing.filter(({ clash }) => clash !== '').length,
  ),
  dropped: step('count', 'asked - placed', 'screws left out because no place is left', 'count'),
  leastWood: tell(
    wood,
    'length',
    'least wood between a screw and a cut still to come; what is asked where there is no screw',
    ({ least }) => least,
  ),
  offMiddle: tell(
    screwsInHand,
    'length',
    'screw of a gusset that stands farthest from the middle of the member’s depth',
    ({ standing, joint }, { moulded }) =>
      joint.fastened === 'plate'
        ? Math.max(0, ...standing.map(({ inward }) => Math.abs(inward - moulded / 2)))
        : 0,
  ),
  stiffnessLeft: step(
    'share',
    'placed < 1 ? 1 : fastened == "plate" ? leftBored(moulded, pilot, offMiddle) : max(0, 1 - pilot / siding * (1 - (1 - 2 * max(0 mm, min(hold, depth)) / depth)^3) / 2)',
    'stiffness left in the member at the worst hole: of a gusset the farthest from the middle, else one bored in from the edge',
    'geometry: second moment of area less the hole’s',
  ),
  faceWood: step(
    'length',
    'fastened == "plate" ? ruleEdge : siding / 2',
    'wood on either side of a screw in the middle of the frame’s thickness; of a gusset what is asked',
    GEOMETRY,
  ),
  along: tell(
    screwInHand,
    'length',
    'along the member: from the chine for a gusset, from the outer edge of the panel for the skin, from the centreline for the keelson',
    (screw) => screw?.along ?? 0,
  ),
  inward: tell(
    screwInHand,
    'length',
    'in from the member’s edge on the skin for a gusset; else from the face on the station line',
    (screw) => screw?.inward ?? 0,
  ),
  into: tell(screwInHand, 'choice', 'member it goes into', (screw) => screw?.member.panel.label ?? 'none'),
  face: tell(faceInHand, 'choice', 'where it goes in', (face) => face),
  movedBy: tell(screwInHand, 'length', 'moved by', (screw) => screw?.moved ?? 0),
  wood: tell(woodInHand, 'length', 'wood between it and the nearest cut still to come', (left) => left),
  datum: tell(screwsInHand, 'choice', 'from where distances along a member are taped', datumOf, {
    how: 'the chine, the outer edge of the panel, or the centreline',
  }),
} as const;
