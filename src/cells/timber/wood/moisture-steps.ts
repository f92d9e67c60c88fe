/** The working of the moisture of wood. */
import { step } from '../../form/define';
import { plywoodMovement } from '../../../trade/shrinkage';
import { citation } from '../../../trade/table';
import { CUSTOM } from '../../../trade/sources';

const SETTLES =
  'Simpson, FPL-RN-0268 (1998): Hailwood and Horrobin’s form with two hydrates, fitted to the handbook’s table; as transcribed';

const DENSITY = 'from memory: Wood Handbook, USDA FPL-GTR-190 (2010), ch. 4, specific gravity and moisture';

const MOVES = 'Wood Handbook, USDA FPL-GTR-190 (2010), ch. 13: width x coefficient x change of moisture';

const CUPS =
  'geometry: about the pith, widths along the rings change by one share and those across by another';

export const moistureSteps = {
  celsius: step('number', '(air - 273.15 K) / K', 'degrees Celsius', 'definition'),
  siteMass: step(
    'number',
    '349 + 1.29 * celsius + 0.0135 * celsius^2',
    'W: wood that holds one mole of bound water',
    SETTLES,
  ),
  dissolved: step(
    'number',
    '0.805 + 0.000736 * celsius - 0.00000273 * celsius^2',
    'K: water dissolved in the wood',
    SETTLES,
  ),
  firstBound: step(
    'number',
    '6.27 - 0.00938 * celsius - 0.000303 * celsius^2',
    'K1: first water bound',
    SETTLES,
  ),
  secondBound: step(
    'number',
    '1.91 + 0.0407 * celsius - 0.000293 * celsius^2',
    'K2: second water bound',
    SETTLES,
  ),
  wetness: step('number', 'dissolved * humidity', 'K times the humidity', SETTLES),
  settled: step(
    'share',
    '18 / siteMass * (wetness / (1 - wetness) + (firstBound * wetness + 2 * firstBound * secondBound * wetness^2) / (1 + firstBound * wetness + firstBound * secondBound * wetness^2))',
    'moisture at which wood settles in this air',
    SETTLES,
  ),
  difference: step(
    'share',
    'min(later, 30 %) - min(now, 30 %)',
    'moisture taken up, or given off, that moves the wood',
    'Wood Handbook, ch. 4: above fibre saturation, about 30 %, wood does not move',
  ),
  alongRings: step('ratio', '100 * moveTangential * difference', 'part moved along the rings', MOVES),
  acrossRings: step('ratio', '100 * moveRadial * difference', 'part moved across the rings', MOVES),
  inPlane: step(
    'ratio',
    `100 * ${plywoodMovement.value} * difference`,
    'part moved in the plane of a sheet of plywood',
    citation(plywoodMovement),
  ),
  change: step(
    'length',
    'width * (sawn == "plywood" ? inPlane : sawn == "quarter" ? acrossRings : alongRings)',
    'change of the width, + growing',
    MOVES,
  ),
  widthLater: step('length', 'width + change', 'width when it has settled', MOVES),
  thicker: step(
    'length',
    'thickness * (sawn == "quarter" ? alongRings : acrossRings)',
    'change of the thickness, + growing',
    `${MOVES}; of plywood as of solid wood across the rings: ${CUSTOM}`,
  ),
  cup: step(
    'length',
    'sawn == "flat" ? abs(alongRings - acrossRings) * width / 2 * atan(width / (2 * pith)) / rad : 0 mm',
    'hollow across the face, if nothing holds the board',
    CUPS,
  ),
  fromGreen: step(
    'share',
    'shrinkage * max(0, 1 - now / 30 %)',
    'part of its flat-sawn width that wood sawn green has lost by now',
    'Wood Handbook, ch. 4: shrinkage in proportion, from 30 % of moisture down',
  ),
  gravityGreen: step(
    'ratio',
    'gravity / (1 + 0.265 * (1 - 12 / 30) * gravity)',
    'specific gravity on the volume when green',
    `${DENSITY}; shrinkage in volume 26.5 x it %`,
  ),
  gravityNow: step(
    'ratio',
    'gravityGreen / (1 - 0.265 * gravityGreen * max(0, 1 - now / 30 %))',
    'specific gravity on the volume of today',
    `${DENSITY}; shrinkage in volume 26.5 x it %`,
  ),
  density: step('density', '1000 kg/m^3 * gravityNow * (1 + now)', 'density with the water in it', DENSITY),
  lighter: step(
    'share',
    '(later - now) / (1 + now)',
    'weight taken up or given off by the time it has settled',
    'definition of moisture: water over oven-dry wood',
  ),
  offGlue: step(
    'share',
    'max(0, now - wettest, driest - now)',
    'moisture by which the wood lies outside what this glue takes; 0 where it is fit',
    CUSTOM,
  ),
} as const;
