import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formula, isIssue, type KindId, kinds, plainShown, read } from '../../src/measure';
import { parse } from '../../src/measure/parser';

const numeric = kinds.map(({ id }) => id);

/** True if reading and evaluating the text gives a finite number or a sentence, and nothing is thrown. */
function answers(text: string, kind: KindId): boolean {
  const reading = read(text, {
    kind,
    shown: plainShown,
    field: 'value',
    kindOf: (name) => (name === 'a.b' ? 'length' : undefined),
  });
  const answer = isIssue(reading) ? reading : reading.evaluate(() => 0.5);
  return isIssue(answer) ? /\S/.test(answer.issue) : Number.isFinite(answer);
}

describe('whatever is typed, the answer is a finite number or a sentence', () => {
  test('any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), fc.constantFrom(...numeric), (text, kind) => {
        expect(answers(text, kind)).toBe(true);
      }),
      { seed: 1, numRuns: 2000 },
    );
  });
  test('texts of the very signs that are read', () => {
    const signs = `1|0|5-3-4|14 5/8|3/4|1,5|1e9|.|,| |+|-|*|/|^|(|)|<|>=|==|?|:|'|"|°|%|$|½`;
    const words = 'mm|in|ft|kg|°C|rad|K|g|pi|sqrt|max|sin|and|or|not|a.b|"oak"|per|sq';
    const scraps = fc.constantFrom(...signs.split('|'), ...words.split('|'));
    fc.assert(
      fc.property(
        fc.array(scraps, { maxLength: 12 }),
        fc.constantFrom('', ' '),
        fc.constantFrom(...numeric),
        (parts, gap, kind) => {
          const text = parts.join(gap);
          expect(answers(text, kind)).toBe(true);
          const made = formula(text);
          const answer = isIssue(made) ? made : made.evaluate({});
          expect(isIssue(answer) || Number.isFinite(answer)).toBe(true);
        },
      ),
      { seed: 2, numRuns: 4000 },
    );
  });
  test.each([
    ['deep brackets', '('.repeat(150) + '1' + ')'.repeat(149)],
    ['a long run of signs', '-'.repeat(299) + '1'],
    ['a tower of powers', '9^9^9^9^9^9^9'],
    ['a number of many figures', '9'.repeat(300)],
    ['a fraction of many figures', `${'9'.repeat(140)}/${'7'.repeat(140)} in`],
    ['an enormous exponent', '1e999999999999'],
    ['an enormous exponent below nought', '1e-999 mm'],
    ['powers of a unit', `1 ${'m*'.repeat(100)}m`],
    ['a long chain of units', `1 ${'mm/mm/'.repeat(40)}mm`],
    ['many words', 'a '.repeat(140)],
    ['a megabyte', 'x'.repeat(1_000_000)],
  ])('%s', (_, text) => {
    for (const kind of ['length', 'number', 'slope', 'temperature'] as const)
      expect(answers(text, kind)).toBe(true);
  });
});

describe('the parser', () => {
  const forbidden = [
    'a = 1',
    'f(x) = x',
    'a.b',
    'a["b"]',
    '[1, 2]',
    '{a: 1}',
    '1:3',
    'a[1]',
    '1; 2',
    'a < b < c',
    'a\nb',
    'cos.constructor("return 1")()',
    'import({a: 1})',
    '"a".constructor',
    'f = cos',
    'ones(3)[1]',
  ];
  test.each(forbidden)('has no node for %s', (text) => {
    expect(() => parse(text).run(new Map())).toThrow(/./);
  });
  const unknown =
    'import createUnit evaluate parse simplify derivative reviver ones constructor toString hasOwnProperty __proto__ factorial random';
  test.each(unknown.split(' '))('has no function %s', (name) => {
    expect(() => parse(`${name}(1)`).run(new Map())).toThrow(/./);
    expect(formula(`${name}(1)`)).toHaveProperty('issue');
  });
  test('knows the order of operations, and looks at the second half of and/or only where it matters', () => {
    const run = (text: string) =>
      parse(text).run(
        new Map<string, unknown>([
          ['zero', 0],
          ['one', 1],
        ]),
      );
    expect(run('-one ^ 2')).toBe(-1);
    expect(run('zero and one / zero')).toBe(0);
    expect(run('one or one / zero')).toBe(1);
    expect(run('one and (one or one / zero)')).toBe(1);
    expect(() => run('one and one / zero')).toThrow('divides by zero');
  });
});
