/** The working of the list: what to buy of each, what it is planned to cost, what is spent; and what the roof rack carries. */
import { type FormulaStep, step, type ValuesOf } from '../form/define';
import { fact, tell } from '../form/fact';
import type { buyListInputs } from './buy-list-inputs';
import { buyLines, type LineId, lineIds, type Shop, shops, soldAs } from './buy-list-lines';
import { CUSTOM, SUM } from '../../trade/sources';

const PACKS = 'what is wanted, less what is there, in whole packs';
const LEAST_COST = 'least cost over all combinations of packs';

/** Whole packs, and none where enough is there; a hair less than a pack is a pack. */
const whole = (need: string, have: string) => `max(0, ceil(${need} - ${have} - 0.000001))`;
/** The cost of part of what a cell planned, at its mean price. */
const partOf = (cost: string, buy: string, need: string) =>
  `${need} > 0 ? ${cost} * min(1, ${buy} / ${need}) : 0 * ${cost}`;

const paintNeed =
  'max(0 L, paintVolume - paintHave * smallestTin), smallTin, smallTinPrice, middleTin, middleTinPrice, largeTin, largeTinPrice';

/** Of every line: how many to buy, and what they cost. */
const bought = {
  timbersBuy: step('count', whole('timbersNeed', 'timbersHave'), 'boards for long timbers to buy', PACKS),
  timbersPlan: step(
    'money',
    partOf('max(0, timbersCost - timberJoints * jointWorth)', 'timbersBuy', 'timbersNeed'),
    'they cost; of fewer their mean price',
    SUM,
  ),
  usualBoard: step(
    'money',
    'boardThickness * boardWidth * roughLength * byVolume',
    'price of a board by volume',
    'definition',
  ),
  roughNeed: step(
    'number',
    '(frameWood + stemWood + thwartWood) * (1 + roughWaste) / (boardThickness * boardWidth * roughLength)',
    'boards for frames, stem and thwarts',
    `by volume, and what is sawn away: ${CUSTOM}`,
  ),
  roughBuy: step('count', whole('roughNeed', 'roughHave'), 'boards for them to buy', PACKS),
  roughPlan: step('money', 'roughBuy * roughPrice', 'they cost', SUM),
  jigBuy: step('count', whole('jigNeed', 'jigHave'), 'boards for the jig to buy', PACKS),
  jigPlan: step('money', 'jigBuy * jigPrice', 'they cost', SUM),
  sheetsBuy: step('count', whole('sheetsNeed', 'sheetsHave'), 'sheets of plywood to buy', PACKS),
  sheetsPlan: step(
    'money',
    partOf('sheetsCost', 'sheetsBuy', 'sheetsNeed'),
    'they cost; of fewer their mean price',
    SUM,
  ),
  screwsBuy: step('count', whole('screwsNeed', 'screwsHave'), 'boxes of screws to buy', PACKS),
  screwsPlan: step('money', 'screwsBuy * screwsPrice', 'they cost', SUM),
  glueNeed: step(
    'number',
    'glueIs == "epoxy" ? 0 : glueVolume / gluePack',
    'packs of glue; epoxy stands in its own line',
    'definition',
  ),
  glueBuy: step('count', whole('glueNeed', 'glueHave'), 'packs of glue to buy', PACKS),
  gluePlan: step('money', 'glueBuy * gluePrice', 'they cost', SUM),
  epoxyNeed: step('count', 'epoxySmall + epoxyMiddle + epoxyLarge', 'packs of epoxy', SUM),
  epoxyBuy: step('count', whole('epoxyNeed', 'epoxyHave'), 'packs of epoxy to buy', PACKS),
  epoxyPlan: step(
    'money',
    partOf('epoxyCost', 'epoxyBuy', 'epoxyNeed'),
    'they cost; of fewer their mean price',
    SUM,
  ),
  powder: step(
    'mass',
    'glueFiller + filletEpoxy * fillerShare + pasteFiller',
    'filler for glue, fillets, holes and gaps',
    SUM,
  ),
  powderBuy: step('count', whole('powder / bag', 'powderHave'), 'bags of filler to buy', PACKS),
  powderPlan: step('money', 'powderBuy * bagPrice', 'they cost', SUM),
  clothNeed: step('count', 'ceil(clothLength / clothBy - 0.000001)', 'lengths of cloth as it is sold', PACKS),
  clothBuy: step('count', whole('clothNeed', 'clothHave'), 'lengths of cloth to buy', PACKS),
  clothPlan: step('money', partOf('clothCost', 'clothBuy', 'clothNeed'), 'they cost', SUM),
  smallestTin: step(
    'volume',
    'smallTin > 0 L ? smallTin : middleTin > 0 L ? middleTin : largeTin',
    'the smallest tin of paint that is sold',
    'definition',
  ),
  paintSmall: step('count', `smallPacks(${paintNeed})`, 'small tins of paint', LEAST_COST),
  paintMiddle: step('count', `middlePacks(${paintNeed})`, 'middle tins of paint', LEAST_COST),
  paintLarge: step('count', `largePacks(${paintNeed})`, 'large tins of paint', LEAST_COST),
  paintBuy: step('count', 'paintSmall + paintMiddle + paintLarge', 'tins of paint to buy', SUM),
  paintPlan: step(
    'money',
    'paintSmall * smallTinPrice + paintMiddle * middleTinPrice + paintLarge * largeTinPrice',
    'they cost',
    SUM,
  ),
  thinnerBuy: step(
    'count',
    whole('(thinnerVolume + washing) / thinnerTin', 'thinnerHave'),
    'tins of thinner to buy',
    PACKS,
  ),
  thinnerPlan: step('money', 'thinnerBuy * thinnerPrice', 'they cost', SUM),
  paperBuy: step('count', whole('paperNeed', 'paperHave'), 'pieces of paper for sanding to buy', PACKS),
  paperPlan: step('money', 'paperBuy * paperPrice', 'they cost', SUM),
  coversNeed: step(
    'count',
    'paintCovers + sealCoats + fillCoats',
    'roller covers, one for each coat of epoxy',
    CUSTOM,
  ),
  coversBuy: step('count', whole('coversNeed', 'coversHave'), 'roller covers to buy', PACKS),
  coversPlan: step('money', 'coversBuy * coverPrice', 'they cost', SUM),
  cupsBuy: step('count', whole('batches + pots', 'cupsHave'), 'mixing cups to buy, one a batch', PACKS),
  cupsPlan: step('money', 'cupsBuy * cupPrice', 'they cost', SUM),
  glovesBuy: step('count', whole('glovesNeed', 'glovesHave'), 'boxes of gloves to buy', PACKS),
  glovesPlan: step('money', 'glovesBuy * glovesPrice', 'they cost', SUM),
  masksBuy: step(
    'count',
    whole('sandingTime / (8 h)', 'masksHave'),
    'masks to buy, a new one for every day of sanding',
    CUSTOM,
  ),
  masksPlan: step('money', 'masksBuy * maskPrice', 'they cost', SUM),
  fittingsBuy: step('count', whole('fittingsNeed', 'fittingsHave'), 'lots of fittings to buy', PACKS),
  fittingsPlan: step('money', 'fittingsBuy * fittingsPrice', 'they cost', SUM),
} as const;

