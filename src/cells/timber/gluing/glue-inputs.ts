/** What the cell of the glue asks for. */
import { chosenFromShop, fromShop } from '../../form/from-shop';
import { choice, input } from '../../form/define';
import { BEAD_EVERY, jointInputs } from './glued-joints';
import { jointOptions } from './joint-list';
import { ofGlue } from '../../common/glue/glues';
import { BEADED } from './glue-steps';
import { usualPace, glueNeedInputs } from '../../common/glue/glue-needs';
import { CUSTOM } from '../../../trade/sources';

export const glueInputs = {
  joint: choice('Joint', { options: jointOptions, preset: 'sideLogs' }),
  glue: chosenFromShop('glue'),
  length: input('length', 'Length of the joint in all', {
    from: '{self}.jointLength',
    preset: '8.4 m',
    min: '0 m',
    max: '5 km',
    step: '100 mm',
  }),
  width: input('length', 'Width of the glue face', {
    from: '{self}.jointWidth',
    preset: '38 mm',
    min: '0 mm',
    max: '1 m',
    step: '1 mm',
    note: 'of all joints together the mean',
  }),
  film: input('length', 'Thickness when closed', {
    from: '{self}.usualFilm',
    preset: '0.5 mm',
    min: '0.05 mm',
    max: '5 mm',
    step: '0.1 mm',
    note: 'more where the faces do not meet: measure the gap with a card',
  }),
  beads: input('count', 'Beads side by side', {
    when: BEADED,
    from: '{self}.usualBeads',
    preset: '1',
    min: '0',
    max: '30',
    step: '1',
    note: `one for each ${BEAD_EVERY} (1 1/2 in) of width: ${CUSTOM}`,
  }),
  bead: input('length', 'Thickness of the bead', {
    when: BEADED,
    from: '{self}.beadNeeded',
    preset: '5 mm',
    min: '0 mm',
    max: '200 mm',
    step: '0.5 mm',
    note: 'the nozzle is cut to it',
  }),
  pack: input('pack', 'One pack or cartridge', {
    from: '{self}.cartridge',
    fromBy: { choice: 'glue', links: { epoxy: 'resin.smallestPack', resorcinol: '', pva: '' } },
    preset: '1 L',
    presetInch: '1 qt',
    min: '10 mL',
    max: '250 L',
    step: '10 mL',
    note: 'of epoxy resin and hardener together',
  }),
  shop: fromShop('air', { hint: 'where the wood is colder, its own temperature, and only here' }),
  perMetre: input('minutes', 'Spread and close 1 m (3 ft 3 in)', {
    from: 'clamps.{joint}.pace',
    // All joints are closed one after the other, each at its own pace.
    fromBy: { choice: 'joint', links: { all: '' } },
    preset: usualPace,
    min: '1 s',
    max: '1 h',
    step: '10 s',
    note: 'by the clamps of this joint; try it dry, with a watch, all hands that will help',
  }),
  moisture: fromShop('woodMoisture'),
  hardenerPer100: input('number', 'Hardener to 100 of resin, by weight', {
    when: 'glue == "epoxy"',
    from: 'resin.hardenerPer100',
    preset: '43',
    min: '0',
    max: '1000',
    step: '1',
    note: 'from the label',
  }),
  ...glueNeedInputs,
  mostGap: ofGlue('length', 'Gap the glue bridges', 'mostGap', ['0 mm', '20 mm']),
  openAt20: ofGlue('minutes', 'Open time at 20 °C (68 °F)', 'shortestOpen', ['1 min', '4 h']),
  coldest: ofGlue('temperature', 'Coldest it cures', 'leastTemperature', ['0 °C', '40 °C']),
  driest: ofGlue('share', 'Driest wood for it', 'driest', ['0 %', '40 %']),
  wettest: ofGlue('share', 'Wettest wood for it', 'wettest', ['0 %', '40 %']),
  ...jointInputs,
};
