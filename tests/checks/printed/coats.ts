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

/** Median grains, µm, of papers marked P and of those with the plain number. */
const grits = `
grit60  | 269  | 268
grit80  | 201  | 192
grit100 | 162  | 141
grit120 | 125  | 116
grit150 | 100  | 93
grit180 | 82   | 82
grit220 | 68   | 68
grit240 | 58.5 | 52
grit280 | 52   | 42
grit320 | 46   | 35
grit360 | 40   | 28
grit400 | 35   | 22
`;
/** Which grit when, by custom. */
const sandings: Readonly<Record<string, readonly number[]>> = {
  wood: [80, 120],
  fair: [60, 80, 120],
  key: [80],
  paint: [80, 120, 150],
  primer: [220],
  enamel: [220, 320],
  coats: [320],
};

export const coats: Printed = {
  ...tableOf(
    'grits.grits',
    [
      ['fepa', 1e-6],
      ['cami', 1e-6],
    ],
    grits,
  ),
  ...Object.fromEntries(
    Object.entries(sandings).flatMap(([id, list]) =>
      list.map((grit, i) => [`grits.sandings.${id}.grits.${i}`, grit] as const),
    ),
  ),
  // 0.5 to 1 m² to a disc; twice on soft epoxy; NIOSH and ACGIH, mg/m³; FFP3 of EN 149, a full face; examples.
  'grits.discReach': 0.75,
  'grits.greenTimes': 2,
  'grits.dustLimits.wood': 1e-6,
  'grits.dustLimits.glass': 5e-6,
  'grits.masks.disposable': 20,
  'grits.masks.fullFace': 50,
  'grits.takenOff': 50e-6,
  'grits.escapes': 0.1,
  'grits.sanders.disc5.area': 0.012272,
  'grits.sanders.disc6.area': 0.017671,
  'grits.sanders.belt.area': 0.039975,
  'grits.sanders.sheet.area': 0.0161,
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
