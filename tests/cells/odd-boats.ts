/** Boats that no starter is: one without a chine, one with two. Made from starters, so that they are fair. */
import { isUnread, readTable, starter, type Table, type TablePoint } from '../../src/boat';

/** Keel and sheer only, one panel a side. */
export const withoutChines = remade('ferry-dory', ['keel', 'sheer'], ([keel, , sheer]) => [keel, sheer]);

/** A bilge between bottom and side: the lower chine stands out from the line between keel and chine. */
export const withTwoChines = remade(
  'vee-launch',
  ['keel', 'lower chine', 'upper chine', 'sheer'],
  ([keel, chine, sheer]) => [keel, between(keel, chine, 0.6, 0.45), chine, sheer],
);

/** Edges that her builder calls by other names than keel, chine and sheer. */
export const withOtherNames = remade('ferry-dory', ['rabbet', 'knuckle', 'gunwale'], (corners) => corners);

/** The third frame raked forward by its sheer, by so many mm. */
export const leaningBy = (lean: number, table = withOtherNames): Table => ({
  ...table,
  stations: table.stations.map((station, i) =>
    i === 3
      ? {
          ...station,
          points: station.points.map((point, e) => (e === 2 ? { ...point, x: point.x! + lean } : point)),
        }
      : station,
  ),
});
export const withLeaningFrame = leaningBy(100);

type Corners = readonly [keel: TablePoint, chine: TablePoint, sheer: TablePoint];

function remade(id: string, edges: readonly string[], points: (of: Corners) => readonly TablePoint[]): Table {
  const table = starter(id);
  if (!table) throw new Error(`there is no starter ${id}`);
  const made = readTable({
    name: `${table.name}, ${edges.length} edges`,
    unit: table.unit,
    offsetsTo: table.offsetsTo,
    edges,
    stations: table.stations.map((station) => {
      const [keel, chine, sheer] = station.points;
      const at = points([keel!, chine!, sheer!]); // the starters have three edges
      return { name: station.name, ...Object.fromEntries(edges.map((edge, i) => [edge, at[i]])) };
    }),
  });
  if (isUnread(made)) throw new Error(made.faults.join('; '));
  return made;
}

/** A point `out` of the way across and `up` of the way up from one to the other. */
function between(a: TablePoint, b: TablePoint, out: number, up: number): TablePoint {
  const part = (from: number | null, to: number | null, share: number) => from! + share * (to! - from!);
  return { x: part(a.x, b.x, up), y: part(a.y, b.y, out), z: part(a.z, b.z, up) };
}
