import { expect, test } from 'vitest';
import { cellsOf, textOfCells } from '../../../src/boat/table/pasted-cells';
import { byStage } from '../../../src/notebook/log/by-stage';
import { logRows } from '../../../src/page/log/log-rows';
import { entry } from '../../notebook/log/entries';

const log = {
  e1: entry({
    day: '1 Mar 2026',
    cell: 'scarf',
    hours: '100 min',
    money: '12.345',
    note: 'He said "now",\r\nand\nso',
  }),
  e2: entry({ day: 'soon', hours: '=1+1', money: '-3', measured: '@x', note: '=HYPERLINK("x")' }),
};
const stages = byStage(log, (cell) => (cell === 'scarf' ? 'Timber' : null), ['Timber'], 'As a whole');
const rows = logRows(stages, (cell) => `Cell ${cell}`);

test('a row an entry: days that sort, plain numbers, and what can’t be read as it was written', () => {
  expect(rows).toStrictEqual([
    ['Stage', 'Cell', 'Day', 'Hours', 'Money', 'Measured', 'Note'],
    ['Timber', 'Cell scarf', '2026-03-01', '1.67', '12.35', '', 'He said "now",\nand\nso'],
    ['As a whole', '', 'soon', "'=1+1", '-3', "'@x", `'=HYPERLINK("x")`],
  ]);
});

test('reads back from the file as it was', () => {
  const isLength = (text: string) => /^[\d.]+$/.test(text);
  expect(cellsOf(textOfCells(rows, 'commas'), isLength)).toStrictEqual(rows);
});
