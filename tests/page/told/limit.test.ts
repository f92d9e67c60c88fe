// A warning that is one comparison gives the number and its bound; any other gives none. Numbers are invented.

import { expect, test } from 'vitest';
import { cells } from '../../../src/cells/all';
import { againstLimit } from '../../../src/page/told/limit';
import type { WorkOut } from '../../../src/cells';

const bend = cells.find(({ id }) => id === 'bend')!;
const instance = { cell: bend, name: 'bend' } as Parameters<typeof againstLimit>[0];
const values: Readonly<Record<string, number>> = { 'bend.share': 0.576, 'bend.allowed': 0.5 };
const workOut: WorkOut = (by) =>
  by({ number: (name: string) => values[name]!, choice: () => '' } as unknown as Parameters<typeof by>[0]);

test('of one comparison the number and the most it may be', () => {
  expect(againstLimit(instance, 'share > allowed', workOut)).toStrictEqual({
    name: 'bend.share',
    kind: bend.steps['share']!.kind,
    value: 0.576,
    limit: 0.5,
    isMost: true,
  });
});

test('the bound may be worked out, and the number may have to be no less', () => {
  expect(againstLimit(instance, 'share <= 2 * allowed', workOut)).toMatchObject({ limit: 1, isMost: false });
});

test.each([
  'share > 0',
  'share > allowed and share < 1',
  'share > 0.2 or allowed > 1',
  'abs(share) > 0.5',
  'nothing > 1',
])('none of "%s"', (when) => {
  expect(againstLimit(instance, when, workOut)).toBeNull();
});
