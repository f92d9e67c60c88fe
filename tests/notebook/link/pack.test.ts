/** Letters of a link, against Node's own zlib (RFC 1951, 1952) and its base64url (RFC 4648). */
import * as fc from 'fast-check';
import { gunzipSync, gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { packed, unpacked } from '../../../src/notebook/link/pack';

const MOST = 1_000_000;
const zipped = (text: string | Uint8Array) => gzipSync(text).toString('base64url');

test('what is packed, zlib unpacks; what zlib packed is unpacked here', async () => {
  await fc.assert(
    fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 400 }), async (text) => {
      const letters = await packed(text);
      expect(letters).toMatch(/^[\w-]+$/);
      expect(gunzipSync(Buffer.from(letters, 'base64url')).toString()).toBe(text);
      expect(await unpacked(zipped(text), MOST)).toBe(text);
    }),
    { seed: 13, numRuns: 60 },
  );
});

test('it is as short as zlib makes it, within a few letters', async () => {
  const text = JSON.stringify(
    Object.fromEntries(Array.from({ length: 90 }, (_, n) => [`plank.width${n}`, `${n} mm`])),
  );
  expect((await packed(text)).length).toBeLessThanOrEqual(zipped(text).length + 16);
});

describe('what is no link of ours', () => {
  const letters = zipped('{"entries":{"side.thickness":"6 mm","keelson.thickness":"19 mm"}}');

  test('cut short anywhere', async () => {
    for (let at = 0; at < letters.length; at += 1)
      // oxlint-disable-next-line no-await-in-loop
      expect(await unpacked(letters.slice(0, at), MOST), `${at} letters`).toBeNull();
  });

  test('one letter another, anywhere after the head of the stream, which says nothing of the text', async () => {
    const signs = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
    const whole = await unpacked(letters, MOST);
    const found: (string | null)[] = [];
    for (let at = 14; at < letters.length; at += 1) {
      const other = signs[(signs.indexOf(letters[at]!) + 21) % signs.length]!;
      // oxlint-disable-next-line no-await-in-loop
      const read = await unpacked(letters.slice(0, at) + other + letters.slice(at + 1), MOST);
      // A bit that fills up the last byte of a part says nothing.
      found.push(read);
    }
    expect(found.filter((read) => read !== null && read !== whole)).toStrictEqual([]);
    expect(found.filter((read) => read === null).length).toBeGreaterThan(0.95 * (letters.length - 14));
  });

  test.each([
    '',
    '%%%',
    'a',
    'H4sI',
    'not packed at all',
    '='.repeat(9),
    zipped(new Uint8Array([0x7b, 0xff, 0xfe])),
  ])('%j', async (text) => {
    expect(await unpacked(text, MOST)).toBeNull();
  });
});

test('a small one that unfolds into more than is allowed is given up on the way', async () => {
  const bomb = zipped(new Uint8Array(200_000_000));
  expect(bomb.length).toBeLessThan(300_000);
  const before = process.memoryUsage().arrayBuffers;
  expect(await unpacked(bomb, MOST)).toBeNull();
  // Of 200 MB no more than a few pieces were ever unfolded.
  expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(50_000_000);
  expect(await unpacked(zipped('x'.repeat(MOST)), MOST)).toHaveLength(MOST);
  expect(await unpacked(zipped('x'.repeat(MOST + 1)), MOST)).toBeNull();
});
