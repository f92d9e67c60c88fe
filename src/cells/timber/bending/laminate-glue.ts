/** Glue and clamps for a stack of layers: how much, pressed how hard, by how many. */
import { layersOf } from '../../../kernel/layers';
import { type AdhesiveColumn, adhesives, clampPitch, screwPressure } from '../../../trade/adhesives';
import { glueLines } from '../../../trade/glue-lines';
import { citation, look } from '../../../trade/table';
import { type CellFunction, input, step } from '../../form/define';
import { chosenFromShop, fromShop } from '../../form/from-shop';
import { measures } from '../../common/sizes/custom-sizes';
import { packsToBuy } from '../../common/sizes/packs-sold';
import { customPitch } from '../../common/glue/clamp-pitch';
import {
  byGlue,
  glueNeedInputs,
  glueNeeds,
  usualLineStep,
  usualSpreadStep,
} from '../../common/glue/glue-needs';

const STATICS = 'statics: pressure over the face of the stack';
const CONE = 'common practice: a clamp presses 45° to each side of its jaw through caul and wood';

const cell = (id: string, column: AdhesiveColumn): number | null =>
  look(adhesives, id, column)?.value ?? null;

/** A glue that fills gaps takes the middle of its range, a stiff one the low end, as on softwood. */
function pressureText(id: string): string {
  const [least, most] = [cell(id, 'leastPressure') ?? 0, cell(id, 'mostPressure') ?? 0];
  return `${(cell(id, 'mostGap') ?? 0) >= FILLS ? (least + most) / 2 : least} Pa`;
}

/** From this gap on a glue fills it, m: the kinds of the table fall well apart here. */
const FILLS = 1e-3;

/** Above this the joint wants even pressure all along, and screws don't give it; the top of 0.1 to 0.2 MPa. */
const SCREWS_PRESS = '0.2 MPa';

export const glueInputs = {
  measures,
  glue: chosenFromShop('glue'),
  line: input('length', 'Thickness of a glue line', {
    from: '{self}.usualLine',
    preset: '0.5 mm',
    min: '0 mm',
    max: '6 mm',
    step: '0.1 mm',
    note: `epoxy ${citation(glueLines['epoxy']!)}; stiff thin glues 0.08 to 0.15 mm (0.003 to 0.006 in), Wood Handbook, ch. 10`, // a row of that table
  }),
  ...glueNeedInputs,
  pressure: input('pressure', 'Pressure on the glue', {
    from: '{self}.usualPressure',
    preset: '60 kPa',
    min: '1 kPa',
    max: '3 MPa',
    step: '10 kPa',
    note: 'stiff thin glues: softwood 690 to 1030 kPa (100 to 150 psi), hardwood 1200 to 1720 kPa (175 to 250 psi), a glue maker’s advice',
  }),
  clampForce: fromShop('clampForce'),
  pitch: input('length', 'Clamp to clamp, at most', {
    bound: 'most',
    from: '{self}.usualPitch',
    preset: `${clampPitch.straight.value * 1000} mm`,
    min: '20 mm',
    max: '1 m',
    step: '5 mm',
    note: `${citation(clampPitch.straight)}; ${clampPitch.tight.source.replace(/^.*: /, '')}`,
  }),
  tightness: fromShop('easyFrom', {
    hint: 'of a layer; where it is tighter, clamps stand closer',
  }),
  caul: fromShop('caul', { hint: 'bent with the stack' }),
};

export const glueFunctions: Readonly<Record<string, CellFunction>> = {
  thinnestOf: {
    takes: ['length', 'length', 'length', 'length'],
    gives: 'length',
    how: 'thinnest of the listed layers, a metre (39 in) at most',
    run: (...list) => Math.min(...layersOf(list), 1),
  },
};

/** Usual clamp to clamp over layers of this thickness, as a formula. */
export const usualPitchOver = (layer: string): string =>
  `radius < tightness * ${layer} ? ${customPitch('tight')} : ${customPitch('straight')}`;

/** The same where a clamp must press evenly through such a layer. */
export const evenPitchOver = (layer: string, pitch: string): string =>
  `pressure > ${SCREWS_PRESS} ? min(${pitch}, 2 * (caul + ${layer})) : ${pitch}`;

export const glueSteps = {
  usualLine: usualLineStep,
  usualSpread: usualSpreadStep('line'),
  usualPressure: step(
    'pressure',
    byGlue(pressureText),
    'usual pressure on this glue, on softwood',
    `glues that fill gaps: the middle of their range; stiff ones: the low end, as on softwood. Resorcinol ${citation(look(adhesives, 'resorcinol', 'leastPressure')!)}`, // a row of that table
  ),
  ...glueNeeds({ area: 'glueArea', line: 'line' }),
  toBuy: packsToBuy('volume', 'glue to buy; of epoxy resin and hardener together'),
  thicker: step(
    'length',
    '(layers - 1) * line',
    'what the lines add to the thickness of the stack',
    'geometry',
  ),
  usualPitch: step(
    'length',
    usualPitchOver('ply'),
    'clamp to clamp, usual on such a curve',
    `${citation(clampPitch.straight)}; ${citation(clampPitch.tight)}; where that is tight, common practice, no source`,
    'most',
  ),
  pressForce: step('force', 'pressure * width * length', 'force of all clamps together', STATICS),
  clampsByForce: step(
    'count',
    'ceil(pressForce / clampForce - 0.001)',
    'clamps that the pressure asks for',
    `${STATICS}; a thousandth of a clamp is forgiven`,
  ),
  clampPitch: step(
    'length',
    `layup == "alike" ? (${evenPitchOver('evenPly', 'pitch')}) : (${evenPitchOver('thinnestOf(layer1, layer2, layer3, layer4)', 'pitch')})`,
    'clamp to clamp that presses the outer line evenly',
    `${CONE}; a glue that wants ${SCREWS_PRESS} (30 psi) or less is content with contact`,
  ),
  clampsByPitch: step(
    'count',
    'ceil(length / clampPitch - 0.001)',
    'clamps that the pitch asks for, the first half a pitch from the end',
    'geometry; a thousandth of a clamp is forgiven',
  ),
  clamps: step(
    'count',
    'max(clampsByForce, clampsByPitch)',
    'clamps for the stack',
    'the greater of the two',
  ),
};

/** What screws press with, in words, and the limit as it stands in formulas. */
export const screwsPress = { most: SCREWS_PRESS, source: citation(screwPressure) } as const;
