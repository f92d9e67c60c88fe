/** Paints, typed once more: custom of the trade where nothing else is said, so that no figure moves unseen. */
import { type Printed, tableOf } from './units';

const HOUR = 3600;
const DAY = 24 * HOUR;

/** Solids % by volume, dry film µm, coats, hours at 20 °C from coat to coat, days until hard: middles of what is usual. */
const paints = `
primer       | 50   | 42.5 | 2 | 20 | 3
enamel       | 50   | 35   | 2 | 20 | 7
varnish      | 47.5 | 25   | 6 | 20 | 7
polyurethane | 50   | 45   | 2 | 15 | 7
epoxyPrimer  | 57.5 | 75   | 2 | 15 | 7
house        | 37.5 | 37.5 | 2 | 4  | 22
`;

/** Hours until tack-free and sandable, days until cured through, at 25 °C: middles of what is usual. */
const hardeners = `
fast   | 4    | 18 | 5.5
medium | 7    | 24 | 6
slow   | 11.5 | 36 | 8
`;

export const coats: Printed = {
  ...tableOf(
    'hardeners.hardeners',
    [
      ['tackFree', HOUR],
      ['sandable', HOUR],
      ['cured', DAY],
    ],
    hardeners,
  ),
  ...tableOf(
    'paints.paints',
    [
      ['solids', 0.01],
      ['film', 1e-6],
      ['coats', 1],
      ['recoat', HOUR],
      ['hard', DAY],
    ],
    paints,
  ),
  // A maker of marine coatings: 10 to 15 % by hand, 5 to 10 % for an uneven film. The rest by custom.
  'paints.handLoss': 0.15,
  'paints.unevenLoss': 0.075,
  'paints.coverReach': 10,
  'paints.sunCoats': 5,
  'paints.mostThinner': 0.2,
};
