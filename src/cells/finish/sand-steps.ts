/** The working of the sanding: the grits in order, how many pieces of each, the dust and the air. */
import { discReach, dustLimits, greenTimes, grits, masks, sanders, sandings } from '../../trade/grits';
import { citation, look } from '../../trade/table';
import { type CellFunction, type ListRow, step, type ValuesOf } from '../form/define';
import { fact, tell } from '../form/fact';
import type { sandInputs } from './sand-inputs';
import { GEOMETRY } from '../../trade/sources';

type Asked = ValuesOf<typeof sandInputs>;

const AS_LISTED = 'the order of grits by custom: common practice, no source; 80 on epoxy, makers’ sheets';
const PURGE =
  'air changed all through: what is in it falls by e with each change (MMWR 28 October 1994, S3-1)';

/** `sander == "disc5" ? 0.012 m^2 : …`, the last without a condition. */
const paperArea = sanders.slice(0, -1).reduceRight(
  (rest, { id, area }) => `sander == "${id}" ? ${area} m^2 : ${rest}`,
  `${sanders.at(-1)!.area} m^2`, // the list has four
);

const order = fact(
  AS_LISTED,
  AS_LISTED,
  ({ work }: Asked): readonly number[] => sandings.find(({ id }) => id === work)!.grits,
);

const TABLES = citation(look(grits, 'grit80', 'fepa')!); // the table has it

/** Median grain of the grade nearest to a grit, by how the paper is marked. */
const grainOf = (marked: 'fepa' | 'cami', words: string): CellFunction => ({
  takes: ['count'],
  gives: 'film',
  how: `median grain of the nearest grade of paper ${words}`,
  run: (grit = 0) =>
    grits.rows.reduce((best, row) =>
      Math.abs(Number(row.label) - grit) < Math.abs(Number(best.label) - grit) ? row : best,
    ).cells[marked]!.value, // every row has both
});

export const sandFunctions = {
  grainMarkedP: grainOf('fepa', 'marked P'),
  grainPlain: grainOf('cami', 'with the plain number'),
} satisfies Readonly<Record<string, CellFunction>>;

export const gritRows = fact(AS_LISTED, AS_LISTED, (_: Asked, { ask }) =>
  ask(order).map((grit): ListRow => ({ id: `grit${grit}`, label: `${grit} grit`, value: grit })),
);

/** Grit and grain, m, of every grade, and those in use. */
export const gradesOf = fact('as the tables print them', TABLES, ({ marked }: Asked, { ask }) =>
  grits.rows.map((row) => ({
    grit: Number(row.label),
    grain: row.cells[marked]!.value, // every row has both
    isUsed: ask(order).includes(Number(row.label)),
  })),
);

export const sandSteps = {
  grits: tell(order, 'count', 'grits, one after another', (list) => list.length),
  sequence: tell(order, 'choice', 'the grits in order', (list) => list.join(', ')),
  finest: tell(order, 'count', 'the last of them', (list) => list.at(-1)!), // no list is empty
  grain: step(
    'film',
    'marked == "fepa" ? grainMarkedP(grit) : grainPlain(grit)',
    'median grain of the grade nearest to the grit looked at',
    TABLES,
  ),
  paper: step('area', paperArea, 'face of one piece of paper', GEOMETRY),
  usualReach: step(
    'area',
    `${discReach.value} m^2 * paper / (${sanders[0].area} m^2)`,
    'face that one piece does before it is dull',
    'common practice, no source: 0.75 m² (8 ft²) to a disc of 125 mm (5 in); others by their size',
  ),
  face: step('area', 'area * times', 'face to sand, each time over', GEOMETRY),
  perGrit: step(
    'count',
    `face > 0 m^2 ? ceil((state == "soft" ? ${greenTimes.value} : 1) * face / reach - 0.000001) : 0`,
    'pieces of each grit; twice as many on soft or greasy epoxy',
    'common practice, no source',
  ),
  pieces: step('count', 'grits * perGrit', 'pieces in all', GEOMETRY),
  usualTime: step(
    'time',
    'max(0.1 h, face * grits * 0.25 h / (1 m^2))',
    'time for it, a quarter of an hour to 1 m² (11 ft²) and grit',
    'common practice, no source: try it with a watch',
  ),
  solid: step('volume', 'face * grits * takenOff', 'what comes off', GEOMETRY),
  dust: step('mass', 'solid * density', 'dust', GEOMETRY),
  heap: step('volume', 'dust / bulk', 'dust as it lies, loose', GEOMETRY),
  limit: step(
    'density',
    `work == "wood" ? ${dustLimits.wood.value} kg/m^3 : ${dustLimits.glass.value} kg/m^3`,
    'most dust in the air over eight hours',
    `${dustLimits.wood.source}; ${dustLimits.glass.source}`,
    'most',
  ),
  over: step(
    'ratio',
    'dust * escapes / lasts / (room * changes / (1 h)) / limit',
    'dust in the air of the shop, against that limit',
    'steady source in a room whose air is changed',
  ),
  mask: step(
    'ratio',
    `over <= ${masks.disposable.value} ? ${masks.disposable.value} : ${masks.fullFace.value}`,
    'by how many times the mask thins it',
    `${citation(masks.disposable)}; ${citation(masks.fullFace)}`,
  ),
  clears: step(
    'time',
    'ln(100) / changes * 1 h',
    'time until a hundredth of the dust is left in the air',
    PURGE,
  ),
} as const;
