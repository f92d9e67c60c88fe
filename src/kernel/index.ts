/**
 * Pure mathematics of curves, panels and solids: plain SI numbers in and out, no boats. Throws an Error with a plain
 * sentence on input that can't be worked with; returns null for "none".
 */
export { lengthTo, parameterAtLength, parameterAtX } from './along-batten';
export {
  bevelOfNormal,
  bevelOfSlopes,
  deadriseOfNormal,
  dihedral,
  flareOfNormal,
  hopper,
  transomCorner,
} from './angles';
export type { Hopper, TransomCorner } from './angles';
export { bendBatten, curvatureAt, derivativeAt, duckJumps, pointAt, pushesOn, viewCurvature } from './batten';
export type { Batten, View } from './batten';
export { chanceOfBreaking, normalBelow } from './chance';
export type { Spread } from './chance';
export { chordAt, clearOf, common, convexOutline, narrowed, widened } from './convex';
export { curveOf } from './curve';
export type { Curve } from './curve';
export { differences, dividedDifferences, missWhenLifted } from './differences';
export { elasticaOf } from './elastica';
export type { Elastica } from './elastica';
export { fairRun, FEWEST_POINTS, oddOneOut } from './fairness';
export type { Correction, FairRun } from './fairness';
export { hollows, placeInView, turnOfLine } from './fairness-hollows';
export type { Hollow } from './fairness-hollows';
export { leastMend } from './fairness-mend';
export type { MendOptions } from './fairness-mend';
export { below } from './immersion';
export type { Immersion, Waterplane } from './immersion';
export { leastChange } from './least-change';
export type { Condition } from './least-change';
export { bridge, isClosed, joined, mirrored, polygonMesh, reversed } from './mesh';
export type { Mesh } from './mesh';
export { meshArea, meshCentroid, meshVolume, surfaceCentroid } from './mesh-measure';
export { meshSection } from './mesh-section';
export type { Plane } from './plane';
export { thinned } from './polyline';
export { integrate, integrateTo } from './quadrature';
export { findMinimum, findRoot } from './roots';
export { ruledCurvature } from './ruling';
export type { Edge, Ruling } from './ruling';
export { sectionBelow } from './section-below';
export type { SectionBelow } from './section-below';
export type { Sheet } from './sheet';
export { bendingEnergy, fitSpline, graphCurvature, splineAt, thirdJumps } from './spline';
export type { End, Ends, Spline } from './spline';
export { spanStrip } from './strip';
export type { Strip, StripOptions } from './strip';
export { meshOfStrips } from './strip-mesh';
export type { StripsMesh } from './strip-mesh';
export { crownAt, flatOnEdge, normalOnEdge, stripSection } from './strip-section';
export type { Crown, SectionPoint } from './strip-section';
export { tightest } from './tightest';
export type { Tightest } from './tightest';
export type { Flat } from './unroll';
export { add, between, between2, cross, distance, distance2, dot, norm, scale, subtract, unit } from './vec';
export type { Vec2, Vec3 } from './vec';
