/** What the cell of the batch asks for. */
import { choice, input } from '../form/define';
import { chosenFromShop, fromShop } from '../form/from-shop';
import { inchText } from '../../measure';
import { measures } from '../common/sizes/custom-sizes';
import { workable } from '../../trade/fillers';
import { hardeners, usualHardener } from '../../trade/hardeners';
import { activation, cupWidth, cupWidthInch, leastStirring, potful, spreading } from '../../trade/pots';
import { citation, look } from '../../trade/table';
import { CUSTOM } from '../../trade/sources';

const MM = 1000;

const FILLETS = 'work == "fillets"';
const usualLife = look(hardeners, usualHardener, 'potLife')?.value ?? 0;

export const batchInputs = {
  work: choice('Work', {
    options: spreading.rows.map(({ id, label }) => ({ id, label })),
    preset: 'wet',
  }),
  mass: input('mass', 'Epoxy to spread in all', {
    from: 'resin.{work}.stageMass',
    preset: '4 kg',
    presetInch: '9 lb',
    min: '0 g',
    max: '1000 kg',
    step: '100 g',
    note: 'resin and hardener together, of this work',
  }),
  air: fromShop('air', {
    hint: 'of resin that was warmed, or comes from a cold store, its own warmth, and only here',
  }),
  hardener: chosenFromShop('hardener'),
  pot: choice('Pot', {
    options: [
      { id: 'cup', label: 'a cup' },
      { id: 'tray', label: 'poured out into a wide tray' },
    ],
    preset: 'cup',
    note: 'in a shallow layer it keeps cool and lasts longer than the label’s 100 g (3 1/2 oz)',
  }),
  labelLife: input('minutes', 'Pot life on the label', {
    from: 'hardener.{hardener}.potLife',
    preset: `${usualLife / 60} min`,
    min: '2 min',
    max: '8 h',
    step: '5 min',
    bound: 'most',
    note: 'of 100 g (3 1/2 oz); until typed by the speed of the hardener',
  }),
  labelAt: input('temperature', 'It is told at', {
    preset: '25 °C',
    presetInch: '77 °F',
    min: '0 °C',
    max: '50 °C',
    step: '1 °C',
    note: 'mostly 25 °C (77 °F), with some makers 22 °C (72 °F)',
  }),
  energy: input('number', 'Energy of the reaction, kJ/mol', {
    preset: `${activation.value}`,
    min: '20',
    max: '150',
    step: '1',
    note: citation(activation),
  }),
  hardenerPer100: input('number', 'Hardener to 100 of resin, by weight', {
    from: 'resin.hardenerPer100',
    preset: '43',
    min: '0',
    max: '1000',
    step: '1',
    note: 'from the label',
  }),
  epoxyDensity: fromShop('epoxyDensity'),
  most: input('mass', 'Epoxy in one pot, at most', {
    from: '{self}.usualMost',
    preset: `${potful.cup.value * MM} g`,
    presetInch: '12 oz',
    min: '10 g',
    max: '5 kg',
    step: '50 g',
    bound: 'most',
    note: `${citation(potful.cup)}; of a fast hardener or in heat less`,
  }),
  cupWidth: input('length', 'Width of the cup, inside', {
    when: 'pot == "cup"',
    preset: `${cupWidth.value * MM} mm`,
    presetInch: inchText(cupWidthInch.value),
    min: '20 mm',
    max: '500 mm',
    step: '5 mm',
    note: citation(cupWidth),
  }),
  trayLength: input('length', 'Length of the tray, inside', {
    when: 'pot == "tray"',
    preset: '300 mm',
    min: '50 mm',
    max: '2 m',
    step: '10 mm',
  }),
  trayWidth: input('length', 'Width of the tray, inside', {
    when: 'pot == "tray"',
    preset: '250 mm',
    min: '50 mm',
    max: '2 m',
    step: '10 mm',
  }),
  pace: input('minutes', 'Time to spread 1 m² or 1 m', {
    from: '{self}.usualPace',
    preset: '400 s',
    min: '5 s',
    max: '2 h',
    step: '10 s',
    note: '1 m² is 11 ft²; of fillets 1 m (3 ft 3 in); try it with a watch, one pair of hands',
  }),
  takes: input('areaDensity', 'Epoxy that the area takes', {
    when: 'work != "fillets"',
    from: 'resin.{work}.takes',
    preset: '200 g/m^2',
    presetInch: '6 oz/yd^2',
    min: '10 g/m^2',
    max: '5 kg/m^2',
    step: '10 g/m^2',
    note: 'cloth by hand takes about its own weight',
  }),
  perMetre: input('mass', 'Epoxy in 1 m (3 ft 3 in) of fillet', {
    when: FILLETS,
    from: 'fillet.perMetre',
    preset: '25 g',
    presetInch: '1 oz',
    min: '1 g',
    max: '20 kg',
    step: '5 g',
    note: 'before the filler goes in',
  }),
  goodFor: input('share', 'Part of the pot life to spread in', {
    preset: `${workable.value * 100} %`,
    min: '10 %',
    max: '100 %',
    step: '5 %',
    bound: 'most',
    note: citation(workable),
  }),
  mixing: input('minutes', 'Time to weigh and stir one pot', {
    preset: '3 min',
    min: '10 s',
    max: '1 h',
    step: '30 s',
    note: `an example, ${CUSTOM}; of that stirred ${citation(leastStirring)}`,
  }),
  within: input('time', 'All of it done within', {
    preset: '3 h',
    min: '10 min',
    max: '100 d',
    step: '0.5 h',
    note: `an example, ${CUSTOM}; a coat goes on at its best while the one before is still tacky`,
  }),
  measures,
};
