/** Invented hulls of plain geometry, whose numbers are known in closed form. */
import { expect } from 'vitest';
import { buildHull, type Hull, type Offsets, quantityName } from '../../src/boat';
import type { Vec3 } from '../../src/kernel';

/** Points by edge, then by station, in metres. */
export type Lines = Readonly<Record<string, readonly Vec3[]>>;

export function offsetsThrough(lines: Lines, offsetsTo: Offsets['offsetsTo'] = 'outside of skin'): Offsets {
  const edges = Object.keys(lines).map((label) => ({ name: quantityName(label, 'edge'), label }));
  const count = Object.values(lines)[0]?.length ?? 0;
  const stations = Array.from({ length: count }, (_, i) => ({ name: `station${i}`, label: `station ${i}` }));
  return { offsetsTo, edges, stations, points: Object.values(lines) };
}

export function hullThrough(lines: Lines): Hull {
  return buildHull(offsetsThrough(lines));
}

/** `count` numbers from a to b, both included. */
export function steps(a: number, b: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => a + ((b - a) * i) / (count - 1));
}

/** Straight-sided box: open at the top, with a transom at each end. */
export function box(length: number, beam: number, depth: number, stations = 5): Lines {
  const xs = steps(0, length, stations);
  return {
    keel: xs.map((x): Vec3 => [x, 0, 0]),
    chine: xs.map((x): Vec3 => [x, beam / 2, 0]),
    sheer: xs.map((x): Vec3 => [x, beam / 2, depth]),
  };
}

/** Box that narrows to an upright stem: a triangle in plan. */
export function wedge(length: number, beam: number, depth: number, stations = 5): Lines {
  const xs = steps(0, length, stations);
  const y = (x: number) => (beam / 2) * (1 - x / length);
  return {
    keel: xs.map((x): Vec3 => [x, 0, 0]),
    chine: xs.map((x): Vec3 => [x, y(x), 0]),
    sheer: xs.map((x): Vec3 => [x, y(x), depth]),
  };
}

/** Prism of vee section: deadrise and flare in radians. */
export function veePrism(
  length: number,
  chineBreadth: number,
  deadrise: number,
  sideHeight: number,
  flare: number,
  stations = 5,
): Lines {
  const xs = steps(0, length, stations);
  const chineZ = chineBreadth * Math.tan(deadrise);
  return {
    keel: xs.map((x): Vec3 => [x, 0, 0]),
    chine: xs.map((x): Vec3 => [x, chineBreadth, chineZ]),
    sheer: xs.map((x): Vec3 => [x, chineBreadth + sideHeight * Math.tan(flare), chineZ + sideHeight]),
  };
}

/**
 * Flat bottom and a plane side: section flare alpha, slopes p in plan and q in profile, the after end raked
 * by rho, at the side's height h. Half-breadth 1 m at the chine where x = 0.
 */
export function planeSided(of: {
  readonly flare: number;
  readonly plan: number;
  readonly profile: number;
  readonly rake: number;
  readonly height: number;
}): Lines {
  const { flare, plan, profile, rake, height } = of;
  const xs = [0.5, 1, 1.5, 2];
  const half = (x: number, z: number) => 1 + plan * x + Math.tan(flare) * (z - profile * x);
  // The transom's plane x = -z tan(rake) meets the sheer z = height + profile x.
  const aft = (-height * Math.tan(rake)) / (1 + profile * Math.tan(rake));
  const sheerXs = [aft, ...xs];
  const level = (x: number) => profile * x;
  return {
    keel: [0, ...xs].map((x): Vec3 => [x, 0, level(x)]),
    chine: [0, ...xs].map((x): Vec3 => [x, half(x, level(x)), level(x)]),
    sheer: sheerXs.map((x): Vec3 => [x, half(x, height + level(x)), height + level(x)]),
  };
}

/**
 * Side cut from an upright cone: the chine is a circle of radius r1 at z = 0, the sheer one of radius r2 at
 * z = height, both about an axis on the starboard side; the ends lie along rulings, at angles -/+ half.
 * The bottom is the flat between the chine and the centreline.
 */
export function coneSided(of: {
  readonly r1: number;
  readonly r2: number;
  readonly height: number;
  readonly half: number;
  readonly keelOffset: number;
  readonly stations: number;
}): Lines {
  const { r1, r2, height, half, keelOffset, stations } = of;
  const at = (r: number, angle: number, z: number): Vec3 => [
    r * Math.sin(angle),
    r * Math.cos(angle) - keelOffset,
    z,
  ];
  const xs = steps(-r1 * Math.sin(half), r1 * Math.sin(half), stations);
  const inner = xs.slice(1, -1);
  const circle = (r: number, z: number): readonly Vec3[] => [
    at(r, -half, z),
    ...inner.map((x): Vec3 => at(r, Math.asin(x / r), z)),
    at(r, half, z),
  ];
  return { keel: xs.map((x): Vec3 => [x, 0, 0]), chine: circle(r1, 0), sheer: circle(r2, height) };
}

/** Five edges round a half cylinder of radius 1 m lying along the boat: a prism of four flat panels a side. */
export function roundPrism(length: number, stations = 4): Lines {
  const xs = steps(0, length, stations);
  const angles = [0, 30, 55, 75, 95].map((deg) => (deg * Math.PI) / 180);
  const names = ['keel', 'garboard chine', 'lower chine', 'upper chine', 'sheer'];
  return Object.fromEntries(
    names.map((name, i) => {
      const angle = angles[i] ?? 0;
      return [name, xs.map((x): Vec3 => [x, i === 0 ? 0 : Math.sin(angle), 1 - Math.cos(angle)])];
    }),
  );
}

export const degrees = (radians: number) => (radians * 180) / Math.PI;
export const radians = (deg: number) => (deg * Math.PI) / 180;

/** A number to within rounding, for use inside a larger match. */
export const near = (value: number, digits = 12): unknown => expect.closeTo(value, digits);
