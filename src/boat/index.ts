/**
 * The boat: offsets, the hull drawn from them, its parts, and the quantities they offer. What only a few cells
 * need is fetched with them and imported from its own file: frame-outline, frame-pieces, transom-shape.
 */
export { type AsBuilt, builtEntries, type CutPart, nothingBuilt, partOf } from './as-built';
export { attempt } from './attempt';
export { type Boat, readBoatFile, writeBoatFile } from './boat-file';
export { underPresentNames } from './renamed';
export type { Edge, EdgeBend, EdgePlace, Slopes } from './edge';
export { buildHull, endWith, type Hull, postLine } from './hull';
export { type Ends, endsOf, plannedEnds } from './ends';
export { type BoatLists, type Layout, layoutOf, lists } from './lists';
export type { Named } from './named';
export { quantityName } from './names';
export { offsetName } from './offset-entries';
export {
  type Column,
  columns,
  type Fault,
  offsetFaults,
  type OffsetPoint,
  type Offsets,
  offsetsOf,
} from './offsets';
export type { Panel } from './panel';
export { breadthAt } from './breadth';
export * from './parts';
export { type BoatQuantities, boatQuantities } from './quantities';
export type { Derived, Found, Given, Option, Quantity, Read, Value } from './quantity';
export { type Starter, starter, starters } from './starters';
export { demoBoat } from './starters/demo';
export { usualDraught } from './draught';
export { isPost, type Role, type Station } from './station';
export type { StationPlane } from './station-plane';
export {
  type Face,
  isUnread,
  MOST_EDGES,
  MOST_STATIONS,
  readTable,
  type Table,
  type TablePoint,
  type TableStation,
  type TableUnit,
  tableUnits,
  type Unread,
  writeTable,
} from './table';
