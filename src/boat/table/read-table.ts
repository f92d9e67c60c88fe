/** Reads a table of offsets from a file, and says where its form is not a table's. */
import * as v from 'valibot';
import { sentences } from './file-faults';
import {
  AXES,
  LONGEST_NAME,
  LONGEST_NOTE,
  MOST_EDGES,
  MOST_STATIONS,
  type Table,
  type TablePoint,
  type TableStation,
  type TableUnit,
  tableUnits,
  type Unread,
} from './table';

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
