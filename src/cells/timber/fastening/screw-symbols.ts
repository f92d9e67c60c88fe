/**
 * How the screws of a joint are shown so that no symbol lies on another at any scale: each one once, where it
 * stands, in its true size; a small cross where its row had it only where that touches nothing. All in m.
 */
import type { FrameScrew } from '../../../boat/joinery/frame-screws';
import { distance2, distanceToSide, type Vec2 } from '../../../kernel';

/** A screw that stands, with its number in the table. */
export interface NumberedScrew extends FrameScrew {
  readonly number: number;
  readonly at: Vec2;
}

export interface ScrewRow {
  /** In the order of their distance along the member. */
  readonly screws: readonly NumberedScrew[];
}

/** Where a screw was to stand. Its arms reach as far as `reach`. */
export interface ScrewCross {
  readonly at: Vec2;
  readonly reach: number;
  /** The screw that was moved from here; null where it was left out. */
  readonly of: NumberedScrew | null;
}

/** Rows are told apart by their distance from the member's edge, m. */
const SAME_ROW = 1e-4;
/** So many screws are all numbered at their places; in longer rows the ends and each fifth. */
const ALL_NUMBERED = 14;
const EACH = 5;
/** Arms of the crosses, and what is left free between two symbols, in radii of a head. */
const LEFT_OUT = 1;
const WAS = 0.6;
const FREE = 0.5;

/** The rows as the layout had them, a member's together, from its edge inward. */
export function screwRows(screws: readonly FrameScrew[]): readonly ScrewRow[] {
  const rows = new Map<string, NumberedScrew[]>();
  const standing = screws.flatMap((screw) => (screw.at ? [{ ...screw, at: screw.at }] : []));
  for (const [i, screw] of standing.entries()) {
    const { member, wanted } = screw;
    const row = `${member.panel.name} ${Math.round(offEdge(member, wanted) / SAME_ROW)}`;
    rows.set(row, [...(rows.get(row) ?? []), { ...screw, number: i + 1 }]);
  }
  return [...rows.values()]
    .map((row) => ({ screws: row }))
    .toSorted((a, b) => byMember(standing, a, b) || depthOf(a) - depthOf(b));
}

const offEdge = ({ inner, inward }: FrameScrew['member'], at: Vec2) =>
  (at[0] - inner[0]) * inward[0] + (at[1] - inner[1]) * inward[1];

const depthOf = ({ screws: [first] }: ScrewRow) => offEdge(first!.member, first!.wanted); // a row has a screw

function byMember(standing: readonly FrameScrew[], a: ScrewRow, b: ScrewRow): number {
  const first = ({ screws }: ScrewRow) => standing.findIndex(({ member }) => member === screws[0]!.member); // a row has a screw
  return first(a) - first(b);
}

/** Those that have their number at their place; the others are found by counting along the line of their row. */
export function numberedAtPlace(rows: readonly ScrewRow[]): readonly NumberedScrew[] {
  const count = rows.reduce((sum, { screws }) => sum + screws.length, 0);
  if (count <= ALL_NUMBERED) return rows.flatMap(({ screws }) => screws);
  return rows.flatMap(({ screws }) =>
    screws.filter((_, i) => i === 0 || i === screws.length - 1 || (i + 1) % EACH === 0),
  );
}

/** Which screws stand in which row, by their numbers; empty where each has its own at its place. */
export function rowsInWords(rows: readonly ScrewRow[]): string {
  const count = rows.reduce((sum, { screws }) => sum + screws.length, 0);
  if (count <= ALL_NUMBERED) return '';
  const said = rows.map(({ screws }) => inRuns(screws.map(({ number }) => number)));
  return `Numbers along each row: ${said.join('; ')}.`;
}

/** 1 to 9, where they follow one another; else each. */
function inRuns(numbers: readonly number[]): string {
  const [first, last] = [numbers[0]!, numbers.at(-1)!]; // a row has a screw
  const follow = last - first === numbers.length - 1;
  return follow && numbers.length > 2 ? `${first} to ${last}` : numbers.join(', ');
}

/** The line that ties a row together, from head to head, clear of the heads themselves. */
export const rowLines = (rows: readonly ScrewRow[], radius: number): readonly (readonly [Vec2, Vec2])[] =>
  rows.flatMap(({ screws }) =>
    screws.slice(1).flatMap(({ at }, i) => {
      const tie = between(screws[i]!.at, at, radius, radius);
      return tie ? [tie] : [];
    }),
  );

/** As much of a line as is left when its ends are cut back; null where nothing is. */
export function between(from: Vec2, to: Vec2, back: number, ahead: number): readonly [Vec2, Vec2] | null {
  const length = distance2(from, to);
  if (length <= back + ahead) return null;
  const on = (run: number): Vec2 => [
    from[0] + (run / length) * (to[0] - from[0]),
    from[1] + (run / length) * (to[1] - from[1]),
  ];
  return [on(back), on(length - ahead)];
}

/**
 * Crosses that touch no head, no other cross and no line from a cross to its screw: first of those left out,
 * then of those moved.
 *
 * @param radius of a head, m
 */
export function crossesOf(screws: readonly FrameScrew[], radius: number): readonly ScrewCross[] {
  const standing = screwRows(screws).flatMap((row) => row.screws);
  const lost = screws
    .filter(({ at }) => !at)
    .map(({ wanted }): ScrewCross => ({ at: wanted, reach: LEFT_OUT * radius, of: null }));
  const was = standing
    .filter(({ clash }) => clash !== '')
    .map((of): ScrewCross => ({ at: of.wanted, reach: WAS * radius, of }));
  const free = FREE * radius;
  const shown: ScrewCross[] = [];
  for (const cross of [...lost, ...was]) {
    const clearOfHeads = standing.every(
      (screw) =>
        distance2(screw.at, cross.at) >= radius + cross.reach + free &&
        (cross.of === null || screw.number === cross.of.number || offLink(cross, screw.at) >= radius + free),
    );
    const clearOfCrosses = shown.every(
      (other) =>
        offLink(cross, other.at) >= other.reach + cross.reach + free &&
        offLink(other, cross.at) >= other.reach + cross.reach + free,
    );
    if (clearOfHeads && clearOfCrosses) shown.push(cross);
  }
  return shown;
}

/** From a place to the line that a screw was moved along. */
const offLink = ({ at, of }: ScrewCross, place: Vec2): number =>
  of ? distanceToSide(at, of.at, place) : distance2(at, place);
