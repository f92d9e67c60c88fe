/**
 * The boat: offsets, the hull drawn from them, its parts, and the quantities they offer. What only a few cells
 * need is fetched with them and imported from its own file: frame-outline, frame-pieces, transom-shape.
 */
export { type AsBuilt, builtEntries, type CutPart, nothingBuilt, partOf } from './as-built';
export { attempt } from './attempt';
export { type Boat, readBoatFile, writeBoatFile } from './file/boat-file';
export { type Log, type LogEntry, logForm, tooMuch } from './file/log';
export {
  type Lesson,
  type Lessons,
  lessonsForm,
  LONGEST_SAID,
  LONGEST_SEED,
  MOST_GUESSES,
  noLesson,
  nothingSaid,
  type SaidTo,
  tooMuchSaid,
} from './file/lessons';
export { type SweepAsk, type Sweeps, sweepsForm } from './file/sweeps';
export { underPresentNames } from './file/renamed';
export type { Edge, EdgeBend, EdgePlace, Slopes } from './hull/edge';
export { buildHull, endWith, type Hull, postLine } from './hull/hull';
export { type Ends, endsOf, plannedEnds } from './hull/ends';
export { type BoatLists, type Layout, layoutOf, lists } from './quantities/lists';
export type { Named } from './table/named';
export { quantityName, tradeTables } from './table/names';
export type { OwnNotebook, OwnNotebooks } from './file/own-notebooks';
export { type Fault, offsetFaults } from './table/offset-faults';
export { type Column, columns, offsetName, type OffsetPoint, type Offsets, offsetsOf } from './table/offsets';
export { type Owner, ownerOf } from './quantities/owner';
export type { Panel } from './hull/panel';
export { breadthAt } from './hull/breadth';
export * from './joinery/parts';
export { type BoatQuantities, boatQuantities } from './quantities/quantities';
export {
  type Declared,
  countsNow,
  type Derived,
  type Found,
  type Given,
  type Option,
  type Quantity,
  type Read,
  type Value,
} from './quantities/quantity';
export { type Starter, starter, starters } from './starters';
export { demoBoat } from './starters/demo';
export { partKinds } from './quantities/scantlings';
export { shopGroups } from './quantities/shop';
export { usualDraught } from './quantities/draught';
export { isPost, type Role, type Station } from './hull/station';
export type { StationPlane } from './hull/station-plane';
export { readTable } from './table/read-table';
export {
  type Face,
  isUnread,
  MOST_EDGES,
  MOST_STATIONS,
  type Table,
  type TablePoint,
  type TableStation,
  type TableUnit,
  tableUnits,
  type Unread,
  writeTable,
} from './table/table';
