/** Tables pasted from a spreadsheet: all of it goes in, or nothing, and then each bad cell is named. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { columns as kinds, demoBoat, offsetName, offsetsOf, starter, type Table } from '../../../src/boat';
import { cellsOf, textOfCells } from '../../../src/boat/table/pasted-cells';
import type { Landing } from '../../../src/boat/table/pasted-landing';
import { isAsking, isRefused, type Pasted, pastedInto } from '../../../src/boat/table/pasted-table';
import type { PastedWay } from '../../../src/boat/table/pasted-ways';
import {
  type Notation,
  notations,
  readOffset,
  usualNotation,
  writeOffset,
  writeOffsetInFull,
} from '../../../src/boat/table/offset-notation';
import { isIssue } from '../../../src/measure';

const all = Object.keys(notations) as Notation[];

function landingOn(table: Table, more: Partial<Landing> = {}): Landing {
  const { edges, stations } = offsetsOf(table);
  return {
    stations,
    edges,
    columns: edges.flatMap((edge) => kinds.map((column) => ({ edge, column }))),
    row: 0,
    column: 0,
    notation: 'mm',
    isPlane: () => false,
    newName: (n) => `frame ${n + 20}`,
    ...more,
  };
}
const skiff = starter('class-skiff')!;
const landing = landingOn(skiff);
const heights = { columns: landing.edges.map((edge) => ({ edge, column: 'height' as const })) };
/** A block without headings is taken for what is offered first. */
const pastedFirst = (text: string, on: Landing = landing) => {
  const pasted = pastedInto(text, on);
  return isAsking(pasted) ? pastedInto(text, on, pasted.asks[0]) : pasted;
};
const writesOf = (text: string, on: Landing = landing) => {
  const pasted = pastedFirst(text, on);
  if (!('writes' in pasted)) throw new Error(isRefused(pasted) ? pasted.faults.join('; ') : 'it asks');
  return pasted.writes;
};
const faultsOf = (text: string, on: Landing = landing) => {
  const pasted = pastedFirst(text, on);
  return isRefused(pasted) ? pasted.faults : [];
};
const waysIn = (text: string, on: Landing = landing): readonly PastedWay[] => {
  const pasted = pastedInto(text, on);
  return isAsking(pasted) ? pasted.asks : [];
};

