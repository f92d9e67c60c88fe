/**
 * How far a number may be out, by what it is: what a tape, a caliper or a scale leaves open, how one board differs from
 * the next, how wide a rule of thumb is. Of twenty readings nineteen lie within it.
 */
import type { KindId } from '../measure';
import type { Known } from './table';

/** What a builder does to know such a number better. */
export type Remedy = 'measure' | 'weigh' | 'try' | 'learn';

export interface UsualDoubt {
  /** An entry: of the number's own kind, or a share of it, `10 %`; none for what is chosen, counted or bought by size. */
  readonly entry: string;
  /** As it is for who works in feet and inches. */
  readonly entryInch?: string;
  readonly source: string;
  readonly known: Known;
  readonly remedy: Remedy;
}

/** What of a wood a stress is, by which its boards differ: said where it is asked for. */
export type Doubted = 'stiffness' | 'breaking' | 'shear';

const practice = (entry: string, remedy: Remedy, source: string, entryInch?: string): UsualDoubt => ({
  entry,
  ...(entryInch !== undefined && { entryInch }),
  source,
  known: 'common practice',
  remedy,
});

const HANDBOOK =
  'twice the mean coefficient of variation of small clear pieces, Wood Handbook (FPL-GTR-190), table 5-6';
/** Boards differ: a share of the mean, twice the coefficient of variation. */
const wood = (entry: string, of: string): UsualDoubt => ({
  entry,
  source: `${of}: ${HANDBOOK}`,
  known: 'from memory',
  remedy: 'try',
});

const NONE = practice('0', 'learn', 'chosen, counted or bought by its size');
const CALIPER = practice('0.1 mm', 'measure', 'a caliper’s tenth', '0.004 in');
const TAPE = practice('3 mm', 'measure', 'a tape read to the eighth of an inch', '1/8 in');
const RULE = practice('20 %', 'learn', 'the width of a rule of thumb');

/** From this length on a tape is laid, below it a caliper, m. */
const TAPED = 0.15;

const byKind: Readonly<Partial<Record<KindId, UsualDoubt>>> = {
  count: NONE,
  choice: NONE,
  number: NONE,
  slope: NONE,
  money: NONE,
  pricePerLength: NONE,
  pricePerArea: NONE,
  pricePerVolume: NONE,
  pricePerMass: NONE,
  timberPrice: NONE,
  drill: NONE,
  pilotDrill: NONE,
  shankDrill: NONE,
  screwLength: NONE,
  stockLength: NONE,
  pack: NONE,
  packs: NONE,
  acceleration: NONE,
  caliper: CALIPER,
  screwDiameter: CALIPER,
  angle: practice('0.5°', 'measure', 'a bevel gauge laid on a protractor'),
  mass: practice('2 %', 'weigh', 'a household scale'),
  temperature: practice('1 °C', 'measure', 'a shop thermometer', '2 °F'),
  warmth: practice('1 °C', 'measure', 'two readings of a thermometer', '2 °F'),
  volume: practice('5 %', 'measure', 'a measuring cup'),
  ratio: practice('5 %', 'learn', 'the last figure of a ratio in a table'),
  share: practice('10 %', 'learn', 'the width of a rule given as a share'),
  areaDensity: practice('5 %', 'weigh', 'a cloth as it is sold by its weight'),
};

const poured = practice('5 %', 'measure', 'a label’s ratio, poured by eye in a marked cup');
const sheet = practice('2 %', 'weigh', 'a maker’s sheet');
const dense = wood('20 %', 'density');

const ofWood: Readonly<Record<Doubted, UsualDoubt>> = {
  stiffness: wood('44 %', 'stiffness'),
  shear: wood('28 %', 'shear along the grain'),
  breaking: wood('32 %', 'breaking stress'),
};

/** What is weighed by its maker, and no wood. */
const BOUGHT = /resin|hardener|glue|epoxy|water|filler|glass|paint|bulk|foam|fuel/i;

/**
 * The doubt that a number has where nothing is known of how it was found.
 *
 * @param name of the quantity, and what it means: resin is no wood
 * @param value SI: a tape reads what is long, a caliper what is short
 * @param doubted of which wood's property it is; a stress without it is none of wood's
 */
export function usualDoubt(name: string, kind: KindId, value: number, doubted?: Doubted): UsualDoubt {
  if (doubted) return ofWood[doubted];
  if (kind === 'length') return Math.abs(value) >= TAPED ? TAPE : CALIPER;
  if (kind === 'ratio' && /mix|label/i.test(name)) return poured;
  if (kind === 'density') return BOUGHT.test(name) ? sheet : dense;
  if (/gravity/i.test(name)) return dense;
  return byKind[kind] ?? RULE;
}

/** Of every number of the plan's table. */
export const offsetDoubt: UsualDoubt = practice(
  '3 mm',
  'measure',
  'a plan’s numbers, written to the eighth of an inch',
  '1/8 in',
);
