/** A builder may call keel, chine and sheer what they like: every cell says the same of the same boat. */
import { describe, expect, test } from 'vitest';
import { starter } from '../../src/boat';
import { cells } from '../../src/cells/all';
import { withOtherNames } from './odd-boats';
import { tryCell } from './try-cell';

const dory = starter('ferry-dory')!;

describe.each(cells.map((cell) => [cell.id, cell] as const))('%s', (_, cell) => {
  test('says the same of a boat whose edges bear other names', { timeout: 30_000 }, () => {
    const keys = Object.keys({ ...cell.inputs, ...cell.steps });
    const numbers = (all: Readonly<Record<string, unknown>>) =>
      Object.fromEntries(keys.flatMap((key) => (typeof all[key] === 'number' ? [[key, all[key]]] : [])));
    expect(numbers(tryCell(cell, {}, withOtherNames).all)).toEqual(numbers(tryCell(cell, {}, dory).all));
  });
});
