/** What three-strand rope breaks at, by its girth. A maker's sheet outranks every figure here. */
import { INCH, OUNCE } from '../measure/si';
import type { Cited } from './table';

const taught = (value: number, said: string): Cited => ({
  value,
  source: `a seamanship course, breaking strength by girth: ${said}`,
  known: 'published',
});

/** Of manila: load that breaks it over the square of its girth, kg/m². */
export const manilaByGirth: Cited = taught(
  (900 * 16 * OUNCE) / INCH ** 2,
  '900 lb (408 kg) for a girth of 1 in (25 mm), and by the square of it, manila',
);

/** How many times as strong as manila of the same size. */
export const timesManila = {
  manila: taught(1, 'manila'),
  nylon: taught(2.5, 'nylon, two and a half times manila'),
  polyester: taught(2, 'polyester, twice manila; another printing says two and a half'),
  polypropylene: taught(1.4, 'polypropylene, one and four tenths'),
} as const satisfies Record<string, Cited>;

/** Least factor between what a rope breaks at and what is hung on it. */
export const ropeFactor: Cited = {
  value: 5,
  source: 'a guideline of rope makers: 5 to 12, the least for new rope, known loads and expert hands',
  known: 'published',
};

/** Share that a knot takes. */
export const knotTakes: Cited = {
  value: 0.5,
  source: 'the same guideline: knots take up to half',
  known: 'published',
};
