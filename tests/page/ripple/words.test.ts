// The words of the ripple's lines; English as it is read aloud, no source.

import { expect, test } from 'vitest';
import { amiss, foldWords, withoutUnit } from '../../../src/page/ripple/words';

test('a fold says how much lies under it and where', () => {
  expect(foldWords(13, ['Thin layers', 'Holding', 'Thin layers'], 'The build')).toBe(
    '+ 13 more in Thin layers, Holding',
  );
  expect(foldWords(9, ['Thin layers', 'Holding', 'Scarf joint'], 'The build')).toBe(
    '+ 9 more in 3 cells here',
  );
  expect(foldWords(4, [], 'Bend, join, fasten')).toBe('+ 4 more in Bend, join, fasten');
  expect(foldWords(6, [], undefined)).toBe('+ 6 more of the boat');
});

test('a unit is said once, but feet and inches are never cut', () => {
  expect(withoutUnit('71 N', '565 N')).toBe('71');
  expect(withoutUnit('49.2\u00a0%', '57.6\u00a0%')).toBe('49.2');
  expect(withoutUnit('2995 mm', '5.9 m')).toBe('2995 mm');
  expect(withoutUnit('9 ft 10 1/8 in', '9 ft 10 in')).toBe('9 ft 10 1/8 in');
  expect(withoutUnit('1 3/4 in', '2 in')).toBe('1 3/4 in');
  expect(withoutUnit('none', '565 N')).toBe('none');
  expect(withoutUnit('71 N', '')).toBe('71 N');
});

test('of a warning only what is amiss is said', () => {
  expect(amiss('Over the 50.5 % allowed. At most 32 mm thick.')).toBe('Over the 50.5 % allowed.');
  expect(amiss('The slot takes 71 % of the depth: put a deeper member here.')).toBe(
    'The slot takes 71 % of the depth.',
  );
  expect(amiss('It lies on the line')).toBe('It lies on the line.');
});