const all = (of: readonly LineId[], what: 'Plan' | 'Spent') => of.map((id) => `${id}${what}`).join(' + ');
const inShop = (shop: Shop) => buyLines.filter((line) => line.shop === shop).map(({ id }) => id);
type Money = FormulaStep & { readonly kind: 'money' };

const spent = Object.fromEntries(
  lineIds.map((id): [string, FormulaStep] => [
    `${id}Spent`,
    step('money', `${id}Got == "yes" ? ${id}Paid : 0 * ${id}Plan`, 'paid for it so far', 'as typed'),
  ]),
) as { readonly [K in `${LineId}Spent`]: Money }; // the keys are the lines' own

const ofShops = Object.fromEntries(
  (Object.keys(shops) as Shop[]).map((shop): [string, FormulaStep] => [
    `${shop}Shop`,
    step('money', all(inShop(shop), 'Plan'), `planned: ${shops[shop]}`, SUM),
  ]),
) as { readonly [K in `${Shop}Shop`]: Money }; // the keys are the shops' own

type Row = { readonly line: string } & { readonly [K in `${LineId}${'Buy' | 'Plan' | 'Spent'}`]: number } & {
  readonly [K in `${LineId}Got`]: string;
};

/** Lines with something to buy, those of them bought, and what the others are planned to cost. */
const tally = fact('counted and added up, line by line', SUM, (v: Row) => {
  const wanted = lineIds.filter((id) => v[`${id}Buy`] > 0);
  const open = lineIds.filter((id) => v[`${id}Got`] !== 'yes');
  return {
    lines: wanted.length,
    bought: wanted.filter((id) => v[`${id}Got`] === 'yes').length,
    stillToPay: open.reduce((sum, id) => sum + v[`${id}Plan`], 0),
  };
});

