/** Sheets: strips of the trade, and published instances whose fewest sheets are proved. */
import { sheets } from '../../src/cells/skin/sheets';
import { shopNest } from '../../src/kernel/nest-shop';
import { searchNest } from '../../src/search/nest/search-nest';
import { tryCell } from '../cells/try-cell';
import { BEASLEY, binProblem, bins, problemOf, sheets as instances } from '../search/nest/instances';
import type { Check } from './check';

const typed = (parts: Readonly<Record<string, string>>) => () => [
  tryCell(sheets, {
    skinSides: '0',
    transoms: '0',
    gussets: '0',
    edge: '0 mm',
    outside: '0 mm',
    ...parts,
  }).number('count'),
];

const US = { length: '96 in', width: '48 in', kerf: '1/8 in' };

/** Those that are told in a moment. */
const quick = ['ngcut1', 'ngcut4', 'ngcut5', 'ngcut7', 'ngcut8', 'ngcut10', 'ngcut11', 'gcut1'];

/** With less, the proof goes through every way before the plan is found. */
const BIN_EFFORT = 20_000;

const stiffness = (id: string, plies: string, along: number, across: number): Check => ({
  id,
  cell: 'sheets',
  what: 'stiffness of plywood along and across its face grain, over that of its wood',
  input: `${plies} plies of one thickness, a twentieth as stiff across the grain`,
  expected: [along, across],
  unit: '',
  tolerance: 1e-4,
  source: 'parallel plies, Wood Handbook, USDA FPL-GTR-190 (2010), ch. 12; by hand',
  known: 'from memory',
  obtain: () => {
    const cell = tryCell(sheets, { sheetPlies: plies });
    return [cell.number('stiffAlong'), cell.number('stiffAcross')];
  },
});

export const rows: readonly Check[] = [
  stiffness('W41', '3', 0.9648, 0.0852),
  stiffness('W42', '5', 0.8024, 0.2476),
  stiffness('W43', '7', 0.7258, 0.3242),
  stiffness('W43a', '9', 0.682, 0.368),
  {
    id: 'N1',
    cell: 'sheets',
    what: 'sheets for two sides 25 in high and 18 ft long, cut across',
    input: 'nine strips 25 in wide and 48 in long from sheets of 4 by 8 ft, grain across the strips',
    expected: [3],
    unit: '',
    tolerance: 0,
    source: 'rule of the shop: three strips of 25 in come off a sheet cut across',
    known: 'common practice',
    obtain: typed({
      ...US,
      partAPieces: '9',
      partALength: '48 in',
      partAWidth: '25 in',
      partGrain: 'across',
    }),
  },
  {
    id: 'N2',
    cell: 'sheets',
    what: 'sheets for the same sides, cut along',
    input:
      'for each side two strips 25 in by 8 ft and one of 2 ft, grain along them: one long strip comes off a sheet',
    expected: [5],
    unit: '',
    tolerance: 0,
    source: 'rule of the shop: one strip of 25 in comes off a sheet cut along, so three sheets do not do',
    known: 'common practice',
    obtain: typed({
      ...US,
      partAPieces: '4',
      partALength: '96 in',
      partAWidth: '25 in',
      partBPieces: '2',
      partBLength: '24 in',
      partBWidth: '25 in',
      partGrain: 'along',
    }),
  },
  ...instances
    .filter(({ id }) => quick.includes(id))
    .map(({ id, sheet, list, fixed, turned }, i): Check => ({
      id: `N${i + 3}`,
      cell: 'sheets',
      what: `fewest sheets for ${id}, as its pieces lie and with quarter turns; the same is proved to be least`,
      input: `${list} on ${sheet[0]} by ${sheet[1]}`,
      expected: [fixed, fixed, turned, turned],
      unit: '',
      tolerance: 0,
      source: `${BEASLEY}; optimum by exhaustive search`,
      known: 'published',
      obtain: () =>
        ([[0], [0, 1]] as const).flatMap((turns) => {
          const { plan, least } = searchNest(problemOf(sheet, list, { turns }), 600);
          return [plan.sheets.length, least];
        }),
    })),
  ...bins.map((one, i): Check => ({
    id: `N${quick.length + 3 + i}`,
    cell: 'sheets',
    what: `fewest bins for ${one.id}, found and proved, and bins by the rule of the shop`,
    input: `strips ${one.lengths} on sheets as wide and ${one.length} long`,
    expected: [one.least, one.least, one.firstFit],
    unit: '',
    tolerance: 0,
    source: one.source,
    known: 'published',
    obtain: () => {
      const problem = binProblem(one);
      const { plan, least } = searchNest(problem, BIN_EFFORT);
      return [plan.sheets.length, least, shopNest(problem).sheets.length];
    },
  })),
];
