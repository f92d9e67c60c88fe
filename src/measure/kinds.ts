/**
 * Kinds: what a quantity is to a builder. A kind has a noun, a dimension, the SI unit in which it is
 * kept, and the units in which it is written under metric and under feet-and-pounds.
 *
 * Several kinds may share a dimension: a film of paint is a length shown in micrometres, a section
 * modulus is a volume shown in cm³. Whether two quantities may be added is decided by dimension alone.
 */
import { composeDimension, type Dimension, plain, sameDimension } from './dimension';
import { unitOf } from './units';

export interface Kind {
  readonly id: KindId;
  /** With its article, for sentences: `a length`. */
  readonly noun: string;
  readonly dimension: Dimension;
  /** The SI unit in which values are kept, as tools print it: `m`, `rad`, `Pa`, `1`, `N·m`, `kg/m3`. */
  readonly si: string;
  /** Which of the builder's two choices of units decides how it is written; neither for plain numbers. */
  readonly follows: 'length' | 'mass' | 'neither';
  readonly metric: Ladder;
  readonly customary: Ladder;
}

/** The units of a kind under one choice. */
export interface Ladder {
  /** The unit which a bare number takes, and in which entries are written. */
  readonly entry: string;
  /** Units for results, from small to large, each with the least figure for which it is used. */
  readonly rungs: readonly (readonly [unit: string, least: number])[];
}

/** `['L', 'mL', 1, 'L']`: entries in litres; results in mL, from 1 L on in L. One unit alone is for both. */
type Units = string | readonly [entry: string, small: string, ...larger: readonly (number | string)[]];

function ladder(units: Units): Ladder {
  if (typeof units === 'string') return { entry: units, rungs: [[units, 0]] };
  const [entry, small, ...larger] = units;
  const rungs: [string, number][] = [[small, 0]];
  for (let i = 0; i + 1 < larger.length; i += 2) rungs.push([String(larger[i + 1]), Number(larger[i])]);
  return { entry, rungs };
}

type Row = Omit<Kind, 'id'>;

/** A row written otherwise under metric than under feet and pounds. The SI unit gives its dimension. */
function row(noun: string, si: string, follows: Kind['follows'], metric: Units, customary: Units): Row {
  const dimension = si === '1' ? plain : unitOf(si.replace(/^1/, ''))?.dimension;
  if (!dimension) throw new Error(`a kind is kept in an unknown unit: ${si}`);
  return { noun, dimension, si, follows, metric: ladder(metric), customary: ladder(customary) };
}

/** A row written the same under every choice. */
function same(noun: string, si: string, units: Units): Row {
  return row(noun, si, 'neither', units, units);
}

