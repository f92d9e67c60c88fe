/**
 * Fillers that thicken epoxy: what their grains weigh, what a scoop of them weighs, how much makes a paste that stands.
 * The bag in hand and a pot of one's own outrank every figure here.
 */
import { flourDensity, flourShare } from './paste';
import type { Cited, TradeTable } from './table';

const practice = (value: number, said: string): Cited => ({
  value,
  source: `common practice, no source: ${said}`,
  known: 'common practice',
});

export const fillers: TradeTable<'density' | 'bulk' | 'share'> = {
  id: 'fillers',
  columns: {
    density: { kind: 'density', meaning: 'density of the grains' },
    bulk: { kind: 'density', meaning: 'density as poured' },
    share: { kind: 'share', meaning: 'share to epoxy by weight' },
  },
  rows: [
    {
      id: 'woodFlour',
      label: 'wood flour',
      cells: {
        density: flourDensity,
        bulk: practice(200, 'the middle of 150 to 250 kg/m³ (9 to 16 lb/ft³)'),
        share: flourShare,
      },
    },
    {
      id: 'silica',
      label: 'fumed silica',
      cells: {
        density: {
          value: 2200,
          source: 'handbooks of chemistry: amorphous silica 2.2 g/mL (137 lb/ft³)',
          known: 'from memory',
        },
        bulk: practice(40, 'the middle of 30 to 50 kg/m³ (2 to 3 lb/ft³)'),
        share: practice(0.075, 'the middle of 6 to 9 parts to 100 of epoxy'),
      },
    },
    {
      id: 'glassBubbles',
      label: 'hollow glass spheres',
      cells: {
        density: {
          value: 250,
          source: 'a supplier’s list: 150 to 600 kg/m³ (9 to 37 lb/ft³), of which a light grade',
          known: 'published',
        },
        bulk: practice(150, 'six tenths of the grains’ own'),
        share: practice(0.25, 'the middle of 20 to 30 parts to 100 of epoxy'),
      },
    },
    {
      id: 'phenolicBubbles',
      label: 'hollow phenolic spheres',
      cells: {
        density: practice(225, 'the middle of 200 to 250 kg/m³ (12 to 16 lb/ft³)'),
        bulk: practice(
          105,
          'so that 18 to 25 parts by weight to 100 of epoxy are 2 to 2 1/2 times its volume',
        ),
        share: practice(0.2, 'near the middle of 18 to 25 parts to 100 of epoxy'),
      },
    },
  ],
};

/** Part of the pot life in which the paste is still good to work. */
export const workable: Cited = practice(0.6, 'six tenths of the pot life');

/** Deepest that is filled in one go, m. */
export const deepestPour: Cited = practice(0.01, '10 to 12 mm (3/8 to 1/2 in)');

/** Most of a paste that can be grains, by volume: poured spheres hold no more. */
export const mostGrains: Cited = {
  value: 0.6,
  source: 'random packing of equal spheres, 0.60 poured to 0.64 shaken',
  known: 'from memory',
};
