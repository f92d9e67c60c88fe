/** The working of the stability. */
import { step, type ValuesOf } from '../form/define';
import { tell } from '../form/fact';
import { breadths, byUk, byUs, held, openEdge, own, sheerEdge, upright } from './stability-facts';
import type { stabilityInputs } from './stability-inputs';
import { CUSTOM } from '../../trade/sources';

const DERRETT = 'D. R. Derrett, Ship Stability for Masters and Mates; from memory';
const US = '46 CFR 178.330, edition of 2015';
const UK = 'the UK code for small commercial vessels, 11.4.1';

export const stabilitySteps = {
  beam: tell(breadths, 'length', 'greatest breadth of the hull'),
  usualBreadth: step(
    'length',
    'beam - 200 mm',
    'breadth people can use: 100 mm (4 in) off each side',
    CUSTOM,
  ),
  usualAside: step(
    'length',
    'max(0 mm, breadth / 2 - 200 mm)',
    'middle of a person who sits against the side',
    `200 mm (8 in), half a person’s breadth; ${CUSTOM}`,
  ),
  volume: step('displacement', 'mass / density', 'water that she pushes aside', 'Archimedes’ principle'),
  floats: tell(upright, 'count', '1 where she floats and finds a trim', ({ floats }) => (floats ? 1 : 0)),
  metacentricHeight: tell(
    upright,
    'length',
    'metacentric height, upright: how stiff she stands against a small heel',
    ({ metacentric }) => metacentric,
  ),
  radius: tell(
    upright,
    'length',
    'metacentric radius: second moment of the waterplane over the volume',
    ({ radius }) => radius,
  ),
  freeboard: tell(upright, 'length', 'least freeboard, upright', ({ freeboard }) => freeboard),

  rightingLever: tell(
    held,
    'length',
    'righting lever at this heel: how far the water’s push acts beside the weight',
    ({ at }) => at.lever,
  ),
  rightingMoment: step('massMoment', 'mass * rightingLever', 'what rights her', 'weight times lever'),
  trim: tell(held, 'angle', 'trim at this heel, + by the bow', ({ at }) => at.trim),
  leftAtHeel: tell(held, 'length', 'least freeboard at this heel', ({ freeboard }) => freeboard),
  wallLever: step(
    'length',
    'sin(heel) * (metacentricHeight + (heel < 89° ? radius / 2 * tan(heel)^2 : 0 mm))',
    'the lever by the wall-sided formula; by the metacentric height alone near 90°',
    DERRETT,
  ),
  wallOff: step(
    'length',
    'wallLever - rightingLever',
    'by how much the formula is off',
    'the difference of the two',
  ),

  sheerUnder: tell(sheerEdge, 'angle', 'heel at which the sheer goes under'),
  swamps: tell(openEdge, 'angle', 'heel at which water comes in'),

  peopleMass: step('mass', 'people * person', 'these people', 'number times weight'),
  ownMoment: step('massMoment', 'peopleMass * aside', 'these people to one side', 'weight times distance'),
  peopleHeel: tell(own, 'angle', 'heel with these people to one side', ({ heel }) => heel),
  peopleFreeboard: tell(own, 'length', 'least freeboard then', ({ freeboard }) => freeboard),
  smallHeel: step(
    'angle',
    'metacentricHeight > 0 mm ? atan(ownMoment / (mass * metacentricHeight)) : 90°',
    'the same by the metacentric height alone; 90° where it is none',
    `tan of the heel = moment over weight times metacentric height: ${DERRETT}`,
  ),

  usAside: step('length', 'breadth / 6', 'how far off the middle the US rule counts each person', US),
  usMoment: step(
    'massMoment',
    'people * usPerson * usAside',
    'heeling moment of the people by the US rule',
    US,
  ),
  usHeel: tell(byUs, 'angle', 'heel under it', ({ heel }) => heel),
  usSinks: tell(
    byUs,
    'length',
    'side that it puts under where the freeboard is least',
    ({ there }, { freeboard }: { readonly freeboard: number }) => freeboard - there,
  ),
  usMay: step(
    'length',
    'deck == "open" ? freeboard / 4 : deck == "decked" ? freeboard / 2 : deck == "protected" ? freeboard * (2 * deckLength - cockpit) / (4 * deckLength) : freeboard * (2 * deckLength - 1.5 * cockpit) / (4 * deckLength)',
    'side that the US rule lets it put under',
    US,
  ),
  usMeets: step('count', 'usHeel <= 14° and usSinks <= usMay ? 1 : 0', '1 where it stays in both limits', US),
  ukMoment: step('massMoment', 'people * 75 kg * aside', 'heeling moment of the people by the UK code', UK),
  ukHeel: tell(byUk, 'angle', 'heel under it', ({ heel }) => heel),
  ukFreeboard: tell(byUk, 'length', 'least freeboard under it', ({ freeboard }) => freeboard),
  ukMeets: step(
    'count',
    'ukHeel <= 7° and (deck == "open" or ukFreeboard >= 75 mm) ? 1 : 0',
    '1 where it stays within 7° and, decked, leaves 75 mm (3 in)',
    UK,
  ),

  looseLost: step(
    'length',
    'looseLength * looseBreadth^3 / 12 * density / mass / looseParts^2',
    'metacentric height that loose water takes, besides its weight',
    `free surface: ${DERRETT}`,
  ),
  looseLeft: step('length', 'metacentricHeight - looseLost', 'metacentric height left then', DERRETT),

  swampedFloats: step(
    'count',
    'swampedLift > 0 kg ? 1 : 0',
    '1 where she floats when she is full of water',
    'Archimedes’ principle: what foam and wood hold up less what sinks',
  ),
  swampedOver: step(
    'count',
    'swampedHeel > 90° ? 1 : 0',
    '1 where she turns over with them',
    'nothing but a comparison',
  ),
  swampedTilt: step('angle', 'abs(swampedTrim)', 'her trim then, whichever way', 'nothing but its size'),
  swampedShort: step(
    'count',
    'max(0, people - swampedHands)',
    'people for whom there is nothing to hold them up then',
    'the difference of the two',
  ),
} as const;

export type StabilityValues = ValuesOf<typeof stabilityInputs, typeof stabilitySteps>;