describe('notations', () => {
  const metres = (text: string, notation: Notation) => {
    const reading = readOffset(text, { notation, field: 'it' });
    const value = isIssue(reading) ? reading : reading.evaluate(() => Number.NaN);
    return isIssue(value) ? value.issue : value;
  };

  test.each([
    // Feet, inches, eighths; + and - a sixteenth more and less: the common way of tables of offsets.
    ['5-3-4+', 'mm', (5 * 12 + 3 + 4 / 8 + 1 / 16) * 0.0254],
    ['1-10-5-', 'feet', (12 + 10 + 5 / 8 - 1 / 16) * 0.0254],
    ['1 10 5', 'eighths', (12 + 10 + 5 / 8) * 0.0254],
    ['1 10 5 +', 'inches', (12 + 10 + 5 / 8 + 1 / 16) * 0.0254],
    ['560', 'mm', 0.56],
    ['47.5', 'cm', 0.475],
    ['4.75', 'm', 4.75],
    ['22 1/16', 'inches', 22.0625 * 0.0254],
    ['22,5', 'inches', 22.5 * 0.0254],
    ['1.5', 'feet', 18 * 0.0254],
    ['5', 'eighths', 5 * 0.0254],
    ['0.56 m', 'eighths', 0.56],
    [`5' 3 1/2"`, 'mm', 63.5 * 0.0254],
  ] as const)('"%s" with %s in hand', (text, notation, value) => {
    expect(metres(text, notation)).toBeCloseTo(value, 12);
  });

  test('two figures where three are due are refused, not taken for a difference', () => {
    expect(metres('10-5', 'eighths')).toMatch(/lacks a figure: write feet, inches and eighths, all three/);
    expect(metres('5-3-9', 'eighths')).toMatch(/eighths run from 0 to 7/);
    expect(metres('5-12-0', 'mm')).toMatch(/inches run from 0 to 11/);
  });

  test('what a box shows, and whether that is the whole of it', () => {
    expect(writeOffset(0.56, 'mm')).toStrictEqual({ text: '560', whole: true });
    expect(writeOffset(0.56, 'eighths')).toStrictEqual({ text: '1-10-0+', whole: false });
    expect(writeOffset(0.56, 'inches')).toStrictEqual({ text: '22.047', whole: false });
    expect(writeOffset(22.0625 * 0.0254, 'eighths')).toStrictEqual({ text: '1-10-0+', whole: true });
    expect(writeOffset(-0.1, 'mm')).toStrictEqual({ text: '−100', whole: true });
    expect(writeOffset(-0.00000001, 'mm')).toStrictEqual({ text: '0', whole: false });
  });

  test('written in full and read again: the same number, in every notation', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.double({ min: -50, max: 50, noNaN: true }),
          fc.integer({ min: -9999, max: 9999 }).map((n) => (n * 0.0254) / 16),
          fc.integer({ min: -9999, max: 9999 }).map((n) => n / 1000),
        ),
        fc.constantFrom(...all),
        (value, notation) => {
          expect(metres(writeOffsetInFull(value, notation), notation)).toBe(value + 0);
        },
      ),
      { seed: 43, numRuns: 400 },
    );
  });

  test('a plan in inches is shown in eighths where they fit', () => {
    expect(usualNotation(skiff)).toBe('mm');
    const at = (unit: 'in' | 'ft', x: number): Table => ({
      ...skiff,
      unit,
      stations: [{ name: 'one', points: [{ x, y: 0, z: null }] }],
    });
    expect(usualNotation({ ...skiff, unit: 'cm' })).toBe('cm');
    expect(usualNotation({ ...skiff, unit: 'm' })).toBe('m');
    expect(usualNotation(at('in', 22.0625))).toBe('eighths');
    expect(usualNotation(at('in', 22.05))).toBe('inches');
    expect(usualNotation(at('ft', 1.5))).toBe('eighths');
    expect(usualNotation(at('ft', 1.53))).toBe('feet');
  });
});

describe('cells', () => {
  const isLength = (text: string) => !isIssue(readOffset(text, { notation: 'mm', field: 'it' }));
  test.each([
    [
      '1\t2\n3\t4\n',
      [
        ['1', '2'],
        ['3', '4'],
      ],
    ],
    [
      '1\t2\r\n3\t4',
      [
        ['1', '2'],
        ['3', '4'],
      ],
    ],
    [
      '1;2,5\n3;',
      [
        ['1', '2,5'],
        ['3', ''],
      ],
    ],
    // A decimal comma, not a separator.
    ['12,5', [['12,5']]],
    ['12,5\n13,5', [['12,5'], ['13,5']]],
    [
      '0,155,460\n0,96,526',
      [
        ['0', '155', '460'],
        ['0', '96', '526'],
      ],
    ],
    [
      'station,keel\nstem,285',
      [
        ['station', 'keel'],
        ['stem', '285'],
      ],
    ],
    ['"5\' 3 1/2"""\t14"', [[`5' 3 1/2"`, '14"']]],
    [
      'a;"b;c"\nd;e',
      [
        ['a', 'b;c'],
        ['d', 'e'],
      ],
    ],
    ['', [['']]],
  ] as const)('of %j', (text, cells) => {
    expect(cellsOf(text, isLength)).toStrictEqual(cells);
  });

  test('written and read again are the same, by tabs and by commas', () => {
    const cell = fc.constantFrom('', '560', '5-3-4+', `5' 3 1/2"`, '"', 'frame 3', 'a, b', '1,5');
    fc.assert(
      fc.property(
        fc.array(fc.array(cell, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 4 }),
        (rows) => {
          // A last row of nothing can't be told from the end of the text.
          const whole = [['station', 'keel height', 'sheer height'], ...rows, ['stem', '1', '2']];
          expect(cellsOf(textOfCells(whole, 'tabs'), isLength)).toStrictEqual(whole);
          expect(cellsOf(textOfCells(whole, 'commas'), isLength)).toStrictEqual(whole);
        },
      ),
      { seed: 47 },
    );
  });
});

