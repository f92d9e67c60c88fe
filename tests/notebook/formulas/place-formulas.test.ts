/** Which formulas stand on a sheet, with which lines; how their lines are written; and how a notebook sets them up. */
import { describe, expect, test } from 'vitest';
import { demoBoat } from '../../../src/boat';
import { linesWritten, placeFormulas, writeLines } from '../../../src/notebook/formulas/place-formulas';
import { parseNotebook } from '../../../src/notebook/markdown';
import { freshState, keepOnly, swap, tryAnother, write } from '../../../src/notebook/state/state';

const fence = (info: string, ...lines: string[]) => ['```' + info, ...lines, '```', ''].join('\n');
const page = (text: string, name = 'a') => parseNotebook(text, name);
const none = () => false;

describe('a notebook', () => {
  test('sets up a formula by its first block, and shows it again by an empty one', () => {
    const { blocks, formulas, faults } = page(fence('formula day', 'a = 1') + fence('formula day'));
    expect(faults).toStrictEqual([]);
    expect(formulas).toStrictEqual([{ name: 'day', text: 'a = 1', line: 1 }]);
    expect(blocks).toStrictEqual([
      { type: 'formula', name: 'day', line: 1 },
      { type: 'formula', name: 'day', again: 1, line: 4 },
    ]);
  });
  test.each([
    [fence('formula', 'a = 1'), /^A formula has a name/],
    [fence('formula Keel day', 'a = 1'), /^A formula has a name/],
    [fence('formula __proto__', 'a = 1'), /^A formula has a name/],
    [fence('formula constructor', 'a = 1'), /^"constructor" is the name of a cell/],
    [fence('formula scarf', 'a = 1'), /^"scarf" is the name of a cell/],
    [fence('formula mine', 'a = 1'), /^"mine" is the name of a cell/],
    [
      fence('cell scarf as dayScarf') + fence('formula dayScarf', 'a = 1'),
      /^"dayScarf" is the name of a cell/,
    ],
    [
      fence('formula day', 'a = 1') + fence('cell scarf as day'),
      /^"day" is the name of a part of the boat or of another cell or formula/,
    ],
    [fence('formula day', 'a = 1') + fence('formula day', 'a = 2'), /^"day" already stands on line 1/],
    [fence('formula day', ...Array.from({ length: 3000 }, () => 'a = 1  ')), /^This formula is too long/],
  ])('says what is wrong in %j', (text, says) => {
    expect(page(text).faults.map((fault) => fault.says)).toStrictEqual([expect.stringMatching(says)]);
  });
  test('of a stranger shows forty at most', () => {
    const text = Array.from({ length: 42 }, (_, at) => fence(`formula day${at}`, 'a = 1')).join('');
    const { formulas, faults } = page(text);
    expect([formulas?.length, faults.length]).toStrictEqual([40, 2]);
  });
  test('in a text that turns on a comparison has none', () => {
    const text = '````when hull.length > 1 m\n' + fence('formula day', 'a = 1') + '````\n';
    expect(page(text).faults).toHaveLength(1);
  });
});

describe('on a sheet', () => {
  const one = page(fence('formula day', 'a = 1') + fence('formula night', 'b = 2'));
  test('stand those of its notebooks, with what is written in place of their lines, and the builder’s own', () => {
    const { texts, remarks } = placeFormulas([one], { 'day.lines': 'a = 5', 'mine.lines': 'c = 3' }, none);
    expect(new Map(texts.map(({ name, text }) => [name, text]))).toStrictEqual(
      new Map([
        ['mine', 'c = 3'],
        ['day', 'a = 5'],
        ['night', 'b = 2'],
      ]),
    );
    expect(remarks.size).toBe(0);
  });
  test('a name that something else goes by is told at its place', () => {
    const other = page(fence('formula day', 'a = 9'), 'b');
    const { texts, remarks } = placeFormulas([one, other], {}, (word) => word === 'night');
    expect(texts.map(({ text }) => text)).toStrictEqual(['a = 1']);
    expect([...remarks.values()]).toStrictEqual([
      expect.stringMatching(/^"night" is a part of this boat or a cell/),
      expect.stringMatching(/^"day" already stands in the notebook “a”/),
    ]);
  });
  test('the same in two notebooks is one', () => {
    expect(placeFormulas([one, page(fence('formula day', 'a = 1'), 'b')], {}, none).remarks.size).toBe(0);
  });
});

describe('lines that are written', () => {
  const fresh = freshState(demoBoat);
  test('stand for both versions, whichever is in hand, and stay when they change places', () => {
    const two = write(tryAnother(writeLines(fresh, 'mine', 'a = 1')), { 'keelson.width': '90 mm' });
    const written = writeLines(two, 'mine', 'a = 2');
    expect([written.entries['mine.lines'], written.second]).toStrictEqual([
      'a = 2',
      { 'keelson.width': '90 mm' },
    ]);
    for (const next of [swap(written), keepOnly(written, 'first'), keepOnly(written, 'second')])
      expect(next.entries['mine.lines']).toBe('a = 2');
  });
  test('that stand there already are no change, and null takes them away', () => {
    const written = writeLines(fresh, 'mine', 'a = 1');
    expect(writeLines(written, 'mine', 'a = 1')).toBe(written);
    expect(writeLines(written, 'mine', null).entries).toStrictEqual({});
    expect(writeLines(fresh, 'mine', null)).toBe(fresh);
  });
  test('are told apart from all else that is written', () => {
    const entries = { 'mine.lines': 'a = 1', 'keelson.width': '90 mm' };
    expect(linesWritten(entries)).toBe(linesWritten({ ...entries, 'keelson.width': '95 mm' }));
    expect(linesWritten(entries)).not.toBe(linesWritten({ ...entries, 'mine.lines': 'a = 2' }));
  });
});
