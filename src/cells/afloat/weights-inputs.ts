/** What the cell of the weights asks for. Places are laid off as the boat's own: from the after end of the bottom. */
import { choice, input, type ValuesOf } from '../form/define';
import { fromBoat } from '../form/from-boat';
import { fromShop } from '../form/from-shop';
import { forward, gearInputs, height, massOf, partOptions, side } from './weights-fields';
import { CUSTOM } from '../../trade/sources';

const scale = (label: string, preset: string) =>
  input('mass', label, {
    preset,
    min: '0.5 kg',
    max: '2 t',
    step: '0.5 kg',
    when: 'weighed != "no"',
    note: 'with what stands between it and the hull taken off',
  });

const support = (label: string, from: string) =>
  input('length', label, {
    from,
    preset: '500 mm',
    min: '-3 m',
    max: '30 m',
    step: '10 mm',
    when: 'weighed != "no"',
    note: 'from the after end of the bottom, forward, hull level',
  });

/** A part of her wood, by the boat's own weight of it; not asked where she has none. */
const wooden = (label: string, mass: string, when = mass) => ({
  ...massOf(
    `${label} at 12 % moisture`,
    '0 kg',
    'by the density of its wood; type over it what a scale says',
    mass,
  ),
  when,
});

export const weightsInputs = {
  people: input('count', 'People aboard', { preset: '2', min: '0', max: '20', step: '1' }),
  peopleForward: forward(
    'People sit, forward',
    'hull.widestAt',
    'their middle, from the after end of the bottom',
  ),
  motor: massOf('Motor and its controls', '0 kg', 'its own sheet; nothing until typed'),
  weighed: choice('She has been weighed', {
    options: [
      { id: 'no', label: 'no' },
      { id: 'scales', label: 'on two scales' },
      { id: 'lever', label: 'on one scale and a lever' },
    ],
    preset: 'no',
  }),
  part: choice('Part looked at', { options: partOptions, preset: 'bottom' }),

  person: input('mass', 'One of them weighs', {
    preset: '75 kg',
    presetInch: '165 lb',
    min: '10 kg',
    max: '250 kg',
    step: '1 kg',
    note: 'an adult 75 kg (165 lb), ISO 14946; in the US 185 lb (84 kg), 46 CFR 170.090',
  }),
  seat: fromBoat('thwart.height'),
  peopleHeight: height('Middle of a person, height', '{self}.usualPeopleHeight', 'above the base line'),
  peopleSide: side('People sit, to port'),

  motorForward: forward(
    'Motor, forward',
    '{self}.usualStern',
    'less than 0 abaft the after end of the bottom',
  ),
  motorHeight: height('Motor, height', '{self}.usualMotorHeight'),
  fuel: massOf('Fuel and its tank', '0 kg', 'weigh the tank full; nothing until typed'),
  fuelForward: forward('Fuel, forward', '{self}.usualTank'),
  fuelHeight: height('Fuel, height', '{self}.usualLow'),

  ...gearInputs,

  bottomMass: wooden('Bottom', 'bottom.mass'),
  bilgeMass: wooden('Bilges', 'bilges.mass'),
  sideMass: wooden('Sides', 'side.mass'),
  transomMass: wooden('Transom', 'transom.mass'),
  bowMass: wooden('Bow transom', 'bowTransom.mass', 'bowTransoms > 0'),
  keelsonMass: wooden('Keelson', 'keelson.mass'),
  stemMass: wooden('Stem', 'stem.mass'),
  logMass: wooden('Chine logs', 'chineLog.mass'),
  clampMass: wooden('Sheer clamps', 'sheerClamp.mass'),
  railMass: wooden('Rub rails', 'rubRail.mass'),
  frameMass: wooden('Frames', 'frame.mass'),
  gussetMass: wooden('Gussets', 'gusset.mass'),
  thwartMass: wooden('Thwarts', 'thwart.mass'),
  moisture: fromShop('woodMoisture'),
  woodDoubt: input('share', 'Her wood, more or less by', {
    preset: '10 %',
    min: '0 %',
    max: '50 %',
    step: '1 %',
    note: 'boards of one wood differ by 10 %: Wood Handbook, FPL-GTR-190, Table 5-6',
  }),
  drinks: input('share', 'Moisture taken up afloat', {
    preset: '5 %',
    min: '0 %',
    max: '100 %',
    step: '1 %',
    note: `of the dry weight, in a boat that is coated and lies ashore; bare wood left afloat takes far more; ${CUSTOM}`,
  }),

  sheathing: massOf(
    'Cloth and resin',
    '0 kg',
    'sealing and sheathing as they stay on her',
    'resin.addedMass',
  ),
  glueLines: input('volume', 'Glue that stays in the joints', {
    from: 'glue.inLines',
    preset: '0 L',
    min: '0 L',
    max: '1000 L',
    step: '0.1 L',
    note: 'of the joint that stands in the cell of the glue',
  }),
  glueWeight: fromShop('glueDensity'),
  filletPaste: input('volume', 'Paste that stays in fillets', {
    from: 'fillet.net',
    preset: '0 L',
    min: '0 L',
    max: '1000 L',
    step: '0.1 L',
  }),
  fillerPaste: input('volume', 'Filler that stays', {
    from: 'filler.net',
    preset: '0 L',
    min: '0 L',
    max: '1000 L',
    step: '0.1 L',
  }),
  pasteWeight: input('density', 'Density of the paste', {
    from: 'fillet.pasteDensity',
    preset: '1150 kg/m^3',
    min: '100 kg/m^3',
    max: '4000 kg/m^3',
    step: '10 kg/m^3',
  }),
  screwsIn: input('count', 'Screws that stay in her', {
    from: 'screwCount.total',
    preset: '200',
    min: '0',
    max: '100000',
    step: '10',
  }),
  oneScrew: input('mass', 'One screw weighs', {
    preset: '3 g',
    min: '0 g',
    max: '100 g',
    step: '0.5 g',
    note: `weigh a hundred; No. 8 of 1 1/4 in (32 mm) about 3 g (0.1 oz); ${CUSTOM}`,
  }),
  painted: input('area', 'Area under paint', {
    from: 'paint.area',
    preset: '0 m^2',
    min: '0 m^2',
    max: '500 m^2',
    step: '0.1 m^2',
    note: 'of the face that stands in the cell of the paint',
  }),
  dryPaint: input('film', 'Paint on it, dry', {
    from: 'paint.dryFilm',
    preset: '100 µm',
    min: '0 µm',
    max: '5 mm',
    step: '10 µm',
    note: 'all coats together',
  }),
  paintWeight: input('density', 'Density of dry paint', {
    preset: '1500 kg/m^3',
    min: '800 kg/m^3',
    max: '3000 kg/m^3',
    step: '50 kg/m^3',
    note: `filled with pigment; varnish about 1100 kg/m³ (70 lb/ft³); ${CUSTOM}`,
  }),
  finishDoubt: input('share', 'All this, more or less by', {
    preset: '25 %',
    min: '0 %',
    max: '100 %',
    step: '5 %',
    note: `a hand lays on more or less than the rule has it; ${CUSTOM}`,
  }),

  aftReads: scale('After scale reads', '40 kg'),
  foreReads: scale('Forward scale reads', '40 kg'),
  aftAt: support('After support, forward', '{self}.usualTank'),
  foreAt: support('Forward support, forward', '{self}.usualBow'),
  leverage: input('ratio', 'Long arm over short arm', {
    preset: '3',
    min: '1',
    max: '20',
    step: '0.1',
    when: 'weighed == "lever"',
    note: 'from the prop to the scale, over from the prop to the hull',
  }),
} as const;

export type WeightsAsked = ValuesOf<typeof weightsInputs>;
