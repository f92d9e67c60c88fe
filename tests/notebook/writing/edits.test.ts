/** What is written in a notebook's text: the place is hit, and all else stays as it stands, to the letter. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoBoat } from '../../../src/boat';
import { createBook } from '../../../src/notebook/book';
import { looseCatalogue } from '../../../src/notebook/graph/loose-catalogue';
import { parseNotebook, piecesOf } from '../../../src/notebook/markdown';
import { freshState, writeNotebook } from '../../../src/notebook/state/state';
import { closed } from '../../../src/notebook/writing/closed';
import { replaced, swapped, wordsAt } from '../../../src/notebook/writing/edits';
import { begun, headLines, titled } from '../../../src/notebook/writing/head';
import { asShown, linesOf } from '../../../src/notebook/writing/lines';
import { typedOver } from '../../../src/notebook/writing/typed-over';

const pieces = (text: string) => piecesOf(parseNotebook(text, 'a.md'));
const wordsOf = (text: string) => pieces(text).map((piece) => wordsAt(text, piece));
const none = (first: number) => ({ first, last: first - 1 });

const head = '---\ntitle: Keel day\n---\n';
const cell = '```cell scarf as keelScarf\nthickness = 20 mm\n```';
const day = `${head}\n# Keel day\nMark it.\n\n${cell}\n\n- one\n- two\n\nLast words`;

describe('the pieces of a text', () => {
  test('each has the lines that it stands on', () => {
    expect(wordsOf(day)).toStrictEqual(['# Keel day', 'Mark it.', cell, '- one\n- two', 'Last words']);
    expect(pieces(day).map(({ first, last }) => [first, last])).toStrictEqual([
      [5, 5],
      [6, 6],
      [8, 10],
      [12, 13],
      [15, 15],
    ]);
  });

  test('what the page shows, and nothing else, is in one of them', () => {
    const text = `One.\n\n[place]: https://example.org\n\n${'> '.repeat(9)}deep\n\n~~~\nopen`;
    const page = parseNotebook(text, 'a.md');
    expect(piecesOf(page).flatMap(({ blocks }) => blocks)).toStrictEqual(page.blocks);
    expect(wordsOf(text)).toStrictEqual(['One.', `${'> '.repeat(9)}deep`, '~~~\nopen']);
  });
});

describe('words in the place of others', () => {
  test('stand on the same lines, and the rest with its blank lines stays', () => {
    const { text, ...span } = replaced(day, { first: 6, last: 6 }, '\nMark it\ntwice.\n\n');
    expect(text).toBe(day.replace('Mark it.', 'Mark it\ntwice.'));
    expect(wordsAt(text, span)).toBe('Mark it\ntwice.');
  });

  test('that are none take the piece out with one blank line; put back they stand where they stood', () => {
    const out = replaced(day, { first: 8, last: 10 }, ' \n');
    expect(out.text).toBe(day.replace(`${cell}\n\n`, ''));
    expect(replaced(out.text, out, cell).text).toBe(day);
    expect(replaced(day, { first: 15, last: 15 }, '').text).toBe(day.replace('\n\nLast words', '\n'));
  });

  test('that are put in stand apart from what is above and below', () => {
    expect(replaced('# A\nB', none(2), 'new').text).toBe('# A\n\nnew\n\nB');
    expect(replaced('', none(1), 'new')).toStrictEqual({ text: 'new\n', first: 1, last: 1 });
    expect(replaced('B', none(2), 'new')).toStrictEqual({ text: 'B\n\nnew\n', first: 3, last: 3 });
    expect(replaced(begun('T'), none(4), 'new').text).toBe('---\ntitle: T\n---\n\nnew\n');
  });

  test('no words in no place change nothing', () => {
    expect(replaced(day, none(6), ' \n\n')).toStrictEqual({ text: day, ...none(6) });
  });

  test('are no head, where a rule comes to stand first', () => {
    const { text } = swapped('Words\n\n---\n\nMore\n\n---\n', { first: 1, last: 1 }, { first: 3, last: 3 });
    expect(parseNotebook(text, 'a.md').faults).toStrictEqual([]);
    expect(wordsOf(text)).toStrictEqual(['---', 'Words', 'More', '---']);
  });

  test('take the file’s own marks at the ends of lines, and the mark at its head stays there', () => {
    expect(replaced('\ufeffA\r\n\r\nB\r\n', { first: 1, last: 1 }, 'one\ntwo').text).toBe(
      '\ufeffone\r\ntwo\r\n\r\nB\r\n',
    );
    expect(replaced('\ufeffA\r\n', none(1), 'new').text).toBe('\ufeffnew\r\n\r\nA\r\n');
  });
});

describe('a field that shows the whole file', () => {
  const file = fc
    .array(fc.tuple(fc.string({ maxLength: 5 }), fc.constantFrom('\n', '\r\n', '\r')), { maxLength: 8 })
    .map((lines) => lines.flat().join(''));

  test('what was typed stands in the file, and without an edit the file is the same to the letter', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('', '\ufeff'),
        file,
        fc.string(),
        fc.nat(),
        fc.nat(),
        (mark, rest, put, a, b) => {
          const text = mark + rest;
          const shown = asShown(text);
          expect(typedOver(text, shown)).toBe(text);
          const [from, to] = [a % (shown.length + 1), b % (shown.length + 1)].toSorted((x, y) => x - y);
          const typed = shown.slice(0, from) + asShown(put) + shown.slice(to);
          const next = typedOver(text, typed);
          expect(asShown(next)).toBe(typed);
          // Whole lines before the edit stand as they stood.
          // Where two marks of a mixed file would have become one, all of its lines end alike.
          if (/\r/.test(text) && !next.includes('\r')) return;
          const whole = linesOf(text).filter((_, at) => at < shown.slice(0, from).split('\n').length - 1);
          expect(next.startsWith(whole.join(''))).toBe(true);
        },
      ),
    );
  });
});

describe('the head', () => {
  test('takes another title, and keeps the rest', () => {
    expect(titled(day, 'Keel\nnight')).toBe(day.replace('Keel day', 'Keel night'));
    expect(titled('---\r\norder: 3\r\n---\r\nWords', 'T')).toBe(
      '---\r\ntitle: T\r\norder: 3\r\n---\r\nWords',
    );
    expect(titled('\ufeffWords', 'T')).toBe('\ufeff---\ntitle: T\n---\n\nWords');
    expect(parseNotebook(titled('Words', 'The "T"'), 'a').title).toBe('The “T”');
    expect(headLines(begun('T'))).toBe(3);
  });
});

test.each([
  ['```cell scarf', '```cell scarf\n```'],
  ['~~~~\n~~~', '~~~~\n~~~\n~~~~'],
  ['```\na\n```', null],
  ['a ``` b', null],
  ['```a``` b', null],
  ['```\n```\n\n```try x', '```\n```\n\n```try x\n```'],
])('%j is closed', (typed, whole) => expect(closed(typed)).toBe(whole));

/** Kinds of pieces that stay what they are wherever they stand, each told from the others by a number. */
const kinds: readonly ((n: number) => string)[] = [
  (n) => `Paragraph ${n}\nin two lines, with \`= scarf.taper\`.`,
  (n) => `## Heading ${n}`,
  (n) => ['```cell scarf as scarf' + String(n + 2), `slope = ${n + 8}`, '```'].join('\n'),
  (n) => ['```try Number ' + String(n), 'scarf.slope = 9', '```'].join('\n'),
  (n) => `~~~\n\n# code ${n}\n\n~~~`,
  (n) => `> Quote ${n}\n>\n> goes on`,
  (n) => `| Table ${n} | B |\n|---|---|\n| 1 | 2 |`,
];
const ending = fc.constantFrom('\n', '\r\n');
const text = fc
  .record({
    parts: fc.array(fc.tuple(fc.nat(kinds.length - 1), fc.integer({ min: 1, max: 3 })), {
      minLength: 1,
      maxLength: 7,
    }),
    head: fc.constantFrom('', head, `${head}\n`),
    end: fc.constantFrom('', '\n', '\n\n'),
    ending,
  })
  .map(({ parts, head: top, end, ending: mark }) => {
    const inside = parts.map(([kind, gap], n) => (n === 0 ? '' : '\n'.repeat(gap + 1)) + kinds[kind]!(n));
    return (top + inside.join('') + end).replaceAll('\n', mark);
  });
