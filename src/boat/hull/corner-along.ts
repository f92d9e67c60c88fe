/**
 * The corner between two panels at any place along the edge in which they meet, as one who stands square to
 * that edge sees it. What a long timber in the corner is planed to runs by this, between the frames too.
 */
import {
  cross,
  derivativeAt,
  dot,
  parameterAtLength,
  scale,
  splineAt,
  subtract,
  unit,
  type Vec3,
} from '../../kernel';
import type { Hull } from './hull';
import type { Panel } from './panel';

export interface Corner {
  /** Where, m: forward of the after end of the bottom. */
  readonly x: number;
  /** Of the panel above, from the plumb plane through the edge, + outward, rad; square to the edge. */
  readonly flare: number;
  /** Of the panel below, from level athwart, + where it rises outboard, rad; square to the edge. */
  readonly deadrise: number;
}

/**
 * The corner at a length along an edge from its after end, m; held to the ends. The angle between the panels
 * inside the hull is a right angle plus flare plus deadrise.
 *
 * @throws a sentence, where there is no such edge, or no panel on one side of it, or where it stands plumb
 */
export function cornerAlong(hull: Hull, name: string, along: number): Corner {
  const edge = hull.edge(name);
  const below = hull.panels[edge.index - 1];
  const above = hull.panels[edge.index];
  if (!below || !above) throw new Error(`no two panels meet at the ${edge.label}`);
  const parameter = parameterAtLength(edge.batten, along);
  const forward = unit(derivativeAt(edge.batten, parameter, 1));
  const level = Math.hypot(forward[0], forward[1]);
  if (level < 1e-3) throw new Error(`the ${edge.label} stands plumb there`);
  const outboard: Vec3 = [-forward[1] / level, forward[0] / level, 0];
  const up = cross(forward, outboard);
  const normal = (panel: Panel): Vec3 => {
    const read = panel.normalOn(edge, parameter);
    // Read between rulings it may lean a little along the edge, to which the skin's normal is square.
    return subtract(read, scale(forward, dot(read, forward)));
  };
  const [under, over] = [normal(below), normal(above)];
  return {
    x: splineAt(edge.batten.x, parameter),
    flare: Math.atan2(-dot(over, up), dot(over, outboard)),
    deadrise: Math.atan2(dot(under, outboard), -dot(under, up)),
  };
}
