/** A panel cut at its joints into pieces; laps included. */
import { leftOf } from '../../kernel/lying-outlines';
import type { Vec2 } from '../../kernel/vec';
import type { CutPanel, Spot } from './panel-spots';

/**
 * The pieces from aft forward, as they lie in the panel, anticlockwise.
 *
 * @param joints places of the joints in the panel's spots, from aft forward
 */
export function panelPieces(panel: CutPanel, joints: readonly number[]): readonly (readonly Vec2[])[] {
  return Array.from({ length: joints.length + 1 }, (_, i) => pieceBetween(panel, joints[i - 1], joints[i]));
}

/** The piece from one joint to the next, or to an end of the panel where there is none. */
export function pieceBetween(
  { outline, spots, lap }: CutPanel,
  aft: number | undefined,
  fore: number | undefined,
): readonly Vec2[] {
  const at = (joint: number) => spots[joint]!; // a layout is of the panel's own spots
  const forward = aft === undefined ? outline : behind(outline, moved(at(aft), -lap / 2), false);
  return fore === undefined ? forward : behind(forward, moved(at(fore), lap / 2), true);
}

/** A joint's line moved forward along the panel, square to itself. */
function moved({ line: [inner, outer] }: Spot, by: number): Spot['line'] {
  const length = Math.hypot(outer[0] - inner[0], outer[1] - inner[1]);
  const forward: Vec2 = [(outer[1] - inner[1]) / length, -(outer[0] - inner[0]) / length];
  const move = ([x, y]: Vec2): Vec2 => [x + by * forward[0], y + by * forward[1]];
  return [move(inner), move(outer)];
}

/** What lies aft of a line from the inner edge to the outer, or forward of it. */
const behind = (outline: readonly Vec2[], [inner, outer]: Spot['line'], aft: boolean) =>
  aft ? leftOf(outline, inner, outer) : leftOf(outline, outer, inner);

export const mirroredPiece = (outline: readonly Vec2[]): readonly Vec2[] =>
  outline.map(([x, y]): Vec2 => [-x, y]).toReversed();
