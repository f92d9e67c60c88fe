/** Asks for numbers of the boat's. It comes with the first cell and brings no table of the trade with it. */
import { declared } from '../../boat/quantities/declared';
import type { InputSpec } from './define';
import { askNumber, type OfBoat } from './owned';

/**
 * A number of the boat's by its name: `keelson.thickness`, `{part}.width`.
 * @throws TypeError where no such number is declared
 */
export const fromBoat = (link: string, more: OfBoat = {}): InputSpec => askNumber(declared, link, more);
