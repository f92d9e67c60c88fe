/** How surely the amount is known, and what is bought because of it. */
import { input, step } from '../form/define';
import { scatter } from '../../trade/resin-scatter';
import { citation } from '../../trade/table';
import { GEOMETRY } from '../../trade/sources';

const CHANCE =
  'root of the sum of squares: the rules miss one by one, and not all of them the same way at once';
const glass = scatter.glass.value;

export const marginInput = input('share', 'Bought beyond the need', {
  from: '{self}.usualMargin',
  preset: '15 %',
  min: '0 %',
  max: '100 %',
  step: '1 %',
  note: 'by how far the rules scatter',
});

/** Over the resin's steps up to the total. */
export const scatterSteps = {
  sealScatter: step(
    'volume',
    `(1 + waste) * (sealCoats > 0 ? (bareArea + sheathedArea) * uptake * ${scatter.uptake.value} : 0 L)`,
    'more or less in the first coat',
    citation(scatter.uptake),
  ),
  laterScatter: step(
    'volume',
    `(1 + waste) * bareArea * max(0, sealCoats - 1) * laterCoat * ${scatter.laterCoat.value}`,
    'more or less in the sealing coats after it',
    citation(scatter.laterCoat),
  ),
  wetScatter: step(
    'volume',
    `(1 + waste) * clothMass / mixDensity * (1 / (glassShare - ${glass}) - 1 / (glassShare + ${glass})) / 2`,
    'more or less in wetting out',
    citation(scatter.glass),
  ),
  fillScatter: step(
    'volume',
    `(1 + waste) * filling * ${scatter.film.value}`,
    'more or less in the fill coats',
    citation(scatter.film),
  ),
  wasteScatter: step(
    'volume',
    `net * ${scatter.waste.value}`,
    'more or less wasted',
    citation(scatter.waste),
  ),
  spread: step(
    'volume',
    'sqrt(sealScatter^2 + laterScatter^2 + wetScatter^2 + fillScatter^2 + wasteScatter^2)',
    'more or less in all',
    CHANCE,
  ),
  least: step('volume', 'total - spread', 'it may take as little as', GEOMETRY),
  most: step('volume', 'total + spread', 'it may take as much as', GEOMETRY),
  usualMargin: step(
    'share',
    'total > 0 L ? ceil(100 * spread / total - 0.000001) / 100 : 0',
    'margin that covers it, in whole per cent',
    GEOMETRY,
  ),
  wanted: step('volume', '(1 + margin) * total', 'to have on the shelf before the first pot', GEOMETRY),
  toBuy: step('volume', 'max(0 L, wanted - inHand)', 'of it to buy, beside what is in the shop', GEOMETRY),
} as const;
