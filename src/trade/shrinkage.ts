/**
 * How far wood moves with its moisture, across the grain: the shrinkage from green to oven dry, and the part
 * of a width by which it changes for each per cent of moisture, along the rings (flat-sawn width) and across
 * them (quarter-sawn width). Its quantities stand beside those of `timber`, whose woods these are.
 */
import type { Cited, Known, TradeRow, TradeTable } from './table';
import { timber } from './timber';

export type ShrinkageColumn = 'shrinkRadial' | 'shrinkTangential' | 'moveRadial' | 'moveTangential';

const HANDBOOK = 'Wood Handbook, USDA FPL-GTR-190 (2010)';
const DOMESTIC = `${HANDBOOK}, Table 4-3, green to oven dry`;
const IMPORTED = `${HANDBOOK}, Table 4-4, green to oven dry`;
const MOVEMENT = `${HANDBOOK}, Table 13-5, from 6 to 14 % moisture`;

type Pair = readonly [radial: number, tangential: number, knownRadial: Known, knownTangential?: Known];

const read = 'published';
const memory = 'from memory';

/** Per cent. */
const domestic: Readonly<Record<string, Pair>> = {
  douglasFirCoast: [4.8, 7.6, read],
  douglasFirInterior: [4.8, 7.5, read],
  portOrfordCedar: [4.6, 6.9, read],
  yellowCedar: [2.8, 6.0, read],
  westernRedCedar: [2.4, 5.0, read],
  northernWhiteCedar: [2.2, 4.9, read],
  whiteAsh: [4.9, 7.8, read],
  whiteOak: [5.6, 10.5, read],
  redOak: [4.0, 8.6, memory],
  westernLarch: [4.5, 9.1, memory, read],
  sitkaSpruce: [4.3, 7.5, memory],
  easternWhitePine: [2.1, 6.1, memory],
  westernWhitePine: [4.1, 7.4, memory],
  ponderosaPine: [3.9, 6.2, memory],
  loblollyPine: [4.8, 7.4, memory],
  shortleafPine: [4.6, 7.7, memory],
  longleafPine: [5.1, 7.5, memory],
  slashPine: [5.4, 7.6, memory],
  baldcypress: [3.8, 6.2, memory],
};

/** Per cent. */
const imported: Readonly<Record<string, Pair>> = {
  africanMahogany: [2.5, 4.5, read],
  trueMahogany: [3.0, 4.1, read],
  okoume: [4.1, 6.1, memory],
  spanishCedar: [4.2, 6.3, memory],
  teak: [2.5, 5.8, memory],
  iroko: [2.8, 3.8, memory],
};

/** Part of the width for each per cent of moisture. */
const movement: Readonly<Record<string, Pair>> = {
  douglasFirCoast: [0.00165, 0.00267, memory, read],
  westernLarch: [0.00155, 0.00323, memory],
  sitkaSpruce: [0.00148, 0.00263, memory],
  portOrfordCedar: [0.00158, 0.00241, memory],
  yellowCedar: [0.00095, 0.00208, memory],
  westernRedCedar: [0.00111, 0.00234, memory],
  easternWhitePine: [0.00071, 0.00212, read],
  westernWhitePine: [0.00141, 0.00259, memory],
  ponderosaPine: [0.00133, 0.00216, memory],
  loblollyPine: [0.00165, 0.00259, memory],
  longleafPine: [0.00176, 0.00263, memory],
  whiteAsh: [0.00169, 0.00274, read],
  whiteOak: [0.0018, 0.00365, read],
  redOak: [0.00158, 0.00369, read],
  trueMahogany: [0.00172, 0.00238, read],
};

/** A wood of which no figure of its own is known: a hundredth of the width for each 4 % of moisture. */
const anyWood: Cited = {
  value: 0.0025,
  source:
    'no figure of this wood is at hand; any wood moves about 1 % for each 4 % of moisture, either way across the grain: American Wood Council, answer to “Where can I find information on wood shrinkage?”',
  known: 'published',
};

/** The same down from fibre saturation to nothing. */
const anyShrinkage: Cited = {
  value: 0.075,
  source: `30 % of moisture at 1 % for each 4 %; ${anyWood.source}`,
  known: 'calculated',
};

/** In the plane of the sheet, for each per cent of moisture. */
export const plywoodMovement: Cited = {
  value: 0.0002,
  source: `${HANDBOOK}, ch. 12, as quoted: swelling in the plane of the sheet`,
  known: 'published',
};

/**
 * The part of a width for each per cent of moisture, about 10 %, from the shrinkage green to oven dry.
 *
 * @param shrinkage as a share: 0.076
 */
export const movementFromShrinkage = (shrinkage: number): number => 1 / (30 / shrinkage - 30 + 10);

const FORMULA = `${HANDBOOK}, eq. 13-3, from memory: 1 over (30 x 100 / S - 30 + 10)`;

const cited = (value: number, source: string, known: Known): Cited => ({ value, source, known });

function both(pair: Pair | undefined, unit: number, source: string): readonly [Cited, Cited] | null {
  if (!pair) return null;
  const [radial, tangential, knownRadial, knownTangential = knownRadial] = pair;
  return [cited(radial * unit, source, knownRadial), cited(tangential * unit, source, knownTangential)];
}

function rowOf(id: string, label: string): TradeRow<ShrinkageColumn> {
  const shrinks = both(domestic[id], 0.01, DOMESTIC) ?? both(imported[id], 0.01, IMPORTED);
  const moves =
    both(movement[id], 1, MOVEMENT) ??
    shrinks?.map(({ value, source, known }) =>
      cited(
        movementFromShrinkage(value),
        `${FORMULA}; S = ${Number((value * 100).toFixed(1))} %, ${known === 'published' ? source : `${known}: ${source}`}`,
        'calculated',
      ),
    );
  return {
    id,
    label,
    cells: {
      shrinkRadial: shrinks?.[0] ?? anyShrinkage,
      shrinkTangential: shrinks?.[1] ?? anyShrinkage,
      moveRadial: moves?.[0] ?? anyWood,
      moveTangential: moves?.[1] ?? anyWood,
    },
  };
}

export const shrinkage: TradeTable<ShrinkageColumn> = {
  id: 'timber',
  columns: {
    shrinkRadial: { kind: 'share', meaning: 'shrinkage across the rings, green to oven dry,' },
    shrinkTangential: { kind: 'share', meaning: 'shrinkage along the rings, green to oven dry,' },
    moveRadial: { kind: 'ratio', meaning: 'part of a quarter-sawn width moved for each 1 % of moisture' },
    moveTangential: { kind: 'ratio', meaning: 'part of a flat-sawn width moved for each 1 % of moisture' },
  },
  rows: timber.rows.map(({ id, label }) => rowOf(id, label)),
};
