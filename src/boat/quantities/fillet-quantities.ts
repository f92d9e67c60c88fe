/** The seams of the hull as fillets are laid in them: brought by the cell that asks for them. */
import { filletAngle, filletRatio, meanFilletRatio } from '../../kernel/fillet';
import { endLength } from '../hull/flat-face';
import type { Hull } from '../hull/hull';
import { postLength, skinOnPost } from '../hull/post-skin';
import { isPost, type Station } from '../hull/station';
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

/** A seam on which a fillet may lie: how long, port and starboard together, m, and its mean section in squares of the radius. */
export interface FilletSeam {
  readonly of: 'chine' | 'keel' | 'end';
  readonly run: number;
  readonly ratio: number;
}

/** All seams of the skin: along its chines and the keel, up its posts, round its transoms. */
export function filletSeams(hull: Hull): readonly FilletSeam[] {
  const [keel, ...others] = hull.edges.slice(0, -1);
  const along = (of: FilletSeam['of'], sides: 1 | 2, edges: typeof others) =>
    edges.map(({ name, length }): FilletSeam => ({ of, run: sides * length, ratio: seamRatio(hull, name) }));
  const ends = [hull.aft, hull.fore].flatMap((end) =>
    isPost(end.role) ? upPost(hull, end) : roundTransom(hull, end),
  );
  return [...along('chine', 2, others), ...along('keel', 1, keel ? [keel] : []), ...ends];
}

/** No tool goes into a corner that is sharper, rad. */
const SHARPEST_CORNER = Math.PI / 6;
const PLACES = 10;

/** Between the two sides, at tenths of the way up. */
function upPost(hull: Hull, post: Station): readonly FilletSeam[] {
  const run = postLength(hull, post);
  if (run <= 0) return [];
  const shares = Array.from({ length: PLACES + 1 }, (_, i) => i / PLACES);
  const angles = shares.map((share) => Math.max(SHARPEST_CORNER, 2 * skinOnPost(hull, post, share).entry));
  return [{ of: 'end', run, ratio: meanFilletRatio(shares, angles) }];
}

/** Between each panel and the transom; its angle changes evenly from the panel's one edge to the other. */
function roundTransom(hull: Hull, end: Station): readonly FilletSeam[] {
  const sign = end.index === 0 ? 1 : -1;
  return hull.panels.map((panel): FilletSeam => {
    const ratios = [panel.inner, panel.outer].map(({ name }) =>
      filletRatio(Math.max(SHARPEST_CORNER, Math.PI / 2 + sign * end.bevel(name, panel.name))),
    );
    return { of: 'end', run: 2 * endLength(panel, end), ratio: (ratios[0]! + ratios[1]!) / 2 };
  });
}
