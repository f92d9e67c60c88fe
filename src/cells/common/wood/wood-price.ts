/** Prices of boards as yards quote them, each brought to a price per volume. */
import { pricedOtherwise } from '../../../boat/quantities/price-ways';
import { input, step } from '../../form/define';

const MADE_UP = 'made up: write what your yard asks';

export const byLength = (label: string) =>
  input('pricePerLength', label, {
    otherwise: pricedOtherwise('pricePerLength'),
    preset: '3 /m',
    presetInch: '0.90 /ft',
    min: '0 /m',
    max: '1000 /m',
    step: '0.1 /m',
    note: MADE_UP,
    when: 'quoted == "length"',
  });

export const byBoard = (label: string, preset: string) =>
  input('money', label, {
    otherwise: pricedOtherwise('money'),
    preset,
    min: '0',
    max: '10000',
    step: '0.5',
    note: MADE_UP,
    when: 'quoted == "each"',
  });

/** The names of what a price per volume follows from. */
export interface Quoted {
  readonly volume: string;
  readonly length: string;
  readonly each: string;
  /** Of the board that the price is for: area of its end, and its length, which is 0 where it is not sold. */
  readonly section: string;
  readonly board: string;
}

/** The price per volume of a board that is quoted in one of the ways of `quotedAs`. */
export const pricePerVolume = ({ volume, length, each, section, board }: Quoted, meaning: string) =>
  step(
    'timberPrice',
    `quoted == "each" and ${board} > 0 mm ? ${each} / (${section} * ${board}) : quoted == "length" ? ${length} / ${section} : ${volume}`,
    meaning,
    'geometry: the price over the wood it buys',
  );
