/** How far the stock in hand goes: in which stage it runs out, and at which piece of the cloth. */
import { step } from '../form/define';
import { fact, tell } from '../form/fact';
import { cloth } from './cloth';
import { reachOver } from './cloth-reach';
import { FLAT_FACE } from './cloth-plan';
import { plan } from './cloth-steps';
import { GEOMETRY } from '../../trade/sources';

const ORDER = 'in the order of the work: glue, fillets, filler, sealing, wetting out, fill coats';
const LAYING = 'the pieces of the cloth, in their order of laying, each by what of it lies on the boat';

interface Asked {
  readonly wets: number;
  readonly onHull: number;
}

/** The cloth as its own cell has it, with how much of each piece is wetted out; null where none lies on a boat. */
export const reach = fact(LAYING, GEOMETRY, ({ wets, onHull }: Asked, { beside }) => {
  const ask = onHull > 0 ? beside(cloth) : null;
  const planned = ask?.(plan);
  // Asked of a flat face, the cloth's cell has no pieces for the hull.
  const onBoat = planned?.faces.some(({ name }) => name !== FLAT_FACE) ?? false;
  return planned && onBoat ? { planned, ...reachOver(planned, wets) } : null;
});

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
  onHull: step(
    'area',
    '2 * (bottomArea + bilgeArea + sideArea) + transomArea + bowArea',
    'faces of the hull, both sides',
    GEOMETRY,
  ),
  stops: tell(
    reach,
    'count',
    'piece of cloth in which it runs out; 0 where in none',
    (found) => found?.stops ?? 0,
  ),
  stopsIn: tell(
    reach,
    'choice',
    'what that piece covers',
    (found) => found?.planned.pieces[found.stops - 1]?.name ?? 'no piece',
  ),
  stopsAfter: tell(
    reach,
    'share',
    'of that piece wetted out when it runs out',
    (found) => found?.shares[found.stops - 1] ?? 0,
  ),
  fillsCoats: step(
    'number',
    'filling > 0 L ? fillCoats * min(1, max(0, (inHand - wetEnds) / ((1 + waste) * filling))) : 0',
    'fill coats that it covers',
    GEOMETRY,
  ),
} as const;
