import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { headOf, packHead, parseNotebook } from '../../src/notebook/markdown';
import { unpackHead } from '../../src/notebook/text/head';
import { type Block, type Inline, type NotebookPage, wordsOf } from '../../src/notebook/text/page-text';
import { faultsShownIn, liveValuesOf, triesOf } from './places';

const read = (text: string) => parseNotebook(text, 'shed/a-page.md');
const text = (words: string): Inline => ({ type: 'text', text: words });
const box = (label: string, ticked: boolean): Inline => ({ type: 'box', label, ticked });
const paragraph = (...inside: Inline[]): Block => ({ type: 'paragraph', inside });
/** The blocks of a text that has no faults. */
const blocks = (source: string): readonly Block[] => {
  const page = read(source);
  expect(page.faults).toStrictEqual([]);
  return page.blocks;
};
/** The sentence of the only fault, with its line. */
const onlyFault = (source: string): [line: number, says: string] => {
  const faults = read(source).faults;
  expect(faults).toHaveLength(1);
  return [faults[0]!.line, faults[0]!.says];
};
const fence = (info: string, ...lines: string[]) => ['```' + info, ...lines, '```'].join('\n');

describe('the head', () => {
  test('gives title, summary, stage and order', () => {
    const page = read(
      '---\ntitle: "The build: a dory"\nsummary: From table to water\nstage: timber\norder: 2\n---\n\nHello\n',
    );
    expect(page).toStrictEqual({
      id: 'a-page',
      title: 'The build: a dory',
      boat: null,
      summary: 'From table to water',
      stage: 'timber',
      order: 2,
      blocks: [paragraph(text('Hello'))],
      places: [],
      headings: [],
      faults: [],
    });
  });

  test('may be missing: the first heading is the title, else the file name', () => {
    expect(read('# My *own* page\n')).toMatchObject({ title: 'My own page', stage: null, summary: '' });
    expect(read('words')).toMatchObject({ title: 'a page', id: 'a-page' });
    expect(parseNotebook('words', '../../..')).toMatchObject({ id: 'notebook' });
  });

  test('says that it is a list of questions, and so does what is known of it unopened', () => {
    const page = read('---\nboat: none\nform: questions\n---\n');
    expect([page.form, headOf(page).form]).toStrictEqual(['questions', 'questions']);
    expect(unpackHead(packHead(headOf(page)))).toStrictEqual(headOf(page));
    expect('form' in headOf(read('---\nboat: none\n---\n'))).toBe(false);
  });

  test('is not looked for below the first line', () => {
    expect(blocks('Above\n\n---\n\ntitle: no')).toStrictEqual([
      paragraph(text('Above')),
      { type: 'rule' },
      paragraph(text('title: no')),
    ]);
  });

  test.each([
    ['---\ntitle: A\ncolour: red\n---\n', 3, /"colour" is none of them/],
    ['---\ntitle: A\ntitle: B\n---\n', 3, /already given on line 2/],
    ['---\ntitle: A\nnonsense\n---\n', 3, /a name, a colon and a text/],
    ['---\ntitle: A\norder: first\n---\n', 3, /whole number/],
    ['---\nstage: launching\n---\n', 2, /"stage" is one of shape, frames, timber, .*"launching" is none/],
    ['---\nboat: none\nform: cards\n---\n', 3, /"form" is questions, or left out; "cards" is neither/],
    ['---\nform: questions\n---\n', 2, /knows no boat: with "form: questions" goes "boat: none"/],
    ['---\ntitle: A\n\nHello', 1, /has no end/],
    [`---\norder: 1\ntitle: ${'A'.repeat(121)}\n---\n`, 3, /"title" may be 120 letters long/],
    [`---\nsummary: ${'A'.repeat(401)}\n---\n`, 2, /"summary" may be 400 letters long/],
  ])('says what is wrong in %j', (source, line, says) => {
    expect(onlyFault(source)).toStrictEqual([line, expect.stringMatching(says)]);
  });
});

