/** The working of the resin. */
import { type CellFunction, step } from '../form/define';
import { packFunctions } from '../common/sizes/cheapest-packs';
import { layups, glassDensity, curedResinDensity } from '../../trade/glass';
import { epoxyLine } from '../../trade/adhesives';
import { citation } from '../../trade/table';
import { reachSteps } from './resin-reach';
import { scatterSteps } from './resin-scatter';
import { stageSteps } from './resin-stages';
import { GEOMETRY } from '../../trade/sources';

const MIXING = 'geometry of mixing: volumes add up, contraction left out';

const SHARES = 'definition of the share of glass by mass';

/** Densities of glass and of cured resin, as they stand in formulas. */
const GLASS = `${glassDensity.value} kg/m^3`;

const CURED = `${curedResinDensity.value} kg/m^3`;

export const NIEDERER = 'B. Niederer, "Estimating Epoxy Amounts"';

const toBuy = 'toBuy, smallPack, smallPrice, middlePack, middlePrice, largePack, largePrice';

/** `layup == "mat" ? 0.3 : …` from the table, the first row for the rest. */
const usualShare = layups.rows
  .slice(1)
  .reduceRight(
    (rest, row) => `layup == "${row.id}" ? ${row.cells.glassShare?.value} : ${rest}`,
    `${layups.rows[0]?.cells.glassShare?.value}`,
  );

export const resinFunctions = {
  ...packFunctions,
  smallestSold: {
    takes: ['volume', 'volume', 'volume'],
    gives: 'volume',
    how: 'least of the packs that are sold',
    run: (...packs) => {
      const sold = packs.filter((pack) => pack > 0);
      if (sold.length === 0) throw new Error('give the size of at least one pack that is sold');
      return Math.min(...sold);
    },
  },
} satisfies Readonly<Record<string, CellFunction>>;

