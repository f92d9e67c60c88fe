/** How far screws stand from ends, edges and each other by two published rules, side by side. */
import { lowestTwentieth } from '../../../trade/embedment';
import { spacingByAmericanCode, spacingByEurocode } from '../../../trade/screw-spacing';
import { timberSpread } from '../../../trade/timber';
import { type CellFunction, step } from '../../form/define';

export const COMMENTARY =
  'from memory: commentary to the National Design Specification for Wood Construction, wood screws';
export const EC5 = 'from memory: EN 1995-1-1 Table 8.2, pulled along the grain';

/** The European table ends at 500 kg/m3 for undrilled wood; heavier is told to be drilled and spaced as there. */
const undrilledUpTo = 500;

const european = (diameter: number, drilled: number, density: number) =>
  spacingByEurocode(diameter, 0, drilled > 0, Math.min(density, undrilledUpTo));
const american = (diameter: number, drilled: number) => spacingByAmericanCode(diameter, drilled > 0);

const byAmerican = (how: string, run: (...values: number[]) => number): CellFunction => ({
  takes: ['length', 'count'],
  gives: 'length',
  how,
  run,
});
const byEuropean = (how: string, run: (...values: number[]) => number): CellFunction => ({
  takes: ['length', 'count', 'density'],
  gives: 'length',
  how,
  run,
});

export const ruleFunctions: Readonly<Record<string, CellFunction>> = {
  americanAlong: byAmerican('10 diameters drilled, 15 not', (d, drilled) => american(d, drilled).along),
  americanAcross: byAmerican('3 diameters drilled, 5 not', (d, drilled) => american(d, drilled).across),
  americanPulledEnd: byAmerican(
    '10 diameters drilled, 15 not, pulled towards the end',
    (d, drilled) => american(d, drilled).loadedEnd,
  ),
  americanFreeEnd: byAmerican(
    '5 diameters drilled, 10 not, pulled away from the end',
    (d, drilled) => american(d, drilled).freeEnd,
  ),
  americanToEdge: byAmerican('2.5 diameters', (d, drilled) => american(d, drilled).freeEdge),
  europeanAlong: byEuropean(
    '5 diameters drilled, more undrilled',
    (d, drilled, density) => european(d, drilled, density).along,
  ),
  europeanAcross: byEuropean(
    '3 diameters drilled, 5 or 7 undrilled',
    (d, drilled, density) => european(d, drilled, density).across,
  ),
  europeanPulledEnd: byEuropean(
    '12 diameters drilled, 15 or 20 undrilled, pulled towards the end',
    (d, drilled, density) => european(d, drilled, density).loadedEnd,
  ),
  europeanFreeEnd: byEuropean(
    '7 diameters drilled, 10 or 15 undrilled, pulled away from the end',
    (d, drilled, density) => european(d, drilled, density).freeEnd,
  ),
  europeanToEdge: byEuropean(
    '3 diameters drilled, 5 or 7 undrilled, edge not pulled towards',
    (d, drilled, density) => european(d, drilled, density).freeEdge,
  ),
};

/** The characteristic density of a wood of this mean `density`. */
export const CHARACTERISTIC = `density * (1 - ${lowestTwentieth} * ${timberSpread.gravity.value})`;

/** Over what the cell calls `diameter`, `drilled` (1 or 0) and `density`. */
export const ruleSteps = {
  lowDensity: step(
    'density',
    CHARACTERISTIC,
    'density that 19 of 20 boards exceed: the characteristic one of the European code',
    'normal spread of 10 %; from memory: Wood Handbook, Table 5-6',
  ),
  americanPitch: step(
    'length',
    'americanAlong(diameter, drilled)',
    'screw to screw in one line of grain, by the American table',
    COMMENTARY,
  ),
  europeanPitch: step(
    'length',
    'europeanAlong(diameter, drilled, lowDensity)',
    'screw to screw in one line of grain, by the European table',
    EC5,
  ),
  americanRows: step(
    'length',
    'americanAcross(diameter, drilled)',
    'row to row across the grain, by the American table',
    COMMENTARY,
  ),
  europeanRows: step(
    'length',
    'europeanAcross(diameter, drilled, lowDensity)',
    'row to row across the grain, by the European table',
    EC5,
  ),
  americanEnd: step(
    'length',
    'americanPulledEnd(diameter, drilled)',
    'to an end that the screw is pulled towards, by the American table',
    COMMENTARY,
  ),
  europeanEnd: step(
    'length',
    'europeanPulledEnd(diameter, drilled, lowDensity)',
    'to an end that the screw is pulled towards, by the European table',
    EC5,
  ),
  americanQuietEnd: step(
    'length',
    'americanFreeEnd(diameter, drilled)',
    'to an end that the screw is pulled away from, by the American table',
    COMMENTARY,
  ),
  europeanQuietEnd: step(
    'length',
    'europeanFreeEnd(diameter, drilled, lowDensity)',
    'to an end that the screw is pulled away from, by the European table',
    EC5,
  ),
  americanEdge: step(
    'length',
    'americanToEdge(diameter, drilled)',
    'to an edge, by the American table',
    COMMENTARY,
    'least',
  ),
  europeanEdge: step(
    'length',
    'europeanToEdge(diameter, drilled, lowDensity)',
    'to an edge, by the European table',
    EC5,
    'least',
  ),
} as const;
