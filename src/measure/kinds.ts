/**
 * Kinds: what a quantity is to a builder. A kind has a noun, a dimension, the SI unit in which it is
 * kept, and the units in which it is written under metric and under feet-and-pounds.
 *
 * Several kinds may share a dimension: a film of paint is a length shown in micrometres, a section
 * modulus is a volume shown in cm³. Whether two quantities may be added is decided by dimension alone.
 */
import { composeDimension, type Dimension, dimension, plain, sameDimension } from './dimension';

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

/** `ladder('L', 'mL', ['L', 1])`: entries in litres; results in mL, from 1 L on in L. */
function ladder(entry: string, ...rungs: (string | readonly [string, number])[]): Ladder {
  const steps = rungs.map((rung) => (typeof rung === 'string' ? ([rung, 0] as const) : rung));
  return { entry, rungs: steps.length > 0 ? steps : [[entry, 0]] };
}

const one = ladder('');
const pressure = dimension({ mass: 1, length: -1, time: -2 });
const force = dimension({ mass: 1, length: 1, time: -2 });
const forcePerLength = dimension({ mass: 1, time: -2 });
const clock = ['s', ['min', 1], ['h', 1], ['d', 2]] as const;

type Row = Omit<Kind, 'id'>;

/** A row whose two ladders differ. */
function row(
  noun: string,
  dimension: Dimension,
  si: string,
  follows: 'length' | 'mass',
  metric: Ladder,
  customary: Ladder,
): Row {
  return { noun, dimension, si, follows, metric, customary };
}

/** A row written the same under every choice. */
function same(noun: string, dimension: Dimension, si: string, units: Ladder): Row {
  return { noun, dimension, si, follows: 'neither', metric: units, customary: units };
}

