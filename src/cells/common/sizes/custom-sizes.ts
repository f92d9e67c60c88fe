/** Sizes and spacings of custom in steps: each round in the system of who works by it. */
import { chosenFromShop } from '../../form/from-shop';

/** Which system they are said in; a cell that has steps of custom asks it. */
export const measures = chosenFromShop('sizesIn');

/** A size of custom, as it stands in a formula of a cell with the choice `measures`. */
export const custom = (metric: string, inch: string): string => `(measures == "inch" ? ${inch} : ${metric})`;

const MARK = custom('5 mm', '0.25 in');

/** A spacing that may be no more, as a person says it: whole fives of millimetres, or quarters of an inch. */
export const saidAtMost = (formula: string): string =>
  `(${formula}) < 3 * ${MARK} ? (${formula}) : floor((${formula}) / ${MARK} + 0.001) * ${MARK}`;