export const resinSteps = {
  bottomBoth: step('area', '2 * bottomArea', 'bottom, port and starboard', GEOMETRY),
  restBoth: step(
    'area',
    '2 * (bilgeArea + sideArea) + transomArea + bowArea + flatArea',
    'bilges and sides, port and starboard, transoms, and what lies flat',
    GEOMETRY,
  ),
  sheathedArea: step(
    'area',
    '(bottomLayers > 0 ? bottomBoth : 0 m^2) + (sideLayers > 0 ? restBoth : 0 m^2)',
    'hull under cloth',
    GEOMETRY,
  ),
  bareArea: step(
    'area',
    'insideArea + bottomBoth + restBoth - sheathedArea',
    'wood that is only sealed: the inside, and the outside without cloth',
    GEOMETRY,
  ),
  clothArea: step(
    'area',
    '(1 + laps) * (bottomLayers * bottomBoth + sideLayers * restBoth)',
    'cloth laid, laps and all layers',
    GEOMETRY,
  ),
  clothMass: step('mass', 'clothArea * clothWeight', 'dry weight of the cloth laid', GEOMETRY),
  usualShare: step(
    'share',
    usualShare,
    'share of glass usual with this lay-up',
    layups.rows
      .map((row) => `${row.label}: ${row.cells.glassShare ? citation(row.cells.glassShare) : ''}`)
      .join('; '),
  ),
  wetOutMass: step(
    'mass',
    'clothMass * (1 - glassShare) / glassShare',
    'resin that wets the cloth out',
    SHARES,
  ),
  resinByVolume: step(
    'number',
    'basis == "mass" ? resinParts / hardenerParts * hardenerDensity / resinDensity : resinParts / hardenerParts',
    'parts of resin to one of hardener by volume',
    MIXING,
  ),
  mixDensity: step(
    'density',
    '(resinByVolume * resinDensity + hardenerDensity) / (resinByVolume + 1)',
    'density of the mix',
    MIXING,
  ),
  hardenerPer100: step(
    'number',
    '100 * hardenerDensity / (resinByVolume * resinDensity)',
    'hardener to 100 parts of resin by weight, for the scale',
    MIXING,
  ),
  sealing: step(
    'volume',
    'sealCoats > 0 ? bareArea * (uptake + (sealCoats - 1) * laterCoat) + sheathedArea * uptake : 0 L',
    'sealing: all coats on bare wood, and what the wood under the cloth drinks',
    'common practice, no source',
  ),
  wetOut: step('volume', 'wetOutMass / mixDensity', 'wetting out the cloth', GEOMETRY),
  filling: step(
    'volume',
    'sheathedArea * fillCoats * fillFilm',
    'filling the weave',
    `${NIEDERER}, for the film of a coat`,
  ),
  net: step('volume', 'sealing + wetOut + filling', 'sealing and sheathing, nothing wasted', GEOMETRY),
  layerGlue: step(
    'volume',
    `(1 + waste) * layersArea * ${1000 * epoxyLine.value} mm`,
    'glue between layers of the skin, with waste',
    citation(epoxyLine),
  ),
  pastes: step(
    'volume',
    '(glueEpoxy + filletEpoxy + fillerEpoxy) / mixDensity + layerGlue',
    'glue lines, layers, fillets and filler, with what each wastes',
    GEOMETRY,
  ),
  total: step(
    'volume',
    '(1 + waste) * net + pastes',
    'mixed resin with waste',
    'waste as a share added to the net amount',
  ),
  resin: step('volume', 'total * resinByVolume / (resinByVolume + 1)', 'resin to pour', MIXING),
  hardener: step('volume', 'total / (resinByVolume + 1)', 'hardener to pour', MIXING),
  resinMass: step('mass', 'resin * resinDensity', 'resin by weight', GEOMETRY),
  hardenerMass: step('mass', 'hardener * hardenerDensity', 'hardener by weight', GEOMETRY),
  ...stageSteps,
  ...reachSteps,
  ...scatterSteps,
  small: step('count', `smallPacks(${toBuy})`, 'small packs to buy', 'least cost, all purchases compared'),
  middle: step('count', `middlePacks(${toBuy})`, 'middle packs to buy', 'least cost, all purchases compared'),
  large: step('count', `largePacks(${toBuy})`, 'large packs to buy', 'least cost, all purchases compared'),
  smallestPack: step(
    'pack',
    'smallestSold(smallPack, middlePack, largePack)',
    'smallest pack that is sold',
    'as the shop sells it',
  ),
  pricePerMass: step(
    'pricePerMass',
    '(smallestPack == smallPack ? smallPrice : smallestPack == middlePack ? middlePrice : largePrice) / (smallestPack * mixDensity)',
    'price of what is in it, by weight',
    GEOMETRY,
  ),
  cost: step(
    'money',
    'small * smallPrice + middle * middlePrice + large * largePrice',
    'price of the packs',
    GEOMETRY,
  ),
  leftOver: step(
    'volume',
    'inHand + small * smallPack + middle * middlePack + large * largePack - total',
    'left over, if the rules hold',
    GEOMETRY,
  ),
  glassVolumeShare: step(
    'share',
    `glassShare / (${GLASS}) / (glassShare / (${GLASS}) + (1 - glassShare) / (${CURED}))`,
    'share of glass by volume',
    `${SHARES}; densities of glass and cured resin ${citation(glassDensity)}`,
  ),
  laminateDensity: step(
    'density',
    `glassVolumeShare * ${GLASS} + (1 - glassVolumeShare) * ${CURED}`,
    'density of the cured laminate, without voids',
    `${SHARES}; ${citation(glassDensity)}`,
  ),
  plyThickness: step(
    'film',
    'clothWeight / glassShare / laminateDensity',
    'thickness of one wetted layer',
    'geometry; with these densities it is the form of ISO 12215-5, (w / 3.072) (2.56 / share - 1.36)',
  ),
  skinThickness: step(
    'film',
    'max(bottomLayers, sideLayers) > 0 ? max(bottomLayers, sideLayers) * plyThickness + fillCoats * fillFilm : 0 mm',
    'sheathing where it is thickest, laps apart',
    GEOMETRY,
  ),
  addedMass: step(
    'mass',
    'clothMass + net * mixDensity',
    'weight that sealing and sheathing add to the hull',
    GEOMETRY,
  ),
} as const;
