import { describe, expect, test } from 'vitest';
import { demoBoat } from '../../../src/boat';
import { textOfCells } from '../../../src/boat/table/pasted-cells';
import { plainInstance } from '../../../src/cells';
import { buyList } from '../../../src/cells/buying/buy-list';
import { soldAs } from '../../../src/cells/buying/buy-list-lines';
import { isIssue, plainShown, write } from '../../../src/measure';
import { createGraph } from '../../../src/notebook/graph/graph';
import { wholeCatalogue } from '../../../src/notebook/graph/whole-catalogue';
import { linesByShop, listRows } from '../../../src/page/list/list-lines';

const instance = plainInstance(buyList);
const graph = createGraph({
  catalogue: () => wholeCatalogue(demoBoat),
  entries: () => ({
    'buyList.sheetsGot': 'yes',
    'buyList.sheetsPaid': '512.5',
    'buyList.jigHave': '50',
    'buyList.screwsPrice': '12.345',
  }),
  shown: plainShown,
});
const say = (key: string) => {
  const value = graph.value(`buyList.${key}`);
  if (isIssue(value)) return 'no value yet';
  return write(Number(value), graph.quantity(`buyList.${key}`)!.kind, plainShown).text;
};
const number = (key: string) => Number(graph.value(`buyList.${key}`));

describe('the list to tick off', () => {
  const shops = linesByShop(instance, graph, say);
  const line = (id: string) => shops.flatMap(({ lines }) => lines).find((one) => one.id === id)!;

  test('says of every line how many, whether it is bought, and what was paid', () => {
    expect(shops.map(({ shop }) => shop).slice(0, 2)).toStrictEqual(['lumber yard', 'plywood']);
    expect(line('sheets')).toMatchObject({
      bought: true,
      wanted: true,
      many: `${number('sheetsBuy')} sheets`,
    });
    expect(line('sheets').paid).toBe('512.50');
    expect(line('jig')).toMatchObject({ bought: false, wanted: false });
    expect([number('powderBuy'), line('powder').many]).toStrictEqual([1, '1 bag']);
    expect(['boxes', 'pieces', 'lengths off the roll'].map((sold) => soldAs({ sold }, 1))).toStrictEqual([
      'box',
      'piece',
      'length off the roll',
    ]);
    expect(line('timbers')).toMatchObject({ bought: false, wanted: true });
  });

  test('leads from each line to a number that there is', () => {
    const lines = shops.flatMap((shop) => shop.lines);
    expect(lines.filter(({ counted }) => !graph.has(counted)).map(({ id }) => id)).toStrictEqual([]);
  });

  test('makes a file for a spreadsheet whose lines add up to what stands below them', () => {
    const rows = listRows(instance, graph, say);
    expect(new Set(rows.map((row) => row.length))).toStrictEqual(new Set([7]));
    const planned = rows.slice(1, -3).reduce((sum, row) => sum + Number(row[4]), 0);
    expect(Math.abs(planned - Number(rows.at(-3)![4]))).toBeLessThan(0.1);
    expect(rows.at(-3)![6]).toBe('512.5');
    expect(Number(rows.at(-1)![4])).toBeCloseTo(number('cost'), 2);
    expect(textOfCells(rows, 'commas').split('\n')).toContainEqual(
      `plywood,plywood,${number('sheetsBuy')},sheets,${Math.round(number('sheetsPlan') * 100) / 100},bought,512.5`,
    );
    expect(textOfCells(rows, 'commas')).toContain('"frames, stem, thwarts"');
  });
});
