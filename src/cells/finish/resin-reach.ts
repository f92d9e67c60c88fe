/** How far the stock in hand goes. */
import { step } from '../form/define';

const GEOMETRY = 'geometry';
const ORDER = 'in the order of the work: glue, fillets, filler, sealing, wetting out, fill coats';

/** Over the resin's steps up to the total. */
export const reachSteps = {
  sealEnds: step('volume', 'pastes + (1 + waste) * sealing', 'mixed when all wood is sealed', ORDER),
  wetEnds: step('volume', 'sealEnds + (1 + waste) * wetOut', 'mixed when all cloth is wetted out', ORDER),
  wets: step(
    'area',
    'wetOut > 0 L ? clothArea * min(1, max(0, (inHand - sealEnds) / ((1 + waste) * wetOut))) : 0 m^2',
    'cloth that the stock in hand wets out',
    GEOMETRY,
  ),
  fillsCoats: step(
    'number',
    'filling > 0 L ? fillCoats * min(1, max(0, (inHand - wetEnds) / ((1 + waste) * filling))) : 0',
    'fill coats that it covers',
    GEOMETRY,
  ),
} as const;
