/** Prices of boards as yards quote them, each brought to a price per volume. */
import type { ChoiceSpec, InputSpec } from '../../form/define';
import { step } from '../../form/define';
import { chosenFromShop, fromShop } from '../../form/from-shop';

/** How prices are quoted, and of which section of board they are, where that counts. */
export const priceInputs: {
  readonly quoted: ChoiceSpec;
  readonly boardThickness: InputSpec;
  readonly boardWidth: InputSpec;
} = {
  quoted: chosenFromShop('quoted'),
  boardThickness: fromShop('boardThickness', { when: 'quoted != "volume"' }),
  boardWidth: fromShop('boardWidth', { when: 'quoted != "volume"' }),
};

/** The names of what a price per volume follows from. */
export interface Quoted {
  readonly volume: string;
  readonly length: string;
  readonly each: string;
  /** Length of the board that the price is for; 0 where it is not sold. */
  readonly board: string;
}

/** Over the inputs above. */
export const boardSection = step(
  'area',
  'boardThickness * boardWidth',
  'end of the boards that prices by length and by board are for',
  'geometry',
);

/** The price per volume of a board that is quoted in one of the ways of `priceWays`, in a cell with `boardSection`. */
export const pricePerVolume = ({ volume, length, each, board }: Quoted, meaning: string) =>
  step(
    'timberPrice',
    `quoted == "each" and ${board} > 0 mm ? ${each} / (boardSection * ${board}) : quoted == "length" ? ${length} / boardSection : ${volume}`,
    meaning,
    'geometry: the price over the wood it buys',
  );
