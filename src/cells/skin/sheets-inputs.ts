/** What the sheets are asked for: how the skin is jointed and laid, what is sold, and what else is cut. */
import { choice, input, type InputSpec } from '../form/define';
import { fromBoat } from '../form/from-boat';
import { chosenFromBoat, fromShop } from '../form/from-shop';
import { panelInputs } from './panels-inputs';

const PRACTICE = 'common practice, no source';

const SKIN = 'skinSides > 0';
/** A butt on a frame has the frame behind it; one chosen by hand may stand anywhere. */
const BLOCKS = `${SKIN} and joint == "butt" and (bottomAt != "frames" or sideAt != "frames" or heldOn != "none")`;
const SECOND = 'otherLength > 0 mm';

const length = (
  label: string,
  more: Omit<InputSpec, 'kind' | 'label' | 'step'> & { readonly step?: string },
) => input('length', label, { step: '10 mm', ...more });

/** Other parts are listed by their sizes; each line is asked when the one above it is filled in. */
export const partKeys = ['partA', 'partB', 'partC', 'partD'] as const;

const byKey = <P extends readonly [key: string, spec: unknown]>(pairs: readonly P[]) =>
  Object.fromEntries(pairs) as { readonly [Pair in P as Pair[0]]: Pair[1] }; // the keys are those of the pairs

const parts = partKeys.flatMap((key, at) => {
  const filled = (lines: number) =>
    partKeys
      .slice(0, lines)
      .map((line) => `${line}Pieces > 0`)
      .join(' and ');
  const side = (what: string, preset: string, presetInch: string) =>
    length(`Part ${at + 1}: ${what}`, {
      when: filled(at + 1),
      preset,
      presetInch,
      min: '10 mm',
      max: '6 m',
    });
  return [
    [
      `${key}Pieces`,
      input('count', `Part ${at + 1}: how many`, {
        ...(at > 0 && { when: filled(at) }),
        preset: '0',
        min: '0',
        max: '20',
        step: '1',
      }),
    ],
    [`${key}Length`, side('length', '900 mm', '36 in')],
    [`${key}Width`, side('width', '250 mm', '10 in')],
  ] as const;
});

