/** Bodies whose form is known in closed form, closed by a lid. */
import { bridge, joined, mirrored, type Mesh, type Vec3 } from '../../../src/kernel';

/** A prism of one section, x from 0 to the length; the half section from keel to deck, port side. */
export function prism(length: number, half: readonly (readonly [y: number, z: number])[]): Mesh {
  const at = (x: number): Vec3[] => half.map(([y, z]) => [x, y, z]);
  const round = (x: number): Vec3[] => [
    ...at(x),
    ...at(x)
      .toReversed()
      .map(([a, y, z]): Vec3 => [a, -y, z]),
  ];
  const closed = (x: number): Vec3[] => [...round(x), ...round(x).slice(0, 1)];
  const middle = (points: readonly Vec3[]): Vec3[] => points.map(([x, , z]) => [x, 0, z]);
  // The ends are ruled between port and starboard.
  const after = bridge(at(0), middle(at(0)));
  const fore = bridge(middle(at(length)), at(length));
  return joined(bridge(closed(length), closed(0)), after, mirrored(after), fore, mirrored(fore));
}

/** y = (B/2) (1 - (2x/L)^2) (1 - (z/T)^2) below the water z = 0, wall-sided above it up to z = freeboard. */
export function wigley(
  n: number,
  { length, beam, draught }: { readonly length: number; readonly beam: number; readonly draught: number },
  freeboard = 0,
): Mesh {
  const waterline = (z: number): Vec3[] =>
    Array.from({ length: n + 1 }, (_, i) => {
      const x = -length / 2 + (length * i) / n;
      return [x, (beam / 2) * (1 - ((2 * x) / length) ** 2) * (1 - (Math.min(0, z) / draught) ** 2), z];
    });
  const levels = Array.from({ length: n + 1 }, (_, j) => (-draught * (n - j)) / n);
  const lines = (freeboard > 0 ? [...levels, freeboard] : levels).map(waterline);
  const side = joined(...lines.slice(1).map((line, j) => bridge(lines[j]!, line)));
  const deck = lines.at(-1)!;
  return joined(
    side,
    mirrored(side),
    bridge(
      deck,
      deck.map(([x, y, z]): Vec3 => [x, -y, z]),
    ),
  );
}
