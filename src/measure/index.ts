/** Measure: units, dimensions, and the reading and writing of what builders type. */
export { type Issue, isIssue, issue } from './issue';
export {
  type Base,
  type Dimension,
  dimension,
  over,
  plain,
  sameDimension,
  times,
  toPower,
} from './dimension';
export { type Kind, type KindId, kindOf, kinds, type Ladder, sayDimension } from './kinds';
export { plainShown, type Shown, shownUnit } from './shown';
export { nameOf, nearestNames, unknownName, upToComma, wordsOf, wrongSort } from './names';
export { type Expression, longestEntry, read, type Reading, type ReadOptions } from './read';
export { callByNumber, putUp, type SizesSold, shelfOf, type SoldSize } from './sold';
export { inchText, inchTwin } from './twin';
export type { Bound } from './figures';
export { marksWithin, putBefore } from './tape';
export {
  type Manner,
  unitWritten,
  write,
  writeDifference,
  writeExact,
  writeInPicture,
  type WriteOptions,
  type Written,
} from './write';
export { type Formula, formula, type FormulaFunction, longestFormula } from './formula';
export { type MathNode, mathOf, type Print } from './mathml';
export type { DimensionOf } from './sorts';
