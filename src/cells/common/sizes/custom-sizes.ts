/** Sizes and spacings of custom in steps: each round in the system of who works by it. */
import { choice, type ChoiceSpec } from '../../form/define';

/** A choice between the systems that the trade buys and measures in; it goes by the units that the builder works in. */
export const bySystemChosen = (label: string): ChoiceSpec =>
  choice(label, {
    options: [
      { id: 'mm', label: 'millimetres' },
      { id: 'inch', label: 'inches' },
    ],
    preset: 'mm',
    presetInch: 'inch',
    note: 'as the units chosen',
  });

/** Which system they are said in; a cell that has steps of custom asks it. */
export const measures = bySystemChosen('Customary sizes in');

/** A size of custom, as it stands in a formula of a cell with the choice `measures`. */
export const custom = (metric: string, inch: string): string => `(measures == "inch" ? ${inch} : ${metric})`;

const MARK = custom('5 mm', '0.25 in');

/** A spacing that may be no more, as a person says it: whole fives of millimetres, or quarters of an inch. */
export const saidAtMost = (formula: string): string =>
  `(${formula}) < 3 * ${MARK} ? (${formula}) : floor((${formula}) / ${MARK} + 0.001) * ${MARK}`;
