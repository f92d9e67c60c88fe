/** The tables of coatings, hardeners and paints, as quantities: cells on coats bring the same ones. */
import { constantsOf } from '../../boat/quantities/constants-of';
import { coatings } from '../../trade/coatings';
import { hardeners } from '../../trade/hardeners';
import { paints } from '../../trade/paints';

const all = [...constantsOf(coatings), ...constantsOf(hardeners), ...constantsOf(paints)];

export const coatTables = () => all;
