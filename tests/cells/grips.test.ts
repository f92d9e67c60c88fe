/** What is moved in a drawing by hand stands for numbers that the cell asks for, and stands where they say. */
import { expect, test } from 'vitest';
import { demoBoat } from '../../src/boat';
import { cells } from '../../src/cells/all';
import { overlay } from '../../src/drawing';
import { withTwoChines } from './odd-boats';
import { tryCell } from './try-cell';

test.each([demoBoat, withTwoChines])('on $name', (table) => {
  const gripped = cells.flatMap((cell) => {
    if (!cell.draw) return [];
    const { drawing, all } = tryCell(cell, {}, table);
    return (drawing?.grips ?? []).map((grip) => ({ cell, grip, all }));
  });
  expect(gripped.map(({ cell }) => cell.id)).toContain('weights');
  for (const { cell, grip, all } of gripped) {
    expect(grip.name).toMatch(/\w/);
    const ways = [grip.right, grip.up].flatMap((way, along) =>
      way ? [{ ...way, at: grip.at[along]! }] : [],
    );
    expect(ways.length).toBeGreaterThan(0);
    for (const { key, zero, at } of ways) {
      expect(cell.inputs[key], `${cell.id}.${key}`).toMatchObject({ kind: 'length' });
      expect((at - zero) / 1000, `${cell.id}.${key}`).toBeCloseTo(Number(all[key]), 9);
    }
  }
});

test('those of two versions are not laid over each other: each is moved by itself', () => {
  const { drawing } = tryCell(cells.find(({ id }) => id === 'weights')!); // it is one of them
  expect(drawing!.grips!.length).toBeGreaterThan(2);
  expect(overlay(drawing!, drawing!).grips).toBeUndefined();
});
