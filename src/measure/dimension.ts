/**
 * Dimensions: what a number measures, as powers of six bases.
 *
 * Angle counts as a base of its own, so that a slope is not taken for an angle nor degrees for a
 * number; money likewise. A plain number has all powers zero.
 */
const bases = ['length', 'mass', 'time', 'temperature', 'angle', 'money'] as const;

export type Base = (typeof bases)[number];

/** Powers of the bases, in their order: length, mass, time, temperature, angle, money. */
export type Dimension = readonly [
  length: number,
  mass: number,
  time: number,
  temperature: number,
  angle: number,
  money: number,
];

/** The dimension with the powers given and zero for the rest: `dimension({ length: 1, time: -1 })` is a speed. */
export function dimension(powers: Partial<Record<Base, number>>): Dimension {
  const { length = 0, mass = 0, time = 0, temperature = 0, angle = 0, money = 0 } = powers;
  return [length, mass, time, temperature, angle, money];
}

/** The dimension of a plain number. */
export const plain: Dimension = dimension({});

/** Dimension of a product. */
export function times(a: Dimension, b: Dimension): Dimension {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2], a[3] + b[3], a[4] + b[4], a[5] + b[5]];
}

/** Dimension of a power; `toPower(d, 0.5)` is that of a square root. */
export function toPower(a: Dimension, n: number): Dimension {
  // Adding zero turns -0 into 0.
  return [a[0] * n + 0, a[1] * n + 0, a[2] * n + 0, a[3] * n + 0, a[4] * n + 0, a[5] * n + 0];
}

/** Dimension of a quotient. */
export function over(a: Dimension, b: Dimension): Dimension {
  return times(a, toPower(b, -1));
}

/** True if both measure the same. Powers such as 1/3 + 1/3 + 1/3 need not come out exact. */
export function sameDimension(a: Dimension, b: Dimension): boolean {
  return a.every((power, i) => Math.abs(power - (b[i] ?? 0)) < 1e-9);
}

/**
 * A dimension without a name of its own, in words: `a force times a length squared`,
 * `a mass over a length cubed`. A force is drawn out first where there is one.
 */
export function composeDimension(a: Dimension): string {
  const [length, mass, time, temperature, angle, money] = a;
  const force =
    mass !== 0 && sameDimension([0, mass, time, 0, 0, 0], [0, mass, -2 * mass, 0, 0, 0]) ? mass : 0;
  const powers: readonly (readonly [string, number])[] = [
    ['a force', force],
    ['a mass', mass - force],
    ['a length', length - force],
    ['a time', time + 2 * force],
    ['a temperature', temperature],
    ['an angle', angle],
    ['an amount of money', money],
  ];
  const above = powers.filter(([, power]) => power > 1e-9).map(sayPower);
  const below = powers.filter(([, power]) => power < -1e-9).map(([word, power]) => sayPower([word, -power]));
  const top = above.join(' times ') || 'a number';
  return below.length > 0 ? `${top} over ${below.join(' times ')}` : top;
}

function sayPower([word, power]: readonly [string, number]): string {
  if (Math.abs(power - 1) < 1e-9) return word;
  if (Math.abs(power - 2) < 1e-9) return `${word} squared`;
  if (Math.abs(power - 3) < 1e-9) return `${word} cubed`;
  return `${word} to the power ${Number(power.toFixed(3))}`;
}
