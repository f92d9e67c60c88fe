/** A slot and a notch that take the same share of the depth are judged alike. */
import { describe, expect, test } from 'vitest';
import { limber } from '../../../src/cells/frames/limber';
import { notch } from '../../../src/cells/frames/notch';
import type { Cell } from '../../../src/cells';
import { tryCell } from '../try-cell';

/** Entries of a cell under which its cut takes this share, found by its own `depthTaken`. */
function taking(cell: Cell, key: string, share: number) {
  let [low, high] = [0.021, 0.3];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    const taken = tryCell(cell, { [key]: `${middle} m` }).number('depthTaken');
    // The deeper the member, the less of it is taken.
    if (taken > share) low = middle;
    else high = middle;
  }
  const { warnings } = tryCell(cell, { [key]: `${high} m` });
  return warnings
    .map(({ warning: { weight, limit } }) => `${weight}: ${limit}`)
    .filter((one) => /of the depth|half the depth/.test(one));
}

describe.each([
  [0.325, /^$/],
  [0.34, /^mind: at most 1\/3 of the depth/],
  [0.49, /^mind: at most 1\/3 of the depth/],
  [0.51, /^stop: never more than half the depth/],
])('%d of the depth', (share, says) => {
  test('is judged alike in a slot and in a notch', () => {
    const slot = taking(limber, 'frameDepth', share).filter((one) => !one.includes('nothing backs'));
    const cut = taking(notch, 'moulded', share);
    expect(slot).toStrictEqual(cut);
    expect(slot.join()).toMatch(says);
  });
});
