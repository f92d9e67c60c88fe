/**
 * Epoxy thickened to a paste: how much filler goes in, what it weighs, and the fillets laid with it.
 * The labels on can and bag outrank every figure here.
 */
import type { Cited } from './table';

const practice = (value: number, said: string): Cited => ({
  value,
  source: `common practice, no source: ${said}`,
  known: 'common practice',
});

/** Mixed epoxy, kg/m3. */
export const epoxyDensity: Cited = practice(1100, 'about 1.10 g/mL (69 lb/ft³), both parts together');

/** Wood flour without the air in it, which the epoxy fills, kg/m3. */
export const flourDensity: Cited = practice(
  1500,
  'about 1.5 g/mL (94 lb/ft³), the wall of the cell without its hollow',
);

/** Wood flour to mixed epoxy, by weight. */
export const flourShare: Cited = practice(
  0.25,
  '25 g of wood flour to 100 g of epoxy (1 oz to 4 oz), give or take half',
);

/** Half as much filler still makes a paste, half as much again too. */
export const flourSpread = 0.5;

/** Radius of the tool, m. */
export const filletRadius: Cited = practice(0.01, '10 mm, or 3/8 in');

/** Least radius, in thicknesses of the thinner panel. */
export const radiusToPanel: Cited = practice(2, 'at least twice the thinner panel');

/** Paste scraped off beside the fillet, as a share on top. */
export const scrapings: Cited = practice(0.25, 'the middle of 20 to 30 %, scraped off beside the fillet');
