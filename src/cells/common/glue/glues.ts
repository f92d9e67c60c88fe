/** The glues that a cell can be asked about, and what their table says of them, brought as quantities. */
import type { Derived, Option } from '../../../boat';
import { constantsOf } from '../../../boat/quantities/constants-of';
import { type AdhesiveColumn, adhesives, usualGlue } from '../../../trade/adhesives';
import { look } from '../../../trade/table';
import { input, type Source, type Warning } from '../../form/define';

export const glues: readonly Option[] = adhesives.rows.map(({ id, label }) => ({ id, label }));

const units = {
  length: ['mm', 1e3],
  pressure: ['kPa', 1e-3],
  minutes: ['min', 1 / 60],
  time: ['h', 1 / 3600],
  temperature: ['°C', 1],
  share: ['%', 100],
} as const;

/** What the sheet of the glue in hand says; until it is typed what the table has of its kind. */
export function ofGlue<K extends keyof typeof units>(
  kind: K,
  label: string,
  column: AdhesiveColumn,
  [min, max]: readonly [string, string],
) {
  const [unit, per] = units[kind];
  const value = look(adhesives, usualGlue, column)!.value - (kind === 'temperature' ? 273.15 : 0); // the row has all but spreads
  return input(kind, label, {
    from: `adhesive.{glue}.${column}`,
    preset: `${Number((value * per).toPrecision(6))} ${unit}`,
    bound: /^(most|wettest|shortest)/.test(column) ? 'most' : 'least',
    min,
    max,
    note: 'from the sheet of the glue in hand',
  });
}

const fromTable: readonly Derived[] = constantsOf(adhesives);

/** `adhesive.epoxy.leastPressure` and the like. */
export const glueQuantities = (): readonly Derived[] => fromTable;

/** A glue from this gap on fills it instead of asking for a tight joint: the table's kinds fall well apart here. */
export const FILLS = '1 mm';

/** Longer when it is colder, shorter when it is warmer, from figures at 20 °C. */
export const DOUBLING =
  'makers of epoxies: times double for each 10 K colder, halve for each 10 K warmer; for other glues common practice, no source';

export const OPEN_TIME = 'the glue’s shortest open time; common practice, the sheet rules';

/** Of a cell with the temperature of the `shop` and the glue's `coldest`. */
export const tooCold: Warning = {
  when: 'shop < coldest',
  says: 'At {shop} this glue may never cure: it asks for {coldest} at least, in the wood and until it is hard.',
  limit: 'the glue’s least temperature; common practice, the sheet rules',
  weight: 'stop',
};

export const glueSources: readonly Source[] = [
  {
    text: 'Gap, pressure, times, temperature, moisture and spread of each kind of glue: custom of the trade; the sheet of the glue in hand rules',
    known: 'common practice',
  },
  {
    text: 'Wood Handbook, USDA FPL-GTR-190 (2010), ch. 10: 0.7 MPa (100 psi) on light wood, up to 1.7 MPa (250 psi) on the densest',
    known: 'from memory',
  },
  {
    text: "A glue maker's advice: 100 to 150 psi (690 to 1030 kPa) on softwood, 175 to 250 psi (1200 to 1720 kPa) on hardwood",
    known: 'published',
  },
  {
    text: "Epoxy makers' sheets: pot life and cure double for each 10 K colder and halve for each 10 K warmer",
    known: 'published',
  },
];

const forWater = adhesives.rows.map(({ label, immersion }) => `${label} is for ${immersion}`).join('; ');

export const glueCautions: readonly string[] = [
  'Hardeners and isocyanates sensitise for life: gloves, sleeves and fresh air, and no glue on the skin.',
  "The maker's sheet of the glue in hand outranks every figure here: gap, pressure, open time, temperature, moisture of the wood, gloves and fresh air.",
  `Water, by common practice without a source: ${forWater}.`,
];
