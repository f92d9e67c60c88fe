/** What a cell's graph is made of. */
import type { KindId } from '../../measure';

/** A graph as data; the page draws it. Axes are in SI and written in the chosen units. */
export interface Chart {
  readonly title: string;
  /** Text alternative: the trend in a sentence. */
  readonly says: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly lines: readonly ChartLine[];
  /** Limits drawn across, each named on the line. */
  readonly limits?: readonly { readonly at: number; readonly axis: 'x' | 'y'; readonly label: string }[];
  /** Limits that move with what is below: drawn as curves. */
  readonly movingLimits?: readonly MovingLimit[];
  /** Points spoken of: the present setting, the tightest place. */
  readonly points?: readonly ChartPoint[];
  /** Where a line comes to a limit. */
  readonly crossings?: readonly ChartPoint[];
  /** Places below, each with a point on every line that has one there, that its table tells of; else it takes what fits. */
  readonly rows?: readonly number[];
}
export interface Axis {
  readonly label: string;
  readonly kind: KindId;
  /** Held steady while a slider moves. */
  readonly from?: number;
  readonly to?: number;
}
export interface ChartPoint {
  readonly x: number;
  readonly y: number;
  /** May be empty, where there is no room for so many. */
  readonly label: string;
}
export interface MovingLimit {
  readonly label: string;
  readonly points: ChartLine['points'];
  /** As a line's. */
  readonly begins?: readonly number[];
}
export interface ChartLine {
  readonly name: string;
  readonly points: readonly (readonly [x: number, y: number])[];
  /** 'line' joins points, 'steps' holds each value to the next, 'dots' leaves them apart. */
  readonly as?: 'line' | 'steps' | 'dots';
  /** Points, by their number, at which it begins anew: before them is a gap or a jump. */
  readonly begins?: readonly number[];
  /** What stands at its end, where lines are told apart by that. */
  readonly end?: string;
}
