/** What a file that was chosen or dropped holds, or why it is no notebook. */
import { describe, expect, test } from 'vitest';
import { notebookText } from '../../../src/page/notebooks/file-text';

const of = (...parts: (string | Uint8Array<ArrayBuffer>)[]) => notebookText(new Blob(parts));

describe('a text is kept to the letter', () => {
  test.each(['# Keel day\r\n\r\nWords\t', '½ in, 12°, é, 竜骨 🛶', '\ufeff# With a mark'])(
    '%j',
    async (text) => {
      expect(await of(text)).toBe(text);
    },
  );

  test('in the code of Western Windows too', async () => {
    // By the WHATWG encoding standard, windows-1252: 0xBD is one half, 0xB0 the degree.
    expect(await of(new Uint8Array([0x33, 0xbd, 0x20, 0x35, 0xb0]))).toBe('3½ 5°');
  });
});

test.each([
  ['', /empty/],
  [' \n\n ', /empty/],
  [new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 13]), /not a text/],
  ['x'.repeat(300_001), /too long; a notebook may have 300000 characters/],
  ['é'.repeat(700_000), /too long/],
])('what is no notebook is refused: %#', async (content, because) => {
  expect(await of(content)).toMatchObject({ because: expect.stringMatching(because) as string });
});
