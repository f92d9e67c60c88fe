/**
 * What a glued face takes: one reckoning for all cells that speak of glue.
 *
 * How to ask. A cell has a choice `glue` (options `glues`) and takes over the inputs `glueNeedInputs`. It puts
 * `usualLineStep` and `usualSpreadStep` among its steps, under whatever names its inputs for the thickness of a
 * line and for the spread are filled from, and then `glueNeeds({ area, line })`, naming its own glue face (all lines
 * together) and its own thickness of a line. All results go with the area, so another area of the same glue takes
 * `volume * otherArea / area`.
 *
 * A paste (epoxy, polyurethane) fills the line it is pressed to. A thin glue is spread by weight, as its sheet
 * says, and what the line does not hold comes out. Either way `waste` is added once, for what is squeezed out
 * beyond that and left in the cup. Epoxy goes on twice: neat on both faces, then as paste, of which the filler is a part.
 */
import { adhesives, clampPitch, clampTime, primer, spreadTime } from '../../../trade/adhesives';
import { glueLines } from '../../../trade/glue-lines';
import { epoxyDensity } from '../../../trade/paste';
import { citation, look } from '../../../trade/table';
import { input, step } from '../../form/define';
import { fromShop } from '../../form/from-shop';
import { glues } from './glues';
import { CUSTOM, GEOMETRY } from '../../../trade/sources';

const EPOXY = 'glue == "epoxy"';
export const MIXING = 'geometry of mixing: volumes add up, the air between the grains is driven out';

/** `glue == "epoxy" ? … : …`, the last kind without a condition. */
export const byGlue = (of: (id: string) => string): string =>
  glues
    .slice(0, -1)
    .reduceRight((rest, { id }) => `glue == "${id}" ? ${of(id)} : ${rest}`, of(glues.at(-1)!.id)); // there are glues

/** One metre spread and closed where clamps stand as on a straight run, as an entry: what holds where no clamps are counted. */
export const usualPace = `${((spreadTime.value + clampTime.value / clampPitch.straight.value) / 60).toFixed(1)} min`;

/** Laid as a paste that fills its line, not spread by weight. */
const isPaste = (id: string) => id === 'epoxy' || id === 'polyurethane';

export const glueNeedInputs = {
  spread: input('areaDensity', 'Spread, both faces together', {
    when: 'glue != "epoxy" and glue != "polyurethane"',
    from: '{self}.usualSpread',
    preset: '325 g/m^2',
    min: '0 g/m^2',
    max: '20 kg/m^2',
    step: '10 g/m^2',
    note: 'from the sheet of the glue in hand',
  }),
  waste: fromShop('glueWaste'),
  primer: fromShop('primer', { when: EPOXY }),
  fillerShare: fromShop('fillerShare', { when: EPOXY }),
  density: fromShop('glueDensity', { when: 'glue != "epoxy"' }),
  epoxyDensity: fromShop('epoxyDensity', { when: EPOXY }),
  fillerDensity: fromShop('fillerDensity', { when: EPOXY }),
};

/** Thickness of a line of this glue between faces that meet. */
export const usualLineStep = step(
  'length',
  byGlue((id) => `${(glueLines[id]?.value ?? 0) * 1000} mm`),
  'thickness of a line of this glue between faces that meet',
  glues.map(({ id, label }) => `${label}: ${glueLines[id] ? citation(glueLines[id]) : CUSTOM}`).join('; '),
);

/**
 * Spread usual with this glue: the middle of its range, or what fills the line.
 * @param line name of the cell's thickness of a line
 */
export function usualSpreadStep(line: string) {
  const textOf = (id: string): string => {
    const [least, most] = [look(adhesives, id, 'leastSpread'), look(adhesives, id, 'mostSpread')];
    return isPaste(id) || !least || !most
      ? `${line} * density`
      : `${((least.value + most.value) / 2) * 1000} g/m^2`;
  };
  return step(
    'areaDensity',
    byGlue(textOf),
    'spread usual with this glue, both faces together',
    `the middle of the range in the table; of a paste what fills the line: ${CUSTOM}`,
  );
}

/** Names of the cell's own inputs or steps; `laid` is another formula for the glue laid, of a bead say. */
export interface GluedFace {
  readonly area: string;
  readonly line: string;
  readonly laid?: string;
}

export function glueNeeds({ area, line, laid }: GluedFace) {
  return {
    inLines: step('volume', `${area} * ${line}`, 'glue that stays in the joint', GEOMETRY),
    laid: step(
      'volume',
      laid ?? byGlue((id) => (isPaste(id) ? `${area} * ${line}` : `${area} * spread / density`)),
      'glue laid: a paste fills the line, a thin glue is spread',
      GEOMETRY,
    ),
    total: step('volume', '(1 + waste) * laid', 'with what is squeezed out and left over', GEOMETRY),
    squeezedOut: step(
      'share',
      'total > 0 L ? max(0, 1 - inLines / total) : 0',
      'part of it that does not stay in the joint: pressed out and wiped off, or left in the cup',
      GEOMETRY,
    ),
    priming: step(
      'volume',
      `glue == "epoxy" ? (1 + waste) * 2 * ${area} * primer / epoxyDensity : 0 L`,
      'neat epoxy that both faces drink first',
      `${citation(primer)}; ${citation(epoxyDensity)}`,
    ),
    pasteYield: step(
      'ratio',
      '1 + fillerShare * epoxyDensity / fillerDensity',
      'paste from one volume of epoxy',
      `${MIXING}; densities of epoxy and wood flour: ${CUSTOM}`,
    ),
    thickened: step(
      'volume',
      'glue == "epoxy" ? total / pasteYield : 0 L',
      'mixed epoxy that goes into the paste',
      MIXING,
    ),
    volume: step(
      'volume',
      'glue == "epoxy" ? priming + thickened : total',
      'glue to have in the shop: of epoxy resin and hardener together, before the filler',
      GEOMETRY,
    ),
    glueMass: step(
      'mass',
      'volume * (glue == "epoxy" ? epoxyDensity : density)',
      'the same by weight',
      `geometry; ${citation(epoxyDensity)}`,
    ),
    filler: step(
      'mass',
      'fillerShare * thickened * epoxyDensity',
      'filler to weigh out; 0 with other glues',
      MIXING,
    ),
  };
}
