/** The working of the paint. */
import { step } from '../form/define';
import { GEOMETRY } from '../../trade/sources';

const SOLIDS = 'definition of solids by volume: what is left of a wet film when it is dry';
const LEAST_COST = 'least cost, all purchases compared';
const NEED = 'volume, smallTin, smallTinPrice, middleTin, middleTinPrice, largeTin, largeTinPrice';

export const HOW_LOST =
  'a maker of marine coatings, on spreading rates: each loss is a share of what the one before leaves';

export const paintSteps = {
  area: step(
    'area',
    'where == "typed" ? ownArea : moreArea + (where == "inside" ? insideArea : where == "outside" ? outsideArea : outsideArea + insideArea)',
    'face to be painted',
    GEOMETRY,
  ),
  thinned: step('share', 'solids / (1 + thinner)', 'solids of the paint as it is rolled on', SOLIDS),
  wetFilm: step('film', 'film / thinned', 'wet film that dries to one coat', SOLIDS),
  rate: step('spreadingRate', 'solids / film', 'face that one coat covers, nothing lost', SOLIDS),
  lost: step(
    'share',
    '1 - (1 - handLoss) * (1 - unevenLoss)',
    'part of the paint that ends in no film, or in too thick a one',
    HOW_LOST,
  ),
  realRate: step(
    'spreadingRate',
    'rate * (1 - lost)',
    'face that one coat covers, losses taken off',
    HOW_LOST,
  ),
  perCoat: step('volume', 'area / realRate', 'paint for one coat, out of the tin', GEOMETRY),
  volume: step('volume', 'coats * perCoat', 'paint for all coats, out of the tin', GEOMETRY),
  thinnerVolume: step('volume', 'thinner * volume', 'thinner to stir into it', GEOMETRY),
  dryFilm: step('film', 'coats * film', 'all coats, dry', GEOMETRY),
  small: step('count', `smallPacks(${NEED})`, 'small tins to buy', LEAST_COST),
  middle: step('count', `middlePacks(${NEED})`, 'middle tins to buy', LEAST_COST),
  large: step('count', `largePacks(${NEED})`, 'large tins to buy', LEAST_COST),
  cost: step(
    'money',
    'small * smallTinPrice + middle * middleTinPrice + large * largeTinPrice',
    'price of the tins',
    GEOMETRY,
  ),
  leftOver: step(
    'volume',
    'small * smallTin + middle * middleTin + large * largeTin - volume',
    'bought beyond the need',
    GEOMETRY,
  ),
  rollers: step(
    'count',
    'coats * max(0, ceil(area / coverReach - 0.000001))',
    'roller covers, fresh ones for each coat',
    'common practice, no source',
  ),
} as const;
