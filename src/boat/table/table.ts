/**
 * The table of offsets as a plan or a boat file gives it: numbers in the plan's unit, names in the
 * builder's words. A number that is still missing is null. The axes are those of hull.ts.
 */
import { FOOT, INCH } from '../../measure/si';
import * as v from 'valibot';
import { sentences } from './file-faults';

/** Units a table may be written in, in metres. */
export const tableUnits = { mm: 0.001, cm: 0.01, m: 1, in: INCH, ft: FOOT } as const;
export type TableUnit = keyof typeof tableUnits;

/** The face of the skin that offsets are measured to. */
export type Face = 'outside of skin' | 'inside of skin';

export const AXES = 'x forward from the after end of the bottom, y half-breadth, z height above base';

export const MOST_STATIONS = 40;
export const MOST_EDGES = 8;
export const LONGEST_NAME = 40;
const LONGEST_NOTE = 2000;

export interface TablePoint {
  readonly x: number | null;
  readonly y: number | null;
  readonly z: number | null;
}

export interface TableStation {
  readonly name: string;
  /** One point an edge, in the order of the table's edges. */
  readonly points: readonly TablePoint[];
}

export interface Table {
  readonly name: string;
  readonly note: string;
  readonly unit: TableUnit;
  readonly offsetsTo: Face;
  /** From the keel outward and up to the sheer. */
  readonly edges: readonly string[];
  /** From aft forward. */
  readonly stations: readonly TableStation[];
}

/** What could not be read, as sentences that say where. */
export interface Unread {
  readonly faults: readonly string[];
}

export function isUnread(read: object): read is Unread {
  return 'faults' in read;
}

const text = (longest: number) =>
  v.pipe(v.string('must be a text'), v.maxLength(longest, `must be at most ${longest} letters long`));
const nameText = v.pipe(text(LONGEST_NAME), v.trim(), v.nonEmpty('must not be empty'));
const measure = v.optional(
  v.nullable(v.pipe(v.number('must be a number'), v.finite('must be a finite number'))),
  null,
);
const point = v.object({ x: measure, y: measure, z: measure }, 'must hold x, y and z');
const unit = v.picklist(
  Object.keys(tableUnits) as TableUnit[],
  `must be one of ${Object.keys(tableUnits).join(', ')}`,
);

const fields = v.object(
  {
    name: nameText,
    note: v.optional(text(LONGEST_NOTE), ''),
    unit,
    axes: v.optional(v.literal(AXES, `can only be "${AXES}"`)),
    offsetsTo: v.picklist(
      ['outside of skin', 'inside of skin'],
      'must be "outside of skin" or "inside of skin"',
    ),
    edges: v.pipe(
      v.array(nameText, 'must be a list of names'),
      v.maxLength(MOST_EDGES, `must list at most ${MOST_EDGES} edges`),
      v.checkItems((name, i, all) => all.indexOf(name) === i, 'stands in the list twice'),
      v.checkItems((name) => name !== 'name', 'can not be called "name"'),
    ),
    stations: v.pipe(
      v.array(
        v.looseObject({ name: nameText }, 'must hold a name and a point for each edge'),
        'must be a list',
      ),
      v.maxLength(MOST_STATIONS, `must list at most ${MOST_STATIONS} stations`),
    ),
  },
  'must be an object',
);

/**
 * The form of a table in a file: `hull` of a boat file, or a starter. In a station each edge stands
 * under its own name, so the points are checked against the list of edges.
 */
export const tableSchema = v.pipe(
  fields,
  v.rawTransform(({ dataset, addIssue }): Table => {
    const { name, note, unit, offsetsTo, edges, stations } = dataset.value;
    const readStation = (station: (typeof stations)[number], index: number): TableStation => {
      const blame = (key: string, message: string) =>
        addIssue({
          message,
          path: [
            { type: 'object', origin: 'value', input: dataset.value, key: 'stations', value: stations },
            { type: 'array', origin: 'value', input: stations, key: index, value: station },
            { type: 'object', origin: 'value', input: station, key, value: station[key] },
          ],
        });
      for (const key of Object.keys(station)) {
        if (key !== 'name' && !edges.includes(key)) blame(key, 'is not one of the edges');
      }
      const points = edges.map((edge): TablePoint => {
        const read = v.safeParse(point, Object.hasOwn(station, edge) ? station[edge] : {});
        if (read.success) return read.output;
        blame(
          edge,
          v.getDotPath(read.issues[0]) === null
            ? read.issues[0].message
            : `${v.getDotPath(read.issues[0])} ${read.issues[0].message}`,
        );
        return { x: null, y: null, z: null };
      });
      return { name: station.name, points };
    };
    return { name, note, unit, offsetsTo, edges, stations: stations.map(readStation) };
  }),
);

/** Checks the form of a table of offsets; its numbers are checked by offsets.ts. */
export function readTable(json: unknown): Table | Unread {
  const read = v.safeParse(tableSchema, json);
  return read.success ? read.output : { faults: sentences(read.issues) };
}

/** The table as it stands in a file; reading it again gives the same table. */
export function writeTable(table: Table): Record<string, unknown> {
  return {
    name: table.name,
    ...(table.note === '' ? {} : { note: table.note }),
    unit: table.unit,
    axes: AXES,
    offsetsTo: table.offsetsTo,
    edges: [...table.edges],
    stations: table.stations.map((station) => ({
      name: station.name,
      ...Object.fromEntries(table.edges.map((edge, i) => [edge, { ...station.points[i] }])),
    })),
  };
}
