import { findRoot } from './roots';

/**
 * Section of a fillet between two planes, in squares of the tool's radius: the kite between corner and centre, less the
 * sector of the tool. 0 where the planes are one.
 *
 * @param angle between the planes, inside, rad; above 0, at most pi
 */
export function filletRatio(angle: number): number {
  return 1 / Math.tan(angle / 2) - (Math.PI - angle) / 2;
}

/** Flatter than this no tool leaves anything, rad; sharper than that none reaches in. */
const FLATTEST = Math.PI - 1e-6;
const SHARPEST = 1e-3;

/** The angle of a corner whose fillet has this section, in squares of the radius; rad. */
export function filletAngle(ratio: number): number {
  return findRoot((angle) => filletRatio(angle) - ratio, SHARPEST, FLATTEST, 1e-12) ?? FLATTEST;
}

/**
 * Mean of the section along a seam, in squares of the radius, from its angle place by place.
 *
 * @param arcs lengths along the seam, rising, m
 * @param angles there, rad
 */
export function meanFilletRatio(arcs: readonly number[], angles: readonly number[]): number {
  const ratios = angles.map(filletRatio);
  let sum = 0;
  for (let i = 1; i < arcs.length; i++)
    sum += ((ratios[i - 1]! + ratios[i]!) / 2) * (arcs[i]! - arcs[i - 1]!);
  return sum / (arcs.at(-1)! - arcs[0]!); // a seam has two ends
}
