/** What the cell of the boat's capacity asks for. */
import { choice, input, type ValuesOf } from '../form/define';

const OUTBOARD = 'drive == "outboard" or drive == "well"';

/** What drives her, as the US rule parts boats. */
export const driveOptions = [
  { id: 'outboard', label: 'an outboard on the transom' },
  { id: 'well', label: 'an outboard behind a well' },
  { id: 'small', label: 'a motor of up to 2 hp' },
  { id: 'hand', label: 'oars or paddles' },
] as const;

export const capacityInputs = {
  drive: choice('Driven by', {
    options: driveOptions,
    preset: 'outboard',
  }),
  displacement: input('mass', 'Water pushed aside, at most', {
    from: 'floatPlane.overCut',
    fromBy: {
      choice: 'drive',
      links: { well: 'floatPlane.overSheer', hand: 'floatPlane.overSheer' },
    },
    bound: 'most',
    preset: '1200 kg',
    presetInch: '2600 lb',
    min: '1 kg',
    max: '20 t',
    step: '10 kg',
    note: 'level, as deep as she lies before water comes in anywhere; fresh water',
  }),
  boatWeight: input('mass', 'Boat weighs', {
    from: 'weights.hull',
    preset: '160 kg',
    presetInch: '350 lb',
    min: '1 kg',
    max: '10 t',
    step: '5 kg',
    note: 'hull, deck, seats and fixed tanks full; no motor, battery or portable tank',
  }),
  length: input('length', 'Length of the boat', {
    from: 'hull.length',
    preset: '4.5 m',
    min: '1 m',
    max: '40 m',
    step: '50 mm',
    note: 'straight, end to end; no bowsprit, bracket or rudder',
  }),
  breadth: input('length', 'Breadth of the transom', {
    from: 'floatPlane.sternBreadth',
    preset: '1400 mm',
    presetInch: '54 in',
    min: '100 mm',
    max: '10 m',
    step: '10 mm',
    when: OUTBOARD,
    note: 'at its widest; if that is under half her beam, the broadest of the after quarter',
  }),
  bottom: choice('Bottom', {
    options: [
      { id: 'flat', label: 'flat, with hard chines' },
      { id: 'other', label: 'any other' },
    ],
    from: 'floatPlane.bottom',
    preset: 'other',
    when: OUTBOARD,
  }),
  steering: choice('Steered', {
    options: [
      { id: 'tiller', label: 'by the motor’s tiller' },
      { id: 'remote', label: 'by a wheel or other gear' },
    ],
    preset: 'tiller',
    when: OUTBOARD,
    note: 'remote steering: any mechanical help fixed to the boat',
  }),
  transom: input('length', 'Transom stands, plumb', {
    from: 'transomCut.cutHeight',
    preset: '380 mm',
    presetInch: '15 in',
    min: '5 in',
    max: '60 in',
    step: '1/4 in',
    when: OUTBOARD,
    note: 'from the bottom to the lowest place where water comes in over it, cut-out or well',
  }),
  rated: input('power', 'Rated for', {
    from: '{self}.mostPower',
    preset: '10 hp',
    min: '0 hp',
    max: '350 hp',
    step: '1 hp',
    when: OUTBOARD,
    note: 'less than the rule allows leaves more weight for people',
  }),
  edition: choice('Weights of motors', {
    options: [
      { id: 'now', label: 'table since June 2018' },
      { id: 'before', label: 'table of 1984 to 2018' },
    ],
    preset: 'now',
    when: OUTBOARD,
    note: 'the older one is for checking an old plate',
  }),
  margin: input('share', 'Left off for errors', {
    preset: '5 %',
    min: '0 %',
    max: '30 %',
    step: '1 %',
    note: 'the Coast Guard’s worksheet leaves 5 % for errors of measuring',
  }),
  sideLoad: input('mass', 'Load along one side', {
    from: 'floatPlane.sideOverCut',
    fromBy: { choice: 'drive', links: { well: 'floatPlane.sideOverSheer' } },
    preset: '200 kg',
    presetInch: '440 lb',
    min: '0 kg',
    max: '10 t',
    step: '5 kg',
    when: OUTBOARD,
    note: 'at seat height, motor and tank aboard, until water is about to come in; the rule has it measured afloat',
  }),
  beam: input('length', 'Greatest breadth of the boat', {
    from: 'hull.beam',
    preset: '1600 mm',
    presetInch: '63 in',
    min: '300 mm',
    max: '10 m',
    step: '10 mm',
    when: OUTBOARD,
  }),
} as const;

export type CapacityAsked = ValuesOf<typeof capacityInputs>;
