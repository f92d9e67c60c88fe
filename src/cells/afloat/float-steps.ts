/** The working of the floating hull. */
import { step, type ValuesOf } from '../form/define';
import { tell } from '../form/fact';
import { EQUILIBRIUM, here, rest } from './float-facts';
import type { floatInputs } from './float-inputs';
import { whole } from './weights-facts';

const SHIFT = 'a mass moved by so much moves the centre of all by its share of it';
const PLUMB = 'plumb, from the water up to the sheer';

export const floatSteps = {
  seaDensity: step(
    'density',
    'seaWater(waterWarmth, waterSalt)',
    'density of the sea at this warmth and salt',
    'N. P. Fofonoff and R. C. Millard, UNESCO Technical Papers in Marine Science 44, 1983',
  ),
  volume: step('displacement', 'mass / density', 'water that she pushes aside', 'Archimedes’ principle'),
  toSheer: tell(whole, 'displacement', 'volume of the hull up to the sheer', ({ volume }) => volume),
  movedForward: step(
    'length',
    'centreForward + (moves == "forward" ? mover * far / mass : 0 mm)',
    'centre of all aboard now, forward',
    SHIFT,
  ),
  movedHeight: step(
    'length',
    'centreHeight + (moves == "stands" ? mover * far / mass : 0 mm)',
    'its height now',
    SHIFT,
  ),
  movedSide: step(
    'length',
    'centreSide + (moves == "side" ? mover * far / mass : 0 mm)',
    'how far it lies to port now',
    SHIFT,
  ),
  floats: tell(rest, 'count', '1 where she floats and finds a rest', ({ floats }) => (floats ? 1 : 0)),
  draught: tell(rest, 'length', 'draught of her lowest point', ({ draught }) => draught, {
    how: 'from the lowest point of the hull plumb up to the water',
  }),
  trim: tell(rest, 'angle', 'trim, + by the bow', ({ at }) => at.trim),
  heel: tell(rest, 'angle', 'heel, + to port', ({ at }) => at.heel),
  trimSize: step('angle', 'abs(trim)', 'trim, whichever way', 'nothing but its size'),
  heelSize: step('angle', 'abs(heel)', 'heel, whichever way', 'nothing but its size'),
  leastFreeboard: tell(rest, 'length', 'least freeboard, all round the sheer', ({ least }) => least.amount, {
    how: PLUMB,
  }),
  leastAt: tell(rest, 'length', 'where that is, from the after end of the bottom', ({ least }) => least.x),
  leastSide: tell(rest, 'choice', 'on which side', ({ least }) => least.side),
  stiffness: tell(
    rest,
    'length',
    'metacentric height: how stiff she stands against a small heel',
    ({ at }) => at.metacentric.transverse,
    {
      how: 'second moment of the waterplane over the volume, less the height of her centre over that of the water',
      source: EQUILIBRIUM,
    },
  ),
  waterplane: tell(rest, 'area', 'area of the waterplane', ({ at }) => at.immersed.waterplane.area),
  sinks: step(
    'mass',
    'waterplane * density * 10 mm',
    'load that sinks her by 10 mm (about 3/8 in)',
    'waterplane area times density times the sinkage',
  ),
  place: tell(here, 'length', 'position of the station along the boat', ({ x }) => x),
  waterUp: tell(
    here,
    'length',
    'height of the waterline over the base line at the station, everybody in place and no heel',
    ({ waterUp }) => waterUp,
  ),
  sheerDown: tell(
    here,
    'length',
    'from the sheer down to it there, square to the base line',
    ({ sheerDown }) => sheerDown,
  ),
  freePort: tell(here, 'length', 'freeboard to port at the station, as she lies', ({ port }) => port, {
    how: PLUMB,
  }),
  freeStarboard: tell(
    here,
    'length',
    'freeboard to starboard at the station, as she lies',
    ({ starboard }) => starboard,
    { how: PLUMB },
  ),
} as const;

export type FloatValues = ValuesOf<typeof floatInputs, typeof floatSteps>;