// The first kind of a dimension lends it its noun.
const rows = {
  number: same('a number', '1', ''),
  length: row('a length', 'm', 'length', 'mm', 'in'),
  area: row('an area', 'm2', 'length', ['m²', 'cm²', 0.01, 'm²'], ['ft²', 'in²', 1, 'ft²']),
  volume: row('a volume', 'm3', 'length', ['L', 'mL', 1, 'L'], ['gal', 'fl oz', 1, 'qt', 1, 'gal']),
  mass: row('a mass', 'kg', 'mass', ['kg', 'g', 1, 'kg'], ['lb', 'oz', 1, 'lb']),
  density: row('a density', 'kg/m3', 'mass', 'kg/m³', 'lb/ft³'),
  areaDensity: row(
    'a mass per area',
    'kg/m2',
    'mass',
    ['g/m²', 'g/m²', 2, 'kg/m²'],
    ['oz/yd²', 'oz/yd²', 0.5, 'lb/ft²'],
  ),
  lineDensity: row('a mass per length', 'kg/m', 'mass', 'kg/m', 'lb/ft'),
  force: row('a force', 'N', 'mass', ['N', 'N', 10, 'kN'], 'lbf'),
  stiffness: row('a force per length', 'N/m', 'mass', 'N/mm', 'lbf/in'),
  lineLoad: row('a force per length', 'N/m', 'mass', 'N/m', 'lbf/ft'),
  stress: row('a stress', 'Pa', 'mass', ['MPa', 'MPa', 1, 'GPa'], ['psi', 'psi', 0.1, 'million psi']),
  pressure: row('a pressure', 'Pa', 'mass', 'kPa', 'psi'),
  moment: row('a moment', 'N·m', 'mass', 'N·m', 'ft·lbf'),
  bendingStiffness: row('a bending stiffness', 'N·m2', 'mass', 'N·m²', 'lbf·ft²'),
  massMoment: row('a mass times a length', 'kg·m', 'mass', 'kg·m', 'lb·ft'),
  massInertia: row('a mass times a length squared', 'kg·m2', 'mass', 'kg·m²', 'lb·ft²'),
  secondMoment: row('a second moment of area', 'm4', 'length', 'cm⁴', 'in⁴'),
  sectionModulus: row('a section modulus', 'm3', 'length', 'cm³', 'in³'),
  displacement: row('a volume', 'm3', 'length', 'm³', 'ft³'),
  lumber: row('a volume', 'm3', 'length', 'm³', 'bd ft'),
  // What a caliper reads: wire, thread, the depth of a countersink. No tape does.
  caliper: row('a length', 'm', 'length', 'mm', 'in'),
  // The same of a screw, which has a number too: `No. 8`.
  screwDiameter: row('a length', 'm', 'length', 'mm', 'in'),
  // Sold in sizes (sold.ts): a plain hole is as wide as its drill; the drill of a
  // screw's hole is the next below or above; a screw or a board is as long as it is sold.
  drill: row('a length', 'm', 'length', 'mm', 'in'),
  pilotDrill: row('a length', 'm', 'length', 'mm', 'in'),
  shankDrill: row('a length', 'm', 'length', 'mm', 'in'),
  screwLength: row('a length', 'm', 'length', 'mm', 'in'),
  stockLength: row('a length', 'm', 'length', 'm', 'ft'),
  // One pack as it is sold; what must be bought in packs to have so much.
  pack: row('a volume', 'm3', 'length', ['L', 'mL', 1, 'L'], ['gal', 'fl oz', 1, 'pt', 1, 'qt', 1, 'gal']),
  packs: row('a volume', 'm3', 'length', ['L', 'mL', 1, 'L'], ['gal', 'fl oz', 1, 'pt', 1, 'qt', 1, 'gal']),
  film: row('a thickness', 'm', 'length', 'µm', 'thou'),
  curvature: row('a number per length', '1/m', 'length', '/m', '/ft'),
  perLength: row('a number per length', '1/m', 'length', '/m', '/ft'),
  perArea: row('a number per area', '1/m2', 'length', '/m²', '/ft²'),
  spreadingRate: row('an area per volume', '1/m', 'length', 'm²/L', 'ft²/gal'),
  wetRate: row('a volume per area', 'm', 'length', 'mL/m²', 'fl oz/ft²'),
  temperature: row('a temperature', 'K', 'length', '°C', '°F'),
  warmth: row('a difference of temperature', 'K', 'length', '°C', '°F'),
  time: same('a time', 's', ['h', 's', 1, 'min', 1, 'h', 2, 'd']),
  minutes: same('a time', 's', ['min', 's', 1, 'min', 1, 'h', 2, 'd']),
  speed: same('a speed', 'm/s', 'kn'),
  windSpeed: row('a speed', 'm/s', 'length', 'm/s', 'mph'),
  acceleration: row('an acceleration', 'm/s2', 'length', 'm/s²', 'ft/s²'),
  flow: row('a volume per time', 'm3/s', 'length', 'L/min', 'gal/min'),
  power: row('a power', 'W', 'mass', 'kW', 'hp'),
  angle: same('an angle', 'rad', '°'),
  money: same('an amount of money', 'money', ''),
  pricePerLength: row('a price per length', 'money/m', 'length', '/m', '/ft'),
  pricePerArea: row('a price per area', 'money/m2', 'length', '/m²', '/ft²'),
  pricePerVolume: row('a price per volume', 'money/m3', 'length', '/L', '/gal'),
  timberPrice: row('a price per volume', 'money/m3', 'length', '/m³', '/bd ft'),
  pricePerMass: row('a price per mass', 'money/kg', 'mass', '/kg', '/lb'),
  ratio: same('a ratio', '1', ''),
  slope: same('a slope', '1', ''),
  share: same('a share', '1', '%'),
  count: same('a count', '1', ''),
  choice: same('a choice', '1', ''),
} satisfies Record<string, Row>;

export type KindId = keyof typeof rows;

/** Every kind, in the order of the table. */
export const kinds: readonly Kind[] = Object.entries(rows).map(([id, rest]) => ({
  id: id as KindId,
  ...rest,
}));

/** Kinds by their ids; what a builder's own sum may come to is added to them (`kind-for.ts`). */
export const byId = new Map(kinds.map((kind) => [kind.id, kind]));

/** The kind with this id. */
export function kindOf(id: KindId): Kind {
  const kind = byId.get(id);
  // Ids are checked by type; this meets data that was cast.
  if (!kind) throw new Error(`unknown kind: ${id}`);
  return kind;
}

/** A dimension in words, with its article: `a length`, `a force over a time`. */
export function sayDimension(dimension: Dimension): string {
  return kinds.find((kind) => sameDimension(kind.dimension, dimension))?.noun ?? composeDimension(dimension);
}
