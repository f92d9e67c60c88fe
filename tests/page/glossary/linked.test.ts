/** The first use of a word of the trade leads to what it means. */
import { expect, test } from 'vitest';
import type { Block, Inline } from '../../../src/notebook';
import { parseNotebook } from '../../../src/notebook/markdown';
import { finderOf, linked } from '../../../src/page/glossary/linked';

const word = (heading: string) => ({
  word: heading,
  forms: heading.split(', '),
  place: heading.split(', ')[0]!.toLowerCase().replaceAll(' ', '-'), // split gives at least one
  says: `A ${heading}. And more.`,
});
const finder = finderOf([word('Chine'), word('Chine log, log'), word('Notch'), word('Half-breadth')]);

const seen = (markdown: string, id = 'shed.md') =>
  linked(parseNotebook(markdown, id), finder).blocks.map(said);
const said = (block: Block): string =>
  block.type === 'list'
    ? block.items.map((item) => item.map(said).join('')).join('; ')
    : 'inside' in block
      ? block.inside.map(inSpan).join('')
      : block.type;
const inSpan = (inline: Inline): string =>
  inline.type === 'link'
    ? `[${inline.inside.map(inSpan).join('')}](${inline.to}${inline.says === undefined ? '' : ` ${inline.says}`})`
    : 'inside' in inline
      ? inline.inside.map(inSpan).join('')
      : inline.type === 'text' || inline.type === 'code'
        ? inline.text
        : '';

test('the first use alone, in the plural and within emphasis too', () => {
  expect(seen('Cut the *notches*, then another notch.')).toStrictEqual([
    'Cut the [notches](words.md#notch A Notch.), then another notch.',
  ]);
  expect(seen('- a notch\n- a notch')).toStrictEqual(['a [notch](words.md#notch A Notch.); a notch']);
});

test('the longest name that stands there, and whole words only', () => {
  expect(seen('The Chine log and the chine.')).toStrictEqual([
    'The [Chine log](words.md#chine-log A Chine log, log.) and the [chine](words.md#chine A Chine.).',
  ]);
  expect(seen('A catalogue, machines, half-breadths, a log-book.')).toStrictEqual([
    'A catalogue, machines, [half-breadths](words.md#half-breadth A Half-breadth.), a log-book.',
  ]);
});

test('not in headings, code, links or what is said only at times, and the next use takes its place', () => {
  expect(
    seen('# Notch\n\n[a notch](the-build.md) `notch` `? keel.length: notch`\n\nAt last a notch.').slice(1),
  ).toStrictEqual(['[a notch](the-build.md) notch notch', 'At last a [notch](words.md#notch A Notch.).']);
});

test('the notebook of words, and a shelf without one, stay as they are', () => {
  const page = parseNotebook('A notch.', 'words.md');
  expect(linked(page, finder)).toBe(page);
  const other = parseNotebook('A notch.', 'shed.md');
  expect(linked(other, finderOf([]))).toBe(other);
});
