import { expect, test } from 'vitest';
import { attempt } from '../../src/boat';
import { once } from '../../src/boat/once';

test('works once, when first asked', () => {
  let times = 0;
  const three = once(() => {
    times += 1;
    return 3;
  });
  expect(times).toBe(0);
  expect([three(), three()]).toStrictEqual([3, 3]);
  expect(times).toBe(1);
});

test('nothing is an answer too', () => {
  let times = 0;
  const none = once(() => {
    times += 1;
    return null;
  });
  expect([none(), none(), times]).toStrictEqual([null, null, 1]);
});

test('fails once and says the same each time', () => {
  let times = 0;
  const fails = once(() => {
    times += 1;
    throw new Error(`time ${times}`);
  });
  expect(fails).toThrow('time 1');
  expect(fails).toThrow('time 1');
});

test('a fault of the hull becomes an issue; slips of the program pass through', () => {
  expect(attempt(() => 7)).toBe(7);
  expect(
    attempt(() => {
      throw new Error('the chine is missing');
    }),
  ).toStrictEqual({ issue: 'the chine is missing' });
  expect(() =>
    attempt(() => {
      throw new TypeError('undefined is not a hull');
    }),
  ).toThrow(TypeError);
});
