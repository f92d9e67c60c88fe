// What lies under a plate and what does not, on an invented cell; no source.

import { expect, test } from 'vitest';
import { covering, WORKING } from '../../../src/page/on-wall/covered';

const cell = { inputs: { thickness: {}, width: {} }, answers: [{ of: 'share' }, { of: 'pull' }] };
const fresh = () => covering((name) => (name === 'bend' || name === 'bendAgain' ? cell : undefined));

test('answers and workings are covered at first, inputs and numbers of the boat never', () => {
  const { hides } = fresh();
  expect(['bend.share', 'bend.pull', 'bend.radius', 'bend.rows.2.gap'].map(hides)).toStrictEqual([
    true,
    true,
    true,
    true,
  ]);
  expect(['bend.thickness', 'hull.length', 'chine.length', 'bend'].map(hides)).toStrictEqual([
    false,
    false,
    false,
    true,
  ]);
});

test('one answer is shown without the others, nor the same one of a twin', () => {
  const { hides, turn, isShown } = fresh();
  turn('bend', 'share');
  expect(isShown('bend', 'share')).toBe(true);
  expect(['bend.share', 'bend.pull', 'bend.radius', 'bendAgain.share'].map(hides)).toStrictEqual([
    false,
    true,
    true,
    true,
  ]);
  turn('bend', 'share');
  expect(hides('bend.share')).toBe(true);
});

test('a step of the working goes with the working', () => {
  const { hides, turn } = fresh();
  turn('bend', WORKING);
  expect(['bend.radius', 'bend.share'].map(hides)).toStrictEqual([false, true]);
});

test('all are shown and covered at once, whatever was turned over before', () => {
  const { hides, turn, showAll, areAllShown } = fresh();
  turn('bend', 'share');
  showAll(true);
  expect([areAllShown(), hides('bend.share'), hides('bendAgain.pull')]).toStrictEqual([true, false, false]);
  turn('bend', 'pull');
  expect([hides('bend.pull'), hides('bend.share')]).toStrictEqual([true, false]);
  showAll(false);
  expect(['bend.share', 'bend.pull', 'bend.radius'].map(hides)).toStrictEqual([true, true, true]);
});
