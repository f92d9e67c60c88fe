/** The federal method step by step: weight, then power, then people. */
import {
  equipmentOf,
  outboardOf,
  outboardsBefore2018,
  outboardsNow,
  type OutboardWeights,
} from '../../trade/outboard-weights';
import { type CellFunction, step, type ValuesOf } from '../form/define';
import type { capacityInputs } from './capacity-inputs';

const WEIGHT = '33 CFR 183.35 (outboard) and 183.37 (by hand, up to 2 hp)';
const POWER = '33 CFR 183.53';
const PEOPLE = '33 CFR 183.41 (outboard) and 183.43 (by hand, up to 2 hp)';
const ROWS = 'table of 33 CFR 183.75, as a builders’ page reproduces it';

const equipment = (how: string, rows: readonly OutboardWeights[]): CellFunction => ({
  takes: ['power'],
  gives: 'mass',
  how,
  run: (power = 0) => equipmentOf(outboardOf(rows, power)),
});

export const capacityFunctions = {
  equipmentNow: equipment('motor, controls, battery and full portable tank of the row', outboardsNow),
  equipmentBefore: equipment('column 6 of the row', outboardsBefore2018),
};

export const capacitySteps = {
  // Weight.
  counted: step(
    'mass',
    'displacement * (1 - margin)',
    'water pushed aside that is counted on',
    'Coast Guard, Boatbuilder’s Handbook, chapter on loading: a margin for errors of measuring',
    'most',
  ),
  spare: step('mass', 'max(counted - boatWeight, 0 kg)', 'the same less the boat', WEIGHT, 'most'),
  outboards: step(
    'count',
    'drive == "outboard" or drive == "well" ? 1 : 0',
    '1 where she is rated for an outboard',
    'definition',
  ),
  weight: step(
    'mass',
    'outboards == 1 ? spare / 5 : 3 * spare / 10',
    'most that she may carry: people, motor and gear',
    WEIGHT,
    'most',
  ),

  // Power.
  factor: step('number', 'length * breadth / (1 ft * 1 ft)', 'length times breadth, both in feet', POWER),
  whole: step('number', 'floor(factor + 0.5)', 'the same to the nearest whole number', POWER),
  tabled: step(
    'number',
    'bottom == "flat" ? (whole < 36 ? 0 : whole < 40 ? 3 : whole < 43 ? 5 : whole < 46 ? 7.5 : 10) : (whole < 36 ? 3 : whole < 40 ? 5 : whole < 43 ? 7.5 : whole < 46 ? 10 : 15)',
    'horsepower by the table, up to 52; a flat bottom goes one step down, and 0 is no step',
    `${POWER}, Table`,
  ),
  raw: step(
    'number',
    'steering == "remote" and transom >= 20 in ? 2 * factor - 90 : bottom == "flat" ? 0.5 * factor - 15 : 0.8 * factor - 25',
    'horsepower by the formula, over 52.5',
    `${POWER}, Table`,
  ),
  horsepower: step(
    'number',
    'outboards == 0 ? 0 : factor <= 52.5 ? tabled : 5 * ceil(raw / 5 - 0.000001)',
    'horsepower, by the formula up to the next five as the rule lets',
    POWER,
  ),
  mostPower: step(
    'power',
    'drive == "small" ? 2 hp : horsepower * 1 hp',
    'most power by the rule',
    POWER,
    'most',
  ),
  power: step(
    'power',
    'outboards == 1 ? min(rated, mostPower) : mostPower',
    'power that she is rated for',
    'the lesser of what is asked for and what the rule allows',
    'most',
  ),

  // People.
  equipment: step(
    'mass',
    'outboards == 0 ? 0 kg : edition == "now" ? equipmentNow(power) : equipmentBefore(power)',
    'motor, controls, battery and full tank of that power',
    ROWS,
  ),
  byWeight: step(
    'mass',
    'outboards == 1 ? max(weight - equipment, 0 kg) : drive == "hand" ? 0.9 * weight : max(0.9 * weight - 25 lb, 0 kg)',
    'people, by weight',
    PEOPLE,
    'most',
  ),
  bySide: step('mass', 'sideLoad / 0.6', 'people, by the load along one side', PEOPLE, 'most'),
  personsWeight: step(
    'mass',
    'outboards == 1 and byWeight < 550 lb ? min(byWeight, bySide) : byWeight',
    'most that all people together may weigh',
    PEOPLE,
    'most',
  ),
  persons: step(
    'count',
    'floor((personsWeight + 32 lb) / (141 lb) + 0.5)',
    'people: each 141 lb (64 kg), and 32 lb (15 kg) over',
    PEOPLE,
  ),
  slender: step('ratio', 'length / beam', 'length over greatest breadth', 'definition'),
} as const;

export type CapacityValues = ValuesOf<typeof capacityInputs, typeof capacitySteps>;
