/** Sentences that are said only where a comparison holds: how they are read, and when they are said. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { starters } from '../../../src/boat';
import { plainInstance } from '../../../src/cells';
import { cells } from '../../../src/cells/all';
import { isIssue } from '../../../src/measure';
import { createBook } from '../../../src/notebook/book';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { readCondition } from '../../../src/notebook/text/condition';
import { holds } from '../../../src/notebook/text/holds';
import { parseNotebook } from '../../../src/notebook/markdown';
import type { Condition } from '../../../src/notebook/text/page-text';
import { liveValuesOf } from '../places';
import { freshState } from '../../../src/notebook/state/state';

const read = (text: string) => parseNotebook(text, 'page.md');
const faults = (text: string) => read(text).faults.map(({ line, says }) => [line, says]);
const boat = (id: string) => {
  const { table } = starters.find((one) => one.id === id)!;
  return createBook(freshState(table), (of) => catalogueOf(of, cells.map(plainInstance)));
};
const [dory, punt] = ['ferry-dory', 'creek-punt'].map(boat);
const condition = (text: string): Condition => {
  const made = readCondition(text);
  if (typeof made === 'string') throw new Error(made);
  return made;
};
const on = (book: typeof dory, text: string) => holds(condition(text), book!.first.value);

describe('a block', () => {
  test('holds text of any shape, with its lines counted', () => {
    const page = read(
      'Words\n\n```when bend.share > bend.allowed and stem.rake\nIt **breaks** at `= bend.share`.\n\n- once\n```\n',
    );
    expect(page.faults).toStrictEqual([]);
    expect(page.blocks[1]).toMatchObject({
      type: 'when',
      line: 3,
      holds: [
        { of: 'bend.share', is: '>', than: 'bend.allowed' },
        { of: 'stem.rake', is: 'there', than: '' },
      ],
      blocks: [{ type: 'paragraph' }, { type: 'list' }],
    });
    expect(liveValuesOf(page)).toMatchObject([{ of: 'bend.share', line: 4 }]);
  });

  test('stands in a list, and within another', () => {
    const page = read(
      '- one\n\n  ````when no stem.rake\n  outer\n\n  ```when hull.beam < 2 m\n  inner\n  ```\n  ````\n',
    );
    expect(page.faults).toStrictEqual([]);
    expect(JSON.stringify(page.blocks)).toMatch(/"when".*outer.*"when".*inner/);
  });

  test.each([
    ['```when\nwords\n```', /Say what must hold/],
    ['```when bend.share is large\nwords\n```', /"bend.share is large" is no comparison/],
    ['```when bend.share >\nwords\n```', /is no comparison/],
    ['```when 3 > bend.share\nwords\n```', /is no comparison/],
    ['```when bend.share > 3 > 2\nwords\n```', /is no comparison/],
    ['```when bend.share > 1\nwords', /never closed/],
  ])('says what is wrong in %j', (text, says) => {
    expect(faults(text)).toStrictEqual([[1, expect.stringMatching(says)]]);
  });

  test.each([
    '````when bend.share > 1\n```cell scarf\n```\n````',
    '````when bend.share > 1\n- ```cell scarf\n  ```\n````',
    '```when bend.share > 1\n# Head\n```',
  ])('of %j tells what stays at its own line, and says the rest', (text) => {
    expect(faults(text)).toStrictEqual([[2, expect.stringMatching(/A cell or a heading stays/)]]);
    expect(read(text)).toMatchObject({ blocks: [{ type: 'when' }], places: [], headings: [] });
  });

  test('of a stranger hurts nothing', () => {
    const nested = '`'.repeat(60);
    expect(faults(`${nested}when a.b > 1\n<script>alert(1)</script>\n${nested}`)).toStrictEqual([]);
    const deep = Array.from({ length: 40 }, (_, at) => `${'`'.repeat(50 - at)}when a.b > 1`).join('\n');
    expect(faults(deep).length).toBeGreaterThan(0);
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), fc.string({ maxLength: 60 }), (head, inside) => {
        const page = read(`\`\`\`when ${head}\n${inside}\n\`\`\`\n\n\`? ${head}: ${inside}\``);
        const answers = page.blocks.flatMap((block) =>
          block.type === 'when' ? [holds(block.holds, dory!.first.value)] : [],
        );
        expect(answers.filter((so) => typeof so !== 'boolean' && !isIssue(so))).toStrictEqual([]);
      }),
      { numRuns: 300 },
    );
  });
});

describe('words in a sentence', () => {
  test('have others after a bar', () => {
    expect(read('Towards the `? stem.rake: stem | bow`.').blocks).toMatchObject([
      {
        inside: [
          { type: 'text' },
          { type: 'when', inside: [{ text: 'stem' }], otherwise: [{ text: 'bow' }] },
          { type: 'text' },
        ],
      },
    ]);
    expect(read('`? stem.rake: stem`').blocks).toMatchObject([{ inside: [{ otherwise: [] }] }]);
  });

  test.each([
    ['a `? stem.rake` b', /After what must hold/],
    ['a `? stem.rake:  | x` b', /After what must hold/],
    ['a `? : x` b', /Say what must hold/],
    ['a `? stem: x` b', /"stem" is no comparison/],
  ])('say what is wrong in %j', (text, says) => {
    expect(faults(text)).toStrictEqual([[1, expect.stringMatching(says)]]);
  });
});

describe('a comparison', () => {
  test.each([
    ['stem.rake', true, false],
    ['no stem.rake', false, true],
    ['hull.frames = 5', true, false],
    ['hull.frames != 5', false, true],
    ['hull.length > 4 m', true, false],
    ['hull.length <= 4 m', false, true],
    ['hull.length > 13 ft and hull.frames >= 5', true, false],
    ['hull.length > 2 * hull.beam', true, true],
    ['chineLog.thickness = keelson.thickness + 1 mm', true, true],
    ['chineLog.timber = douglasFirCoast', true, true],
    ['chineLog.timber != douglasFirCoast', false, false],
    ['stem.rake and stem.rake > 30 deg', true, false],
  ])('%s: %s on the dory, %s on the punt', (text, onDory, onPunt) => {
    expect([on(dory, text), on(punt, text)]).toStrictEqual([onDory, onPunt]);
  });

  test('that can’t be made says why', () => {
    const why = (text: string) => {
      const so = on(punt, text);
      return isIssue(so) ? so.issue : so;
    };
    expect(why('hull.lenght > 1 m')).toMatch(/no quantity "hull.lenght"/);
    expect(why('hull.length > 3 kg')).toMatch(/is a mass/);
    expect(why('chineLog.timber = chewing')).toMatch(/"chewing" is no answer/);
    expect(why('chineLog.timber > oak')).toMatch(/is a choice|is no answer/);
  });

  test('follows what is typed, and holds nothing true while a number is missing', () => {
    const book = boat('ferry-dory');
    const so = () => on(book, 'chineLog.thickness > 18 mm');
    expect(so()).toBe(true);
    book.write({ 'chineLog.thickness': '12 mm' });
    expect(so()).toBe(false);
    book.write({ 'chineLog.thickness': 'three thumbs' });
    expect([so(), on(book, 'chineLog.thickness <= 18 mm')]).toStrictEqual([false, false]);
  });
});
