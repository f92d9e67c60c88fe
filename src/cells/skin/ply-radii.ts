/** How tight a layer of plywood bends by the two published tables: asked alike of a panel and of a sheet on trial. */
import {
  AIRCRAFT_PANELS,
  FORM_PANELS,
  leastBendRadius,
  type LeastRadius,
  pickedBendRadius,
} from '../../trade/plywood-bend';
import { type CellFunction, step } from '../form/define';
const LINEAR = 'between the rows of the table straight over the logarithm of the thickness';

const table = (run: (thickness: number) => LeastRadius): CellFunction => ({
  takes: ['length'],
  gives: 'length',
  how: LINEAR,
  run: (thickness) => run(thickness).radius,
});

export const plyFunctions = {
  commonAlong: table((thickness) => leastBendRadius(thickness, 'along')),
  commonAcross: table((thickness) => leastBendRadius(thickness, 'across')),
  dryAlong: table((thickness) => pickedBendRadius(thickness, 'along', 'dry')),
  dryAcross: table((thickness) => pickedBendRadius(thickness, 'across', 'dry')),
  soakedAlong: table((thickness) => pickedBendRadius(thickness, 'along', 'soaked')),
  soakedAcross: table((thickness) => pickedBendRadius(thickness, 'across', 'soaked')),
} as const;

/** Over `layerThickness` and `wetness`, with the functions above. */
export const plyRadii = {
  takesAlong: step(
    'length',
    'commonAlong(layerThickness)',
    'least radius that a common panel takes, bent along its face grain',
    FORM_PANELS,
    'least',
  ),
  takesAcross: step(
    'length',
    'commonAcross(layerThickness)',
    'least radius that a common panel takes, bent across its face grain',
    FORM_PANELS,
    'least',
  ),
  pickedAlong: step(
    'length',
    'wetness == "soaked" ? soakedAlong(layerThickness) : dryAlong(layerThickness)',
    'least radius that a picked panel takes, bent along its face grain',
    AIRCRAFT_PANELS,
    'least',
  ),
  pickedAcross: step(
    'length',
    'wetness == "soaked" ? soakedAcross(layerThickness) : dryAcross(layerThickness)',
    'least radius that a picked panel takes, bent across its face grain',
    AIRCRAFT_PANELS,
    'least',
  ),
} as const;
