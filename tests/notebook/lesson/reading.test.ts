/** Questions and numbers of one's own as a writer types them: what they read as, and what is said of what can't be read. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseNotebook } from '../../../src/notebook/markdown';
import { isBlank } from '../../../src/notebook/lesson/blanks';
import { askedOf, fence } from './asked-of';

const faults = (text: string) => parseNotebook(text, 'a.md').faults.map(({ line, says }) => [line, says]);

test('a question reads with all that may stand in it; lines that are set in go on', () => {
  const [ask] = askedOf(
    fence(
      'ask taper',
      'question: How far from the end of a board `= scarf.thickness` thick',
      '  does the taper begin?',
      'answer: scarf.taper',
      'within: 10 %',
      'hint: First.',
      'hint: Second, *with care*.',
      'step: The run | scarf.slope',
      'step: `? scarf.slope > 8: flat | steep`, times | 144 mm',
      'blank: 1',
      'fade: from the start',
      'see: So it is.',
      'sentence: Why?',
    ),
  ).asks;
  expect(ask).toMatchObject({
    name: 'taper',
    answer: { is: 'quantity', of: 'scarf.taper' },
    within: '10 %',
    blank: 1,
    fades: 'start',
    line: 1,
  });
  expect(JSON.stringify(ask!.question)).toContain('does the taper begin?');
  expect(ask!.hints).toHaveLength(2);
  expect(ask!.steps.map(({ answer }) => answer)).toStrictEqual([
    { is: 'quantity', of: 'scarf.slope' },
    { is: 'literal', text: '144 mm', kind: 'length' },
  ]);
  expect(JSON.stringify(ask!.steps[1]!.words)).toContain('"otherwise"');
});

test('steps go blank one after another, from the end or from the start; what is asked stays blank until it is shown', () => {
  const lines = [
    'question: Q?',
    'answer: a.three',
    'step: one | a.one',
    'step: two | a.two',
    'step: three | a.three',
  ];
  const blanks = (round: number, shown: boolean, ...more: string[]) => {
    const { asks, book } = askedOf(fence('ask a', ...lines, ...more));
    return [0, 1, 2].map((at) => isBlank(asks[0]!, at, { round, shown }, book.first.value));
  };
  expect(blanks(0, true)).toStrictEqual([false, false, false]);
  expect(blanks(1, true)).toStrictEqual([false, false, true]);
  expect(blanks(9, true)).toStrictEqual([true, true, true]);
  expect(blanks(1, true, 'fade: from the start')).toStrictEqual([true, false, false]);
  expect(blanks(0, true, 'blank: 2')).toStrictEqual([false, true, true]);
  expect(blanks(0, false)).toStrictEqual([false, false, true]);
});

const Q = 'question: Q?';
describe('says what is wrong, with its line', () => {
  test.each([
    [fence('ask', Q), 1, /has a name of one word/],
    [fence('ask constructor', Q), 1, /has a name of one word/],
    [fence('ask Two words', Q), 1, /has a name of one word/],
    [fence('ask a', 'answer: 3'), 1, /needs a line "question/],
    [fence('ask a', Q, 'anwser: 3'), 3, /begins with question, answer/],
    [fence('ask a', Q, 'hint:'), 3, /nothing is said/],
    [fence('ask a', Q, Q), 1, /"question:" is given twice/],
    [fence('ask a', Q, 'answer: about 3'), 1, /is no answer/],
    [fence('ask a', Q, 'answer: 3', 'words: three'), 1, /not both/],
    [fence('ask a', Q, 'change: a.b = 3'), 1, /of which number it is asked/],
    [fence('ask a', Q, 'answer: rises', 'change: a.b = 3'), 1, /the answer is the name of a number/],
    [fence('ask a', Q, 'answer: a.b', 'change: three'), 1, /A change is a name/],
    [fence('ask a', Q, 'answer: a.b', 'within: nearly'), 1, /"within:" is a share/],
    [fence('ask a', Q, 'answer: rises', 'within: 5 %'), 1, /leave "within:" out/],
    [fence('ask a', Q, 'step: no bar'), 1, /A step is what is done/],
    [fence('ask a', Q, 'step: a | about'), 1, /is no answer/],
    [fence('ask a', Q, 'blank: 1'), 1, /from 0 to 0/],
    [fence('ask a', Q, 'fade: slowly'), 1, /from the end/],
    [fence('ask a', Q) + '\n' + fence('ask a', Q), 5, /a question "a" above/],
    ['- item\n\n  ' + fence('ask a', Q).replaceAll('\n', '\n  '), 3, /stands by itself/],
    [fence('seed', 'a.b = 3'), 2, /A line says what may change/],
    [fence('seed', 'a.b = 1 to 3 by 1', 'keep: what'), 3, /is no comparison/],
    [fence('seed'), 1, /Say what may change/],
    [fence('seed', 'a.b = 1 or 2', 'a.b = 3 or 4'), 1, /already given/],
    [fence('seed', 'a.b = 1 or 2') + '\n' + fence('seed', 'a.c = 1 or 2'), 5, /has one block/],
  ])('%s', (text, line, says) => {
    const [first] = faults(text);
    expect(first).toStrictEqual([line, expect.stringMatching(says)]);
  });

  test('text from a stranger is never thrown at', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), fc.constantFrom('ask a', 'seed'), (text, info) => {
        expect(parseNotebook(fence(info, text.replaceAll('`', '')), 'a.md').blocks.length).toBeGreaterThan(0);
      }),
      { numRuns: 200 },
    );
  });
});
