/** The apex of a triangle over its base, m. */
export interface Apex {
  /** Along the base from its middle, + towards its first end. */
  readonly along: number;
  /** Square off the base, never below zero. */
  readonly off: number;
}

/**
 * A triangle from the lengths of its sides, all in one unit: where the tape's two lengths from the ends of a
 * base meet.
 *
 * @throws a sentence for lengths that make no triangle
 */
export function apexOver(toFirst: number, toSecond: number, base: number): Apex {
  if (!(base > 0)) throw new Error('a triangle needs a base to stand on');
  if (Math.abs(toFirst - toSecond) > base)
    throw new Error(
      'no triangle has these lengths: they differ by more than the two marks lie apart; measure again',
    );
  if (toFirst + toSecond < base)
    throw new Error(
      'no triangle has these lengths: together they are shorter than the two marks lie apart; measure again',
    );
  const along = ((toSecond - toFirst) * (toSecond + toFirst)) / (2 * base);
  // As a product, so that a flat triangle loses no digits.
  const square = (toFirst - (base / 2 - along)) * (toFirst + (base / 2 - along));
  return { along, off: Math.sqrt(Math.max(0, square)) };
}

/**
 * The level part of a slanting length that rises or falls by so much, all in one unit.
 *
 * @throws a sentence where it is shorter than its rise
 */
export function levelPart(slant: number, rise: number): number {
  if (slant < Math.abs(rise))
    throw new Error(
      'the lengths are too short to reach from one height to the other; measure again, or look at the heights',
    );
  return Math.sqrt((slant - Math.abs(rise)) * (slant + Math.abs(rise)));
}
