/** The inner face of a whole skin, corner by corner as the boat moves it. */
import type { Hull, Offsets } from '../../src/boat';
import { insetPoint, type SkinThickness } from '../../src/boat/hull/inset';

export const insideOf = (hull: Hull, thickness: SkinThickness): Offsets => ({
  ...hull.offsets,
  offsetsTo: 'inside of skin',
  points: hull.edges.map((edge) =>
    hull.stations.map((station) => insetPoint(hull, edge, station, thickness)),
  ),
});
