/** What a panel laid flat is asked for: which, how it is marked and cut, of what it is, and what it must bend to. */
import { choice, input } from '../form/define';
import { fromBoat } from '../form/from-boat';
import { chosenFromBoat } from '../form/from-shop';

const PRACTICE = 'common practice, no source';
const CUT_OUT = 'opening != "none"';

export const grains = [
  { id: 'along', label: 'along' },
  { id: 'across', label: 'across' },
] as const;

export const panelInputs = {
  panel: choice('Panel', { options: 'panels', preset: 'side' }),
  grain: choice('Face grain', {
    options: grains,
    preset: 'along',
    note: 'along or across the panel’s length; along it is stiffer and bends less',
  }),
  skinLayers: fromBoat('{panel}.layers'),
  every: input('length', 'Ordinates every', {
    preset: '300 mm',
    presetInch: '12 in',
    min: '25 mm',
    max: '2 m',
    step: '50 mm',
    note: `a batten is bent through the marks; closer where an edge curves: ${PRACTICE}`,
  }),
  leftOn: input('length', 'Cut outside the line by', {
    preset: '10 mm',
    presetInch: '3/8 in',
    min: '0 mm',
    max: '50 mm',
    step: '1 mm',
    note: `left on all round, planed off when the panel hangs: ${PRACTICE}`,
  }),
  thickness: fromBoat('{panel}.thickness', { hint: 'as the caliper reads it; stiffness goes by its cube' }),
  ply: chosenFromBoat('{panel}.plywood'),
  plyDensity: input('density', 'Density of the plywood', {
    from: 'plywood.{ply}.density',
    preset: '540 kg/m³',
    min: '200 kg/m³',
    max: '1000 kg/m³',
    step: '10 kg/m³',
  }),
  wetness: choice('Bent', {
    options: [
      { id: 'dry', label: 'dry and cold' },
      { id: 'soaked', label: 'soaked in hot water' },
    ],
    preset: 'dry',
    note: 'only the table of picked panels has soaked ones',
  }),
  allowed: input('share', 'Of the table’s bend, use', {
    bound: 'most',
    preset: '100 %',
    min: '25 %',
    max: '100 %',
    step: '5 %',
    note: 'less for sheets with patches, or where a crack can’t be had',
  }),
  twistAllowed: input('angle', 'Twist that goes on easily', {
    bound: 'most',
    preset: '5°',
    min: '0.1°',
    max: '45°',
    step: '1°',
    note: 'on a derived strain: from 5° many clamps, past 9° too much',
  }),
  place: input('length', 'Ordinate looked at', {
    preset: '1.2 m',
    presetInch: '4 ft',
    min: '0 mm',
    max: '20 m',
    step: '50 mm',
    note: 'along the straight edge, from the panel’s aftermost point',
  }),
  siding: fromBoat('frame.siding'),
  stands: chosenFromBoat('frame.stands'),
  gapAllowed: input('length', 'Gap allowed over a frame', {
    from: 'framePattern.gapAllowed',
    bound: 'most',
    preset: '2 mm',
    presetInch: '1/16 in',
    min: '0.1 mm',
    max: '20 mm',
    step: '0.5 mm',
    note: `what thickened epoxy fills: ${PRACTICE}`,
  }),
  opening: choice('Cut-out', {
    options: [
      { id: 'none', label: 'none' },
      { id: 'slot', label: 'slot with round ends' },
      { id: 'hole', label: 'round hole' },
    ],
    preset: 'none',
  }),
  openingAt: input('length', 'Its middle, along', {
    preset: '1.5 m',
    presetInch: '5 ft',
    min: '0 mm',
    max: '20 m',
    step: '10 mm',
    note: 'along the straight edge, from the panel’s aftermost point',
    when: CUT_OUT,
  }),
  openingUp: input('length', 'Its middle, up', {
    preset: '200 mm',
    presetInch: '8 in',
    min: '0 mm',
    max: '5 m',
    step: '10 mm',
    note: 'square up from the straight edge',
    when: CUT_OUT,
  }),
  openingLong: input('length', 'Its length', {
    preset: '400 mm',
    presetInch: '16 in',
    min: '10 mm',
    max: '3 m',
    step: '10 mm',
    note: 'over all, along the panel',
    when: 'opening == "slot"',
  }),
  openingWide: input('length', 'Its width', {
    preset: '30 mm',
    presetInch: '1 1/4 in',
    min: '5 mm',
    max: '1 m',
    step: '1 mm',
    note: 'of a hole the diameter',
    when: CUT_OUT,
  }),
} as const;
