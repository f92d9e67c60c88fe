/** Where a cell stands that stands in more than one notebook. */
import { afterEach, expect, test } from 'vitest';
import { way } from '../../src/page/address';
import { notebookWith } from '../../src/page/library';

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