// The first kind of a dimension lends it its noun.
const rows = {
  number: same('a number', plain, '1', one),
  length: row('a length', dimension({ length: 1 }), 'm', 'length', ladder('mm'), ladder('in')),
  area: row(
    'an area',
    dimension({ length: 2 }),
    'm2',
    'length',
    ladder('m²', 'cm²', ['m²', 0.01]),
    ladder('ft²', 'in²', ['ft²', 1]),
  ),
  volume: row(
    'a volume',
    dimension({ length: 3 }),
    'm3',
    'length',
    ladder('L', 'mL', ['L', 1]),
    ladder('gal', 'fl oz', ['gal', 0.25]),
  ),
  mass: row(
    'a mass',
    dimension({ mass: 1 }),
    'kg',
    'mass',
    ladder('kg', 'g', ['kg', 1]),
    ladder('lb', 'oz', ['lb', 1]),
  ),
  density: row(
    'a density',
    dimension({ mass: 1, length: -3 }),
    'kg/m3',
    'mass',
    ladder('kg/m³'),
    ladder('lb/ft³'),
  ),
  areaDensity: row(
    'a mass per area',
    dimension({ mass: 1, length: -2 }),
    'kg/m2',
    'mass',
    ladder('g/m²', 'g/m²', ['kg/m²', 2]),
    ladder('oz/yd²', 'oz/yd²', ['lb/ft²', 0.5]),
  ),
  lineDensity: row(
    'a mass per length',
    dimension({ mass: 1, length: -1 }),
    'kg/m',
    'mass',
    ladder('kg/m'),
    ladder('lb/ft'),
  ),
  force: row('a force', force, 'N', 'mass', ladder('N', 'N', ['kN', 10]), ladder('lbf')),
  stiffness: row('a force per length', forcePerLength, 'N/m', 'mass', ladder('N/mm'), ladder('lbf/in')),
  lineLoad: row('a force per length', forcePerLength, 'N/m', 'mass', ladder('N/m'), ladder('lbf/ft')),
  stress: row('a stress', pressure, 'Pa', 'mass', ladder('MPa', 'MPa', ['GPa', 1]), ladder('psi')),
  pressure: row('a pressure', pressure, 'Pa', 'mass', ladder('kPa'), ladder('psi')),
  moment: row(
    'a moment',
    dimension({ mass: 1, length: 2, time: -2 }),
    'N·m',
    'mass',
    ladder('N·m'),
    ladder('ft·lbf'),
  ),
  bendingStiffness: row(
    'a bending stiffness',
    dimension({ mass: 1, length: 3, time: -2 }),
    'N·m2',
    'mass',
    ladder('N·m²'),
    ladder('lbf·ft²'),
  ),
  massMoment: row(
    'a mass times a length',
    dimension({ mass: 1, length: 1 }),
    'kg·m',
    'mass',
    ladder('kg·m'),
    ladder('lb·ft'),
  ),
  massInertia: row(
    'a mass times a length squared',
    dimension({ mass: 1, length: 2 }),
    'kg·m2',
    'mass',
    ladder('kg·m²'),
    ladder('lb·ft²'),
  ),
  secondMoment: row(
    'a second moment of area',
    dimension({ length: 4 }),
    'm4',
    'length',
    ladder('cm⁴'),
    ladder('in⁴'),
  ),
  sectionModulus: row(
    'a section modulus',
    dimension({ length: 3 }),
    'm3',
    'length',
    ladder('cm³'),
    ladder('in³'),
  ),
  displacement: row('a volume', dimension({ length: 3 }), 'm3', 'length', ladder('m³'), ladder('ft³')),
  lumber: row('a volume', dimension({ length: 3 }), 'm3', 'length', ladder('m³'), ladder('bd ft')),
  film: row('a thickness', dimension({ length: 1 }), 'm', 'length', ladder('µm'), ladder('thou')),
  curvature: row(
    'a number per length',
    dimension({ length: -1 }),
    '1/m',
    'length',
    ladder('/m'),
    ladder('/ft'),
  ),
  perLength: row(
    'a number per length',
    dimension({ length: -1 }),
    '1/m',
    'length',
    ladder('/m'),
    ladder('/ft'),
  ),
  perArea: row(
    'a number per area',
    dimension({ length: -2 }),
    '1/m2',
    'length',
    ladder('/m²'),
    ladder('/ft²'),
  ),
  spreadingRate: row(
    'an area per volume',
    dimension({ length: -1 }),
    '1/m',
    'length',
    ladder('m²/L'),
    ladder('ft²/gal'),
  ),
  wetRate: row(
    'a volume per area',
    dimension({ length: 1 }),
    'm',
    'length',
    ladder('mL/m²'),
    ladder('fl oz/ft²'),
  ),
  temperature: row('a temperature', dimension({ temperature: 1 }), 'K', 'length', ladder('°C'), ladder('°F')),
  warmth: row(
    'a difference of temperature',
    dimension({ temperature: 1 }),
    'K',
    'length',
    ladder('°C'),
    ladder('°F'),
  ),
  time: same('a time', dimension({ time: 1 }), 's', ladder('h', ...clock)),
  minutes: same('a time', dimension({ time: 1 }), 's', ladder('min', ...clock)),
  speed: same('a speed', dimension({ length: 1, time: -1 }), 'm/s', ladder('kn')),
  windSpeed: row(
    'a speed',
    dimension({ length: 1, time: -1 }),
    'm/s',
    'length',
    ladder('m/s'),
    ladder('mph'),
  ),
  acceleration: row(
    'an acceleration',
    dimension({ length: 1, time: -2 }),
    'm/s2',
    'length',
    ladder('m/s²'),
    ladder('ft/s²'),
  ),
  flow: row(
    'a volume per time',
    dimension({ length: 3, time: -1 }),
    'm3/s',
    'length',
    ladder('L/min'),
    ladder('gal/min'),
  ),
  power: row('a power', dimension({ mass: 1, length: 2, time: -3 }), 'W', 'mass', ladder('kW'), ladder('hp')),
  angle: same('an angle', dimension({ angle: 1 }), 'rad', ladder('°')),
  money: same('an amount of money', dimension({ money: 1 }), 'money', ladder('')),
  pricePerLength: row(
    'a price per length',
    dimension({ money: 1, length: -1 }),
    'money/m',
    'length',
    ladder('/m'),
    ladder('/ft'),
  ),
  pricePerArea: row(
    'a price per area',
    dimension({ money: 1, length: -2 }),
    'money/m2',
    'length',
    ladder('/m²'),
    ladder('/ft²'),
  ),
  pricePerVolume: row(
    'a price per volume',
    dimension({ money: 1, length: -3 }),
    'money/m3',
    'length',
    ladder('/L'),
    ladder('/gal'),
  ),
  pricePerMass: row(
    'a price per mass',
    dimension({ money: 1, mass: -1 }),
    'money/kg',
    'mass',
    ladder('/kg'),
    ladder('/lb'),
  ),
  ratio: same('a ratio', plain, '1', one),
  slope: same('a slope', plain, '1', one),
  share: same('a share', plain, '1', ladder('%')),
  count: same('a count', plain, '1', one),
  choice: same('a choice', plain, '', one),
} satisfies Record<string, Row>;

export type KindId = keyof typeof rows;

/** Every kind, in the order of the table. */
export const kinds: readonly Kind[] = Object.entries(rows).map(([id, rest]) => ({
  id: id as KindId,
  ...rest,
}));

const byId = new Map(kinds.map((kind) => [kind.id, kind]));

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
