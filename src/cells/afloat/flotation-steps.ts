/** Foam by the federal formulas, where it goes, and how she lies with it when she is full of water. */
import { outboardOf, outboardsNow, swampedMotor } from '../../trade/outboard-weights';
import { type CellFunction, step, type ValuesOf } from '../form/define';
import { tell } from '../form/fact';
import { here, laid } from './flotation-facts';
import { swampedSteps } from './swamped-steps';
import type { flotationInputs } from './flotation-inputs';
import { GEOMETRY } from '../../trade/sources';

const LEVEL = '33 CFR 183.220 (outboard) and 183.320 (by hand, up to 2 hp)';
const BASIC = '33 CFR 183.105';
const FOAM = 'Coast Guard, Boatbuilder’s Handbook, chapter on flotation';
const UNDER = 'Archimedes’ principle: what it weighs less the water it pushes aside';

const motorUnder: CellFunction = {
  takes: ['power'],
  gives: 'mass',
  how: 'motor, controls and battery of the row, held under water',
  run: (power = 0) => swampedMotor(outboardOf(outboardsNow, power)),
};
export const flotationFunctions = { motorUnder };

export const flotationSteps = {
  water: step('density', '62.4 lb/ft^3', 'density of fresh water, as the rule has it', BASIC),
  strict: step(
    'count',
    'aim == "level" and (drive == "outboard" or drive == "well") ? 1 : 0',
    '1 where the stricter rule for outboards over 2 hp holds',
    '33 CFR 183.201 and 183.301',
  ),
  peopleSink: step(
    'mass',
    'strict == 1 ? 0.5 * min(persons, 550 lb) + 0.125 * max(persons - 550 lb, 0 kg) : 2 / 15 * persons',
    'people, as the rule has them weigh in water',
    `${LEVEL}; ${BASIC}`,
  ),
  dead: step(
    'mass',
    'weight - persons - (aim == "level" and drive != "hand" ? equipment : 0 kg)',
    'gear, in air: what is left of the weight beside people and motor',
    `${LEVEL}; ${BASIC}`,
  ),
  gearSinks: step(
    'mass',
    'dead > 1 g ? 0.25 * dead : 0 kg',
    'gear, as the rule has it weigh in water',
    `${LEVEL}; ${BASIC}`,
  ),
  motorSinks: step(
    'mass',
    'drive == "hand" ? 0 kg : motorUnder(rated)',
    'motor, controls and battery under water',
    'table of 33 CFR 183.75, as a builders’ page reproduces it',
  ),
  partsSink: step(
    'mass',
    'finish * (1 - water / finishDensity) + metal * (1 - water / metalDensity)',
    'her own parts that sink, under water',
    UNDER,
  ),
  woodHolds: step(
    'mass',
    'credit * wood * (water / wetDensity - 1)',
    'what her wood holds up, as far as it is counted on; − where it sinks',
    UNDER,
  ),
  sinks: step(
    'mass',
    'peopleSink + gearSinks + motorSinks + partsSink',
    'all that must be held up',
    'the sum of its parts',
  ),
  foamHolds: step('density', 'water * (1 - soak) - foamDensity', 'what a volume of foam holds up', FOAM),
  foam: step(
    'displacement',
    'max(sinks - woodHolds, 0 kg) / foamHolds',
    'foam that the rule asks for',
    FOAM,
    'least',
  ),
  toBuy: step('displacement', 'fitted * (1 + waste)', 'foam to buy', 'the foam and its offcuts'),
  sheets: step(
    'count',
    'ceil(toBuy / (sheetLong * sheetWide * sheetThick) - 0.000001)',
    'sheets of foam',
    GEOMETRY,
  ),
  motorFoam: step('displacement', 'motorSinks / foamHolds', 'foam of that for the motor, by the stern', FOAM),

  room: tell(laid, 'displacement', 'room for foam in all bays', ({ room }) => room, {
    how: 'the sum of the bays, both sides',
  }),
  lacks: tell(laid, 'displacement', 'foam that finds no place', ({ lacks }) => lacks),
  bayThere: tell(here, 'count', '1 where there is a bay forward of it', ({ there }) => there),
  bayRoom: tell(here, 'displacement', 'room for foam in the bay, both sides', ({ room }) => room),
  bayFoam: tell(here, 'displacement', 'foam in the bay, both sides', ({ foam }) => foam),

  // Swamped.
  holds: step(
    'mass',
    'max(fitted - lacks, 0 m^3) * foamHolds + woodHolds',
    'what foam and wood hold up',
    UNDER,
  ),
  spare: step(
    'mass',
    'max(holds - motorSinks - partsSink, 0 kg)',
    'what is left of it for people and gear',
    'what is held up less what must be',
  ),
  hands: step(
    'count',
    'floor(spare / (2 / 15 * person) + 0.000001)',
    'people who hang on in the water: 2/15 of the weight of each',
    `the share of ${BASIC} for people`,
  ),
  sitting: step(
    'count',
    'floor(spare / (0.5 * person) + 0.000001)',
    'people who sit in her, in the water to the chest: half of the weight of each',
    'the share of 33 CFR 183.220 for people',
  ),
  foamForward: tell(laid, 'length', 'middle of the foam, forward', ({ forward }) => forward),
  hangsForward: step(
    'length',
    'sinks > 0 kg ? ((peopleSink + gearSinks) * peopleForward + motorSinks * motorForward + partsSink * hullForward) / sinks : foamForward',
    'middle of what hangs on it, forward',
    'the sum of weight times place, over the sum of the weights',
  ),
  ahead: step(
    'length',
    'hangsForward - foamForward',
    'how far that lies ahead of the foam, − abaft',
    GEOMETRY,
  ),
  aheadBy: step('length', 'abs(ahead)', 'the same, whichever way', GEOMETRY),

  ...swampedSteps,

  // To try it in shallow water.
  ironMiddle: step(
    'mass',
    '(peopleSink + gearSinks) / (1 - water / (7850 kg/m^3))',
    'iron, dry, that stands for people and gear in the middle',
    LEVEL,
  ),
  ironSide: step(
    'mass',
    'peopleSink / 2 / (1 - water / (7850 kg/m^3))',
    'iron, dry, that stands for half of the people on one side',
    '33 CFR 183.230 and 183.330',
  ),
} as const;

export type FlotationValues = ValuesOf<typeof flotationInputs, typeof flotationSteps>;
