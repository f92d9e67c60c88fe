/**
 * Two-part epoxy as a builder pours it: densities of the parts, how thick a coat lies, how much bare
 * wood drinks, how much is lost. The label on the can outranks every figure here.
 */
import type { Cited, TradeTable } from './table';

const practice = (value: number, range: string): Cited => ({
  value,
  source: `common practice, no source: ${range}`,
  known: 'common practice',
});

/** Densities of the liquid parts, kg/m3. */
export const partDensity = {
  resin: practice(1160, 'the middle of 1140 to 1180 kg/m³ (71 to 74 lb/ft³)'),
  hardener: practice(1000, 'the middle of 950 to 1050 kg/m³ (59 to 66 lb/ft³)'),
} as const satisfies Record<string, Cited>;

/** Film left by one rolled coat over wetted cloth, m. */
export const fillFilm: Cited = {
  value: 0.00009,
  source:
    'what B. Niederer\'s rule ("Estimating Epoxy Amounts") implies for each of its three rolled coats, net of 15 % waste: 0.089 mm (0.0035 in)',
  known: 'calculated',
};

/** Resin that bare wood takes in the first coat, m3/m2. No measured figures were found. */
export const uptake: TradeTable<'firstCoat'> = {
  id: 'uptake',
  columns: { firstCoat: { kind: 'wetRate', meaning: 'first coat on bare wood' } },
  rows: [
    {
      id: 'softwoodPly',
      label: 'Fir and other softwood plywood',
      cells: { firstCoat: practice(0.00015, 'the middle of 100 to 200 mL/m² (0.3 to 0.6 fl oz/ft²)') },
    },
    {
      id: 'hardwoodPly',
      label: 'Dense hardwood plywood',
      cells: { firstCoat: practice(0.00009, 'the middle of 60 to 120 mL/m² (0.2 to 0.4 fl oz/ft²)') },
    },
  ],
};

/** Each sealing coat after the first, m3/m2. */
export const laterCoat: Cited = practice(0.00009, 'the middle of 70 to 110 mL/m² (0.22 to 0.35 fl oz/ft²)');

/** Share added for what stays in cups, rollers and on the floor. */
export const waste: Cited = {
  value: 0.15,
  source: 'B. Niederer, "Estimating Epoxy Amounts"',
  known: 'published',
};
