/** Articles and plurals of a sentence are right for whatever number it is given. */
import { describe, expect, test } from 'vitest';
import { demoBoat } from '../../src/boat';
import {
  type Cell,
  firstOf,
  keysIn,
  kindOfKey,
  oneOf,
  partsOf,
  plainInstance,
  warningsOf,
  type Words,
  words,
} from '../../src/cells';
import { cells } from '../../src/cells/all';
import { plainShown, write } from '../../src/measure';
import { tryCell } from './try-cell';
import { scarf } from '../../src/cells/timber/joints/scarf';

const sentencesOf = ({ inWords, warnings }: Cell) =>
  [inWords, ...warnings.map(({ says }) => says)].flatMap((words) =>
    partsOf(words).map(({ text }) => ({ says: text })),
  );

/** A sentence with 1 in the place of every count. */
function withOnes(cell: Cell, says: string): string {
  const ones: Cell = {
    ...cell,
    inWords: 'x',
    warnings: [{ when: '1 > 0', says, limit: 'x', weight: 'mind' }],
  };
  const read = {
    number: (name: string) => {
      const kind = kindOfKey(cell, name.slice(cell.id.length + 1));
      return kind === 'count' ? 1 : 0.0181;
    },
    choice: () => 'x',
  };
  const [first] = warningsOf(
    plainInstance(ones),
    (by) => by(read as never),
    (value, kind) => write(value, kind, plainShown),
  );
  return first?.says ?? '';
}

describe.each(cells.map((cell) => [cell.id, cell] as const))('%s', (_, cell) => {
  const counted = sentencesOf(cell).filter(({ says }) =>
    keysIn(says).some((key) => kindOfKey(cell, key) === 'count'),
  );
  test('of one thing speaks as of one', () => {
    const amiss = counted.flatMap(({ says }) => {
      const told = withOnes(cell, says);
      const plural =
        /(?<!(?:[\d.,/]|of) ?)\b1 (?!is |was |has )([a-z]*[^s ]s|people) |(?<!(?:[\d.,/]|and) ?)\b1 (?:[a-z]+ )?(?:are|were|find|take|keep|reach|part|press|make|have|stand|go|hold)\b/.exec(
          told,
        );
      return plural ? [told] : [];
    });
    expect(amiss).toStrictEqual([]);
  });
});

/** Runs of so many words that stand in two texts, or twice in one. */
function twiceWritten(texts: readonly string[], many: number): string[] {
  const seen = new Set<string>();
  return texts.flatMap((text) => {
    const each = text.split(/\s+/);
    const runs = each.slice(many - 1).map((_, at) => each.slice(at, at + many).join(' '));
    const again = runs.filter((run) => seen.has(run));
    for (const run of runs) seen.add(run);
    return again;
  });
}

test('what two cases share is a clause of its own, and written once', () => {
  expect(twiceWritten(['Saw one long right across.', 'Saw two long right across.'], 3)).toStrictEqual([
    'long right across.',
  ]);
  const amiss = cells.flatMap((cell) =>
    twiceWritten([...new Set(partsOf(cell.inWords).map(({ text }) => text))], 8).map(
      (run) => `${cell.id}: ${run}`,
    ),
  );
  expect(amiss).toStrictEqual([]);
});

test('square and cubic metres in the words of a source or a note bear their sign', () => {
  const amiss = cells.flatMap((cell) =>
    [
      ...Object.values(cell.inputs).map(({ note = '' }) => note),
      ...Object.values(cell.steps).map(({ source }) => source),
      ...cell.warnings.map(({ limit }) => limit),
    ].filter((text) => /\/m[23]\b/.test(text)),
  );
  expect(amiss).toStrictEqual([]);
});

test('no length stands before "in", which would be read with its inches: 2 in in from the edge', () => {
  const amiss = cells.flatMap((cell) =>
    sentencesOf(cell).flatMap(({ says }) =>
      [...says.matchAll(/\{(\w+)\} in (?!all)/g)].flatMap(([, key = '']) =>
        kindOfKey(cell, key) === 'length' ? [`${cell.id}: ${says}`] : [],
      ),
    ),
  );
  expect(amiss).toStrictEqual([]);
});

test.each([
  ['boards', 'board'],
  ['boxes', 'box'],
  ['plies', 'ply'],
  ['batches', 'batch'],
  ['goes', 'go'],
  ['passes', 'pass'],
  ['people', 'person'],
  ['is', 'is'],
  ['across', 'across'],
  ['layers', 'layer'],
])('one of %s is a %s', (many, one) => {
  expect(oneOf(many)).toBe(one);
});

test.each(cells.filter(({ draw }) => draw).map((cell) => [cell.id, cell] as const))(
  'in a picture as in a sentence, what the tape leaves out leads before a measure: %s',
  (_, cell) => {
    const shown = { ...plainShown, length: 'feet', fraction: 8 } as const;
    const { drawing } = tryCell(cell, {}, demoBoat, shown);
    const texts = [
      drawing?.says ?? '',
      ...(drawing?.shapes ?? []).map((shape) => ('text' in shape ? shape.text : '')),
    ];
    expect(texts.join('')).not.toBe('');
    expect(
      texts.filter((text) => /\b(strong|scant) (deep|wide|thick|long|high|across|apart)\b/.test(text)),
    ).toStrictEqual([]);
  },
);