describe('blocks', () => {
  test('headings have ids that stay the same and are unique', () => {
    expect(
      blocks("# What goes wrong?\n\n## What goes wrong?\n\n### The keel's end: a *scarf*\n\n# ???"),
    ).toMatchObject([
      { type: 'heading', level: 1, id: 'what-goes-wrong' },
      { type: 'heading', level: 2, id: 'what-goes-wrong-2' },
      { type: 'heading', level: 3, id: 'the-keels-end-a-scarf' },
      { type: 'heading', level: 1, id: 'part' },
    ]);
  });

  test('a heading can take neither the id of an earlier one nor one made unique', () => {
    const ids = blocks('# A\n\n# A\n\n# A 2').map((block) => block.type === 'heading' && block.id);
    expect(new Set(ids).size).toBe(3);
  });

  test('lists, quotes, code and rules', () => {
    expect(blocks('3. one\n4. two\n   - deep\n\n> said\n\n```js\na < b && c\n```\n\n***\n')).toStrictEqual([
      {
        type: 'list',
        from: 3,
        items: [
          [paragraph(text('one'))],
          [paragraph(text('two')), { type: 'list', from: null, items: [[paragraph(text('deep'))]] }],
        ],
      },
      { type: 'quote', blocks: [paragraph(text('said'))] },
      { type: 'code', text: 'a < b && c' },
      { type: 'rule' },
    ]);
  });

  test('tables keep their alignment and may hold live values', () => {
    expect(blocks('| part | length |\n|---|--:|\n| keelson | `= keelson.length` |\n')).toStrictEqual([
      {
        type: 'table',
        align: [null, 'right'],
        head: [[text('part')], [text('length')]],
        rows: [[[text('keelson')], [{ type: 'value', of: 'keelson.length', line: 3 }]]],
      },
    ]);
  });

  test('things to tick keep their box', () => {
    expect(blocks('- [ ] cut\n- [x] marked')).toStrictEqual([
      {
        type: 'list',
        from: null,
        items: [
          [paragraph(box('cut', false), text('cut'))],
          [paragraph(box('marked', true), text('marked'))],
        ],
      },
    ]);
  });
});

describe('text', () => {
  test('strong, emphasis, code, breaks and links', () => {
    expect(
      blocks('**a *b*** `c`  \nd [e](#f) [g][1]\n\n[1]: https://yard.example/x?a=1&amp;b=2'),
    ).toStrictEqual([
      paragraph(
        { type: 'strong', inside: [text('a '), { type: 'emphasis', inside: [text('b')] }] },
        text(' '),
        { type: 'code', text: 'c' },
        { type: 'break' },
        text('d '),
        { type: 'link', to: '#f', inside: [text('e')] },
        text(' '),
        { type: 'link', to: 'https://yard.example/x?a=1&b=2', inside: [text('g')] },
      ),
    ]);
  });

  test('entities become characters once, and unknown ones stay as typed', () => {
    expect(
      blocks('1&frac12; &amp;lt; &#176; &#x2033; &#0; &#xD800; &wibble; &valueOf; `&amp;`'),
    ).toStrictEqual([
      paragraph(text('1½ &lt; ° ″ \ufffd \ufffd &wibble; &valueOf; '), { type: 'code', text: '&amp;' }),
    ]);
  });

  test('an entity made of entities is undone once, in text and in addresses', () => {
    expect(blocks('&#38;lt; a&b [c](<x?a&amp;lt;b&#xD800;&#65;>)')).toStrictEqual([
      paragraph(text('&lt; a&b '), { type: 'link', to: 'x?a&lt;b\ufffdA', inside: [text('c')] }),
    ]);
  });

  test('an escaped mark is the mark', () => {
    expect(blocks('2 \\* 3 \\`= scarf.taper\\`')).toStrictEqual([paragraph(text('2 * 3 `= scarf.taper`'))]);
  });

  test('raw HTML stays text', () => {
    expect(
      blocks('<script>alert(1)</script>\n\nA <b onclick="x()">bold</b> <img src=x onerror=y>'),
    ).toStrictEqual([
      paragraph(text('<script>alert(1)</script>')),
      paragraph(text('A <b onclick="x()">bold</b> <img src=x onerror=y>')),
    ]);
  });

  test('a live value names its line, also far into a paragraph and within other marks', () => {
    const page = read('---\ntitle: A\n---\n\none\ntwo `= scarf.taper`\n\n- a\n- **`=bend.share`**\n');
    expect(liveValuesOf(page)).toStrictEqual([
      { type: 'value', of: 'scarf.taper', line: 6 },
      { type: 'value', of: 'bend.share', line: 9 },
    ]);
  });

  test.each(['2 * scarf.taper', 'scarf', '', 'scarf.__proto__', 'Scarf.taper', 'scarf..taper'])(
    'a live value is one name: not "%s"',
    (name) => {
      const page = read(`Hello \`=${name}\` there`);
      expect(page.faults).toMatchObject([{ line: 1, text: `\`=${name}\`` }]);
      const [block] = page.blocks;
      expect(block?.type === 'paragraph' && wordsOf(block.inside)).toBe(`Hello \`=${name}\` there`);
    },
  );
});