describe('without headings', () => {
  test('goes in from the box in hand to the right and down', () => {
    expect(writesOf('1\t2\n\t4', landingOn(skiff, { row: 2, column: 7 }))).toStrictEqual({
      'frame2.sheer.halfBreadth': '1 mm',
      'frame2.sheer.height': '2 mm',
      'frame3.sheer.height': '4 mm',
    });
  });

  test('goes by the stations’ names where they stand in the first column', () => {
    expect(writesOf('Frame 5\t1\nframe1\t2', landingOn(skiff, { row: 3, column: 8 }))).toStrictEqual({
      'frame5.sheer.height': '1 mm',
      'frame1.sheer.height': '2 mm',
    });
  });

  test('larger than the table: said, with the stations it would take, and nothing written', () => {
    const pasted = pastedFirst('1\n2\n3\n4', landingOn(skiff, { row: 5 }));
    expect(pasted).toStrictEqual({
      faults: ['the block has 4 rows, but from frame 5 on there are 2 stations'],
      grow: [
        { at: 7, name: 'frame 20' },
        { at: 8, name: 'frame 21' },
      ],
    });
    expect(faultsOf('1\t2\t3\t4\n1\t2\t3\t4', landingOn(skiff, { row: 5, column: 7 }))).toStrictEqual([
      'the block has 4 columns, but from the box in hand to the right there are 2; begin further left, or show more columns',
    ]);
  });

  test('more than a table ever takes is offered no room', () => {
    const pasted = pastedFirst(Array.from({ length: 41 }, () => '1').join('\n'), landing);
    expect(pasted).not.toHaveProperty('grow');
    expect(isRefused(pasted) && pasted.faults.join()).toMatch(/at most 40 stations/);
  });
});

test('at a station that is one plane, the place forward of one edge is that of all', () => {
  const on = landingOn(skiff, { isPlane: (name) => name.startsWith('frame') });
  expect(writesOf('\tforward\tsheer height\ntransom\t0\t560\nframe 1\t700\t525', on)).toStrictEqual({
    'transom.keel.x': '0 mm',
    'transom.sheer.height': '560 mm',
    'frame1.keel.x': '700 mm',
    'frame1.chine.x': '700 mm',
    'frame1.sheer.x': '700 mm',
    'frame1.sheer.height': '525 mm',
  });
  expect(writesOf('\tkeel x\tsheer x\nframe 1\t700\t710', on)).toStrictEqual({
    'frame1.keel.x': '700 mm',
    'frame1.sheer.x': '710 mm',
  });
});

