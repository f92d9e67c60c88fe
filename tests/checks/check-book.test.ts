/** The check book on file is the one that the checks give today; `npm run docs` renews it. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { inRoot } from '../tools/root.mjs';
import { checkBookData, checkBookPage, type CheckRow, checkRows } from '../tools/check-book';
import { allChecks } from './check';

const row: CheckRow = {
  id: 'X1',
  cell: 'scarf',
  what: 'a | b',
  input: '18 mm',
  expected: [1, 2],
  unit: 'mm',
  tolerance: 0.1,
  source: 'a table',
  known: 'published',
  obtained: [1, 2.05],
};

const onFile = (name: string) => readFileSync(inRoot(`docs/${name}`), 'utf8');

describe('the check book', () => {
  // All checks are run for it: on a busy machine that takes its time.
  test('on file is up to date, as a page and as data', { timeout: 120_000 }, () => {
    const rows = checkRows(allChecks());
    expect(onFile('check-book.md')).toBe(checkBookPage(rows));
    expect(onFile('check-book.json')).toBe(checkBookData(rows));
  });

  test('has a row for each check, in a table for each cell', () => {
    const page = checkBookPage([row, { ...row, id: 'X2', cell: 'bend' }]);
    expect(page.indexOf('## bend')).toBeLessThan(page.indexOf('## scarf'));
    expect(page).toContain('| X1 | a \\| b | 18 mm | 1; 2 mm | 1; 2.05 mm | 0.1 | a table | published |');
    expect(page).toContain('2 checks.');
  });

  test('as data can be read back', () => {
    expect(JSON.parse(checkBookData([row]))).toStrictEqual([row]);
  });

  test('changes when a value does', () => {
    expect(checkBookData([row])).not.toBe(checkBookData([{ ...row, obtained: [1, 2.06] }]));
  });

  test('rounds to six figures', () => {
    expect(checkRows([{ ...row, obtain: () => [1 / 3, 123456.789] }])[0]?.obtained).toStrictEqual([
      0.333333, 123457,
    ]);
  });
});