type Move = { readonly kind: 'down' | 'out' | 'double' | 'write'; readonly at: number };
const moves = fc.array(
  fc.record({ kind: fc.constantFrom('down', 'out', 'double', 'write'), at: fc.nat(6) }),
  { maxLength: 8 },
);

function moved(source: string, { kind, at }: Move): string {
  const all = pieces(source);
  const piece = all[at % Math.max(all.length, 1)];
  if (!piece) return replaced(source, none(headLines(source) + 1), 'First words.').text;
  const next = all[(at % all.length) + 1];
  if (kind === 'down') return next ? swapped(source, piece, next).text : source;
  if (kind === 'out') return replaced(source, piece, '').text;
  if (kind === 'write') return replaced(source, piece, 'Other words.').text;
  return replaced(source, none(piece.last + 1), wordsAt(source, piece)).text;
}

describe('any run of moves', () => {
  test('leaves every piece that it does not touch as it was to the letter, and in its order', () => {
    fc.assert(
      fc.property(text, fc.constantFrom('down', 'out', 'double', 'write'), fc.nat(6), (source, kind, at) => {
        const before = wordsOf(source);
        const i = at % before.length;
        const now = [...before];
        if (kind === 'down' && i + 1 < now.length) now.splice(i, 2, before[i + 1]!, before[i]!);
        if (kind === 'out') now.splice(i, 1);
        if (kind === 'double') now.splice(i, 0, before[i]!);
        if (kind === 'write') now[i] = 'Other words.';
        const after = moved(source, { kind, at });
        expect(wordsOf(after)).toStrictEqual(now);
        // Nothing but the marks of the file ends a line.
        expect(after).not.toMatch(source.includes('\r\n') ? /[^\r]\n/ : /\r/);
        expect(linesOf(after).slice(0, headLines(source))).toStrictEqual(
          linesOf(source).slice(0, headLines(source)),
        );
      }),
    );
  });

  test('down and up again is the text as it was', () => {
    fc.assert(
      fc.property(text, fc.nat(6), (source, at) => {
        const all = pieces(source);
        const [a, b] = [all[at % all.length]!, all[(at % all.length) + 1]];
        if (!b) return;
        const down = swapped(source, a, b);
        const now = pieces(down.text);
        const i = now.findIndex(({ first }) => first === down.first);
        expect(now[i]).toMatchObject({ first: down.first, last: down.last });
        expect(swapped(down.text, now[i - 1]!, now[i]!).text).toBe(source);
      }),
    );
  });

  test('is taken back by undo, step by step, and comes again by redo', () => {
    fc.assert(
      fc.property(text, moves, (source, run) => {
        const book = createBook(writeNotebook(freshState(demoBoat), 'a', source), () => looseCatalogue([]));
        const now = () => book.state.value.notebooks['a']!.text;
        for (const move of run) book.writeNotebook('a', moved(now(), move));
        const end = now();
        while (book.canUndo.value) book.undo();
        expect(now()).toBe(source);
        while (book.canRedo.value) book.redo();
        expect(now()).toBe(end);
      }),
    );
  });

  test('on a text from a stranger never fails, and what the page shows is always in a piece', () => {
    fc.assert(
      fc.property(
        fc
          .array(
            fc.oneof(
              fc.string(),
              fc.constantFrom(
                '---',
                '```cell scarf',
                '```',
                '- a',
                '  b',
                '> c',
                '|a|',
                '|-|',
                '    d',
                '<!--',
                '',
                'A',
                '===',
              ),
            ),
            { maxLength: 12 },
          )
          .map((lines) => lines.join('\n')),
        moves,
        (source, run) => {
          let now = source;
          for (const move of run) {
            now = moved(now, move);
            const page = parseNotebook(now, 'a');
            const all = piecesOf(page);
            expect(
              page.blocks.slice(page.blocks.length - all.flatMap(({ blocks }) => blocks).length),
            ).toStrictEqual(all.flatMap(({ blocks }) => blocks));
            all.forEach(({ first, last }, i) => {
              expect(first).toBeGreaterThan(all[i - 1]?.last ?? 0);
              expect(last).toBeGreaterThanOrEqual(first);
            });
          }
        },
      ),
    );
  });
});
