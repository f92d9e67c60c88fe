/** A flat bottom cut in one width, from chine to chine: no seam along the keelson, and no two joints to keep apart. */
import { type Vec2 } from '../../kernel';
import { flatPanel } from '../hull/flat-panel';
import type { Panel } from '../hull/panel';

/** Sideways part of a normal that counts as none: a bottom half a metre to each side rises by 2 mm. */
const UPRIGHT = 4e-3;
/** A keel that bows by less than this on the sheet is straight, m: the two halves are one piece without a gap. */
const STRAIGHT = 5e-4;

/** Whether a panel and its mirror image lie on one sheet as one piece: it is flat across, and its inner edge straight. */
export function isFlatAcross(panel: Panel): boolean {
  const flat = panel.strip.rulings.every(({ fromNormal, toNormal }) =>
    [fromNormal, toNormal].every(([, sideways]) => Math.abs(sideways) < UPRIGHT),
  );
  if (panel.index > 0 || !flat) return false;
  const turn = overCentre(panel);
  return flatPanel(panel).inner.every((at) => Math.abs(turn(at)[1]) < STRAIGHT);
}

/** Turns a place on the flat panel so that its inner edge runs along x from the after end. */
export function overCentre(panel: Panel): (at: Vec2) => Vec2 {
  const { inner } = flatPanel(panel);
  const [from, to] = [inner[0]!, inner.at(-1)!]; // an edge has two points
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [along, up] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  return ([x, y]) => {
    const [dx, dy] = [x - from[0], y - from[1]];
    return [dx * along + dy * up, dy * along - dx * up];
  };
}

/** Breadth over both sides, laid flat, m. */
export const wholeBreadth = (panel: Panel): number => {
  const turn = overCentre(panel);
  return 2 * Math.max(...flatPanel(panel).outer.map((at) => turn(at)[1]));
};

/** The other side of the centreline. */
export const mirrored = ([x, y]: Vec2): Vec2 => [x, -y];