const totals = {
  planned: step(
    'money',
    (Object.keys(shops) as Shop[]).map((shop) => `${shop}Shop`).join(' + '),
    'all lines as planned',
    SUM,
  ),
  setAside: step('money', 'contingency * planned', 'set aside for surprises', 'definition'),
  cost: step('money', 'planned + setAside', 'planned, and what is set aside', SUM),
  spent: step('money', all(lineIds, 'Spent'), 'paid so far', SUM),
  lines: tell(tally, 'count', 'lines with something to buy', ({ lines }) => lines),
  linesBought: tell(tally, 'count', 'of them bought', (found) => found.bought),
  stillToPay: tell(tally, 'money', 'planned for what is not yet bought', ({ stillToPay }) => stillToPay),
  over: step(
    'money',
    'spent + stillToPay - planned',
    'paid beyond the plan for what is bought; − below it',
    'the difference of the two',
  ),
  overSize: step('money', 'abs(over)', 'the same, whichever way', 'the difference of the two'),
} as const;

/** What of it still has to come home on the roof rack. */
const rack = {
  oneSheet: step(
    'mass',
    'sheetLength * sheetWidth * sheetThickness * plyDensity',
    'one sheet of the thickness priced',
    'volume times density',
  ),
  sheetsMass: step('mass', 'sheetsGot == "yes" ? 0 kg : sheetsBuy * oneSheet', 'the sheets', SUM),
  timbersMass: step(
    'mass',
    'timbersGot == "yes" or timbersNeed == 0 ? 0 kg : woodVolume * woodDensity * min(1, timbersBuy / timbersNeed)',
    'the boards for long timbers',
    'volume times density',
  ),
  roughMass: step(
    'mass',
    'roughGot == "yes" ? 0 kg : roughBuy * boardThickness * boardWidth * roughLength * woodDensity',
    'the boards for frames, stem and thwarts',
    'volume times density',
  ),
  jigMass: step('mass', 'jigGot == "yes" ? 0 kg : jigBuy * jigBoard', 'the boards for the jig', SUM),
  boardsMass: step('mass', 'timbersMass + roughMass + jigMass', 'all the boards', SUM),
  rackMass: step('mass', 'sheetsMass + boardsMass', 'sheets and boards together', SUM),
  trips: step(
    'count',
    'max(0, ceil(rackMass / rackBears - 0.000001))',
    'trips, each within what the rack bears',
    'definition',
  ),
  longest: step(
    'length',
    'max(sheetsMass > 0 kg ? sheetLength : 0 m, timbersMass > 0 kg ? longestBoard : 0 m, roughMass > 0 kg ? roughLength : 0 m, jigMass > 0 kg ? jigLength : 0 m)',
    'the longest piece on it',
    'definition',
  ),
  beyond: step(
    'length',
    'max(0 m, (longest - barsApart) / 2)',
    'it stands out beyond each bar',
    'geometry: laid on in its middle',
  ),
} as const;

/** The line looked at. */
const lineHere = fact('of the list', 'definition', (v: Row) => {
  const here = buyLines.find((one) => one.id === v.line)!; // an option of the list itself
  const { id, shop } = here;
  const bought = v[`${id}Got`] === 'yes';
  return {
    buy: v[`${id}Buy`],
    sold: soldAs(here, v[`${id}Buy`]),
    shop: shops[shop],
    plan: v[`${id}Plan`],
    spent: v[`${id}Spent`],
    state: bought ? 'bought' : v[`${id}Buy`] > 0 ? 'to buy' : 'nothing to buy',
  };
});

export const buyListSteps = {
  ...bought,
  ...spent,
  ...ofShops,
  ...totals,
  ...rack,
  lineBuy: tell(lineHere, 'count', 'how many to buy', ({ buy }) => buy),
  lineSold: tell(lineHere, 'choice', 'in what it is sold', ({ sold }) => sold),
  lineShop: tell(lineHere, 'choice', 'where it is bought', ({ shop }) => shop),
  linePlan: tell(lineHere, 'money', 'planned for it', ({ plan }) => plan),
  lineState: tell(lineHere, 'choice', 'whether it is bought', ({ state }) => state),
  lineSpent: tell(lineHere, 'money', 'paid for it', ({ spent: paid }) => paid),
} as const;

export type BuyListValues = ValuesOf<typeof buyListInputs, typeof buyListSteps>;
