/** How far the rules of thumb for resin scatter: half the width of each range, as a share of its middle. */
import type { Cited } from './table';

const practice = (value: number, said: string): Cited => ({
  value,
  source: `common practice, no source: ${said}`,
  known: 'common practice',
});

export const scatter = {
  /** Of what bare wood drinks in its first coat. */
  uptake: practice(
    1 / 3,
    '100 to 200 mL/m² (0.3 to 0.6 fl oz/ft²) on softwood plywood, 60 to 120 on hardwood',
  ),
  /** Of a sealing coat after it. */
  laterCoat: practice(2 / 9, '70 to 110 mL/m² (0.22 to 0.35 fl oz/ft²)'),
  /** Of the share of glass, in points: laid by hand it is so much more or less. */
  glass: practice(0.05, '45 to 55 % of glass with a squeegee'),
  /** Of what fills the weave. */
  film: {
    value: 0.11,
    source:
      'from 79 to 90 ft² (7.3 to 8.4 m²) of cloth of 203 g/m² (6 oz/yd²) to 3.8 L (1 gal), wetted out and filled: B. Niederer, and glass dealers’ pages',
    known: 'calculated',
  },
  /** Of waste, in points. */
  waste: {
    value: 0.025,
    source: '15 to 20 %: B. Niederer, and a chandlery’s pages on coverage',
    known: 'published',
  },
} as const satisfies Record<string, Cited>;
