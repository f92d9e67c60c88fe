/** One idea a file: no file of the cells is longer than what is read in one go. */
import { expect, test } from 'vitest';

const files = import.meta.glob<string>('../../src/cells/**/*.ts', {
  eager: true,
  query: '?raw',
  import: 'default',
});
const MOST_LINES = 300;

test('no file of the cells is longer than 300 lines', () => {
  const long = Object.entries(files).flatMap(([path, text]) => {
    const lines = text.trimEnd().split('\n').length;
    return lines > MOST_LINES ? [`${path}: ${lines} lines`] : [];
  });
  expect(Object.keys(files).length).toBeGreaterThan(100);
  expect(long).toStrictEqual([]);
});
