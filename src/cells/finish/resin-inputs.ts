/** What the cell of the resin asks for. */
import { input, choice } from '../form/define';
import { fromShop } from '../form/from-shop';
import { layups } from '../../trade/glass';
import { fillFilm, uptake, laterCoat, partDensity } from '../../trade/epoxy';
import { citation } from '../../trade/table';
import { marginInput } from './resin-scatter';
import { stageInputs } from './resin-stages';

const area = (label: string, from: string, preset: string, note: string) =>
  input('area', label, { from, preset, min: '0 m^2', max: '200 m^2', step: '0.1 m^2', note });

const face = (...of: Parameters<typeof area>) => ({ ...area(...of), ofBoat: true });

export const layers = (label: string, note: string) =>
  input('count', label, { preset: '1', min: '0', max: '6', step: '1', note });

export const resinInputs = {
  bottomArea: face('Bottom, one side', 'bottom.area', '0 m^2', 'laid flat; both sides are reckoned'),
  bilgeArea: face('Bilge, one side', 'bilge.area', '0 m^2', 'laid flat; all panels between bottom and side'),
  sideArea: face('Side, one side', 'side.area', '2.5 m^2', 'laid flat; both sides are reckoned'),
  transomArea: face('Transom, whole', 'transom.area', '0 m^2', 'its outer face'),
  bowArea: face('Bow transom, whole', 'bowTransom.area', '0 m^2', 'its outer face, if there is one'),
  flatArea: input('area', 'Flat area to sheathe', {
    preset: '0 m^2',
    min: '0 m^2',
    max: '200 m^2',
    step: '0.1 m^2',
    note: 'besides the hull: a deck, a rudder',
  }),
  bottomLayers: {
    ...layers('Layers of cloth on the bottom', '0 for bare wood, which is sealed and no more'),
    from: 'cloth.bottomLayers',
    ofBoat: true,
  },
  sideLayers: {
    ...layers('Layers of cloth elsewhere', '0 for bare wood, which is sealed and no more'),
    from: 'cloth.sideLayers',
  },
  laps: input('share', 'Laps and edges turned round', {
    from: 'cloth.lapShare',
    preset: '10 %',
    min: '0 %',
    max: '500 %',
    step: '1 %',
    note: 'cloth beyond the bare area; common practice, no source',
  }),
  clothWeight: input('areaDensity', 'Weight of the cloth', {
    from: 'cloth.weight',
    preset: '6 oz/yd^2',
    min: '20 g/m^2',
    max: '1500 g/m^2',
    step: '10 g/m^2',
    note: 'dry; cloth goes by oz/yd², mat by oz/ft², nine times as much',
  }),
  layup: choice('Lay-up', {
    options: layups.rows.map(({ id, label: name }) => ({ id, label: name })),
    preset: 'clothSqueegeed',
  }),
  glassShare: input('share', 'Glass in laminate, by weight', {
    from: '{self}.usualShare',
    preset: '50 %',
    min: '20 %',
    max: '75 %',
    step: '1 %',
    slider: true,
    note: 'weigh a square of your own lay-up to know',
  }),
  fillCoats: input('count', 'Fill coats over the cloth', {
    preset: '3',
    min: '0',
    max: '10',
    step: '1',
    note: 'two or three over cloth to 6 oz/yd² (200 g/m²), three or four from 10 oz/yd² (340 g/m²); common practice, no source',
  }),
  fillFilm: input('film', 'Film of a fill coat', {
    preset: `${fillFilm.value * 1e6} µm`,
    min: '0 µm',
    max: '2 mm',
    step: '10 µm',
    note: citation(fillFilm),
  }),
  insideArea: face(
    'Inside to seal',
    'hull.surfaceArea',
    '10 m^2',
    'panels and transoms; add frames and thwarts',
  ),
  sealCoats: input('count', 'Sealing coats on bare wood', {
    preset: '3',
    min: '0',
    max: '10',
    step: '1',
    note: 'two or three inside, three outside where there is no cloth; common practice, no source',
  }),
  uptake: input('wetRate', 'First coat on bare wood', {
    preset: `${(uptake.rows[0]?.cells.firstCoat?.value ?? 0) * 1e6} mL/m^2`,
    min: '0 mL/m^2',
    max: '500 mL/m^2',
    step: '10 mL/m^2',
    note: '100 to 200 mL/m² (0.3 to 0.6 fl oz/ft²) on softwood plywood, 60 to 120 mL/m² (0.2 to 0.4 fl oz/ft²) on hardwood; common practice, no source',
  }),
  laterCoat: input('wetRate', 'Each coat after it', {
    preset: `${laterCoat.value * 1e6} mL/m^2`,
    min: '0 mL/m^2',
    max: '500 mL/m^2',
    step: '10 mL/m^2',
    note: citation(laterCoat),
  }),
  waste: fromShop('glueWaste'),
  ...stageInputs,
  margin: marginInput,
  basis: choice('The label gives its ratio', {
    options: [
      { id: 'volume', label: 'by volume' },
      { id: 'mass', label: 'by weight' },
    ],
    preset: 'volume',
    note: 'the two are not the same number',
  }),
  resinParts: input('number', 'Parts of resin', {
    preset: '2',
    min: '1',
    max: '1000',
    step: '1',
    note: 'from the label',
  }),
  hardenerParts: input('number', 'Parts of hardener', {
    preset: '1',
    min: '1',
    max: '1000',
    step: '1',
    note: 'from the label',
  }),
  resinDensity: input('density', 'Density of the resin', {
    preset: `${partDensity.resin.value} kg/m^3`,
    min: '800 kg/m^3',
    max: '1500 kg/m^3',
    step: '10 kg/m^3',
    // Only these tell a weight of each from its volume; the two mixed are a hair over the round 1.10 of `shop.epoxyDensity`,
    // within what a scale in the shop reads.
    note: citation(partDensity.resin),
  }),
  hardenerDensity: input('density', 'Density of the hardener', {
    preset: `${partDensity.hardener.value} kg/m^3`,
    min: '800 kg/m^3',
    max: '1500 kg/m^3',
    step: '10 kg/m^3',
    note: citation(partDensity.hardener),
  }),
  inHand: input('volume', 'In the shop already', {
    preset: '0 L',
    min: '0 L',
    max: '500 L',
    step: '0.5 L',
    note: 'resin and hardener together',
  }),
  smallPack: fromShop('smallPack'),
  smallPrice: fromShop('smallPrice'),
  middlePack: fromShop('middlePack'),
  middlePrice: fromShop('middlePrice'),
  largePack: fromShop('largePack'),
  largePrice: fromShop('largePrice'),
};
