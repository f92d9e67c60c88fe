/** Parts as the yard speaks of them. */
import { expect, test } from 'vitest';
import { partWords } from '../../../src/page/as-built/part-words';

test.each([
  ['frame3', 'frame 3', false],
  ['keelson', 'the keelson', false],
  ['gusset', 'the gussets', true],
  ['chineLog', 'the chine logs', true],
  ['bottom', 'the bottom', false],
  ['sternTransom', 'the stern transom', false],
])('%s is %s', (part, the, areMany) => {
  expect(partWords(part)).toStrictEqual({ the, areMany });
});
