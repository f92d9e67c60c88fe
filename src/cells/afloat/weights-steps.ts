/** The working of the weights. */
import { step, type ValuesOf } from '../form/define';
import { tell } from '../form/fact';
import {
  bowTransoms,
  partHere,
  places,
  seamMiddle,
  skinMiddle,
  whole,
  woodMass,
  woodMiddle,
} from './weights-facts';
import type { weightsInputs } from './weights-inputs';
import { CUSTOM, SUM } from '../../trade/sources';

const MOMENTS = 'the sum of mass times place, over the sum of the masses';
const WATER = 'water is told as a share of the dry weight; weights by the tables are at 12 %';

const gearSum = (of: string) =>
  ['gearA', 'gearB', 'gearC', 'gearD'].map((id) => `${id}Mass${of && ` * ${id}${of}`}`).join(' + ');

export const weightsSteps = {
  // Where things usually stand.
  keelHeight: tell(places, 'length', 'height of the keel at the widest station', ({ keel }) => keel),
  usualPeopleHeight: step(
    'length',
    'keelHeight + seat + 250 mm',
    'height of the middle of a person who sits: 250 mm (10 in) above the seat',
    `about 250 mm (10 in) above the seat; ${CUSTOM}`,
  ),
  usualLow: step('length', 'keelHeight + 100 mm', 'height of things that stand on the bottom', CUSTOM),
  sternTop: tell(places, 'length', 'place of the top of the stern', ({ sternX }) => sternX),
  usualStern: step(
    'length',
    'sternTop - 150 mm',
    'place of a motor on the stern: 150 mm (6 in) abaft the top of it',
    CUSTOM,
  ),
  usualMotorHeight: tell(
    places,
    'length',
    'height of the middle of a motor: level with the sheer at the stern',
    ({ sternZ }) => sternZ,
    { source: CUSTOM },
  ),
  usualMiddle: tell(places, 'length', 'middle of the keel', ({ aft, fore }) => (aft + fore) / 2),
  usualBow: tell(places, 'length', 'four fifths of the keel', ({ aft, fore }) => aft + 0.8 * (fore - aft)),
  usualTank: tell(places, 'length', 'a fifth of the keel', ({ aft, fore }) => aft + 0.2 * (fore - aft)),
  skinForward: tell(skinMiddle, 'length', 'middle of the skin, forward', ({ x }) => x),
  skinHeight: tell(skinMiddle, 'length', 'middle of the skin, height', ({ z }) => z),
  seamForward: tell(seamMiddle, 'length', 'middle of the seams, forward', ({ x }) => x),
  seamHeight: tell(seamMiddle, 'length', 'middle of the seams, height', ({ z }) => z),

  // The hull as reckoned.
  wetness: step(
    'ratio',
    '(1 + moisture) / 1.12',
    'weight of the wood at its moisture over that at 12 %',
    WATER,
  ),
  bowTransoms: tell(bowTransoms, 'count', '1 where her bow is a transom', (count) => count),
  bareWood: tell(woodMass, 'mass', 'her wood, at 12 % moisture', (mass) => mass, { how: SUM }),
  woodForward: tell(woodMiddle, 'length', 'middle of her wood, forward', ({ x }) => x),
  woodHeight: tell(woodMiddle, 'length', 'middle of her wood, height', ({ z }) => z),
  wood: step('mass', 'bareWood * wetness', 'her wood as it is now', WATER),
  pastes: step(
    'mass',
    'glueLines * glueWeight + (filletPaste + fillerPaste) * pasteWeight',
    'glue, fillets and filler that stay',
    'volume times density',
  ),
  fastenings: step('mass', 'screwsIn * oneScrew', 'her screws', SUM),
  coats: step('mass', 'painted * dryPaint * paintWeight', 'her paint, dry', 'area times film times density'),
  finish: step('mass', 'sheathing + pastes + fastenings + coats', 'all that is not wood', SUM),
  reckoned: step('mass', 'wood + finish', 'her hull, as reckoned', SUM),
  reckonedForward: step(
    'length',
    '(wood * woodForward + (sheathing + coats) * skinForward + (pastes + fastenings) * seamForward) / reckoned',
    'its centre, forward, as reckoned',
    MOMENTS,
  ),
  hullHeight: step(
    'length',
    '(wood * woodHeight + (sheathing + coats) * skinHeight + (pastes + fastenings) * seamHeight) / reckoned',
    'its centre, height above the base line; no scale tells it',
    MOMENTS,
  ),

  // As weighed.
  arms: step(
    'ratio',
    'weighed == "lever" ? leverage : 1',
    'what an end weighs over what the scale reads',
    'the law of the lever',
  ),
  onAft: step(
    'mass',
    'weighed == "no" ? 0 kg : aftReads * arms',
    'carried by the after support',
    'the law of the lever',
  ),
  onFore: step(
    'mass',
    'weighed == "no" ? 0 kg : foreReads * arms',
    'carried by the forward support',
    'the law of the lever',
  ),
  weighedMass: step('mass', 'onAft + onFore', 'her hull, as weighed; 0 where she has not been', SUM),
  correction: step(
    'mass',
    'weighed == "no" ? 0 kg : weighedMass - reckoned',
    'by how much the scales go beyond what was reckoned',
    'the difference of the two',
  ),
  correctionSize: step('mass', 'abs(correction)', 'the same, whichever way', 'the difference of the two'),
  correctionForward: step(
    'length',
    'weighed == "no" ? 0 mm : (onAft * aftAt + onFore * foreAt) / weighedMass - reckonedForward',
    'by how much the centre lies further forward than reckoned',
    'moments about the supports',
  ),
  correctionForwardSize: step(
    'length',
    'abs(correctionForward)',
    'the same, whichever way',
    'the difference of the two',
  ),

  hull: step('mass', 'reckoned + correction', 'her hull: as weighed, or else as reckoned', SUM),
  hullForward: step('length', 'reckonedForward + correctionForward', 'its centre, forward', MOMENTS),
  doubt: step(
    'mass',
    'weighed == "no" ? sqrt((woodDoubt * wood)^2 + (finishDoubt * finish)^2) : 0 kg',
    'more or less in her hull, until she is weighed',
    'two doubts that know nothing of each other: the root of the sum of their squares',
  ),
  waterTaken: step('mass', 'bareWood / 1.12 * drinks', 'water that her wood takes up afloat', WATER),
  hullLeast: step('mass', 'hull - doubt', 'her hull, at the least', 'by the doubts typed'),
  hullMost: step(
    'mass',
    'hull + doubt + waterTaken',
    'her hull, at the most, with the water taken up',
    'by the doubts typed',
  ),

  // Rigged and loaded.
  gear: step('mass', gearSum(''), 'gear', SUM),
  rigged: step('mass', 'hull + motor + fuel + gear', 'rigged: hull, motor, fuel and gear', SUM),
  crew: step('mass', 'people * person', 'people', SUM),
  loaded: step('mass', 'rigged + crew', 'loaded: with the people', SUM),
  riggedForward: step(
    'length',
    `(hull * hullForward + motor * motorForward + fuel * fuelForward + ${gearSum('Forward')}) / rigged`,
    'centre of all but the people, forward',
    MOMENTS,
  ),
  riggedHeight: step(
    'length',
    `(hull * hullHeight + motor * motorHeight + fuel * fuelHeight + ${gearSum('Height')}) / rigged`,
    'its height above the base line',
    MOMENTS,
  ),
  riggedSide: step('length', `(${gearSum('Side')}) / rigged`, 'how far it lies to port', MOMENTS),
  centreForward: step(
    'length',
    '(rigged * riggedForward + crew * peopleForward) / loaded',
    'centre of all aboard, forward',
    MOMENTS,
  ),
  centreHeight: step(
    'length',
    '(rigged * riggedHeight + crew * peopleHeight) / loaded',
    'its height above the base line',
    MOMENTS,
  ),
  centreSide: step(
    'length',
    '(rigged * riggedSide + crew * peopleSide) / loaded',
    'how far it lies to port of the centreline',
    MOMENTS,
  ),
  centreAside: step('length', 'abs(centreSide)', 'the same, whichever side', 'nothing but its size'),
  beam: tell(whole, 'length', 'greatest breadth of the hull', ({ beam }) => beam),
  toSheer: tell(whole, 'displacement', 'volume of the hull up to the sheer', ({ volume }) => volume),
  bears: step(
    'mass',
    'toSheer * 1000 kg/m^3',
    'fresh water that she pushes aside down to her sheer',
    'Archimedes’ principle',
  ),

  // The part looked at.
  partMass: tell(partHere, 'mass', 'what the part weighs; 0 where she has none', ({ mass }) => mass, {
    how: 'its wood at its moisture; of what is aboard what was typed, of the rest as reckoned above',
  }),
  partX: tell(partHere, 'length', 'its middle, forward of the after end of the bottom', ({ x }) => x),
  partZ: tell(partHere, 'length', 'its middle, height above the base line', ({ z }) => z),
  partShare: step('share', 'partMass / loaded', 'its share of all aboard', SUM),
  listed: step('count', 'partMass > 0 kg ? 1 : 0', '1 where she has it', 'nothing but a comparison'),
} as const;

export type WeightsValues = ValuesOf<typeof weightsInputs, typeof weightsSteps>;
