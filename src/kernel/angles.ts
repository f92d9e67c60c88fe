import { dot, norm } from './vec';
import type { Vec3 } from './vec';

// Axes: x forward, y to port, z up. All angles in radians.

/** Bevel of a transverse frame's edge, the angle off square, from the outward normal of the surface it meets; >= 0. */
export function bevelOfNormal(normal: Vec3): number {
  return Math.asin(Math.min(1, Math.abs(normal[0]) / norm(normal)));
}

/** Flare of a surface in the transverse section, from vertical; + leans outward going up. */
export function flareOfNormal(normal: Vec3): number {
  return Math.atan2(-normal[2], normal[1]);
}

/** Deadrise of a bottom in the transverse section, from level; + rises going outward. */
export function deadriseOfNormal(normal: Vec3): number {
  return Math.atan2(normal[1], -normal[2]);
}

/**
 * Bevel of a frame's edge off square, signed, from the section's flare and the slopes of the long line there: dy/dx
 * in plan and dz/dx in profile. The two forms agree: this one is minus the normal's lean forward, so a surface
 * that closes in going forward has a negative bevel.
 */
export function bevelOfSlopes(flare: number, planSlope: number, profileSlope: number): number {
  return Math.atan(planSlope * Math.cos(flare) - profileSlope * Math.sin(flare));
}

/** Angle inside the boat between two surfaces with outward normals a and b: pi where one runs on into the other. */
export function dihedral(a: Vec3, b: Vec3): number {
  const cosine = dot(a, b) / (norm(a) * norm(b));
  return Math.acos(Math.min(1, Math.max(-1, -cosine)));
}

/** The corner where a side meets a raked transom. */
export interface TransomCorner {
  /** Angle inside the boat between side and transom. */
  readonly dihedral: number;
  /** Bevel of the transom's edge off square; + when the angle is obtuse. */
  readonly edgeBevel: number;
  /** Angle of the transom's edge from its centreline, on its face. */
  readonly onTransom: number;
  /** Angle of the side's end from a level line drawn forward on the side. */
  readonly onSide: number;
  /** Saw tilt off square for a side that runs past, and for a mitre. */
  readonly buttTilt: number;
  readonly mitreTilt: number;
}

/**
 * The corner between a side and a transom. Flare from vertical; rake from vertical, + with the top aft; plan angle of
 * the side at the transom, + closing in forward, - closing in aft as at most sterns.
 *
 * Source: plane geometry of the two normals (sin p cos f, cos p cos f, -sin f) and (-cos r, 0, -sin r).
 */
export function transomCorner(flare: number, rake: number, planAngle: number): TransomCorner {
  const { sin, cos, tan } = Math;
  const side: Vec3 = [sin(planAngle) * cos(flare), cos(planAngle) * cos(flare), -sin(flare)];
  const transom: Vec3 = [-cos(rake), 0, -sin(rake)];
  const inside = dihedral(side, transom);
  const rise = (tan(flare) + tan(rake) * sin(planAngle)) / cos(planAngle);
  const edge: Vec3 = [-tan(rake), rise, 1];
  const level: Vec3 = [cos(planAngle), -sin(planAngle), 0];
  return {
    dihedral: inside,
    edgeBevel: inside - Math.PI / 2,
    onTransom: Math.atan2(tan(flare) * cos(rake) + sin(rake) * sin(planAngle), cos(planAngle)),
    onSide: Math.acos(dot(edge, level) / norm(edge)),
    buttTilt: Math.abs(inside - Math.PI / 2),
    mitreTilt: Math.PI / 2 - inside / 2,
  };
}

/** Saw settings for a box whose sides all slope alike. */
export interface Hopper {
  /** Angle of the cut across the face of the board, off square. */
  readonly mitre: number;
  /** Blade tilt off square for mitred corners. */
  readonly tilt: number;
  /** Blade tilt for butted corners: of a four-sided box only. */
  readonly buttedTilt: number | null;
}

/**
 * Saw settings for a box of equal sides, from the pitch of a side above level (upright: pi / 2) and their number.
 *
 * Source: agrees to 0.005 degrees with the chart "Compound-angle settings for popular structures" printed in the
 * operator's manuals of bench saws.
 */
export function hopper(pitch: number, sides: number): Hopper {
  if (!Number.isInteger(sides) || sides < 3) throw new Error(`a box needs at least 3 sides; got ${sides}`);
  const half = Math.PI / sides;
  return {
    mitre: Math.atan(Math.cos(pitch) * Math.tan(half)),
    tilt: Math.asin(Math.sin(pitch) * Math.sin(half)),
    buttedTilt: sides === 4 ? Math.asin(Math.cos(pitch) ** 2) : null,
  };
}