export const sheetsInputs = {
  grain: choice('Face grain', {
    options: [
      { id: 'along', label: 'along the panels' },
      { id: 'across', label: 'across them' },
      { id: 'either', label: 'either way' },
      { id: 'better', label: 'each panel’s better way' },
    ],
    preset: 'along',
    note: 'along is stiffer from frame to frame and bends less round the side; across gives more pieces from a sheet',
    when: SKIN,
  }),
  bottomIn: choice('The flat bottom is cut', {
    options: [
      { id: 'halves', label: 'in halves' },
      { id: 'whole', label: 'in one width' },
    ],
    from: '{self}.usualBottom',
    preset: 'halves',
    note: 'in one width it has no seam under the keelson',
    when: 'skinSides > 1 and flatBottom > 0',
  }),
  joint: choice('Joints', {
    options: [
      { id: 'butt', label: 'butts on blocks' },
      { id: 'scarf', label: 'scarfs' },
    ],
    preset: 'butt',
    when: SKIN,
  }),
  bottomAt: choice('Joints of the bottom', {
    options: [
      { id: 'frames', label: 'on frames' },
      { id: 'midway', label: 'midway' },
      { id: 'clear', label: 'clear of frames' },
    ],
    preset: 'frames',
    note: PRACTICE,
    when: SKIN,
  }),
  sideAt: choice('Joints of the other panels', {
    options: [
      { id: 'secondFrame', label: 'midway or on frame 2' },
      { id: 'midway', label: 'midway' },
      { id: 'frames', label: 'on frames' },
      { id: 'clear', label: 'clear of frames' },
    ],
    preset: 'secondFrame',
    note: `midway between frames, the first from the stern on frame 2: ${PRACTICE}`,
    when: SKIN,
  }),
  cutting: choice('The sides are sawn', {
    options: [
      { id: 'apart', label: 'one by one' },
      { id: 'together', label: 'two sheets at once' },
    ],
    preset: 'apart',
    when: 'skinSides > 1',
  }),
  length: fromShop('sheetLength'),
  width: fromShop('sheetWidth'),
  price: fromShop('sheetPrice'),
  otherLength: fromShop('otherSheetLength'),
  otherWidth: fromShop('otherSheetWidth', { when: SECOND }),
  otherPrice: fromShop('otherSheetPrice', { when: SECOND }),
  priced: fromShop('sheetThickness'),
  kerf: fromShop('kerf'),
  edge: length('Trimmed off each edge of a sheet', {
    preset: '5 mm',
    presetInch: '1/4 in',
    min: '0 mm',
    max: '100 mm',
    step: '1 mm',
    note: `bruised edges and corners: ${PRACTICE}`,
  }),
  outside: length('Cut outside the line by', {
    from: 'panels.leftOn',
    preset: '10 mm',
    presetInch: '3/8 in',
    min: '0 mm',
    max: '50 mm',
    step: '1 mm',
    note: 'on each side of the line of every piece',
  }),
  faces: choice('Good faces of a sheet', {
    options: [
      { id: 'both', label: 'both' },
      { id: 'one', label: 'one' },
    ],
    preset: 'both',
    note: 'with both, a piece may be cut from the back',
  }),
  skinSides: input('count', 'Sides of the boat to skin', {
    from: 'side.pieces',
    ofBoat: true,
    preset: '0',
    min: '0',
    max: '2',
    step: '1',
    note: '0 where you have her panels',
  }),
  only: choice('Panels', { options: 'panels', none: 'all of them', preset: 'none', when: SKIN }),
  over: length('Bottom left over the transom', {
    when: SKIN,
    ofBoat: true,
    preset: '180 mm',
    presetInch: '7 in',
    min: '0 mm',
    max: '500 mm',
    note: `trimmed when it is on: ${PRACTICE}`,
  }),
  offSide: length('Port to starboard joint', {
    when: 'skinSides > 1 and cutting == "apart"',
    ofBoat: true,
    preset: '600 mm',
    presetInch: '24 in',
    min: '0 mm',
    max: '3 m',
    bound: 'least',
    note: `600 mm (24 in) or a frame bay: ${PRACTICE}`,
  }),
  offPanel: length('Bottom to side joint', {
    when: SKIN,
    ofBoat: true,
    preset: '300 mm',
    presetInch: '12 in',
    min: '0 mm',
    max: '3 m',
    bound: 'least',
    note: `along the boat, between panels that meet: ${PRACTICE}`,
  }),
  offBend: length('Joint to the hardest bend', {
    when: SKIN,
    ofBoat: true,
    preset: '150 mm',
    presetInch: '6 in',
    min: '0 mm',
    max: '3 m',
    bound: 'least',
    note: `along the boat: ${PRACTICE}`,
  }),
  clear: fromBoat('pieces.frameClearance', {
    when: `(bottomAt == "clear" or sideAt == "clear") and ${SKIN}`,
    ofBoat: true,
  }),
  least: fromBoat('pieces.least', { when: SKIN, ofBoat: true }),
  more: fromBoat('pieces.more', { when: SKIN, ofBoat: true }),
  slope: fromBoat('pieces.panelSlope', { when: `joint == "scarf" and ${SKIN}`, ofBoat: true }),
  heldOn: choice('A joint you have chosen, on', {
    options: 'panels',
    none: 'none',
    preset: 'none',
    when: SKIN,
  }),
  heldAt: length('Its place', {
    when: `heldOn != "none" and ${SKIN}`,
    ofBoat: true,
    preset: '2 m',
    presetInch: '6 ft',
    min: '-1 m',
    max: '45 m',
    note: 'forward of the after end of the bottom; on both sides, and the rest is planned round it',
  }),
  sideThickness: fromBoat('side.thickness', { when: SKIN, ofBoat: true }),
  bottomThickness: fromBoat('bottom.thickness', { when: SKIN, ofBoat: true }),
  bilgeThickness: fromBoat('bilge.thickness', { when: 'bilge.thickness', ofBoat: true }),
  wetness: { ...panelInputs.wetness, when: SKIN },
  allowed: { ...panelInputs.allowed, from: 'panels.allowed', when: SKIN },
  sheetPlies: input('count', 'Plies of a sheet', {
    preset: '5',
    min: '3',
    max: '25',
    step: '2',
    note: 'of one thickness each; count them at an edge',
    when: SKIN,
  }),
  siding: fromBoat('frame.siding', { when: SKIN, ofBoat: true }),
  stands: chosenFromBoat('frame.stands', { when: SKIN }),
  transoms: input('count', 'Transoms at each end', {
    when: 'transom.pieces',
    from: 'transom.pieces',
    ofBoat: true,
    preset: '0',
    min: '0',
    max: '2',
    step: '1',
    note: '0 where it is not of plywood',
  }),
  transomThickness: fromBoat('transom.thickness', { when: 'transoms > 0', ofBoat: true }),
  transomLayers: input('count', 'Layers of a transom', {
    when: 'transoms > 0',
    from: '{self}.usualLayers',
    ofBoat: true,
    preset: '1',
    min: '1',
    max: '4',
    step: '1',
    note: 'glued together, so that it comes off the sheets of the skin',
  }),
  gussets: input('count', 'Gussets', {
    from: 'gusset.pieces',
    ofBoat: true,
    preset: '0',
    min: '0',
    max: '200',
    step: '1',
    note: 'on both faces of every frame; 0 where they are of scrap',
  }),
  gussetLeg: fromBoat('gusset.leg', { when: 'gussets > 0', ofBoat: true }),
  gussetThickness: fromBoat('gusset.thickness', { when: 'gussets > 0', ofBoat: true }),
  blockLength: length('Butt block across the joint', {
    when: BLOCKS,
    from: 'butt.plateLength',
    ofBoat: true,
    preset: '150 mm',
    presetInch: '6 in',
    min: '0 mm',
    max: '2 m',
    note: 'of the panel’s own plywood, behind each butt that stands on no frame; 0 where they are not',
  }),
  blockGap: length('Gap at both ends of it', {
    when: `${BLOCKS} and blockLength > 0 mm`,
    from: 'butt.limberGap',
    ofBoat: true,
    preset: '12 mm',
    presetInch: '1/2 in',
    min: '0 mm',
    max: '100 mm',
    step: '1 mm',
    note: 'for water',
  }),
  ...byKey(parts),
  partThickness: length('Thickness of these parts', {
    when: 'partAPieces > 0',
    preset: '9 mm',
    presetInch: '3/8 in',
    min: '1 mm',
    max: '60 mm',
    step: '1 mm',
  }),
  partGrain: choice('Grain of these parts', {
    options: [
      { id: 'along', label: 'along' },
      { id: 'across', label: 'across' },
      { id: 'either', label: 'either way' },
    ],
    preset: 'either',
    when: 'partAPieces > 0',
  }),
  sheet: input('count', 'Sheet shown', { preset: '1', min: '1', max: '99', step: '1' }),
  cut: input('count', 'Line of the cut list', { preset: '1', min: '1', max: '999', step: '1' }),
};
