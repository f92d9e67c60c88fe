/** Capacity: weight, people and power by the US federal rule, against its text and the worked figures of its handbook. */
import { capacity } from '../../src/cells/afloat/capacity';
import { equipmentOf, outboardOf, outboardsBefore2018, outboardsNow } from '../../src/trade/outboard-weights';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const LB = 0.453_592_37;
const HP = 745.699_871_582_27;
const LAW = '33 CFR 183.53(a), table and formulas';
const HANDBOOK = 'Coast Guard, Boatbuilder’s Handbook, discussion of 33 CFR 183.41';

const entries = {
  displacement: '2600 lb',
  boatWeight: '350 lb',
  margin: '0 %',
  bottom: 'other',
  transom: '15 in',
  sideLoad: '2000 lb',
};
const of = (more: Readonly<Record<string, string>>) => tryCell(capacity, { ...entries, ...more });
const hp = (length: string, breadth: string, ...ways: readonly Readonly<Record<string, string>>[]) =>
  ways.map((way) => of({ length, breadth, ...way }).number('mostPower') / HP);
const pounds = (more: Readonly<Record<string, string>>, ...keys: readonly string[]) => {
  const tried = of(more);
  return keys.map((key) => tried.number(key) / LB);
};
/** An outboard boat whose weight leaves so many pounds for people beside a motor of 4 to 6.9 hp, of 94 lb. */
const left = (people: number) => ({
  length: '12 ft',
  breadth: '46 in',
  rated: '5 hp',
  boatWeight: '100 lb',
  displacement: `${5 * (people + 94) + 100} lb`,
});

const ROUND = { bottom: 'other' };
const FLAT = { bottom: 'flat' };
const REMOTE = { steering: 'remote', transom: '20 in' };

const power = (id: string, input: string, expected: readonly number[], obtain: Check['obtain']): Check => ({
  id,
  cell: 'capacity',
  what: 'most power of an outboard boat',
  input,
  expected,
  unit: 'hp',
  tolerance: 1e-6,
  source: LAW,
  known: 'published',
  obtain,
});
const THREE = 'wheel steering and a transom of 20 in; tiller; tiller and a flat bottom';

