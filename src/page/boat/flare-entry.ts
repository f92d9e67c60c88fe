/**
 * Flare follows from the offsets, so setting it writes the one offset that a builder would move: the
 * half-breadth of the panel's outer edge, as an entry over the other three. The angle typed stands in
 * that entry, so it is kept, undone and shared like any other.
 */
export interface FlareAt {
  readonly station: string;
  /** Edges of the panel. */
  readonly inner: string;
  readonly outer: string;
}

/** Name of the offset that is moved. */
export const movedBy = ({ station, outer }: FlareAt): string => `${station}.${outer}.halfBreadth`;

/** The entry of that offset for a flare as typed. */
export function flareEntry(at: FlareAt, flare: string): string {
  const [before, after] = around(at);
  return `${before}${flare}${after}`;
}

/** The flare typed, out of the offset's entry; null where the entry is not one that sets flare. */
export function flareIn(at: FlareAt, entry: string): string | null {
  const [before, after] = around(at);
  const fits =
    entry.startsWith(before) && entry.endsWith(after) && entry.length >= before.length + after.length;
  return fits ? entry.slice(before.length, entry.length - after.length) : null;
}

function around({ station, inner, outer }: FlareAt): [before: string, after: string] {
  const inside = `${station}.${inner}`;
  const outside = `${station}.${outer}`;
  return [`${inside}.halfBreadth + tan(`, `) * (${outside}.height - ${inside}.height)`];
}
