/** Sandpaper by its grit: how large the grains are, which grit comes when, how far one piece goes. */
import type { Cited, TradeTable } from './table';

const MICRON = 1e-6;
const printed = (microns: number): Cited => ({
  value: microns * MICRON,
  source: 'tables of grades of a finishing supplier and of a site on measures, which agree',
  known: 'published',
});
const practice = (value: number, said: string): Cited => ({
  value,
  source: `common practice, no source: ${said}`,
  known: 'common practice',
});

/** Median grain, m: of papers marked P (FEPA), and of those with the plain number (CAMI). */
export const grits: TradeTable<'fepa' | 'cami'> = {
  id: 'grits',
  columns: {
    fepa: { kind: 'film', meaning: 'median grain of a paper marked P' },
    cami: { kind: 'film', meaning: 'median grain of a paper with the plain number' },
  },
  rows: (
    [
      [60, 269, 268],
      [80, 201, 192],
      [100, 162, 141],
      [120, 125, 116],
      [150, 100, 93],
      [180, 82, 82],
      [220, 68, 68],
      [240, 58.5, 52],
      [280, 52, 42],
      [320, 46, 35],
      [360, 40, 28],
      [400, 35, 22],
    ] as const
  ).map(([grit, fepa, cami]) => ({
    id: `grit${grit}`,
    label: `${grit}`,
    cells: { fepa: printed(fepa), cami: printed(cami) },
  })),
};

/** Jobs of sanding, each with its grits in order. Common practice, no source; 80 on epoxy: makers' sheets. */
export const sandings = [
  { id: 'wood', label: 'bare plywood', grits: [80, 120] },
  { id: 'fair', label: 'epoxy, to fair it', grits: [60, 80, 120] },
  { id: 'key', label: 'epoxy, for epoxy', grits: [80] },
  { id: 'paint', label: 'epoxy, for paint', grits: [80, 120, 150] },
  { id: 'primer', label: 'primer, for primer', grits: [220] },
  { id: 'enamel', label: 'primer, for enamel', grits: [220, 320] },
  { id: 'coats', label: 'between last coats', grits: [320] },
] as const;

/** Face that one disc of 125 mm (5 in) does, m². */
export const discReach: Cited = practice(
  0.75,
  'the middle of 0.5 to 1 m² (5 to 11 ft²) of cured epoxy to a disc of 125 mm (5 in) and grit 80',
);
/** Times as many discs on epoxy that is not cured through or not washed. */
export const greenTimes: Cited = practice(2, 'twice as many');

/** Dust in the air of the shop, kg/m³, over eight hours. */
export const dustLimits = {
  wood: { value: 1e-6, source: 'NIOSH and ACGIH: wood dust, 1 mg/m³ in all', known: 'published' },
  glass: { value: 5e-6, source: 'NIOSH: dust of fibrous glass, 5 mg/m³ in all', known: 'published' },
} as const satisfies Record<string, Cited>;

/** By how many times a mask thins the dust that is breathed, where it seals. */
export const masks = {
  disposable: { value: 20, source: 'UK guidance, on FFP3 masks of EN 149', known: 'published' },
  fullFace: { value: 50, source: 'NIOSH, on full-face masks with particle filters', known: 'published' },
} as const satisfies Record<string, Cited>;

/** Taken off a face with each grit, m. */
export const takenOff: Cited = practice(50e-6, 'an example, half a fill coat');

/** Share of the dust that a sander with a bag lets into the air. */
export const escapes: Cited = practice(0.1, 'an example: a tenth with a bag or a vacuum, all of it by hand');

/** Sanders and what their paper measures, m. */
export const sanders = [
  { id: 'disc5', label: 'disc, 125 mm (5 in)', area: 0.012272 },
  { id: 'disc6', label: 'disc, 150 mm (6 in)', area: 0.017671 },
  { id: 'belt', label: 'belt, 75 x 533 mm (3 x 21 in)', area: 0.039975 },
  { id: 'sheet', label: 'by hand, a quarter sheet', area: 0.0161 },
] as const;
