/** Glue in use and what presses it; epoxy and its filler. */
import { adhesives, clampForce, primer, usualGlue } from '../../trade/adhesives';
import { waste } from '../../trade/epoxy';
import { glueDensity } from '../../trade/glue-lines';
import { hardeners, usualHardener } from '../../trade/hardeners';
import { epoxyDensity, flourDensity, flourShare } from '../../trade/paste';
import { citation } from '../../trade/table';
import type { Declared } from './quantity';
import { shop } from './shop-entry';

const density = { min: '100 kg/m^3', max: '4000 kg/m^3', step: '10 kg/m^3' } as const;

export const shopGluing: readonly Declared[] = [
  shop('glue', 'choice', {
    label: 'Glue',
    meaning: 'glue in use',
    source: 'of the common kinds the one that forgives gaps and bears water',
    options: adhesives.rows.map(({ id, label }) => ({ id, label })),
    preset: usualGlue,
  }),
  shop('glueWaste', 'share', {
    label: 'Squeeze-out and waste, on top',
    meaning: 'glue and resin squeezed out and left in the cup',
    source: `${citation(waste)}, for epoxy, 20 to 25 % on small jobs; for other glues common practice, no source`,
    preset: `${waste.value * 100} %`,
    min: '0 %',
    max: '100 %',
    step: '1 %',
  }),
  shop('glueDensity', 'density', {
    label: 'Density of the glue',
    source: citation(glueDensity),
    preset: `${glueDensity.value} kg/m^3`,
    min: '500 kg/m^3',
    max: '3000 kg/m^3',
    step: '10 kg/m^3',
  }),
  shop('clampForce', 'force', {
    label: 'Force of one clamp',
    source: citation(clampForce),
    preset: `${clampForce.value} N`,
    presetInch: '700 lbf',
    min: '50 N',
    max: '50 kN',
    step: '100 N',
  }),
  shop('caul', 'length', {
    label: 'Caul under the clamps',
    meaning: 'thickness of the caul under the clamps',
    source:
      'a strip of wood that spreads the pressure; waxed, or over film, so that it does not stick; 0 without one',
    preset: '18 mm',
    presetInch: '3/4 in',
    min: '0 mm',
    max: '150 mm',
    step: '1 mm',
  }),
];

export const shopEpoxy: readonly Declared[] = [
  shop('hardener', 'choice', {
    label: 'Hardener',
    meaning: 'speed of the hardener in use',
    source: 'as its label calls it',
    options: hardeners.rows.map(({ id, label }) => ({ id, label })),
    preset: usualHardener,
  }),
  shop('primer', 'areaDensity', {
    label: 'Neat epoxy first, each face',
    meaning: 'neat epoxy that each face is wetted with first',
    source: citation(primer),
    preset: `${primer.value * 1000} g/m^2`,
    min: '0 g/m^2',
    max: '500 g/m^2',
    step: '10 g/m^2',
  }),
  shop('fillerShare', 'share', {
    label: 'Filler to epoxy, by weight',
    meaning: 'share of filler to epoxy by weight',
    source: citation(flourShare),
    preset: `${flourShare.value * 100} %`,
    min: '0 %',
    max: '200 %',
    step: '1 %',
  }),
  shop('fillerDensity', 'density', {
    label: 'Density of the filler',
    source: citation(flourDensity),
    preset: `${flourDensity.value} kg/m^3`,
    ...density,
  }),
  shop('epoxyDensity', 'density', {
    label: 'Density of the epoxy',
    source: citation(epoxyDensity),
    preset: `${epoxyDensity.value} kg/m^3`,
    ...density,
  }),
];
