/** Asks for numbers of the shop's, and for choices of the boat's and the shop's. */
import { declaredTables } from '../../boat/quantities/declared-tables';
import type { ChoiceSpec, InputSpec } from './define';
import { askChoice, askNumber, type ChosenOfBoat, type OfBoat } from './owned';

/** A number of the shop's: `kerf`. */
export const fromShop = (key: string, more: OfBoat = {}): InputSpec =>
  askNumber(declaredTables, `shop.${key}`, more);

/** A choice of the shop's: `glue`. */
export const chosenFromShop = (key: string, more: ChosenOfBoat = {}): ChoiceSpec =>
  askChoice(declaredTables, `shop.${key}`, more);

/** A choice of the boat's: `{part}.timber`. */
export const chosenFromBoat = (link: string, more: ChosenOfBoat = {}): ChoiceSpec =>
  askChoice(declaredTables, link, more);
