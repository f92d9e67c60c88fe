/** Fields of the weights that come in many: a mass and its place, gear, and the list of all parts. */
import { choice, input } from '../form/define';

export const CUSTOM = 'common practice, no source';

export const massOf = (label: string, preset: string, note: string, from?: string) =>
  input('mass', label, {
    preset,
    ...(from === undefined ? {} : { from }),
    min: '0 kg',
    max: '5 t',
    step: '0.5 kg',
    note,
  });

/** Along the boat, m; negative abaft the after end of the bottom. */
export const forward = (label: string, from: string, note = 'from the after end of the bottom, forward') =>
  input('length', label, { from, preset: '1 m', min: '-3 m', max: '30 m', step: '50 mm', note });

export const height = (label: string, from: string, note = 'of its middle, above the base line') =>
  input('length', label, { from, preset: '300 mm', min: '-2 m', max: '5 m', step: '10 mm', note });

export const side = (label: string) =>
  input('length', label, {
    preset: '0 mm',
    min: '-3 m',
    max: '3 m',
    step: '50 mm',
    note: 'from the centreline; less than 0 to starboard',
  });

/** What is taken along, as a builder would call it. */
export const gearOptions = [
  { id: 'oars', label: 'oars' },
  { id: 'anchor', label: 'anchor and line' },
  { id: 'jackets', label: 'life jackets' },
  { id: 'battery', label: 'battery' },
  { id: 'food', label: 'food and water' },
  { id: 'tools', label: 'tools and spares' },
  { id: 'rig', label: 'mast and sail' },
  { id: 'ballast', label: 'ballast' },
  { id: 'other', label: 'something else' },
] as const;

const gear = (
  number: number,
  preset: (typeof gearOptions)[number]['id'],
  weighs: string,
  note: string,
  at: 'usualMiddle' | 'usualBow',
) => ({
  is: choice(`Gear ${number}`, { options: gearOptions, preset }),
  mass: massOf(`Gear ${number} weighs`, weighs, note),
  forward: forward(`Gear ${number}, forward`, `{self}.${at}`),
  height: height(`Gear ${number}, height`, '{self}.usualLow'),
  side: side(`Gear ${number}, to port`),
});

const [a, b, c, d] = [
  gear(1, 'oars', '5 kg', `two and their rowlocks; ${CUSTOM}`, 'usualMiddle'),
  gear(2, 'anchor', '6 kg', `with chain and line; ${CUSTOM}`, 'usualBow'),
  gear(3, 'jackets', '4 kg', `four, dry; ${CUSTOM}`, 'usualMiddle'),
  gear(4, 'other', '0 kg', 'nothing until typed', 'usualMiddle'),
] as const;

export const gearInputs = {
  gearA: a.is,
  gearAMass: a.mass,
  gearAForward: a.forward,
  gearAHeight: a.height,
  gearASide: a.side,
  gearB: b.is,
  gearBMass: b.mass,
  gearBForward: b.forward,
  gearBHeight: b.height,
  gearBSide: b.side,
  gearC: c.is,
  gearCMass: c.mass,
  gearCForward: c.forward,
  gearCHeight: c.height,
  gearCSide: c.side,
  gearD: d.is,
  gearDMass: d.mass,
  gearDForward: d.forward,
  gearDHeight: d.height,
  gearDSide: d.side,
};

/** Parts of wood by the boat's own names, then what lies on her skin, and what is put aboard. */
export const partOptions = [
  { id: 'bottom', label: 'bottom' },
  { id: 'bilge', label: 'bilges' },
  { id: 'side', label: 'sides' },
  { id: 'transom', label: 'transom' },
  { id: 'bowTransom', label: 'bow transom' },
  { id: 'keelson', label: 'keelson' },
  { id: 'stem', label: 'stem' },
  { id: 'chineLog', label: 'chine logs' },
  { id: 'sheerClamp', label: 'sheer clamps' },
  { id: 'rubRail', label: 'rub rails' },
  { id: 'frame', label: 'frames' },
  { id: 'gusset', label: 'gussets' },
  { id: 'thwart', label: 'thwarts' },
  { id: 'sheathing', label: 'cloth and resin', about: ['bottom', 'side'] },
  { id: 'pastes', label: 'glue, fillets and filler', about: ['chineLog', 'keelson'] },
  { id: 'fastenings', label: 'screws', about: ['chineLog', 'sheerClamp'] },
  { id: 'coats', label: 'paint', about: ['bottom', 'side'] },
  { id: 'outboard', label: 'motor', about: ['transom'] },
  { id: 'petrol', label: 'fuel', about: ['bottom'] },
  { id: 'gearA', label: 'gear 1', about: ['bottom'] },
  { id: 'gearB', label: 'gear 2', about: ['bottom'] },
  { id: 'gearC', label: 'gear 3', about: ['bottom'] },
  { id: 'gearD', label: 'gear 4', about: ['bottom'] },
  { id: 'people', label: 'people', about: ['thwart'] },
] as const;