describe('with headings', () => {
  const one = [
    'Station\tkeel height\tChine half-breadth\tchine HT\tsheer x',
    'frame 3\t96\t495\t97\t2250',
    'stem\t\t0\t\t',
  ].join('\n');

  test('in one row, by name whatever the box in hand', () => {
    expect(writesOf(one, landingOn(skiff, { row: 6, column: 8 }))).toStrictEqual({
      'frame3.keel.height': '96 mm',
      'frame3.chine.halfBreadth': '495 mm',
      'frame3.chine.height': '97 mm',
      'frame3.sheer.x': '2250 mm',
      'stem.chine.halfBreadth': '0 mm',
    });
  });

  test('in two rows, the upper standing over what follows, either way round', () => {
    const written = {
      'frame1.chine.halfBreadth': '1 mm',
      'frame1.chine.height': '2 mm',
      'frame1.sheer.halfBreadth': '3 mm',
      'frame1.sheer.height': '4 mm',
    };
    expect(
      writesOf('\tchine\t\tsheer\t\n\thalf-breadth\theight\thalf-breadth\theight\nframe 1\t1\t2\t3\t4'),
    ).toStrictEqual(written);
    expect(
      writesOf('\tHalf-breadths\t\tHeights\t\n\tchine\tsheer\tchine\tsheer\nframe 1\t1\t3\t2\t4'),
    ).toStrictEqual(written);
  });

  test('of edges alone, where one kind of number is shown; else it asks', () => {
    expect(writesOf('\tkeel\tsheer\nframe 1\t1\t2', { ...landing, ...heights })).toStrictEqual({
      'frame1.keel.height': '1 mm',
      'frame1.sheer.height': '2 mm',
    });
    expect(faultsOf('\tkeel\tsheer\nframe 1\t1\t2')[0]).toBe(
      'column 2: is it the forward, the half-breadth or the height of the keel? The heading must say',
    );
  });

  test('without names, rows go from the box in hand down', () => {
    expect(writesOf('sheer height\n1\n2', landingOn(skiff, { row: 3 }))).toStrictEqual({
      'frame3.sheer.height': '1 mm',
      'frame4.sheer.height': '2 mm',
    });
  });

  test('that name a unit give it to bare numbers', () => {
    expect(writesOf('\tsheer height (in)\tsheer half-breadth\nframe 1\t10\t20')).toStrictEqual({
      'frame1.sheer.height': '10 in',
      'frame1.sheer.halfBreadth': '20 mm',
    });
  });

  test('that the table does not know are told', () => {
    expect(faultsOf('\tkeel height\tgunwale height\nframe 1\t1\t2')).toStrictEqual([
      'row 1, column 3: "gunwale height" is no edge of this table (keel, chine, sheer) with forward, half-breadth or height',
    ]);
    expect(faultsOf('\tkeel height\tkeel z\nframe 1\t1\t2')).toStrictEqual([
      'column 3: the keel is given one kind of number twice',
    ]);
  });

  test('and stations that the table does not know: offered where the block has them', () => {
    const text = '\tkeel height\nframe 2\t1\nframe 2a\t2\nframe 2b\t3\nframe 3\t4\nframe 3a\t5';
    expect(pastedInto(text, landing)).toStrictEqual({
      faults: ['2a', '2b', '3a'].map((n) => `the table has no station "frame ${n}"`),
      // frame 2 is third, so the two go in as fourth and fifth; frame 3 is then sixth.
      grow: [
        { at: 3, name: 'frame 2a' },
        { at: 4, name: 'frame 2b' },
        { at: 6, name: 'frame 3a' },
      ],
    });
    expect(faultsOf('\tkeel height\nframe 2\t1\nframe 2\t2')).toStrictEqual([
      'row 3: the station "frame 2" stands there twice',
    ]);
  });
});

describe('as plans and spreadsheets have it', () => {
  test('stations across the top are turned, and their cells counted as they were pasted', () => {
    const text = 'Stn\ttransom\tframe 1\tframe 2\nsheer half-breadth\t580\t652\t691\nkeel height\t155\t96\t';
    expect(writesOf(text)).toStrictEqual({
      'transom.sheer.halfBreadth': '580 mm',
      'frame1.sheer.halfBreadth': '652 mm',
      'frame2.sheer.halfBreadth': '691 mm',
      'transom.keel.height': '155 mm',
      'frame1.keel.height': '96 mm',
    });
    expect(faultsOf(text.replace('652', '6S2'))).toStrictEqual(['row 2, column 3: "6S2" is not a length']);
    expect(faultsOf(`${text}\nsheer height\t1\t2\t3\nsheer z\t1\t2\t3`)).toStrictEqual([
      'row 5: the sheer is given one kind of number twice',
    ]);
  });

  test('a title over the block is passed by, and counted', () => {
    expect(writesOf('Table of offsets\t\n\n\tkeel height\nframe 2\t90')).toStrictEqual({
      'frame2.keel.height': '90 mm',
    });
    expect(faultsOf('Table of offsets\n\tkeel height\nframe 2\t9O')).toStrictEqual([
      'row 3, column 2: "9O" is not a length',
    ]);
    // One number alone is no title.
    expect(writesOf('1\n2\t3')).toStrictEqual({
      'transom.keel.x': '1 mm',
      'frame1.keel.x': '2 mm',
      'frame1.keel.halfBreadth': '3 mm',
    });
    expect(faultsOf('odd\n1\n2')).toStrictEqual(['row 1, column 1: "odd" is not a length']);
  });

  test('stations go by their numbers too, where one alone has it', () => {
    const written = { 'frame2.keel.height': '90 mm', 'frame3.keel.height': '95 mm' };
    expect(writesOf('Stn\tkeel height\n2\t90\nFr. 3\t95')).toStrictEqual(written);
    expect(faultsOf('Stn\tkeel height\n2\t90\nframe 2\t95')).toStrictEqual([
      'row 3: the station "frame 2" stands there twice',
    ]);
    expect(faultsOf('Stn\tkeel height\n22\t90')).toStrictEqual(['the table has no station "22"']);
  });

  test('headings of which none is known are told as headings, not as stations', () => {
    expect(faultsOf('Station\tGunwale breadth\nframe 2\t840')).toStrictEqual([
      'row 1, column 2: "Gunwale breadth" is no edge of this table (keel, chine, sheer) with forward, half-breadth or height',
    ]);
  });

  test('a dash stands for nothing', () => {
    expect(writesOf('\tkeel height\tsheer height\nframe 1\t—\t520\nframe 2\t-\t500')).toStrictEqual({
      'frame1.sheer.height': '520 mm',
      'frame2.sheer.height': '500 mm',
    });
  });
});

