/** Fields of the weights that come in many: a mass and its place, gear, and the list of all parts. */
import { choice, input } from '../form/define';
import { CUSTOM } from '../../trade/sources';

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
  which: string,
  preset: (typeof gearOptions)[number]['id'],
  weighs: string,
  note: string,
  at: 'usualMiddle' | 'usualBow',
) => ({
  is: choice(`${which} piece of gear`, { options: gearOptions, preset }),
  mass: massOf(`${which} piece weighs`, weighs, note),
  forward: forward(`${which} piece, forward`, `{self}.${at}`),
  height: height(`${which} piece, height`, '{self}.usualLow'),
  side: side(`${which} piece, to port`),
});

const [a, b, c, d] = [
  gear('First', 'oars', '5 kg', `two and their rowlocks; ${CUSTOM}`, 'usualMiddle'),
  gear('Second', 'anchor', '6 kg', `with chain and line; ${CUSTOM}`, 'usualBow'),
  gear('Third', 'jackets', '4 kg', `four, dry; ${CUSTOM}`, 'usualMiddle'),
  gear('Fourth', 'other', '0 kg', 'nothing until typed', 'usualMiddle'),
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
  { id: 'gearA', label: 'first piece of gear', about: ['bottom'] },
  { id: 'gearB', label: 'second piece of gear', about: ['bottom'] },
  { id: 'gearC', label: 'third piece of gear', about: ['bottom'] },
  { id: 'gearD', label: 'fourth piece of gear', about: ['bottom'] },
  { id: 'people', label: 'people', about: ['thwart'] },
] as const;