export const rows: readonly Check[] = [
  power('R1', '10 ft by 3.5 ft, round bottom; flat, which has no step below 3', [3, 0], () =>
    hp('10 ft', '3.5 ft', ROUND, FLAT),
  ),
  power('R2', '12 ft by 46 in, round; flat', [15, 10], () => hp('12 ft', '46 in', ROUND, FLAT)),
  power('R3', '11 ft by 3.5 ft, flat', [3], () => hp('11 ft', '3.5 ft', FLAT)),
  power('R4', `13 ft by 4.25 ft: ${THREE}`, [25, 20, 15], () => hp('13 ft', '4.25 ft', REMOTE, ROUND, FLAT)),
  power('R5', `14 ft by 4.5 ft: ${THREE}`, [40, 30, 20], () => hp('14 ft', '4.5 ft', REMOTE, ROUND, FLAT)),
  power('R6', `16 ft by 5 ft: ${THREE}`, [70, 40, 25], () => hp('16 ft', '5 ft', REMOTE, ROUND, FLAT)),
  power('R7', `16 ft by 6.5 ft: ${THREE}`, [120, 60, 40], () => hp('16 ft', '6.5 ft', REMOTE, ROUND, FLAT)),
  {
    ...power('R8', '19.5 ft by 7 ft, wheel steering and a transom of 20 in', [183, 185], () => {
      const tried = of({ length: '19.5 ft', breadth: '7 ft', ...REMOTE });
      return [tried.number('raw'), tried.number('mostPower') / HP];
    }),
    source: 'explanatory pages on 33 CFR 183.53',
  },
  {
    ...power('R9', '18.5 ft by 6.75 ft, wheel steering and a transom of 20 in', [159.75, 160], () => {
      const tried = of({ length: '18.5 ft', breadth: '6.75 ft', ...REMOTE });
      return [tried.number('raw'), tried.number('mostPower') / HP];
    }),
    source: 'explanatory pages on 33 CFR 183.53',
  },
  {
    id: 'R10',
    cell: 'capacity',
    what: 'people of an outboard boat',
    input: 'persons weight of 550 lb',
    expected: [4],
    unit: '',
    tolerance: 0,
    source: HANDBOOK,
    known: 'published',
    obtain: () => [of({ ...left(550.001), sideLoad: '100 lb' }).number('persons')],
  },
  {
    id: 'R11',
    cell: 'capacity',
    what: 'persons weight, the lesser of weight and load along one side',
    input: '547 lb by weight, and 545 or 328 lb along one side',
    expected: [547, 546],
    unit: 'lb',
    tolerance: 1,
    source: `${HANDBOOK}, which cuts decimals off`,
    known: 'published',
    obtain: () =>
      ['545 lb', '328 lb'].flatMap((sideLoad) => pounds({ ...left(547), sideLoad }, 'personsWeight')),
  },
  {
    id: 'R12',
    cell: 'capacity',
    what: 'persons weight and people of a hand-propelled boat',
    input: 'maximum weight 400 lb',
    expected: [360, 3],
    unit: 'lb, 1',
    tolerance: 1e-6,
    source: '33 CFR 183.43: 0.9 W; (P + 32)/141, a half or more up',
    known: 'published',
    obtain: () => {
      const tried = of({ drive: 'hand', displacement: '1533.333333333 lb', boatWeight: '200 lb' });
      return [tried.number('personsWeight') / LB, tried.number('persons')];
    },
  },
  {
    id: 'R13',
    cell: 'capacity',
    what: 'persons weight and people of a boat for up to 2 hp',
    input: 'maximum weight 400 lb',
    expected: [335, 3],
    unit: 'lb, 1',
    tolerance: 1e-6,
    source: '33 CFR 183.43: 0.9 W - 25; (P + 32)/141, a half or more up',
    known: 'published',
    obtain: () => {
      const tried = of({ drive: 'small', displacement: '1533.333333333 lb', boatWeight: '200 lb' });
      return [tried.number('personsWeight') / LB, tried.number('persons')];
    },
  },
  {
    id: 'R19',
    cell: 'trade',
    what: 'motor, controls, battery and tank of 11 to 22.9 hp, and of 200 hp',
    input: 'table since 2018',
    expected: [234, 863],
    unit: 'lb',
    tolerance: 1e-6,
    source: 'ABYC S-30 Table 1A, as a builders’ page reproduces it',
    known: 'published',
    obtain: () => [20, 200].map((rated) => equipmentOf(outboardOf(outboardsNow, rated * HP)) / LB),
  },
  {
    id: 'Q1',
    cell: 'capacity',
    what: 'maximum weight of an outboard boat',
    input: 'displacement 2600 lb, boat 350 lb',
    expected: [450],
    unit: 'lb',
    tolerance: 1e-6,
    source: '33 CFR 183.35: (D - BW)/5',
    known: 'published',
    obtain: () => pounds({}, 'weight'),
  },
  {
    id: 'Q2',
    cell: 'capacity',
    what: 'maximum weight, persons weight and people of a hand-propelled boat, and the last two for up to 2 hp',
    input: 'displacement 900 lb, boat 120 lb',
    expected: [234, 210.6, 2, 185.6, 2],
    unit: 'lb, lb, 1, lb, 1',
    tolerance: 1e-6,
    source: '33 CFR 183.37 and 183.43: 3 (D - BW)/10',
    known: 'published',
    obtain: () => {
      const [hand, small] = ['hand', 'small'].map((drive) =>
        of({ drive, displacement: '900 lb', boatWeight: '120 lb' }),
      );
      return [
        hand!.number('weight') / LB,
        hand!.number('personsWeight') / LB,
        hand!.number('persons'),
        small!.number('personsWeight') / LB,
        small!.number('persons'),
      ];
    },
  },
  {
    id: 'Q3',
    cell: 'capacity',
    what: 'people by a load along one side of 300 lb, and how many they are',
    input: 'less by it than by weight',
    expected: [500, 4],
    unit: 'lb, 1',
    tolerance: 1e-6,
    source: '33 CFR 183.41(a)(2): A/0.6; (500 + 32)/141 = 3.77',
    known: 'published',
    obtain: () => {
      const tried = of({ ...left(549), sideLoad: '300 lb' });
      return [tried.number('personsWeight') / LB, tried.number('persons')];
    },
  },
  {
    id: 'Q11',
    cell: 'trade',
    what: 'motor, controls, battery and tank of 10 hp: since 2018, and before',
    input: 'two editions of the table',
    expected: [185, 160],
    unit: 'lb',
    tolerance: 1e-6,
    source: 'ABYC S-30 Table 1A; 33 CFR 183, Table 4 to Subpart H, 2015 edition, column 6',
    known: 'published',
    obtain: () =>
      [outboardsNow, outboardsBefore2018].map((rows) => equipmentOf(outboardOf(rows, 10 * HP)) / LB),
  },
];