describe('stations across, and a block of rows for each kind of number', () => {
  const plan = [
    'Station\tTransom\t1\t2\t3\t4\t5\tStem',
    'Heights above base line',
    'Keel\t155\t96\t76\t96\t155\t226\t285',
    'Chine\t156\t97\t77\t97\t156\t227\t285',
    'Half-breadths\t\t\t\t\t\t\t',
    'Chine\t460\t526\t560\t495\t315\t128\t0',
    'Sheer\t580\t666\t711\t642\t440\t230\t0',
    'Diagonals',
    'A\t612\t700\t745\t680\t470\t250\t—',
    '1\t512\t600\t645\t580\t370\t150\t—',
  ];
  const written = {
    'transom.keel.height': '155 mm',
    'frame3.chine.height': '97 mm',
    'frame4.chine.halfBreadth': '315 mm',
    'stem.sheer.halfBreadth': '0 mm',
  };
  const wholeOf = (lines: readonly string[]) => {
    const pasted = pastedInto(lines.join('\n'), landing);
    return 'writes' in pasted ? pasted : null;
  };

  test('goes in whole, its diagonals left out and counted', () => {
    const pasted = wholeOf(plan);
    expect(pasted?.writes).toMatchObject(written);
    expect(Object.keys(pasted?.writes ?? {})).toHaveLength(4 * 7);
    expect(pasted?.left).toBe(2);
  });
  test.each([
    [
      'a title over it and empty rows between',
      ['Table of offsets, mm', '', ...plan.slice(0, 4), '', ...plan.slice(4)],
    ],
    [
      'the heading before the stations, and the stations said again',
      [plan[1]!, plan[0]!, ...plan.slice(2, 5), plan[0]!, ...plan.slice(5)],
    ],
    [
      'the headings in a column of their own',
      plan
        .filter((_, i) => ![1, 4, 7].includes(i))
        .map((row, i) => `${{ 1: 'Heights', 3: 'Half-breadths', 5: 'Diagonals' }[i] ?? ''}\t${row}`),
    ],
    ['parted by semicolons', plan.map((row) => row.replaceAll('\t', ';'))],
  ])('so it does with %s', (_, lines) => {
    const pasted = wholeOf(lines);
    expect(pasted?.writes).toMatchObject(written);
    expect(pasted?.left).toBe(2);
  });
  test('in feet, inches and eighths, a unit in its heading', () => {
    const text = [
      '\ttransom\tframe 1',
      'Heights (ft-in-eighths)',
      'keel\t0-6-1\t0-3-6+',
      'Half-breadths (in)',
      'sheer\t22\t26 1/4',
    ];
    const pasted = pastedInto(text.join('\n'), { ...landing, notation: 'eighths' });
    expect(pasted).toMatchObject({
      writes: { 'frame1.keel.height': '0-3-6+', 'frame1.sheer.halfBreadth': '26 1/4 in' },
    });
  });
  test('tells of a bad cell by its row and column as it was pasted', () => {
    const bad = plan.map((row) => row.replace('642', '6A2'));
    expect(faultsOf(bad.join('\n'))).toStrictEqual(['row 7, column 5: "6A2" is not a length']);
    expect(faultsOf(plan.map((row) => row.replace('Sheer', 'Gunwale')).join('\n'))).toStrictEqual([
      'row 7, column 1: "Gunwale" is no edge of this table (keel, chine, sheer) with forward, half-breadth or height',
    ]);
    expect(
      pastedInto(plan.map((row) => row.replace('\t5\tStem', '\t5a\tStem')).join('\n'), landing),
    ).toMatchObject({
      faults: ['the table has no station "5a"'],
      grow: [{ at: 5, name: '5a' }],
    });
  });
});