describe('links', () => {
  test.each([
    'https://yard.example/a',
    'HTTP://yard.example',
    'the-build.md',
    '../a/b.html?x=1#y',
    '#what',
    '/deep',
    '?a=1',
  ])('may lead to %s', (to) => {
    expect(blocks(`[a](<${to}>)`)).toStrictEqual([paragraph({ type: 'link', to, inside: [text('a')] })]);
  });

  test.each([
    'javascript:alert(1)',
    'JaVaScRiPt:alert(1)',
    'javas&#99;ript:alert(1)',
    'java&#10;script:alert(1)',
    '&#9;javascript:alert(1)',
    '&#1;javascript:alert(1)',
    'data:text/html,x',
    'vbscript:x',
    'file:///etc/passwd',
    'blob:https://a/b',
    'mailto:a@b.example',
    '//other.example',
    '/\\\\other.example',
    '\\\\\\\\other.example',
    ' //other.example',
    '/&#9;/other.example',
    'https:other.example',
    'http://[',
  ])('may not lead to %s', (to) => {
    const page = read(`before [a](<${to}>) after`);
    expect(page.faults).toHaveLength(1);
    expect(JSON.stringify(page.blocks)).not.toContain('"type":"link"');
    expect(JSON.stringify(page.blocks)).toContain('after');
  });

  test('an address typed in passing is a link, a mail address is text', () => {
    expect(blocks('https://yard.example/a?b=1&copy=2 and me@yard.example')).toStrictEqual([
      paragraph(
        {
          type: 'link',
          to: 'https://yard.example/a?b=1&copy=2',
          inside: [text('https://yard.example/a?b=1&copy=2')],
        },
        text(' and me@yard.example'),
      ),
    ]);
  });

  test('a picture becomes the way to it', () => {
    expect(blocks('![the *jig*](jig.png)')).toStrictEqual([
      paragraph({ type: 'link', to: 'jig.png', inside: [text('the *jig*')] }),
    ]);
    expect(read('![x](javascript:y)').faults).toHaveLength(1);
  });
});

