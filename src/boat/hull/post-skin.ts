/**
 * How the skin comes in to a stem or a sternpost, at places along its line: what the post is bevelled to.
 */
import { add, distance, scale, unit, type Vec3 } from '../../kernel';
import type { Hull } from './hull';
import { isPost, type Station } from './station';

export interface OnPost {
  /** Length along the post's line from its foot, m. */
  readonly up: number;
  /** Angle between the skin and the centreline plane, square to the post's line, rad. */
  readonly entry: number;
  /** Lean of the post's line there from the vertical, + where its top leans out of the boat, rad. */
  readonly rake: number;
}

/** The part of a post's line on which one panel lies. */
interface Stretch {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly length: number;
  /** Outward normals of the panel at both ends. */
  readonly normals: readonly [Vec3, Vec3];
}

/** Shorter than this no panel lands on the post, m: the edges meet in one point. */
const NO_LENGTH = 1e-6;

/** Length of a post's line, m, from its foot to the sheer. */
export function postLength(hull: Hull, post: Station): number {
  return stretches(hull, post).reduce((sum, { length }) => sum + length, 0);
}

/**
 * The skin at a share of a post's line from its foot, 0 to 1. Across one panel its normal turns evenly from the
 * panel's one edge to the other; where two panels meet, the upper one counts.
 *
 * @throws a sentence, where the station is no post, or the hull has a fault there
 */
export function skinOnPost(hull: Hull, post: Station, share: number): OnPost {
  const parts = stretches(hull, post);
  const up = share * parts.reduce((sum, { length }) => sum + length, 0);
  // The last that begins at or below the place.
  let begins = 0;
  let at: Stretch | null = null;
  let before = 0;
  for (const part of parts) {
    if (at && begins > up) break;
    [at, before] = [part, begins];
    begins += part.length;
  }
  if (!at) throw new Error(`the ${post.label} has no length`);
  const part = Math.min(1, (up - before) / at.length);
  const normal = unit(add(scale(at.normals[0], 1 - part), scale(at.normals[1], part)));
  const outward = post.index === 0 ? -1 : 1;
  return {
    up,
    entry: Math.acos(Math.min(1, Math.abs(normal[1]))),
    rake: Math.atan2(outward * (at.to[0] - at.from[0]), at.to[2] - at.from[2]),
  };
}

function stretches(hull: Hull, post: Station): readonly Stretch[] {
  if (!isPost(post.role)) throw new Error(`the ${post.label} is not a stem: it has breadth`);
  return hull.panels.flatMap((panel): Stretch[] => {
    const from = post.corners[panel.inner.index]!; // one corner an edge
    const to = post.corners[panel.outer.index]!;
    const length = distance(from, to);
    if (length < NO_LENGTH) return [];
    const normals = [
      post.normal(panel.inner.name, panel.name),
      post.normal(panel.outer.name, panel.name),
    ] as const;
    return [{ from, to, length, normals }];
  });
}
