import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { quantityName } from '../../../src/boat';
import { isTaken, panelNames } from '../../../src/boat/table/names';
import { isIssue, plainShown, read } from '../../../src/measure';

test.each([
  ['frame 3', 'frame3'],
  ['Stern transom', 'sternTransom'],
  ['  lower   chine ', 'lowerChine'],
  ['3', 'station3'],
  ['3 1/2', 'station312'],
  ['A', 'stationA'],
  ['m', 'stationM'],
  ['Spantfläche', 'spantflache'],
  ['--', ''],
])('%s is known as %s', (text, name) => {
  expect(quantityName(text)).toBe(name);
});

test('an edge of one letter gets its own kind', () => {
  expect(quantityName('k', 'edge')).toBe('edgeK');
});

test('every name can stand in an entry', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 30 }), (text) => {
      const name = quantityName(text);
      if (name === '') return;
      const entry = read(`2 * ${name}.sheer.halfBreadth`, {
        kind: 'length',
        shown: plainShown,
        field: 'test',
        kindOf: () => 'length',
      });
      expect(isIssue(entry) ? entry.issue : entry.names).toStrictEqual([`${name}.sheer.halfBreadth`]);
    }),
    { seed: 31, numRuns: 300 },
  );
});

test('names of parts and of the language are taken', () => {
  for (const name of ['keelson', 'hull', 'bilge', 'bilge12', 'constructor', 'hasOwnProperty'])
    expect(isTaken(name, 'station')).toBe(true);
  for (const name of ['keel', 'chine', 'transom', 'stem', 'frame3', 'bilgeLine'])
    expect(isTaken(name, 'station')).toBe(false);
});

test('panels from the bottom to the side', () => {
  expect([1, 2, 3, 4, 6].map(panelNames)).toStrictEqual([
    [],
    ['side'],
    ['bottom', 'side'],
    ['bottom', 'bilge', 'side'],
    ['bottom', 'bilge1', 'bilge2', 'bilge3', 'side'],
  ]);
});

test('an edge may not bear the name of an end, whose own numbers it would hide', () => {
  for (const name of ['stem', 'transom', 'bowTransom', 'sternpost']) {
    expect(isTaken(name, 'edge')).toBe(true);
    expect(isTaken(name, 'station')).toBe(false);
  }
});