describe('cells', () => {
  test('the plain cell', () => {
    const page = read('Words\n\n' + fence('cell scarf'));
    expect(page.blocks).toStrictEqual([
      paragraph(text('Words')),
      { type: 'cell', instance: 'scarf', line: 3 },
    ]);
    expect(page.places).toStrictEqual([{ cell: 'scarf', instance: 'scarf', presets: {}, line: 3 }]);
  });

  test('a cell under a name of its own, with its own entries', () => {
    const lines = ['thickness = keelson.thickness', '', '  slope   = 12  ', 'timber= douglasFirCoast'];
    expect(read(fence('cell scarf as keelsonScarf', ...lines)).places).toStrictEqual([
      {
        cell: 'scarf',
        instance: 'keelsonScarf',
        presets: { thickness: 'keelson.thickness', slope: '12', timber: 'douglasFirCoast' },
        line: 1,
      },
    ]);
  });

  test('an entry may hold an equals sign of its own', () => {
    expect(read(fence('cell a as b', 'x = 1 == 2 ? 3 : 4')).places[0]?.presets).toStrictEqual({
      x: '1 == 2 ? 3 : 4',
    });
  });

  test('may stand in quotes and lists, each line counted', () => {
    const page = read(
      '> Said\n>\n> ```cell limber\n> ```\n\n1. Mark\n2. Cut\n\n   ```cell bend as b\n   width = 40 mm\n   ```\n',
    );
    expect(page.faults).toStrictEqual([]);
    expect(page.places).toMatchObject([
      { cell: 'limber', line: 3 },
      { cell: 'bend', instance: 'b', presets: { width: '40 mm' }, line: 9 },
    ]);
  });

  test('is listed once however often it is shown', () => {
    const page = read(
      [fence('cell a as b', 'x = 1'), fence('cell a as b'), fence('cell c'), fence('cell c')].join('\n\n'),
    );
    expect(page.faults).toStrictEqual([]);
    expect(page.blocks).toHaveLength(4);
    expect(page.places).toMatchObject([
      { instance: 'b', presets: { x: '1' } },
      { instance: 'c', presets: {} },
    ]);
  });

  test.each([
    [fence('cell'), 1, /Say which cell/],
    [fence('cell scarf keelsonScarf'), 1, /cell scarf as keelScarf/],
    [fence('cell scarf as'), 1, /cell scarf as keelScarf/],
    [fence('cell scarf as a b'), 1, /cell scarf as keelScarf/],
    [fence('cell Scarf'), 1, /"Scarf" can't be the name/],
    [fence('cell scarf as keel-scarf'), 1, /"keel-scarf" can't be the name/],
    [fence('cell scarf', 'thickness = 19 mm'), 1, /plain cell keeps its own links.*cell scarf as myScarf/],
    [fence('cell scarf as scarf', 'thickness = 19 mm'), 1, /plain cell keeps its own links/],
    ['Hello\n\n' + fence('cell scarf as b', 'slope = 8', 'thickness'), 5, /a name, "=" and an entry/],
    [fence('cell scarf as b', 'a.b = 8'), 2, /a name, "=" and an entry/],
    [fence('cell scarf as b', '__proto__ = 8'), 2, /a name, "=" and an entry/],
    [fence('cell scarf as b', 'slope ='), 2, /a name, "=" and an entry/],
    [fence('cell scarf as b', 'slope = 8', 'slope = 9'), 3, /slope is already given/],
    [fence('cell scarf as b', 'thickness = 18 mm |'), 2, /A bar parts an entry for millimetres/],
    [fence('cell scarf as b', 'thickness = | 3/4 in'), 2, /A bar parts an entry for millimetres/],
    [fence('cell scarf as b', 'thickness = 18 mm | 3/4 in | 1 in'), 2, /A bar parts an entry/],
    [fence('try Thicker', 'b.thickness = 18 mm | 3/4 in'), 2, /one entry a line, without a bar/],
    [fence('cell scarf as b', `slope = ${'9'.repeat(301)}`), 2, /too long/],
    ['```cell scarf as b\nslope = 8\n\nMore words', 1, /never closed/],
    [
      fence('cell a as b') + '\n\n' + fence('cell c as b'),
      4,
      /"b" already stands for the cell "a" on line 1/,
    ],
    [
      fence('cell a as b', 'x = 1') + '\n\n> ' + fence('cell a as b', 'x = 2').replaceAll('\n', '\n> '),
      5,
      /already set up on line 1/,
    ],
  ])('says what is wrong in %j', (source, line, says) => {
    expect(onlyFault(source)).toStrictEqual([line, expect.stringMatching(says)]);
  });

  test('one bad line costs nothing but its own block', () => {
    const page = read(
      ['Above', fence('cell scarf as b', 'oops'), fence('cell limber'), 'Below'].join('\n\n'),
    );
    expect(page.blocks.map((block) => block.type)).toStrictEqual(['paragraph', 'fault', 'cell', 'paragraph']);
    expect(page.faults[0]?.text).toBe('oops');
  });

  test('a plain fence is code, whatever its language', () => {
    expect(blocks(fence('cells and more', 'x'))).toStrictEqual([{ type: 'code', text: 'x' }]);
    expect(blocks('    cell scarf')).toStrictEqual([{ type: 'code', text: 'cell scarf' }]);
  });

  test('fences of tildes and longer fences do as well', () => {
    expect(read('~~~cell scarf\n~~~\n\n````cell limber as l\nx = `1\n````').places).toMatchObject([
      { cell: 'scarf' },
      { cell: 'limber', presets: { x: '`1' } },
    ]);
  });
});

describe('small drawings', () => {
  test('have a name', () => {
    expect(read(fence('sketch chine-log')).blocks).toStrictEqual([
      { type: 'sketch', of: 'chine-log', line: 1 },
    ]);
  });

  test.each([
    [fence('sketch'), 1, /Say which small drawing, as in "sketch scarf"/],
    [fence('sketch Scarf joint'), 1, /Say which small drawing/],
    [fence('sketch scarf', 'slope = 8'), 1, /leave the block empty/],
  ])('say what is wrong in %j', (source, line, says) => {
    expect(onlyFault(source)).toStrictEqual([line, expect.stringMatching(says)]);
  });
});

describe('second versions', () => {
  test('have a title and changes', () => {
    const page = read(
      fence('try Two boards of half the thickness', 'laminate.plies = 2', 'chineLog.thickness = 2 * 9 mm'),
    );
    expect(triesOf(page)).toStrictEqual([
      {
        type: 'try',
        title: 'Two boards of half the thickness',
        changes: { 'laminate.plies': '2', 'chineLog.thickness': '2 * 9 mm' },
        line: 1,
      },
    ]);
  });

  test.each([
    [fence('try', 'laminate.plies = 2'), 1, /Say what is to be tried/],
    [fence('try More plies'), 1, /at least one change/],
    [fence('try More plies', 'plies = 2'), 2, /a name, "=" and an entry, as in "laminate.plies = 2"/],
    [fence('try More plies', 'a.constructor.__proto__ = 2'), 2, /a name, "="/],
  ])('say what is wrong in %j', (source, line, says) => {
    expect(onlyFault(source)).toStrictEqual([line, expect.stringMatching(says)]);
  });
});

describe('files from strangers', () => {
  const plain = (page: NotebookPage): unknown => JSON.parse(JSON.stringify(page));

  test('any text gives a page of plain JSON, and links lead nowhere but where they may', () => {
    const marks =
      '`  ```  ```cell   ```try   = a.b  \n  \n\n  >   -   1.   |  |-|\n  [  ](  )  <  >  *  **  ~~  #   ---  \\  \t  \u0000';
    const words = '//h  javascript:x  &#x3a;   as b  x = 1  ![  <a href=';
    const parts = fc.constantFrom(...`${marks}  ${words}`.split('  '));
    const source = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.array(parts, { maxLength: 60 }).map((typed) => typed.join('')),
    );
    fc.assert(
      fc.property(source, (typed) => {
        const page = read(typed);
        expect(plain(page)).toStrictEqual(page);
        for (const [, to] of JSON.stringify(page).matchAll(/"type":"link","to":"((?:[^"\\]|\\.)*)"/g)) {
          const url = new URL(JSON.parse(`"${to}"`) as string, 'https://here.example/');
          expect(['http:', 'https:']).toContain(url.protocol);
        }
        const lines = typed.split(/\r\n?|\n/).length;
        for (const { line } of page.faults) expect(line >= 1 && line <= lines).toBe(true);
        // What is told in the list of faults is told at its place, and the other way about.
        const byLine = faultsShownIn(page).toSorted((a, b) => a.line - b.line);
        expect(new Set(byLine)).toEqual(new Set(page.faults));
      }),
      { seed: 20, numRuns: 2000 },
    );
  });

  test.each([
    ['>'.repeat(3000), 1],
    ['ok\n' + '- '.repeat(1500) + 'x', 2],
    ['1. > - '.repeat(4) + 'x', 1],
    ['a'.repeat(5000), 1],
    ['\n'.repeat(300_001), 1],
  ])('too deep or too long is said, not read', (source, line) => {
    const { blocks: all, faults } = read(source);
    expect(faults).toMatchObject([{ line }]);
    expect(all.filter(({ type }) => type === 'fault')).toStrictEqual(faults);
  });

  test('a line too long costs nothing but itself', () => {
    const page = read(
      ['# Head', `Words\n${'a'.repeat(5000)}\nmore`, fence('cell scarf'), 'Below'].join('\n\n'),
    );
    expect(page.faults).toMatchObject([{ line: 4, says: expect.stringMatching(/too long/) as string }]);
    expect(page.blocks.map(({ type }) => type)).toStrictEqual([
      'heading',
      'paragraph',
      'fault',
      'paragraph',
      'cell',
      'paragraph',
    ]);
  });

  test('a paragraph too long stands as it is typed, and the rest is read', () => {
    const long = '*a **b '.repeat(500).trim();
    const page = read([Array.from({ length: 20 }, () => long).join('\n'), fence('cell scarf')].join('\n\n'));
    expect(page.faults).toMatchObject([{ line: 1, says: expect.stringMatching(/8000/) as string }]);
    expect(page.blocks.map(({ type }) => type)).toStrictEqual(['fault', 'paragraph', 'cell']);
    expect(JSON.stringify(page.blocks[1])).toContain(long.slice(0, 100));
  });

  test('thousands of cells: as many are shown as a page can hold, and one sentence says so', () => {
    const page = read(
      Array.from({ length: 3000 }, (_, n) => fence(`cell scarf as s${n}x`)).join('\n\n') + '\n\nThe end',
    );
    expect(page.places).toHaveLength(100);
    expect(page.faults).toMatchObject([
      { line: 301, says: expect.stringMatching(/100 cells at most/) as string },
    ]);
    expect(page.blocks).toHaveLength(102);
    expect(page.blocks.at(-1)).toStrictEqual(paragraph(text('The end')));
  });

  test('what stands below ten thousand lines is left out, and one sentence says so', () => {
    const page = read(`A\n\n${'word\n\n'.repeat(6000)}`);
    expect(page.faults).toMatchObject([
      { line: 10_001, says: expect.stringMatching(/10000 lines/) as string },
    ]);
    expect(page.blocks.at(-1)).toStrictEqual(page.faults[0]);
    expect(page.blocks).toHaveLength(5001);
  });

  test('thousands of numbers: the rest stand as they are typed', () => {
    const page = read(Array.from({ length: 3000 }, () => '`= hull.length`').join('\n\n'));
    expect(liveValuesOf(page)).toHaveLength(1000);
    expect(page.faults).toMatchObject([
      { line: 2001, says: expect.stringMatching(/1000 numbers/) as string },
    ]);
    expect(page.blocks.at(-1)).toStrictEqual(paragraph({ type: 'code', text: '= hull.length' }));
  });

  test.each(['__proto__.md', 'constructor.md', 'prototype', 'toString.md', 'a/../hasOwnProperty.txt'])(
    'a file called %s is a notebook like any other',
    (name) => {
      const { id } = parseNotebook('# A', name);
      expect(id).toMatch(/^[a-z][a-z-]*$/);
      expect(id in {} || id === 'prototype').toBe(false);
    },
  );

  test.each([
    '__proto__',
    'constructor',
    'toString',
    'hasOwnProperty',
    'keelson',
    'hull',
    'bend',
    'stem',
    'bilge2',
  ])('no cell is called %s', (name) => {
    expect(onlyFault(fence(`cell scarf as ${name}`))[1]).toMatch(/can't be the name|is the name of a part/);
    expect(read(fence(`cell scarf as ${name}`)).places).toStrictEqual([]);
  });

  test.each([
    ['emphasis', '*a **b _c '],
    ['brackets', '[a]('],
    ['links', '[['],
    ['codes', '`a ``b '],
    ['entities', '&amp;&#x41;'],
    ['angle brackets', '<a <b '],
    ['tables', '|a|b|\n|-|-|\n'],
    ['lists', '- a\n  - b\n    - c\n'],
    ['fences', '```cell scarf\n'],
    ['quotes', '> > a\n'],
    ['bars', '`? a.b > 1: x | y` '],
    ['addresses', 'https://a.b/c_d_e '],
    ['definitions', '[a]: b\n'],
    ['hard ends', 'a  \n'],
    ['underscores', '_a_b__c___d '],
    ['tildes', '~a~~b '],
  ])('the longest notebook of nothing but %s is read, and is plain', (_, bit) => {
    for (const [width, gap] of [
      [100, ''],
      [3900, '\n'],
    ] as const) {
      const line = bit.includes('\n') ? bit : `${bit.repeat(width / bit.length)}\n`;
      const page = read((line + gap).repeat(299_000 / (line.length + gap.length)));
      expect(plain(page)).toStrictEqual(page);
    }
  });

  test('lists that go in step by step are read as far as they may go', () => {
    const stairs = Array.from({ length: 60 }, (_, i) => `${'  '.repeat(i)}- step ${i}`).join('\n');
    const page = read(stairs);
    expect(page.faults).toMatchObject([{ line: 9, says: expect.stringContaining('too deep') as string }]);
    expect(plain(page)).toStrictEqual(page);
  });

  test('marks within marks end somewhere', () => {
    for (const source of [`${'*a **b '.repeat(300)}x${'** *'.repeat(300)}`, '['.repeat(3000)]) {
      const page = read(source);
      expect(plain(page)).toStrictEqual(page);
    }
  });

  test('lines are counted alike for every line end, with or without a mark of the byte order', () => {
    const source = '---\ntitle: A\n---\n\n' + fence('cell bad name here');
    for (const end of ['\n', '\r\n', '\r']) {
      expect(onlyFault('\ufeff' + source.replaceAll('\n', end))[0]).toBe(5);
    }
  });
});
