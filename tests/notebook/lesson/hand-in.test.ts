/** What a learner hands in comes back to the letter, is told where it is damaged, and stands in the class's table. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Lesson, nothingSaid } from '../../../src/boat';
import { textOfCells } from '../../../src/boat/table/pasted-cells';
import { isIssue, plainShown } from '../../../src/measure';
import { classRow, classRows } from '../../../src/notebook/lesson/class-table';
import { draw } from '../../../src/notebook/lesson/draw';
import { isDamaged, readHandedIn, writeHandedIn } from '../../../src/notebook/lesson/hand-in';
import { askedOf, fence, SCARF } from './asked-of';

const lesson = (guess: string, seed = '', sentence = ''): Lesson => ({
  seed,
  said: { a: { ...nothingSaid, guesses: ['100', guess], shown: true, sentence } },
});
const anna = {
  name: 'Anna',
  notebook: 'why-one-in-eight',
  lesson: lesson('144', 'anna', 'Eight "thicknesses", é.'),
};

test('what is handed in comes back, also broken over lines and with a letter round it', async () => {
  const code = await writeHandedIn(anna);
  expect(await readHandedIn(code)).toStrictEqual([anna]);
  const broken = code.replaceAll(/.{40}/g, '$&\r\n  ');
  const ben = { ...anna, name: '' };
  const post = `Dear teacher,\n${broken}\nand BB too\n${await writeHandedIn(ben)}`;
  expect(await readHandedIn(post)).toStrictEqual([anna, ben]);
});

test('a letter changed anywhere is told, and so is a lost end; the others are read', async () => {
  const code = await writeHandedIn(anna);
  const places = [3, 20, Math.floor(code.length / 2), code.length - 6];
  const changed = places.map(
    (at) => `${code.slice(0, at)}${code[at] === 'x' ? 'y' : 'x'}${code.slice(at + 1)}`,
  );
  for (const one of changed) expect((await readHandedIn(one)).map(isDamaged)).toStrictEqual([true]);
  const [first, second] = await readHandedIn(`${code.slice(0, -20)}\n${code}`);
  expect(first).toStrictEqual({ fault: expect.stringMatching(/its end is missing/) as string });
  expect(second).toStrictEqual(anna);
});

test('a stranger’s text holds nothing, and nothing is thrown', async () => {
  const texts = [...fc.sample(fc.string(), 50), 'BB:', 'BB::BB', 'BB:AAAA:BB', 'BB:{}:BB'];
  for (const text of texts) expect((await readHandedIn(text)).every((one) => isDamaged(one))).toBe(true);
});

describe('the table', () => {
  const { asks, seed, book } = askedOf(
    `${SCARF}\n${fence('ask a', 'question: Q?', 'answer: askScarf.taper')}\n${fence('ask b', 'question: Q?', 'answer: falls')}\n${fence('seed', 'askScarf.thickness = 12 mm to 25 mm by 1 mm')}`,
  );
  const graph = book.first.value;
  const row = (one: Lesson) =>
    classRow({ name: 'N', notebook: 'x', lesson: one }, asks, seed, graph, plainShown);

  test('the key follows the learner’s own numbers', () => {
    const drawn = draw('anna', seed!, asks, graph);
    if (isIssue(drawn)) throw new Error(drawn.issue);
    // Eight thicknesses.
    const right = 8 * Number.parseFloat(drawn['askScarf.thickness']!);
    expect(row(lesson(String(right), 'Anna')).cells[0]).toMatchObject({
      final: String(right),
      worth: 'right',
    });
    expect(row(lesson(String(right / 2), 'Anna')).cells[0]).toMatchObject({ worth: 'too low' });
    expect(row(lesson('144')).cells[0]).toMatchObject({ worth: 'right', guesses: ['100', '144'] });
  });

  test('what the teacher has drawn for herself moves nobody’s key', () => {
    book.write({ 'askScarf.thickness': '25 mm' });
    const after = classRow(
      { name: 'N', notebook: 'x', lesson: lesson('144') },
      asks,
      seed,
      book.first.value,
      plainShown,
    );
    expect(after.cells[0]).toMatchObject({ worth: 'right' });
    book.undo();
  });

  test('what was not answered is empty; a direction is told in words', () => {
    const said = { b: { ...nothingSaid, guesses: ['falls'] } };
    expect(row({ seed: '', said }).cells).toStrictEqual([
      { guesses: [], final: '', worth: '', sentence: '' },
      { guesses: ['it falls'], final: 'it falls', worth: 'right', sentence: '' },
    ]);
  });

  test('in a spreadsheet nothing of it is a formula, and a negative number is a number', () => {
    const rows = classRows(
      [{ ...row(lesson('-50 mm', '', '=HYPERLINK("x")')), name: '@sum(1)' }],
      asks.slice(0, 1),
    );
    const csv = textOfCells(rows, 'commas');
    expect(csv).toContain("'@sum(1)");
    expect(csv).toContain(`"'=HYPERLINK(""x"")"`);
    expect(csv).toContain(',-50 mm,');
    const named = (name: string) =>
      textOfCells([classRows([{ ...row(lesson('1')), name, cells: [] }], [])[1]!], 'commas'); // after the head
    // RFC 4180: what has a comma, a quote or the end of a line in it stands in quotes, and its quotes are doubled.
    expect(named('Lee, Ann')).toBe('"Lee, Ann",\n');
    expect(named('Ann "the saw"')).toBe('"Ann ""the saw""",\n');
    expect(named('Ann\r\nLee')).toBe('"Ann\r\nLee",\n');
    const odd = ['=1', ' =1', '+1', '-2+3', "-2+cmd|'x'!A0", '@a', '\t=1'];
    expect(odd.filter((name) => !/^"?'/.test(named(name)))).toStrictEqual([]);
    expect(csv.split('\n')[0]).toBe('name,numbers,a: guesses,a: final,a: worth,a: sentence');
  });
});
