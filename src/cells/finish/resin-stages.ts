/** The resin stage by stage, in the order of the work: what each takes, by volume and on the scale. */
import { choice, input, step } from '../form/define';
import { GEOMETRY } from '../../trade/sources';

const MIXING = 'geometry of mixing: volumes add up, contraction left out';

/** In the order of the work. */
export const stages = [
  { id: 'glue', label: 'glue lines' },
  { id: 'fillets', label: 'fillets' },
  { id: 'filler', label: 'filler' },
  { id: 'seal', label: 'sealing wood' },
  { id: 'wet', label: 'wetting out cloth' },
  { id: 'fill', label: 'fill coats' },
] as const;

const paste = (label: string, from: string, note: string) =>
  input('mass', label, { from, preset: '0 g', min: '0 g', max: '500 kg', step: '100 g', note });

export const stageInputs = {
  glueEpoxy: paste(
    'Epoxy for glue lines',
    'glue.all.mixed',
    'of all joints, with their waste; 0 of other glues',
  ),
  layersArea: input('area', 'Between layers of the skin', {
    from: 'sheets.gluedArea',
    ofBoat: true,
    preset: '0 m^2',
    min: '0 m^2',
    max: '1000 m^2',
    step: '0.1 m^2',
    note: 'glued over all of it; 0 where the skin is of one layer, or of other glue',
  }),
  filletEpoxy: paste(
    'Epoxy for fillets',
    'fillet.onBoat',
    'with scrapings; 0 where logs lie behind the seams',
  ),
  fillerEpoxy: paste('Epoxy for filler', 'filler.epoxyMass', 'of holes, gaps and seams, with scrapings'),
  stage: choice('Stage', { options: stages, preset: 'wet' }),
};

const byStage = (of: Partial<Record<(typeof stages)[number]['id'], string>>, rest: string): string =>
  Object.entries(of).reduceRight((other, [id, text]) => `stage == "${id}" ? ${text} : ${other}`, rest);

/** Over steps of the resin that come before. */
export const stageSteps = {
  stageArea: step(
    'area',
    byStage({ seal: 'bareArea + sheathedArea', wet: 'clothArea', fill: 'sheathedArea' }, '0 m^2'),
    'area of this stage; of glue, fillets and filler none',
    GEOMETRY,
  ),
  stageVolume: step(
    'volume',
    byStage(
      {
        glue: 'glueEpoxy / mixDensity + layerGlue',
        fillets: 'filletEpoxy / mixDensity',
        filler: 'fillerEpoxy / mixDensity',
        seal: '(1 + waste) * sealing',
        wet: '(1 + waste) * wetOut',
      },
      '(1 + waste) * filling',
    ),
    'mixed resin of this stage, with waste',
    GEOMETRY,
  ),
  stageRule: step(
    'wetRate',
    'stageArea > 0 m^2 ? stageVolume / (1 + waste) / stageArea : 0 mL/m^2',
    'on each area, without waste',
    'the rule of the stage, all its coats together',
  ),
  stageMass: step('mass', 'stageVolume * mixDensity', 'the same by weight', GEOMETRY),
  stageResin: step('mass', 'stageMass * 100 / (100 + hardenerPer100)', 'resin of it, by weight', MIXING),
  stageHardener: step('mass', 'stageMass - stageResin', 'hardener of it, by weight', MIXING),
  takes: step(
    'areaDensity',
    byStage(
      { seal: 'uptake * mixDensity', fill: 'fillFilm * mixDensity' },
      'clothWeight * (1 - glassShare) / glassShare',
    ),
    'mixed resin that one coat takes; until cloth is under it the first, wetting out one layer of cloth',
    GEOMETRY,
  ),
} as const;
