/** The cloth that sheathes the hull: its pieces, how they are laid and lie on the roll, and what to buy. */
import { defineCell } from '../form/define';
import { tableOf } from '../form/row-quantities';
import { byRoll, drawCloth } from './cloth-drawing';
import { clothInputs } from './cloth-inputs';
import { clothSteps, pieceList } from './cloth-steps';

export const cloth = defineCell({
  id: 'cloth',
  stage: 'finish',
  title: 'Cloth for the sheathing',
  question:
    'Which pieces do I cut from the roll of glass cloth, in which order do I lay them, and how much do I buy?',
  inputs: clothInputs,
  groups: {
    'The flat face': ['flatLength', 'flatWidth', 'layers'],
    'Runs and laps': ['runs', 'lap', 'turn', 'further', 'trim', 'slack', 'seamShift', 'pieceInHand'],
    'The strips': ['strips', 'stripWidth', 'stripCut'],
    'Joints of the skin': ['sideJoints', 'sideJointLong', 'bottomJoints', 'bottomJointLong'],
    'As the shop sells it': ['beyond', 'soldBy', 'price'],
  },
  alone: ['flatLength', 'flatWidth', 'layers'],
  steps: clothSteps,
  answers: [
    { of: 'length', label: 'to buy', from: 'off the roll, at its full width', tolerance: '50 mm' },
    { of: 'area', label: 'cloth laid', from: 'all layers, laps and strips: what the resin is reckoned by' },
    { of: 'pieces', label: 'pieces to cut', from: 'strips with them, both sides of the boat' },
  ],
  inWords: {
    when: 'pieces == 0',
    says: 'No cloth is asked for.',
    otherwise: [
      'Buy {length} of cloth {width} wide, for {cost}: the {pieces?piece lies:pieces lie} on {cut} of it; the least that any way of laying could take is {leastCut}.',
      {
        when: 'over == "hull" and covered > 0 m^2',
        says: [
          'Lay strips first, then transoms and sides, and the bottom last, over the others’ turned edges.',
          {
            when: 'dartLength > 0 mm',
            says: 'The bottom’s cloth goes over both sides; cut it open along the centreline from {dartFrom} off its after end to the bow, and wrap each half round the stem.',
          },
          {
            when: 'dartGap < -5 mm',
            says: 'There the halves gape, so a patch goes on first.',
          },
          {
            when: 'inOne > 0 and dartLength == 0 mm',
            says: 'The bottom’s cloth goes over both sides and is not cut open.',
          },
        ],
      },
      'Of the cloth {lapped} lies in laps and round edges: round these to {leastRound} or more.',
    ],
  },
  table: tableOf({
    caption: 'The pieces in the order of laying, and where each is cut from the roll',
    over: 'pieceInHand',
    rows: pieceList,
    columns: [
      { of: 'long', label: 'cut long' },
      { of: 'wide', label: 'cut wide' },
      { of: 'along', label: 'from the roll’s end' },
      { of: 'inward', label: 'from its edge' },
      { of: 'layer', label: 'layer' },
      { of: 'laid', label: 'laid' },
    ],
  }),
  warnings: [
    {
      when: 'seams > 0 and lap < 25 mm',
      says: 'Runs lap by {lap} only: where cloth is butted, a tape belongs over the seam.',
      limit: '25 to 100 mm (1 to 4 in) by a glass dealer’s page',
      weight: 'mind',
    },
    {
      when: 'over == "hull" and covered > 0 m^2 and turn < 25 mm',
      says: 'A turn of {turn} hardly doubles the edge.',
      limit: '25 mm (1 in) round chines, transom and stem: published advice on sheathing',
      weight: 'mind',
    },
    {
      when: 'seamsApart < seamShift',
      says: 'A seam stands only {seamsApart} from one of the layer under it: the roll is too narrow to shift it further.',
      limit: `a hand’s breadth: common practice, no source`,
      weight: 'mind',
    },
    {
      when: 'pieceInHand > pieces and pieceInHand > 1',
      says: 'There are fewer pieces than that: {pieces} in all.',
      limit: 'the pieces as planned',
      weight: 'mind',
    },
  ],
  cautions: [
    'Cut glass sheds slivers: gloves, long sleeves and glasses while you cut it, and a P100 or FFP3 mask when you sand it cured.',
    'The maker’s sheets of cloth and resin outrank the figures here: some cloths bear a finish that epoxy does not wet.',
    'Round every edge before the cloth is laid, or it lifts there. Keep the roll dry, and do not fold it.',
    'Try each piece dry and pencil round its edge and across the frames, so that it can be laid back to the mark. Roll it up dry, wet the wood, and roll it out over the wet resin.',
  ],
  sources: [
    {
      text: 'Panels laid flat from the hull, drawn out by what is turned round their edges',
      known: 'geometry',
    },
    {
      text: 'A glass dealer’s page on how much cloth to buy: rolls of 38, 50 and 60 in (965, 1270 and 1524 mm), laps of 1 to 4 in (25 to 100 mm)',
      known: 'published',
    },
    {
      text: 'Published advice on sheathing: 1 in (25 mm) round chines, transom and stem',
      known: 'published',
    },
    {
      text: 'Coffman, Garey, Johnson and Tarjan, SIAM Journal on Computing 9 (1980): laying on the roll, the longest first',
      known: 'published',
    },
    {
      text: 'Strips of 6 in (150 mm), order of laying, spare ends, rounding of edges: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['bottom', 'bilge', 'side', 'transom', 'bowTransom'],
  wide: true,
  draw: drawCloth,
  chart: byRoll,
});
