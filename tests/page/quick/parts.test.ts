/** A notebook's text as a list of questions: what asks, what leads in, what is said with the answer. */
import { expect, test } from 'vitest';
import { wordsOf } from '../../../src/notebook';
import { parseNotebook } from '../../../src/notebook/markdown';
import { type QuickPart, partsOf } from '../../../src/page/quick/parts';

const read = (...text: readonly string[]): QuickPart[] =>
  partsOf(parseNotebook(text.join('\n\n'), 'a.md').blocks);
const cell = (name: string) => `\`\`\`cell scarf as ${name}\n\`\`\``;
const said = ({ heading, lead, questions }: QuickPart) => [
  heading && wordsOf(heading.inside),
  lead.map((block) => (block.type === 'paragraph' ? wordsOf(block.inside) : block.type)),
  ...questions.map(({ name, asks, prose }) => [
    name,
    asks,
    prose.map((block) => (block.type === 'paragraph' ? wordsOf(block.inside) : block.type)),
  ]),
];

test('the paragraph before a cell asks it: its first sentence in the list, the rest with the answer', () => {
  const parts = read('Lead in.', '## Joints', 'How long? Mark it *on the face*. Twice.', cell('one'));
  expect(parts.map(said)).toStrictEqual([
    [null, ['Lead in.']],
    ['Joints', [], ['one', 'How long?', ['Mark it on the face. Twice.']]],
  ]);
});

test('what asks nothing leads in, or belongs to the question above it', () => {
  const parts = read(
    '## Joints',
    'Of two boards.',
    'How long?',
    cell('one'),
    '- a list',
    'How wide?',
    cell('two'),
    'Goes on.',
    '### Smaller',
    '## Empty',
    'Nothing yet.',
  );
  expect(parts.map(said)).toStrictEqual([
    [
      'Joints',
      ['Of two boards.'],
      ['one', 'How long?', ['list']],
      ['two', 'How wide?', ['Goes on.', 'heading']],
    ],
    ['Empty', ['Nothing yet.']],
  ]);
});

test('a cell without a paragraph asks nothing, one shown again is the same question', () => {
  const parts = read(cell('one'), cell('one'), 'And two?', cell('two'));
  expect(parts.map(said)).toStrictEqual([[null, [], ['one', '', ['cell']], ['two', 'And two?', []]]]);
});

test('a question whose first sentence holds marks is taken whole', () => {
  const parts = read('How *long* is it? Say.', cell('one'), 'It is `= one.taper` long?', cell('two'));
  expect(parts.map(said)).toStrictEqual([
    [null, [], ['one', 'How long is it? Say.', []], ['two', 'It is one.taper long?', []]],
  ]);
});
