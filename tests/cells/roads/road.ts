/** A second road to a step of a cell: the same number from the same setting, reckoned otherwise than the cell does. */
import type { Hull } from '../../../src/boat';

/** One setting of a cell, with the values of all its steps. */
export interface Setting {
  /** The number under a key, SI. */
  readonly n: (key: string) => number;
  /** Whether a choice has one of these answers. */
  readonly is: (key: string, ...answers: readonly string[]) => boolean;
  readonly word: (key: string) => string;
  readonly hull: Hull;
  /** The same setting with other answers. */
  readonly rerun: (changes: Readonly<Record<string, number | string>>) => Setting;
}

/**
 * What the step must be; null where this road does not lead there. A number alone is held to a billionth, one with a
 * share beside it to that share of itself.
 */
export type Road = (setting: Setting) => number | string | readonly [value: number, within: number] | null;

export type Roads = Readonly<Record<string, Readonly<Record<string, Road>>>>;

export const MM = 1e-3;
export const INCH = 0.0254;
export const PSI = 6894.757_293_168_361;
export const GRAVITY = 9.806_65;
export const DEGREE = Math.PI / 180;
