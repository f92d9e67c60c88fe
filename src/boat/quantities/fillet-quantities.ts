/** The seams of the hull as fillets are laid in them: brought by the cell that asks for them. */
import { filletAngle, meanFilletRatio } from '../../kernel/fillet';
import type { Hull } from '../hull/hull';
import type { Layout } from './lists';
import { fromHull } from './make-derived';
import type { Derived } from './quantity';

/** Mean of a fillet's section along an edge, station by station, in squares of its radius. */
export const seamRatio = (hull: Hull, edge: string): number =>
  meanFilletRatio(
    hull.edge(edge).arcs,
    hull.stations.map((station) => station.angle(edge)),
  );

/** `chine.filletAngle`: an even corner of that angle takes as much fillet as the seam does. */
export const filletAngles = (layout: Layout): readonly Derived[] =>
  layout.chines.map(({ name, label }) =>
    fromHull(
      `${name}.filletAngle`,
      'angle',
      `angle of an even corner that takes as much fillet as the ${label}, station by station`,
      (hull) => filletAngle(seamRatio(hull, name)),
    ),
  );
