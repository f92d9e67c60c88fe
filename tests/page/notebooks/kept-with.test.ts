import { expect, test } from 'vitest';
import type { Bench } from '../../../src/page/bench';
import { keptWith } from '../../../src/page/notebooks/kept-with';

test('a notebook is said to be kept only where the browser keeps it', () => {
  const shelf = {} as NonNullable<Bench['shelf']>; // only whether there is one is asked
  expect(keptWith(shelf, 'Ferry dory')).toBe('is kept with Ferry dory');
  expect(keptWith(null, 'Ferry dory')).toBe(
    'stays with Ferry dory until the page is closed, for this browser keeps nothing',
  );
});
