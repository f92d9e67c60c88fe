/** How a panel must bend and twist to lie on the hull, place by place on the flat sheet. */
import { between2, type Vec2 } from '../../kernel';
import { onceFor } from '../once';
import { flatPanel } from './flat-panel';
import type { Panel } from './panel';

/** One ruling of the panel: a line on the sheet along which it stays straight. */
export interface PanelBend {
  /** On the flat panel, from the inner edge to the outer, m. */
  readonly from: Vec2;
  readonly to: Vec2;
  /** Running distance along the straight edge to its middle, m. */
  readonly along: number;
  /** Curvature square to it, the greater of its two ends, 1/m; 0 where the panel is flat. */
  readonly bend: number;
  /** Angle between the ruling, which is the axis of the bend, and the straight edge, rad, 0 to a right angle. */
  readonly axis: number;
  /** Angle between the skin's normals at its two ends, rad. */
  readonly twist: number;
}

/** The rulings of a panel, from aft forward. The same list for the same panel. */
export const panelBends = onceFor((panel: Panel): readonly PanelBend[] => {
  const { place } = flatPanel(panel);
  const { rulings, flat } = panel.strip;
  return rulings.map(({ radius, twist }, k): PanelBend => {
    const [from, to] = [place(flat.first[k]!), place(flat.second[k]!)]; // the sheet has a point of each edge a ruling
    const [dx, dy] = [Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])];
    return {
      from,
      to,
      along: between2(from, to, 0.5)[0],
      bend: radius === null ? 0 : 1 / radius,
      axis: Math.atan2(dy, dx),
      twist,
    };
  });
});