describe('a block without headings', () => {
  const says = (text: string, on?: Landing) => waysIn(text, on).map((way) => way.says);
  const tall = Array.from({ length: 7 }, (_, i) => `${i}\t${i + 1}`).join('\n');
  test('is asked about, the likeliest first', () => {
    expect(says(tall, landingOn(skiff, { column: 4 }))).toStrictEqual([
      'Chine half-breadth, chine height, from transom on',
      'Half-breadths of chine and sheer, a row for each station',
      'Heights of chine and sheer, a row for each station',
      'Distances forward of chine and sheer, a row for each station',
    ]);
  });
  test('in the first box, as tall as the table, is first taken for one kind of number', () => {
    expect(says(tall)[0]).toBe('Half-breadths of chine and sheer, a row for each station');
    expect(says('1\t2\n3\t4')[0]).toBe('Keel forward, keel half-breadth, from transom on');
  });
  test('goes where the way chosen has it', () => {
    const halves = waysIn(tall, landingOn(skiff, { row: 3, column: 4 })).find(({ says: way }) =>
      way.startsWith('Half'),
    );
    expect(pastedInto(tall, landingOn(skiff, { row: 3, column: 4 }), halves)).toMatchObject({
      writes: { 'transom.chine.halfBreadth': '0 mm', 'stem.sheer.halfBreadth': '7 mm' },
    });
  });
  test('may have its stations from left to right', () => {
    const wide = ['1\t2\t3\t4\t5\t6\t7', '8\t9\t10\t11\t12\t13\t14'].join('\n');
    const across = waysIn(wide, landingOn(skiff, { column: 5 })).find((way) =>
      way.says.startsWith('Heights'),
    );
    expect(across?.says).toBe('Heights of chine and sheer, a column for each station');
    expect(pastedInto(wide, landing, across)).toMatchObject({
      writes: { 'transom.chine.height': '1 mm', 'stem.chine.height': '7 mm', 'stem.sheer.height': '14 mm' },
    });
    expect(says('1\t2\t3\t4\t5\t6\t7', landingOn(skiff, { column: 8 }))).toStrictEqual([
      'Heights of the sheer, a column for each station',
    ]);
  });
});

