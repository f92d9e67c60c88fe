/** How tight plywood bends cold: two published tables, of common panels and of picked ones. */
import { FOOT, INCH } from '../measure/si';

/** Whether the face grain runs along the curve or lies across it, parallel to the axis of the bend. */
export type Grain = 'along' | 'across';

/** Bent cold as it comes, or soaked in hot water before. */
export type Wetness = 'dry' | 'soaked';

/** A row as printed: the panel, then its least radius for each way of the grain. */
type Row = Readonly<Record<Grain, number>> & { readonly thickness: number };

const rows = (printed: readonly (readonly [number, number, number])[], unit: number): readonly Row[] =>
  printed.map(([thickness, across, along]) => ({
    thickness: thickness * INCH,
    across: across * unit,
    along: along * unit,
  }));

export const FORM_PANELS = 'APA concrete-form panel table, Douglas-fir, dry';
/** A least radius, m, and how the panel lies to the table that it is from. */
export interface LeastRadius {
  readonly radius: number;
  /** Thinner than its first row: that row's radius, and the panel takes a tighter one. Thicker than its last: the least it needs. */
  readonly panel: 'in the table' | 'thinner' | 'thicker';
}

/** Common panels: inches, feet. */
const formPanels = rows(
  [
    [1 / 4, 2, 5],
    [5 / 16, 2, 6],
    [3 / 8, 3, 8],
    [1 / 2, 6, 12],
    [5 / 8, 8, 16],
    [3 / 4, 12, 20],
  ],
  FOOT,
);

/**
 * Least radius that a common panel takes dry and cold.
 *
 * @param thickness of the panel, m
 * @returns between the rows, 1/4 to 3/4 in, straight over the logarithm of the thickness: thick panels are held to half
 *   the strain of thin ones, so no row is scaled to another thickness; outside them the radius of the nearest row
 * Source: APA concrete-form panel table (radii for mill-run panels: now and then one cracks; selected, wetted or
 * steamed panels go tighter, APA TT-003).
 */
export const leastBendRadius = (thickness: number, grain: Grain): LeastRadius =>
  between(formPanels, thickness, grain);

export const AIRCRAFT_PANELS =
  'FAA AC 43.13-1B, aircraft plywood at 10 % moisture on a cold form, as reproduced';

/** Picked panels of aircraft grade: inches; grain lying up to 45° off the axis of the bend, and square to it. */
const aircraftPanels: Readonly<Record<Wetness, readonly Row[]>> = {
  dry: rows(
    [
      [0.07, 3.2, 5.2],
      [0.125, 7.1, 12],
      [0.16, 11, 17],
      [0.19, 14, 21],
      [0.25, 20, 31],
      [0.315, 28, 43],
      [0.375, 36, 54],
    ],
    INCH,
  ),
  soaked: rows(
    [
      [0.07, 0.4, 1.5],
      [0.125, 1.2, 3.8],
      [0.16, 2, 6],
      [0.19, 3, 7],
      [0.25, 5, 12],
      [0.315, 7, 16],
      [0.375, 10, 21],
    ],
    INCH,
  ),
};

/**
 * Least radius that a picked panel of aircraft grade takes.
 *
 * @param thickness of the panel, m
 * @returns between the rows, 0.070 to 0.375 in, as of a common panel; outside them the radius of the nearest row
 * Source: FAA AC 43.13-1B, minimum recommended bend radii for aircraft plywood, as reproduced.
 */
export const pickedBendRadius = (thickness: number, grain: Grain, wetness: Wetness): LeastRadius =>
  between(aircraftPanels[wetness], thickness, grain);

/** A thickness written in mm may miss the printed row by a rounding. */
const SLACK = 1e-9;

function between(table: readonly Row[], thickness: number, grain: Grain): LeastRadius {
  const [first, last] = [table[0]!, table.at(-1)!]; // a table has rows
  if (thickness < first.thickness * (1 - SLACK)) return { radius: first[grain], panel: 'thinner' };
  if (thickness > last.thickness * (1 + SLACK)) return { radius: last[grain], panel: 'thicker' };
  const after = Math.max(
    1,
    table.findIndex((row) => thickness <= row.thickness * (1 + SLACK)),
  );
  const [low, high] = [table[after - 1]!, table[after]!];
  const share = Math.log(thickness / low.thickness) / Math.log(high.thickness / low.thickness);
  const held = Math.min(1, Math.max(0, share));
  return { radius: low[grain] + held * (high[grain] - low[grain]), panel: 'in the table' };
}
