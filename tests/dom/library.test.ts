/** Where a cell stands that stands in more than one notebook, and what comes with a cell. */
import { effect } from '@preact/signals';
import { afterEach, expect, test, vi } from 'vitest';
import { linkedWords, registry } from '../../src/cells';
import { way } from '../../src/page/address';
import { allOnShelf, notebooks, notebookWith, openNotebook } from '../../src/page/library';

const atFirst = way.peek();
afterEach(() => {
  way.value = atFirst;
});

test.each([
  ['bend-join-fasten', 'bend', 'bend-join-fasten'],
  ['the-build', 'bend', 'the-build'],
  ['cloth-resin-paint', 'resin', 'cloth-resin-paint'],
  ['fair-lines', 'bend', 'the-build'],
  ['bend-join-fasten', 'chineBend', 'one-thick-or-two-thin'],
])('from %s, %s stands in %s', (open, instance, notebook) => {
  way.value = { notebook: open, place: null };
  expect(notebookWith(instance)?.id).toBe(notebook);
});

test('what no notebook has stands in none', () => expect(notebookWith('nowhere')).toBeUndefined());

test('no cell on a boat is ever there without those that it takes numbers from', async () => {
  const heads = notebooks.peek().filter(({ boat }) => boat !== 'none');
  const isCell = (id: string) => registry.some((shelved) => shelved.id === id);
  const alone = new Set<string>();
  const off = effect(() => {
    const { cells } = allOnShelf();
    for (const [id, cell] of cells)
      for (const giver of linkedWords(cell))
        if (isCell(giver) && !cells.has(giver)) alone.add(`${id} without ${giver}`);
  });
  for (const head of heads) {
    await openNotebook(head, null);
    await vi.waitFor(
      () =>
        expect(Object.values(head.cells).filter((cell) => !allOnShelf().cells.has(cell))).toStrictEqual([]),
      { timeout: 60_000 },
    );
  }
  off();
  expect(allOnShelf().cells.size).toBeGreaterThan(40);
  expect([...alone]).toStrictEqual([]);
});