test.each([
  ['stem', 'At the stem it stands.'],
  ['transom', 'At the transom it stands.'],
  ['frame3', 'At frame 3 it stands.'],
])('an end of the boat has its article, a frame its number: %s', (station, told) => {
  const holding = cells.find(({ id }) => id === 'holding')!; // it is there
  expect(tryCell({ ...holding, inWords: 'At {station} it stands.' }, { station }).words).toBe(told);
});

describe('words whose parts hold or not', () => {
  const told = (inWords: Words, entries: Readonly<Record<string, string>> = { slope: '8' }) =>
    tryCell({ ...scarf, inWords }, entries).words;
  const clause = { when: 'slope < 10', says: 'steep', otherwise: 'flat' };
  const sentence = { when: 'slope < 10', says: 'Look again.' };

  test('are said in their order, each by its own condition', () => {
    const parts = ['The scarf is', clause, ': {slope}.', sentence, 'Plane it.'];
    expect(told(parts)).toBe('The scarf is steep: 1 in 8. Look again. Plane it.');
    expect(told(parts, { slope: '12' })).toBe('The scarf is flat: 1 in 12. Plane it.');
  });

  test('may be one part, or parts within parts', () => {
    expect(told(sentence)).toBe('Look again.');
    expect(told({ when: 'slope < 10', says: [sentence, clause, '.'] })).toBe('Look again. Steep.');
    expect(told(sentence, { slope: '12' })).toBe('');
  });

  test('begin a sentence with a capital and leave no space before a stop', () => {
    expect(told([clause, ', then', clause, '; so', clause, '.', clause, 'it is.'])).toBe(
      'Steep, then steep; so steep. Steep it is.',
    );
  });

  test('may stand where they belong in a sentence', () => {
    const text = words`The scarf is ${clause}: {slope}, a ${clause} one. ${sentence} Plane it.`;
    expect(told(text)).toBe('The scarf is steep: 1 in 8, a steep one. Look again. Plane it.');
    expect(told(text, { slope: '12' })).toBe('The scarf is flat: 1 in 12, a flat one. Plane it.');
    expect(partsOf(text).map((part) => part.text)).toContain(': {slope}, a');
  });

  test('of several cases say the first that holds, or what is left', () => {
    const cases = firstOf(
      [
        { when: 'slope < 9', says: 'Under 9.' },
        { when: 'slope < 11', says: 'Under 11.' },
      ],
      'More.',
    );
    expect(['8', '10', '12'].map((slope) => told(cases, { slope }))).toStrictEqual([
      'Under 9.',
      'Under 11.',
      'More.',
    ]);
  });

  test('write a number as finely as the condition of any of them asks, in all of them', () => {
    const parts = ['It takes {thickness}.', { when: 'thickness > 18 mm', says: 'That is {thickness}.' }];
    expect(told(parts, { thickness: '18.04 mm' })).toBe('It takes 18.04 mm. That is 18.04 mm.');
  });

  test('wait for a number that is missing where it is said, and not where it isn’t', () => {
    const parts = ['Here.', { when: 'slope < 10', says: 'It is {thickness} thick.' }];
    expect(told(parts, { slope: '12', thickness: 'thick' })).toBe('Here.');
    expect(told(parts, { slope: '8', thickness: 'thick' })).toContain('there is no quantity "thick"');
  });

  test('are all found, with where each is said', () => {
    expect(partsOf(['One.', { when: 'a > 1', says: [sentence], otherwise: 'two.' }])).toStrictEqual([
      { text: 'One.', where: [] },
      {
        text: 'Look again.',
        where: [
          { when: 'a > 1', holds: true },
          { when: 'slope < 10', holds: true },
        ],
      },
      { text: 'two.', where: [{ when: 'a > 1', holds: false }] },
    ]);
  });
});

test.each([
  ['18 mm', 'an 18 mm board'],
  ['8 mm', 'an 8 mm board'],
  ['80 mm', 'an 80 mm board'],
  ['11 mm', 'an 11 mm board'],
  ['19 mm', 'a 19 mm board'],
  ['110 mm', 'a 110 mm board'],
])('the article of %s', (thickness, told) => {
  const cell: Cell = { ...scarf, inWords: 'Take a {thickness} board.' };
  expect(tryCell(cell, { thickness }).words).toBe(`Take ${told}.`);
});

test.each([
  ['It is {thickness} deep.', 'It is a scant 3/4 in deep.', 'It is a strong 3/4 in deep.'],
  ['A {thickness} thick board.', 'A scant 3/4 in thick board.', 'A strong 3/4 in thick board.'],
  ['{thickness} across is it.', 'A scant 3/4 in across is it.', 'A strong 3/4 in across is it.'],
  ['It is {thickness}.', 'It is 3/4 in scant.', 'It is 3/4 in strong.'],
])('what the tape leaves out leads before a measure: %s', (inWords, scant, strong) => {
  const told = (thickness: string) => {
    const shown = { ...plainShown, length: 'feet' } as const;
    return tryCell({ ...scarf, inWords }, { thickness }, demoBoat, shown).words;
  };
  expect(told('0.74 in')).toBe(scant);
  expect(told('0.76 in')).toBe(strong);
  expect(told('0.75 in')).toBe(inWords.replace('{thickness}', '3/4 in'));
});
