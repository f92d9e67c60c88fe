/** When the search of the sheets ends: how the pieces of a panel lie on the sheets is held by the cell's own test. */
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { PanelLayout } from '../../src/boat/joinery/panel-layouts';
import type { SheetsAnswer, SheetsProblem } from '../../src/boat/joinery/sheet-sections';
import { searchSheets } from '../../src/search/sheets';
import type * as sheetsTrials from '../../src/search/sheets-trials';

/** Layouts looked at, in their order. */
const looked: PanelLayout[] = [];
vi.mock('../../src/search/sheets-trials', async (original) => {
  const { makeTrials } = await original<typeof sheetsTrials>();
  return {
    makeTrials: (problem: SheetsProblem) => {
      const trials = makeTrials(problem);
      return {
        ...trials,
        look: (layout: PanelLayout, effort: number) => {
          looked.push(layout);
          return trials.look(layout, effort);
        },
      };
    },
  };
});
afterEach(() => looked.splice(0));

const STOCKS = [{ length: 2.44, width: 1.22, price: 60 }];

/** A plank of 3 m by 400 mm, jointed here or there, upright or leaning forward; sheets of 2440 by 1220 mm. */
const planks = (spots: readonly number[], width: number, lean = 0): string => {
  const problem: SheetsProblem = {
    panels: [
      {
        name: 'side',
        label: 'side',
        strake: 0,
        layer: 1,
        layers: 1,
        outline: [
          [0, 0],
          [3, 0],
          [3, width],
          [0, width],
        ],
        spots: spots.map((x) => ({
          x,
          words: `at ${x} m`,
          line: [
            [x, 0],
            [x + lean, width],
          ],
          onFrame: true,
          byRule: true,
        })),
        turns: [0],
        whole: false,
        held: null,
        lap: 0,
      },
    ],
    groups: [{ thickness: 0.006, stocks: STOCKS, panels: [0], others: [] }],
    rules: {
      stocks: STOCKS,
      edge: 0,
      least: 0.3,
      offPanel: 0,
      offSide: 0,
      more: 1,
      alike: false,
    },
    gap: 0.003,
    mirror: true,
    sides: 2,
    together: false,
    blocks: null,
  };
  return JSON.stringify(problem);
};

const search = async (problem: string) => {
  const told: SheetsAnswer[] = [];
  const says = await searchSheets(problem, (answer) => told.push(answer as SheetsAnswer));
  return { says, last: told.at(-1)! };
};

describe('a search ends', () => {
  // Two of 2 m and two of 1 m, in three rows of 400 mm: one sheet, and the area of 2.4 m2 wants one.
  test('when no plan can cost less and none can have fewer joints: no other joints are tried', async () => {
    const { says, last } = await search(planks([1, 1.2, 1.5, 2], 0.4));
    expect(says).toBe('Proved: no plan costs less in sheets, and none has fewer joints.');
    expect(last.plans.map(({ sheets }) => sheets.length)).toStrictEqual([1]);
    expect([...new Set(looked.map((layout) => JSON.stringify(layout)))]).toStrictEqual([
      JSON.stringify(last.layout),
    ]);
  });

  // Of 650 mm two don't lie one above the other in 1220 mm: 6 m of them want three sheets, their 3.9 m2 two.
  test('so too where the width of the sheets asks for more of them than the area does', async () => {
    const { says, last } = await search(planks([1, 1.2, 1.5, 2], 0.65));
    expect(last.plans.map(({ sheets }) => sheets.length)).toStrictEqual([3]);
    expect(last.least).toBe(180);
    expect(says).toBe('Proved: no plan costs less in sheets, and none has fewer joints.');
  });

  // Joints that lean by 300 mm may part so much of each plank, twice: 4.8 m are left, and two sheets have 4.88 m.
  test('where joints lean less is sure', async () => {
    const { says, last } = await search(planks([1, 1.2, 1.5, 2], 0.65, 0.3));
    expect(last.least).toBe(120);
    expect(says).toBe('The best found; not proved: fewer sheets may do.');
  });

  // Pieces of 1.3 m and more lie one to a row, three rows to a sheet: four pieces want two sheets, their area one.
  test('with other joints tried where nothing is proved', async () => {
    const { says, last } = await search(planks([1.3, 1.4, 1.5, 1.6, 1.7], 0.4));
    expect(says).toBe('The best found; not proved: fewer sheets may do.');
    expect(last.plans.map(({ sheets }) => sheets.length)).toStrictEqual([2]);
    expect(new Set(looked.map((layout) => JSON.stringify(layout))).size).toBeGreaterThan(3);
  });
});
