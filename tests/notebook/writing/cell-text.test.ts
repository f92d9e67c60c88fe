/** A cell as it is written, and the name of one more of them. */
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseNotebook } from '../../../src/notebook/markdown';
import { cellText, nameBeside } from '../../../src/notebook/writing/cell-text';
import { begunAs, placeable } from '../../../src/notebook/writing/placeable';

test('the plain cell takes no lines; one with a name begins with those that a line can hold', () => {
  expect(cellText('scarf')).toBe('```cell scarf\n```');
  const entries = {
    thickness: ' 18 mm | 3/4 in ',
    slope: '',
    along: '|',
    boards: '1\n2',
    wanted: 'a'.repeat(301),
  };
  expect(cellText('scarf', 'keelScarf', entries)).toBe(
    '```cell scarf as keelScarf\nthickness = 18 mm | 3/4 in\n```',
  );
});

test('whatever stands in the fields of a cell, its double is read without a fault', () => {
  fc.assert(
    fc.property(
      fc.dictionary(fc.constantFrom('thickness', 'slope', 'wanted'), fc.string({ maxLength: 320 })),
      (entries) => {
        const page = parseNotebook(cellText('scarf', 'scarf2', entries), 'a');
        expect(page.faults).toStrictEqual([]);
        const kept = Object.entries(entries).filter(
          ([, entry]) => entry.trim() !== '' && !entry.includes('|') && entry.length <= 300,
        );
        expect(page.places[0]?.presets).toMatchObject(
          Object.fromEntries(kept.map(([key, entry]) => [key, entry.trim()])),
        );
      },
    ),
  );
});

test.each([
  ['scarf', [], 'scarf2'],
  ['scarf', ['scarf2', 'scarf3'], 'scarf4'],
  ['keelScarf2', ['keelScarf2'], 'keelScarf3'],
  ['scarf12', [], 'scarf2'],
])('beside %s, with %j taken, stands %s', (name, taken, beside) =>
  expect(nameBeside(name, (one) => one !== name && !taken.includes(one))).toBe(beside),
);

const near = {
  entry: 'keelScarf.slope',
  typed: '1 in 8',
  answer: 'keelScarf.taper',
  free: (name: string) => `${name}2`,
};

test.each(placeable.map((one) => [one.title, one] as const))(
  '%s, as it is begun, is read without a fault and is what it says',
  (_, one) => {
    const { text, from, to } = begunAs(one, near);
    const page = parseNotebook(`Above.\n\n${text}\n\nBelow.`, 'a');
    expect(page.faults).toStrictEqual([]);
    expect(text).not.toMatch(/[«»]/);
    expect(text.slice(from, to)).not.toContain('`');
    const types = page.blocks.map(({ type }) => type);
    expect(types.slice(0, 1).concat(types.slice(-1))).toStrictEqual(['paragraph', 'paragraph']);
    expect(types).toHaveLength(text === '' ? 2 : 3);
  },
);
