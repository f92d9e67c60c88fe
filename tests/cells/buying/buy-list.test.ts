import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buyList } from '../../../src/cells/buying/buy-list';
import { buyLines } from '../../../src/cells/buying/buy-list-lines';
import { measured, testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

/** Needs and prices in round numbers. */
const set: Readonly<Record<string, string>> = {
  timbersNeed: '10',
  timbersCost: '120',
  timberJoints: '10',
  jointWorth: '2',
  frameWood: '10 L',
  stemWood: '2 L',
  thwartWood: '3 L',
  roughWaste: '20 %',
  boardThickness: '20 mm',
  boardWidth: '100 mm',
  roughLength: '3 m',
  byVolume: '1000 /m^3',
  jigNeed: '6',
  jigPrice: '9',
  sheetsNeed: '8',
  sheetsCost: '400',
  screwsNeed: '5',
  screwsPrice: '12',
  glueIs: 'pva',
  glueVolume: '2.2 L',
  gluePack: '1 L',
  gluePrice: '14',
  epoxySmall: '1',
  epoxyMiddle: '0',
  epoxyLarge: '1',
  epoxyCost: '330',
  glueFiller: '300 g',
  filletEpoxy: '1 kg',
  fillerShare: '25 %',
  pasteFiller: '100 g',
  bag: '0.5 kg',
  bagPrice: '8',
  clothLength: '12 m',
  clothBy: '1 m',
  clothCost: '108',
  paintVolume: '1.4 L',
  smallTin: '0.5 L',
  smallTinPrice: '18',
  middleTin: '1 L',
  middleTinPrice: '30',
  largeTin: '4 L',
  largeTinPrice: '100',
  thinnerVolume: '0.2 L',
  washing: '0.5 L',
  thinnerTin: '0.5 L',
  thinnerPrice: '7',
  paperNeed: '40',
  paperPrice: '0.5',
  paintCovers: '4',
  sealCoats: '3',
  fillCoats: '3',
  coverPrice: '3',
  batches: '12',
  pots: '3',
  cupPrice: '0.4',
  glovesNeed: '1',
  glovesPrice: '12',
  sandingTime: '20 h',
  maskPrice: '5',
  fittingsNeed: '2',
  fittingsPrice: '60',
  contingency: '10 %',
};
const tried = (entries: Record<string, string> = {}) => tryCell(buyList, { ...set, ...entries });
const says = (entries: Record<string, string>) =>
  tried(entries)
    .warnings.map((one) => one.says)
    .join(' ');
const numbers = (keys: readonly string[], entries: Record<string, string> = {}) => {
  const one = tried(entries);
  return keys.map((key) => Math.round(one.number(key) * 1e6) / 1e6);
};

describe('the list', () => {
  test('counts packs as the shops hand them over', () => {
    expect(
      numbers(['timbersBuy', 'roughBuy', 'jigBuy', 'sheetsBuy', 'screwsBuy', 'glueBuy', 'epoxyBuy']),
    ).toStrictEqual([
      10,
      // 15 L and a fifth over, in boards of 6 L.
      3, 6, 8, 5,
      // 2.2 L in packs of a litre.
      3, 2,
    ]);
    expect(
      numbers(['powderBuy', 'clothBuy', 'paintBuy', 'thinnerBuy', 'paperBuy', 'coversBuy', 'cupsBuy']),
    ).toStrictEqual([2, 12, 2, 2, 40, 10, 15]);
    expect(numbers(['glovesBuy', 'masksBuy', 'fittingsBuy'])).toStrictEqual([1, 3, 2]);
    expect(numbers(['roughNeed', 'glueNeed', 'epoxyNeed', 'clothNeed', 'coversNeed'])).toStrictEqual([
      3, 2.2, 2, 12, 10,
    ]);
    expect(tried().number('powder')).toBeCloseTo(0.3 + 0.25 + 0.1, 9);
  });

  test('costs what they cost, joints’ worth taken off', () => {
    expect(numbers(['timbersPlan', 'roughPlan', 'jigPlan', 'sheetsPlan', 'screwsPlan'])).toStrictEqual([
      100, 18, 54, 400, 60,
    ]);
    expect(numbers(['gluePlan', 'epoxyPlan', 'powderPlan', 'clothPlan', 'thinnerPlan'])).toStrictEqual([
      42, 330, 16, 108, 14,
    ]);
    expect(numbers(['paperPlan', 'coversPlan', 'cupsPlan'])).toStrictEqual([20, 30, 6]);
    expect(numbers(['glovesPlan', 'masksPlan', 'fittingsPlan', 'usualBoard'])).toStrictEqual([
      12, 15, 120, 6,
    ]);
  });

  test('paint in the cheapest tins: one of a litre and one of half', () => {
    expect(numbers(['smallestTin', 'paintSmall', 'paintMiddle', 'paintLarge', 'paintPlan'])).toStrictEqual([
      0.0005, 1, 1, 0, 48,
    ]);
    // Two small ones there already leave 0.4 L: a small tin.
    expect(numbers(['paintSmall', 'paintMiddle', 'paintPlan'], { paintHave: '2' })).toStrictEqual([1, 0, 18]);
    expect(numbers(['smallestTin'], { smallTin: '0 L' })).toStrictEqual([0.001]);
  });

  test('epoxy used as glue stands in its own line once', () => {
    expect(numbers(['glueBuy', 'gluePlan'], { glueIs: 'epoxy' })).toStrictEqual([0, 0]);
  });

  test('what is on the shelf is not bought again', () => {
    const have = { timbersHave: '4', sheetsHave: '2', screwsHave: '5', cupsHave: '100', clothHave: '3' };
    expect(numbers(['timbersBuy', 'timbersPlan'], have)).toStrictEqual([6, 60]);
    expect(numbers(['sheetsBuy', 'sheetsPlan', 'screwsBuy', 'screwsPlan', 'cupsBuy'], have)).toStrictEqual([
      6, 300, 0, 0, 0,
    ]);
    expect(numbers(['clothBuy', 'clothPlan'], have)).toStrictEqual([9, 81]);
  });

  test('adds up by shop and in all, with what is set aside on a line of its own', () => {
    const shops = [
      'lumberShop',
      'sheetShop',
      'fasteningShop',
      'glueShop',
      'resinShop',
      'clothShop',
      'paintShop',
      'consumablesShop',
      'safetyShop',
    ];
    const sums = [172, 400, 180, 42, 346, 108, 62, 56, 27];
    expect(numbers(shops)).toStrictEqual(sums);
    expect(numbers(['planned', 'setAside', 'cost'])).toStrictEqual([1393, 139.3, 1532.3]);
  });

  test('ticks off, and sets what was paid against the plan', () => {
    const none = tried();
    expect(none.number('lines')).toBe(17);
    expect(none.number('linesBought')).toBe(0);
    expect(none.number('spent')).toBe(0);
    expect(none.number('stillToPay')).toBeCloseTo(none.number('planned'), 9);
    expect(none.words).toContain('Nothing of the 17 lines');
    // As planned until the till has spoken.
    const sheets = tried({ sheetsGot: 'yes' });
    expect(sheets.number('sheetsSpent')).toBeCloseTo(400, 9);
    expect(sheets.number('over')).toBeCloseTo(0, 9);
    expect(sheets.words).toContain('as planned');
    const dearer = tried({ sheetsGot: 'yes', sheetsPaid: '450', screwsGot: 'yes', screwsPaid: '55' });
    expect(dearer.number('linesBought')).toBe(2);
    expect(dearer.number('spent')).toBeCloseTo(505, 9);
    expect(dearer.number('over')).toBeCloseTo(45, 9);
    expect(dearer.number('overSize')).toBeCloseTo(45, 9);
    expect(dearer.number('stillToPay')).toBeCloseTo(none.number('planned') - 460, 9);
    expect(dearer.words).toContain('more than planned');
    expect(tried({ sheetsGot: 'yes', sheetsPaid: '390' }).words).toContain('less than planned');
    expect(says({ sheetsGot: 'yes', sheetsPaid: '800' })).toContain('was set aside');
  });

  test('a line is paid only when it is ticked off', () => {
    const spent = [
      'timbersSpent',
      'roughSpent',
      'jigSpent',
      'sheetsSpent',
      'screwsSpent',
      'glueSpent',
      'epoxySpent',
      'powderSpent',
      'clothSpent',
      'paintSpent',
      'thinnerSpent',
      'paperSpent',
      'coversSpent',
      'cupsSpent',
      'glovesSpent',
      'masksSpent',
      'fittingsSpent',
    ];
    const paid = Object.fromEntries(buyLines.map(({ id }, i) => [`${id}Paid`, `${i + 1}`]));
    const got = Object.fromEntries(buyLines.map(({ id }) => [`${id}Got`, 'yes']));
    const each = spent.map((_, i) => i + 1);
    expect(numbers(spent, { ...paid, ...got })).toStrictEqual(each);
    expect(tried({ ...paid, ...got }).number('spent')).toBe(each.reduce((sum, one) => sum + one, 0));
    expect(numbers(spent, paid)).toStrictEqual(each.map(() => 0));
  });

  test('each line of the table says where, how many, and how it stands', () => {
    const one = tried({ sheetsGot: 'yes', screwsHave: '9' });
    expect(one.rows.map(({ id }) => id)).toStrictEqual(buyLines.map(({ id }) => id));
    const row = (id: string) =>
      ['lineShop', 'lineBuy', 'lineSold', 'linePlan', 'lineState', 'lineSpent'].map((of) =>
        one.inRow(id, of),
      );
    expect(row('sheets')).toStrictEqual(['plywood', 8, 'sheets', 400, 'bought', 400]);
    expect(row('screws')).toStrictEqual(['screws', 0, 'boxes', 0, 'nothing to buy', 0]);
    expect(row('glue')).toStrictEqual(['glue', 3, 'packs', 42, 'to buy', 0]);
  });
});

describe('the roof rack', () => {
  const load = {
    sheetLength: '2440 mm',
    sheetWidth: '1220 mm',
    sheetThickness: '10 mm',
    plyDensity: '500 kg/m^3',
    woodVolume: '0.1 m^3',
    woodDensity: '500 kg/m^3',
    jigBoard: '10 kg',
    longestBoard: '4.2 m',
    jigLength: '3.6 m',
    barsApart: '1000 mm',
    rackBears: '80 kg',
  };

  test('carries sheets and boards that are not yet bought', () => {
    const one = tried(load);
    expect(one.number('oneSheet')).toBeCloseTo(2.44 * 1.22 * 0.01 * 500, 9);
    expect(one.number('sheetsMass')).toBeCloseTo(8 * 2.44 * 1.22 * 5, 9);
    expect(one.number('timbersMass')).toBeCloseTo(50, 9);
    expect(one.number('roughMass')).toBeCloseTo(3 * 0.006 * 500, 9);
    expect(one.number('jigMass')).toBeCloseTo(60, 9);
    expect(one.number('boardsMass')).toBeCloseTo(119, 9);
    const all = 119 + 8 * 2.44 * 1.22 * 5;
    expect(one.number('rackMass')).toBeCloseTo(all, 9);
    expect(one.number('trips')).toBe(Math.ceil(all / 80));
    expect(one.number('longest')).toBeCloseTo(4.2, 9);
    expect(one.number('beyond')).toBeCloseTo(1.6, 9);
    expect(says(load)).toContain('the rack bears 80 kg');
    expect(says(load)).toContain('stands out 1600 mm');
    expect(measured(one.drawing, '4200 mm')).toBeCloseTo(4200, 6);
  });

  test('is empty when all is bought', () => {
    const home = { ...load, sheetsGot: 'yes', timbersGot: 'yes', roughGot: 'yes', jigGot: 'yes' };
    const one = tried(home);
    expect(one.number('rackMass')).toBe(0);
    expect(one.number('trips')).toBe(0);
    expect(one.number('longest')).toBe(0);
    expect(one.drawing?.says).toContain('Nothing is left');
    // Without its boards the sheets are the longest.
    expect(tried({ ...home, sheetsGot: 'no' }).number('longest')).toBeCloseTo(2.44, 9);
  });
});

test('no line’s share of the plan is lost or counted twice, whatever is there or bought', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.nat({ max: 3 }), fc.boolean()), { minLength: 17, maxLength: 17 }),
      (stand) => {
        const entries = Object.fromEntries(
          buyLines.flatMap(({ id }, i) => [
            [`${id}Have`, `${stand[i]![0]}`],
            [`${id}Got`, stand[i]![1] ? 'yes' : 'no'],
          ]),
        );
        const one = tried(entries);
        const plans = buyLines.map(({ id }) => one.number(`${id}Plan`));
        expect(plans.reduce((sum, plan) => sum + plan, 0)).toBeCloseTo(one.number('planned'), 6);
        expect(one.number('spent') + one.number('stillToPay')).toBeCloseTo(one.number('planned'), 6);
      },
    ),
    { seed: 7, numRuns: 12 },
  );
});

describe('drawing', () => {
  testDrawings(buyList, {
    'as it opens': {},
    'sheets alone': { timbersGot: 'yes', roughGot: 'yes', jigGot: 'yes' },
    'boards alone': { sheetsGot: 'yes' },
    'all at home': { sheetsGot: 'yes', timbersGot: 'yes', roughGot: 'yes', jigGot: 'yes' },
    'wide bars': { barsApart: '3 m' },
  });
});
