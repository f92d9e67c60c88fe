/** What plywood to buy, and how skin, transoms, gussets and other parts are cut from it. */
import { defineCell } from '../form/define';
import { tableOf } from '../form/row-quantities';
import { drawSheets, sheetLeaves } from './sheets-drawing';
import { asked, cutRows } from './sheets-facts';
import { sheetsInputs } from './sheets-inputs';
import { partKeys } from './sheets-parts';
import { asksHull } from './sheets-problem';
import { grainFunctions } from './sheets-grain';
import { sheetsSteps } from './sheets-steps';

const parts = partKeys.flatMap((key) => [`${key}Pieces`, `${key}Length`, `${key}Width`] as const);

export const sheets = defineCell({
  id: 'sheets',
  stage: 'skin',
  title: 'Sheets to buy',
  question: 'How many sheets of plywood do I buy, and how do I cut everything from them?',
  inputs: sheetsInputs,
  groups: {
    'The sheets': [
      'length',
      'width',
      'price',
      'otherLength',
      'otherWidth',
      'otherPrice',
      'priced',
      'faces',
      'sheetPlies',
    ],
    Sawing: ['kerf', 'edge', 'outside', 'over'],
    'Places of the joints': ['bottomAt', 'sideAt', 'clear', 'least', 'more', 'slope', 'heldOn', 'heldAt'],
    'Joints kept apart': ['offSide', 'offPanel', 'offBend'],
    'The panels': ['skinSides', 'only', 'bottomIn', 'siding', 'stands'],
    'Thickness of the skin': [
      'bottomThickness',
      'bottomLayers',
      'sideThickness',
      'sideLayers',
      'bilgeThickness',
      'bilgeLayers',
    ],
    'The bend': ['wetness', 'allowed'],
    'Transoms and gussets': [
      'transoms',
      'transomThickness',
      'transomLayers',
      'gussets',
      'gussetLeg',
      'gussetThickness',
      'blockLength',
      'blockGap',
    ],
    'Other parts': [...parts, 'partThickness', 'partGrain'],
    Shown: ['sheet', 'cut'],
  },
  alone: [...parts, 'partThickness', 'partGrain', 'length', 'width', 'kerf', 'edge'],
  functions: grainFunctions,
  steps: sheetsSteps,
  answers: [
    { of: 'count', label: 'sheets', from: 'of all thicknesses, in the sizes sold' },
    { of: 'joints', label: 'joints', from: 'in the skin, all sides together', when: 'skinSides > 0' },
    { of: 'waste', label: 'left over', from: 'of the plywood bought' },
  ],
  inWords: [
    'Buy {count} {count?sheet:sheets} of plywood',
    { when: 'ofSecond > 0', says: ', {ofSecond} of the second size,' },
    'for {cost}',
    { when: 'skinSides > 0', says: ', with {joints} {joints?joint:joints} in the skin' },
    { when: 'skinSides > 1 and flatBottom > 0 and bottomIn == "whole"', says: ', the bottom in one width' },
    '; {waste} is left over.',
    {
      when: 'gluedArea > 0 m^2',
      says: 'Layers are cut each by itself, from sheets of its own thickness, their joints {keptPanel} apart.',
    },
    {
      when: 'offRule > 0',
      says: '{offRule} of the joints {offRule?stands:stand} clear of the frames but not by your rule, which has no place so far from the next.',
    },
    {
      when: 'proved == "yes"',
      says: 'No plan costs less in sheets.',
      otherwise: 'There may be a plan with fewer: search for it.',
    },
    {
      when: 'skinSides > 0',
      says: 'Better face grain: {better}; along, a sheet is {stiffer} times as stiff. Of the bend it takes they ask {takenAlong} along, {takenAcross} across.',
    },
  ],
  table: tableOf({
    caption: 'The cut list: sheet by sheet, in the order of the cuts; places of the boxes round the pieces',
    over: 'cut',
    rows: cutRows,
    columns: [
      { of: 'onSheet', label: 'sheet' },
      { of: 'name', label: 'the piece is' },
      { of: 'fromEnd', label: 'from the end' },
      { of: 'fromEdge', label: 'from the edge' },
      { of: 'long', label: 'along' },
      { of: 'wide', label: 'across' },
      { of: 'thick', label: 'thick' },
      { of: 'lies', label: 'it lies' },
    ],
  }),
  warnings: [
    {
      when: 'skinSides > 0 and (keptPanel < offPanel - 0.1 mm or (cutting == "apart" and keptSide < offSide - 0.1 mm))',
      says: [
        'No places are found for joints so far apart:',
        { when: 'skinSides > 1 and cutting == "apart"', says: 'port and starboard are held to {keptSide},' },
        'bottom and side to {keptPanel}. Ask for less, or allow shorter pieces or a joint more.',
      ],
      limit: 'the distances asked for',
      weight: 'mind',
    },
    {
      when: 'waste > 0.6',
      says: '{waste} of the plywood is left over: search for a plan with fewer sheets, let the grain run either way, allow joints in other places, or try another size of sheet.',
      limit: 'six tenths wasted; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'sheet >= count + 0.5',
      says: 'The plan has fewer sheets than that: {count} in all.',
      limit: 'the plan of sheets',
      weight: 'mind',
    },
    {
      when: 'cut > pieces',
      says: 'The cut list has fewer pieces than that: {pieces} in all.',
      limit: 'the plan of sheets',
      weight: 'mind',
    },
    {
      when: 'skinSides > 1 and cutting == "together"',
      says: 'Port and starboard come off alike, so their joints stand side by side: put a block or a lap behind them that carries the whole panel.',
      limit: 'joints of a pair a frame bay apart; common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'A sheet on a saw wants both parts held up and a second person, who guides and never pulls; guard, riving knife and push stick as its maker says. The dust harms the lungs: mask and extraction.',
    'Measure the sheets before you mark them: thickness, length and corners differ from what is printed. Mark all pieces of a sheet before the first cut.',
    'Face grain along the panel or across changes how it bends and what it carries: a plan’s word and the designer outrank the saving.',
    'The map is of pieces within their lines. Cut outside the line, plane to it when the panel hangs.',
  ],
  sources: [
    {
      text: 'E. K. Burke, R. S. R. Hellier, G. Kendall and G. Whitwell, Complete and robust no-fit polygon generation for the irregular stock cutting problem, European Journal of Operational Research 179 (2007)',
      known: 'from memory',
    },
    {
      text: 'S. Martello, D. Pisinger and D. Vigo, The three-dimensional bin packing problem, Operations Research 48 (2000): that no fewer sheets hold given rectangles',
      known: 'from memory',
    },
    {
      text: 'Bottom joints on frames, 180 mm (7 in) left over the transom; side joints midway, the first on frame 2; joints of a pair and of neighbouring panels apart; trimming',
      known: 'common practice',
    },
    {
      text: 'Stiffness along and across the face grain: parallel plies, Wood Handbook, USDA FPL-GTR-190 (2010), ch. 12',
      known: 'from memory',
    },
    { text: 'Panels laid flat, their pieces, and how they lie', known: 'geometry' },
  ],
  about: ['bottom', 'bilge', 'side', 'transom', 'bowTransom', 'gusset'],
  draw: drawSheets,
  leaves: sheetLeaves,
  search: {
    by: 'sheets',
    seeks: 'fewer sheets',
    problem: (v, { hull, ask }) => (hull || !asksHull(v) ? ask(asked) : ''),
  },
});
