/**
 * Fair hulls drawn at random, to try the search for bad numbers on.
 *
 * Each line is the second integral of a positive polynomial (Bernstein form of degree 3 to 5, coefficients
 * between 1/4 and 2, one line in four turning up to four times harder at its fore end): it never bends the wrong way,
 * but may bend hard or little anywhere. Lengths 3 to 7 m; rise of keel, chine and sheer, breadths and rakes in
 * the range of small skiffs, dories and vee-bottomed launches. Six in ten are flat-bottomed, three in ten have uneven
 * stations; half of the tables are written to the millimetre, half to 1/8 in.
 */
import { buildHull, type Hull, offsetsOf, type Table } from '../../../src/boat';

export type Chance = () => number;

/** Evenly spread numbers from 0 to 1, the same for the same seed (a linear congruence of 32 bits, its high part used). */
export function chance(seed: number): Chance {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 0x2c1b3c6d);
    mixed = Math.imul(mixed ^ (mixed >>> 12), 0x297a2d39);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
}

const between = (next: Chance, low: number, high: number) => low + (high - low) * next();

/** An arch from 0 to 1 and back to 0 at 1, highest 1, that bends one way throughout. */
function arch(next: Chance): (u: number) => number {
  const degree = 3 + Math.floor(3 * next());
  const bend = Array.from({ length: degree + 1 }, () => Math.exp(between(next, Math.log(0.25), Math.log(2))));
  if (next() < 0.25) bend[degree]! *= between(next, 1, 4);
  const twice = integral(integral(bend));
  const rise = (u: number) => twice.at(-1)! * u - bernstein(twice, u);
  const highest = Math.max(...Array.from({ length: 101 }, (_, i) => rise(i / 100)));
  return (u) => rise(u) / highest;
}

function integral(coefficients: readonly number[]): readonly number[] {
  let sum = 0;
  return [0, ...coefficients.map((c) => (sum += c / coefficients.length))];
}

function bernstein(coefficients: readonly number[], u: number): number {
  // De Casteljau's scheme.
  let row = coefficients;
  while (row.length > 1) row = row.slice(1).map((c, i) => row[i]! * (1 - u) + c * u);
  return row[0]!;
}

type Line = readonly number[];

/** A hull of so many stations without a fault. */
export function randomHull(next: Chance, stations: number): Hull {
  for (;;) {
    const hull = buildHull(offsetsOf(randomTable(next, stations)));
    if (hull.faults.length === 0) return hull;
  }
}

function randomTable(next: Chance, stations: number): Table {
  const of = (low: number, high: number) => between(next, low, high);
  const length = of(3000, 7000);
  const uneven = next() < 0.3 ? 0.15 : 0;
  const pitch = length / (stations - 1);
  const x = Array.from({ length: stations }, (_, i) => {
    const inner = i > 0 && i < stations - 1;
    return pitch * (i + (inner ? of(-uneven, uneven) : 0));
  });
  const raked = (aft: number, fore: number): Line =>
    x.map((at, i) => (i === 0 ? -aft : i === stations - 1 ? length + fore : at));
  const rake = of(0.03, 0.12) * length;
  const flat = next() < 0.6;
  const chineX = flat ? x : raked(0, 0.4 * rake);
  const sheerX = raked(of(0, 0.04) * length, rake);
  const line = (along: Line, from: number, to: number, rise: number): Line => {
    const shape = arch(next);
    const span = along.at(-1)! - along[0]!;
    return along.map(
      (at) => from + ((to - from) * (at - along[0]!)) / span + rise * shape((at - along[0]!) / span),
    );
  };
  const side = (along: Line, breadth: number): Line => {
    const transom = of(0.4, 0.85) * breadth;
    return line(along, transom, 0, of(0.85, 1) * (breadth - transom / 2));
  };
  const breadth = of(0.15, 0.2) * length;
  const keelZ = line(x, of(20, 180), of(150, 380), -of(0.025, 0.045) * length);
  const chineZ = flat ? keelZ : line(chineX, of(120, 220), of(350, 550), -of(0.015, 0.035) * length);
  const sheerZ = line(sheerX, of(450, 700), of(700, 1000), -of(0.015, 0.04) * length);
  const chineY = side(chineX, of(0.62, 0.88) * breadth);
  const sheerY = side(sheerX, breadth);
  const mark = next() < 0.5 ? 1 : 25.4 / 8;
  const written = (value: number) => Math.round(value / mark) * mark;
  return {
    name: 'drawn at random',
    note: '',
    unit: 'mm',
    offsetsTo: 'outside of skin',
    edges: ['keel', 'chine', 'sheer'],
    stations: x.map((at, i) => ({
      name: i === 0 ? 'transom' : i === stations - 1 ? 'stem' : `frame ${i}`,
      points: [
        { x: at, y: 0, z: written(keelZ[i]!) },
        { x: chineX[i]!, y: written(chineY[i]!), z: written(chineZ[i]!) },
        { x: sheerX[i]!, y: written(sheerY[i]!), z: written(sheerZ[i]!) },
      ],
    })),
  };
}