describe('a bad paste', () => {
  test('says which cell, counted in the block, and writes nothing', () => {
    const text = '\tkeel x\tkeel z\tchine x\tchine y\nframe 1\t1\t2\t3\t4\nframe 2\t1\t2\t3\t1O4';
    expect(pastedInto(text, landing)).toStrictEqual({ faults: ['row 3, column 5: "1O4" is not a length'] });
    expect(faultsOf('1\t2 kg\n5-3-9\t1,234')).toStrictEqual([
      'row 1, column 2: "2 kg" is not a length',
      'row 2, column 1: "5-3-9" is not a length (eighths run from 0 to 7; "5-3-9" has 9)',
      'row 2, column 2: "1,234" is not a length ("1,234" could be 1.234 or 1234; write one of these)',
    ]);
  });

  test('of nothing says so', () => {
    for (const text of ['', '\n\n', '\t\n', '\tkeel height\n'])
      expect(faultsOf(text)).toStrictEqual(['nothing but headings and empty cells was pasted']);
  });

  test('names no quantity: a formula is none of a spreadsheet’s', () => {
    expect(faultsOf('keel.length\t1')).toStrictEqual(['row 1, column 1: "keel.length" is not a length']);
  });

  test('whatever is pasted, all of it goes in or nothing: every written entry can be read, and none is left out', () => {
    const cell = fc.oneof(
      { weight: 30, arbitrary: fc.constantFrom('560', '5-3-4+', '1 1/2 in', '0', '2,5', '') },
      {
        weight: 2,
        arbitrary: fc.constantFrom('keel', 'sheer height', 'frame 2', 'height', 'Station', '3 kg', '1O4'),
      },
      { weight: 1, arbitrary: fc.string({ maxLength: 6 }) },
    );
    const block = fc
      .tuple(fc.array(fc.array(cell, { maxLength: 5 }), { maxLength: 6 }), fc.constantFrom('\t', ';', ','))
      .map(([rows, by]) => rows.map((row) => row.join(by)).join('\n'));
    let went = 0;
    fc.assert(
      fc.property(fc.oneof(block, fc.string()), fc.nat(6), fc.nat(8), (text, row, column) => {
        const on = landingOn(skiff, { row, column });
        const pasted = pastedFirst(text, on);
        if (!isRefused(pasted)) went += 1;
        expect(amissIn(pasted, text, on)).toStrictEqual([]);
      }),
      { seed: 53, numRuns: 1500 },
    );
    expect(went).toBeGreaterThan(100);
  });
});

const readsInMm = (text: string) => !isIssue(readOffset(text, { notation: 'mm', field: 'it' }));

/** What is neither all nor nothing about an answer. */
function amissIn(pasted: Pasted, text: string, on: Landing): unknown[] {
  if (isAsking(pasted)) return ['still asks'];
  if (isRefused(pasted)) {
    const unsaid = pasted.faults.filter((fault) => !/^[^]{10,}[^.]$/.test(fault));
    return [...unsaid, ...(pasted.faults.length > 0 && !('writes' in pasted) ? [] : ['no reason'])];
  }
  const names = new Set(
    on.stations.flatMap((station) =>
      on.columns.map((one) => offsetName(station.name, one.edge.name, one.column)),
    ),
  );
  const bad = Object.entries(pasted.writes).filter(([name, entry]) => !names.has(name) || !readsInMm(entry));
  const lengths = cellsOf(text, readsInMm)
    .flat()
    .filter((cell) => cell !== '' && readsInMm(cell));
  return lengths.length === Object.keys(pasted.writes).length ? bad : [...bad, 'a cell is left out'];
}

test('the whole table out and in again, in every notation, is the table', () => {
  const offsets = offsetsOf(demoBoat);
  const on = landingOn(demoBoat);
  for (const notation of all) {
    for (const as of ['tabs', 'commas'] as const) {
      const rows = [
        [
          'Station',
          ...on.columns.map(
            ({ edge, column }) =>
              `${edge.label} ${{ x: 'forward', halfBreadth: 'half-breadth', height: 'height' }[column]}`,
          ),
        ],
        ...offsets.stations.map(({ label }, s) => [
          label,
          ...on.columns.map(({ edge, column }) =>
            writeOffsetInFull(
              offsets.points[offsets.edges.findIndex(({ name }) => name === edge.name)]![s]![
                kinds.indexOf(column)
              ]!,
              notation,
            ),
          ),
        ]),
      ];
      const writes = writesOf(textOfCells(rows, as), { ...on, notation });
      for (const [s, station] of offsets.stations.entries())
        for (const [e, edge] of offsets.edges.entries())
          for (const [c, column] of kinds.entries()) {
            const reading = readOffset(writes[offsetName(station.name, edge.name, column)]!, {
              notation: 'mm',
              field: 'it',
            });
            expect(isIssue(reading) ? reading : reading.evaluate(() => 0)).toBe(offsets.points[e]![s]![c]);
          }
    }
  }
});
