// A drawing as data in true millimetres, set out without collisions, written as SVG.

export { collisions, textSlab } from './set-out/collisions';
export type { Collision } from './set-out/collisions';
export {
  angleDim,
  arc,
  arrow,
  breakLine,
  centreLine,
  circle,
  dim,
  drawing,
  hatch,
  label,
  line,
  mark,
  mm,
  note,
  radiusDim,
  rect,
  rectHatch,
} from './drawing';
export { barsOverDays } from './days';
export type { DayBar } from './days';
export { drawingStyle } from './style';
export { extents, flatten } from './flatten';
export { overlay } from './overlay';
export type { OverlayNames } from './overlay';
export { linesPlan, thumbnail, view } from './project';
export type { SpaceLine, View } from './project';
export type { ScaleUnits } from './set-out/scale-bar';
export { LEAST_TEXT, setOut } from './set-out/set-out';
export type { SetOut } from './set-out/set-out';
export type * from './shapes';
export type { KeyLine, Placed, PlacedPath, PlacedText, Sheet } from './set-out/sheet';
export { PX_PER_MM, svgTree } from './export/svg';
export type { SvgNode } from './export/svg';
export { textWidth } from './set-out/text-size';
